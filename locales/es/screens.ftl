# The screens beside Train and Desk: Start, Path, Kit, Send, Roster, Planbook, and her numbers.

## Start

start-lead = Newel guía tu entrenamiento de fuerza en el embarazo y después del parto, serie a serie y sin conexión, y prepara la próxima sesión según cómo fue la última.
start-not-medical = Newel no es un dispositivo médico y no diagnostica. Lo primero es lo que diga tu matrona (o partera) o tu médica, y las recomendaciones del lugar donde vives.
start-who = ¿Quién eres?
start-role-client = Entreno para mí
start-role-client-hint = Sesiones tarjeta a tarjeta, en este dispositivo
start-role-coach = Entreno a otras personas
start-role-coach-hint = Clientas, sus registros, sus planes
start-name = Tu nombre
start-name-hint = Tal como lo leerá tu entrenadora. Se queda en este dispositivo y en los archivos que generes.
start-name-missing = Escribe primero un nombre.
start-go-client = Empezar
start-go-coach = Abrir el panel
start-or-plan = De tu entrenadora
start-plan = Tengo un archivo de plan de mi entrenadora
start-plan-hint = Trae tu nombre y tu primera sesión.
start-demo-title = ¿Solo quieres mirar?
start-demo = Explorar con personas inventadas
start-demo-hint = Añade siete clientas inventadas y su entrenadora, con doce semanas de registros. Ninguna existe. Puedes salir de ahí cuando quieras.
start-demo-making = Inventando doce semanas de entrenamiento. Tarda unos segundos.
start-profiles = En este dispositivo
start-profile-client = entrena
start-profile-coach = es entrenadora
start-profile-demo = persona inventada
start-opening = Abriendo
demo-about-coach = Siete clientas y un panel por repasar
demo-about-amara = 31 semanas de embarazo, ya entrenaba; falta una respuesta sobre ayer
demo-about-noemi = 11 semanas tras una cesárea, pesadez en la zancada fija
demo-about-josie = 24 semanas de embarazo, empieza con las pesas; dolor de cintura pélvica; bandas elásticas y un par de pesas en lb
demo-about-freya = Siete meses después de un parto, mucho material, puede avanzar
demo-about-lucia = Dolor de muñeca, una banda elástica, doce días sin noticias
demo-about-hana = 40 semanas después de un parto, prolapso conocido, entrena como de costumbre
demo-about-selin = 34 semanas de embarazo; esta semana una señal paró el entrenamiento

## Her numbers

numbers-title = Tus números
numbers-hint = Aparecen en la tarjeta que se muestra cuando hay que parar de entrenar.
numbers-emergency = Número de emergencias
numbers-clinic = Matrona, médica o centro de salud
numbers-keep = Guardar los números
numbers-kept = Números guardados.

## Path

path-title = Camino
path-sub = En qué punto estás y cómo has llegado hasta aquí
path-empty = Aún no hay nada aquí. Tus escaleras llegan con el plan; tu registro, con la primera sesión.
path-ladders = Tus escaleras
path-level-of = Peldaño { $step } de { $of }
path-here = Estás aquí
path-held = En espera hasta que responda tu entrenadora
path-trend = Evolución de la fuerza
path-not-started = Aún sin entrenar
path-afresh = Empieza de nuevo
path-on-hold-step = Esta escalera está en espera
next-top = El peldaño más alto que está abierto ahora. Aún pueden subir la carga y las repeticiones.
next-rests = Sigue cuando la entrenadora haya respondido.
next-back = De vuelta al peldaño { $step } tras { $of ->
    [one] { $of } sesión
   *[other] { $of } sesiones
} sin “{ $symptom }” y con la mañana siguiente tranquila; de momento, { $done }.
next-earn = Lo siguiente: { $to }, tras { $of ->
    [one] { $of } sesión
   *[other] { $of } sesiones seguidas
} con { $by ->
    [seconds] { $count } segundos
   *[reps] { $count } repeticiones y { $reserve } o más en reserva
}{ $mark ->
    [load] , a { $kg } kg o con tu mayor carga
   *[none] { "" }
}; de momento, { $done }.
weeks-title = Tus semanas
weeks-now = Últimos siete días: { $minutes } minutos en { $sessions ->
    [one] una sesión
   *[other] { $sessions } sesiones
}.
weeks-guideline = La recomendación para tu etapa es de { $minutes } minutos sumando toda la actividad; caminar y lo demás no se cuenta aquí.
weeks-week = Desde
weeks-minutes = Minutos
weeks-sets = Series
weeks-sets-of = { $done } de { $planned }
weeks-effort = Esfuerzo
weeks-effort-as-meant = según lo previsto
weeks-effort-easier = { $by } más fácil
weeks-effort-harder = { $by } más duro
weeks-source = Marca de las barras: { $source }
path-find = Buscar una sesión
path-find-none = No hay ninguna sesión así.
path-or-variant = o { $variant }
path-log = Tus sesiones
path-log-empty = Aún no hay sesiones. Después de la primera, lo que hiciste aparece aquí junto a lo previsto.
path-log-more = Mostrar { $count ->
    [one] una sesión anterior
   *[other] { $count } sesiones anteriores
}

