# Lo que va en papel: hoja de sesión, cuaderno, hoja de clase, carta; y lo que dice la pantalla que lo imprime.

print-decimal = ,
print-day = { $day } de { $month } de { $year }
print-month-1 = enero
print-month-2 = febrero
print-month-3 = marzo
print-month-4 = abril
print-month-5 = mayo
print-month-6 = junio
print-month-7 = julio
print-month-8 = agosto
print-month-9 = septiembre
print-month-10 = octubre
print-month-11 = noviembre
print-month-12 = diciembre
print-quoted = «{ $words }»
print-page = Página { $n } de { $all }
print-foot = Newel, hecho el { $day }. No es un producto sanitario: tu matrona, tu médica o tu fisioterapeuta tiene la última palabra.

## Cómo se usa

print-how-title = Cómo usar estas páginas
print-how-choose = Cada ejercicio tiene peldaños, del más fácil al más difícil. Elige el que le va bien a tu cuerpo hoy: con firmeza, sin dolor, sin escapes y sin pesadez.
print-how-left = «En reserva» es cuántas repeticiones más podrías haber hecho con buena técnica. Termina la serie cuando te queden tantas como está escrito.
print-how-easier = Si algo no va bien, termina la serie. Baja un peldaño o deja el ejercicio por hoy; las dos cosas son parte de entrenar.
print-how-talk = Tienes que poder hablar mientras entrenas. Ten agua a mano. En un día de mucho calor, no entrenes.
print-how-write = Apunta lo que hiciste y lo que notaste, también a la mañana siguiente. Tu entrenadora se guía por ello.
print-how-log-phone = Lo que escribas aquí a mano aún no está en Newel: apúntalo allí cuando puedas.

## Cuándo parar

print-stop-title = Para y pide ayuda
print-stop-lead = Termina la sesión de inmediato si aparece algo de esto. Llama a emergencias si es grave o si nadie contesta pronto; si no, llama ya a tu matrona, a tu médica o a tu centro.
print-stop-after = Un bulto nuevo, un dolor que crece o escapes nuevos: deja el ejercicio y consulta con tu matrona, tu médica o una fisioterapeuta de suelo pélvico. Si algo te preocupa, llama, diga lo que diga esta hoja.

## Una sesión

print-minutes = unos { $minutes } minutos
print-per-week = { $times ->
    [one] una vez por semana
   *[other] { $times } veces por semana
}
print-weeks = { $weeks ->
    [one] durante 1 semana
   *[other] durante { $weeks } semanas
}
print-phase = { $title }: { $weeks ->
    [one] 1 semana
   *[other] { $weeks } semanas
}
print-light-weeks = { $count ->
    [one] Semana ligera: { $list }
   *[other] Semanas ligeras: { $list }
}. La mitad de las rondas y una repetición más en reserva.
print-in-week = Semana { $week }: { $what }
print-lay-out = Ten a mano
print-block = { $letter }: { $form }
print-rounds = { $rounds ->
    [one] 1 ronda
   *[other] { $rounds } rondas
}
print-aim = { $count } en reserva
print-sets-of = { $sets ->
    [one] 1 serie de { $amount }
   *[other] { $sets } series de { $amount }
}
print-kit = Hace falta: { $things }
print-kit-one = una pesa
print-kit-pair = dos pesas iguales
print-kit-barbell = barra
print-kit-band = banda larga
print-kit-assist = banda larga que ayuda
print-figure = { $name }: el comienzo en tinta, el final en gris. { $setup }.
print-easier = Más fácil, para un día que lo pida: { $what }
print-rests = Hoy descansa
print-for = Para { $name }
print-stage-line = { $stage }, el { $day }
print-place = Lugar
print-move = Ejercicio
print-dose = Dosis
print-steps = Peldaños, del más fácil al más difícil
print-round = Ronda
print-round-of = Ronda { $n }
print-col-step = Peldaño
print-col-reps = Repeticiones
print-col-reps-side = Repeticiones izq. / der.
print-col-seconds = Segundos
print-col-load = Carga
print-col-left = En reserva
print-col-felt = Lo que noté
print-date = Fecha
print-felt-before = Cómo estoy antes (como siempre, con cansancio, mal)
print-session-effort = Cuánto costó todo, de 0 a 10
print-notes = Notas; cómo fue a la mañana siguiente

## Un cuaderno

print-contents = Contenido
print-sessions = Sesiones
print-moves = Los ejercicios, peldaño a peldaño
print-time = { $title }, vez { $n }
print-time-week = { $title }, semana { $week }, vez { $n }
print-effort-title = Qué quiere decir «en reserva»
print-effort-col-left = En reserva
print-effort-col-feels = Cómo se nota
print-effort-5 = Fácil. Podrías seguir mucho rato.
print-effort-4 = Con calma. Podrías hablar con frases enteras.
print-effort-3 = Con trabajo. Cuatro o cinco palabras seguidas; la técnica sigue limpia.
print-effort-2 = Duro. Las últimas van más lentas.
print-effort-1 = Muy duro. Una más, y ninguna otra.
print-effort-0 = No queda nada. Aquí no se busca.
print-effort-note = En reserva es lo que aún podrías hacer, no lo que deberías. En el embarazo y después del parto la reserva que se busca es mayor.

