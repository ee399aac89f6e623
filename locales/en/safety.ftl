# Stage, screening, clearances, what is ruled out. Read by both roles, so without "you" and "she" where both see it.
# Calm and short. After a loss nothing of it speaks of a baby.

safety-title = Safety
safety-of = Safety: { $name }
you-title = You
you-show = What is ruled out, screening, clearances

## Stage

stage-now = Now
stage-none = No stage is written down yet. It decides what is open: write it down first.
stage-due = Due { $day }: { $by ->
    [clinician] given by { $who }
    [transfer] counted from the transfer
    [ovulation] counted from ovulation
    [insemination] counted from the insemination
   *[last_period] counted from the last period
}.
stage-due-clinician = a clinician
stage-due-told = Given on { $day }.
stage-disagrees = The due date as given ({ $given }) and as counted ({ $reckoned }) are { $days } days apart. Ask your midwife or doctor which one holds. Until then the one that was given does.
stage-aside = Also written down on { $day }: { $stage }. The more careful one holds. Talk it over, then take one back.
stage-changed = Something has changed
stage-take-back = Not right: take it back
stage-kept = Written down.
stage-taken-back = Taken back.
stage-ask = What is it?
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
stage-tear = A third or fourth degree tear?
stage-tear-no = No
stage-tear-yes = Yes
stage-tear-unsaid = Not sure, or rather not say
stage-birth-then = The plan rests from now on, as long as it takes. It goes on when it feels right and the coach has said yes.
stage-loss-then = We are sorry. Nothing is planned from now on, and nothing will ask. If it feels right again one day, it is one tap.
stage-unsaid-then = Left unsaid it is taken with care: the midwife or doctor is asked first.
stage-date-missing = The day is needed.
stage-other = Something else
stage-keep = Write it down
stage-not-now = Not now

## The plan rests

rest-title = The plan rests
rest-title-loss = The plan rests
rest-birth = Since the birth on { $day }. There is no hurry.
rest-loss = There is no hurry, and nothing to do here.
rest-loss-care = If it is heavy, your midwife, doctor or somebody close is the one to talk to. Heavy bleeding, fever or strong pain: call them today.
rest-birth-care = Heavy bleeding, fever, chest pain, a painful swollen leg, dark thoughts: call your midwife or doctor now.
rest-ready = I am ready to go on
rest-tell = Let your coach know: send the log
rest-ready-coach = She may go on
rest-ready-note = A word to her (may stay empty)
rest-client-yes = Ready: said.
rest-client-not = She has not said yet that she is ready.
rest-coach-yes = The coach has said yes.
rest-coach-not = The coach has not answered yet. The answer comes with the next plan file.
rest-coach-not-own = Your yes is missing.
rest-taken-up = Said. It counts once both have said so.

## What waits for a clearance

open-title = Waits for a yes
open-none = Nothing waits for a clearance.
open-birth = After a caesarean or a severe tear: more than breathing
open-birth-unsaid = How the birth went is not said: more than breathing
open-condition = { $condition }
open-red = { $symptom }, { $day }: all training
open-hold = { $symptom }, { $day }: what rests since
open-first = no training before
open-meanwhile = breathing meanwhile
open-ran-out = ran out on { $day }
open-ask = To ask: { $ask }
closed-title = Training is closed
clear-record = Write down a clearance
clear-own = I have been cleared
clear-title = A clearance
clear-who = Who gave it
clear-who-hint = Name or role: midwife, doctor, physiotherapist
clear-on = On
clear-said = What was said
clear-speaks-of = It speaks of
clear-speaks-hint = Only what they spoke of. The rest goes on waiting.
clear-until = Until (empty: no end)
clear-missing = Who, when, what was said and what it speaks of are all needed.
clear-ahead = The day lies ahead, or the end before it.
clear-kept = Clearance written down.
clearances-title = Clearances
clearances-none = None written down.
clearance-line = { $who }, { $day }: { $said }
clearance-until = until { $day }
clearance-over = ran out on { $day }
clearance-of = for { $what }
clearance-of-all = for all that waited then
clearance-of-birth = the birth

## Signs

signs-title = Signs that stopped training, and holds
signs-none = None.
sign-waits = waits
sign-over = answered

## Ruled out

out-title = Ruled out now
out-none = Nothing is ruled out.
out-by-stage = by the stage
out-by-symptom = since { $symptom }
out-by-condition = { $condition }
out-by-coach = { $note }
out-until = until { $day }
out-source = Rule { $rule }. Source: { $source }
effort-of-stage = Effort now: { $target } or more in reserve, never below { $floor }{ $sets ->
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
screen-lead = Only what is true today. Nothing here is a diagnosis, and nothing leaves this device but in your own files.
screen-group-pregnancy = This pregnancy
screen-group-after_birth = The birth, and since
screen-group-body = Pelvic floor, belly, back, joints
screen-group-health = Health
screen-group-medicine = Medicines
screen-none-of = Nothing of this
screen-usual = Usual symptoms
screen-usual-hint = What is there anyway, and how much. At the usual amount the step stays; above it, a step down.
screen-before = Lifting before
screen-before-yes = Has trained with weights before
screen-before-no = New to weights, or long ago
screen-note = What else there is to know (may stay empty)
screen-keep = Keep it
screen-asks-provider = asks the midwife or doctor first
screen-asks-clearance = no training before a yes
screen-conditions = Conditions
screen-named-client = she says
screen-named-coach = the coach says
screen-side = Said differently
screen-side-client = The client, { $day }
screen-side-coach = The coach, { $day }
screen-side-what = Both are kept, and the more careful of the two holds.
screen-over = Talked over with her: hers of { $day } no longer counts
screen-over-note = What was said (needed)
screen-over-missing = A note is needed to set aside what she said.
screen-trained = Trained with weights before
screen-new = New to weights

## Loosened

loosened-title = Made milder
loosened-none = Nothing was made milder.
loosened-rule = Rule { $rule }
loosened-intake = Her own screening was set aside
loosened-over = no longer in force
