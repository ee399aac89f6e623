# Train: before, during and after a session. Short, plain, calm; a body that steps down has done nothing wrong.

back = Back
figure-play = { $name }: show the movement
figure-pause = { $name }: pause
figure-in = in
figure-out = out

## Before a session

no-plan-title = No plan yet
no-plan-what = Your coach gives you a plan file. Take it in, and your first session stands here.
no-plan-step-1 = Your coach writes a plan for you and sends it as a file, by any messenger.
no-plan-step-2 = You take the file in here. It is the only thing that you need; from then on no network is used.
no-plan-step-3 = Your first session stands on this card, one move at a time.
no-plan-take-in = Take in a plan
ready-number = Session { $number } of { $of }
ready-minutes = about { $minutes } minutes
ready-week = Week { $week } of { $weeks }
ready-light = A light week: fewer sets, more in reserve.
ready-left-open = Left halfway: { $day }. { $sets ->
    [one] 1 set is kept.
   *[other] { $sets } sets are kept.
} Today goes on with the next session.
ready-trained-today = You have trained today. Most bodies want a day between; go on only if this one feels fresh.
ready-begins = “{ $programme }” begins on { $day }. You can begin earlier if you want.
ready-begin-earlier = Begin earlier
ready-later = “{ $programme }” follows on { $day }. Until then “{ $now }” goes on.
ready-look-early = Look at it, or begin earlier
ready-until-then = Until then “{ $now }” goes on. With your first set of this one it has begun.
ready-back-to-now = Back to “{ $now }”
ready-over = { $programme }: { $weeks ->
    [one] its week is trained.
   *[other] all { $weeks } weeks are trained.
} Send your log to your coach, and ask for what comes next. Until then it goes round once more.
ready-last = Last session: { $day }
ready-kit-unknown = Your kit is not written down yet, so loads are only guessed.
ready-to-kit = Write down my kit
ready-about-unknown = Nothing is written down yet of how you are: stage, health, what to leave out. A few taps, once.
ready-to-about = Write it down
ready-resting = Resting today: { $what }
ready-begin = On to check-in
block-line = { $form }, { $rounds ->
    [one] 1 round
   *[other] { $rounds } rounds
}
sets-of = { $sets ->
    [one] 1 set
   *[other] { $sets } sets
} of { $dose }
rests-today = Rests today

check-in-title = Check-in
next-day-ask = After the session of { $day }: all settled that night and next morning?
next-day-marked = Marked then: { $what }
next-day-settled = Yes, settled
next-day-not-settled = Not settled
next-day-what = What was there?
next-day-keep = Keep this answer
next-day-why = Without an answer it counts as not settled.
readiness-ask = How are you today?
readiness-usual = As usual
    .hint = nothing special
readiness-tired = Tired
    .hint = short of sleep, worn
readiness-unwell = Unwell
    .hint = a cold, off colour; a fever is told below
today-ask = Anything about today?
today-after_illness = Back after being ill
    .hint = After an illness: only once a day without fever is behind you. Two easy sessions.
today-no_kit = My kit is not here
    .hint = Without your kit: options that need none. Your place is kept.
today-child_near = A child is in the room
    .hint = With a child in the room: nothing is held above the head. Put weights down out of reach.
today-pessary_in = Pessary in
today-pessary_out = Pessary out
today-period = My period is here
since-ask = Anything to tell since last time?
since-ask-first = Anything to tell from the last few days?
since-none = Nothing
since-some = Something
check-in-missing-readiness = First say how you are today.
check-in-missing-since = Say whether there was anything since last time.
check-in-missing-which = Choose what there was, and keep it.
check-in-start = Start
caution = Newel is not a medical device: your midwife, doctor or physiotherapist has the last word. You should be able to talk while you train. Keep water within reach. On a hot day, do not train.

## Forms of a block

form-straight_sets = Straight sets
    .how = One move, with a rest after each set.
form-superset = Superset
    .how = Two moves back to back, then a rest.
form-tri_set = Tri-set
    .how = Three moves one after the other, then a rest.
form-giant_set = Giant set
    .how = Four moves or more one after the other, then a rest.
