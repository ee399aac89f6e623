# Files between devices and the database: what happened, what is safe, what to do.
# The codes stand in crates/exchange (error.rs) and crates/store (error.rs, take_in, check.rs).

## A file could not be read

file-error-empty = There is nothing in this file. Nothing was changed; please ask for it to be sent again.
file-error-cut-short = This file ends before its end, so part of it was lost on the way. Nothing was changed; please ask for it to be sent again.
file-error-altered = This file is not as it was written: something changed it on the way. Nothing was changed here; please ask for it to be sent again as it is.
file-error-not-newel = This is not a Newel file. Nothing was changed; please choose a plan file or a log file.
file-error-too-new = A newer version of Newel wrote this file. Nothing was changed and the file is fine; please update Newel and take it in then.
file-error-sealed = This file is sealed in a way that this version cannot open. Nothing was changed and the file is fine; please update Newel and take it in then.
file-error-too-large = This file is larger than any Newel file should be. Nothing was changed; please check that it is the right one.
file-error-too-deep = This file is built in a way that no Newel file is. Nothing was changed; please check that it is the right one.
file-error-wrong-kind = { $found ->
    [plan] This is a plan file, and a log file is needed here. Nothing was changed; please choose the log file.
   *[log] This is a log file, and a plan file is needed here. Nothing was changed; please choose the plan file.
}
file-error-malformed = This file is whole, but Newel cannot make sense of it. Nothing was changed; please ask for it to be written again with the newest version.
file-error-record-refused = One entry of this file does not belong in it, so none of it was taken in. Nothing was changed; please ask for it to be written again.
file-error-unreadable = This file could not be opened. Nothing was changed; please check that it is still there and that you may read it.

## A file could not be written

file-error-unwritten = The file could not be written there. Your log is safe; please choose another place.
file-error-too-large-to-write = This would make a file too large to take in. Your log is safe; please send only what is new since last time.
file-error-record-unwritable = One entry cannot be put into a file. Your log is safe; please run the check of the log.
file-error-unwritable = This cannot be put into a file. Your log is safe; please run the check of the log.

## An entry of a file was left out; the rest was taken in

take-in-refused-not-a-record = It is not an entry that this version can read.
take-in-refused-another-person = It is about somebody else.
take-in-refused-two-contents = The same entry is there with other words. What is in the log stays as it is.
take-in-refused-place-taken = Another entry stands in its place. What is in the log stays as it is.
take-in-refused-broken-chain = It does not follow from what is in the log.
take-in-refused-altered = It was altered after it was written, or the one next to it was. A fresh file brings it in.

## The database

store-error-io = The log could not be reached on the disk. What was saved is safe; please check the disk and try again.
store-error-too-new = A newer version of Newel wrote this log. It is safe and was left alone; please update Newel.
store-error-foreign = This file is not a Newel log. It was left alone; please choose another.
store-error-corrupt = The log is damaged. It was left as it is; please restore the last backup, or take in the files that were sent.
store-error-busy = Another program is using the log. Nothing is lost; please close it and try again.
store-error-disk-full = There is no room left on this device. What was saved is safe; please make room and try again.
store-error-read-only = The log can be read but not written to. What was saved is safe; please check that you may write in its folder.
store-error-database = The log could not be used just now. What was saved is safe; please try again.
store-error-record-unreadable = One entry of the log cannot be read. The others are safe; please run the check of the log.
store-error-unwritable = This cannot be saved as it stands. Nothing was changed; please check the numbers that were entered.
store-error-no-such-record = What this speaks of is not in the log any more. Nothing was changed; please open the screen again.
store-error-plan-stale = The log has changed since the file was looked at. Nothing was changed; please take the file in again.
store-error-miscount = Taking in the file did not add up, so none of it was kept. Nothing was changed; please try again.

## What the check of a log found

