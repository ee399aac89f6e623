# Why something is proposed: `reason-<code>` of the engine. Numbers and names come as values.
# A value that is not known comes as 0 ($last_reps) or -1 ($last_reserve).

reason-start-coach = { $load }: the load your coach set to start with.
reason-start-answer = { $load }: from your answer to “ten reps with what?”. The first set decides.
reason-start-lightest = { $load }: first time, so the lightest. The first set decides.
reason-start-group = { $load }: you held { $last_load } with “{ $last_variant }”, and this starts somewhat lighter. The first set decides.
reason-still-finding = { $load } to begin with: every set so far left 5 or more, so your load is still being found.
reason-unforeseen = { $exposures } times running the top of the range left plenty, so { $load } is tried. The first set decides.
reason-coach-start = Step { $level }: where your coach lets you start.
reason-coach-set = Set by the coach: { $note }
reason-load-same = { $last_reps ->
    [0] { $load } again.
   *[other] { $last_reserve ->
        [-1] { $load } again: last time { $last_reps }.
        [5] { $load } again: last time { $last_reps } reps with 5 or more left; the aim is { $target } left.
       *[other] { $load } again: last time { $last_reps } reps with { $last_reserve } left; the aim is { $target } left.
    }
}
reason-load-up = { $last_reps ->
    [0] { $load }, up from { $last_load }.
   *[other] { $last_reserve ->
        [-1] { $load }, up from { $last_load }: last time { $last_reps }.
        [5] { $load }, up from { $last_load }: last time { $last_reps } reps with 5 or more left; the aim is { $target } left.
       *[other] { $load }, up from { $last_load }: last time { $last_reps } reps with { $last_reserve } left; the aim is { $target } left.
    }
}
reason-load-down = { $last_reps ->
    [0] { $load }, down from { $last_load }.
   *[other] { $last_reserve ->
        [-1] { $load }, down from { $last_load }.
        [5] { $load }, down from { $last_load }; the aim is { $target } left.
       *[other] { $load }, down from { $last_load }: last time { $last_reps } reps with { $last_reserve } left; the aim is { $target } left.
    }
}
reason-body-only = { $last_reps ->
    [0] { $timed ->
        [1] No load to choose here: start with { $reps } s.
       *[0] No load to choose here: start with { $reps } reps.
    }
   *[other] { $timed ->
        [1] No load to choose here: last time { $last_reps } s, today { $reps } s.
       *[0] No load to choose here: last time { $last_reps } reps, today { $reps }.
    }
}
reason-step-bound = At most { $percent } % above the heaviest load that went as planned in the last four weeks.
reason-big-step = { $load } is a bigger step in your kit. It is open because the top of the range went well.
reason-kit-gap = { $heavier ->
        [0] Your kit makes nothing heavier here, so up to { $more } more reps.
       *[other] The next load in your kit is too big a step, so up to { $more } more reps first.
    }
reason-nothing-lighter = { $load } is the lightest your kit makes here.
reason-lay-off = { $days } days since last time: at most { $percent } % of the load then.
reason-level-up = Step { $level }: the step below went well { $exposures } times running.
reason-level-down-load = No load in your kit fits { $variant } today, so the step below.
reason-level-down-symptom = { $symptom }: an easier step from here. Up again after { $exposures } sessions without symptoms, each with a settled next morning.
reason-stay-down = { $clean } of { $exposures } sessions without symptoms and with a settled next morning since “{ $symptom }”. This step until then.
reason-after-symptom = The first time since a symptom: no more than last time.
reason-back-up = { $exposures ->
    [one] One session
   *[other] { $exposures } sessions
} without symptoms, with a settled next morning: step { $level } again, with at most { $percent } % of the load then.
reason-cue-change = { $symptom }: change breath, range or position first.
# Week 0 means that no week is known or none applies.
reason-stage-effort = { $week ->
        [0] Keep at least { $target } reps in reserve.
       *[other] Week { $week }: keep at least { $target } reps in reserve.
    }
