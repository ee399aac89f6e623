# Stage, screening, clearances, what is ruled out. Read by both roles, so without "you" and "she" where both see it.
# Calm and short. After a loss nothing of it speaks of a baby.

safety-of = Safety: { $name }
you-title = You
you-show = What to leave out, health questions, and what midwife or doctor said

## Stage

stage-now = Now
stage-none = It is not written down yet where things stand. What is open depends on it.
stage-due = Due { $day }: { $by ->
    [clinician] given by { $who }
    [transfer] counted from the transfer
    [ovulation] counted from ovulation
    [insemination] counted from the insemination
   *[last_period] counted from the last period
}.
stage-due-clinician = a clinician
stage-due-told = Given on { $day }.
stage-disagrees = The due date as given ({ $given }) and as counted ({ $reckoned }) are { $days } days apart. Ask the midwife or doctor which one holds; until then the given one does.
stage-aside = Also written down on { $day }: { $stage }. The more careful one holds. Talk it over, then take one back.
stage-changed = Something has changed
stage-take-back = Not right: take it back
stage-kept = Written down.
stage-taken-back = Taken back.
stage-ask = What is true now?
stage-choice-due = Pregnant: a due date was given
    .hint = by a midwife, a doctor or a scan
stage-choice-period = Pregnant: no due date yet
    .hint = counted from the last period
stage-choice-transfer = Pregnant: after an embryo transfer
stage-choice-ovulation = Pregnant: day of ovulation known
stage-choice-insemination = Pregnant: after insemination
stage-choice-postpartum = The baby is born
stage-choice-after_loss = The pregnancy has ended
stage-choice-neither = Neither pregnant nor after a birth
stage-choice-unsaid = Not said
stage-date-due = Due date
stage-date-period = First day of the last period
stage-date-transfer = Day of the transfer
stage-date-ovulation = Day of ovulation
stage-date-insemination = Day of the insemination
stage-date-postpartum = Day of the birth
stage-date-after_loss = The day
stage-told-who = Who gave it (may stay empty)
stage-told-on = On which day (may stay empty)
stage-embryo = The embryo was
stage-embryo-day3 = three days old
stage-embryo-day5 = five days old
stage-mode = How was the birth?
stage-mode-vaginal = Vaginal
stage-mode-assisted = Vaginal, with forceps or vacuum
stage-mode-caesarean = Caesarean
stage-mode-unsaid = Rather not say
stage-tear = Was there a severe tear (third or fourth degree)?
stage-tear-no = No
stage-tear-yes = Yes
stage-tear-unsaid = Not sure, or rather not say
stage-birth-then = The plan rests from now on, as long as it takes. It goes on when it feels right and the coach has said yes.
stage-loss-then = We are sorry. The plan rests from now on, and nothing will ask. It stays here for whenever it feels right, and the coach answers then.
stage-unsaid-then = Left unsaid it is taken with care: the midwife or doctor is asked first.
stage-date-missing = The day is needed, as near as it can be said.
stage-other = Choose again
stage-keep = Write it down
stage-not-now = Not now

## The plan rests

rest-title = The plan rests
rest-title-loss = The plan rests
rest-birth = Since the birth on { $day }. There is no hurry.
rest-loss = There is no hurry, and nothing to do here.
rest-loss-care = If it weighs on you, talk to your midwife, your doctor or somebody close.
rest-birth-care = Call your midwife, doctor or clinic now: a pad soaked in an hour, fever, a strong headache, changed eyesight, one leg sore or swollen, a wound that opens or weeps.
rest-client-yes-own = You have said that you are ready.
rest-emergency = Call your emergency number now: chest pain, short breath, a seizure, bleeding that will not slow, thoughts of harming yourself or others.
rest-loss-call = Call your midwife, doctor or clinic now: a pad soaked in an hour, fever, strong or growing pain, foul-smelling discharge.
rest-loss-ask = Before you go on, ask your midwife or doctor when your body may.
rest-ready-loss-note = Ask whether her midwife or doctor has said yes.
rest-ready = I am ready to go on
rest-tell = Let your coach know: send the log
rest-ready-coach = She may go on
rest-ready-note = A word to her (may stay empty)
rest-client-yes = The client is ready.
rest-client-not = She has not said yet that she is ready.
rest-coach-yes = The coach has said yes.
rest-coach-not = Your coach has not answered yet. The answer comes with the next plan file.
rest-coach-not-own = It waits for your yes.
rest-taken-up = Said. It counts once both have said so.

