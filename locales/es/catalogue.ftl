# Ladders, variants and their cues. Ids stand in crates/engine/data/catalogue.json.
# .setup: what is held and where one stands. .breath: when to breathe out. .cue1 to .cue3: what to mind.
# Words, order of levels and ready marks are common practice, no source, unless catalogue.json names one.

## Squat

ladder-squat = Sentadilla

variant-squat-high-chair = Sentarse y levantarse, asiento alto
    .setup = Cojín firme en una silla estable, pies bajo las rodillas
    .breath = Suelta el aire al levantarte
    .cue1 = Inclínate hacia delante hasta tener el peso sobre los pies
    .cue2 = Levántate apoyando todo el pie
    .cue3 = Siéntate despacio, contando hasta tres
variant-squat-chair = Sentarse y levantarse de la silla
    .setup = Silla estable contra la pared, pies al ancho de las caderas
    .breath = Suelta el aire al levantarte
    .cue1 = Lleva la nariz sobre los pies y levántate
    .cue2 = Las rodillas siguen la línea de los pies
    .cue3 = Roza el asiento con suavidad antes de volver a subir
variant-squat-goblet-chair = Sentadilla goblet a la silla
    .setup = Una pesa en vertical junto al pecho, la silla detrás
    .breath = Suelta el aire al subir
    .cue1 = La pesa, cerca del esternón
    .cue2 = Lleva la cadera atrás hasta rozar el asiento
    .cue3 = Empuja el suelo para subir
variant-squat-free = Sentadilla sin peso
    .setup = Pies algo más abiertos que las caderas, manos delante
    .breath = Suelta el aire al subir
    .cue1 = Cadera atrás y abajo, como hacia un asiento bajo
    .cue2 = Los talones no se despegan del suelo
    .cue3 = Baja solo hasta donde te sientas estable
variant-squat-goblet = Sentadilla goblet
    .setup = Una pesa junto al pecho, pies algo más abiertos que las caderas
    .breath = Suelta el aire al subir
    .cue1 = Baja como si te sentaras entre las rodillas
    .cue2 = Los codos, debajo de la pesa
    .cue3 = Todo el pie en el suelo, al bajar y al subir
variant-squat-two-dumbbells = Sentadilla con dos pesas
    .setup = Una pesa en cada mano, a los lados o en los hombros
    .breath = Suelta el aire al subir
    .cue1 = Pecho abierto mientras bajas
    .cue2 = Las rodillas siguen la línea de los pies
    .cue3 = Termina con el cuerpo bien erguido antes de la siguiente

## Hip hinge

ladder-hinge = Bisagra de cadera

variant-hinge-wall-tap = Bisagra de cadera a la pared
    .setup = De espaldas a una pared, a la distancia del largo de un pie
    .breath = Suelta el aire al subir
    .cue1 = Lleva la cadera atrás hasta tocar la pared
    .cue2 = Rodillas sueltas, tibias verticales
    .cue3 = Espalda larga, de la cabeza al coxis
variant-hinge-one-dumbbell = Bisagra de cadera, una pesa
    .setup = Una pesa con las dos manos, delante de los muslos
    .breath = Suelta el aire al subir
    .cue1 = La cadera va atrás antes de que se incline el pecho
    .cue2 = La pesa baja y sube cerca de las piernas
    .cue3 = Lleva la cadera adelante hasta erguirte del todo
variant-hinge-band = Bisagra de cadera con banda elástica
    .setup = De pie sobre la banda, un extremo en cada mano
    .breath = Suelta el aire al subir
    .cue1 = Tensa la banda antes de la primera
    .cue2 = Cadera atrás, tibias verticales
    .cue3 = Sube del todo y quédate arriba un momento
variant-hinge-two-dumbbells = Bisagra de cadera, dos pesas
    .setup = Una pesa en cada mano, delante de los muslos
    .breath = Suelta el aire al subir
    .cue1 = Las pesas bajan y suben cerca de las piernas
    .cue2 = Detente justo antes de que la espalda se redondee
    .cue3 = Empuja el suelo para subir
variant-hinge-barbell = Bisagra de cadera con barra
    .setup = Barra en los muslos, manos justo por fuera de las piernas
    .breath = Suelta el aire al subir
    .cue1 = La barra no se separa de las piernas
    .cue2 = Cadera atrás, espalda larga
    .cue3 = Hombros abajo, lejos de las orejas

## Offset hinge

ladder-offset-hinge = Bisagra de cadera asimétrica

variant-offset-hinge-held = Bisagra asimétrica, con apoyo
    .setup = Un pie medio paso atrás, sobre la punta; una mano en la pared
    .breath = Suelta el aire al subir
    .cue1 = Casi todo tu peso, en el pie delantero
    .cue2 = Los dos lados de la cadera miran al frente
    .cue3 = Inclínate solo hasta donde te sientas estable
variant-offset-hinge-loaded = Bisagra asimétrica, con peso
    .setup = Una pesa delante de ti, un pie medio paso atrás
    .breath = Suelta el aire al subir
    .cue1 = El pie delantero carga; la punta del otro te estabiliza
    .cue2 = La pesa baja y sube cerca de la pierna delantera
    .cue3 = Los dos lados de la cadera, a la misma altura
variant-offset-hinge-single-held = Bisagra a una pierna, con apoyo
    .setup = De pie sobre una pierna, una mano en la pared
    .breath = Suelta el aire al subir
    .cue1 = Rodilla suelta en la pierna de apoyo
    .cue2 = Alarga la pierna libre hacia atrás
    .cue3 = Los dos huesos de la cadera miran al suelo
variant-offset-hinge-single-free = Bisagra a una pierna, sin apoyo
    .setup = De pie sobre una pierna, con una pared a mano
    .breath = Suelta el aire al subir
    .cue1 = La cabeza y el talón de atrás se mueven en una línea
    .cue2 = Tan despacio que podrías parar en cualquier punto
    .cue3 = Apoya la punta del pie cuando lo necesites
variant-offset-hinge-single-loaded = Bisagra a una pierna, con peso
    .setup = Una pesa en la mano contraria a la pierna de apoyo
    .breath = Suelta el aire al subir
    .cue1 = Deja colgar la pesa debajo del hombro
    .cue2 = Los dos huesos de la cadera miran al suelo
    .cue3 = Apoya la punta del pie cuando lo necesites

## Bridge

ladder-bridge = Puente de glúteos

variant-bridge-two-legs = Puente de glúteos
    .setup = Boca arriba, rodillas dobladas, pies cerca de la cadera
    .breath = Suelta el aire al subir
    .cue1 = Empuja con los talones
    .cue2 = Sube hasta alinear hombros, cadera y rodillas
    .cue3 = Baja despacio, contando
variant-bridge-two-legs-incline = Puente de glúteos, espalda elevada
    .setup = Cabeza y espalda sobre cojines firmes, rodillas dobladas
    .breath = Suelta el aire al subir
    .cue1 = Empuja con los talones
    .cue2 = Sube hasta alinear hombros, cadera y rodillas
    .cue3 = Baja despacio, contando
variant-bridge-band = Puente de glúteos con minibanda
    .setup = Boca arriba, minibanda justo por encima de las rodillas
    .breath = Suelta el aire al subir
    .cue1 = Abre las rodillas con suavidad contra la banda
    .cue2 = Sube hasta alinear hombros, cadera y rodillas
    .cue3 = La banda sigue abierta mientras bajas
variant-bridge-band-incline = Puente con minibanda, espalda elevada
    .setup = Espalda sobre cojines, minibanda por encima de las rodillas
    .breath = Suelta el aire al subir
    .cue1 = Abre las rodillas con suavidad contra la banda
    .cue2 = Sube hasta alinear hombros, cadera y rodillas
    .cue3 = La banda sigue abierta mientras bajas
variant-bridge-paused = Puente de glúteos con pausa
    .setup = Boca arriba, rodillas dobladas, pies cerca de la cadera
    .breath = Suelta el aire al subir
    .cue1 = Empuja con los talones
    .cue2 = Quédate arriba contando hasta tres, sin dejar de respirar
    .cue3 = Costillas abajo; trabajan los glúteos
variant-bridge-paused-incline = Puente con pausa, espalda elevada
    .setup = Cabeza y espalda sobre cojines firmes, rodillas dobladas
    .breath = Suelta el aire al subir
    .cue1 = Empuja con los talones
    .cue2 = Quédate arriba contando hasta tres, sin dejar de respirar
    .cue3 = Costillas abajo; trabajan los glúteos
