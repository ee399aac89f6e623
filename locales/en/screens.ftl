# The screens beside Train and Desk: Start, Path, Kit, Send, Roster, Planbook, and her numbers.

## Start

start-lead = Newel guides your strength training through pregnancy and after birth, set by set and without a network, and works out the next session from how the last one went.
start-not-medical = Newel is not a medical device and does not diagnose. What your midwife or doctor says, and the guidance where you live, comes first.
start-who = Who are you?
start-role-client = I train
start-role-client-hint = Sessions card by card, on this device
start-role-coach = I coach
start-role-coach-hint = Clients, their logs, their plans
start-name = Your name
start-name-hint = As your coach should read it. It stays on this device and in the files that you write.
start-name-missing = Write a name first.
start-go-client = Begin
start-go-coach = Open the desk
start-or-plan = From your coach
start-plan = I have a plan file from my coach
start-plan-hint = Your name and your first session come with it.
start-demo-title = Just looking?
start-demo = Look around with invented people
start-demo-hint = Adds seven invented clients and their coach, with twelve weeks of logs. None of them exists. You can leave them whenever you like.
start-demo-making = Making up twelve weeks of training. This takes a few seconds.
start-profiles = On this device
start-profile-client = trains
start-profile-coach = coaches
start-profile-demo = invented
start-opening = Opening
demo-about-coach = Seven clients, a desk to go through
demo-about-amara = 31 weeks pregnant, trained before; a question about yesterday waits
demo-about-noemi = 11 weeks after a caesarean, heaviness on the split squat
demo-about-josie = 24 weeks pregnant, new to lifting, girdle pain; bands and one pair in lb
demo-about-freya = Seven months after a birth, much kit, ready for more
demo-about-lucia = Wrist pain, one band, nothing heard for twelve days
demo-about-hana = 40 weeks after a birth, a known prolapse, trains at her usual
demo-about-selin = 34 weeks pregnant; a sign this week has stopped training

## Her numbers

numbers-title = Your numbers
numbers-hint = They stand on the card that shows when training has to stop.
numbers-emergency = Emergency number
numbers-clinic = Midwife, doctor or clinic
numbers-keep = Keep the numbers
numbers-kept = Numbers kept.

## Path

path-title = Path
path-sub = Where you are, and how you came here
path-empty = Nothing here yet. Your ladders come with the plan, your log with the first session.
path-ladders = Your ladders
path-level-of = Step { $step } of { $of }
path-here = You are here
path-held = Rests until your coach has answered
path-trend = Strength over time
path-not-started = Not trained yet
path-afresh = Starts afresh
path-on-hold-step = This ladder rests
next-top = The top step that is open now. Load and reps can still grow.
next-rests = It goes on once the coach has answered.
next-back = Back to step { $step } after { $of } { $of ->
        [one] session
       *[other] sessions
    } without “{ $symptom }” and with a settled morning; { $done } so far.
next-earn = Next: { $to }, after { $of } { $of ->
    [one] session
   *[other] sessions running
} with { $by ->
    [seconds] { $count } seconds
   *[reps] { $count } reps and { $reserve } or more left
}{ $mark ->
    [load] , at { $kg } kg or your heaviest
   *[none] { "" }
}; { $done } so far.
weeks-title = Your weeks
weeks-now = Last seven days: { $minutes } minutes in { $sessions ->
    [one] one session
   *[other] { $sessions } sessions
}.
weeks-guideline = Guidance for your stage names { $minutes } minutes of all activity; walking and the rest are not counted here.
weeks-week = From
weeks-minutes = Minutes
weeks-sets = Sets
weeks-sets-of = { $done } of { $planned }
weeks-effort = Effort
weeks-effort-as-meant = as meant
weeks-effort-easier = { $by } easier
weeks-effort-harder = { $by } harder
weeks-source = Mark on the bars: { $source }
path-find = Find a session
path-find-none = No session like that.
path-or-variant = or { $variant }
path-log = Your sessions
path-log-empty = No session yet. After the first one, what you did stands here beside what was planned.
path-log-more = Show { $count ->
    [one] one earlier session
   *[other] { $count } earlier sessions
}

## Strength over time

