# Stage, screening, clearances, what is ruled out. Read by both roles, so without "you" and "she" where both see it.
# Calm and short. After a loss nothing of it speaks of a baby.

safety-of = Seguridad: { $name }
you-title = Tú
you-show = Qué dejar fuera, preguntas de salud y lo que dijo la matrona o la médica

## Stage

stage-now = Ahora
stage-none = Aún no está anotada la etapa. De ella depende lo que está abierto.
stage-due = Fecha prevista de parto: { $day }, { $by ->
    [clinician] dada por { $who }
    [transfer] calculada desde la transferencia
    [ovulation] calculada desde la ovulación
    [insemination] calculada desde la inseminación
   *[last_period] calculada desde la última regla
}.
stage-due-clinician = personal de salud
stage-due-told = Dada el { $day }.
stage-disagrees = La fecha de parto dada ({ $given }) y la calculada ({ $reckoned }) difieren en { $days } días. Hay que preguntar a la matrona o a la médica cuál vale; hasta entonces vale la dada.
stage-aside = También anotado el { $day }: { $stage }. Vale lo más prudente. Hay que hablarlo y después retirar una de las dos.
stage-changed = Algo ha cambiado
stage-take-back = No es así: retirarlo
stage-kept = Anotado.
stage-taken-back = Retirado.
stage-ask = ¿Cuál es la situación ahora?
stage-choice-due = Embarazo: hay fecha de parto
    .hint = dada por una matrona, una médica o una ecografía
stage-choice-period = Embarazo: aún sin fecha de parto
    .hint = calculado desde la última regla
stage-choice-transfer = Embarazo: tras una transferencia de embrión
stage-choice-ovulation = Embarazo: se sabe el día de la ovulación
stage-choice-insemination = Embarazo: tras una inseminación
stage-choice-postpartum = El bebé ha nacido
stage-choice-after_loss = El embarazo ha terminado
stage-choice-neither = Ni embarazo ni posparto
stage-choice-unsaid = No indicado
stage-date-due = Fecha de parto
stage-date-period = Primer día de la última regla
stage-date-transfer = Día de la transferencia
stage-date-ovulation = Día de la ovulación
stage-date-insemination = Día de la inseminación
stage-date-postpartum = Día del parto
stage-date-after_loss = El día
stage-told-who = Quién la dio (opcional)
stage-told-on = Qué día la dio (opcional)
stage-embryo = El embrión tenía
stage-embryo-day3 = tres días
stage-embryo-day5 = cinco días
stage-mode = ¿Cómo fue el parto?
stage-mode-vaginal = Vaginal
stage-mode-assisted = Vaginal, con fórceps o ventosa
stage-mode-caesarean = Cesárea
stage-mode-unsaid = Mejor no decirlo
stage-tear = ¿Hubo un desgarro grave (de tercer o cuarto grado)?
stage-tear-no = No
stage-tear-yes = Sí
stage-tear-unsaid = No se sabe con certeza, o mejor no decirlo
stage-birth-then = Desde ahora el plan está en pausa, todo el tiempo que haga falta. Se retoma cuando parezca buen momento y la entrenadora haya dicho que sí.
stage-loss-then = Lo sentimos. Desde ahora el plan está en pausa, y no habrá preguntas. Queda aquí para cuando parezca buen momento; entonces responde la entrenadora.
stage-unsaid-then = Si no se indica, se toma con cautela: primero se pregunta a la matrona o a la médica.
stage-date-missing = Hace falta el día, tan exacto como se pueda decir.
stage-other = Elegir de nuevo
stage-keep = Anotarlo
stage-not-now = Ahora no

## The plan rests

