# The coach's Desk: why a client needs a look, and her story beside it.
# A finding `desk-<code>` gets its facts as arguments. A symptom or a ladder that is not known arrives as "none".
# A label stands after a colon or in brackets, so that no language has to bend it.

## Why she needs a look: training is stopped

desk-red-flag = Stop sign on { $day }: { $symptom }. No clearance yet.
desk-red-care = Stop sign on { $day }: ask her whether she has been seen.
desk-clearance-waits = A yes from her midwife or doctor is needed and not written down yet.
desk-clearance-over = A yes ran until { $day }. A new one is needed.

## Why she needs a look: something waits for the coach

desk-hold-waits = { $ladder ->
    [none] { $symptom ->
        [none] Training rests since { $day }. Waits for your answer.
       *[other] Training rests since { $day }: { $symptom }. Waits for your answer.
    }
   *[other] { $symptom ->
        [none] { $ladder } rests since { $day }. Waits for your answer.
       *[other] { $ladder } rests since { $day }: { $symptom }. Waits for your answer.
    }
}
desk-plan-rests = { $coach ->
    [0] Birth on { $day }. The plan rests until you and she have said that it goes on.
   *[other] Birth on { $day }. You have said that it goes on; she has not yet.
}
desk-plan-rests-loss = { $coach ->
    [0] A loss on { $day }. The plan rests until you and she have said that it goes on.
   *[other] A loss on { $day }. You have said that it goes on; she has not yet.
}
desk-stage-differs = You and she have recorded different stages. The more careful one holds.
desk-symptom-repeated = { $ladder ->
    [none] { $symptom }: { $count ->
        [one] marked once.
        [2] marked twice.
       *[other] marked { $count } times.
    }
   *[other] { $ladder }: { $symptom }, { $count ->
        [one] marked once.
        [2] marked twice.
       *[other] marked { $count } times.
    }
}
desk-symptom-marked = { $ladder ->
    [none] Marked on { $day }: { $symptom }.
   *[other] { $ladder }, { $day }: { $symptom }.
}
desk-not-settled = The day after { $day } had not settled.
desk-next-day-unanswered = The morning after { $day } is not answered. It counts as not settled.
desk-silence-after-symptom = No log for { $days ->
    [one] one day
   *[other] { $days } days
} after a symptom.
desk-own-words = { $day ->
    [none] In her own words: “{ $words }”
   *[other] In her own words, { $day }: “{ $words }”
}
desk-question = She asks: “{ $words }”
desk-check-in-unwell = Said on { $day } that she was unwell.
desk-effort-over = Harder than her stage allows in { $count } of the last { $of } sessions.
desk-load-jump = Load jumped: { $variant }, { $load }.
desk-override-open = What you set is not in a plan file yet: “{ $words }”
desk-gap = { $count ->
    [one] One record is missing
   *[other] { $count } records are missing
} in what was taken in. Ask her to write the log file again.
desk-check-sign = Trying out before impact on { $day }, a sign came.
desk-stage-moved = A new stage since { $day }.
desk-near-due = { $days ->
    [0] The due date is today.
    [one] One day to the due date.
   *[other] { $days } days to the due date.
}

## Why she needs a look: worth a look

desk-dates-differ = The due date and what the period or the transfer gives are further apart than usual. Ask which one her clinician goes by.
desk-screen-again = Screening is due again since { $day }.
desk-screen-never = Not screened yet.

desk-silence = No log for { $days ->
    [one] one day
   *[other] { $days } days
}.
desk-skipped = { $count ->
    [one] One set was
   *[other] { $count } sets were
} left out lately.
desk-ready-up = Ready for more on { $count ->
    [one] one ladder
   *[other] { $count } ladders
}.
desk-kit-limit = { $ladder }: the heaviest that her kit makes.
# A code from a newer engine than this screen.
desk-unknown-finding = Something to look at: { $code }

## Urgency, said beside its shape

desk-urge-stop = Stopped
desk-urge-attention = Waits
desk-urge-look = Look

## The list

desk-title = Desk
desk-list-title = Who needs a look
desk-well = { $count ->
    [0] nobody else
    [one] and one with nothing waiting
   *[other] and { $count } with nothing waiting
}
desk-nobody = Nobody needs a look right now.
desk-no-clients = No clients yet. Add the first one on the Roster, give her a programme, and write her a plan file.
desk-taken-in = { $count ->
    [0] No log files taken in within the last day
    [one] One record taken in within the last day
   *[other] { $count } records taken in within the last day
}
desk-take-in = Take in log files
desk-last-session = last session { $day }
desk-no-session = no session yet
desk-more-findings = { $count ->
    [one] and one more
   *[other] and { $count } more
}
desk-back = All clients
desk-choose = Choose a client on the left to read her story.

