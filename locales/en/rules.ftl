# What each rule of the pack does, in one sentence: `rule-<id>` with hyphens for dots. Its numbers come as values by name,
# and each also as <name>_percent, a hundred times as much. For the coach and for `newel rules`.
# Effort rules have the numbers least_target, trained_target, least_floor, most_sets, from_week, before_week, as far as they use them.

rule-strength-report = A report is taken to be off by about { $s0 } rep with nothing in reserve, and by { $s1 } rep more for each rep in reserve.
rule-strength-day = Strength is taken to go up and down by about { $sigma_percent } % from day to day.
rule-strength-drift = Between sessions the estimate grows less sure: its variance (of ln load) by { $early_per_day } a day at first, fading over { $fade_days } days, and by { $late_per_day } a day throughout; that of the slope by { $slope_per_day } a day.
rule-strength-slope = Reps per unit of ln load are taken to differ between people by { $sd }, and are kept between { $min } and { $max }.
rule-strength-fatigue = Each earlier set of the day is taken to cost { $reps_per_set } rep.
rule-strength-start = A start load is taken to leave { $margin } reps more than the dose asks for, give or take { $sd_percent } % of the load.
rule-strength-evidence = A set of more than { $most_reps } reps, or with more than { $most_reserve } said to be left, is no evidence of strength.
rule-strength-body = Body mass that was not recorded is taken as { $assumed_kg } kg, and marked so.
rule-load-target = The heaviest load is taken that leaves at least the target less { $slack } rep in the middle set, with a chance of at most { $alpha_percent } % to fall under the floor in the last one; the floor lies { $floor_below_target } reps under the target. { $binds_all ->
        [0] The chance binds the reps, too, in pregnancy and in the first 12 weeks after birth.
       *[other] The chance binds the reps, too.
    }
rule-load-step = A load goes up by at most { $share_percent } % of the heaviest one done as planned in the last { $days } days.
rule-load-big-step = The next load of the kit may be a bigger step after { $exposures } sessions running at the top of the range with the target in reserve, or after one with { $alone_over_target } reps more.
rule-load-lay-off = After { $days_1 } days away at most { $share_1_percent } % of the last load, after { $days_2 } days at most { $share_2_percent } %; with nothing to take off, the bottom of the range with { $more_reserve } rep more in reserve.
rule-load-first = At a first time up to { $finding_sets } sets may step up to find the load, where at least { $room_over_target } rep more than the aim was left; after a birth not before week { $finding_from_week }. Where her strength is known from another variant, it begins at no more than { $share_of_group_percent } % of what was held there.
rule-load-lighter-now = In mid-session a lighter load is offered when the next set would fall under the floor with a chance of more than { $chance_percent } %.
rule-load-reps-now = After each set of a slot the reps of the next one are chosen anew, within the range, so that they come nearest to the reserve aimed at. { $grow ->
        [1] They may get fewer or more; not more in pregnancy and the first 12 weeks after birth, after a symptom, after weeks away and in a light week.
       *[other] They may get fewer, and not more.
    }