rest-title = El plan está en pausa
rest-title-loss = El plan está en pausa
rest-birth = Desde el parto del { $day }. No hay prisa.
rest-loss = No hay prisa, y aquí no hay nada que hacer.
rest-loss-care = Si se te hace difícil, habla con tu matrona, tu médica o alguien cercano.
rest-birth-care = Llama ahora mismo a tu matrona, médica o centro de salud ante cualquiera de estas señales: una compresa o toalla higiénica empapada en una hora, fiebre, dolor de cabeza fuerte, cambios en la vista, dolor o hinchazón en una sola pierna, una herida que se abre o supura.
rest-client-yes-own = Has dicho que puedes seguir.
rest-emergency = Llama ahora mismo a tu número de emergencias ante cualquiera de estas señales: dolor en el pecho, falta de aire, una convulsión, un sangrado que no disminuye, pensamientos de hacerte daño o hacer daño a otras personas.
rest-loss-call = Llama ahora mismo a tu matrona, médica o centro de salud ante cualquiera de estas señales: una compresa o toalla higiénica empapada en una hora, fiebre, dolor fuerte o que va a más, flujo con mal olor.
rest-loss-ask = Antes de seguir, pregunta a tu matrona o médica desde cuándo puede hacerlo tu cuerpo.
rest-ready-loss-note = Pregunta si su matrona o médica ha dado el visto bueno.
rest-ready = Siento que puedo seguir
rest-tell = Avisa a tu entrenadora: envía el registro
rest-ready-coach = Puede seguir
rest-ready-note = Unas palabras para ella (opcional)
rest-client-yes = La clienta ha dicho que puede seguir.
rest-client-not = Ella aún no ha dicho que pueda seguir.
rest-coach-yes = La entrenadora ha dicho que sí.
rest-coach-not = Tu entrenadora aún no ha respondido. La respuesta llega con el próximo archivo de plan.
rest-coach-not-own = Falta que tú digas que sí.
rest-taken-up = Anotado. Cuenta cuando lo hayan dicho las dos partes.

## What waits for a clearance

open-title = Espera un visto bueno
open-none = Nada espera un visto bueno.
open-birth = Entrenar tras una cesárea o un desgarro grave
open-birth-unsaid = Entrenar, hasta que se indique cómo fue el parto
open-condition = { $condition }
open-red = Todo el entrenamiento, desde “{ $symptom }”, el { $day }
open-before = Todo el entrenamiento, desde una señal, el { $day }
open-hold = Lo que está en espera desde “{ $symptom }”, el { $day }
open-first = sin entrenar hasta entonces
open-meanwhile = mientras tanto, respiración, suelo pélvico y movilidad
open-ran-out = venció el { $day }
open-ask = Preguntar: { $ask }
clear-record = Anotar un visto bueno
clear-own = Tengo un visto bueno
clear-title = Lo que ha dicho la matrona o la médica (visto bueno)
clear-who = Quién lo dio
clear-who-hint = Nombre o función: matrona, partera, médica, fisioterapeuta
clear-on = Día en que se dijo
clear-said = Qué se dijo
clear-speaks-of = Para qué es el visto bueno
clear-speaks-hint = Marcar solo lo que se nombró. Lo demás sigue esperando.
clear-until = Vale hasta (vacío si no se dijo hasta cuándo)
clear-keep = Guardar esto
clear-fill = Falta completar esto.
clear-over = Esa fecha de fin ya ha pasado: así no se abre nada.
clear-missing = Hacen falta quién, cuándo, qué se dijo y para qué es.
clear-ahead = El día está en el futuro, o la fecha de fin es anterior a él.
clear-kept = Visto bueno anotado.
clearances-title = Vistos buenos
clearances-none = Ninguno anotado.
clearance-line = { $who }, { $day }: { $said }
clearance-until = hasta el { $day }
clearance-over = venció el { $day }
clearance-of = para: { $what }
clearance-of-all = para todo lo que esperaba entonces
clearance-of-birth = el parto

## Before impact