## One client's story

desk-story-why = What there is to see
desk-all-well = Nothing waits, as far as the log says.
desk-no-restrictions = no limits set by you
desk-restricted = { $count ->
    [one] one restriction
   *[other] { $count } restrictions
}
desk-cleared = cleared { $day } by { $who }
desk-clearance-missing = clearance not recorded
desk-no-conditions = no conditions recorded
desk-lead-strength = Strength
desk-where = Where she is
desk-step-of = Step { $step } of { $of }
desk-not-started = Not trained yet
desk-resting = rests, waits for your answer
desk-resting-red = All of it rests until a clearance
desk-show-trend = Show the strength of { $ladder }
desk-sessions = Sessions, planned beside done
desk-sessions-more = Show { $count ->
    [one] one earlier session
   *[other] { $count } earlier sessions
}
desk-no-sessions = No session in her log yet.
desk-col-day = day
desk-col-move = movement
desk-col-planned = planned
desk-col-done = done
desk-col-effort = left: meant / said
desk-col-marks = symptoms
desk-col-next = next morning
desk-filter = Movements
desk-filter-all = All movements
desk-filter-one = { $ladder } alone
desk-filter-none = No set of this ladder in these sessions.
desk-session-line = { $minutes ->
    [none] { $effort ->
        [none] session effort not said
       *[other] session effort { $effort } of 10
    }
   *[other] { $effort ->
        [none] { $minutes } min
       *[other] { $minutes } min, session effort { $effort } of 10
    }
}
desk-open-run = not finished
desk-note-hers = Her note: “{ $words }”

## Holds, clearances

desk-holds = Waits for your answer
desk-hold-line = Since { $day }
desk-scope-ladder = this ladder rests
desk-scope-lower_body = all work for hips and legs rests
desk-scope-all = all training rests
desk-answer-go_on = Go on, a step lower
desk-answer-restart_lighter = Restart 20 % lighter
desk-answer-keep_resting = Keep resting
desk-answer-note = A word to her (may stay empty)
desk-answered = Answer recorded. It reaches her with the next plan file.
desk-red-title = Training is stopped
desk-red-text = A stop sign was marked. An answer here cannot lift it; only a clearance from her midwife or doctor reopens training. Record it on the day you hear of it.
desk-red-waits-title = Training waits for a clearance
desk-red-waits-text = Her screening asks for a clearance before training. Record it on the day you hear of it.
desk-clear-record = Record a clearance

## What the coach does

desk-do = What you do
desk-do-note = Write to her
desk-do-override = Set level or load
desk-do-next = See her next session
desk-note-label = Your words to her
desk-note-hint = They reach her with the next plan file.
desk-note-keep = Keep the note
desk-note-kept = Note kept. It reaches her with the next plan file.
desk-override-title = Where she is to start
desk-override-ladder = Ladder
desk-override-level = Level
desk-override-variant = Variant
desk-override-leave = leave it to the rules
desk-override-level-n = { $step }: { $variant }
desk-override-load = Load
desk-load-leave = leave it to the rules
desk-load-nothing = nothing held
desk-load-one = one weight
desk-load-pair = two equal weights
desk-load-barbell = barbell
desk-load-value = Weight of one
desk-load-bar = Empty bar
desk-load-side = Plates on each side
desk-override-note = Why (she reads it)
desk-override-note-missing = Write a word why: it stands in the record.
desk-override-nothing = Choose a level, a variant or a load.
desk-override-keep = Set it
desk-override-kept = Set. It reaches her with the next plan file.
desk-next-title = Next session: { $title }
desk-next-none = No next session: she has no programme yet.
desk-next-closed = Training is closed.
desk-next-sets = { $sets } × { $target }
desk-next-rests = Rests
desk-next-reserve = { $reserve } left
desk-why = Why

## The plan file