variant-bridge-loaded = Puente de glúteos con peso
    .setup = Boca arriba, pesa sobre los huesos de la cadera, vientre libre
    .breath = Suelta el aire al subir
    .cue1 = Sujeta la pesa quieta con las dos manos
    .cue2 = Empuja con los talones
    .cue3 = Baja despacio, con la pesa nivelada
variant-bridge-loaded-incline = Puente con peso, espalda elevada
    .setup = Espalda elevada, pesa en los huesos de la cadera, vientre libre
    .breath = Suelta el aire al subir
    .cue1 = Sujeta la pesa quieta con las dos manos
    .cue2 = Empuja con los talones
    .cue3 = Baja despacio, con la pesa nivelada
variant-bridge-single-leg = Puente de glúteos a una pierna
    .setup = Boca arriba, un pie apoyado, la otra pierna levantada
    .breath = Suelta el aire al subir
    .cue1 = Empuja con el talón apoyado
    .cue2 = Los dos lados de la pelvis, a la misma altura
    .cue3 = Sube menos si así la pelvis sigue nivelada
variant-bridge-single-leg-incline = Puente a una pierna, espalda elevada
    .setup = Espalda sobre cojines, un pie apoyado, una pierna levantada
    .breath = Suelta el aire al subir
    .cue1 = Empuja con el talón apoyado
    .cue2 = Los dos lados de la pelvis, a la misma altura
    .cue3 = Sube menos si así la pelvis sigue nivelada

## Thrust

ladder-thrust = Empuje de cadera

variant-thrust-two-legs = Empuje de cadera
    .setup = Omóplatos en el borde del sofá o de una silla contra la pared
    .breath = Suelta el aire al subir
    .cue1 = Pies bajo las rodillas, empuja con los talones
    .cue2 = Sube la cadera casi hasta la altura de las rodillas
    .cue3 = El pecho queda por encima de la cadera, costillas abajo
variant-thrust-kneeling = Empuje de cadera, de rodillas
    .setup = De rodillas sobre un cojín, con una silla delante a mano
    .breath = Suelta el aire al subir
    .cue1 = Lleva la cadera hacia los talones, hasta donde resulte fácil
    .cue2 = Empuja la cadera hacia delante hasta erguirte
    .cue3 = Arriba, glúteos firmes y costillas encima de la cadera
variant-thrust-paused = Empuje de cadera con pausa
    .setup = Omóplatos en el borde del sofá o de una silla contra la pared
    .breath = Suelta el aire al subir
    .cue1 = Empuja con los talones
    .cue2 = Quédate arriba contando hasta tres, sin dejar de respirar
    .cue3 = El pecho queda por encima de la cadera, costillas abajo
variant-thrust-kneeling-paused = Empuje de rodillas con pausa
    .setup = De rodillas sobre un cojín, con una silla delante a mano
    .breath = Suelta el aire al subir
    .cue1 = Empuja la cadera hacia delante hasta erguirte
    .cue2 = Quédate arriba contando hasta tres, sin dejar de respirar
    .cue3 = Vuelve atrás despacio
variant-thrust-loaded = Empuje de cadera con peso
    .setup = Omóplatos en el borde del sofá, pesa en la cadera, vientre libre
    .breath = Suelta el aire al subir
    .cue1 = Sujeta la pesa quieta con las dos manos
    .cue2 = Sube la cadera casi hasta la altura de las rodillas
    .cue3 = Baja despacio, el pecho queda por encima de la cadera
variant-thrust-kneeling-loaded = Empuje de rodillas, una pesa
    .setup = De rodillas sobre un cojín, una pesa en vertical junto al pecho
    .breath = Suelta el aire al subir
    .cue1 = La pesa, cerca del esternón
    .cue2 = Lleva la cadera hacia los talones, hasta donde resulte fácil
    .cue3 = Empuja la cadera hacia delante hasta erguirte
variant-thrust-single-leg = Empuje de cadera a una pierna
    .setup = Omóplatos en el borde del sofá, un pie apoyado, el otro en alto
    .breath = Suelta el aire al subir
    .cue1 = Empuja con el talón apoyado
    .cue2 = Los dos lados de la pelvis, a la misma altura
    .cue3 = Sube menos si así la pelvis sigue nivelada

## Split squat

ladder-split-squat = Zancada fija

variant-split-squat-held-short = Zancada fija corta, con apoyo
    .setup = Un pie adelantado un paso largo, una mano en una silla
    .breath = Suelta el aire al subir
    .cue1 = Baja en vertical; basta el ancho de una mano
    .cue2 = Pie delantero plano, talón de atrás levantado
    .cue3 = Apóyate en la mano tanto como necesites
variant-split-squat-full = Zancada fija
    .setup = Un pie adelantado un paso largo, con una pared a mano
    .breath = Suelta el aire al subir
    .cue1 = La rodilla de atrás va hacia el suelo
    .cue2 = Casi todo tu peso, en el talón delantero
    .cue3 = La cadera mira al frente
variant-split-squat-loaded = Zancada fija con dos pesas
    .setup = Una pesa en cada mano, un pie adelantado un paso largo
    .breath = Suelta el aire al subir
    .cue1 = Brazos largos, hombros sueltos
    .cue2 = La rodilla delantera sigue la línea del pie
    .cue3 = Sube empujando con el talón delantero
variant-split-squat-goblet = Zancada fija, una pesa
    .setup = Una pesa junto al pecho, un pie adelantado un paso largo
    .breath = Suelta el aire al subir
    .cue1 = La pesa, cerca del esternón
    .cue2 = La rodilla delantera sigue la línea del pie
    .cue3 = Sube empujando con el talón delantero
variant-split-squat-rear-foot = Zancada fija, pie trasero elevado
    .setup = Pie trasero en un escalón o silla, con una pared a mano
    .breath = Suelta el aire al subir
    .cue1 = Trabaja la pierna delantera
    .cue2 = Inclinarte un poco hacia delante está bien
    .cue3 = Baja solo mientras la cadera siga nivelada
variant-split-squat-rear-foot-loaded = Pie trasero elevado, dos pesas
    .setup = Pie trasero en un escalón o silla, una pesa en cada mano
    .breath = Suelta el aire al subir
    .cue1 = Trabaja la pierna delantera
    .cue2 = Las pesas cuelgan quietas a los lados
    .cue3 = Baja solo mientras la cadera siga nivelada

## Lunge

ladder-lunge = Zancada

variant-lunge-reverse-held = Zancada atrás, con apoyo
    .setup = De pie, una mano en la pared o en el respaldo de una silla
    .breath = Suelta el aire al subir
    .cue1 = Da un paso atrás y apoya la punta del pie
    .cue2 = Baja el ancho de una mano, o hasta donde resulte fácil
    .cue3 = Empuja con el talón delantero para volver
variant-lunge-reverse = Zancada atrás
    .setup = Cuerpo erguido, pies bajo las caderas, con una pared a mano
    .breath = Suelta el aire al subir
    .cue1 = Paso largo atrás, la tibia delantera sigue vertical
    .cue2 = La rodilla de atrás va hacia el suelo
    .cue3 = Empuja con el talón delantero para volver
variant-lunge-reverse-loaded = Zancada atrás con dos pesas
    .setup = Una pesa en cada mano, pies al ancho de las caderas
    .breath = Suelta el aire al subir
    .cue1 = Las pesas cuelgan quietas a los lados
    .cue2 = La rodilla delantera sigue la línea del pie
    .cue3 = Empuja con el talón delantero para volver
variant-lunge-reverse-goblet = Zancada atrás, una pesa
    .setup = Una pesa junto al pecho, pies al ancho de las caderas
    .breath = Suelta el aire al subir
    .cue1 = La pesa, cerca del esternón
    .cue2 = La rodilla delantera sigue la línea del pie
    .cue3 = Empuja con el talón delantero para volver
variant-lunge-walking = Zancadas caminando
    .setup = Camino despejado junto a una pared, un paso tras otro
    .breath = Suelta el aire al subir
    .cue1 = Cada paso cuenta como una repetición
    .cue2 = Pasos largos, que dejen doblar las dos rodillas
    .cue3 = Yérguete entre un paso y el siguiente
variant-lunge-walking-loaded = Zancadas caminando con dos pesas
    .setup = Una pesa en cada mano, camino despejado junto a una pared
    .breath = Suelta el aire al subir
    .cue1 = Cada paso cuenta como una repetición
    .cue2 = Las pesas cuelgan quietas a los lados
    .cue3 = Deja las pesas antes de que los pasos pierdan firmeza

## Side lunge

ladder-side-lunge = Zancada lateral

variant-side-lunge-short = Zancada lateral corta, con apoyo
    .setup = Frente a la encimera o mesada, las dos manos en ella
    .breath = Suelta el aire al volver
    .cue1 = Paso corto al lado; siéntate atrás sobre ese pie
    .cue2 = La otra pierna queda estirada
    .cue3 = Abre solo hasta donde la pelvis esté cómoda