## Strength over time

trend-title = Fuerza: { $name }
trend-what = Estimación de lo que podrías mover una sola vez (repetición máxima, con la parte que pone tu propio cuerpo) y el intervalo en el que cae 8 de cada 10 veces.
trend-what-her = Repetición máxima (1RM) en kg de carga efectiva, con su intervalo del 80 %.
trend-summary = { $kg } kg el { $day } (entre { $low } y { $high }), desde { $first } kg el { $since }.
trend-summary-one = { $kg } kg el { $day } (entre { $low } y { $high }). Un solo día hasta ahora.
trend-marks = { $count ->
    [0] Ningún síntoma marcado en esta escalera.
    [one] Se marcó un síntoma en uno de estos días.
   *[other] Se marcaron síntomas en { $count } de estos días.
}
trend-none = Aún no hay fuerza que mostrar: hace falta una serie con carga y una respuesta sobre cuántas quedaban en reserva.
trend-walk = Día a día
trend-at = { $day }: { $kg } kg, entre { $low } y { $high }{ $marked ->
    [yes] ; se marcó un síntoma
   *[no] { "" }
}
trend-table = Los números en una tabla
trend-col-day = día
trend-col-kg = estimación, kg
trend-col-band = intervalo del 80 %, kg
trend-col-mark = síntoma
trend-marked = marcado
trend-not-marked = ninguno
trend-band-values = de { $low } a { $high }

## A session in the log

past-planned = previsto
past-done = hecho
past-left = en reserva: previstas / dichas
past-left-both = { $meant } / { $said }
past-left-meant = { $meant } en reserva
past-left-unsaid = sin decir
past-set = serie
past-stopped = cortada por una marca
past-corrected = { $text } (corregido)
past-not-planned = no previsto
past-instead = en lugar de { $variant }
past-effort = esfuerzo de la sesión: { $effort } de 10
past-minutes = { $minutes } min
past-marks = Lo que se notó
past-mark-unsaid = Sin describir
past-mark-round = serie { $round }
past-next-day = Mañana siguiente
past-next-settled = tranquila
past-next-not_settled = no tranquila
past-next-unanswered = sin respuesta
past-note = Nota
past-open = Sin terminar
past-today-after_illness = de vuelta tras una enfermedad
past-today-no_kit = sin el material
past-today-child_near = un niño en la habitación
past-today-pessary_in = con pesario
past-today-pessary_out = sin pesario
past-today-period = con la regla
past-readiness-usual = como siempre
past-readiness-tired = con cansancio
past-readiness-unwell = con malestar
past-side-left = izquierda
past-side-right = derecha
past-none = ninguno
past-counts-reps = { $counts } repeticiones
past-counts-seconds = { $counts } s
past-of-side = { $side } { $counts }

## Kit

