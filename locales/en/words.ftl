# Words that every screen shares: navigation, loads, doses, days, stages.

## Screens

screen-train = Train
screen-path = Path
screen-kit = Kit
screen-send = Send
screen-desk = Desk
screen-roster = Roster
screen-planbook = Planbook
nav-label = Screens
app-name = Newel
app-skip-to-content = Skip to the content
app-opening = Opening
profile-button = { $name }: profile and settings
profile-demo = An invented person of the demo
profile-other = Change profile
profile-as-client = Show the client’s side
profile-as-coach = Show the coach’s side
scheme-label = Light or dark
scheme-auto = As the device
scheme-light = Light
scheme-dark = Dark
app-version = Version { $version }

## Buttons and notices

close = Close
cancel = Cancel
keep = Keep
again = Try again
more = More
less = Less
why = Why
fewer-of = Fewer: { $what }
more-of = More: { $what }
reason-source = Rule { $rule }. Source: { $source }
error-title = That did not work
error-unexpected = Something unforeseen happened: { $detail }
    .remedy = What was logged before is safe. Try again; if it comes back, close Newel and open it again.

## Stairs

stair-of = Step { $now } of { $of }
stair-resting = { $of } steps, resting
flight-of = { $done } of { $of } sets done

## Loads

unit-kg = kg
unit-lb = lb
load-weight = { $value } { $unit }
load-nothing = no load
load-none-short = None
load-pair = two of { $each }
load-each = { $unit } each
load-total = { $unit } in all
load-bar = bar { $bar }, each side { $side }
load-bar-empty = empty bar, { $bar }
load-bands = band: { $bands }
load-assist = helped by { $bands }
load-bands-short = band
load-assist-short = help

## Doses

target-reps = { $count ->
    [one] 1 rep
   *[other] { $count } reps
}
target-reps-side = { $count ->
    [one] 1 rep each side
   *[other] { $count } reps each side
}
target-seconds = { $count ->
    [one] 1 second
   *[other] { $count } seconds
}
target-seconds-side = { $count ->
    [one] 1 second
   *[other] { $count } seconds
} each side
side-left = left side
side-right = right side
dose = { $amount }, { $load }
tempo = { $down } s down, { $up } s up
tempo-pause = { $down } s down, { $pause } s still, { $up } s up
reserve-exactly = { $count } left
reserve-at-least = { $count } or more left
amount-pain = { $value } of 10

## Days and stages

day-today = today
day-yesterday = yesterday
stage-pregnant = Pregnant
stage-pregnant-weeks = { $weeks ->
    [one] 1 week pregnant
   *[other] { $weeks } weeks pregnant
}
stage-pregnant-days = { $days ->
    [one] { $weeks } weeks and 1 day pregnant
   *[other] { $weeks } weeks and { $days } days pregnant
}
stage-postpartum = { $weeks ->
    [0] First week after birth
    [one] 1 week after birth
   *[other] { $weeks } weeks after birth
}
stage-after-loss = { $weeks ->
    [0] First week after a loss
    [one] 1 week after a loss
   *[other] { $weeks } weeks after a loss
}
stage-neither = Not pregnant, no recent birth

## Things

thing-bench = Bench
thing-pull_up_bar = Pull-up bar
thing-step = Step
thing-straps = Straps
thing-loop_band = Loop band

# Something of another coach's own whose name did not come along.
own-unknown-variant = A move of a coach’s own
own-unknown-ladder = A ladder of a coach’s own