variant-side-lunge-full = Zancada lateral
    .setup = Pies al ancho de las caderas, con una pared a mano
    .breath = Suelta el aire al volver
    .cue1 = Paso amplio al lado; siéntate atrás sobre ese pie
    .cue2 = La rodilla sigue la línea del pie, la otra pierna estirada
    .cue3 = Empuja el suelo para volver
variant-side-lunge-goblet = Zancada lateral, una pesa
    .setup = Una pesa junto al pecho, pies al ancho de las caderas
    .breath = Suelta el aire al volver
    .cue1 = La pesa, cerca del esternón
    .cue2 = Siéntate atrás sobre la pierna doblada, pecho abierto
    .cue3 = Empuja el suelo para volver

## Step-up

ladder-step-up = Subida al escalón

variant-step-up-10-held = Subida al escalón bajo, con apoyo
    .setup = Escalón de unos 10 cm, una mano en la pared o el pasamanos
    .breath = Suelta el aire al subir
    .cue1 = Todo el pie en el escalón
    .cue2 = Te sube la pierna de arriba, la otra solo acompaña
    .cue3 = Baja despacio, primero un pie y luego el otro
variant-step-up-knee-lift-held = Elevación de rodilla, con apoyo
    .setup = De pie, cuerpo erguido, una mano en la encimera o mesada
    .breath = Suelta el aire al subir la rodilla
    .cue1 = Alárgate hacia arriba sobre la pierna de apoyo
    .cue2 = Sube la otra rodilla hasta donde te resulte fácil
    .cue3 = Apoya el pie sin hacer ruido
variant-step-up-20 = Subida al escalón, 20 cm
    .setup = Escalón de unos 20 cm, con una pared a mano
    .breath = Suelta el aire al subir
    .cue1 = Todo el pie en el escalón
    .cue2 = Inclínate un poco hacia delante y luego sube hasta erguirte
    .cue3 = Baja despacio con el otro pie
variant-step-up-loaded = Subida al escalón con dos pesas
    .setup = Escalón de unos 20 cm, una pesa en cada mano
    .breath = Suelta el aire al subir
    .cue1 = Las pesas cuelgan quietas a los lados
    .cue2 = Te sube la pierna de arriba
    .cue3 = Baja tan despacio como subiste
variant-step-up-goblet = Subida al escalón, una pesa
    .setup = Escalón de unos 20 cm, una pesa junto al pecho
    .breath = Suelta el aire al subir
    .cue1 = La pesa, cerca del esternón
    .cue2 = Te sube la pierna de arriba
    .cue3 = Mira dónde pisas
variant-step-up-30 = Subida al escalón alto, 30 cm
    .setup = Escalón firme de unos 30 cm, con una pared a mano
    .breath = Suelta el aire al subir
    .cue1 = Todo el pie en el escalón, rodilla sobre la punta del pie
    .cue2 = Sin impulso del pie de abajo
    .cue3 = Baja despacio y con control

## Step-down

ladder-step-down = Bajada del escalón

variant-step-down-5-held = Bajada del escalón bajo, con apoyo
    .setup = Escalón firme de unos 5 cm, una mano en la pared o el pasamanos
    .breath = Suelta el aire al subir
    .cue1 = Dobla la pierna de arriba; el otro talón roza el suelo
    .cue2 = Cadera nivelada, rodilla sobre la punta del pie
    .cue3 = El peso se queda en el pie de arriba
variant-step-down-heel-tap-held = Toque de talón delante, con apoyo
    .setup = De pie sobre una pierna, una mano en el respaldo de una silla
    .breath = Suelta el aire al subir
    .cue1 = Dobla un poco la rodilla y toca delante con el otro talón
    .cue2 = Cadera nivelada, rodilla sobre la punta del pie
    .cue3 = Vuelve a erguirte antes del siguiente toque
variant-step-down-10 = Bajada del escalón, 10 cm
    .setup = Escalón firme de unos 10 cm, con una pared a mano
    .breath = Suelta el aire al subir
    .cue1 = Dobla la pierna de arriba; el otro talón roza el suelo
    .cue2 = Despacio: cuenta hasta tres al bajar
    .cue3 = Cadera nivelada, rodilla sobre la punta del pie
variant-step-down-heel-tap = Toque de talón delante
    .setup = En el suelo sobre una pierna, con una pared a mano
    .breath = Suelta el aire al subir
    .cue1 = Dobla la pierna de apoyo y toca más adelante con el talón
    .cue2 = Cadera algo atrás, rodilla sobre la punta del pie
    .cue3 = Apoya el pie cuando lo necesites
variant-step-down-20 = Bajada del escalón, 20 cm
    .setup = Escalón firme de unos 20 cm, con una pared a mano
    .breath = Suelta el aire al subir
    .cue1 = Dobla la pierna de arriba; el otro talón roza el suelo
    .cue2 = Baja solo mientras la cadera siga nivelada
    .cue3 = Sube empujando con todo el pie de arriba
variant-step-down-to-chair = Sentarse con una sola pierna
    .setup = Asiento alto detrás, una pared al lado, un pie en el aire
    .breath = Suelta el aire al levantarte
    .cue1 = Siéntate con una pierna, contando hasta tres
    .cue2 = Levántate con los dos pies
    .cue3 = Deja que el pie libre ayude cuando lo necesites

## Push-up

ladder-push-up = Flexión de brazos

variant-push-up-wall = Flexión de brazos en la pared
    .setup = A un brazo de distancia de la pared, manos a la altura del pecho
    .breath = Suelta el aire al empujar
    .cue1 = Una sola línea, de la cabeza a los talones
    .cue2 = Los codos apuntan atrás y un poco hacia fuera
    .cue3 = Sin abombamiento en el centro del vientre
variant-push-up-counter = Flexión de brazos en la encimera
    .setup = Manos en el borde de la encimera o mesada, pies bien atrás
    .breath = Suelta el aire al empujar
    .cue1 = Lleva el esternón al borde
    .cue2 = Una sola línea, de la cabeza a los talones
    .cue3 = Sin abombamiento en el centro del vientre
variant-push-up-chair = Flexión de brazos en una silla
    .setup = Silla contra la pared, manos en el asiento, pies atrás
    .breath = Suelta el aire al empujar
    .cue1 = Baja el pecho entre las manos
    .cue2 = La cadera no se hunde ni se eleva
    .cue3 = Sin abombamiento en el centro del vientre
variant-push-up-kneeling = Flexión de brazos, de rodillas
    .setup = Manos bajo los hombros, rodillas por detrás de la cadera
    .breath = Suelta el aire al empujar
    .cue1 = Una sola línea, de la cabeza a las rodillas
    .cue2 = Los codos apuntan atrás y un poco hacia fuera
    .cue3 = Sin abombamiento en el centro del vientre
variant-push-up-floor = Flexión de brazos
    .setup = Manos bajo los hombros, puntas de los pies en el suelo
    .breath = Suelta el aire al empujar
    .cue1 = Una sola línea, de la cabeza a los talones
    .cue2 = Baja despacio y empuja el suelo
    .cue3 = Sin abombamiento en el centro del vientre

## Chest press

ladder-chest-press = Press de pecho

variant-chest-press-seated-band = Press con banda, en silla
    .setup = En una silla, banda tras los omóplatos, extremos en las manos
    .breath = Suelta el aire al empujar
    .cue1 = Espalda erguida, pies apoyados
    .cue2 = Empuja al frente, a la altura del pecho
    .cue3 = Vuelve despacio, frenando la banda
variant-chest-press-palms = Press de palmas sentado
    .setup = Siéntate, espalda erguida, palmas juntas delante del pecho
    .breath = Suelta el aire al alargar los brazos
    .cue1 = Aprieta las palmas con firmeza y alarga los brazos
    .cue2 = Sigue apretando mientras vuelves
    .cue3 = Hombros bajos
variant-chest-press-incline-one = Press inclinado, una pesa
    .setup = Recuéstate en cojines firmes, una pesa con las dos manos
    .breath = Suelta el aire al empujar
    .cue1 = La pesa empieza cerca del pecho
    .cue2 = Empuja hacia el techo
    .cue3 = Los codos bajan cerca del cuerpo
variant-chest-press-floor = Press en el suelo
    .setup = Boca arriba, rodillas dobladas, una pesa en cada mano
    .breath = Suelta el aire al empujar
    .cue1 = La parte alta de los brazos toca el suelo con suavidad
    .cue2 = Muñecas encima de los codos
    .cue3 = Empuja hasta estirar los brazos
