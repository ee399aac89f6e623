# Train: before, during and after a session. Short, plain, calm; a body that steps down has done nothing wrong.

back = Atrás
figure-play = { $name }: ver el movimiento
figure-pause = { $name }: pausa
figure-in = toma aire
figure-out = suelta aire

## Before a session

no-plan-title = Aún no hay plan
no-plan-what = Tu entrenadora te da un archivo de plan. Impórtalo y aquí tendrás tu primera sesión.
no-plan-step-1 = Tu entrenadora escribe un plan para ti y te lo manda como archivo, por el medio que prefieran.
no-plan-step-2 = Importas el archivo aquí. Es lo único que hace falta; a partir de ahí no se usa la red.
no-plan-step-3 = Tu primera sesión aparece en esta tarjeta, un ejercicio cada vez.
no-plan-take-in = Importar un plan
ready-number = Sesión { $number } de { $of }
ready-minutes = unos { $minutes } minutos
ready-week = Semana { $week } de { $weeks }
ready-light = Semana ligera: menos series, más reserva.
ready-left-open = Quedó a medias: { $day }. { $sets ->
    [one] Se guardó 1 serie.
   *[other] Se guardaron { $sets } series.
} Hoy sigue la próxima sesión.
ready-trained-today = Hoy ya has entrenado. La mayoría de los cuerpos necesita un día entre medias; sigue solo si el tuyo se siente descansado.
ready-begins = «{ $programme }» empieza el { $day }. Si quieres, puedes empezar antes.
ready-begin-earlier = Empezar antes
ready-later = «{ $programme }» empieza el { $day }. Hasta entonces sigue «{ $now }».
ready-look-early = Mirarlo, o empezar antes
ready-until-then = Hasta entonces sigue «{ $now }». Con tu primera serie de este ya habrá empezado.
ready-back-to-now = Volver a «{ $now }»
ready-over = { $programme }: { $weeks ->
    [one] su semana está entrenada.
   *[other] sus { $weeks } semanas están entrenadas.
} Envía tu registro a tu entrenadora y pregúntale qué sigue. Mientras tanto, el programa da otra vuelta.
ready-last = Última sesión: { $day }
ready-kit-unknown = Tu material aún no está anotado, así que las cargas son solo aproximadas.
ready-to-kit = Anotar mi material
ready-about-unknown = Aún no está anotado cómo estás: etapa, salud, qué dejar fuera. Unos toques, una sola vez.
ready-to-about = Anotarlo
ready-resting = Hoy en pausa: { $what }
ready-begin = Ir a las preguntas
block-line = { $form }, { $rounds ->
    [one] 1 ronda
   *[other] { $rounds } rondas
}
sets-of = { $sets ->
    [one] 1 serie
   *[other] { $sets } series
} de { $dose }
rests-today = Hoy en pausa

check-in-title = Antes de empezar
next-day-ask = Después de la última sesión ({ $day }): ¿todo tranquilo esa noche y a la mañana siguiente?
next-day-marked = Marcado entonces: { $what }
next-day-settled = Sí, todo tranquilo
next-day-not-settled = No, hubo algo
next-day-what = ¿Qué hubo?
next-day-keep = Guardar esta respuesta
next-day-why = Sin respuesta, cuenta como no tranquila.
readiness-ask = ¿Cómo estás hoy?
readiness-usual = Como siempre
    .hint = nada especial
readiness-tired = Con cansancio
    .hint = poco sueño, pocas fuerzas
readiness-unwell = Me siento mal
    .hint = resfriado, malestar; la fiebre se anota más abajo
today-ask = ¿Algo que contar de hoy?
today-after_illness = Vuelvo tras una enfermedad
    .hint = Tras una enfermedad: solo cuando ya hayas pasado un día sin fiebre. Dos sesiones suaves.
today-no_kit = No tengo aquí mi material
    .hint = Sin tu material: opciones que no lo necesitan. Tu peldaño se conserva.