impact-title = Antes de saltar y correr
impact-lead = Se prueban una por una, con el cuerpo descansado y en suelo llano. Hay que parar ante pesadez, tirón hacia abajo, escapes, dolor o un bulto, y marcarlo.
impact-week = Abierto desde la semana { $week }. Probar antes lo decide la entrenadora.
impact-none = Aún sin probar.
impact-so-far = { $clear } de { $all } fueron bien, la última vez el { $day }.
impact-open-steps = La caída de talones y los rebotes pequeños están abiertos.
impact-open-all = La caída de talones, los rebotes pequeños y los saltos a una pierna están abiertos.
impact-open-no = Aún no está abierto nada con aterrizaje.
impact-not-asked = La entrenadora no pide estas comprobaciones.
impact-sign-then = Apareció una señal: por ahora, nada con aterrizaje. Hay que preguntar a una fisioterapeuta de suelo pélvico o a la médica.
impact-do = Anotar lo que se probó
impact-form = Qué se probó antes de saltar y correr
impact-on = Día
impact-part-first = Sin aterrizaje: abre la caída de talones y los rebotes pequeños
impact-part-lands = Con aterrizaje: abre los saltos a una pierna. Solo cuando todo lo anterior haya ido bien.
impact-count = { $count } { $of ->
    [minutes] { $count ->
        [one] minuto
       *[other] minutos
    }
    [seconds] segundos
   *[reps] { $count ->
        [one] vez
       *[other] veces
    }
}{ $side ->
    [yes] , por lado
   *[no] { "" }
}
impact-outcome-clear = Fue bien
impact-outcome-not_yet = Todavía no
impact-outcome-sign = Una señal
impact-note = Unas palabras sobre ello (opcional)
impact-keep = Guardarlo
impact-nothing = Aún no se ha completado nada.
impact-kept = Anotado.

## Signs

signs-title = Señales que pararon el entrenamiento, y lo que está en espera
signs-none = Ninguna.
sign-waits = en espera
sign-over = respondida

## Ruled out

out-title = Descartado ahora
out-none = No hay nada descartado.
out-by-stage = por la etapa
out-by-symptom = tras: { $symptom }
out-by-condition = { $condition }
out-by-coach = { $note }
out-until = hasta el { $day }
out-source = Regla { $rule }. Fuente: { $source }
effort-of-stage = Ahora: parar cada serie con { $target } o más repeticiones en reserva, nunca menos de { $floor }{ $sets ->
    [0] { "" }
    [one] , { $sets } serie como máximo
   *[other] , { $sets } series como máximo
}.
effort-of-stage-breathing = Ahora: respiración, suelo pélvico y caminar.

## Screening

screen-title = Cuestionario de salud
screen-never = Aún no se ha hecho el cuestionario de salud.
screen-due = Toca repetirlo desde el { $day }: { $why ->
    [trimester] ha empezado el trimestre { $number }.
    [birth] después del parto.
    [weeks_after] { $number } semanas después del parto.
    [loss] cuando venga bien.
    [sign] después de una señal o una espera.
   *[stale] el último tiene un año.
}
screen-do = Completar el cuestionario de salud
screen-again = Repetir el cuestionario de salud
screen-kept = Cuestionario de salud guardado.
screen-lead = Solo lo que es cierto hoy. No es un diagnóstico, y solo sale de este dispositivo en un archivo que se envía a propósito.
screen-group-pregnancy = Este embarazo
screen-group-after_birth = El parto y desde entonces
screen-group-body = Suelo pélvico, vientre, espalda, articulaciones
screen-group-health = Salud
screen-group-medicine = Medicamentos
screen-none-of = Nada de esto
screen-usual = Síntomas habituales
screen-usual-hint = Lo que hay casi todos los días, y con qué intensidad. Con esa intensidad se mantiene el peldaño; por encima, un peldaño menos.
screen-before = Experiencia con pesas
screen-before-yes = Con experiencia
screen-before-no = Poca, o hace mucho tiempo
screen-before-never = Ninguna hasta ahora: primero se aprenden los ejercicios
screen-note = Qué más hay que saber (opcional)
screen-keep = Guardarlo
screen-asks-provider = primero se pregunta a la matrona o a la médica
screen-asks-clearance = sin entrenar hasta un visto bueno
screen-conditions = Condiciones de salud
screen-named-client = lo dice la clienta
screen-named-coach = lo dice la entrenadora
screen-side = Dicho de forma distinta
screen-side-client = La clienta, { $day }
screen-side-coach = La entrenadora, { $day }
screen-side-what = Se guardan las dos respuestas, y vale la más prudente.
screen-over = Hablado con ella: lo suyo del { $day } ya no cuenta
screen-over-note = Qué se dijo (necesario)
screen-over-missing = Hace falta una nota para dejar a un lado lo que ella dijo.
screen-trained = Con experiencia en pesas
screen-new = Poca experiencia con pesas
screen-never-trained = Sin ninguna experiencia con pesas

