# What stands on paper: handout, booklet, class sheet, letter; and on the screen that prints them.

print-decimal = .
print-day = { $day } { $month } { $year }
print-month-1 = January
print-month-2 = February
print-month-3 = March
print-month-4 = April
print-month-5 = May
print-month-6 = June
print-month-7 = July
print-month-8 = August
print-month-9 = September
print-month-10 = October
print-month-11 = November
print-month-12 = December
print-quoted = “{ $words }”
print-page = Page { $n } of { $all }
print-foot = Newel, made on { $day }. No medical device: your midwife, doctor or physiotherapist has the last word.

## How to use it

print-how-title = How to use these pages
print-how-choose = Each move has steps, from easiest to hardest. Take the one that is right for your body today: steady, without pain, leaking or heaviness.
print-how-left = “Left” is how many more you could have done in good form. Stop a set with as many left as is written.
print-how-easier = If something feels off, end the set. Take an easier step, or leave the move out for today; both are part of training.
print-how-talk = You should be able to talk while you train. Keep water within reach. On a hot day, do not train.
print-how-write = Write down what you did and what you felt, next morning too. Your coach goes by it.
print-how-log-phone = What is written here by hand is not in Newel yet: log it there when you can.

## When to stop

print-stop-title = Stop, and get help
print-stop-lead = End the session at once if there is any of these. Call your emergency number if it is severe, or nobody answers soon; otherwise your midwife, doctor or clinic, now.
print-stop-after = A new bulge, pain that grows, or leaking that is new: end the move, and ask your midwife, doctor or a pelvic health physiotherapist. If you are worried, call, whatever it says here.

## A session

print-minutes = about { $minutes } minutes
print-per-week = { $times ->
    [one] once a week
   *[other] { $times } times a week
}
print-weeks = { $weeks ->
    [one] for 1 week
   *[other] for { $weeks } weeks
}
print-phase = { $title }: { $weeks ->
    [one] 1 week
   *[other] { $weeks } weeks
}
print-light-weeks = { $count ->
    [one] Light week: { $list }
   *[other] Light weeks: { $list }
}. Half the rounds, one more left in reserve.
print-in-week = Week { $week }: { $what }
print-lay-out = Lay out
print-block = { $letter }: { $form }
print-rounds = { $rounds ->
    [one] 1 round
   *[other] { $rounds } rounds
}
print-aim = { $count } left
print-sets-of = { $sets ->
    [one] 1 set of { $amount }
   *[other] { $sets } sets of { $amount }
}
print-kit = Needs: { $things }
print-kit-one = one weight
print-kit-pair = two equal weights
print-kit-barbell = barbell
print-kit-band = long band
print-kit-assist = long band that helps
print-figure = { $name }: start in ink, end in grey. { $setup }.
print-easier = Easier, for a day that asks for it: { $what }
print-rests = Rests today
print-for = For { $name }
print-stage-line = { $stage }, on { $day }
print-place = Place
print-move = Move
print-dose = Dose
print-steps = Steps, easiest first
print-round = Round
print-round-of = Round { $n }
print-col-step = Step
print-col-reps = Reps
print-col-reps-side = Reps left / right
print-col-seconds = Seconds
print-col-load = Load
print-col-left = Left
print-col-felt = What I felt
print-date = Date
print-felt-before = How I feel before (as usual, tired, unwell)
print-session-effort = How hard was all of it, 0 to 10
print-notes = Notes; how it was next morning

## A booklet

print-contents = Contents
print-sessions = Sessions
print-moves = The moves, step by step
print-time = { $title }, time { $n }
print-time-week = { $title }, week { $week }, time { $n }
print-effort-title = What “left” means
print-effort-col-left = Left
print-effort-col-feels = How it feels
print-effort-5 = Easy. You could go on for long.
print-effort-4 = Steady. You could talk in sentences.
print-effort-3 = Working. Four to five words at a time; form stays clean.
print-effort-2 = Hard. The last ones slow down.
print-effort-1 = Very hard. One more, and no second one.
print-effort-0 = Nothing left. Not meant here.
print-effort-note = Left is what you could still do, not what you should. Aims are higher in pregnancy and after birth.