variant-chest-press-incline-pair = Press inclinado, dos pesas
    .setup = Recuéstate en cojines firmes, una pesa en cada mano
    .breath = Suelta el aire al empujar
    .cue1 = Muñecas encima de los codos
    .cue2 = Empuja hacia el techo
    .cue3 = Los omóplatos descansan en los cojines
variant-chest-press-bench = Press en banco, dos pesas
    .setup = En un banco plano, pies en el suelo, una pesa en cada mano
    .breath = Suelta el aire al empujar
    .cue1 = Baja hasta que los codos lleguen a la altura del banco
    .cue2 = Muñecas encima de los codos
    .cue3 = Los pies, bien apoyados en el suelo
variant-chest-press-bench-incline = Press en banco inclinado
    .setup = En un banco con el respaldo elevado, una pesa en cada mano
    .breath = Suelta el aire al empujar
    .cue1 = Baja hacia la parte alta del pecho
    .cue2 = Muñecas encima de los codos
    .cue3 = Los omóplatos descansan en el banco

## Overhead press

ladder-overhead-press = Press por encima de la cabeza

variant-overhead-press-seated-one-arm = Press a un brazo, en silla
    .setup = En una silla, espalda erguida, una pesa en un hombro
    .breath = Suelta el aire al empujar hacia arriba
    .cue1 = Empuja hacia arriba, junto a la oreja
    .cue2 = Las costillas no se abren al subir el brazo
    .cue3 = Baja despacio hasta el hombro
variant-overhead-press-seated-band = Press a un brazo con banda, en silla
    .setup = Siéntate sobre un extremo de la banda; el otro, en un hombro
    .breath = Suelta el aire al empujar hacia arriba
    .cue1 = Empuja hacia arriba, junto a la oreja
    .cue2 = Las costillas no se abren al subir el brazo
    .cue3 = No dejes que la banda te lleve hacia abajo
variant-overhead-press-seated-reach = Brazos hacia arriba, en silla
    .setup = En una silla, espalda erguida, manos en los hombros
    .breath = Suelta el aire al alargar los brazos
    .cue1 = Alarga las dos manos hacia arriba, junto a las orejas
    .cue2 = Las costillas no se abren al subir los brazos
    .cue3 = Al bajar, hombros relajados otra vez
variant-overhead-press-seated-two-arms = Press en silla, dos pesas
    .setup = En una silla, espalda erguida, una pesa en cada hombro
    .breath = Suelta el aire al empujar hacia arriba
    .cue1 = Empuja los dos hacia arriba, junto a las orejas
    .cue2 = Costillas abajo, cuello largo
    .cue3 = Baja despacio hasta los hombros
variant-overhead-press-seated-one-weight = Press en silla, una pesa
    .setup = En una silla, espalda erguida, una pesa con las dos manos
    .breath = Suelta el aire al empujar hacia arriba
    .cue1 = Empuja desde el pecho hasta encima de la cabeza
    .cue2 = Costillas abajo, cuello largo
    .cue3 = Baja despacio por delante de la cara
variant-overhead-press-standing = Press de pie, dos pesas
    .setup = Pies al ancho de las caderas, una pesa en cada hombro
    .breath = Suelta el aire al empujar hacia arriba
    .cue1 = Cuerpo erguido, glúteos firmes sin apretar
    .cue2 = Empuja los dos hacia arriba, junto a las orejas
    .cue3 = Detente antes de que se arquee la espalda
variant-overhead-press-standing-one = Press de pie, una pesa
    .setup = Pies al ancho de las caderas, una pesa con las dos manos
    .breath = Suelta el aire al empujar hacia arriba
    .cue1 = Cuerpo erguido, glúteos firmes sin apretar
    .cue2 = Empuja desde el pecho hasta encima de la cabeza
    .cue3 = Detente antes de que se arquee la espalda
variant-overhead-press-barbell = Press de pie con barra
    .setup = Barra en las clavículas, manos por fuera de los hombros
    .breath = Suelta el aire al empujar hacia arriba
    .cue1 = Cuerpo erguido, glúteos firmes sin apretar
    .cue2 = La barra pasa cerca de la cara
    .cue3 = Detente antes de que se arquee la espalda

## Row

ladder-row = Remo

variant-row-seated-band = Remo con banda, en silla
    .setup = En una silla, banda fija delante, a la altura de las costillas
    .breath = Suelta el aire al tirar
    .cue1 = Antes, prueba la banda con un tirón: debe aguantar
    .cue2 = Los codos van atrás, cerca del cuerpo
    .cue3 = Vuelve adelante despacio, frenando la banda
variant-row-seated-towel = Remo sentado con toalla
    .setup = Espalda erguida, toalla en torno a un pie, extremos en las manos
    .breath = Suelta el aire al tirar
    .cue1 = Empuja con el pie mientras tiras
    .cue2 = Los codos van atrás, cerca del cuerpo
    .cue3 = A la mitad, cambia de pie
variant-row-chair-supported = Remo con apoyo
    .setup = Antebrazo en el respaldo de una silla, pesa en la otra mano
    .breath = Suelta el aire al tirar
    .cue1 = El codo sube hasta pasar las costillas
    .cue2 = Espalda larga, hombros a la misma altura
    .cue3 = Baja hasta estirar el brazo
variant-row-hinged = Remo inclinado, dos pesas
    .setup = Cadera atrás, tronco inclinado, una pesa en cada mano
    .breath = Suelta el aire al tirar
    .cue1 = El tronco no se mueve mientras trabajan los brazos
    .cue2 = Los codos suben cerca de las costillas
    .cue3 = Baja hasta estirar los brazos
variant-row-hinged-one = Remo inclinado, una pesa
    .setup = Cadera atrás, tronco inclinado, una pesa con las dos manos
    .breath = Suelta el aire al tirar
    .cue1 = El tronco no se mueve mientras trabajan los brazos
    .cue2 = Tira hacia las costillas bajas
    .cue3 = Baja hasta estirar los brazos
variant-row-hinged-barbell = Remo con barra
    .setup = Cadera atrás, tronco inclinado, barra justo bajo las rodillas
    .breath = Suelta el aire al tirar
    .cue1 = El tronco no se mueve mientras trabajan los brazos
    .cue2 = Tira hacia las costillas bajas
    .cue3 = Hombros lejos de las orejas
variant-row-hinged-band = Remo inclinado con banda
    .setup = De pie sobre la banda, cadera atrás, un extremo en cada mano
    .breath = Suelta el aire al tirar
    .cue1 = El tronco no se mueve mientras trabajan los brazos
    .cue2 = Los codos suben cerca de las costillas
    .cue3 = Baja despacio, frenando la banda
variant-row-suspended = Remo en suspensión
    .setup = Una cinta en cada mano, inclínate atrás sobre los talones
    .breath = Suelta el aire al tirar
    .cue1 = Una sola línea, de la cabeza a los talones
    .cue2 = Lleva las costillas hacia las asas
    .cue3 = Con los pies más adelante es más exigente

## Vertical pull

ladder-vertical-pull = Tracción vertical

variant-vertical-pull-band = Jalón con banda, en silla
    .setup = En una silla, banda fija en alto, un extremo en cada mano
    .breath = Suelta el aire al tirar hacia abajo
    .cue1 = Antes, prueba la banda con un tirón: debe aguantar
    .cue2 = Los codos bajan hacia los bolsillos de atrás
    .cue3 = Deja subir los brazos despacio
variant-vertical-pull-towel = Jalón sentado con toalla
    .setup = Espalda erguida, toalla abierta y tensa sobre la cabeza
    .breath = Suelta el aire al tirar hacia abajo
    .cue1 = Separa los extremos durante todo el recorrido
    .cue2 = Baja la toalla hasta el pecho
    .cue3 = Hombros bajos
variant-vertical-pull-feet-assisted = Dominada con ayuda de los pies
    .setup = Manos en la barra, pies en una silla estable
    .breath = Suelta el aire al tirar
    .cue1 = Deja que las piernas ayuden tanto como necesites
    .cue2 = Los codos bajan hacia las costillas
    .cue3 = Baja despacio, sin dejar de respirar
variant-vertical-pull-band-assisted = Dominada con ayuda de banda
    .setup = Banda colgada de la barra, una rodilla o un pie dentro
    .breath = Suelta el aire al tirar
    .cue1 = Primero bajan los hombros, luego tiras
    .cue2 = Costillas abajo
    .cue3 = Para salir de la banda, pon un pie en una silla
variant-vertical-pull-lowering = Bajada lenta desde la barra
    .setup = Desde una silla estable, barbilla por encima de la barra
    .breath = Suelta el aire despacio mientras bajas
    .cue1 = Deja la silla con suavidad, sin saltar
    .cue2 = Baja contando hasta cinco
    .cue3 = Pies otra vez en la silla antes de la siguiente