kit-title = Material
kit-sub = Con qué puedes entrenar. Solo se proponen cargas que de verdad puedes montar.
kit-unknown = Aún sin rellenar. Hasta entonces no se propone nada que necesite pesas.
kit-weights = Mancuernas y otras pesas
kit-weights-hint = Toca una vez si tienes una, dos si tienes un par y otra vez si no tienes ninguna.
kit-unit = Las pesas están marcadas en
kit-sets = Añadir un juego de una vez
kit-set-light-pairs-kg = Pares: 1, 2, 3, 5 kg
kit-set-even-pairs-kg = Pares: 2, 4, 6, 8, 10 kg
kit-set-singles-kg = Sueltas: 8, 12, 16 kg
kit-set-light-pairs-lb = Pares: 3, 5, 8 lb
kit-set-even-pairs-lb = Pares: 5, 10, 15, 20, 25 lb
kit-set-singles-lb = Sueltas: 18, 26, 35 lb
kit-count-none = ninguna
kit-count-one = una
kit-count-pair = par
kit-other = Otra pesa
kit-other-value = Peso, tal como está marcado
kit-add-one = Añadir una
kit-add-pair = Añadir un par
kit-add-none = El peso es un número mayor que 0, hasta 500.
kit-owned = { $count ->
    [0] Aún sin pesas
    [one] Una pesa
   *[other] { $count } pesas
}
kit-bar = Barra de pesas y discos
kit-bar-have = Tengo una barra de pesas
kit-bar-weight = La barra vacía pesa
kit-plates = Pares de discos
kit-plates-hint = Un disco a cada lado. Añade cada par que tengas.
kit-plate-add = Añadir un par de { $weight }
kit-plate-other = Otro disco
kit-plates-none = Aún sin discos
kit-bands = Bandas elásticas largas
kit-bands-hint = Elige según lo dura que la notes. Los colores significan otra cosa con cada fabricante.
kit-band-add = Añadir: { $name }
kit-band-name = Cómo la llamas
kit-band-force = { $kg100 } kg al doble de su largo, { $kg200 } kg al triple
kit-band-measure = Medida con una báscula de equipaje
kit-band-measure-hint = Engánchala a la báscula y tira. Dos lecturas en kg.
kit-band-at100 = Al doble de su largo, kg
kit-band-at200 = Al triple, kg
kit-band-use = Usar estas lecturas
kit-band-wrong = La segunda lectura no puede ser menor que la primera; ambas, mayores que 0 y hasta 150 kg.
kit-bands-none = Aún sin bandas elásticas
kit-gains = Qué te abriría más opciones
kit-gains-hint = Peldaños de tu plan a los que solo les falta una pieza. Nada de esto es necesario.
kit-gain = { $count ->
    [one] un peldaño más
   *[other] { $count } peldaños más
}
kit-gain-where = { $ladder } { $steps }
kit-piece-one_weight = Una pesa
kit-piece-pair_of_weights = Un par de pesas
kit-piece-long_band = Una banda elástica larga
kit-piece-barbell = Una barra de pesas
kit-piece-thing-bench = Un banco
kit-piece-thing-pull_up_bar = Una barra de dominadas
kit-piece-thing-step = Un escalón
kit-piece-thing-straps = Cintas de suspensión
kit-piece-thing-loop_band = Una minibanda
kit-things = Otras cosas
kit-things-hint = Se da por hecho que hay una pared, suelo libre, una encimera o mesada y una silla firme.
kit-save = Guardar el material
kit-saved = Material guardado. La próxima propuesta ya lo usa.
kit-unsaved = Aún sin guardar
kit-mass = Peso corporal
kit-mass-hint = Puede quedar vacío: entonces se suponen 70 kg, y se indica. Se usa en los ejercicios en los que mueves tu propio cuerpo.
kit-mass-value = Peso corporal
kit-mass-save = Guardar el peso corporal
kit-mass-saved = Peso corporal guardado.
kit-mass-wrong = El peso corporal es un número mayor que 0, hasta 500.
kit-remove = Quitar { $what }
step-less = Menos: { $what }
step-more = Más: { $what }

## Send

send-title = Enviar
send-sub-client = Tu registro le llega a tu entrenadora como archivo, por la mensajería que uses con ella.
send-sub-coach = Los registros llegan como archivos y los planes salen como archivos, por la mensajería que uses con cada clienta.
send-log = Tu registro
send-log-what = { $records ->
    [0] Aún no hay nada en el registro.
    [one] Una entrada: sesiones, series, síntomas y respuestas.
   *[other] { $records } entradas: sesiones, series, síntomas y respuestas.
}
send-log-last = Última sesión: { $day }.
send-log-coach = Para { $coach }.
send-where = Se guarda en
send-write = Crear el archivo de registro
send-elsewhere = Elegir otro lugar
send-written = Creado: { $path }
send-written-size = { $records ->
    [one] Una entrada
   *[other] { $records } entradas
}, { $size }.
send-then = Ahora envía ese archivo a tu entrenadora: adjúntalo en cualquier mensajería o correo. Contiene datos de salud, así que elige un medio en el que confíes. Nada se ha enviado por sí solo.
send-nothing = No hay nada que guardar antes de la primera sesión.
send-plan-in = Un plan de tu entrenadora
send-plan-in-hint = { $programme ->
    [none] Aún no hay plan. Elige el archivo que te envió tu entrenadora.
   *[other] Tienes “{ $programme }”. Un plan más nuevo lo sustituye; tu registro se queda.
}
send-plan-choose = Importar un archivo de plan
send-logs-in = Registros de tus clientas
send-logs-in-hint = Elige un archivo o varios. Importar un archivo dos veces no cambia nada.
send-logs-choose = Importar archivos de registro
send-drop = o suéltalos aquí
send-taking = Leyendo
send-plans = Planes para tus clientas
send-plans-none = Aún no hay clientas. Añade la primera en Clientas.
send-plan-write = Crear archivo de plan
send-plan-none = aún sin programa
send-folder = Los archivos se guardan en { $folder }
size-B = { $value } bytes
size-kB = { $value } kB
size-MB = { $value } MB