check-damage = The file is damaged: { $what }.
check-dangling = An entry refers to one that is not there.
check-unreadable = An entry cannot be read.
check-altered = An entry is not as it was written.
check-broken-chain = An entry does not follow from the one before it.
check-gap = Entries { $from } to { $to } have not arrived yet.
check-projection = A summary does not match the log. It can be made anew from it.

## What a revision changes (crates/engine/src/revision.rs). Levels are counted from 1; zero stands for all, for no end, for a free tempo.

change-another-programme = Another programme: “{ $to }” in the place of “{ $from }”
change-title = The programme is called “{ $to }”, was “{ $from }”
change-per-week = { $to } sessions a week, were { $from }
change-weeks = { $to ->
    [0] No end any more, was { $from } weeks
   *[other] { $from ->
        [0] Ends after { $to } weeks, had no end
       *[other] { $to } weeks, were { $from }
    }
}
change-light-weeks = Light weeks: { $count ->
    [0] none
   *[other] { $list }
}
change-phase-added = New phase: { $phase }, { $weeks ->
    [one] 1 week
   *[other] { $weeks } weeks
}
change-phase-removed = Phase taken out: { $phase }
change-phase-title = The phase “{ $from }” is called “{ $to }”
change-phase-weeks = { $phase }: { $to ->
    [one] 1 week
   *[other] { $to } weeks
}, { $from ->
    [one] was 1
   *[other] were { $from }
}
change-phase-light-weeks = { $phase }, light weeks: { $count ->
    [0] none
   *[other] { $list }
}
change-phases-order = The phases come in another order
change-session-phase = { $session }: now in { $to }, was in { $from }
change-session-added = New session: { $session }
change-session-removed = Session taken out: { $session }
change-session-title = Session “{ $to }”, was “{ $from }”
change-session-minutes = { $session }: { $to ->
    [0] no minutes are aimed at any more, { $from } were
   *[other] { $to } minutes are aimed at, { $from ->
        [0] none were
       *[other] { $from } were
    }
}
change-sessions-order = The sessions come in another order
change-block-added = { $session }: new block, { $form ->
    [superset] superset
    [tri_set] tri-set
    [giant_set] giant set
    [finisher] finisher
    [warm_up] warm-up
    [cool_down] cool-down
   *[straight_sets] straight sets
}: { $more ->
    [0] { $ladder }
    [one] { $ladder } and one more
   *[other] { $ladder } and { $more } more
}
change-block-removed = { $session }: block taken out, { $form ->
    [superset] superset
    [tri_set] tri-set
    [giant_set] giant set
    [finisher] finisher
    [warm_up] warm-up
    [cool_down] cool-down
   *[straight_sets] straight sets
}: { $more ->
    [0] { $ladder }
    [one] { $ladder } and one more
   *[other] { $ladder } and { $more } more
}
change-block-moved = { $session }: block from “{ $from }”, { $form ->
    [superset] superset
    [tri_set] tri-set
    [giant_set] giant set
    [finisher] finisher
    [warm_up] warm-up
    [cool_down] cool-down
   *[straight_sets] straight sets
}: { $more ->
    [0] { $ladder }
    [one] { $ladder } and one more
   *[other] { $ladder } and { $more } more
}
change-block-form = { $session }, { $more ->
    [0] { $ladder }
    [one] { $ladder } and one more
   *[other] { $ladder } and { $more } more
}: { $to ->
    [superset] superset
    [tri_set] tri-set
    [giant_set] giant set
    [finisher] finisher
    [warm_up] warm-up
    [cool_down] cool-down
   *[straight_sets] straight sets
}, was { $from ->
    [superset] superset
    [tri_set] tri-set
    [giant_set] giant set
    [finisher] finisher
    [warm_up] warm-up
    [cool_down] cool-down
   *[straight_sets] straight sets
}
change-block-rounds = { $session }, { $more ->
    [0] { $ladder }
    [one] { $ladder } and one more
   *[other] { $ladder } and { $more } more
}: { $to } rounds, were { $from }
change-block-rest = { $session }, { $more ->
    [0] { $ladder }
    [one] { $ladder } and one more
   *[other] { $ladder } and { $more } more
}: rest { $to } s, was { $from } s
change-block-between = { $session }, { $more ->
    [0] { $ladder }
    [one] { $ladder } and one more
   *[other] { $ladder } and { $more } more
}: { $to } s between slots, were { $from } s
change-block-week = { $session }, { $more ->
    [0] { $ladder }
    [one] { $ladder } and one more
   *[other] { $ladder } and { $more } more
}, week { $week }: { $to ->
    [one] 1 round
   *[other] { $to } rounds
}, rest { $rest_to } s; { $from ->
    [one] was 1 round
   *[other] were { $from } rounds
}, rest { $rest_from } s
change-blocks-order = { $session }: the blocks come in another order
change-slot-added = { $session }: new, { $ladder }, { $to_timed ->
    [1] { $to_low } – { $to_high } seconds
   *[0] { $to_low } – { $to_high } reps
}
change-slot-removed = { $session }: taken out, { $ladder }
change-slot-moved = { $session }: { $ladder } stands in another block
change-slot-ladder = { $session }: { $ladder } in the place of { $from }
change-slot-amount = { $session }, { $ladder }: { $to_timed ->
    [1] { $to_low } – { $to_high } seconds
   *[0] { $to_low } – { $to_high } reps
}, were { $from_timed ->
    [1] { $from_low } – { $from_high } seconds
   *[0] { $from_low } – { $from_high } reps
}
change-slot-target = { $session }, { $ladder }: aim { $to } left, was { $from }
change-slot-tempo = { $session }, { $ladder }: tempo { $to_free ->
    [1] free
   *[0] { $to_down }-{ $to_pause }-{ $to_up }
}, was { $from_free ->
    [1] free
   *[0] { $from_down }-{ $from_pause }-{ $from_up }
}
change-slot-levels = { $session }, { $ladder }: { $to_high ->
    [0] all steps
   *[other] steps { $to_low } – { $to_high }
}, were { $from_high ->
    [0] all steps
   *[other] steps { $from_low } – { $from_high }
}
change-slot-week = { $session }, { $ladder }, week { $week }: { $to_timed ->
    [1] { $to_low } – { $to_high } seconds
   *[0] { $to_low } – { $to_high } reps, aim { $target } left
}
change-slots-order = { $session }, { $more ->
    [0] { $ladder }
    [one] { $ladder } and one more
   *[other] { $ladder } and { $more } more
}: the slots come in another order

