# What each rule of the pack does, in one sentence: `rule-<id>` with hyphens for dots. Its numbers come as values by name,
# and each also as <name>_percent, a hundred times as much. For the coach and for `newel rules`.
# Effort rules have the numbers least_target, trained_target, least_floor, most_sets, from_week, before_week, as far as they use them.

rule-strength-report = Se supone que la reserva declarada se desvía alrededor de { $s0 ->
    [one] { $s0 } repetición
   *[other] { $s0 } repeticiones
} cuando no queda nada, y { $s1 ->
    [one] { $s1 } repetición
   *[other] { $s1 } repeticiones
} más por cada repetición en reserva.
rule-strength-day = Se supone que la fuerza sube y baja alrededor de un { $sigma_percent } % de un día a otro.
rule-strength-drift = Entre sesiones la estimación pierde certeza: su varianza (del ln de la carga) crece { $early_per_day } al día al principio, cada vez menos a lo largo de { $fade_days } días, y { $late_per_day } al día en todo momento; la de la pendiente, { $slope_per_day } al día.
rule-strength-slope = Se supone que las repeticiones por unidad de ln de la carga varían { $sd } entre personas, y se mantienen entre { $min } y { $max }.
rule-strength-fatigue = Se supone que cada serie anterior del día cuesta { $reps_per_set ->
    [one] { $reps_per_set } repetición
   *[other] { $reps_per_set } repeticiones
}.
rule-strength-start = Se supone que una carga inicial deja { $margin ->
    [one] { $margin } repetición
   *[other] { $margin } repeticiones
} más de lo que pide la dosis, con un margen del { $sd_percent } % de la carga hacia arriba o hacia abajo.
rule-strength-evidence = Una serie de más de { $most_reps } repeticiones, o en la que se dijo que quedaban más de { $most_reserve } en reserva, no informa de la fuerza.
rule-strength-body = El peso corporal sin anotar se toma como { $assumed_kg } kg, y así se indica.
rule-load-target = Se toma la carga más alta que deja al menos el objetivo menos { $slack ->
    [one] { $slack } repetición
   *[other] { $slack } repeticiones
} en la serie central, con una probabilidad máxima del { $alpha_percent } % de quedar por debajo del mínimo en la última; el mínimo está { $floor_below_target ->
    [one] { $floor_below_target } repetición
   *[other] { $floor_below_target } repeticiones
} por debajo del objetivo. { $binds_all ->
        [0] La probabilidad limita también las repeticiones, en el embarazo y en las primeras 12 semanas después del parto.
       *[other] La probabilidad limita también las repeticiones.
    }
rule-load-step = Una carga sube como mucho un { $share_percent } % respecto a la más alta hecha según lo previsto en los últimos { $days } días.
rule-load-big-step = La siguiente carga del material puede ser un salto mayor tras { $exposures ->
    [one] { $exposures } sesión
   *[other] { $exposures } sesiones seguidas
} en el tope del rango con el objetivo en reserva, o tras una con { $alone_over_target ->
    [one] { $alone_over_target } repetición
   *[other] { $alone_over_target } repeticiones
} más.
rule-load-lay-off = Tras { $days_1 } días sin entrenar, como mucho el { $share_1_percent } % de la última carga; tras { $days_2 } días, como mucho el { $share_2_percent } %; si no hay nada que quitar, la parte baja del rango con { $more_reserve ->
    [one] { $more_reserve } repetición
   *[other] { $more_reserve } repeticiones
} más en reserva.
rule-load-first = La primera vez, hasta { $finding_sets ->
    [one] { $finding_sets } serie puede
   *[other] { $finding_sets } series pueden
} subir para encontrar la carga, si en reserva había al menos { $room_over_target ->
    [one] { $room_over_target } repetición
   *[other] { $room_over_target } repeticiones
} más que el objetivo; después de un parto, no antes de la semana { $finding_from_week }. Si su fuerza se conoce por otra variante, se empieza como mucho con el { $share_of_group_percent } % de lo que sostuvo en ella.
rule-load-lighter-now = A mitad de sesión se ofrece una carga más ligera cuando la próxima serie quedaría por debajo del mínimo con una probabilidad de más del { $chance_percent } %.
rule-load-reps-now = Después de cada serie de un ejercicio se eligen de nuevo, dentro del rango, las repeticiones de la siguiente, para acercarse lo más posible a la reserva prevista. { $grow ->
        [1] Pueden ser menos o más; nunca más en el embarazo ni en las primeras 12 semanas después del parto, tras un síntoma, tras semanas sin entrenar ni en una semana ligera.
       *[other] Pueden ser menos, pero no más.
    }