## Rules for one client

rules-title = Reglas para ella
rules-none = Todas las reglas están como las trae Newel.
rules-set = Fijar una regla para ella
rules-which = Regla
rules-numbers = Números
rules-signs = Qué hace una señal
rules-value = Valor nuevo (de { $least } a { $most }; { $stricter ->
    [more] más es más estricto
   *[less] menos es más estricto
})
rules-class = Qué hace
rules-class-note = solo se anota
rules-class-cue = la próxima serie, de otra manera
rules-class-drop = un peldaño menos
rules-class-hold = en espera hasta que haya respuesta
rules-class-red = el entrenamiento se detiene
rules-would = Entonces diría: { $sentence }
rules-pack = Como la trae Newel: { $value }
rules-note = Por qué (necesario para suavizarla)
rules-until = Hasta (vacío: hasta que la restablezcas)
rules-number-grow = las repeticiones pueden aumentar durante la sesión (1 sí, 0 no)
rules-number-binds_all = la probabilidad limita también las repeticiones
rules-number-slack = holgura bajo el objetivo
rules-number-alpha = probabilidad de quedar bajo el mínimo
rules-number-floor_below_target = mínimo bajo el objetivo
rules-number-share = proporción
rules-number-alone_over_target = en reserva sobre el objetivo, una vez
rules-number-days_1 = primeros días sin entrenar
rules-number-share_1 = proporción tras los primeros
rules-number-days_2 = más días sin entrenar
rules-number-share_2 = proporción tras más días
rules-number-more_reserve = más en reserva
rules-number-room_over_target = margen sobre el objetivo
rules-number-finding_sets = series para encontrar una carga
rules-number-finding_from_week = búsqueda desde la semana
rules-number-share_of_group = proporción de lo que se pudo en otra opción
rules-number-chance = probabilidad que trae una carga más ligera
rules-number-over_target = en reserva sobre el objetivo
rules-number-more_reps = más repeticiones
rules-number-times_lower = veces la carga, caderas y piernas
rules-number-times_upper = veces la carga, hombros y brazos
rules-number-next_times_lower = siguiente carga hasta, caderas y piernas
rules-number-next_times_upper = siguiente carga hasta, hombros y brazos
rules-number-exposures = veces seguidas
rules-number-most_of_body = máximo del peso corporal
rules-number-sessions = sesiones
rules-number-marks = marcas
rules-number-pain = número de dolor
rules-number-weeks_after = semanas después de un parto o una pérdida
rules-number-pregnant_floor = nunca menos de
rules-number-from_week = desde la semana
rules-number-asked = se piden: 1, o 0 si no
rules-number-least_reserve = mínimo en reserva
rules-number-sets = series
rules-number-reserve = en reserva
rules-number-least_target = repeticiones en reserva, con poca experiencia
rules-number-trained_target = repeticiones en reserva, con experiencia
rules-number-least_floor = nunca menos de
rules-number-most_sets = series como máximo
rules-keep = Fijarla
rules-back = Otra vez el valor original
rules-kept = Fijada. Le llega con el próximo archivo de plan.
rules-line = { $what }: { $value }
rules-tighter = más estricta
rules-looser = más suave
rules-refused = no tiene efecto

## Loosened

loosened-title = Suavizado
loosened-none = No se ha suavizado nada.
loosened-rule = Regla { $rule }
loosened-intake = Se dejó a un lado su propio cuestionario de salud
loosened-over = ya no está en vigor
