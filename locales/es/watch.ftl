# Watching: what was logged, week by week, and what the counts tell. Nothing is proposed from it.
# Numbers come as text, already rounded; "-" stands for what is undefined or not known.

watch-pointer-never-a-diagnosis = Una indicación de dónde mirar, nunca un diagnóstico. Cuanto más se compara, más cosas parecen distintas por azar.

## Weeks

watch-weeks = Semanas, cada una de siete días hasta el día indicado, incluido
watch-no-session = Aún no hay sesiones.
watch-week = Semana hasta
watch-sessions = Sesiones
watch-sessions-of = { $done } de { $meant }
watch-load = Carga
watch-monotony = Monotonía
watch-strain = Tensión
watch-minutes = Minutos
watch-days = Días
watch-guideline = Recomendación
watch-guideline-of = { $minutes } en { $days }
watch-sets = Series
watch-effort = Esfuerzo
watch-legend-week = Sesiones: hechas de las previstas. Carga: esfuerzo de la sesión por minutos. Series: hechas de las mostradas. Esfuerzo: repeticiones en reserva dichas menos las del objetivo; por encima de 0 es más fácil de lo previsto.
watch-legend-guideline = Recomendación: minutos por semana, en al menos esos días, de toda la actividad y no solo de fuerza. Solo cuenta lo registrado aquí.
watch-legend-part = *: su primera sesión cae en esta semana, así que no está completa.
watch-legend-estimated = ~: algunos minutos se estiman a partir de las horas de las entradas.
watch-legend-unknown = +?: una sesión más cuya carga o minutos no se conocen.
watch-legend-bound = ≥: alguna vez se dijo “5 o más”, así que pudo ser más fácil que esto.

## Sets by pattern

watch-patterns = Series de trabajo por patrón, las duras entre paréntesis
watch-pattern-sets = { $pattern } { $sets } ({ $hard })
watch-legend-hard = Duras: con un máximo de { $over } más en reserva que el objetivo, y no terminadas por una marca.

## Symptoms

watch-rates = Sesiones con un síntoma, del { $from } al { $to }
watch-rates-none = Ninguna sesión en este tiempo.
watch-rate = { $what }: { $marked } de { $sessions }
watch-rate-tells = { $what }: { $marked } de { $sessions }, { $rate } % (intervalo del { $confidence } %: del { $low } al { $high } %)
watch-rate-rest = ; en lo demás { $marked } de { $sessions }, probabilidad { $chance }
watch-rate-few = ; demasiado pocas para decir más
watch-rates-clear = Sesiones sin síntomas: { $list }
watch-rates-unplaced = Marcas sin ejercicio, en ninguna de las anteriores: { $count }
watch-of-position = Posición: { $position }
watch-of-band = { $variant }, { $band } (de { $lightest } a { $heaviest } kg)
watch-of-one-load = { $variant }, { $band } ({ $load } kg)
watch-legend-chance = Probabilidad: la de una diferencia tan grande con las demás si no hubiera ninguna.
load-band-light = su tercio más ligero
load-band-middle = su tercio medio
load-band-heavy = su tercio más pesado

## One-rep max

watch-trends = Repetición máxima (1RM), kg de carga efectiva, con su intervalo del 80 %
watch-of-group = { $ladder } ({ $low } … { $high })
watch-trend-point = { $estimate } (de { $low } a { $high }) el { $day }

## Strength, set by set

watch-strength-none = Ninguna serie ha dicho aún nada de su fuerza.
watch-strength-day = Día
watch-strength-variant = Variante
watch-strength-load = Carga
watch-strength-effective = Movido
watch-strength-reps = Repeticiones + reserva
watch-strength-ten = 10RM
watch-strength-one = 1RM
watch-strength-c = c
watch-strength-d = d
watch-strength-after-birth = Un parto el { $day }: todas las estimaciones empiezan de nuevo
watch-strength-after-loss = Una pérdida el { $day }: todas las estimaciones empiezan de nuevo
watch-strength-after-operation = Una operación, anotada el { $day }: todas las estimaciones empiezan de nuevo
watch-strength-legend = Movido: carga efectiva en kg, con la parte de su cuerpo que le corresponde. Reserva: repeticiones en reserva. Los máximos (1RM y 10RM, de una y de diez repeticiones) están en kg de carga efectiva tras la serie, con su intervalo del 80 %. c: repeticiones que se pierden cuando la carga se multiplica por e. d: cuánto se aparta el día de lo habitual, en ln de la carga.
watch-strength-legend-begins = *: la estimación de su grupo empieza con esta serie.
watch-strength-legend-assumed = ~: no había peso corporal anotado, así que se supuso uno.
watch-strength-legend-bound = ≥: esas en reserva o más.

## Patterns

pattern-squat = Sentadilla
pattern-hinge = Bisagra
pattern-bridge = Puente
pattern-single_leg = A una pierna
pattern-horizontal_push = Empuje al frente
pattern-vertical_push = Empuje por encima de la cabeza
pattern-horizontal_pull = Tracción al pecho
pattern-vertical_pull = Tracción hacia abajo
pattern-hip_abduction = Cadera hacia el lado
pattern-hip_adduction = Pierna hacia dentro
pattern-calf = Pantorrilla
pattern-arms = Brazos
pattern-carry = Paseo con carga
pattern-balance = Equilibrio
pattern-trunk = Tronco
pattern-breathing = Respiración
pattern-pelvic_floor = Suelo pélvico
pattern-mobility = Movilidad
pattern-impact = Impacto
