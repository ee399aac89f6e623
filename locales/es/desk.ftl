# The coach's Desk: why a client needs a look, and her story beside it.
# A finding `desk-<code>` gets its facts as arguments. A symptom or a ladder that is not known arrives as "none".
# A label stands after a colon or in brackets, so that no language has to bend it.

## Why she needs a look: training is stopped

desk-red-flag = Señal de alarma el { $day }: { $symptom }. Aún sin visto bueno.
desk-red-care = Señal de alarma el { $day }: pregúntale si ya la han atendido.
desk-clearance-waits = Hace falta el visto bueno de su matrona o su médica, y aún no está anotado.
desk-clearance-over = Un visto bueno era válido hasta el { $day }. Hace falta otro.

## Why she needs a look: something waits for the coach

desk-hold-waits = { $ladder ->
    [none] { $symptom ->
        [none] Entrenamiento en espera desde el { $day }. Falta tu respuesta.
       *[other] Entrenamiento en espera desde el { $day }: { $symptom }. Falta tu respuesta.
    }
   *[other] { $symptom ->
        [none] { $ladder }: en espera desde el { $day }. Falta tu respuesta.
       *[other] { $ladder }: en espera desde el { $day } ({ $symptom }). Falta tu respuesta.
    }
}
desk-plan-rests = { $coach ->
    [0] Parto el { $day }. El plan está en pausa hasta que ella diga que sigue y tú también.
   *[other] Parto el { $day }. Tú has dicho que el plan sigue; ella, todavía no.
}
desk-plan-rests-loss = { $coach ->
    [0] Una pérdida el { $day }. El plan está en pausa hasta que ella diga que sigue y tú también.
   *[other] Una pérdida el { $day }. Tú has dicho que el plan sigue; ella, todavía no.
}
desk-stage-differs = La etapa anotada por ella y la anotada por ti no coinciden. Vale la más prudente.
desk-symptom-repeated = { $ladder ->
    [none] { $symptom }: { $count ->
        [one] una marca.
        [2] dos marcas.
       *[other] { $count } marcas.
    }
   *[other] { $ladder }: { $symptom }, { $count ->
        [one] una marca.
        [2] dos marcas.
       *[other] { $count } marcas.
    }
}
desk-symptom-marked = { $ladder ->
    [none] Marca del { $day }: { $symptom }.
   *[other] { $ladder }, { $day }: { $symptom }.
}
desk-not-settled = El día siguiente al { $day } no fue tranquilo.
desk-next-day-unanswered = Sin respuesta sobre la mañana siguiente al { $day }. Cuenta como no tranquila.
desk-silence-after-symptom = { $days ->
    [one] Un día
   *[other] { $days } días
} sin registro después de un síntoma.
desk-own-words = { $day ->
    [none] Con sus palabras: “{ $words }”
   *[other] Con sus palabras, { $day }: “{ $words }”
}
desk-question = Pregunta: “{ $words }”
desk-check-in-unwell = El { $day } dijo que no se encontraba bien.
desk-effort-over = Más esfuerzo del que permite su etapa en { $count } de las últimas { $of } sesiones.
desk-load-jump = Salto de carga: { $variant }, { $load }.
desk-override-open = Lo que fijaste aún no está en un archivo de plan: “{ $words }”
desk-gap = { $count ->
    [one] Falta una entrada
   *[other] Faltan { $count } entradas
} en lo importado. Pídele que vuelva a crear el archivo de registro.
desk-check-sign = En las comprobaciones antes del impacto del { $day } apareció una señal.
desk-stage-moved = Etapa nueva desde el { $day }.
desk-near-due = { $days ->
    [0] La fecha prevista de parto es hoy.
    [one] Falta un día para la fecha prevista de parto.
   *[other] Faltan { $days } días para la fecha prevista de parto.
}

## Why she needs a look: worth a look

desk-dates-differ = La fecha prevista de parto y la que resulta de la última regla o de la transferencia se separan más de lo habitual. Pregúntale por cuál se guía la profesional que la atiende.
desk-screen-again = Toca repetir el cuestionario de salud desde el { $day }.
desk-screen-never = Aún sin cuestionario de salud.