rule-load-kit-gap = Where the next load of the kit is too big a step, { $over_target } reps over the target in reserve open up to { $more_reps } reps beyond the range.
rule-load-unforeseen = A step that no answer can foresee is earned: { $exposures } sessions running at the top of the range with { $over_target } reps over the target in reserve open the next load of the kit, by at most { $most_of_body_percent } % of body mass; the first set decides.
rule-load-finding = A step of finding goes to at most { $times_lower } times what was held by legs and hips and { $times_upper } times by arms and shoulders, or to the next load of the kit if that is at most { $next_times_lower } and { $next_times_upper } times as much.
rule-load-nothing-lighter = Where no load is light enough, the lightest of the kit is taken and said to be that.
rule-level-up = A level up after { $exposures } sessions running at the top of the range with { $over_target } rep over the target in reserve, at the ready mark or at the heaviest of the kit; where the next level would be too heavy, up to { $more_reps } reps more instead.
rule-level-down = A level down where no load of the kit holds.
rule-level-back-up = Up again after a symptom takes { $exposures } sessions without symptoms, each with a settled next morning, and at most { $share_percent } % of that level’s last load.
rule-level-start = A ladder begins at the level that the coach set, else at the easiest that is open.
rule-progress-reps = Where no load moves, a set grows by { $step_reps } rep or { $step_seconds } seconds.
rule-symptom-drop = A drop ends the set and offers the level below, today and next time; a second mark on the ladder ends it for the day.
rule-symptom-repeat = The same drop in { $sessions } sessions running is a hold.
rule-symptom-lowest = At the lowest level a drop holds the ladder; a restart that the coach allows is at { $share_percent } % of the load.
rule-symptom-pelvic-floor-twice = With { $marks } marks of the pelvic floor in a session, on whatever ladder, the rest of it is without load, lying or seated.
rule-symptom-hold = A hold rests what it concerns until the coach or a provider has answered.
rule-symptom-red = A red flag stops all training until a clearance is recorded. It depends on the sign alone.
rule-symptom-amounts = On the scale of ten by which amounts of one kind are compared, a little counts { $little }, clearly { $clearly } and a lot { $lot }.
rule-symptom-left-out = A pain whose number was left out counts as { $pain }.
rule-effort-careful = While pregnant, and in the first { $weeks_after } weeks after a birth or a loss, the chance of falling short bounds the reps as well as the load; while pregnant never fewer than { $pregnant_floor } in reserve.
rule-stage-undated = While the week of a pregnancy is not known, effort is that of week { $effort_week }, and positions those of week { $position_week }.
rule-stage-same-birth = A birth or a loss recorded again, at most { $days } days from the first date, is the same one put right.
rule-position-supine = From week { $from_week } of pregnancy another position takes the place of lying flat on the back.
rule-impact-wait = No impact before week { $from_week } after a birth.
rule-impact-checks = { $asked ->
    [1] After a birth, impact waits until the checks before it were done in full without a sign: those without a landing for the first steps, all of them for landing on one leg.
   *[other] The checks before impact are not asked for after a birth.
}
rule-impact-pregnant = { $from_week ->
    [0] No impact while pregnant.
   *[other] No impact from week { $from_week } of pregnancy on.
}
rule-clearance-asked = After a caesarean or a severe tear training waits for a clearance; breathing, pelvic floor and mobility meanwhile. A clearance opens what it speaks of, until its last day.
rule-clearance-birth-unsaid = Where it is not said how a birth went, the provider is asked first up to week { $before_week }; breathing, pelvic floor and mobility meanwhile.
rule-breath-free = Where holding the breath is ruled out, at least { $least_reserve } reps stay in reserve.
rule-screen-again = Screening is due again in weeks { $trimester_2 } and { $trimester_3 } of a pregnancy, at a birth or a loss, { $after_birth_1 } and { $after_birth_2 } weeks after a birth, after a sign that stopped training or a hold, and after { $stale_weeks } weeks at the latest.
rule-stage-dates-differ = A due date that was told and one that was reckoned are pointed out when they are further apart than { $to_8_weeks } days (told before 9 weeks), { $to_15_weeks } (to 15), { $to_21_weeks } (to 21), { $to_27_weeks } (to 27) or { $from_28_weeks } (later). The one that was told holds.
rule-stage-taken-up = After a birth or a loss the plan rests until the client and the coach have both said that it goes on.
rule-today-tired = On a tired day { $more_reserve } rep more is kept in reserve.
rule-today-unwell = On an unwell day { $more_reserve } reps more are kept in reserve, { $sets } set of each is enough, and nothing grows.
rule-today-after-illness = Back after an illness, { $sessions ->
    [one] one session is easy
   *[other] { $sessions } sessions are easy
}: { $more_reserve } reps more stay in reserve, { $sets } sets of each are enough, and nothing grows. Breathing, pelvic floor and mobility go on.
rule-today-child-near = With a child in the room nothing is held above the head.
rule-today-no-kit = Without her kit at hand the nearest option that needs none is taken; where she stands is kept, and no level is leaped over.
rule-learn-first = Somebody who has never trained with weights learns the moves in her first { $sessions } sessions: the lightest load, { $sets } sets, { $reserve } reps in reserve, and nothing is counted as strength.
rule-programme-light-week = A light week: the sets times { $share }, rounded up, { $more_reserve } more rep in reserve, and nothing grows. Breathing, pelvic floor and mobility go on.
rule-load-ease = Warm-up and cool-down are done with the least load that there is, at the bottom of the range. They are no evidence of strength.
rule-coach-set = What the coach set holds, with her note.
rule-client-choice = An option that she chose, at the level shown or below, holds for the session.
rule-kit-has = Only what her kit can make is proposed.
rule-body-only = Without a load, reps or seconds are what changes.
rule-session-open = A session that was left open is over after { $hours } hours: what was logged stands, and the next begins afresh.
rule-session-next-day = How the next day went is asked for up to { $days } days.
rule-log-unknown-dose = A set whose proposal is not in the log is taken as one of { $low } to { $high } reps with { $target } in reserve, never below { $floor }.
rule-session-short = The short version of a session fits into { $minutes } minutes.
rule-session-set-up = A set is taken to last { $seconds_per_rep } seconds a rep, and { $seconds_per_set } seconds to set up.
rule-watch-weeks = Watching looks back { $weeks } weeks.
rule-watch-load = Session load is session effort times minutes; monotony is the mean of a week’s days over their spread, strain the week’s load times monotony.
rule-watch-minutes = Minutes that are estimated from the times of records count up to { $cap } a session.
rule-watch-desk = The Desk tells of { $silent_days } days without a log, of { $silent_after_symptom_days } after a symptom and of { $unanswered_days } without an answer about the next day; of symptoms and stages of the last { $recent_days } days and of words and check-ins of the last { $week_days }; of a due date within { $near_due_days } days; when in { $over_share_percent } % of the sessions a set went under its floor, when a set was { $jump_share_percent } % heavier than shown, and of { $skipped } sets left out by choice.
rule-watch-hard-set = A set is hard with at most { $over_target } rep more in reserve than was aimed at.
rule-watch-guideline-pregnant = Guideline while pregnant: at least { $minutes } minutes of activity a week over at least { $days } days.
rule-watch-guideline-postpartum = Guideline after a birth: at least { $minutes } minutes of activity a week over at least { $days } days.
rule-watch-rate = Symptom rates are of the last { $days } days; a rate is told from { $sessions } sessions on with an interval of { $confidence_percent } %, and set against the rest from { $rest_sessions } sessions and { $marked } marked ones on.
rule-advice-push-pull = While a programme is written it is said when push or pull takes more than { $most_share_percent } % of the sets of both, from { $from_sets } sets a week on.
rule-advice-knee-hip = While a programme is written it is said when knee (squat, single leg) or hip (hinge, bridge) takes more than { $most_share_percent } % of the sets of both, from { $from_sets } sets a week on.
rule-advice-week-sets = While a programme is written it is said when a push, pull, squat, hinge, bridge or single-leg movement has fewer than { $least } or more than { $most } hard sets a week.
rule-advice-minutes = While a programme is written it is said when a session takes { $over_share_percent } % longer than it is meant to; once it was logged { $logged } times the logs count, and it is said when they are { $logged_share_percent } % off the estimate.
rule-fresh-start = A first time on a ladder after a birth, a loss or an operation keeps at least { $reserve } reps in reserve.

