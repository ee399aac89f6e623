# Words that every screen shares: navigation, loads, doses, days, stages.

## Screens

screen-train = Entrenar
screen-path = Camino
screen-kit = Material
screen-send = Enviar
screen-desk = Panel
screen-roster = Clientas
screen-planbook = Planes
nav-label = Pantallas
app-name = Newel
app-skip-to-content = Ir al contenido
app-opening = Abriendo
profile-button = { $name }: perfil y ajustes
profile-demo = Una persona inventada de la demostración
profile-other = Cambiar de perfil
profile-as-client = Ver el lado de la clienta
profile-as-coach = Ver el lado de la entrenadora
scheme-label = Claro u oscuro
scheme-auto = Igual que el dispositivo
scheme-light = Claro
scheme-dark = Oscuro
app-version = Versión { $version }

## Buttons and notices

close = Cerrar
cancel = Cancelar
keep = Guardar
again = Intentar de nuevo
more = Más
less = Menos
why = Por qué
fewer-of = Menos: { $what }
more-of = Más: { $what }
reason-source = Regla { $rule }. Fuente: { $source }
error-title = Esto no se pudo hacer
error-unexpected = Pasó algo imprevisto: { $detail }
    .remedy = Lo que se registró antes está a salvo. Inténtalo de nuevo; si vuelve a pasar, cierra Newel y ábrelo otra vez.

## Stairs

stair-of = Peldaño { $now } de { $of }
stair-resting = { $of } peldaños, en pausa
flight-of = { $done } de { $of } series hechas

## Loads

unit-kg = kg
unit-lb = lb
load-weight = { $value } { $unit }
load-nothing = sin carga
load-none-short = Sin carga
load-pair = dos de { $each }
load-each = { $unit } c/u
load-total = { $unit } en total
load-bar = barra { $bar }, { $side } por lado
load-bar-empty = barra vacía, { $bar }
load-bands = banda elástica ({ $bands })
load-assist = con ayuda de { $bands }
load-bands-short = banda
load-assist-short = ayuda

## Doses

target-reps = { $count ->
    [one] 1 repetición
   *[other] { $count } repeticiones
}
target-reps-side = { $count ->
    [one] 1 repetición por lado
   *[other] { $count } repeticiones por lado
}
target-seconds = { $count ->
    [one] { $count } segundo
   *[other] { $count } segundos
}
target-seconds-side = { $count ->
    [one] { $count } segundo por lado
   *[other] { $count } segundos por lado
}
side-left = lado izquierdo
side-right = lado derecho
dose = { $amount }, { $load }
tempo = { $down } s bajando, { $up } s subiendo
tempo-pause = { $down } s bajando, { $pause } s de pausa, { $up } s subiendo
reserve-exactly = { $count } en reserva
reserve-at-least = { $count } o más en reserva
amount-pain = { $value } de 10

## Days and stages

day-today = hoy
day-yesterday = ayer
stage-pregnant = Embarazo
stage-pregnant-weeks = { $weeks ->
    [one] 1 semana de embarazo
   *[other] { $weeks } semanas de embarazo
}
stage-pregnant-days = { $days ->
    [one] { $weeks } semanas y 1 día de embarazo
   *[other] { $weeks } semanas y { $days } días de embarazo
}
stage-postpartum = { $weeks ->
    [0] Primera semana después del parto
    [one] 1 semana después del parto
   *[other] { $weeks } semanas después del parto
}
stage-after-loss = { $weeks ->
    [0] Primera semana después de una pérdida
    [one] 1 semana después de una pérdida
   *[other] { $weeks } semanas después de una pérdida
}
stage-neither = Sin embarazo ni parto reciente

## Things

thing-bench = Banco
thing-pull_up_bar = Barra de dominadas
thing-step = Escalón
thing-straps = Cintas de suspensión
thing-loop_band = Minibanda

# Algo propio de otra entrenadora cuyo nombre no vino con ello.
own-unknown-variant = Un ejercicio propio de una entrenadora
own-unknown-ladder = Una escalera propia de una entrenadora
