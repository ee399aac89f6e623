# Watching: what was logged, week by week, and what the counts tell. Nothing is proposed from it.
# Numbers come as text, already rounded; "-" stands for what is undefined or not known.

watch-pointer-never-a-diagnosis = A pointer to where to look, and never a diagnosis. The more is compared, the more seems to differ by chance.

## Weeks

watch-weeks = Weeks, each of seven days to and with the day named
watch-no-session = No session yet.
watch-week = Week to
watch-sessions = Sessions
watch-sessions-of = { $done } of { $meant }
watch-load = Load
watch-monotony = Monotony
watch-strain = Strain
watch-minutes = Minutes
watch-days = Days
watch-guideline = Guideline
watch-guideline-of = { $minutes } on { $days }
watch-sets = Sets
watch-effort = Effort
watch-legend-week = Sessions: done of meant. Load: session effort times minutes. Sets: done of those shown. Effort: reps in reserve said less those aimed at; above 0 is easier than meant.
watch-legend-guideline = Guideline: minutes a week, on at least so many days, of all activity and not of strength alone. Only what is logged here is counted.
watch-legend-part = *: her first session lies in this week, so it is not whole.
watch-legend-estimated = ~: some minutes are estimated from the times of the records.
watch-legend-unknown = +?: a session more whose load or minutes are not known.
watch-legend-bound = ≥: some said “5 or more”, so it may be easier than this.

## Sets by pattern

watch-patterns = Working sets by pattern, hard ones in brackets
watch-pattern-sets = { $pattern } { $sets } ({ $hard })
watch-legend-hard = Hard: with at most { $over } more in reserve than was aimed at, and not ended by a mark.

## Symptoms

watch-rates = Sessions with a symptom, { $from } to { $to }
watch-rates-none = No session in this time.
watch-rate = { $what }: { $marked } of { $sessions }
watch-rate-tells = { $what }: { $marked } of { $sessions }, { $rate } % ({ $confidence } % interval { $low } to { $high } %)
watch-rate-rest = ; elsewhere { $marked } of { $sessions }, chance { $chance }
watch-rate-few = ; too few to say more
watch-rates-clear = Sessions without a symptom: { $list }
watch-rates-unplaced = Marks of no movement, in none of these: { $count }
watch-of-position = Position: { $position }
watch-of-band = { $variant }, { $band } ({ $lightest } to { $heaviest } kg)
watch-of-one-load = { $variant }, { $band } ({ $load } kg)
watch-legend-chance = Chance: of so great a difference to the others if there were none.
load-band-light = her lightest third
load-band-middle = her middle third
load-band-heavy = her heaviest third

## One-rep max

watch-trends = One-rep max, kg of effective load, with its 80 % band
watch-of-group = { $ladder } ({ $low } … { $high })
watch-trend-point = { $estimate } ({ $low } to { $high }) on { $day }

## Strength, set by set

watch-strength-none = No set has told of her strength yet.
watch-strength-day = Day
watch-strength-variant = Variant
watch-strength-load = Load
watch-strength-effective = Moved
watch-strength-reps = Reps + left
watch-strength-ten = Ten-rep max
watch-strength-one = One-rep max
watch-strength-c = c
watch-strength-d = d
watch-strength-after-birth = A birth on { $day }: every estimate begins anew
watch-strength-after-loss = A loss on { $day }: every estimate begins anew
watch-strength-after-operation = An operation, named on { $day }: every estimate begins anew
watch-strength-legend = Moved: effective load in kg, of her body as far as it is part of it. Left: reps in reserve. The maxima are in kg of effective load after the set, with their 80 % band. c: reps lost when the load grows e-fold. d: how the day differs from usual, in ln load.
watch-strength-legend-begins = *: the estimate of its group begins with this set.
watch-strength-legend-assumed = ~: no body mass was recorded, so one was assumed.
watch-strength-legend-bound = ≥: so many left or more.

## Patterns

pattern-squat = Squat
pattern-hinge = Hinge
pattern-bridge = Bridge
pattern-single_leg = Single leg
pattern-horizontal_push = Push in front
pattern-vertical_push = Push overhead
pattern-horizontal_pull = Pull to the chest
pattern-vertical_pull = Pull down
pattern-hip_abduction = Hip to the side
pattern-hip_adduction = Leg drawn in
pattern-calf = Calf
pattern-arms = Arms
pattern-carry = Carry
pattern-balance = Balance
pattern-trunk = Trunk
pattern-breathing = Breathing
pattern-pelvic_floor = Pelvic floor
pattern-mobility = Mobility
pattern-impact = Impact