## Una hoja de clase

print-class-client = Clienta
print-class-lay-out = Preparar la sala
print-class-conflicts = No cuadra
print-class-cares = Tener en cuenta
print-class-alone = Solo para la entrenadora, no para la pared
print-class-rests = { $ladder } descansa: { $why }
print-class-changed-one = { $ladder }: cambiado por ti
print-class-closed = { $name } no entrena: { $why }
print-class-thing = { $count } × { $thing }
print-class-changed = cambiado por ti
print-class-care = { $name }: { $what }
class-chair = silla firme
class-plate = disco, { $weight }
class-short = { $thing }: hacen falta { $need } y hay { $have }. { $who }: por turnos, o cambia lo que hace una de ellas.
class-turn = { $name } se turna.
class-turn-instead = { $name } se turna o, mientras tanto, hace esto: { $what }, { $dose }.
class-kit-of = Con el material de la sala: { $name }
class-kit-own = Cada una con su propio material

## Una carta

print-letter-title = Entrenamiento de fuerza: resumen para la consulta
print-letter-about = { $name }
print-letter-birth = Fecha de nacimiento: ______________________
print-letter-opening = Acompaño a { $name } en su entrenamiento de fuerza en casa. Estos son hechos de su propio registro, tal como se apuntaron hasta el { $day }. No son un diagnóstico ni pretenden serlo.
print-letter-consent = { $name } dio su permiso el { $day } para que se le envíen.
print-letter-stage = En qué momento está
print-letter-stage-none = No consta ninguna etapa.
print-letter-mode = Parto: { $mode }
print-letter-tear = Contó un desgarro de tercer o cuarto grado.
print-letter-conditions = Contado en las preguntas de salud: { $what }
print-letter-baselines = Habitual antes de entrenar: { $what }
print-letter-cleared = Visto bueno de { $who } el { $day }
print-letter-waits = El entrenamiento espera un visto bueno.
print-letter-trained = Lo entrenado, semana a semana
print-letter-col-week = Semana
print-letter-col-sessions = Sesiones
print-letter-col-minutes = Minutos
print-letter-col-sets = Series hechas de las previstas
print-letter-col-effort = Frente a lo buscado
print-letter-effort-easier = más fácil (+{ $reps })
print-letter-effort-harder = más duro (−{ $reps })
print-letter-effort-as = como se buscaba
print-letter-trained-note = Frente a lo buscado: repeticiones que quedaron en reserva, según { $name }, menos las que se buscaban; media de la semana.
print-letter-loads = Carga y esfuerzo, ejercicio a ejercicio
print-letter-col-move = Ejercicio
print-letter-col-first = Primera
print-letter-col-last = Última
print-letter-col-left = En reserva entonces
print-letter-loads-note = Primera y última serie de trabajo del registro. «En reserva» es el número de repeticiones que quedaban, según dijo.
print-letter-symptoms = Síntomas tal como se marcaron
print-letter-col-day = Día
print-letter-col-what = Qué
print-letter-col-when = Cuándo
print-letter-col-after = A la mañana siguiente
print-letter-none = No se marcó ningún síntoma.
print-letter-in-move = durante { $move }
print-letter-at-check-in = contado antes de la sesión
print-letter-at-next-day = contado al día siguiente
print-letter-settled = pasado
print-letter-not-settled = no pasado
print-letter-unanswered = sin respuesta
print-letter-taken-back = retirado
print-letter-limits = Límites vigentes
print-letter-limit = { $what } ({ $note })
print-letter-limit-until = { $what }, hasta el { $day } ({ $note })
print-letter-no-limits = No consta ninguno más allá de las reglas generales del embarazo y de después del parto.
print-letter-question = Mi pregunta
print-letter-answer = Por favor, responda por escrito o por teléfono a { $name } o a mí. Lo que usted diga va por delante de todo lo que propone el programa.
print-letter-signed = Un cordial saludo
print-letter-caution = Hecho con Newel, un registro de entrenamiento. No es un producto sanitario ni diagnostica, y los síntomas son tal como los marcó la persona que entrena.

## La pantalla que imprime