rule-load-kit-gap = Si la siguiente carga del material es un salto demasiado grande, con { $over_target ->
    [one] { $over_target } repetición
   *[other] { $over_target } repeticiones
} en reserva por encima del objetivo se puede llegar hasta { $more_reps ->
    [one] { $more_reps } repetición
   *[other] { $more_reps } repeticiones
} más allá del rango.
rule-load-unforeseen = Un salto que ninguna respuesta permite prever se gana: con { $exposures ->
    [one] { $exposures } sesión
   *[other] { $exposures } sesiones seguidas
} en el tope del rango y { $over_target ->
    [one] { $over_target } repetición
   *[other] { $over_target } repeticiones
} en reserva por encima del objetivo se abre la siguiente carga del material, con un aumento máximo del { $most_of_body_percent } % del peso corporal; la primera serie decide.
rule-load-finding = Al buscar la carga, cada subida llega como mucho a { $times_lower } veces lo sostenido con piernas y caderas y a { $times_upper } veces con brazos y hombros, o a la siguiente carga del material si es como mucho { $next_times_lower } y { $next_times_upper } veces lo sostenido.
rule-load-nothing-lighter = Si ninguna carga es lo bastante ligera, se toma la más ligera del material y así se dice.
rule-level-up = Se sube un peldaño tras { $exposures ->
    [one] { $exposures } sesión
   *[other] { $exposures } sesiones seguidas
} en el tope del rango con { $over_target ->
    [one] { $over_target } repetición
   *[other] { $over_target } repeticiones
} en reserva por encima del objetivo, al llegar a la marca para subir o a lo más pesado del material; si el siguiente peldaño fuera demasiado pesado, hasta { $more_reps ->
    [one] { $more_reps } repetición
   *[other] { $more_reps } repeticiones
} más en su lugar.
rule-level-down = Se baja un peldaño cuando ninguna carga del material sirve.
rule-level-back-up = Volver a subir después de un síntoma pide { $exposures ->
    [one] { $exposures } sesión
   *[other] { $exposures } sesiones
} sin síntomas, cada una con la mañana siguiente tranquila, y como mucho el { $share_percent } % de la última carga de ese peldaño.
rule-level-start = Una escalera empieza en el peldaño que fijó la entrenadora o, si no lo hay, en el más fácil que esté abierto.
rule-progress-reps = Cuando la carga no cambia, la serie crece { $step_reps ->
    [one] { $step_reps } repetición
   *[other] { $step_reps } repeticiones
} o { $step_seconds ->
    [one] { $step_seconds } segundo
   *[other] { $step_seconds } segundos
}.
rule-symptom-drop = Bajar un peldaño termina la serie y ofrece el peldaño inferior, hoy y la próxima vez; una segunda marca en la escalera la termina por ese día.
rule-symptom-repeat = Bajar un peldaño por lo mismo en { $sessions ->
    [one] { $sessions } sesión
   *[other] { $sessions } sesiones seguidas
} cuenta como una espera.
rule-symptom-lowest = En el peldaño más bajo, tener que bajar deja la escalera en espera; si la entrenadora permite reanudar, es con el { $share_percent } % de la carga.
rule-symptom-pelvic-floor-twice = Con { $marks ->
    [one] { $marks } marca
   *[other] { $marks } marcas
} del suelo pélvico en una sesión, en cualquier escalera, el resto se hace sin carga, en posición acostada o sentada.
rule-symptom-hold = Una espera deja en pausa aquello a lo que afecta hasta que responda la entrenadora o una profesional de salud.
rule-symptom-red = Una señal de alarma detiene todo el entrenamiento hasta que se anote un visto bueno. Depende solo de la señal.
rule-symptom-amounts = En la escala de diez con la que se comparan las intensidades de un mismo tipo, un poco cuenta { $little }, bastante { $clearly } y mucho { $lot }.
rule-symptom-left-out = Un dolor sin número cuenta como { $pain }.
rule-effort-careful = En el embarazo, y en las primeras { $weeks_after } semanas después de un parto o una pérdida, la probabilidad de quedarse corta limita tanto las repeticiones como la carga; en el embarazo, nunca menos de { $pregnant_floor } en reserva.
rule-stage-undated = Mientras no se sepa la semana de un embarazo, el esfuerzo es el de la semana { $effort_week } y las posiciones son las de la semana { $position_week }.
rule-stage-same-birth = Un parto o una pérdida que se anota otra vez, como mucho a { $days } días de la primera fecha, es el mismo hecho, corregido.
rule-position-supine = Desde la semana { $from_week } de embarazo, otra posición sustituye a la de estar boca arriba en plano.
rule-impact-wait = Sin impacto antes de la semana { $from_week } después de un parto.
rule-impact-checks = { $asked ->
    [1] Después de un parto, el impacto espera hasta que las comprobaciones previas se hayan hecho completas y sin ninguna señal: las que no tienen aterrizaje, para los primeros peldaños; todas, para aterrizar sobre una pierna.
   *[other] Las comprobaciones antes del impacto no se piden después de un parto.
}
rule-impact-pregnant = { $from_week ->
    [0] Sin impacto en el embarazo.
   *[other] Sin impacto desde la semana { $from_week } de embarazo.
}
rule-clearance-asked = Después de una cesárea o un desgarro grave, el entrenamiento espera un visto bueno; mientras tanto, respiración, suelo pélvico y movilidad. Un visto bueno abre aquello para lo que se dio, hasta su último día.
rule-clearance-birth-unsaid = Si no se ha dicho cómo fue un parto, hasta la semana { $before_week } se consulta antes a su profesional de salud; mientras tanto, respiración, suelo pélvico y movilidad.
rule-breath-free = Si se ha descartado aguantar la respiración, en reserva queda un mínimo de { $least_reserve ->
    [one] { $least_reserve } repetición
   *[other] { $least_reserve } repeticiones
}.
rule-screen-again = Toca repetir el cuestionario de salud en las semanas { $trimester_2 } y { $trimester_3 } de un embarazo, en un parto o una pérdida, { $after_birth_1 } y { $after_birth_2 } semanas después de un parto, después de una señal que paró el entrenamiento o de una espera, y como muy tarde a las { $stale_weeks } semanas.
rule-stage-dates-differ = Se avisa cuando una fecha prevista de parto dada y otra calculada se separan más de { $to_8_weeks } días (dada antes de las 9 semanas), { $to_15_weeks } (hasta las 15), { $to_21_weeks } (hasta las 21), { $to_27_weeks } (hasta las 27) o { $from_28_weeks } (más tarde). Vale la que se dio.
rule-stage-taken-up = Después de un parto o una pérdida, el plan está en pausa hasta que tanto la clienta como la entrenadora hayan dicho que sigue.
rule-today-tired = En un día de cansancio la reserva sube en { $more_reserve ->
    [one] { $more_reserve } repetición
   *[other] { $more_reserve } repeticiones
}.
rule-today-unwell = En un día de malestar la reserva sube en { $more_reserve ->
    [one] { $more_reserve } repetición
   *[other] { $more_reserve } repeticiones
}, basta con { $sets ->
    [one] { $sets } serie
   *[other] { $sets } series
} de cada ejercicio, y nada crece.
rule-today-after-illness = De vuelta tras una enfermedad, { $sessions ->
    [one] una sesión es suave
   *[other] { $sessions } sesiones son suaves
}: la reserva sube en { $more_reserve ->
    [one] { $more_reserve } repetición
   *[other] { $more_reserve } repeticiones
}, basta con { $sets ->
    [one] { $sets } serie
   *[other] { $sets } series
} de cada ejercicio, y nada crece. La respiración, el suelo pélvico y la movilidad siguen igual.
rule-today-child-near = Con un niño en la habitación no se sostiene nada por encima de la cabeza.
rule-today-no-kit = Sin su material a mano se toma la opción más parecida que no lo necesite; su peldaño se conserva y no se salta ninguno.
rule-learn-first = Quien nunca ha entrenado con pesas aprende los ejercicios en { $sessions ->
    [one] su primera sesión
   *[other] sus { $sessions } primeras sesiones
}: la carga más ligera, { $sets ->
    [one] { $sets } serie
   *[other] { $sets } series
}, { $reserve ->
    [one] { $reserve } repetición
   *[other] { $reserve } repeticiones
} en reserva, y nada cuenta como fuerza.
rule-programme-light-week = Una semana ligera: las series por { $share }, hacia arriba, { $more_reserve } repetición más en reserva, y nada crece. La respiración, el suelo pélvico y la movilidad siguen igual.
rule-load-ease = El calentamiento y la vuelta a la calma se hacen con la menor carga que hay, en la parte baja del rango. No dicen nada de la fuerza.
rule-coach-set = Vale lo que fijó la entrenadora, con su nota.
rule-client-choice = Una opción elegida por ella, en el peldaño mostrado o más abajo, vale para la sesión.
rule-kit-has = Solo se propone lo que permite su material.
rule-body-only = Sin carga, lo que cambia son las repeticiones o los segundos.
rule-session-open = Una sesión que quedó abierta se da por terminada a las { $hours } horas: lo registrado se conserva y la siguiente empieza de nuevo.
rule-session-next-day = Se pregunta cómo fue el día siguiente hasta { $days } días después.
rule-log-unknown-dose = Una serie cuya propuesta no está en el registro se toma como una de { $low } a { $high } repeticiones con { $target } en reserva, nunca menos de { $floor }.
rule-session-short = La versión corta de una sesión cabe en { $minutes } minutos.
rule-session-set-up = Se calcula que una serie dura { $seconds_per_rep } segundos por repetición, más { $seconds_per_set } segundos de preparación.
rule-watch-weeks = El seguimiento abarca las últimas { $weeks } semanas.
rule-watch-load = La carga de la sesión es su esfuerzo por los minutos; la monotonía es la media de los días de una semana dividida por su dispersión, y la tensión es la carga de la semana por la monotonía.
rule-watch-minutes = Los minutos estimados a partir de las horas de las entradas cuentan hasta { $cap } por sesión.
rule-watch-desk = El panel avisa de { $silent_days } días sin registro, de { $silent_after_symptom_days } después de un síntoma y de { $unanswered_days } sin respuesta sobre el día siguiente; de los síntomas y las etapas de los últimos { $recent_days } días, y de las palabras y las respuestas previas a la sesión de los últimos { $week_days }; de una fecha prevista de parto en los próximos { $near_due_days } días; de que en el { $over_share_percent } % de las sesiones una serie quedara por debajo de su mínimo, de que una serie fuera un { $jump_share_percent } % más pesada que lo mostrado, y de { $skipped } series omitidas por decisión propia.
rule-watch-hard-set = Una serie es dura si deja en reserva como mucho { $over_target ->
    [one] { $over_target } repetición
   *[other] { $over_target } repeticiones
} más que el objetivo.
rule-watch-guideline-pregnant = Recomendación en el embarazo: al menos { $minutes } minutos de actividad por semana, en al menos { $days } días.
rule-watch-guideline-postpartum = Recomendación después de un parto: al menos { $minutes } minutos de actividad por semana, en al menos { $days } días.
rule-watch-rate = Las frecuencias de síntomas son de los últimos { $days } días; una frecuencia se da a partir de { $sessions } sesiones, con un intervalo del { $confidence_percent } %, y se compara con el resto a partir de { $rest_sessions } sesiones y { $marked } con marca.
rule-advice-push-pull = Al escribir un programa se avisa si el empuje o la tracción ocupa más del { $most_share_percent } % de las series de ambos, a partir de { $from_sets } series por semana.
rule-advice-knee-hip = Al escribir un programa se avisa si la rodilla (sentadilla, una pierna) o la cadera (bisagra, puente) ocupa más del { $most_share_percent } % de las series de ambas, a partir de { $from_sets } series por semana.
rule-advice-week-sets = Al escribir un programa se avisa si un movimiento de empuje, tracción, sentadilla, bisagra, puente o una pierna tiene menos de { $least } o más de { $most } series duras por semana.
rule-advice-minutes = Al escribir un programa se avisa si una sesión dura un { $over_share_percent } % más de lo previsto; cuando se ha registrado { $logged } veces cuentan los registros, y se avisa si se apartan un { $logged_share_percent } % de lo calculado.
rule-fresh-start = La primera vez en una escalera después de un parto, una pérdida o una operación deja en reserva un mínimo de { $reserve ->
    [one] { $reserve } repetición
   *[other] { $reserve } repeticiones
}.