## Effort by stage

rule-effort-pregnant-early = Pregnant, from week { $from_week } and before week { $before_week }: aim at { $least_target } reps or more in reserve, used to lifting { $trained_target }; the floor is { $least_floor }.
rule-effort-pregnant-late = Pregnant, from week { $from_week }: aim at { $least_target } reps or more in reserve, used to lifting { $trained_target }; the floor is { $least_floor }.
rule-effort-after-0 = After a birth, from week { $from_week } and before week { $before_week }: breathing and pelvic floor, { $most_sets } sets at most, nothing held; aim { $least_target }, floor { $least_floor }.
rule-effort-after-2 = After a birth, from week { $from_week } and before week { $before_week }: nothing held, { $most_sets } sets at most; aim at { $least_target } reps or more in reserve; the floor is { $least_floor }.
rule-effort-after-6 = After a birth, from week { $from_week } and before week { $before_week }: aim at { $least_target } reps or more in reserve, used to lifting { $trained_target }; the floor is { $least_floor }.
rule-effort-after-12 = After a birth, from week { $from_week } and before week { $before_week }: aim at { $least_target } reps or more in reserve, used to lifting { $trained_target }; the floor is { $least_floor }.
rule-effort-after-26 = After a birth, from week { $from_week } and before week { $before_week }: aim at { $least_target } reps or more in reserve, used to lifting { $trained_target }; the floor is { $least_floor }.
rule-effort-after-52 = After a birth, from week { $from_week }: aim at { $least_target } reps or more in reserve, used to lifting { $trained_target }; the floor is { $least_floor }.
rule-effort-after-loss = After a loss, from week { $from_week } and before week { $before_week }: nothing held, { $most_sets } sets at most; aim at { $least_target } reps or more in reserve; the floor is { $least_floor }.
rule-effort-after-loss-6 = After a loss, from week { $from_week }: aim at { $least_target } reps or more in reserve, used to lifting { $trained_target }; the floor is { $least_floor }.
rule-effort-plain = Neither pregnant nor after a birth (from week { $from_week }): aim at { $least_target } reps or more in reserve, used to lifting { $trained_target }; the floor is { $least_floor }.