## A class sheet

print-class-client = Client
print-class-lay-out = Lay out for the room
print-class-conflicts = Does not go together
print-class-cares = To mind
print-class-alone = For the coach alone, not for the wall
print-class-rests = { $ladder } rests: { $why }
print-class-changed-one = { $ladder }: changed by you
print-class-closed = { $name } does not train: { $why }
print-class-thing = { $count } × { $thing }
print-class-changed = changed by you
print-class-care = { $name }: { $what }
class-chair = steady chair
class-plate = plate, { $weight }
class-short = { $thing }: { $need } are needed, { $have } are there. { $who }: take turns, or change what one of them does.
class-turn = { $name } takes turns with it.
class-turn-instead = { $name } takes turns with it, or does this meanwhile: { $what }, { $dose }.
class-kit-of = With the kit of the room: { $name }
class-kit-own = Each with her own kit

## A letter

print-letter-title = Strength training: summary for the clinic
print-letter-about = { $name }
print-letter-birth = Date of birth: ______________________
print-letter-opening = I coach { $name } in strength training at home. These are facts from { $name }’s own training log, as they were written down, up to { $day }. They are no diagnosis, and none is meant.
print-letter-consent = { $name } agreed on { $day } that they are passed on to you.
print-letter-stage = Where things stand
print-letter-stage-none = No stage is recorded.
print-letter-mode = Birth: { $mode }
print-letter-tear = A third- or fourth-degree tear was told.
print-letter-conditions = Told at screening: { $what }
print-letter-baselines = Usual before training: { $what }
print-letter-cleared = Cleared by { $who } on { $day }
print-letter-waits = Training waits for a clearance.
print-letter-trained = What was trained, week by week
print-letter-col-week = Week
print-letter-col-sessions = Sessions
print-letter-col-minutes = Minutes
print-letter-col-sets = Sets done of planned
print-letter-col-effort = Against the aim
print-letter-effort-easier = easier (+{ $reps })
print-letter-effort-harder = harder (−{ $reps })
print-letter-effort-as = as meant
print-letter-trained-note = Against the aim: repetitions that were left in reserve, by { $name }’s own judgement, less those aimed at; the mean of the week.
print-letter-loads = Load and effort, move by move
print-letter-col-move = Move
print-letter-col-first = First
print-letter-col-last = Last
print-letter-col-left = Left then
print-letter-loads-note = First and last working set that is in the log. “Left” is the number of repetitions in reserve as said.
print-letter-symptoms = Symptoms as they were marked
print-letter-col-day = Day
print-letter-col-what = What
print-letter-col-when = When
print-letter-col-after = Next morning
print-letter-none = No symptom was marked.
print-letter-in-move = during { $move }
print-letter-at-check-in = told before the session
print-letter-at-next-day = told the next day
print-letter-settled = settled
print-letter-not-settled = not settled
print-letter-unanswered = not answered
print-letter-taken-back = taken back
print-letter-limits = Limits in force
print-letter-limit = { $what } ({ $note })
print-letter-limit-until = { $what }, until { $day } ({ $note })
print-letter-no-limits = None is recorded beyond the general rules of pregnancy and the time after birth.
print-letter-question = My question
print-letter-answer = Please answer in writing or by telephone, to { $name } or to me. What you say goes before anything that the programme proposes.
print-letter-signed = With kind regards
print-letter-caution = Made with Newel, a training log. It is no medical device, it does not diagnose, and the symptoms are as they were marked by the person training.

## The screen that prints