## What waits for a clearance

open-title = Waits for a yes
open-none = Nothing waits for a clearance.
open-birth = Training after a caesarean or a severe tear
open-birth-unsaid = Training, until it is said how the birth went
open-condition = { $condition }
open-red = All training, since { $symptom } on { $day }
open-before = All training, since a sign on { $day }
open-hold = What has rested since { $symptom } on { $day }
open-first = no training before
open-meanwhile = breathing, pelvic floor and mobility meanwhile
open-ran-out = ran out on { $day }
open-ask = To ask: { $ask }
clear-record = Write down a yes (a clearance)
clear-own = I have a yes
clear-title = What the midwife or doctor has said (a clearance)
clear-who = Who gave it
clear-who-hint = Name or role: midwife, doctor, physiotherapist
clear-on = Day it was said
clear-said = What was said
clear-speaks-of = What the yes is for
clear-speaks-hint = Tick only what they named. The rest goes on waiting.
clear-until = Holds until (leave empty if no end was given)
clear-keep = Keep this
clear-fill = Please fill this in.
clear-over = This end has passed already: nothing opens by it.
clear-missing = Who, when, what was said and what it speaks of are all needed.
clear-ahead = The day is in the future, or the end comes before it.
clear-kept = Clearance written down.
clearances-title = Clearances
clearances-none = None written down.
clearance-line = { $who }, { $day }: { $said }
clearance-until = until { $day }
clearance-over = ran out on { $day }
clearance-of = for { $what }
clearance-of-all = for all that waited then
clearance-of-birth = the birth

## Before impact

impact-title = Before jumping and running
impact-lead = Tried one by one, rested, on a level floor. Stop at heaviness, dragging, leaking, pain or a bulge, and mark it.
impact-week = Open from week { $week } on. Trying earlier is for the coach to decide.
impact-none = Not tried yet.
impact-so-far = { $clear } of { $all } went well, the last on { $day }.
impact-open-steps = Heel drops and small bounces are open.
impact-open-all = Heel drops, small bounces and hops are open.
impact-open-no = Nothing with a landing is open yet.
impact-not-asked = The coach does not ask for these checks.
impact-sign-then = A sign came: no landing for now. A pelvic health physiotherapist or the doctor is the one to ask.
impact-do = Write down what was tried
impact-form = What was tried before jumping and running
impact-on = Day
impact-part-first = Without a landing: opens heel drops and small bounces
impact-part-lands = With a landing: opens hops. Only once all of the above went well.
impact-count = { $count } { $of ->
    [minutes] { $count ->
        [one] minute
       *[other] minutes
    }
    [seconds] seconds
   *[reps] { $count ->
        [one] time
       *[other] times
    }
}{ $side ->
    [yes] , each side
   *[no] { "" }
}
impact-outcome-clear = Went well
impact-outcome-not_yet = Not yet
impact-outcome-sign = A sign
impact-note = A word to it (may stay empty)
impact-keep = Keep it
impact-nothing = Nothing is filled in yet.
impact-kept = Written down.

## Signs

signs-title = Signs that stopped training, and what rests
signs-none = None.
sign-waits = waits
sign-over = answered

## Ruled out

out-title = Ruled out now
out-none = Nothing is ruled out.
out-by-stage = by the stage
out-by-symptom = after: { $symptom }
out-by-condition = { $condition }
out-by-coach = { $note }
out-until = until { $day }
out-source = Rule { $rule }. Source: { $source }
effort-of-stage = Now: stop each set with { $target } or more reps left, never fewer than { $floor }{ $sets ->
    [0] { "" }
   *[other] , { $sets } sets at most
}.
effort-of-stage-breathing = Now: breathing, pelvic floor and walking.

## Screening