variant-vertical-pull-full = Dominada
    .setup = Manos algo más abiertas que los hombros
    .breath = Suelta el aire al tirar
    .cue1 = Primero bajan los hombros, luego tiras
    .cue2 = Barbilla por encima de la barra, sin balanceo
    .cue3 = Baja hasta estirar los brazos

## Arms

ladder-arms = Brazos

variant-arms-curl-band = Curl con banda, en silla
    .setup = En una silla, banda bajo los pies, un extremo en cada mano
    .breath = Suelta el aire al doblar los brazos
    .cue1 = Los codos siguen junto a las costillas
    .cue2 = Sube las manos hasta los hombros
    .cue3 = Baja despacio, frenando la banda
variant-arms-curl-hands = Curl contra la otra mano, en silla
    .setup = Espalda erguida, un puño hacia arriba, la otra mano encima
    .breath = Suelta el aire al doblar el brazo
    .cue1 = Un brazo se dobla, la otra mano resiste
    .cue2 = Despacio y parejo, al subir y al bajar
    .cue3 = Hombros bajos
variant-arms-curl-seated = Curl en silla, dos pesas
    .setup = En una silla, espalda erguida, una pesa en cada mano
    .breath = Suelta el aire al doblar los brazos
    .cue1 = Los codos siguen junto a las costillas
    .cue2 = Sube las pesas hasta los hombros
    .cue3 = Baja hasta estirar los brazos
variant-arms-curl-seated-one = Curl en silla, una pesa
    .setup = Mitad delantera de la silla, una pesa con las dos manos
    .breath = Suelta el aire al doblar los brazos
    .cue1 = Los codos siguen junto a las costillas
    .cue2 = Sube la pesa hasta el pecho
    .cue3 = Bájala despacio
variant-arms-curl-standing = Curl de pie, dos pesas
    .setup = Pies al ancho de las caderas, una pesa en cada mano
    .breath = Suelta el aire al doblar los brazos
    .cue1 = Los codos siguen junto a las costillas
    .cue2 = Costillas encima de la cadera, sin balanceo
    .cue3 = Baja hasta estirar los brazos
variant-arms-curl-standing-one = Curl de pie, una pesa
    .setup = Pies al ancho de las caderas, una pesa con las dos manos
    .breath = Suelta el aire al doblar los brazos
    .cue1 = Los codos siguen junto a las costillas
    .cue2 = Costillas encima de la cadera, sin balanceo
    .cue3 = Bájala despacio

## Carry

ladder-carry = Paseo con carga

variant-carry-goblet = Paseo con carga al pecho
    .setup = Una pesa junto al pecho, camino despejado por delante
    .breath = Respira con calma mientras caminas
    .cue1 = Camina con el cuerpo erguido, pasos cortos y silenciosos
    .cue2 = La pesa, siempre cerca
    .cue3 = Costillas encima de la cadera
variant-carry-palms = Paseo con las palmas apretadas
    .setup = Palmas apretadas delante del pecho, camino despejado
    .breath = Respira con calma mientras caminas
    .cue1 = Camina con el cuerpo erguido, pasos cortos y silenciosos
    .cue2 = Aprieta poco y siempre igual
    .cue3 = Costillas encima de la cadera
variant-carry-two-hands = Paseo con carga en las dos manos
    .setup = Una pesa en cada mano, brazos estirados a los lados
    .breath = Respira con calma mientras caminas
    .cue1 = Camina con el cuerpo erguido, pasos cortos y silenciosos
    .cue2 = Hombros bajos y anchos
    .cue3 = Deja que las pesas cuelguen quietas
variant-carry-one-hand = Paseo con carga en una mano
    .setup = Una pesa a un lado, la otra mano libre
    .breath = Respira con calma mientras caminas
    .cue1 = Mantén el cuerpo erguido, sin inclinarte al otro lado
    .cue2 = La cadera, nivelada en cada paso
    .cue3 = Repite el recorrido con el otro lado
variant-carry-racked = Paseo con carga en los hombros
    .setup = Una pesa en cada hombro, codos cerca del cuerpo
    .breath = Respira con calma mientras caminas
    .cue1 = Costillas encima de la cadera, sin echarte atrás
    .cue2 = Camina con el cuerpo erguido, pasos cortos y silenciosos
    .cue3 = Deja las pesas antes de cansarte

## Balance

ladder-balance = Equilibrio

variant-balance-tandem-held = Un pie tras otro, con apoyo
    .setup = Un pie justo delante del otro, una mano en la encimera o mesada
    .breath = Sigue respirando, a ritmo tranquilo y regular
    .cue1 = El peso, en los dos pies
    .cue2 = Alárgate hacia arriba, mirada en un punto fijo
    .cue3 = Apóyate en la mano tanto como necesites
variant-balance-seated = Levantar un pie, en silla
    .setup = Mitad delantera de la silla, brazos cruzados en el pecho
    .breath = Sigue respirando, a ritmo tranquilo y regular
    .cue1 = Mantén un pie justo por encima del suelo
    .cue2 = Espalda erguida, peso en los dos isquiones
    .cue3 = Apóyalo cuando lo necesites
variant-balance-single-held = A una pierna, con apoyo
    .setup = De pie sobre una pierna, una mano en la encimera o mesada
    .breath = Sigue respirando, a ritmo tranquilo y regular
    .cue1 = Todo el pie en el suelo, rodilla suelta
    .cue2 = Cadera nivelada
    .cue3 = Cuando sea fácil, bastan dos dedos
variant-balance-tandem = Un pie tras otro, sin apoyo
    .setup = Un pie justo delante del otro, encimera o mesada a mano
    .breath = Sigue respirando, a ritmo tranquilo y regular
    .cue1 = El peso, en los dos pies
    .cue2 = Alárgate hacia arriba, mirada en un punto fijo
    .cue3 = Toca la encimera cuando lo necesites
variant-balance-single = A una pierna, sin apoyo
    .setup = De pie sobre una pierna, encimera o mesada a mano
    .breath = Sigue respirando, a ritmo tranquilo y regular
    .cue1 = Todo el pie en el suelo, rodilla suelta
    .cue2 = Alárgate hacia arriba, mirada en un punto fijo
    .cue3 = Apoya el pie cuando lo necesites
variant-balance-tandem-reach = Un pie tras otro, moviendo los brazos
    .setup = Un pie justo delante del otro, encimera o mesada a mano
    .breath = Sigue respirando, a ritmo tranquilo y regular
    .cue1 = Alarga un brazo adelante, luego el otro, despacio
    .cue2 = Alárgate hacia arriba, mirada en un punto fijo
    .cue3 = Toca la encimera cuando lo necesites

## Front plank

ladder-front-plank = Plancha frontal

variant-front-plank-wall = Plancha en la pared
    .setup = Manos en la pared a la altura del pecho, pies a un paso de ella
    .breath = Sigue respirando, a ritmo tranquilo y regular
    .cue1 = Empuja la pared
    .cue2 = Una sola línea, de la cabeza a los talones
    .cue3 = Sin abombamiento en el centro del vientre
variant-front-plank-wall-forearms = Plancha en la pared, antebrazos
    .setup = Antebrazos en la pared, codos a nivel del pecho, pies a un paso
    .breath = Sigue respirando, a ritmo tranquilo y regular
    .cue1 = Empuja la pared
    .cue2 = Una sola línea, de la cabeza a los talones
    .cue3 = Sin abombamiento en el centro del vientre
variant-front-plank-counter = Plancha en la encimera
    .setup = Manos en el borde de la encimera o mesada, pies bien atrás
    .breath = Sigue respirando, a ritmo tranquilo y regular
    .cue1 = Empuja el borde
    .cue2 = La cadera no se hunde ni se eleva
    .cue3 = Sin abombamiento en el centro del vientre
variant-front-plank-counter-forearms = Plancha en la encimera, antebrazos
    .setup = Antebrazos en la encimera o en una mesa firme, pies bien atrás
    .breath = Sigue respirando, a ritmo tranquilo y regular
    .cue1 = Empuja la encimera
    .cue2 = La cadera no se hunde ni se eleva
    .cue3 = Sin abombamiento en el centro del vientre
variant-front-plank-kneeling = Plancha de rodillas
    .setup = Manos bajo los hombros, rodillas por detrás de la cadera
    .breath = Sigue respirando, a ritmo tranquilo y regular
    .cue1 = Empuja el suelo
    .cue2 = Una sola línea, de la cabeza a las rodillas
    .cue3 = Sin abombamiento en el centro del vientre