reason-stage-unloaded = Week { $week }: nothing is held yet.
reason-stage-sets = Week { $week }: { $sets } { $sets ->
    [one] set
   *[other] sets
} at most.
reason-stage-breathing = Week { $week }: breathing, pelvic floor and walking for now.
reason-learn-first = First sessions: learn how it goes. Light, { $target } left in reserve, { $sets } sets.
reason-light-week = A light week: { $sets ->
    [one] 1 set
   *[other] { $sets } sets
}, { $target } left in reserve. Nothing grows this week.
reason-ease-in = To get warm or to come down: the least load there is.
reason-after-illness = Back after being ill: easy, { $target } in reserve, { $sets } sets at most.
reason-child-near = { $variant } is left out: nothing is held above the head with a child in the room.
reason-kit-away = { $variant } waits until your kit is at hand again.
reason-tired-today = Today is not a usual day: { $target } in reserve.
reason-condition-reserve = { $condition }: { $target } in reserve.
reason-position-stage = { $week ->
        [0] { $variant } waits, another position instead.
       *[other] Week { $week }: { $variant } waits, another position instead.
    }
reason-impact-waits = { $by ->
    [checks] { $variant } waits: { $open ->
        [one] one check before impact is
       *[other] { $open } checks before impact are
    } still open.
   *[stage] { $variant } waits: no landing yet at this stage.
}
reason-condition-ruled-out = { $condition }: { $variant } is left out.
reason-restricted = { $variant } is left out: { $note }
reason-restricted-load = No more than { $load }: { $note }
reason-restricted-reserve = At least { $target } in reserve: { $note }
reason-kit-lacks = { $variant } needs something that your kit does not have.
reason-hold-waits = This rests until it has been answered.
reason-red-waits = Training waits until the midwife, doctor or clinic has said yes and it is written down.
reason-clearance-waits = { $of ->
    [birth] After a caesarean or a severe tear: breathing, pelvic floor and mobility until the midwife, doctor or clinic has said yes.
    [birth-unsaid] How the birth went is not written down. Add it under Path, or ask the midwife or doctor first. Until then: breathing, pelvic floor and mobility.
   *[condition] { $condition }: breathing, pelvic floor and mobility until the midwife, doctor or clinic has said yes.
}
reason-clearance-first = { $condition }: no training before the midwife, doctor or clinic has said yes.
reason-clearance-over = What the midwife, doctor or clinic allowed ran until { $day }. Ask them whether it goes on.
reason-plan-rests = The plan rests since the birth. It goes on once client and coach have both said yes.
reason-plan-rests-loss = The plan rests. It goes on once client and coach have both said yes.
reason-nothing-allowed = Nothing of this movement is open today.
reason-restart-lighter = A new start, { $percent } % lighter, at the bottom of the range.
reason-easier-today = { $symptom }: { $variant } for the rest of today.
reason-ends-today = { $symptom }: this movement is done for today.
reason-unloaded-today = The rest of today without load, lying or seated.
reason-reps-now = { $other_side ->
    [1] { $reps ->
        [one] 1 rep, as on the other side.
       *[other] { $reps } reps, as on the other side.
    }
   *[0] { $reps ->
        [one] 1 rep now instead of { $planned }: going by your sets today, that comes nearest to { $target } left.
       *[other] { $reps } reps now instead of { $planned }: going by your sets today, that comes nearest to { $target } left.
    }
}
reason-lighter-now = The last set left less than meant: a lighter load is offered.
reason-finding-up = The last set left room: { $load } next, to find your load.
reason-she-chose = { $variant }: your choice for today.
reason-fresh-start = A new start: keep { $target } reps in reserve.
reason-rule-set-by-coach = { $noted ->
    [0] Your coach set this rule for you.
   *[other] Your coach set this rule for you: { $note }
}