## Conditions named at screening

rule-condition-waters-broken = While pregnant no training before a clearance.
rule-condition-preterm-labour = While pregnant no training before a clearance.
rule-condition-bleeding-unexplained = While pregnant no training before a clearance.
rule-condition-placenta-praevia = While pregnant the provider is asked first; breathing, pelvic floor and mobility meanwhile; from week { $stricter_from } on no training before a clearance.
rule-condition-pre-eclampsia = While pregnant no training before a clearance.
rule-condition-cervical-insufficiency = While pregnant no training before a clearance.
rule-condition-growth-restriction = While pregnant no training before a clearance.
rule-condition-triplets = While pregnant no training before a clearance.
rule-condition-twins = While pregnant the provider is asked first; breathing, pelvic floor and mobility meanwhile.
rule-condition-recurrent-loss = While pregnant the provider is asked first; breathing, pelvic floor and mobility meanwhile.
rule-condition-earlier-preterm-birth = While pregnant the provider is asked first; breathing, pelvic floor and mobility meanwhile.
rule-condition-other-pregnancy = While pregnant the provider is asked first; breathing, pelvic floor and mobility meanwhile.
rule-condition-gestational-diabetes = Recorded for the coach; nothing is ruled out.
rule-condition-fertility-treatment = The provider is asked first; breathing, pelvic floor and mobility meanwhile.
rule-condition-caesarean = Recorded for the coach; the birth itself asks for a clearance.
rule-condition-severe-tear = Recorded for the coach; the birth itself asks for a clearance.
rule-condition-birth-complication = After a birth the provider is asked first; breathing, pelvic floor and mobility meanwhile.
rule-condition-caesarean-worse = After a birth the provider is asked first; breathing, pelvic floor and mobility meanwhile.
rule-condition-girdle-pain = Nothing one-sided.
rule-condition-prolapse = No impact.
rule-condition-pessary = Recorded for the coach, and at check-in whether it is in or out; nothing is ruled out.
rule-condition-pelvic-floor-tense = The pelvic floor is let go, not drawn up.
rule-condition-leaking = Recorded for the coach; nothing is ruled out.
rule-condition-midline-gap = Recorded for the coach; nothing is ruled out.
rule-condition-low-back-pain = Recorded for the coach; nothing is ruled out.
rule-condition-wrist-pain = Nothing that leans on the wrists.
rule-condition-knee-pain = Recorded for the coach; nothing is ruled out.
rule-condition-shoulder-pain = Nothing overhead.
rule-condition-fracture = The provider is asked first; breathing, pelvic floor and mobility meanwhile.
rule-condition-recent-surgery = The provider is asked first; breathing, pelvic floor and mobility meanwhile. Every ladder starts anew.
rule-condition-hypermobility = Recorded for the coach; nothing is ruled out.
rule-condition-diabetes-unsettled = No training before a clearance.
rule-condition-blood-pressure-unsettled = No training before a clearance.
rule-condition-thyroid-unsettled = No training before a clearance.
rule-condition-heart-lung-serious = No training before a clearance.
rule-condition-high-blood-pressure = The provider is asked first; breathing, pelvic floor and mobility meanwhile.
rule-condition-heart-lung-mild = The provider is asked first; breathing, pelvic floor and mobility meanwhile.
rule-condition-anaemia-felt = The provider is asked first; breathing, pelvic floor and mobility meanwhile; { $extra_reserve } rep more is kept in reserve, and rests are { $more_rest } seconds longer.
rule-condition-anaemia = { $extra_reserve } rep more is kept in reserve, and rests are { $more_rest } seconds longer.
rule-condition-malnutrition = The provider is asked first; breathing, pelvic floor and mobility meanwhile.
rule-condition-eating-disorder = The provider is asked first; breathing, pelvic floor and mobility meanwhile.
rule-condition-low-blood-pressure = Recorded for the coach; nothing is ruled out.
rule-condition-heart-slowing-medicine = Recorded for the coach; nothing is ruled out.
rule-condition-blood-pressure-medicine = Recorded for the coach; nothing is ruled out.
rule-condition-insulin = Recorded for the coach; nothing is ruled out.
rule-condition-blood-thinner = The provider is asked first; breathing, pelvic floor and mobility meanwhile.