desk-plan = Plan file
desk-plan-unsent = { $count ->
    [0] All that you wrote is in a plan file.
    [one] One thing is not in a plan file yet.
   *[other] { $count } things are not in a plan file yet.
}
desk-plan-write = Write plan file
desk-plan-elsewhere = Choose another place
desk-plan-written = Written: { $path } ({ $size })
desk-plan-then = Send it to her by any messenger. She takes it in on her Send screen.
desk-answers = What you wrote and set
desk-answers-none = Nothing yet.
desk-sent = sent
desk-unsent = not sent yet
desk-withdraw = Take back
desk-kind-note = Note
desk-kind-override = Start set
desk-kind-rule_setting = Rule set
desk-kind-hold_answered = Answer to a hold
desk-kind-restriction = Restriction
desk-kind-clearance = Clearance
desk-kind-answer = Answer
desk-kind-stage_changed = Stage
desk-kind-screening = Screening
desk-kind-impact_checked = Checks before impact
desk-kind-other = Entry

## The coach's own words and pictures

moves-title = Moves
moves-sub = Every ladder, easiest step first. Choose a move to see what it asks for, its usual slips, and to put your own cues or a picture of yours in the place of the built-in ones.
moves-line = { $own ->
    [0] { $levels } steps
   *[other] { $levels } steps, { $own } with words of yours
}
moves-doubt = Doubtful:
moves-doubtful = doubtful
moves-slips = Usual slips, and what to do instead
moves-top = none above this one
moves-facts = What it asks for
moves-position = Position
moves-held = Held
moves-held-body = nothing
moves-held-one = one weight
moves-held-pair = a weight in each hand
moves-held-barbell = a barbell
moves-held-band = a long band to pull against
moves-held-assist = a long band that carries part of her
moves-needs = Kit
moves-mind = Mind
moves-usual = Usual start
moves-usual-what = common practice; her own start and the lightest load decide
moves-range = { $from } to { $to }
moves-ready = Next step
moves-ready-load = at { $load }, at the top of the range
moves-ready-help = at { $load } of help or less
moves-ready-reps = at { $count } reps, or the top of the range
moves-ready-seconds = at { $count } seconds, or the top of the range
moves-step = Step { $step }
moves-own = { $picture ->
    [yes] { $cues ->
        [0] your picture
       *[other] your cues and picture
    }
   *[no] your cues
}
words-cues = Your cues
words-cues-how = One thought a line, as you would say it in the room. Left empty, the built-in cues stay; they are shown in grey.
words-cue = Cue { $nth }
words-picture = Your picture
words-picture-how = It stands in the figure's place on her cards. It is made small and drawn anew, so that place and time of a photo do not travel with it. Ask whoever is in it.
words-picture-choose = Choose a picture
words-picture-away = Take the picture away
words-picture-none = This file is no picture that can be shown. Choose a JPEG, PNG or WebP file.
words-when = Your clients see it from the next plan that you send.
words-keep = Keep

## Writing programmes