print-title-handout = Handout
print-title-booklet = Booklet
print-title-class = Class sheet
print-title-letter = Letter to the clinic
print-handout-name = { $title } – { $session }
print-about-handout = One session, with figures, doses, cautions and room to write by hand.
print-about-booklet = The whole programme: how to use it, every session with pages to write on, every move with its steps.
print-about-class = Who does what, for the wall: what to lay out, when to stop. The last sheet is for you alone: stages, what rests and why, limits.
print-about-letter = Facts from the log for a midwife, doctor or physiotherapist, with your question. It goes out only with her leave.
print-title-rows = Log for a spreadsheet
print-title-calendar = Calendar
print-about-rows = Her whole log as rows (CSV): sets, symptoms, answers. It holds what she marked of her health: keep it as you would keep a letter.
print-about-calendar = Her sessions as a calendar file: title and time alone, nothing of anybody’s health. The time stays the same on the clock when the clocks change.
print-write-file = Write the file
print-written-file = It lies in { $path }
calendar-from = First day
calendar-days = Days of the week
calendar-at = Time
calendar-weeks = For how many weeks
print-sheet = Paper
print-sheet-a4 = A4
print-sheet-letter = US Letter
print-write = Write the PDF
print-elsewhere = Choose a place
print-doing = Laying it out
print-written = { $pages ->
    [one] 1 page
   *[other] { $pages } pages
}, in { $path }
print-letter-to = To whom (one line each)
print-letter-ask = Your question
print-letter-agreed = On which day did she agree that it goes out?
print-letter-agreed-how = Without her leave no letter is made.

## A class

class-open = Together
class-back = Back to the Planbook
class-title = Together: { $title }
class-sub = One session, many bodies: who does what today
class-who = { $count ->
    [0] Who comes?
    [one] Who comes: 1
   *[other] Who comes: { $count }
}
class-groups = Groups
class-clients = Clients
class-find = Find a name
class-none-found = Nobody by that name.
class-no-clients = There are no clients yet. Add them on the Roster.
class-choose = Choose a group, or one by one. The table shows what each is proposed today, by her own log.
class-show = Show for the room
class-closed = Does not train today
class-closed-names = Not training today: { $names }
class-room-how = The most that is needed at one time. Write in what the room has, and what is short is said.
class-room-how-kit = The most that is needed at one time. “There” is what the kit of the room lists; write in where there are more or fewer.
class-short-below = There is too little of something for everybody at once. Below the table stands of what, and who takes turns.
class-turns-how = In each block things go out in the order of the table. Who comes later takes turns, or does with what is left.
class-kit = Which kit is at hand?
class-kit-own-how = Each is proposed what she can do with the kit that she has at home.
class-kit-room-how = Each is proposed what she can do with what stands in the room. Her own page and her log do not change. Where a reason speaks of “your kit”, it is the room’s.
class-kit-new = Write down a room
class-kit-edit = What stands in { $name }
class-room-title = The kit of a room
class-room-sub = What stands there for everybody
class-room-name = Name of the room
class-room-save = Save the room
class-room-back = Back to the class
class-room-remove = Remove this room
class-room-remove-sure = Remove it for good
class-room-keep = Keep it
class-room-remove-how = The room and what was counted in it are forgotten. Nothing that anybody trained changes.
class-room-bar-have = There is a barbell
class-room-none = Nothing beyond the floor and a wall.
class-have = there
class-have-of = How many are there: { $thing }
class-cell = { $name }: { $ladder }
class-late-first = If she comes late, her first round: { $what }, { $dose }.
class-change = Change it for her
class-earlier = The block before
class-later = The next block
class-late = Late
class-late-in = Has caught up
class-late-of = { $what }: { $name }
class-first-round = first round
class-late-ask = First ask { $name }: how are you today, was there anything since last time, is there anything about today? Then one round like this, and on with the others. If something was there, her own device says what it means.

## A log as rows

csv-col-day = Day
csv-col-time = Time
csv-col-session = Session
csv-col-what = What
csv-col-move = Move
csv-col-variant = Variant
csv-col-round = Round
csv-col-side = Side
csv-col-load = Load
csv-col-kg = Load in kg, all of it
csv-col-reps = Reps
csv-col-seconds = Seconds
csv-col-left = Left
csv-col-effort = Effort of the session, 0 to 10
csv-col-note = Note
csv-set = set
csv-before = told before
csv-mark = symptom
csv-end = end
csv-next-day = next day
csv-stopped = ended by a symptom
csv-or-more = { $count } or more