variant-front-plank-kneeling-forearms = Plancha de rodillas, antebrazos
    .setup = Codos bajo los hombros, rodillas por detrás de la cadera
    .breath = Sigue respirando, a ritmo tranquilo y regular
    .cue1 = Empuja el suelo
    .cue2 = Una sola línea, de la cabeza a las rodillas
    .cue3 = Sin abombamiento en el centro del vientre
variant-front-plank-all-fours = Cuatro apoyos, peso adelante
    .setup = Manos bajo los hombros, rodillas bajo la cadera
    .breath = Sigue respirando, a ritmo tranquilo y regular
    .cue1 = Lleva el peso hacia las manos y quédate ahí
    .cue2 = Empuja el suelo, espalda larga
    .cue3 = Sin abombamiento en el centro del vientre
variant-front-plank-floor = Plancha
    .setup = Manos bajo los hombros, puntas de los pies en el suelo
    .breath = Sigue respirando, a ritmo tranquilo y regular
    .cue1 = Una sola línea, de la cabeza a los talones
    .cue2 = Baja antes de empezar a temblar
    .cue3 = Sin abombamiento en el centro del vientre
variant-front-plank-forearms = Plancha, antebrazos
    .setup = Codos bajo los hombros, puntas de los pies en el suelo
    .breath = Sigue respirando, a ritmo tranquilo y regular
    .cue1 = Una sola línea, de la cabeza a los talones
    .cue2 = Baja antes de empezar a temblar
    .cue3 = Sin abombamiento en el centro del vientre
variant-front-plank-knees-off = Cuatro apoyos, rodillas en el aire
    .setup = Manos bajo los hombros, rodillas bajo la cadera, puntas apoyadas
    .breath = Sigue respirando, a ritmo tranquilo y regular
    .cue1 = Despega apenas las rodillas del suelo
    .cue2 = Empuja el suelo, espalda larga
    .cue3 = Sin abombamiento en el centro del vientre

## Side plank

ladder-side-plank = Plancha lateral

variant-side-plank-wall = Plancha lateral en la pared
    .setup = Antebrazo en la pared, pies a un paso de ella
    .breath = Sigue respirando, a ritmo tranquilo y regular
    .cue1 = Empuja la pared
    .cue2 = Una sola línea, de la oreja al tobillo
    .cue3 = Acércate a la pared si la quieres más fácil
variant-side-plank-kneeling = Plancha lateral de rodillas
    .setup = Sobre un antebrazo, codo bajo el hombro, rodillas dobladas
    .breath = Sigue respirando, a ritmo tranquilo y regular
    .cue1 = Empuja el suelo
    .cue2 = Sube hasta alinear hombro, cadera y rodilla
    .cue3 = Baja antes de empezar a temblar
variant-side-plank-straight = Plancha lateral
    .setup = Antebrazo apoyado, piernas estiradas, pies juntos o escalonados
    .breath = Sigue respirando, a ritmo tranquilo y regular
    .cue1 = Empuja el suelo
    .cue2 = Una sola línea, de la oreja al tobillo
    .cue3 = Baja antes de empezar a temblar

## Dead bug

ladder-dead-bug = Escarabajo (dead bug)

variant-dead-bug-heel-slide = Deslizar el talón
    .setup = Boca arriba, rodillas dobladas, cambia de pierna cada vez
    .breath = Suelta el aire al deslizar el talón
    .cue1 = La zona lumbar no se mueve
    .cue2 = Desliza solo mientras el vientre no se abombe
    .cue3 = Recoge el talón despacio
variant-dead-bug-heel-slide-incline = Deslizar el talón, espalda elevada
    .setup = Recuéstate en cojines firmes, cambia de pierna cada vez
    .breath = Suelta el aire al deslizar el talón
    .cue1 = La espalda descansa en los cojines
    .cue2 = Desliza solo mientras el vientre no se abombe
    .cue3 = Recoge el talón despacio
variant-dead-bug-toe-tap = Toque con la punta del pie
    .setup = Boca arriba, una rodilla sobre la cadera, cambia cada vez
    .breath = Suelta el aire al bajar la punta del pie
    .cue1 = Baja la punta del pie hasta un toque leve
    .cue2 = La zona lumbar no se mueve
    .cue3 = Si el centro del vientre se abomba, acorta el recorrido
variant-dead-bug-toe-tap-incline = Toque con el pie, espalda elevada
    .setup = Recuéstate en cojines firmes, levanta un pie y luego el otro
    .breath = Suelta el aire al bajar la punta del pie
    .cue1 = Baja la punta del pie hasta un toque leve
    .cue2 = La espalda descansa en los cojines
    .cue3 = Si el centro del vientre se abomba, acorta el recorrido
variant-dead-bug-leg-lower = Bajada de una pierna
    .setup = Boca arriba, las dos rodillas sobre la cadera, cambia cada vez
    .breath = Suelta el aire al alejar la pierna
    .cue1 = Estira una pierna, la otra rodilla no se mueve
    .cue2 = La zona lumbar no se mueve
    .cue3 = Si el centro del vientre se abomba, acorta el recorrido
variant-dead-bug-leg-reach-seated = Estirar una pierna, en silla
    .setup = Mitad delantera de la silla, inclínate algo atrás y agárrate
    .breath = Suelta el aire al alejar la pierna
    .cue1 = Estira una pierna, el talón casi roza el suelo
    .cue2 = Espalda erguida, sin hundirte hacia atrás
    .cue3 = Si el centro del vientre se abomba, acorta el recorrido
variant-dead-bug-opposite = Brazo y pierna contrarios
    .setup = Boca arriba, rodillas sobre la cadera, brazos arriba, alterna
    .breath = Suelta el aire al estirar
    .cue1 = Un brazo y la pierna contraria se alejan
    .cue2 = La zona lumbar no se mueve
    .cue3 = Si el centro del vientre se abomba, acorta el recorrido
variant-dead-bug-opposite-seated = Brazo y pierna contrarios, en silla
    .setup = Mitad delantera de la silla, tronco algo atrás, alterna
    .breath = Suelta el aire al estirar
    .cue1 = Un brazo y la pierna contraria se alejan
    .cue2 = Espalda erguida, sin hundirte hacia atrás
    .cue3 = Si el centro del vientre se abomba, acorta el recorrido

## Bird dog

ladder-bird-dog = Perro pájaro (bird dog)

variant-bird-dog-slide = Deslizar el pie, a cuatro apoyos
    .setup = Manos bajo los hombros, rodillas bajo la cadera, alterna
    .breath = Suelta el aire al deslizar el pie
    .cue1 = Desliza la punta del pie hacia atrás por el suelo
    .cue2 = Empuja el suelo, la espalda sigue larga
    .cue3 = Recoge la rodilla despacio
variant-bird-dog-slide-counter = Deslizar el pie, en la encimera
    .setup = Tronco inclinado, antebrazos en la encimera o mesada, alterna
    .breath = Suelta el aire al deslizar el pie
    .cue1 = Desliza la punta del pie hacia atrás por el suelo
    .cue2 = Antebrazos bien apoyados, la espalda sigue larga
    .cue3 = Recoge el pie despacio
variant-bird-dog-leg = Estirar una pierna, a cuatro apoyos
    .setup = Manos bajo los hombros, rodillas bajo la cadera, alterna
    .breath = Suelta el aire al estirar
    .cue1 = Alarga un talón atrás, no más alto que la cadera
    .cue2 = Los dos huesos de la cadera miran al suelo
    .cue3 = Si el centro del vientre se abomba, acorta el recorrido
variant-bird-dog-leg-counter = Estirar una pierna, en la encimera
    .setup = Tronco inclinado, antebrazos en la encimera o mesada, alterna
    .breath = Suelta el aire al estirar
    .cue1 = Alarga un talón atrás, no más alto que la cadera
    .cue2 = Los dos huesos de la cadera miran al suelo
    .cue3 = Rodilla suelta en la pierna de apoyo
variant-bird-dog-opposite = Perro pájaro
    .setup = Manos bajo los hombros, rodillas bajo la cadera, alterna
    .breath = Suelta el aire al estirar
    .cue1 = Un brazo y la pierna contraria se alejan
    .cue2 = Los dos huesos de la cadera miran al suelo
    .cue3 = Si el centro del vientre se abomba, acorta el recorrido
variant-bird-dog-opposite-counter = Perro pájaro en la encimera
    .setup = Tronco inclinado, antebrazos en la encimera o mesada, alterna
    .breath = Suelta el aire al estirar
    .cue1 = Un brazo y la pierna contraria se alejan
    .cue2 = Los dos huesos de la cadera miran al suelo
    .cue3 = El otro antebrazo sigue bien apoyado