## The receipt beside plan files

day-in-full = { $day } { $month ->
    [1] January
    [2] February
    [3] March
    [4] April
    [5] May
    [6] June
    [7] July
    [8] August
    [9] September
    [10] October
    [11] November
   *[12] December
} { $year }
receipt-title = Plan files from { $coach }, { $day }, { $time }
receipt-written = { $count ->
    [0] No file was written.
    [one] One file was written:
   *[other] { $count } files were written:
}
receipt-file = { $name }: { $file }
receipt-programme = “{ $title }”, her file number { $number }
receipt-begins = Begins on { $day }
receipt-entries = { $count ->
    [0] No entry of yours is in it.
    [one] One entry of yours is in it, { $fresh } of them new.
   *[other] { $count } entries of yours are in it, { $fresh } of them new.
}
receipt-first = Her first plan.
receipt-same = The programme is as in her last file.
receipt-changes = Changed since her last file:
receipt-left-out = { $count ->
    [one] Left out:
   *[other] { $count } left out:
}
receipt-care = The files hold health data. Hand each one to her alone, in a way that you both trust. Nothing was sent by itself.
left-out-no-programme = no programme was given.
left-out-unfinished = her programme is being written and is not whole yet.
left-out-up-to-date = nothing is new since her last file.
left-out-archived = she is archived.