## What became of the files

report-title = Importado
report-totals = { $files ->
    [one] Un archivo
   *[other] { $files } archivos
}, { $fresh ->
    [0] nada nuevo
    [one] una entrada nueva
   *[other] { $fresh } entradas nuevas
}{ $gaps ->
    [0] { "" }
    [one] , uno con un hueco
   *[other] , { $gaps } con huecos
}{ $refused ->
    [0] .
    [one] , uno rechazado.
   *[other] , { $refused } rechazados.
}
report-new = Nuevo
report-known = Ya conocido
report-gap = Hueco
report-partly = Importado en parte
report-refused = Rechazado
report-person = de { $name }
report-kind-log = registro
report-kind-plan = plan
report-counts = { $fresh ->
    [one] una nueva
   *[other] { $fresh } nuevas
}, { $known ->
    [one] una ya conocida
   *[other] { $known } ya conocidas
}
report-missing = { $count ->
    [one] Falta una entrada intermedia
   *[other] Faltan { $count } entradas intermedias
}. Pide de nuevo el archivo de registro: siempre lo contiene todo.
report-archived = Está archivada: la encuentras en «Archivadas», en Clientas.
report-unchanged = No cambió nada con este archivo.

## Roster

roster-title = Clientas
clients-read = Leyendo los registros: { $read } de { $count } clientas
roster-more = Mostrar { $count ->
    [one] una más
   *[other] { $count } más
}
roster-sub = { $count ->
    [0] Aún no hay clientas
    [one] Una clienta
   *[other] { $count } clientas
}
roster-empty = Añade tu primera clienta. Para empezar basta un nombre; la etapa y lo que recoja el cuestionario de salud hacen que las propuestas sean prudentes donde corresponde.
roster-add = Añadir una clienta
roster-edit = Editar
roster-edit-title = Editar: { $name }
roster-find = Buscar por nombre
roster-none-found = Nadie con ese nombre.
roster-open = Abrir: { $name }
roster-stage-unsaid = Etapa sin anotar
roster-conditions = Condiciones de salud
roster-restrictions = Restricciones
roster-clearance = Visto bueno
roster-clearance-waits = Pedido, sin anotar
roster-programme = Programa
roster-programme-none = Aún ninguno
roster-baselines = Síntomas habituales
roster-last = Última sesión
roster-last-none = Aún ninguna
roster-records = Entradas de su registro
roster-none = Nada
roster-until = hasta el { $day }
roster-open-ended = hasta que la retires

roster-name = Nombre
roster-name-missing = Hace falta un nombre.
roster-stage = Etapa
roster-baseline-kind = Síntoma
roster-baseline-amount = Intensidad habitual
roster-baseline-add = Añadir
roster-save = Guardar
roster-saved = Guardado. Le llega con el próximo archivo de plan.
roster-added = Añadida.