form-finisher = Finisher
    .how = To end with, at your own pace.
form-warm_up = Warm-up
    .how = Easy and light, to get warm.
form-cool_down = Cool-down
    .how = Easy and light, to come down.
block-sub = { $rounds ->
    [one] 1 round
   *[other] { $rounds } rounds
} of { $moves ->
    [one] 1 move
   *[other] { $moves } moves
}, { $rest } s rest
changed-title = Because of how you are today
lay-out = Lay out
block-go = Begin this block

## A set

round-of = Round { $round } of { $rounds }
move-of = move { $position } of { $positions }
count-reps = reps
count-seconds = seconds
load-label = load
unit-reps = { $count ->
    [one] rep
   *[other] reps
}
unit-seconds = s
unit-minutes = { $count ->
    [one] minute
   *[other] minutes
}
reserve-ask = Done. How many more could you have done?
reserve-left = Left in reserve
reserve-how = One tap logs the set.
reserve-how-aim = One tap logs the set. { $aim ->
    [5] 5 or more
   *[other] { $aim }
} is the aim today.
aim = aim
reserve-tap = in reserve
set-unlogged = This set is not logged yet. It waits here as you entered it: tap again.
set-done = Done
logged-said = Logged: { $dose } { $reserve }
feel = Something feels off
easier = Easier
skip = Skip
skip-set = Leave this set out
then = Then
lighter-offer = The last one left little. { $load } is there if you want it.
lighter-take = Take { $load }
cue-change = This time change something: let the breath out earlier, move less far, or shift your position.
ten-reps-why = First time here. Say what you could lift ten times, or find it set by set.
ten-reps = Ten reps with what?
ten-reps-how = The load that you could lift ten times and still have a little left. If you are not sure, take the lighter one.
purpose-find = Finding the load: do the reps, then say truly how many more there were.
purpose-learn = Learning the move: light, slow, and only as far as it feels sure.
timer-label = Time of this set
timer-start = Start the clock
timer-again = Start again
timer-stop = Stop the clock

more-title = More about this set and session
more-how = How
more-slips = Usual slips, and what to do instead
more-why = Why this
more-options = Other options
more-options-none = There is no other option for this today.
more-session = This session
more-pause = Pause
more-short = I have only ten minutes
more-end = End the session here
offer-stair = Step { $to } of { $of }, now { $now }

## A rest

rest-word = rest
rest-left = { $seconds } seconds of rest left
rest-how = Walk about, breathe low and slow
rest-over = Go when you are ready
rest-less = 15 s less
rest-more = 30 s more
rest-go = Ready now
rest-go-over = Next set
logged = Logged.
as-planned = As planned.
undo = Undo
correct = Correct
correct-title = Correct: { $name }

## A mark

mark-made = Marked.
mark-at-set = { $ladder }, round { $round }.
mark-at-rest = After { $ladder }.
mark-ends-set = The set is stopped; nothing is lost.
mark-keeps = Nothing is lost.
mark-kept = Written down: { $name }
not-meant = Not meant
symptom-what = What did you notice?
symptom-urgent = Signs that stop training
symptom-urgent-what = If one of these is there, choose it, also when you are not sure.
symptom-more = More to choose from
symptom-change = Change
symptom-how-much = How much?
symptom-how-strong = How strong?
pain-0 = 0 none
pain-10 = 10 the worst you can think of
symptom-where = Where
symptom-where-unsaid = Not said
symptom-own-words = In your own words
symptom-keep = Keep this
symptom-add = Something more
symptom-drop = Take out: { $name }
follows-unsaid = Say what it was
    .what = Left unsaid it is taken with care, and your coach reads it.
follows-noted = Noted
    .what = Your coach can read it. Training goes on as it was.
follows-cue = Another way for the next set
    .what = Let the breath out earlier, move less far, or shift your position. If it is there again, an easier option follows.
follows-easier = An easier option now
    .what = For the rest of today: { $variant }, { $dose }. Next time starts there too.
    .back = The step up is worth another try once sessions go without symptoms, with a good morning after each.