today-child_near = Hay un niño en la habitación
    .hint = Con un niño en la habitación: no se sostiene nada por encima de la cabeza. Deja las pesas fuera de su alcance.
today-pessary_in = Con el pesario puesto
today-pessary_out = Sin el pesario
today-period = Tengo la regla
since-ask = ¿Algo que contar desde la última vez?
since-ask-first = ¿Algo que contar de los últimos días?
since-none = Nada
since-some = Algo
check-in-missing-readiness = Primero di cómo estás hoy.
check-in-missing-since = Di si hubo algo desde la última vez.
check-in-missing-which = Elige qué hubo y guárdalo.
check-in-start = Empezar
caution = Newel no es un dispositivo médico: la última palabra la tiene tu matrona, tu médica o tu fisioterapeuta. Mientras entrenas deberías poder hablar. Ten agua a mano. Los días de calor, no entrenes.

## Forms of a block

form-straight_sets = Series simples
    .how = Un ejercicio, con un descanso después de cada serie.
form-superset = Superserie
    .how = Dos ejercicios seguidos y luego un descanso.
form-tri_set = Triserie
    .how = Tres ejercicios, uno tras otro, y luego un descanso.
form-giant_set = Serie gigante
    .how = Cuatro ejercicios o más, uno tras otro, y luego un descanso.
form-finisher = Bloque final
    .how = Para terminar, a tu ritmo.
form-warm_up = Calentamiento
    .how = Fácil y ligero, para entrar en calor.
form-cool_down = Vuelta a la calma
    .how = Fácil y ligero, para terminar con calma.
block-sub = { $rounds ->
    [one] 1 ronda
   *[other] { $rounds } rondas
} de { $moves ->
    [one] 1 ejercicio
   *[other] { $moves } ejercicios
}, { $rest } s de descanso
changed-title = Por cómo estás hoy
lay-out = Ten preparado
block-go = Empezar este bloque

## A set

round-of = Ronda { $round } de { $rounds }
move-of = ejercicio { $position } de { $positions }
count-reps = repeticiones
count-seconds = segundos
load-label = carga
unit-reps = { $count ->
    [one] rep
   *[other] reps
}
unit-seconds = s
unit-minutes = { $count ->
    [one] minuto
   *[other] minutos
}
reserve-ask = Hecho. ¿Cuántas más habrías podido hacer?
reserve-left = En reserva
reserve-how = Un toque registra la serie.
reserve-how-aim = Un toque registra la serie. Hoy el objetivo es { $aim ->
    [5] 5 o más
   *[other] { $aim }
}.
aim = meta
reserve-tap = en reserva
set-unlogged = Esta serie aún no está anotada. Espera aquí tal como la pusiste: toca otra vez.
set-done = Hecho
logged-said = Registrado: { $dose } { $reserve }
feel = Algo no va bien
easier = Más fácil
skip = Saltar
skip-set = Dejar fuera esta serie
then = Después
lighter-offer = La última dejó poca reserva. Si quieres, hay otra carga: { $load }.
lighter-take = Elegir { $load }
cue-change = Esta vez cambia algo: suelta el aire antes, acorta el recorrido o ajusta la posición.
ten-reps-why = Primera vez aquí. Di qué podrías levantar diez veces, o búscalo serie a serie.
ten-reps = ¿Con qué harías diez repeticiones?
ten-reps-how = La carga que podrías levantar diez veces y con la que aún te quedaría un poco de reserva. Si tienes dudas, elige la más ligera.
purpose-find = Para encontrar la carga: haz las repeticiones y di con sinceridad cuántas más te quedaban.
purpose-learn = Para aprender el ejercicio: ligero, lento y solo hasta donde lo controles.
timer-label = Tiempo de esta serie
timer-start = Iniciar el reloj
timer-again = Empezar de nuevo
timer-stop = Parar el reloj

more-title = Más sobre esta serie y la sesión
more-how = Cómo
more-slips = Errores frecuentes y qué hacer en su lugar
more-why = Por qué esto
more-options = Otras opciones
more-options-none = Hoy no hay otra opción para esto.
more-session = Esta sesión
more-pause = Pausa
more-short = Solo tengo diez minutos
more-end = Terminar la sesión aquí
offer-stair = Peldaño { $to } de { $of }, ahora { $now }