trend-title = Strength: { $name }
trend-what = Estimate of what you could move once (one-rep max, with your body’s share), and the range it lies in 8 times out of 10.
trend-what-her = One-rep max in kg of effective load, with its 80 % band.
trend-summary = { $kg } kg on { $day } (between { $low } and { $high }), from { $first } kg on { $since }.
trend-summary-one = { $kg } kg on { $day } (between { $low } and { $high }). One day so far.
trend-marks = { $count ->
    [0] No symptom marked on this ladder.
    [one] A symptom was marked on one of these days.
   *[other] Symptoms were marked on { $count } of these days.
}
trend-none = No strength to show yet: it needs a set with a load and an answer on how many more were left.
trend-walk = Day by day
trend-at = { $day }: { $kg } kg, between { $low } and { $high }{ $marked ->
    [yes] ; a symptom was marked
   *[no] { "" }
}
trend-table = The numbers as a table
trend-col-day = day
trend-col-kg = estimate, kg
trend-col-band = 80 % band, kg
trend-col-mark = symptom
trend-marked = marked
trend-not-marked = none
trend-band-values = { $low } to { $high }

## A session in the log

past-planned = planned
past-done = done
past-left = left: meant / said
past-left-both = { $meant } / { $said }
past-left-meant = { $meant } left
past-left-unsaid = not said
past-set = set
past-stopped = stopped by a mark
past-corrected = { $text } (corrected)
past-not-planned = not planned
past-instead = instead of { $variant }
past-effort = session effort { $effort } of 10
past-minutes = { $minutes } min
past-marks = What was felt
past-mark-unsaid = Not described
past-mark-round = round { $round }
past-next-day = Next morning
past-next-settled = settled
past-next-not_settled = not settled
past-next-unanswered = not answered
past-note = Note
past-open = Not finished
past-today-after_illness = back after being ill
past-today-no_kit = without the kit
past-today-child_near = a child in the room
past-today-pessary_in = pessary in
past-today-pessary_out = pessary out
past-today-period = period
past-readiness-usual = as usual
past-readiness-tired = tired
past-readiness-unwell = unwell
past-side-left = left
past-side-right = right
past-none = none
past-counts-reps = { $counts } reps
past-counts-seconds = { $counts } s
past-of-side = { $side } { $counts }

## Kit

kit-title = Kit
kit-sub = What you have to train with. Only loads that you can really make are proposed.
kit-unknown = Not filled in yet. Until then nothing that needs weights is proposed.
kit-weights = Dumbbells and other weights
kit-weights-hint = Tap once for one, twice for a pair, again for none.
kit-unit = Weights are marked in
kit-sets = Add a set at once
kit-set-light-pairs-kg = Pairs: 1, 2, 3, 5 kg
kit-set-even-pairs-kg = Pairs: 2, 4, 6, 8, 10 kg
kit-set-singles-kg = Single: 8, 12, 16 kg
kit-set-light-pairs-lb = Pairs: 3, 5, 8 lb
kit-set-even-pairs-lb = Pairs: 5, 10, 15, 20, 25 lb
kit-set-singles-lb = Single: 18, 26, 35 lb
kit-count-none = none
kit-count-one = one
kit-count-pair = pair
kit-other = Another weight
kit-other-value = Weight, as marked on it
kit-add-one = Add one
kit-add-pair = Add a pair
kit-add-none = A weight is a number above 0, up to 500.
kit-owned = { $count ->
    [0] No weights yet
    [one] One weight
   *[other] { $count } weights
}
kit-bar = Barbell and plates
kit-bar-have = I have a barbell
kit-bar-weight = The empty bar weighs
kit-plates = Pairs of plates
kit-plates-hint = One plate on each side. Add a pair for each that you have.
kit-plate-add = Add a pair of { $weight }
kit-plate-other = Another plate
kit-plates-none = No plates yet
kit-bands = Long bands
kit-bands-hint = Choose by how stiff it feels. Colours mean something else with every maker.
kit-band-add = Add: { $name }
kit-band-name = What you call it
kit-band-force = { $kg100 } kg at twice its length, { $kg200 } kg at three times
kit-band-measure = Measured with a luggage scale
kit-band-measure-hint = Hook it to the scale and pull. Two readings in kg.
kit-band-at100 = At twice its length, kg
kit-band-at200 = At three times, kg
kit-band-use = Use these
kit-band-wrong = The second reading is at least the first, both above 0, up to 150 kg.
kit-bands-none = No bands yet
kit-gains = What would open more
kit-gains-hint = Steps of your plan that wait for a piece, and for nothing else. None of it is needed.
kit-gain = { $count ->
    [one] one more step
   *[other] { $count } more steps
}
kit-gain-where = { $ladder } { $steps }
kit-piece-one_weight = One weight
kit-piece-pair_of_weights = A pair of weights
kit-piece-long_band = A long band
kit-piece-barbell = A barbell
kit-piece-thing-bench = A bench
kit-piece-thing-pull_up_bar = A pull-up bar
kit-piece-thing-step = A step
kit-piece-thing-straps = Straps
kit-piece-thing-loop_band = A loop band
kit-things = Other things
kit-things-hint = A wall, a floor, a counter and a steady chair are taken for granted.
kit-save = Save the kit
kit-saved = Kit saved. The next proposal uses it.
kit-unsaved = Not saved yet
kit-mass = Body mass
kit-mass-hint = May stay empty: 70 kg is assumed then, and said so. It is used for movements in which you move your own body.
kit-mass-value = Body mass
kit-mass-save = Save body mass
kit-mass-saved = Body mass saved.
kit-mass-wrong = A body mass is a number above 0, up to 500.
kit-remove = Remove { $what }
step-less = Less: { $what }
step-more = More: { $what }