print-title-handout = Hoja de sesión
print-title-booklet = Cuaderno
print-title-class = Hoja de clase
print-title-letter = Carta para la consulta
print-handout-name = { $title } – { $session }
print-about-handout = Una sesión, con figuras, dosis, precauciones y sitio para escribir a mano.
print-about-booklet = El programa entero: cómo se usa, cada sesión con páginas para escribir y cada ejercicio con sus peldaños.
print-about-class = Quién hace qué, para la pared: qué preparar, cuándo parar. La última hoja es solo para ti: etapas, qué descansa y por qué, límites.
print-about-letter = Hechos del registro para una matrona, médica o fisioterapeuta, con tu pregunta. Solo sale con su permiso.
print-title-rows = Registro para una hoja de cálculo
print-title-calendar = Calendario
print-about-rows = Todo su registro en filas (CSV): series, síntomas, respuestas. Lleva lo que marcó sobre su salud: guárdalo como guardarías una carta.
print-about-calendar = Sus sesiones en un archivo de calendario: solo título y hora, nada de la salud de nadie. La hora del reloj no cambia con el cambio de hora.
print-write-file = Escribir el archivo
print-written-file = Está en { $path }
calendar-from = Primer día
calendar-days = Días de la semana
calendar-at = Hora
calendar-weeks = Durante cuántas semanas
print-sheet = Papel
print-sheet-a4 = A4
print-sheet-letter = US Letter
print-write = Escribir el PDF
print-elsewhere = Elegir un lugar
print-doing = Componiendo
print-written = { $pages ->
    [one] 1 página
   *[other] { $pages } páginas
}, en { $path }
print-letter-to = A quién (una línea cada cosa)
print-letter-ask = Tu pregunta
print-letter-agreed = ¿Qué día dio su permiso para que salga?
print-letter-agreed-how = Sin su permiso no se hace ninguna carta.

## Una clase

class-open = En grupo
class-back = Volver al Planbook
class-title = En grupo: { $title }
class-sub = Una sesión, muchos cuerpos: quién hace qué hoy
class-who = { $count ->
    [0] ¿Quién viene?
    [one] Viene 1 persona
   *[other] Vienen { $count } personas
}
class-groups = Grupos
class-clients = Clientas
class-find = Buscar un nombre
class-none-found = Nadie con ese nombre.
class-no-clients = Aún no hay clientas. Añádelas en la lista.
class-choose = Elige un grupo, o una a una. La tabla muestra lo que hoy se propone a cada una según su propio registro.
class-show = Mostrar en la sala
class-closed = Hoy no entrena
class-closed-names = Hoy no entrenan: { $names }
class-room-how = Lo más que hace falta a la vez. Apunta lo que hay en la sala y se dirá qué falta.
class-room-how-kit = Lo más que hace falta a la vez. En «hay» está lo que dice el material de la sala; corrígelo donde haya más o menos.
class-short-below = De algo no hay bastante para todo el grupo a la vez. Debajo de la tabla se dice de qué, y quién se turna.
class-turns-how = En cada bloque las cosas se reparten en el orden de la tabla. Quien viene después se turna o hace lo que se puede con lo que queda.
class-kit = ¿Qué material hay?
class-kit-own-how = A cada una se le propone lo que puede hacer con el material que tiene en casa.
class-kit-room-how = A cada una se le propone lo que puede hacer con lo que hay en la sala. Su propia página y su registro no cambian. Donde un motivo dice «tu material», es el de la sala.
class-kit-new = Apuntar una sala
class-kit-edit = Qué hay en { $name }
class-room-title = El material de una sala
class-room-sub = Lo que hay allí para todo el grupo
class-room-name = Nombre de la sala
class-room-save = Guardar la sala
class-room-back = Volver a la clase
class-room-remove = Quitar esta sala
class-room-remove-sure = Quitarla del todo
class-room-keep = Dejarla
class-room-remove-how = Se olvidan la sala y lo contado en ella. Nada de lo entrenado cambia.
class-room-bar-have = Hay una barra de pesas
class-room-none = Nada aparte del suelo y una pared.
class-have = hay
class-have-of = Cuántas hay: { $thing }
class-cell = { $name }: { $ladder }
class-late-first = Si llega tarde, su primera ronda: { $what }, { $dose }.
class-change = Cambiarlo para ella
class-earlier = El bloque anterior
class-later = El bloque siguiente
class-late = Llega tarde
class-late-in = Ya va con todas
class-late-of = { $what }: { $name }
class-first-round = primera ronda
class-late-ask = Primero pregunta a { $name }: ¿cómo estás hoy?, ¿hubo algo desde la última vez?, ¿hay algo hoy? Después una ronda así, y a seguir con el grupo. Si hubo algo, su propio dispositivo dice qué significa.

## Un registro en filas

csv-col-day = Día
csv-col-time = Hora
csv-col-session = Sesión
csv-col-what = Qué
csv-col-move = Ejercicio
csv-col-variant = Variante
csv-col-round = Ronda
csv-col-side = Lado
csv-col-load = Carga
csv-col-kg = Carga en kg, en total
csv-col-reps = Repeticiones
csv-col-seconds = Segundos
csv-col-left = En reserva
csv-col-effort = Esfuerzo de la sesión, de 0 a 10
csv-col-note = Nota
csv-set = serie
csv-before = contado antes
csv-mark = síntoma
csv-end = final
csv-next-day = día siguiente
csv-stopped = terminada por un síntoma
csv-or-more = { $count } o más