## Effort by stage

rule-effort-pregnant-early = En el embarazo, desde la semana { $from_week } y antes de la { $before_week }: objetivo de { $least_target ->
    [one] { $least_target } repetición
   *[other] { $least_target } repeticiones
} o más en reserva, { $trained_target } con experiencia en pesas; el mínimo es { $least_floor }.
rule-effort-pregnant-late = En el embarazo, desde la semana { $from_week }: objetivo de { $least_target ->
    [one] { $least_target } repetición
   *[other] { $least_target } repeticiones
} o más en reserva, { $trained_target } con experiencia en pesas; el mínimo es { $least_floor }.
rule-effort-after-0 = Después de un parto, desde la semana { $from_week } y antes de la { $before_week }: respiración y suelo pélvico, { $most_sets ->
    [one] { $most_sets } serie
   *[other] { $most_sets } series
} como máximo, sin peso en las manos; objetivo { $least_target }, mínimo { $least_floor }.
rule-effort-after-2 = Después de un parto, desde la semana { $from_week } y antes de la { $before_week }: sin peso en las manos, { $most_sets ->
    [one] { $most_sets } serie
   *[other] { $most_sets } series
} como máximo; objetivo de { $least_target ->
    [one] { $least_target } repetición
   *[other] { $least_target } repeticiones
} o más en reserva; el mínimo es { $least_floor }.
rule-effort-after-6 = Después de un parto, desde la semana { $from_week } y antes de la { $before_week }: objetivo de { $least_target ->
    [one] { $least_target } repetición
   *[other] { $least_target } repeticiones
} o más en reserva, { $trained_target } con experiencia en pesas; el mínimo es { $least_floor }.
rule-effort-after-12 = Después de un parto, desde la semana { $from_week } y antes de la { $before_week }: objetivo de { $least_target ->
    [one] { $least_target } repetición
   *[other] { $least_target } repeticiones
} o más en reserva, { $trained_target } con experiencia en pesas; el mínimo es { $least_floor }.
rule-effort-after-26 = Después de un parto, desde la semana { $from_week } y antes de la { $before_week }: objetivo de { $least_target ->
    [one] { $least_target } repetición
   *[other] { $least_target } repeticiones
} o más en reserva, { $trained_target } con experiencia en pesas; el mínimo es { $least_floor }.
rule-effort-after-52 = Después de un parto, desde la semana { $from_week }: objetivo de { $least_target ->
    [one] { $least_target } repetición
   *[other] { $least_target } repeticiones
} o más en reserva, { $trained_target } con experiencia en pesas; el mínimo es { $least_floor }.
rule-effort-after-loss = Después de una pérdida, desde la semana { $from_week } y antes de la { $before_week }: sin peso en las manos, { $most_sets ->
    [one] { $most_sets } serie
   *[other] { $most_sets } series
} como máximo; objetivo de { $least_target ->
    [one] { $least_target } repetición
   *[other] { $least_target } repeticiones
} o más en reserva; el mínimo es { $least_floor }.
rule-effort-after-loss-6 = Después de una pérdida, desde la semana { $from_week }: objetivo de { $least_target ->
    [one] { $least_target } repetición
   *[other] { $least_target } repeticiones
} o más en reserva, { $trained_target } con experiencia en pesas; el mínimo es { $least_floor }.
rule-effort-plain = Sin embarazo ni parto reciente (desde la semana { $from_week }): objetivo de { $least_target ->
    [one] { $least_target } repetición
   *[other] { $least_target } repeticiones
} o más en reserva, { $trained_target } con experiencia en pesas; el mínimo es { $least_floor }.