## A rest

rest-word = descanso
rest-left = { $seconds ->
    [one] Queda { $seconds } segundo de descanso
   *[other] Quedan { $seconds } segundos de descanso
}
rest-how = Camina un poco; respira despacio y hacia el vientre
rest-over = Sigue cuando quieras
rest-less = 15 s menos
rest-more = 30 s más
rest-go = Ya puedo seguir
rest-go-over = Siguiente serie
logged = Registrado.
as-planned = Según lo previsto.
undo = Deshacer
correct = Corregir
correct-title = Corregir: { $name }

## A mark

mark-made = Marcado.
mark-at-set = { $ladder }, ronda { $round }.
mark-at-rest = Después de: { $ladder }.
mark-ends-set = La serie se detiene; no se pierde nada.
mark-keeps = No se pierde nada.
mark-kept = Anotado: { $name }
not-meant = Fue sin querer
symptom-what = ¿Qué has notado?
symptom-urgent = Señales que paran el entrenamiento
symptom-urgent-what = Si notas alguna de estas, elígela, aunque tengas dudas.
symptom-more = Más opciones
symptom-change = Cambiar
symptom-how-much = ¿Cuánto?
symptom-how-strong = ¿Con qué intensidad?
pain-0 = 0: ninguno
pain-10 = 10: el peor que puedas imaginar
symptom-where = Dónde
symptom-where-unsaid = No indicado
symptom-own-words = Con tus palabras
symptom-keep = Guardar esto
symptom-add = Algo más
symptom-drop = Quitar: { $name }
follows-unsaid = Di qué era
    .what = Si no lo dices, se toma con cautela y tu entrenadora lo lee.
follows-noted = Anotado
    .what = Tu entrenadora puede leerlo. El entrenamiento sigue como estaba.
follows-cue = La próxima serie, de otra manera
    .what = Suelta el aire antes, acorta el recorrido o ajusta la posición. Si vuelve a aparecer, pasarás a una opción más fácil.
follows-easier = Ahora, una opción más fácil
    .what = Para el resto de hoy: { $variant }, { $dose }. La próxima vez se empieza también ahí.
    .back = Valdrá la pena volver a probar el peldaño de arriba cuando las sesiones vayan sin síntomas y con la mañana siguiente tranquila.
follows-ladder-ends = { $ladder }: suficiente por hoy
    .today = El resto de la sesión sigue sin este ejercicio.
    .held = Queda en espera hasta que responda tu entrenadora. El resto de la sesión sigue.
follows-unloaded = Desde aquí, sin carga
    .what = En posición acostada o sentada, sin sostener nada, el resto de hoy.
follows-hold-ladder = Este ejercicio queda en espera
follows-hold-lower_body = El trabajo de caderas y piernas queda en espera
follows-hold-all = El entrenamiento queda en espera
follows-hold-ends = La sesión termina aquí y espera una respuesta.
follows-hold-goes-on = Queda a la espera de una respuesta de tu entrenadora, matrona o médica. El resto de la sesión sigue.
follows-stop = El entrenamiento se detiene aquí
refer = A quién acudir: { $who }
go-on = Seguir
go-on-unsaid = Seguir sin decirlo
go-on-cue = Seguir, de otra manera
go-on-easier = Hacer la más fácil
go-on-next = Ir al siguiente ejercicio
go-on-unloaded = Seguir sin carga
go-on-rest = Seguir con lo demás
go-on-end = Terminar la sesión
go-on-stop = Ver qué hacer
stop-today = Parar por hoy

## Training is closed