## Curl-up

ladder-curl-up = Encogimiento abdominal

variant-curl-up-head = Levantar la cabeza
    .setup = Boca arriba, rodillas dobladas, yemas de los dedos en el vientre
    .breath = Suelta el aire al subir
    .cue1 = Barbilla algo recogida, levanta solo la cabeza
    .cue2 = Las costillas bajan al soltar el aire
    .cue3 = Si el centro del vientre se abomba, sube menos
variant-curl-up-head-incline = Levantar la cabeza, espalda elevada
    .setup = Recuéstate en cojines firmes, yemas de los dedos en el vientre
    .breath = Suelta el aire al subir
    .cue1 = Barbilla algo recogida, levanta solo la cabeza
    .cue2 = Las costillas bajan al soltar el aire
    .cue3 = Si el centro del vientre se abomba, sube menos
variant-curl-up-curl = Encogimiento abdominal
    .setup = Boca arriba, rodillas dobladas, manos en los muslos
    .breath = Suelta el aire al subir
    .cue1 = Barbilla recogida, sube hasta despegar los omóplatos
    .cue2 = Las manos se deslizan hacia las rodillas
    .cue3 = Si el centro del vientre se abomba, sube menos
variant-curl-up-curl-incline = Encogimiento, espalda elevada
    .setup = Recuéstate en cojines firmes, manos en los muslos
    .breath = Suelta el aire al subir
    .cue1 = Barbilla recogida, sube hasta despegar los omóplatos
    .cue2 = Las manos se deslizan hacia las rodillas
    .cue3 = Si el centro del vientre se abomba, sube menos
variant-curl-up-lean-seated = Inclinarse atrás, en silla
    .setup = Mitad delantera de la silla, pies apoyados, brazos cruzados
    .breath = Suelta el aire al subir
    .cue1 = Inclínate un poco atrás, espalda larga
    .cue2 = Solo hasta donde puedas respirar con calma
    .cue3 = Si el centro del vientre se abomba, inclínate menos
variant-curl-up-turn = Encogimiento con giro
    .setup = Boca arriba, rodillas dobladas, cambia de lado cada vez
    .breath = Suelta el aire al subir
    .cue1 = Sube y alarga la mano más allá de la rodilla contraria
    .cue2 = Los dos glúteos siguen apoyados
    .cue3 = Si el centro del vientre se abomba, sube menos
variant-curl-up-turn-incline = Encogimiento con giro, espalda elevada
    .setup = Recuéstate en cojines firmes, cambia de lado cada vez
    .breath = Suelta el aire al subir
    .cue1 = Sube y alarga la mano más allá de la rodilla contraria
    .cue2 = Los dos glúteos siguen apoyados
    .cue3 = Si el centro del vientre se abomba, sube menos

## Press-out

ladder-press-out = Press antirrotación

variant-press-out-seated = Press antirrotación, en silla
    .setup = En una silla, banda fija a un lado, a la altura del pecho
    .breath = Suelta el aire al alejar las manos
    .cue1 = Antes, prueba la banda con un tirón: debe aguantar
    .cue2 = Empuja al frente hasta estirar los brazos
    .cue3 = No dejes que la banda te gire
variant-press-out-hands-seated = Antirrotación con las manos, sentada
    .setup = Siéntate, espalda erguida, manos entrelazadas ante el pecho
    .breath = Suelta el aire al alejar las manos
    .cue1 = Una mano empuja de lado, la otra resiste
    .cue2 = Aleja las manos y vuelve, sin girar
    .cue3 = Hombros bajos
variant-press-out-kneeling = Press antirrotación, de rodillas
    .setup = De rodillas, banda fija a un lado, a la altura del pecho
    .breath = Suelta el aire al alejar las manos
    .cue1 = Glúteos firmes sin apretar, costillas sobre la cadera
    .cue2 = Empuja al frente hasta estirar los brazos
    .cue3 = No dejes que la banda te gire
variant-press-out-standing = Press antirrotación, de pie
    .setup = Pies bajo las caderas, banda fija a un lado, a nivel del pecho
    .breath = Suelta el aire al alejar las manos
    .cue1 = Rodillas sueltas, costillas encima de la cadera
    .cue2 = Empuja al frente hasta estirar los brazos
    .cue3 = Cadera y hombros miran al frente
variant-press-out-split = Press antirrotación, un pie delante
    .setup = Un pie delante, banda fija a un lado, a la altura del pecho
    .breath = Suelta el aire al alejar las manos
    .cue1 = El peso, repartido entre los dos pies
    .cue2 = Empuja al frente hasta estirar los brazos
    .cue3 = Cadera y hombros miran al frente

## Hip abduction

ladder-hip-abduction = Abducción de cadera

variant-hip-abduction-clam = Apertura de rodilla, de lado
    .setup = De lado, rodillas dobladas, almohada bajo la cabeza
    .breath = Suelta el aire al abrir la rodilla
    .cue1 = Los talones siguen juntos
    .cue2 = Abre solo mientras la pelvis no se mueva
    .cue3 = Cierra despacio
variant-hip-abduction-seated-hands = Rodillas contra las manos, en silla
    .setup = En una silla, manos por fuera de las rodillas
    .breath = Suelta el aire al empujar hacia fuera
    .cue1 = Las rodillas empujan hacia fuera, las manos resisten
    .cue2 = Aumenta poco a poco, suelta poco a poco
    .cue3 = Solo con la fuerza que te resulte cómoda
variant-hip-abduction-side-lying = Elevación de pierna, de lado
    .setup = De lado, rodilla de abajo doblada, pierna de arriba estirada
    .breath = Suelta el aire al subir la pierna
    .cue1 = Alarga el talón de arriba y luego sube
    .cue2 = La punta del pie mira al frente
    .cue3 = La pelvis no se mueve; baja despacio
variant-hip-abduction-seated-band = Abrir rodillas con minibanda, en silla
    .setup = En una silla, minibanda justo por encima de las rodillas
    .breath = Suelta el aire al abrir las rodillas
    .cue1 = Espalda erguida, pies apoyados
    .cue2 = Abre las dos rodillas por igual
    .cue3 = Vuelve despacio, frenando la banda
variant-hip-abduction-banded-steps = Pasos laterales con minibanda
    .setup = Minibanda por encima de las rodillas, pies bajo las caderas
    .breath = Suelta el aire al dar el paso
    .cue1 = Pasos pequeños, la banda siempre tensa
    .cue2 = Rodillas sueltas, sobre la punta de los pies
    .cue3 = Cadera nivelada, sin balanceo

## Hip adduction

ladder-hip-adduction = Aducción de cadera

variant-hip-adduction-squeeze = Apretón suave, en silla
    .setup = En una silla, pies apoyados, almohada entre las rodillas
    .breath = Suelta el aire al apretar
    .cue1 = Aprieta suave, menos de la mitad de tu fuerza
    .cue2 = Aumenta poco a poco, suelta poco a poco
    .cue3 = Afloja si duele la parte delantera de la pelvis
variant-hip-adduction-side-lying = Elevar la pierna de abajo, de lado
    .setup = De lado, pie de arriba apoyado delante, pierna de abajo estirada
    .breath = Suelta el aire al subir la pierna
    .cue1 = Alarga el talón de abajo y luego sube
    .cue2 = La punta del pie mira al frente
    .cue3 = La pelvis no se mueve; baja despacio
variant-hip-adduction-squeeze-long = Apretón largo, en silla
    .setup = En una silla, pies apoyados, almohada entre las rodillas
    .breath = Suelta el aire al apretar
    .cue1 = Aprieta mientras dura la salida del aire
    .cue2 = Con firmeza, nunca con toda tu fuerza
    .cue3 = Suelta del todo antes de la siguiente
variant-hip-adduction-band = Cerrar la pierna con banda, de pie
    .setup = Banda fija abajo a un lado, en ese tobillo; silla para agarrarte
    .breath = Suelta el aire al cerrar la pierna
    .cue1 = Antes, prueba la banda con un tirón: debe aguantar
    .cue2 = Lleva la pierna hasta la otra
    .cue3 = Cuerpo erguido, cadera nivelada, vuelve despacio
variant-hip-adduction-band-seated = Cerrar la rodilla con banda, en silla
    .setup = En una silla, banda fija a un lado, en el muslo de ese lado
    .breath = Suelta el aire al cerrar la rodilla
    .cue1 = Antes, prueba la banda con un tirón: debe aguantar
    .cue2 = Lleva la rodilla hasta la otra
    .cue3 = Deja que se abra otra vez despacio

## Calf raise

ladder-calf = Elevación de talones