## Send

send-title = Send
send-sub-client = Your log goes to your coach as a file, by whatever messenger you both use.
send-sub-coach = Logs come in as files, plans go out as files, by whatever messenger you both use.
send-log = Your log
send-log-what = { $records ->
    [0] Nothing is in the log yet.
    [one] One entry: sessions, sets, symptoms and answers.
   *[other] { $records } entries: sessions, sets, symptoms and answers.
}
send-log-last = Last session { $day }.
send-log-coach = For { $coach }.
send-where = It is written to
send-write = Write the log file
send-elsewhere = Choose another place
send-written = Written: { $path }
send-written-size = { $records ->
    [one] One entry
   *[other] { $records } entries
}, { $size }.
send-then = Now send that file to your coach: attach it in any messenger or mail. It holds health data, so choose a way that you trust. Nothing was sent by itself.
send-nothing = There is nothing to write before the first session.
send-plan-in = A plan from your coach
send-plan-in-hint = { $programme ->
    [none] No plan yet. Choose the file that your coach sent.
   *[other] You have “{ $programme }”. A newer plan takes over; your log stays.
}
send-plan-choose = Take in a plan file
send-logs-in = Logs from your clients
send-logs-in-hint = Choose one file or many. Taking a file in twice changes nothing.
send-logs-choose = Take in log files
send-drop = or drop them here
send-taking = Reading
send-plans = Plans for your clients
send-plans-none = No clients yet. Add the first one on the Roster.
send-plan-write = Write plan file
send-plan-none = no programme yet
send-folder = Files are written to { $folder }
size-B = { $value } bytes
size-kB = { $value } kB
size-MB = { $value } MB

## What became of the files

report-title = Taken in
report-totals = { $files ->
    [one] One file
   *[other] { $files } files
}, { $fresh ->
    [0] nothing new
    [one] one new entry
   *[other] { $fresh } new entries
}{ $gaps ->
    [0] { "" }
    [one] , one with a gap
   *[other] , { $gaps } with gaps
}{ $refused ->
    [0] .
    [one] , one refused.
   *[other] , { $refused } refused.
}
report-new = New
report-known = Known already
report-gap = Gap
report-partly = Taken in part
report-refused = Refused
report-person = from { $name }
report-kind-log = log
report-kind-plan = plan
report-counts = { $fresh } new, { $known } known already
report-missing = { $count ->
    [one] One entry is missing in between
   *[other] { $count } entries are missing in between
}. Ask for the log file again: it always holds everything.
report-archived = She is archived: find her under “Archived” on the Roster.
report-unchanged = Nothing was changed by it.

## Roster

roster-title = Roster
clients-read = { $read } of { $count } clients read
roster-more = Show { $count ->
    [one] one more
   *[other] { $count } more
}
roster-sub = { $count ->
    [0] No clients yet
    [one] One client
   *[other] { $count } clients
}
roster-empty = Add your first client. A name is enough to begin; a stage and what screening found make the proposals careful in the right places.
roster-add = Add a client
roster-edit = Edit
roster-edit-title = Edit { $name }
roster-find = Find by name
roster-none-found = Nobody of that name.
roster-open = Open { $name }
roster-stage-unsaid = Stage not recorded
roster-conditions = Conditions
roster-restrictions = Restrictions
roster-clearance = Clearance
roster-clearance-waits = Asked for, not recorded
roster-programme = Programme
roster-programme-none = None yet
roster-baselines = Usual symptoms
roster-last = Last session
roster-last-none = None yet
roster-records = Entries of her log
roster-none = None
roster-until = until { $day }
roster-open-ended = until you take it back