urgency-emergency = Llama ahora mismo a tu número de emergencias
urgency-call = Llama ahora mismo a tu matrona, médica o centro de salud
urgency-same_day = Ve hoy mismo a que te examinen
stop-word = El entrenamiento se detiene
stop-title = El entrenamiento se detiene aquí
hold-title = Entrenamiento en espera por ahora
hold-title-symptom = Entrenamiento en espera: { $name }
stop-numbers = A quién llamar
stop-emergency = Número de emergencias
stop-clinic = Matrona, médica o centro de salud
stop-no-answer = ¿Nadie responde pronto, o te sientes peor? Ve a urgencias o llama a tu número de emergencias.
stop-also = Además: { $what }
stop-numbers-none = Aquí no hay ningún número guardado. Primero llama, con el número que conozcas.
stop-numbers-add = Guardar números aquí
stop-numbers-edit = Cambiar los números
stop-next = Y después
stop-next-red = Podrás volver a entrenar cuando tu matrona, médica o centro de salud haya dado el visto bueno y lo hayas anotado tú o tu entrenadora. Lo que hiciste queda guardado.
stop-next-clearance = Podrás entrenar cuando tu matrona, médica o centro de salud haya dado el visto bueno y lo hayas anotado tú o tu entrenadora.
stop-next-hold = Podrás volver a entrenar cuando la respuesta indicada arriba haya llegado y esté anotada. Lo que hiciste queda guardado.
stop-not-medical = Newel no diagnostica. Si algo te preocupa, llama, diga lo que diga aquí.
stop-at = { $of ->
    [seconds] Segundos hechos antes
   *[reps] Repeticiones hechas antes
}, { $variant } (opcional)
stop-note = Qué se hizo, o cómo fue: para el registro, si quieres
stop-read = Lo he leído: terminar la sesión
hold-read = Terminar la sesión
to-send = Enviar el registro a tu entrenadora

undo-last = Deshacer: { $dose }

## Where

body-side = Lado del dibujo
body-front = Delante
body-back = Detrás
body-left = izquierda
body-right = derecha
body-list = O de una lista

## What suits her at this device

suits-title = A tu medida
suits-sound = Avisos sonoros al final de un descanso
suits-belly = Mostrar barriga
suits-hand = Mano que sostiene el teléfono
suits-hand-right = Derecha
suits-hand-left = Izquierda
suits-effort = Indicar el esfuerzo con
suits-effort-left = Repeticiones en reserva
suits-effort-rating = Puntuación, de 1 a 10
rating-ask = Hecho. ¿Cuánto esfuerzo fue, de 1 a 10?
rating-tap = de 10
rating-most = 5 o menos
rating-how = 10 es que no quedaba nada; 9, una repetición. Un toque registra la serie.
rating-how-aim = 10 es que no quedaba nada. Un toque registra la serie. Hoy el objetivo es { $aim }.

## Counting along

count-along = Llevar la cuenta
count-stop = Dejar de contar
count-up = sube
count-down = baja
count-wait = espera
count-of = { $count } de { $target }

## Pause and end

pause-title = En pausa
pause-what = Todo lo que hiciste queda guardado. Sigue cuando quieras, hoy; mientras tanto, las otras pantallas están abiertas.
pause-go = Seguir
short-what = Lo que queda, recortado a unos diez minutos.
finish-title = Listo por hoy
effort-ask = ¿Cuánto esfuerzo te pidió la sesión en conjunto?
effort-0 = como descansar
effort-2 = poco esfuerzo
effort-3 = esfuerzo moderado
effort-5 = esfuerzo grande
effort-7 = esfuerzo muy grande
effort-10 = todo lo que tenía
minutes-label = minutos
note-label = Una nota para tu entrenadora, si quieres
finish = Terminar

finished-title = Sesión hecha
finished-sets = { $of ->
    [one] de 1 serie
   *[other] de { $of } series
}
finished-effort = de 10 de esfuerzo
finished-mark = { $name }{ $amount }: { $ladder }
finished-morning = Antes de la próxima sesión, Newel te preguntará cómo fueron la noche y la mañana siguientes.
finished-onward = Otra sesión hoy
finished-next = Próxima: { $title }

more-own = Estas indicaciones son de tu entrenadora.
own-picture = { $name }, como lo muestra tu entrenadora
