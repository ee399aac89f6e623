# What is said of a programme while it is written: `advice-<code>` of the engine, and `fix-<code>` for what mends it.
# $who is a list of names.

advice-title = Looked through for
advice-given = { $count ->
    [one] the one it was given to
   *[other] the { $count } it was given to
}
advice-all = { $count ->
    [one] your one client
   *[other] all { $count } clients
}
advice-one = { $name }
advice-nobody = Nobody yet. Add clients on the Roster; what concerns all is said here.
advice-looking = Looking…
advice-none = Nothing to say.
advice-count = { $count ->
    [one] One remark
   *[other] { $count } remarks
}
advice-count-left = { $count ->
    [one] One remark; one move leaves somebody nothing
   *[other] { $count } remarks; { $left ->
        [one] one move leaves
       *[other] { $left } moves leave
    } somebody nothing
}
advice-clients = Before they train
advice-week = The week
advice-session = The session
advice-mark = { $count ->
    [one] One remark: { $what }
   *[other] { $count } remarks: { $what }
}
advice-names = Names
advice-who-from = { $name } (from { $day })
advice-who-until = { $name } (until { $day })
advice-who-more = { $names } and { $count } more
advice-besides = Ruled out besides: { $closed }
advice-source = { $source }

advice-closed = Nothing is proposed before an answer or a clearance; the Desk says which: { $who }.
advice-waits = Breathing, pelvic floor and mobility alone until a clearance: { $who }.
advice-held = Rests until “{ $symptom }” is answered on the Desk: { $who }.
advice-no-kit = No allowed step can be done with the kit of { $who }.
advice-lowest-kit = The easiest step alone can be done with the kit of { $who }.
advice-ruled-out = No step is left ({ $closed }) for { $who }.
advice-effort = Aims at { $target } left; at least { $least } for { $who }.
advice-rounds = { $rounds } rounds; at most { $most } for { $who }.
advice-push-pull = A week has { $one } sets of push and { $other } of pull.
advice-knee-hip = A week has { $one } sets of knee (squat, single leg) and { $other } of hip (hinge, bridge).
advice-few-sets = { $pattern }: { $sets } hard sets a week, under { $limit }.
advice-many-sets = { $pattern }: { $sets } hard sets a week, over { $limit }.
advice-longer = { $logged ->
    [0] About { $minutes } minutes as written; { $meant } are meant.
   *[other] { $minutes } minutes, the median of { $logged } logged; { $meant } are meant.
}
advice-logged = { $median } minutes, the median of { $logged } logged; { $minutes } are estimated.

advice-by-position = { $position } at this stage
advice-by-unwell = { $position }: { $symptom }
advice-by-impact = landing at this stage
advice-by-checks = landing before its checks
advice-by-load = holding anything at this stage
advice-by-first_days = all but breathing and pelvic floor for now
advice-by-condition = { $condition }
advice-by-restriction = a restriction of yours

fix-kit = Missing: { $pieces }
fix-on-the-day = Each day’s proposal keeps to it by itself.
fix-levels = Allow from step { $level } on: { $variant }
fix-ladder = Take { $ladder } instead: { $variant }
fix-reserve = Aim at { $target } left
fix-rounds = { $rounds ->
    [one] One round: { $what }
   *[other] { $rounds } rounds: { $what }
}
fix-block = Add { $ladder }
fix-minutes = Mean { $minutes } minutes
fix-helps = { $fix } (helps { $helps } of { $count })

write-meant = Meant to take, min
write-logged = { $count ->
    [one] logged once: { $median } min
   *[other] logged { $count } times: median { $median } min
}
advice-in-week = Week { $week }: { $said }