roster-restrict = Añadir una restricción
roster-restrict-title = Una restricción para { $name }
roster-restrict-what = Qué se descarta
roster-restrict-position = una posición
roster-restrict-caution = un tipo de esfuerzo
roster-restrict-variant = una variante
roster-restrict-level_above = los peldaños por encima de uno dado
roster-restrict-all_load = todo lo que lleve carga
roster-restrict-load_above = más de cierto peso
roster-restrict-reserve_below = las series duras
roster-restrict-breath_holding = aguantar la respiración
roster-restrict-most = Lo máximo que puede sostener
roster-restrict-least = El mínimo de repeticiones en reserva
roster-restrict-any-ladder = en todas las escaleras
roster-restrict-which = Cuál
roster-restrict-ladder = Escalera
roster-restrict-highest = Peldaño más alto que queda abierto
roster-restrict-until = Hasta (vacío: hasta que la retires)
roster-restrict-note = Por qué y quién lo dijo
roster-restrict-no-ladders = Asígnale antes un programa: aquí se elige entre sus escaleras.
roster-restricted = Restricción anotada. Le llega con el próximo archivo de plan.
roster-take-back = Retirar
roster-taken-back = Retirado.
roster-rule-position = No: { $what }
roster-rule-caution = No: { $what }
roster-rule-variant = No: { $what }
roster-rule-level_above = { $what }: hasta el peldaño { $step }
roster-rule-all_load = Nada con carga
roster-rule-load_above = No más de { $load }
roster-rule-load_above-on = { $what }: no más de { $load }
roster-rule-reserve_below = Al menos { $reps } en reserva en cada serie
roster-rule-breath_holding = Sin aguantar la respiración: se respira en cada repetición
position-standing = de pie
position-seated = sentada
position-kneeling = de rodillas
position-all_fours = a cuatro apoyos
position-side_lying = acostada de lado
position-incline = reclinada
position-supine = boca arriba
position-prone = boca abajo
position-hanging = colgada
caution-one_sided = carga en un solo lado
caution-wrist = peso sobre las muñecas dobladas
caution-midline = esfuerzo en la línea media del vientre
caution-overhead = trabajo por encima de la cabeza
caution-impact = impacto
caution-pelvic_hold = contraer el suelo pélvico

roster-safety = Página de seguridad
roster-give = Asignar un programa
roster-give-none = Aún no hay programas que asignar.
roster-given = { $count ->
    [one] «{ $title }» asignado. Le llega con el próximo archivo de plan.
   *[other] «{ $title }» asignado a { $count } clientas. Les llega con los próximos archivos de plan.
}

roster-filters = A quién ves
roster-filter-group = Grupo
roster-filter-waits = Pendiente
roster-filter-all = Todas
roster-filter-no-group = En ningún grupo
roster-filter-clear = Ver todas
roster-filter-stage-pregnant = Embarazo
roster-filter-stage-postpartum = Después de un parto
roster-filter-stage-after_loss = Después de una pérdida
roster-filter-stage-neither = Ninguna de las dos
roster-filter-stage-unsaid = Sin anotar
roster-filter-waits-waits = Algo espera tu respuesta
roster-filter-waits-plan = Falta enviar un plan
roster-filter-waits-log = Aún sin registro recibido
roster-found = Ves { $found } de { $count }
roster-no-programme = Aún sin programa
roster-week = semana { $week }
roster-week-of = semana { $week } de { $weeks }
roster-week-over = todas las semanas hechas
roster-last-never = Aún sin sesiones
roster-last-days = Última sesión { $days ->
    [0] hoy
    [1] ayer
   *[other] hace { $days } días
}
roster-kit-unsaid = Material sin anotar
roster-kit-nothing = Sin material
roster-kit-pairs = { $count ->
    [one] un par de pesas
   *[other] { $count } pares de pesas
}
roster-kit-singles = { $count ->
    [one] una pesa suelta
   *[other] { $count } pesas sueltas
}
roster-kit-heaviest = hasta { $load }
roster-kit-barbell = una barra
roster-kit-bands = { $count ->
    [one] una banda
   *[other] { $count } bandas
}
roster-plan-unfinished = Programa a medio escribir
roster-plan-not_sent = Plan aún sin enviar
roster-plan-older = Su plan es anterior a lo escrito ({ $day })
roster-plan-up_to_date = Plan al día, enviado el { $day }
roster-plan-unsent = { $count ->
    [one] Una entrada aún sin enviar
   *[other] { $count } entradas aún sin enviar
}
roster-log-in = Registro recibido el { $day }
roster-log-none = Aún sin registro recibido
roster-waits-red = Entrenamiento parado: una señal
roster-waits-holds = { $count ->
    [one] Una espera sin responder
   *[other] { $count } esperas sin responder
}
roster-waits-clearance = Falta un visto bueno
roster-archive = Archivar
roster-archive-what = Al archivarla sale de Clientas y del Panel. Sus registros quedan enteros y puedes recuperarla.
roster-bring-back = Recuperar
roster-archived = { $name }: archivada. Sus registros quedan enteros; está abajo, en «Archivadas».
roster-brought-back = { $name }: de vuelta.
roster-archived-list = Archivadas ({ $count })