desk-silence = { $days ->
    [one] Un día
   *[other] { $days } días
} sin registro.
desk-skipped = { $count ->
    [one] Una serie omitida
   *[other] { $count } series omitidas
} últimamente.
desk-ready-up = Puede avanzar en { $count ->
    [one] una escalera
   *[other] { $count } escaleras
}.
desk-kit-limit = { $ladder }: lo más pesado que permite su material.
# A code from a newer engine than this screen.
desk-unknown-finding = Algo por revisar: { $code }

## Urgency, said beside its shape

desk-urge-stop = Entrenamiento parado
desk-urge-attention = Pendiente
desk-urge-look = Por revisar

## The list

desk-title = Panel
desk-list-title = A quién prestar atención
desk-well = { $count ->
    [0] nadie más
    [one] y una sin nada pendiente
   *[other] y { $count } sin nada pendiente
}
desk-nobody = Ahora mismo nadie necesita tu atención.
desk-no-clients = Aún no hay clientas. Añade la primera en Clientas, asígnale un programa y crea su archivo de plan.
desk-taken-in = { $count ->
    [0] Ningún archivo de registro importado en el último día
    [one] Una entrada importada en el último día
   *[other] { $count } entradas importadas en el último día
}
desk-take-in = Importar archivos de registro
desk-last-session = última sesión: { $day }
desk-no-session = aún sin sesiones
desk-more-findings = { $count ->
    [one] y un aviso más
   *[other] y { $count } avisos más
}
desk-back = Todas las clientas
desk-choose = Elige una clienta a la izquierda para leer su historia.

## One client's story

desk-story-why = Lo que hay que ver
desk-all-well = Nada pendiente, según el registro.
desk-no-restrictions = sin límites fijados por ti
desk-restricted = { $count ->
    [one] una restricción
   *[other] { $count } restricciones
}
desk-cleared = visto bueno de { $who } el { $day }
desk-clearance-missing = visto bueno sin anotar
desk-no-conditions = sin condiciones de salud anotadas
desk-lead-strength = Fuerza
desk-where = En qué punto está
desk-step-of = Peldaño { $step } de { $of }
desk-not-started = Aún sin entrenar
desk-resting = en espera de tu respuesta
desk-resting-red = Todo en espera hasta un visto bueno
desk-show-trend = Mostrar la fuerza: { $ladder }
desk-sessions = Sesiones: lo previsto junto a lo hecho
desk-sessions-more = Mostrar { $count ->
    [one] una sesión anterior
   *[other] { $count } sesiones anteriores
}
desk-no-sessions = Aún no hay sesiones en su registro.
desk-col-day = día
desk-col-move = ejercicio
desk-col-planned = previsto
desk-col-done = hecho
desk-col-effort = en reserva: previstas / dichas
desk-col-marks = síntomas
desk-col-next = mañana siguiente
desk-filter = Ejercicios
desk-filter-all = Todos los ejercicios
desk-filter-one = Solo { $ladder }
desk-filter-none = Ninguna serie de esta escalera en estas sesiones.
desk-session-line = { $minutes ->
    [none] { $effort ->
        [none] esfuerzo de la sesión sin decir
       *[other] esfuerzo de la sesión: { $effort } de 10
    }
   *[other] { $effort ->
        [none] { $minutes } min
       *[other] { $minutes } min, esfuerzo de la sesión: { $effort } de 10
    }
}
desk-open-run = sin terminar
desk-note-hers = Su nota: “{ $words }”

## Holds, clearances

desk-holds = Falta tu respuesta
desk-hold-line = Desde el { $day }
desk-scope-ladder = esta escalera en espera
desk-scope-lower_body = todo el trabajo de caderas y piernas en espera
desk-scope-all = todo el entrenamiento en espera
desk-answer-go_on = Seguir, un peldaño más abajo
desk-answer-restart_lighter = Reanudar un 20 % más ligero
desk-answer-keep_resting = Mantener en espera
desk-answer-note = Unas palabras para ella (opcional)
desk-answered = Respuesta anotada. Le llega con el próximo archivo de plan.
desk-red-title = El entrenamiento está parado
desk-red-text = Se marcó una señal de alarma. Una respuesta aquí no la anula; solo un visto bueno de su matrona o su médica reabre el entrenamiento. Anótalo el día en que lo sepas.
desk-red-waits-title = El entrenamiento espera un visto bueno
desk-red-waits-text = Su cuestionario de salud pide un visto bueno antes de entrenar. Anótalo el día en que lo sepas.
desk-clear-record = Anotar un visto bueno

