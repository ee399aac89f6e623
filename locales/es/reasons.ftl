# Why something is proposed: `reason-<code>` of the engine. Numbers and names come as values.
# A value that is not known comes as 0 ($last_reps) or -1 ($last_reserve).

reason-start-coach = { $load }: la carga que fijó tu entrenadora para empezar.
reason-start-answer = { $load }: por tu respuesta a “¿Con qué harías diez repeticiones?”. La primera serie decide.
reason-start-lightest = { $load }: primera vez, así que la más ligera. La primera serie decide.
reason-start-group = { $load }: pudiste con { $last_load } en “{ $last_variant }”, y esto empieza algo más ligero. La primera serie decide.
reason-still-finding = { $load } para empezar: hasta ahora cada serie dejó 5 o más en reserva, así que tu carga aún se está buscando.
reason-unforeseen = { $exposures } veces seguidas el tope del rango dejó mucha reserva, así que se prueba esto: { $load }. La primera serie decide.
reason-coach-start = Peldaño { $level }: desde donde tu entrenadora te deja empezar.
reason-coach-set = Fijado por la entrenadora: { $note }
reason-load-same = { $last_reps ->
    [0] { $load } otra vez.
   *[other] { $last_reserve ->
        [-1] { $load } otra vez: la última vez, { $last_reps }.
        [5] { $load } otra vez: la última vez, { $last_reps } repeticiones con 5 o más en reserva; el objetivo es { $target } en reserva.
       *[other] { $load } otra vez: la última vez, { $last_reps } repeticiones con { $last_reserve } en reserva; el objetivo es { $target } en reserva.
    }
}
reason-load-up = { $last_reps ->
    [0] Más carga: { $load }, antes { $last_load }.
   *[other] { $last_reserve ->
        [-1] Más carga: { $load }, antes { $last_load }. La última vez, { $last_reps }.
        [5] Más carga: { $load }, antes { $last_load }. La última vez, { $last_reps } repeticiones con 5 o más en reserva; el objetivo es { $target } en reserva.
       *[other] Más carga: { $load }, antes { $last_load }. La última vez, { $last_reps } repeticiones con { $last_reserve } en reserva; el objetivo es { $target } en reserva.
    }
}
reason-load-down = { $last_reps ->
    [0] Menos carga: { $load }, antes { $last_load }.
   *[other] { $last_reserve ->
        [-1] Menos carga: { $load }, antes { $last_load }.
        [5] Menos carga: { $load }, antes { $last_load }; el objetivo es { $target } en reserva.
       *[other] Menos carga: { $load }, antes { $last_load }. La última vez, { $last_reps } repeticiones con { $last_reserve } en reserva; el objetivo es { $target } en reserva.
    }
}
reason-body-only = { $last_reps ->
    [0] { $timed ->
        [1] Aquí no hay carga que elegir: se empieza con { $reps } s.
       *[0] Aquí no hay carga que elegir: se empieza con { $reps } repeticiones.
    }
   *[other] { $timed ->
        [1] Aquí no hay carga que elegir: la última vez { $last_reps } s, hoy { $reps } s.
       *[0] Aquí no hay carga que elegir: la última vez { $last_reps } repeticiones, hoy { $reps }.
    }
}
reason-step-bound = Como máximo un { $percent } % más que la mayor carga hecha según lo previsto en las últimas cuatro semanas.
reason-big-step = { $load } es un salto mayor en tu material. Está abierto porque en el tope del rango todo fue bien.
reason-kit-gap = { $heavier ->
        [0] Con tu material no se puede hacer nada más pesado aquí, así que hasta { $more } repeticiones más.
       *[other] La siguiente carga de tu material es un salto demasiado grande, así que primero hasta { $more } repeticiones más.
    }
reason-nothing-lighter = { $load } es lo más ligero que permite aquí tu material.
reason-lay-off = { $days } días desde la última vez: como máximo el { $percent } % de la carga de entonces.
reason-level-up = Peldaño { $level }: el de abajo fue bien { $exposures } veces seguidas.
reason-level-down-load = Hoy ninguna carga de tu material sirve para { $variant }, así que el peldaño de abajo.
reason-level-down-symptom = { $symptom }: desde aquí, un peldaño más fácil. Se sube otra vez tras { $exposures ->
    [one] { $exposures } sesión sin síntomas y con la mañana siguiente tranquila.
   *[other] { $exposures } sesiones sin síntomas, cada una con la mañana siguiente tranquila.
}
reason-stay-down = { $clean } de { $exposures } sesiones sin síntomas y con la mañana siguiente tranquila desde “{ $symptom }”. Hasta entonces, este peldaño.
reason-after-symptom = La primera vez desde un síntoma: no más que la última vez.
reason-back-up = { $exposures ->
    [one] { $exposures } sesión sin síntomas y con la mañana siguiente tranquila
   *[other] { $exposures } sesiones sin síntomas, cada una con la mañana siguiente tranquila
}: otra vez el peldaño { $level }, con el { $percent } % de la carga de entonces como máximo.
reason-cue-change = { $symptom }: primero, cambiar la respiración, el recorrido o la posición.
# Week 0 means that no week is known or none applies.
reason-stage-effort = { $week ->
        [0] Mantener al menos { $target } repeticiones en reserva.
       *[other] Semana { $week }: mantener al menos { $target } repeticiones en reserva.
    }