roster-name = Name
roster-name-missing = A name is needed.
roster-stage = Stage
roster-baseline-kind = Symptom
roster-baseline-amount = Usual amount
roster-baseline-add = Add
roster-save = Save
roster-saved = Saved. It reaches her with the next plan file.
roster-added = Added.

roster-restrict = Add a restriction
roster-restrict-title = A restriction for { $name }
roster-restrict-what = What is ruled out
roster-restrict-position = a position
roster-restrict-caution = a kind of strain
roster-restrict-variant = one variant
roster-restrict-level_above = levels above one
roster-restrict-all_load = everything with load
roster-restrict-load_above = more than a weight
roster-restrict-reserve_below = hard sets
roster-restrict-breath_holding = holding the breath
roster-restrict-most = The most that may be held
roster-restrict-least = The fewest left in reserve
roster-restrict-any-ladder = on all ladders
roster-restrict-which = Which
roster-restrict-ladder = Ladder
roster-restrict-highest = Highest step that stays open
roster-restrict-until = Until (empty: until you take it back)
roster-restrict-note = Why, and who said so
roster-restrict-no-ladders = Give her a programme first: its ladders are the choice here.
roster-restricted = Restriction recorded. It reaches her with the next plan file.
roster-take-back = Take back
roster-taken-back = Taken back.
roster-rule-position = No { $what }
roster-rule-caution = No { $what }
roster-rule-variant = Not: { $what }
roster-rule-level_above = { $what }: up to step { $step }
roster-rule-all_load = Nothing with load
roster-rule-load_above = No more than { $load }
roster-rule-load_above-on = { $what }: no more than { $load }
roster-rule-reserve_below = At least { $reps } left in each set
roster-rule-breath_holding = No breath held: every repetition is breathed through
position-standing = standing
position-seated = sitting
position-kneeling = kneeling
position-all_fours = hands and knees
position-side_lying = lying on the side
position-incline = leaning back
position-supine = lying on the back
position-prone = lying on the front
position-hanging = hanging
caution-one_sided = one-sided load
caution-wrist = weight on bent wrists
caution-midline = strain on the midline
caution-overhead = work overhead
caution-impact = impact
caution-pelvic_hold = drawing up the pelvic floor

roster-safety = Safety page
roster-give = Give a programme
roster-give-none = No programme to give yet.
roster-given = { $count ->
    [one] “{ $title }” given. It reaches her with the next plan file.
   *[other] “{ $title }” given to { $count } clients. It reaches them with the next plan files.
}

roster-filters = Who is in view
roster-filter-group = Group
roster-filter-waits = What waits
roster-filter-all = All
roster-filter-no-group = In no group
roster-filter-clear = Show all
roster-filter-stage-pregnant = Pregnant
roster-filter-stage-postpartum = After a birth
roster-filter-stage-after_loss = After a loss
roster-filter-stage-neither = Neither
roster-filter-stage-unsaid = Not recorded
roster-filter-waits-waits = Something waits for you
roster-filter-waits-plan = A plan file is due
roster-filter-waits-log = No log taken in yet
roster-found = { $found } of { $count } in view
roster-no-programme = No programme yet
roster-week = week { $week }
roster-week-of = week { $week } of { $weeks }
roster-week-over = all weeks trained
roster-last-never = No session yet
roster-last-days = Last session { $days ->
    [0] today
    [1] yesterday
   *[other] { $days } days ago
}
roster-kit-unsaid = Kit not filled in
roster-kit-nothing = No kit
roster-kit-pairs = { $count ->
    [one] one pair
   *[other] { $count } pairs
}
roster-kit-singles = { $count ->
    [one] one single weight
   *[other] { $count } single weights
}
roster-kit-heaviest = up to { $load }
roster-kit-barbell = a barbell
roster-kit-bands = { $count ->
    [one] one band
   *[other] { $count } bands
}
roster-plan-unfinished = Programme being written: not whole yet
roster-plan-not_sent = Plan not sent yet
roster-plan-older = Plan of hers is older than written ({ $day })
roster-plan-up_to_date = Plan as written, sent { $day }
roster-plan-unsent = { $count ->
    [one] One entry not sent yet
   *[other] { $count } entries not sent yet
}
roster-log-in = Log taken in { $day }
roster-log-none = No log taken in yet
roster-waits-red = Training stopped: a sign
roster-waits-holds = { $count ->
    [one] A hold waits
   *[other] { $count } holds wait
}
roster-waits-clearance = A clearance waits
roster-archive = Archive
roster-archive-what = Archived, she leaves Roster and Desk. Her records stay whole, and you can bring her back.
roster-bring-back = Bring back
roster-archived = { $name } is archived. Her records stay whole; she stands under “Archived” below.
roster-brought-back = { $name } is back.
roster-archived-list = Archived ({ $count })