planbook-own = yours
planbook-built-in = built in
planbook-minutes = about { $minutes } minutes
planbook-changes = What would change for whom
planbook-changes-nobody = This programme was given to nobody yet. Give it on the Roster.
planbook-changes-same = Nothing changes, or not whole yet, for: { $names }
planbook-write = Write on
planbook-copy = Write a copy of my own
planbook-copy-title = { $title }, my own
planbook-new = A new programme
planbook-new-how = its name
planbook-new-go = Begin
planbook-away = { $count ->
    [one] One programme put away
   *[other] { $count } programmes put away
}
planbook-take-out = Take it out again
write-done = Done, all is kept
write-undo = Undo
write-redo = Redo
write-title = Name
write-per-week = Sessions a week
write-weeks = Weeks (open if empty)
write-whole = Every change is kept at once. It can be given to clients on the Roster.
write-not-whole = Every change is kept at once. It can be given once each session has a move.
write-week = Sets a week, without finishers:
write-week-sets = { $what } { $sets }
write-session = Add a session
write-session-n = Session { $n }
write-session-title = Name of the session
write-minutes = About { $minutes } minutes as written
write-away = Put this programme away
write-weeks-title = Weeks
write-weeks-which = Which week is written
write-weeks-every = Every week
write-weeks-chip = Week { $week }{ $light ->
    [yes] , light
   *[no] { "" }
}{ $own ->
    [yes] , asks for something of its own
   *[no] { "" }
}
write-weeks-light = Light week
write-weeks-light-how = Half the rounds, one more left in reserve, and nothing grows.
write-weeks-alone = What you change now holds in week { $week } alone.
write-weeks-own = Of its own in week { $week }.
write-weeks-usual = As every week
write-weeks-others = { $count ->
    [one] Week { $list } asks for something else
   *[other] Weeks { $list } ask for something else
}
write-weeks-phase = Phase
write-weeks-count = weeks
write-weeks-phase-line = { $title }, { $weeks ->
    [one] 1 week
   *[other] { $weeks } weeks
}
write-weeks-phase-n = Phase { $n }
write-weeks-phase-first = Divide it into phases
write-weeks-phase-add = Add a phase
write-weeks-open = With a number of weeks, each of them can ask for its own.
step-title = Rise from week to week
step-how = Each step adds to the working blocks. A light week repeats the one before it.
step-from = from week
step-to = to week
step-every = every … weeks
step-reps = + reps
step-seconds = + seconds
step-rounds = + rounds
step-reserve = − left
step-go = Write these weeks
step-even = Every week the same
write-part = for
part-warm_up = warming up
part-work = the work
part-finisher = ending with
part-cool_down = coming down
write-add = Add a block
write-add-how = Moves by name, Enter after each; Enter once more adds them
write-add-go = { $part ->
    [warm_up] Add it as a warm-up
    [finisher] Add it as a finisher
    [cool_down] Add it as a cool-down
   *[work] { $count ->
        [one] Add it as straight sets
        [2] Add them as a superset
        [3] Add them as a tri-set
       *[other] Add them as a giant set
    }
}
write-none = No move is called “{ $typed }”.
write-take-out = Take out: { $what }
write-copy = Copy: { $what }
write-earlier = Earlier: { $what }
write-later = Later: { $what }
write-one-more = One more move: { $what }
write-rounds = rounds
write-rest = rest, s
write-between = between moves, s
write-ladder = Ladder
write-reps = reps
write-seconds = s
write-low = { $what }: at least
write-high = { $what }: at most
write-left = { $what }: left in reserve
write-left-unit = left
write-more = { $levels }{ $tempo ->
    [yes] , { $down }-{ $pause }-{ $up }
   *[no] { "" }
}
write-levels = Steps
write-from = { $what }: from step
write-to = { $what }: up to step
write-tempo = Tempo, s
write-tempo-down = down
write-tempo-pause = still
write-tempo-up = up
write-tempo-free = leave it free

## Ladders and moves of the coach's own

own-new = New ladder
own-add = Add a move here
own-add-at = Add a move here: step { $step } of { $ladder }
own-add-to = A move of yours: { $ladder }
own-above = Add a step above
own-closed = Breathing, pelvic floor and mobility go on while everything else rests, so moves of your own cannot stand here. Your own cues and pictures can.
own-yours = yours
own-yours-away = yours, put away
own-ladder-how = A ladder goes from the easiest step to the hardest. Begin with the easiest move; steps are added above it.
own-ladder-name = Name of the ladder
own-pattern = Kind of movement
own-first = The easiest step
own-like = Like this one, but …
own-like-nothing = From nothing
own-name = Name of the move
own-sides = Sides
own-sides-both = both
own-sides-one = one at a time
own-count = Next step is due by
own-count-reps = reps
own-count-seconds = seconds
own-count-load = weight
own-ready-reps = Next step at so many reps
own-ready-seconds = Next step at so many seconds
own-ready-load = Next step at so much in all
own-mind = What it strains
own-mind-how = Stage, screening and your restrictions rule moves out by this.
own-mind-open = not answered: counts as yes
own-mind-yes = yes
own-mind-no = no
own-mind-counts = { $count ->
    [one] One question is open. It counts as yes, so this move is closed to more clients than it may need to be.
   *[other] { $count } questions are open. They count as yes, so this move is closed to more clients than it may need to be.
}
own-words = Words on the card
own-words-how = setup, breath, cues and slips; all optional
own-setup = How it is set up
own-breath = How she breathes
own-slip = Usual slip { $nth }, and what to do instead
own-another = This makes another move of it: a new one stands in its place, and the old one is put away. What was trained stays what it was.
own-when = Clients get it with the next plan file whose programme has this ladder. It has no figure; a picture of yours can be added once it is kept.
own-keep = Keep
own-change = Change
own-away = Put away
own-away-what = Put away, it is not proposed any more once the next plan file has arrived. What was trained with it stays.
own-back = Take out again
own-back-what = It is put away: not proposed, and there for what was trained with it.
own-rename = Keep the name
own-picture-how = Your own photo or drawing. A move of yours has no figure.