screen-title = Screening
screen-never = Not screened yet.
screen-due = Due again since { $day }: { $why ->
    [trimester] trimester { $number } has begun.
    [birth] after the birth.
    [weeks_after] { $number } weeks after the birth.
    [loss] whenever it suits.
    [sign] after a sign or a hold.
   *[stale] the last one is a year old.
}
screen-do = Fill in screening
screen-again = Go through screening again
screen-kept = Screening kept.
screen-lead = Only what is true today. This is no diagnosis, and it leaves this device only in a file that is sent on purpose.
screen-group-pregnancy = This pregnancy
screen-group-after_birth = The birth, and since
screen-group-body = Pelvic floor, belly, back, joints
screen-group-health = Health
screen-group-medicine = Medicines
screen-none-of = Nothing of this
screen-usual = Usual symptoms
screen-usual-hint = What is there on most days, and how much. At that amount the step stays; above it, a step down.
screen-before = Lifting before
screen-before-yes = Has trained with weights before
screen-before-no = A little, or long ago
screen-before-never = Never trained with weights: the moves come first
screen-note = What else there is to know (may stay empty)
screen-keep = Keep it
screen-asks-provider = asks the midwife or doctor first
screen-asks-clearance = no training before a yes
screen-conditions = Conditions
screen-named-client = the client says
screen-named-coach = the coach says
screen-side = Said differently
screen-side-client = The client, { $day }
screen-side-coach = The coach, { $day }
screen-side-what = Both are kept, and the more careful of the two holds.
screen-over = Talked over with her: hers of { $day } no longer counts
screen-over-note = What was said (needed)
screen-over-missing = A note is needed to set aside what she said.
screen-trained = Trained with weights before
screen-new = Trained a little, or long ago
screen-never-trained = Never trained with weights

## Rules for one client

rules-title = Rules for her
rules-none = All rules are as Newel has them.
rules-set = Set a rule for her
rules-which = Rule
rules-numbers = Numbers
rules-signs = What a sign does
rules-value = New value ({ $least } to { $most }; { $stricter ->
    [more] more is stricter
   *[less] less is stricter
})
rules-class = What it does
rules-class-note = only recorded
rules-class-cue = another way for the next set
rules-class-drop = a step down
rules-class-hold = rests until answered
rules-class-red = training stops
rules-would = It would then say: { $sentence }
rules-pack = As Newel has it: { $value }
rules-note = Why (needed to make it milder)
rules-until = Until (empty: until you set it back)
rules-number-grow = reps may grow within a session (1 yes, 0 no)
rules-number-binds_all = the chance bounds the reps as well
rules-number-slack = slack under the target
rules-number-alpha = chance to fall under the floor
rules-number-floor_below_target = floor under the target
rules-number-share = share
rules-number-alone_over_target = left over the target, once
rules-number-days_1 = first days away
rules-number-share_1 = share after the first
rules-number-days_2 = more days away
rules-number-share_2 = share after more
rules-number-more_reserve = more in reserve
rules-number-room_over_target = room over the target
rules-number-finding_sets = sets to find a load
rules-number-finding_from_week = finding from week
rules-number-share_of_group = share of what another option held
rules-number-chance = chance that brings a lighter load
rules-number-over_target = left over the target
rules-number-more_reps = more reps
rules-number-times_lower = times the load, hips and legs
rules-number-times_upper = times the load, shoulders and arms
rules-number-next_times_lower = next load within, hips and legs
rules-number-next_times_upper = next load within, shoulders and arms
rules-number-exposures = times running
rules-number-most_of_body = share of body weight
rules-number-sessions = sessions
rules-number-marks = marks
rules-number-pain = pain number
rules-number-weeks_after = weeks after a birth or a loss
rules-number-pregnant_floor = never fewer than
rules-number-from_week = from week
rules-number-asked = asked for: 1, or 0 for not
rules-number-least_reserve = least in reserve
rules-number-sets = sets
rules-number-reserve = in reserve
rules-number-least_target = reps left, new to lifting
rules-number-trained_target = reps left, trained
rules-number-least_floor = never fewer than
rules-number-most_sets = sets at most
rules-keep = Set it
rules-back = As Newel has it again
rules-kept = Set. It reaches her with the next plan file.
rules-line = { $what }: { $value }
rules-tighter = stricter
rules-looser = milder
rules-refused = has no effect

## Loosened

loosened-title = Made milder
loosened-none = Nothing was made milder.
loosened-rule = Rule { $rule }
loosened-intake = Her own screening was set aside
loosened-over = no longer in force