group-title = Groups
group-what = Groups are your own arrangement. Nothing of them goes into a client’s records or files.
group-none = No groups yet.
group-new = New group
group-name = Name of the group
group-members = { $count ->
    [0] Nobody in it yet
    [one] One in it
   *[other] { $count } in it, in this order
}
group-empty = Choose from below.
group-find = Find a client
group-more = { $count } more: type a name to find them.
group-up = { $name }: one place up
group-down = { $name }: one place down
group-drop = { $name }: out of the group
group-cancel = Leave it as it was
group-count = { $count ->
    [one] one client
   *[other] { $count } clients
}
group-edit = Change
group-edit-of = Change { $name }
group-remove = Remove
group-remove-of = Remove { $name }
group-removed = “{ $name }” is removed. Nobody in it was touched.
group-bring-back = Bring it back
group-kept = “{ $name }” is kept.

## Plan files for several, and what a revision changes

give-choose = Choose a programme
give-begins = Begins on (empty: at once)
give-begins-own = { $name } begins on
give-to = { $count ->
    [0] For nobody yet
    [one] For one client
   *[other] For { $count } clients
}
give-keep = { $count ->
    [0] Give it
    [one] Give it to one client
   *[other] Give it to { $count } clients
}
plans-due = { $count ->
    [0] No plan file is due
    [one] Write the one that is due
   *[other] Write all { $count } that are due
}
plans-chosen = { $count ->
    [one] Write the one chosen
   *[other] Write the { $count } chosen
}
plans-elsewhere = Into another folder
plans-groups = Choose by group
plans-choose-group = { $name } ({ $count })
plans-go = { $count ->
    [one] Write the plan file
   *[other] Write { $count } plan files
}
receipt-kept = The receipt is kept beside them as { $file }.
revision-title = What changes for whom
revision-what = Nothing is written yet. What was trained stays as it was trained; this is what the next session goes by.
revision-plan-none = No programme given
revision-plan-unfinished = Programme being written: no file yet
revision-plan-not_sent = Her first plan: { $title }
revision-plan-older = { $title }
revision-plan-up_to_date = { $title }, as in her last file
revision-begins = begins on { $day }
revision-entries = { $count ->
    [one] one new entry of yours
   *[other] { $count } new entries of yours
}
revision-proposals = { $count ->
    [one] Proposed to her otherwise: one move
   *[other] Proposed to her otherwise: { $count } moves
}
revision-proposals-same = What is proposed to her stays the same.
revision-before = Now: { $offer }
revision-after = Then: { $offer }
revision-new = nothing, it is new
revision-rest = rests
revision-offered = { $variant }, { $sets } × { $dose }

## Planbook

planbook-title = Planbook
planbook-sub = Programmes and moves: write your own, or begin with a copy
planbook-empty = No programme yet.
planbook-programme-line = { $sessions ->
    [one] One session
   *[other] { $sessions } sessions
}, { $week } a week
planbook-revision = revision { $revision }
planbook-light = { $count ->
    [one] Light week: { $list }
   *[other] Light weeks: { $list }
}
planbook-form-straight_sets = Straight sets
planbook-form-superset = Superset
planbook-form-tri_set = Tri-set
planbook-form-giant_set = Giant set
planbook-form-finisher = Finisher
planbook-form-warm_up = Warm-up
planbook-form-cool_down = Cool-down
planbook-rounds = { $rounds ->
    [one] one round
   *[other] { $rounds } rounds
}
planbook-rest = { $seconds } s rest after a round
planbook-between = { $seconds } s between moves
planbook-back-to-back = back to back
planbook-reps = { $low } to { $high } reps
planbook-reps-one = { $low } reps
planbook-seconds = { $low } to { $high } s
planbook-seconds-one = { $low } s
planbook-left = { $count } left
planbook-levels-all = all steps
planbook-levels = steps { $low } to { $high }

## Language

language-label = Language

## A day that is not filled in

date-none = no day yet