## Conditions named at screening

rule-condition-waters-broken = En el embarazo no se entrena sin un visto bueno previo.
rule-condition-preterm-labour = En el embarazo no se entrena sin un visto bueno previo.
rule-condition-bleeding-unexplained = En el embarazo no se entrena sin un visto bueno previo.
rule-condition-placenta-praevia = En el embarazo se consulta antes a su profesional de salud; mientras tanto, respiración, suelo pélvico y movilidad; desde la semana { $stricter_from }, no se entrena sin un visto bueno previo.
rule-condition-pre-eclampsia = En el embarazo no se entrena sin un visto bueno previo.
rule-condition-cervical-insufficiency = En el embarazo no se entrena sin un visto bueno previo.
rule-condition-growth-restriction = En el embarazo no se entrena sin un visto bueno previo.
rule-condition-triplets = En el embarazo no se entrena sin un visto bueno previo.
rule-condition-twins = En el embarazo se consulta antes a su profesional de salud; mientras tanto, respiración, suelo pélvico y movilidad.
rule-condition-recurrent-loss = En el embarazo se consulta antes a su profesional de salud; mientras tanto, respiración, suelo pélvico y movilidad.
rule-condition-earlier-preterm-birth = En el embarazo se consulta antes a su profesional de salud; mientras tanto, respiración, suelo pélvico y movilidad.
rule-condition-other-pregnancy = En el embarazo se consulta antes a su profesional de salud; mientras tanto, respiración, suelo pélvico y movilidad.
rule-condition-gestational-diabetes = Anotado para la entrenadora; no se descarta nada.
rule-condition-fertility-treatment = Se consulta antes a su profesional de salud; mientras tanto, respiración, suelo pélvico y movilidad.
rule-condition-caesarean = Anotado para la entrenadora; el propio parto pide un visto bueno.
rule-condition-severe-tear = Anotado para la entrenadora; el propio parto pide un visto bueno.
rule-condition-birth-complication = Después de un parto se consulta antes a su profesional de salud; mientras tanto, respiración, suelo pélvico y movilidad.
rule-condition-caesarean-worse = Después de un parto se consulta antes a su profesional de salud; mientras tanto, respiración, suelo pélvico y movilidad.
rule-condition-girdle-pain = Nada a un solo lado.
rule-condition-prolapse = Sin impacto.
rule-condition-pessary = Anotado para la entrenadora y, antes de empezar, si está puesto o no; no se descarta nada.
rule-condition-pelvic-floor-tense = El suelo pélvico se suelta, no se contrae.
rule-condition-leaking = Anotado para la entrenadora; no se descarta nada.
rule-condition-midline-gap = Anotado para la entrenadora; no se descarta nada.
rule-condition-low-back-pain = Anotado para la entrenadora; no se descarta nada.
rule-condition-wrist-pain = Nada con apoyo en las muñecas.
rule-condition-knee-pain = Anotado para la entrenadora; no se descarta nada.
rule-condition-shoulder-pain = Nada por encima de la cabeza.
rule-condition-fracture = Se consulta antes a su profesional de salud; mientras tanto, respiración, suelo pélvico y movilidad.
rule-condition-recent-surgery = Se consulta antes a su profesional de salud; mientras tanto, respiración, suelo pélvico y movilidad. Todas las escaleras empiezan de nuevo.
rule-condition-hypermobility = Anotado para la entrenadora; no se descarta nada.
rule-condition-diabetes-unsettled = No se entrena sin un visto bueno previo.
rule-condition-blood-pressure-unsettled = No se entrena sin un visto bueno previo.
rule-condition-thyroid-unsettled = No se entrena sin un visto bueno previo.
rule-condition-heart-lung-serious = No se entrena sin un visto bueno previo.
rule-condition-high-blood-pressure = Se consulta antes a su profesional de salud; mientras tanto, respiración, suelo pélvico y movilidad.
rule-condition-heart-lung-mild = Se consulta antes a su profesional de salud; mientras tanto, respiración, suelo pélvico y movilidad.
rule-condition-anaemia-felt = Se consulta antes a su profesional de salud; mientras tanto, respiración, suelo pélvico y movilidad; la reserva sube en { $extra_reserve ->
    [one] { $extra_reserve } repetición
   *[other] { $extra_reserve } repeticiones
}, y los descansos duran { $more_rest ->
    [one] { $more_rest } segundo
   *[other] { $more_rest } segundos
} más.
rule-condition-anaemia = La reserva sube en { $extra_reserve ->
    [one] { $extra_reserve } repetición
   *[other] { $extra_reserve } repeticiones
}, y los descansos duran { $more_rest ->
    [one] { $more_rest } segundo
   *[other] { $more_rest } segundos
} más.
rule-condition-malnutrition = Se consulta antes a su profesional de salud; mientras tanto, respiración, suelo pélvico y movilidad.
rule-condition-eating-disorder = Se consulta antes a su profesional de salud; mientras tanto, respiración, suelo pélvico y movilidad.
rule-condition-low-blood-pressure = Anotado para la entrenadora; no se descarta nada.
rule-condition-heart-slowing-medicine = Anotado para la entrenadora; no se descarta nada.
rule-condition-blood-pressure-medicine = Anotado para la entrenadora; no se descarta nada.
rule-condition-insulin = Anotado para la entrenadora; no se descarta nada.
rule-condition-blood-thinner = Se consulta antes a su profesional de salud; mientras tanto, respiración, suelo pélvico y movilidad.

