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