## What the coach does

desk-do = Qué puedes hacer
desk-do-note = Escribirle
desk-do-override = Fijar peldaño o carga
desk-do-next = Ver su próxima sesión
desk-note-label = Tus palabras para ella
desk-note-hint = Le llegan con el próximo archivo de plan.
desk-note-keep = Guardar la nota
desk-note-kept = Nota guardada. Le llega con el próximo archivo de plan.
desk-override-title = Desde dónde empieza
desk-override-ladder = Escalera
desk-override-level = Peldaño
desk-override-variant = Variante
desk-override-leave = lo que digan las reglas
desk-override-level-n = { $step }: { $variant }
desk-override-load = Carga
desk-load-leave = lo que digan las reglas
desk-load-nothing = sin peso en las manos
desk-load-one = una pesa
desk-load-pair = dos pesas iguales
desk-load-barbell = barra de pesas
desk-load-value = Peso de cada una
desk-load-bar = Barra vacía
desk-load-side = Discos a cada lado
desk-override-note = Por qué (ella lo lee)
desk-override-note-missing = Escribe unas palabras sobre el porqué: quedan en el registro.
desk-override-nothing = Elige un peldaño, una variante o una carga.
desk-override-keep = Fijar
desk-override-kept = Fijado. Le llega con el próximo archivo de plan.
desk-next-title = Próxima sesión: { $title }
desk-next-none = No hay próxima sesión: aún no tiene programa.
desk-next-closed = El entrenamiento está cerrado.
desk-next-sets = { $sets } × { $target }
desk-next-rests = En espera
desk-next-reserve = { $reserve } en reserva
desk-why = Por qué

## The plan file

desk-plan = Archivo de plan
desk-plan-unsent = { $count ->
    [0] Todo lo que escribiste está en un archivo de plan.
    [one] Una cosa aún no está en un archivo de plan.
   *[other] { $count } cosas aún no están en un archivo de plan.
}
desk-plan-write = Crear archivo de plan
desk-plan-elsewhere = Elegir otro lugar
desk-plan-written = Creado: { $path } ({ $size })
desk-plan-then = Envíaselo por cualquier mensajería. Ella lo importa en su pantalla Enviar.
desk-answers = Lo que escribiste y fijaste
desk-answers-none = Aún nada.
desk-sent = ya se envió
desk-unsent = aún sin enviar
desk-withdraw = Retirar
desk-kind-note = Nota
desk-kind-override = Ajuste de inicio
desk-kind-rule_setting = Ajuste de regla
desk-kind-hold_answered = Respuesta a una espera
desk-kind-restriction = Restricción
desk-kind-clearance = Visto bueno
desk-kind-answer = Respuesta
desk-kind-stage_changed = Etapa
desk-kind-screening = Cuestionario de salud
desk-kind-impact_checked = Comprobaciones antes del impacto
desk-kind-other = Entrada

## The coach's own words and pictures

moves-title = Movimientos
moves-sub = Todas las escaleras, desde el peldaño más fácil. Elige un movimiento para ver qué pide y sus errores frecuentes, y para poner tus propias indicaciones o una imagen tuya en lugar de las que trae el programa.
moves-line = { $own ->
    [0] { $levels } peldaños
   *[other] { $levels } peldaños, { $own } con palabras tuyas
}
moves-doubt = Dudoso:
moves-doubtful = dudoso
moves-slips = Errores frecuentes y qué hacer en su lugar
moves-top = ninguno por encima
moves-facts = Qué pide
moves-position = Postura
moves-held = Carga
moves-held-body = ninguna
moves-held-one = una pesa
moves-held-pair = una pesa en cada mano
moves-held-barbell = una barra
moves-held-band = una banda larga de la que tirar
moves-held-assist = una banda larga que lleva parte del peso
moves-needs = Material
moves-mind = Atención a
moves-usual = Inicio habitual
moves-usual-what = práctica común; deciden su propio inicio y la carga más ligera
moves-range = { $from } a { $to }
moves-ready = Peldaño siguiente
moves-ready-load = con { $load }, en lo alto del rango
moves-ready-help = con { $load } de ayuda o menos
moves-ready-reps = con { $count } repeticiones, o lo alto del rango
moves-ready-seconds = con { $count } segundos, o lo alto del rango
moves-step = Peldaño { $step }
moves-own = { $picture ->
    [yes] { $cues ->
        [0] tu imagen
       *[other] tus indicaciones y tu imagen
    }
   *[no] tus indicaciones
}
words-cues = Tus indicaciones
words-cues-how = Una idea por línea, como la dirías en la sala. Si lo dejas vacío, quedan las indicaciones del programa, que se ven en gris.
words-cue = Indicación { $nth }
words-picture = Tu imagen
words-picture-how = Ocupa el lugar de la figura en sus tarjetas. Se reduce y se vuelve a dibujar, para que el lugar y la hora de una foto no viajen con ella. Pide permiso a quien aparezca.
words-picture-choose = Elegir una imagen
words-picture-away = Quitar la imagen
words-picture-none = Este archivo no es una imagen que se pueda mostrar. Elige un archivo JPEG, PNG o WebP.
words-when = Tus clientas lo ven a partir del próximo plan que envíes.
words-keep = Guardar