## The pages of the pack

rulebook-symptoms-title = Qué hace un síntoma
rulebook-symptoms-intro = Hecho a partir del paquete de reglas con `newel rules --table`; no se edita aquí. No es consejo médico y ninguna profesional de salud lo ha firmado. Vale la clase más estricta: **alarma** detiene todo el entrenamiento hasta que se anote un visto bueno, **en espera** deja en pausa aquello a lo que afecta hasta que responda la entrenadora o una profesional de salud, **bajar un peldaño** pasa al peldaño inferior, **indicación** cambia la respiración, el recorrido o la posición, **nota** se anota y se muestra. Un número o una intensidad solo puede hacer más estricta una clase. Una entrenadora puede hacer más estricta cualquier clase para una clienta; suavizarla pide una nota; una señal de alarma sigue siendo de alarma.
rulebook-symptoms-head = | señal | término técnico | cuándo se pregunta | clase | según el dolor | otra vez en la sesión | sigue a la mañana siguiente | qué deja en espera | ayuda | además | fuente |
rulebook-rules-title = Las reglas y sus números
rulebook-rules-intro = Hecho a partir del paquete de reglas con `newel rules --table rules`; no se edita aquí. Una marca dice cuánto se puede confiar en una fuente: [o] leída en el original, [s] de segunda mano, [m] de memoria, [d] derivada. Lo que una entrenadora puede fijar para una clienta está en la tercera columna, con el sentido más estricto y los límites; todo lo demás es fijo.
rulebook-rules-head = | regla | qué hace | se puede fijar | fuente |
rulebook-may-set = { $stricter ->
    [more] { $name }: más es más estricto, de { $least } a { $most }
   *[less] { $name }: menos es más estricto, de { $least } a { $most }
}
rulebook-rules-part = Reglas
rulebook-effort-part = Esfuerzo por etapa
rulebook-conditions-part = Condiciones indicadas en el cuestionario de salud
rulebook-checks-part = Comprobaciones antes del impacto
rulebook-check = { $what }: { $count } { $of ->
    [minutes] min
    [seconds] s
   *[reps] { $count ->
        [one] vez
       *[other] veces
    }
}{ $side ->
    [yes] , cada lado
   *[no] { "" }
}, { $lands ->
    [yes] con aterrizaje
   *[no] sin aterrizaje
}.
rulebook-when-any = siempre
rulebook-when-pregnant = en el embarazo
rulebook-when-pregnant-from = en el embarazo, desde la semana { $week }
rulebook-when-postpartum = después de un parto
rulebook-class-note = nota
rulebook-class-cue = indicación
rulebook-class-drop = bajar un peldaño
rulebook-class-hold = en espera
rulebook-class-red = **alarma**
rulebook-band = { $class } desde { $from }
rulebook-scope-ladder = su escalera
rulebook-scope-lower_body = caderas y piernas, e impacto
rulebook-scope-all = todo el entrenamiento
rulebook-urgency-emergency = número de emergencias ahora mismo
rulebook-urgency-call = llamar ahora mismo a la matrona, la médica o el centro de salud
rulebook-urgency-same_day = atención hoy mismo
rulebook-ends-set = termina la serie
rulebook-gives-up = otra posición el resto del embarazo
rulebook-refer = dice a quién acudir