variant-calf-seated = Elevación de talones, en silla
    .setup = En una silla, pies apoyados bajo las rodillas
    .breath = Suelta el aire al subir
    .cue1 = Sube los talones todo lo que puedas
    .cue2 = El peso, sobre el dedo gordo y el segundo
    .cue3 = Baja despacio hasta apoyar los talones
variant-calf-two-legs = Elevación de talones, con apoyo
    .setup = Pies al ancho de las caderas, manos en la encimera o mesada
    .breath = Suelta el aire al subir
    .cue1 = Sube en vertical, sin irte hacia delante
    .cue2 = Quédate arriba un momento
    .cue3 = Baja despacio hasta apoyar los talones
variant-calf-loaded = Elevación de talones con dos pesas
    .setup = Una pesa en cada mano, con una pared a mano
    .breath = Suelta el aire al subir
    .cue1 = Las pesas cuelgan quietas a los lados
    .cue2 = Sube en vertical, sin irte hacia delante
    .cue3 = Baja despacio hasta apoyar los talones
variant-calf-loaded-one = Elevación de talones, una pesa
    .setup = Una pesa junto al pecho, con una pared a mano
    .breath = Suelta el aire al subir
    .cue1 = La pesa, cerca del esternón
    .cue2 = Sube en vertical, sin irte hacia delante
    .cue3 = Baja despacio hasta apoyar los talones
variant-calf-loaded-seated = Talones con una pesa, en silla
    .setup = En una silla, una pesa sobre los muslos, cerca de las rodillas
    .breath = Suelta el aire al subir
    .cue1 = Sujeta la pesa quieta con las dos manos
    .cue2 = Sube los talones todo lo que puedas
    .cue3 = Baja despacio hasta apoyar los talones
variant-calf-single-leg = Elevación de talón a una pierna
    .setup = De pie sobre una pierna, las manos en la encimera o mesada
    .breath = Suelta el aire al subir
    .cue1 = Sube en vertical, cadera nivelada
    .cue2 = Apóyate en las manos tanto como necesites
    .cue3 = Baja despacio hasta apoyar el talón

## Breathing

ladder-breathing = Respiración

variant-breathing-side-lying = Respiración de lado
    .setup = De lado, almohadas bajo la cabeza y entre las rodillas
    .breath = Toma aire por la nariz y suéltalo despacio
    .cue1 = Las costillas se abren al tomar aire
    .cue2 = El vientre y el suelo pélvico se sueltan al tomar aire
    .cue3 = Sin esfuerzo: deja que lo haga la respiración
variant-breathing-seated = Respiración sentada
    .setup = En una silla, pies apoyados, manos en las costillas bajas
    .breath = Toma aire por la nariz y suéltalo despacio
    .cue1 = Las costillas se abren hacia las manos
    .cue2 = El suelo pélvico se suelta al tomar aire
    .cue3 = Al soltar el aire, sube solo
variant-breathing-standing = Respiración de pie
    .setup = Pies bajo las caderas, rodillas sueltas, manos en las costillas
    .breath = Toma aire por la nariz y suéltalo despacio
    .cue1 = El peso, por igual en los dos pies
    .cue2 = Las costillas se abren a los lados y atrás
    .cue3 = Hombros y mandíbula sueltos
variant-breathing-under-load = Respiración con una pesa
    .setup = De pie, cuerpo erguido, una pesa ligera junto al pecho
    .breath = Toma aire por la nariz y suéltalo despacio
    .cue1 = La misma respiración tranquila que sin peso
    .cue2 = El suelo pélvico se suelta al tomar aire
    .cue3 = Deja la pesa si notas que aguantas el aire
variant-breathing-sit-to-stand = Respirar al sentarse y levantarse
    .setup = Silla estable detrás de ti, pies bajo las rodillas
    .breath = Suelta el aire al levantarte, tómalo al sentarte
    .cue1 = Empieza a soltar el aire y luego levántate
    .cue2 = Siéntate mientras tomas aire
    .cue3 = No aguantes el aire para levantarte

## Pelvic floor

ladder-pelvic-floor = Suelo pélvico

variant-pelvic-floor-let-go = Soltar el suelo pélvico
    .setup = De lado, almohadas bajo la cabeza y entre las rodillas
    .breath = Al tomar aire, se abre y baja. Al soltarlo, déjalo estar
    .cue1 = Una repetición es una respiración lenta
    .cue2 = La mandíbula, el vientre y los glúteos también se ablandan
    .cue3 = No se aprieta nada
variant-pelvic-floor-short = Activaciones cortas, de lado
    .setup = De lado, almohada entre las rodillas
    .breath = Suelta el aire mientras cierras y subes
    .cue1 = Como para retener un gas; luego, hacia delante y arriba
    .cue2 = Mantén mientras dura la salida del aire
    .cue3 = Suelta del todo antes de la siguiente
variant-pelvic-floor-long = Activaciones largas, en silla
    .setup = En una silla firme, pies apoyados, peso en los dos isquiones
    .breath = Sigue respirando mientras mantienes
    .cue1 = Cierra y sube con suavidad, solo lo que puedas mantener
    .cue2 = Mantén dos respiraciones tranquilas, suelta otras dos
    .cue3 = Glúteos, muslos y vientre siguen en calma
variant-pelvic-floor-standing = Activaciones de pie
    .setup = De pie, cuerpo erguido, pies bajo las caderas, rodillas sueltas
    .breath = Sigue respirando mientras mantienes
    .cue1 = Cierra y sube suave durante dos respiraciones tranquilas
    .cue2 = De pie, como si esperaras el autobús
    .cue3 = Suelta tanto tiempo como hayas mantenido

## Mobility

ladder-mobility = Movilidad

variant-mobility-side-bend-seated = Inclinación lateral, en silla
    .setup = En una silla, un brazo arriba, la otra mano en el asiento
    .breath = Toma aire hacia el costado que se abre
    .cue1 = Primero alárgate hacia arriba, luego inclínate
    .cue2 = Los dos isquiones siguen en el asiento
    .cue3 = Cambia de lado en cada respiración
variant-mobility-round-all-fours = Redondear y alargar, a cuatro apoyos
    .setup = Manos bajo los hombros, rodillas bajo la cadera
    .breath = Suelta el aire al redondear
    .cue1 = Empuja el suelo y redondea toda la espalda
    .cue2 = Luego alárgala, sin dejar que se hunda
    .cue3 = Muévete solo hasta donde resulte fácil
variant-mobility-round-seated = Redondear y alargar, en silla
    .setup = En una silla, manos en las rodillas
    .breath = Suelta el aire al redondear
    .cue1 = Rueda por detrás de los isquiones y redondea la espalda
    .cue2 = Rueda hacia delante y alárgate hacia arriba
    .cue3 = Hombros sueltos
variant-mobility-open-chest-lying = Apertura de pecho, de lado
    .setup = De lado, rodillas dobladas, manos juntas delante
    .breath = Suelta el aire al abrir el brazo
    .cue1 = El brazo de arriba traza medio círculo por encima de ti
    .cue2 = La mirada sigue a la mano
    .cue3 = Rodillas juntas; el brazo, hasta donde llegue por sí solo
variant-mobility-hip-half-kneeling = Apertura de cadera, rodilla apoyada
    .setup = Rodilla en un cojín, el otro pie delante, una mano en una silla
    .breath = Suelta el aire al ir hacia delante
    .cue1 = Recoge la pelvis y luego avanza un poco
    .cue2 = Se nota delante, en la cadera de la pierna de atrás
    .cue3 = El tronco sigue erguido

## Impact

ladder-impact = Impacto

variant-impact-heel-drop = Caída de talones
    .setup = De pie, cuerpo erguido, un dedo en la pared
    .breath = Sigue respirando, sin aguantar el aire
    .cue1 = Sube de puntillas
    .cue2 = Deja caer los dos talones y aterriza con suavidad
    .cue3 = Detente si notas pesadez, escapes o dolor
variant-impact-bounce = Rebotes pequeños
    .setup = Pies al ancho de las caderas, rodillas sueltas
    .breath = Sigue respirando, sin aguantar el aire
    .cue1 = Rebota despegando apenas los pies del suelo
    .cue2 = Aterriza sin ruido, primero la parte delantera del pie
    .cue3 = Detente si notas pesadez, escapes o dolor
variant-impact-hop = Saltos a una pierna
    .setup = De pie sobre una pierna, con una pared a mano
    .breath = Sigue respirando, sin aguantar el aire
    .cue1 = Saltos pequeños en el mismo lugar
    .cue2 = Aterriza sin ruido, rodilla suelta y sobre la punta del pie
    .cue3 = Detente si notas pesadez, escapes o dolor