## Writing programmes

planbook-own = tuyo
planbook-built-in = del programa
planbook-minutes = unos { $minutes } minutos
planbook-changes = Qué cambiaría y para quién
planbook-changes-nobody = Este programa aún no se ha dado a nadie. Dalo en la lista.
planbook-changes-same = Sin cambios, o todavía sin terminar, para: { $names }
planbook-write = Seguir escribiendo
planbook-copy = Escribir una copia propia
planbook-copy-title = { $title }, versión propia
planbook-new = Un plan nuevo
planbook-new-how = su nombre
planbook-new-go = Empezar
planbook-away = { $count ->
    [one] Un plan guardado aparte
   *[other] { $count } planes guardados aparte
}
planbook-take-out = Volver a sacarlo
write-done = Listo, todo queda guardado
write-undo = Deshacer
write-redo = Rehacer
write-title = Nombre
write-per-week = Sesiones por semana
write-weeks = Semanas (vacío: sin fin)
write-whole = Cada cambio se guarda al momento. Se puede asignar en Clientas.
write-not-whole = Cada cambio se guarda al momento. Se podrá asignar cuando cada sesión tenga un ejercicio.
write-week = Series por semana, sin bloques finales:
write-week-sets = { $what } { $sets }
write-session = Añadir una sesión
write-session-n = Sesión { $n }
write-session-title = Nombre de la sesión
write-minutes = Unos { $minutes } minutos tal como está escrita
write-away = Guardar aparte este plan
write-weeks-title = Semanas
write-weeks-which = Qué semana se escribe
write-weeks-every = Todas las semanas
write-weeks-chip = Semana { $week }{ $light ->
    [yes] , ligera
   *[no] { "" }
}{ $own ->
    [yes] , pide algo propio
   *[no] { "" }
}
write-weeks-light = Semana ligera
write-weeks-light-how = La mitad de las rondas, una repetición más en reserva, y nada crece.
write-weeks-alone = Lo que cambies ahora vale solo en la semana { $week }.
write-weeks-own = Propio de la semana { $week }.
write-weeks-usual = Como todas las semanas
write-weeks-others = { $count ->
    [one] La semana { $list } pide otra cosa
   *[other] Las semanas { $list } piden otra cosa
}
write-weeks-phase = Fase
write-weeks-count = semanas
write-weeks-phase-line = { $title }, { $weeks ->
    [one] 1 semana
   *[other] { $weeks } semanas
}
write-weeks-phase-n = Fase { $n }
write-weeks-phase-first = Dividirlo en fases
write-weeks-phase-add = Añadir una fase
write-weeks-open = Con un número de semanas, cada una puede pedir lo suyo.
step-title = Subir de semana en semana
step-how = Cada paso añade algo a los bloques de trabajo. Una semana ligera repite la anterior.
step-from = desde la semana
step-to = hasta la semana
step-every = cada … semanas
step-reps = + repeticiones
step-seconds = + segundos
step-rounds = + rondas
step-reserve = − reserva
step-go = Escribir estas semanas
step-even = Todas las semanas igual
write-part = para
part-warm_up = calentar
part-work = el trabajo
part-finisher = terminar
part-cool_down = volver a la calma
write-add = Añadir un bloque
write-add-how = Ejercicios por nombre, Intro tras cada uno; otra vez Intro los añade
write-add-go = { $part ->
    [warm_up] Añadir como calentamiento
    [finisher] Añadir como bloque final
    [cool_down] Añadir como vuelta a la calma
   *[work] { $count ->
        [one] Añadir como series simples
        [2] Añadir como superserie
        [3] Añadir como triserie
       *[other] Añadir como serie gigante
    }
}
write-none = Ningún ejercicio se llama «{ $typed }».
write-take-out = Quitar: { $what }
write-copy = Copiar: { $what }
write-earlier = Antes: { $what }
write-later = Después: { $what }
write-one-more = Un ejercicio más: { $what }
write-rounds = rondas
write-rest = descanso, s
write-between = entre ejercicios, s
write-ladder = Escalera
write-reps = reps
write-seconds = s
write-low = { $what }: como mínimo
write-high = { $what }: como máximo
write-left = { $what }: en reserva
write-left-unit = en reserva
write-more = { $levels }{ $tempo ->
    [yes] , { $down }-{ $pause }-{ $up }
   *[no] { "" }
}
write-levels = Peldaños
write-from = { $what }: desde el peldaño
write-to = { $what }: hasta el peldaño
write-tempo = Ritmo, s
write-tempo-down = bajando
write-tempo-pause = pausa
write-tempo-up = subiendo
write-tempo-free = dejarlo libre