group-title = Grupos
group-what = Los grupos son tu propio orden. Nada de ellos entra en los registros ni en los archivos de una clienta.
group-none = Aún no hay grupos.
group-new = Grupo nuevo
group-name = Nombre del grupo
group-members = { $count ->
    [0] Aún nadie
    [one] Una clienta
   *[other] { $count } clientas, en este orden
}
group-empty = Elige abajo.
group-find = Buscar una clienta
group-more = { $count } más: escribe un nombre para encontrarlas.
group-up = { $name }: un puesto antes
group-down = { $name }: un puesto después
group-drop = { $name }: fuera del grupo
group-cancel = Dejarlo como estaba
group-count = { $count ->
    [one] una clienta
   *[other] { $count } clientas
}
group-edit = Cambiar
group-edit-of = Cambiar: { $name }
group-remove = Quitar
group-remove-of = Quitar: { $name }
group-removed = «{ $name }» ya no está. A sus clientas no les cambia nada.
group-bring-back = Recuperarlo
group-kept = «{ $name }» queda guardado.

## Plan files for several, and what a revision changes

give-choose = Elige un programa
give-begins = Empieza el (vacío: enseguida)
give-begins-own = { $name } empieza el
give-to = { $count ->
    [0] Aún para nadie
    [one] Para una clienta
   *[other] Para { $count } clientas
}
give-keep = { $count ->
    [0] Asignar
    [one] Asignar a una clienta
   *[other] Asignar a { $count } clientas
}
plans-due = { $count ->
    [0] No falta ningún archivo de plan
    [one] Escribir el que falta
   *[other] Escribir los { $count } que faltan
}
plans-chosen = { $count ->
    [one] Escribir el elegido
   *[other] Escribir los { $count } elegidos
}
plans-elsewhere = En otra carpeta
plans-groups = Elegir por grupo
plans-choose-group = { $name } ({ $count })
plans-go = { $count ->
    [one] Escribir el archivo de plan
   *[other] Escribir { $count } archivos de plan
}
receipt-kept = El resguardo queda junto a ellos: { $file }.
revision-title = Qué cambia y para quién
revision-what = Aún no se ha escrito nada. Lo entrenado queda como se entrenó; esto vale para la próxima sesión.
revision-plan-none = Sin programa asignado
revision-plan-unfinished = Programa a medio escribir: aún sin archivo
revision-plan-not_sent = Su primer plan: { $title }
revision-plan-older = { $title }
revision-plan-up_to_date = { $title }, como en su último archivo
revision-begins = empieza el { $day }
revision-entries = { $count ->
    [one] una entrada tuya nueva
   *[other] { $count } entradas tuyas nuevas
}
revision-proposals = { $count ->
    [one] Se le propone distinto: un ejercicio
   *[other] Se le propone distinto: { $count } ejercicios
}
revision-proposals-same = Lo que se le propone no cambia.
revision-before = Ahora: { $offer }
revision-after = Después: { $offer }
revision-new = nada, es nuevo
revision-rest = descansa
revision-offered = { $variant }, { $sets } × { $dose }

## Planbook

planbook-title = Planes
planbook-sub = Planes y ejercicios: escribe los tuyos o empieza con una copia
planbook-empty = Aún no hay programas.
planbook-programme-line = { $sessions ->
    [one] Una sesión
   *[other] { $sessions } sesiones
}, { $week } por semana
planbook-revision = revisión { $revision }
planbook-light = { $count ->
    [one] Semana ligera: { $list }
   *[other] Semanas ligeras: { $list }
}
planbook-form-straight_sets = Series simples
planbook-form-superset = Superserie
planbook-form-tri_set = Triserie
planbook-form-giant_set = Serie gigante
planbook-form-finisher = Bloque final
planbook-form-warm_up = Calentamiento
planbook-form-cool_down = Vuelta a la calma
planbook-rounds = { $rounds ->
    [one] una ronda
   *[other] { $rounds } rondas
}
planbook-rest = { $seconds } s de descanso tras cada ronda
planbook-between = { $seconds } s entre ejercicios
planbook-back-to-back = sin pausa entre ejercicios
planbook-reps = { $low } a { $high } repeticiones
planbook-reps-one = { $low ->
    [one] { $low } repetición
   *[other] { $low } repeticiones
}
planbook-seconds = { $low } a { $high } s
planbook-seconds-one = { $low } s
planbook-left = { $count } en reserva
planbook-levels-all = todos los peldaños
planbook-levels = peldaños { $low } a { $high }

## Language

language-label = Idioma

## A day that is not filled in

date-none = aún sin fecha