follows-ladder-ends = { $ladder }: enough for today
    .today = The rest of the session goes on without it.
    .held = It rests until your coach has answered. The rest of the session goes on.
follows-unloaded = From here without load
    .what = Lying or seated, nothing held, for the rest of today.
follows-hold-ladder = This movement rests
follows-hold-lower_body = Work for hips and legs rests
follows-hold-all = Training rests
follows-hold-ends = The session ends here and waits for an answer.
follows-hold-goes-on = It waits for an answer from your coach, midwife or doctor. The rest of the session goes on.
follows-stop = Training stops here
refer = To turn to: { $who }
go-on = Go on
go-on-unsaid = Go on without saying
go-on-cue = Go on, another way
go-on-easier = Take the easier one
go-on-next = On to the next move
go-on-unloaded = Go on without load
go-on-rest = Go on with the rest
go-on-end = End the session
go-on-stop = See what to do
stop-today = Stop for today

## Training is closed

urgency-emergency = Call your emergency number now
urgency-call = Call your midwife, doctor or clinic now
urgency-same_day = Be seen today
stop-word = Training stops
stop-title = Training stops here
hold-title = Training rests for now
hold-title-symptom = Training rests: { $name }
stop-numbers = Whom to call
stop-emergency = Emergency number
stop-clinic = Midwife, doctor or clinic
stop-no-answer = Nobody answers soon, or you feel worse? Go to emergency care or call your emergency number.
stop-also = Also there: { $what }
stop-numbers-none = No number is kept here. Call first, with the number you know.
stop-numbers-add = Keep numbers here
stop-numbers-edit = Change the numbers
stop-next = And then
stop-next-red = Training opens again once your midwife, doctor or clinic has said yes and you or your coach have written it down. What you did is kept.
stop-next-clearance = Training opens once your midwife, doctor or clinic has said yes and you or your coach have written it down.
stop-next-hold = Training opens again once the answer named above is there and written down. What you did is kept.
stop-not-medical = Newel does not diagnose. If you are worried, call, whatever it says here.
stop-at = { $of ->
    [seconds] Seconds
   *[reps] Reps
} done before it, { $variant } (may stay empty)
stop-note = What was done, or how it was: for the log, if you like
stop-read = I have read this: end the session
hold-read = End the session
to-send = Send the log to your coach

undo-last = Undo: { $dose }

## Where

body-side = Side of the drawing
body-front = Front
body-back = Back
body-left = left
body-right = right
body-list = Or from a list

## What suits her at this device

suits-title = What suits you
suits-sound = Tones at the end of a rest
suits-belly = Show a belly
suits-hand = The hand that holds the phone
suits-hand-right = Right
suits-hand-left = Left
suits-effort = Say how hard it was as
suits-effort-left = Reps left
suits-effort-rating = Rating, 1 to 10
rating-ask = Done. How hard was it, from 1 to 10?
rating-tap = out of 10
rating-most = 5 or less
rating-how = 10 is all there was, 9 is one rep left. One tap logs the set.
rating-how-aim = 10 is all there was. One tap logs the set. { $aim } is the aim today.

## Counting along

count-along = Count with me
count-stop = Stop counting
count-up = up
count-down = down
count-wait = wait
count-of = { $count } of { $target }

## Pause and end

pause-title = Paused
pause-what = All that you did is kept. Go on when you like, today; the other screens are open meanwhile.
pause-go = Go on
short-what = What is left, cut down to about ten minutes.
finish-title = Done for today
effort-ask = How hard was the session as a whole?
effort-0 = like resting
effort-2 = light
effort-3 = steady work
effort-5 = hard work
effort-7 = very hard
effort-10 = all I had
minutes-label = minutes
note-label = A note for your coach, if you like
finish = Finish

finished-title = Session done
finished-sets = { $of ->
    [one] of 1 set
   *[other] of { $of } sets
}
finished-effort = of 10, how hard it was
finished-mark = { $name }{ $amount }: { $ladder }
finished-morning = Before the next session Newel asks how the night and the morning after were.
finished-onward = Another session today
finished-next = Next: { $title }

more-own = These cues are your coach's own.
own-picture = { $name }, as your coach shows it