## The pages of the pack

rulebook-symptoms-title = What a symptom does
rulebook-symptoms-intro = Made from the rule pack by `newel rules --table`; do not edit it here. It is no medical advice and no clinician has signed it. The strictest class holds: **red** stops all training until a clearance is recorded, **hold** rests what it concerns until the coach or a provider has answered, **drop** goes down a level, **cue** changes breath, range or position, **note** is recorded and shown. A number or an amount only ever makes a class stricter. A coach can make each class stricter for a client; making one milder asks for a note; a red flag stays red.
rulebook-symptoms-head = | sign | trade term | asked | class | by pain number | again in the session | still there next morning | what a hold rests | help | also | source |
rulebook-rules-title = Rules and their numbers
rulebook-rules-intro = Made from the rule pack by `newel rules --table rules`; do not edit it here. A mark says how far a source can be trusted: [o] read in the original, [s] second-hand, [m] from memory, [d] derived. What a coach may set for a client stands in the third column with the way that is stricter and the bounds; all else is fixed.
rulebook-rules-head = | rule | what it does | may be set | source |
rulebook-may-set = { $stricter ->
    [more] { $name }: more is stricter, { $least } to { $most }
   *[less] { $name }: less is stricter, { $least } to { $most }
}
rulebook-rules-part = Rules
rulebook-effort-part = Effort by stage
rulebook-conditions-part = Conditions named at screening
rulebook-checks-part = Checks before impact
rulebook-check = { $what }: { $count } { $of ->
    [minutes] min
    [seconds] s
   *[reps] { $count ->
        [one] time
       *[other] times
    }
}{ $side ->
    [yes] , each side
   *[no] { "" }
}, { $lands ->
    [yes] with a landing
   *[no] without a landing
}.
rulebook-when-any = any time
rulebook-when-pregnant = pregnant
rulebook-when-pregnant-from = pregnant, from week { $week }
rulebook-when-postpartum = after a birth
rulebook-class-note = note
rulebook-class-cue = cue
rulebook-class-drop = drop
rulebook-class-hold = hold
rulebook-class-red = **red**
rulebook-band = { $class } from { $from }
rulebook-scope-ladder = its ladder
rulebook-scope-lower_body = hips and legs, and impact
rulebook-scope-all = all training
rulebook-urgency-emergency = emergency number now
rulebook-urgency-call = call midwife, doctor or clinic now
rulebook-urgency-same_day = be seen today
rulebook-ends-set = ends the set
rulebook-gives-up = another position for the rest of the pregnancy
rulebook-refer = says whom to turn to