## Escaleras y movimientos propios de la entrenadora

own-new = Escalera nueva
own-add = Añadir aquí
own-add-at = Añadir aquí: peldaño { $step } de { $ladder }
own-add-to = Un movimiento tuyo: { $ladder }
own-above = Añadir un peldaño encima
own-closed = La respiración, el suelo pélvico y la movilidad siguen mientras todo lo demás descansa; por eso aquí no caben movimientos propios. Tus indicaciones y tus imágenes sí.
own-yours = tuyo
own-yours-away = tuyo, retirado
own-ladder-how = Una escalera va del peldaño más fácil al más difícil. Empieza por el movimiento más fácil; los peldaños se añaden encima.
own-ladder-name = Nombre de la escalera
own-pattern = Tipo de movimiento
own-first = El peldaño más fácil
own-like = Como este, pero…
own-like-nothing = Desde cero
own-name = Nombre del movimiento
own-sides = Lados
own-sides-both = los dos
own-sides-one = uno cada vez
own-count = El peldaño siguiente toca por
own-count-reps = repeticiones
own-count-seconds = segundos
own-count-load = peso
own-ready-reps = Peldaño siguiente con tantas repeticiones
own-ready-seconds = Peldaño siguiente con tantos segundos
own-ready-load = Peldaño siguiente con tanto peso en total
own-mind = Qué exige
own-mind-how = Con esto la etapa, el cuestionario y tus restricciones descartan movimientos.
own-mind-open = sin responder: cuenta como sí
own-mind-yes = sí
own-mind-no = no
own-mind-counts = { $count ->
    [one] Queda una pregunta sin responder. Cuenta como sí, así que este movimiento se cierra a más clientas de las necesarias.
   *[other] Quedan { $count } preguntas sin responder. Cuentan como sí, así que este movimiento se cierra a más clientas de las necesarias.
}
own-words = Palabras de la tarjeta
own-words-how = colocación, respiración, indicaciones y errores; todo opcional
own-setup = Cómo se coloca
own-breath = Cómo respira
own-slip = Error frecuente { $nth } y qué hacer en su lugar
own-another = Así pasa a ser otro movimiento: uno nuevo ocupa su lugar y el de antes se retira. Lo entrenado queda como fue.
own-when = Tus clientas lo reciben con el próximo archivo de plan cuyo programa tenga esta escalera. No tiene figura; cuando esté guardado puedes añadirle una imagen tuya.
own-keep = Guardar los cambios
own-change = Cambiar
own-away = Retirar
own-away-what = Si lo retiras, deja de proponerse cuando llegue el próximo archivo de plan. Lo entrenado con él se conserva.
own-back = Volver a usar
own-back-what = Está retirado: no se propone y sigue ahí para lo que se entrenó con él.
own-rename = Guardar el nombre
own-picture-how = Una foto o un dibujo tuyos. Un movimiento tuyo no tiene figura.