reason-stage-unloaded = Semana { $week }: aún no se sostiene nada.
reason-stage-sets = Semana { $week }: { $sets ->
    [one] { $sets } serie como máximo.
   *[other] { $sets } series como máximo.
}
reason-stage-breathing = Semana { $week }: por ahora, respiración, suelo pélvico y caminar.
reason-learn-first = Primeras sesiones: aprender cómo se hace. Ligero, { $target } en reserva, { $sets ->
    [one] { $sets } serie.
   *[other] { $sets } series.
}
reason-light-week = Semana ligera: { $sets ->
    [one] 1 serie
   *[other] { $sets } series
}, { $target } en reserva. Esta semana nada crece.
reason-ease-in = Para entrar en calor o para terminar con calma: la menor carga que hay.
reason-after-illness = De vuelta tras una enfermedad: suave, { $target } en reserva, { $sets ->
    [one] { $sets } serie como máximo.
   *[other] { $sets } series como máximo.
}
reason-child-near = { $variant } queda fuera: no se sostiene nada por encima de la cabeza con un niño en la habitación.
reason-kit-away = { $variant } espera hasta que tu material esté otra vez a mano.
reason-tired-today = Hoy no es un día como siempre: { $target } en reserva.
reason-condition-reserve = { $condition }: { $target } en reserva.
reason-position-stage = { $week ->
        [0] { $variant } espera; en su lugar, otra posición.
       *[other] Semana { $week }: { $variant } espera; en su lugar, otra posición.
    }
reason-impact-waits = { $by ->
    [checks] { $variant } espera: { $open ->
        [one] queda por hacer una comprobación
       *[other] quedan por hacer { $open } comprobaciones
    } antes del impacto.
   *[stage] { $variant } espera: en esta etapa aún no hay nada con aterrizaje.
}
reason-condition-ruled-out = { $condition }: { $variant } queda fuera.
reason-restricted = { $variant } queda fuera: { $note }
reason-restricted-load = No más de { $load }: { $note }
reason-restricted-reserve = Al menos { $target } en reserva: { $note }
reason-kit-lacks = { $variant } necesita algo que no está en tu material.
reason-hold-waits = Esto queda en espera hasta que haya respuesta.
reason-red-waits = El entrenamiento espera hasta que la matrona, la médica o el centro de salud haya dado el visto bueno y esté anotado.
reason-clearance-waits = { $of ->
    [birth] Tras una cesárea o un desgarro grave: respiración, suelo pélvico y movilidad hasta que la matrona, la médica o el centro de salud haya dado el visto bueno.
    [birth-unsaid] No está anotado cómo fue el parto. Hay que añadirlo en Camino, o preguntar primero a la matrona o a la médica. Hasta entonces: respiración, suelo pélvico y movilidad.
   *[condition] { $condition }: respiración, suelo pélvico y movilidad hasta que la matrona, la médica o el centro de salud haya dado el visto bueno.
}
reason-clearance-first = { $condition }: sin entrenar hasta que la matrona, la médica o el centro de salud haya dado el visto bueno.
reason-clearance-over = Lo que permitió la matrona, la médica o el centro de salud valía hasta el { $day }. Hay que preguntarles si sigue valiendo.
reason-plan-rests = El plan está en pausa desde el parto. Sigue cuando clienta y entrenadora hayan dicho que sí.
reason-plan-rests-loss = El plan está en pausa. Sigue cuando clienta y entrenadora hayan dicho que sí.
reason-nothing-allowed = Hoy no hay ninguna opción abierta de este ejercicio.
reason-restart-lighter = Un nuevo comienzo, un { $percent } % más ligero, en la parte baja del rango.
reason-easier-today = { $symptom }: { $variant } para el resto de hoy.
reason-ends-today = { $symptom }: este ejercicio termina por hoy.
reason-unloaded-today = El resto de hoy sin carga, en posición acostada o sentada.
reason-reps-now = { $other_side ->
    [1] { $reps ->
        [one] 1 repetición, como con el otro lado.
       *[other] { $reps } repeticiones, como con el otro lado.
    }
   *[0] { $reps ->
        [one] Ahora 1 repetición en vez de { $planned }: según tus series de hoy, es lo que más se acerca a dejar { $target } en reserva.
       *[other] Ahora { $reps } repeticiones en vez de { $planned }: según tus series de hoy, es lo que más se acerca a dejar { $target } en reserva.
    }
}
reason-lighter-now = La última serie dejó menos reserva de lo previsto: se ofrece una carga más ligera.
reason-finding-up = La última serie dejó margen: ahora { $load }, para encontrar tu carga.
reason-she-chose = { $variant }: tu elección para hoy.
reason-fresh-start = Un nuevo comienzo: mantener { $target } repeticiones en reserva.
reason-rule-set-by-coach = { $noted ->
    [0] Tu entrenadora fijó esta regla para ti.
   *[other] Tu entrenadora fijó esta regla para ti: { $note }
}
