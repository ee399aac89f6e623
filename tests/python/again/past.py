"""What was done, session by session: strength states (5.2), exposures and where she stands on a ladder (2 and 5.4)."""

from datetime import date
from functools import reduce

from . import constants as k
from . import kit, strength
from .kit import eased

# What a set is measured by where no proposal was shown for it: range, reserve aimed at, floor.
UNSHOWN = {"range": {"by": "reps", "low": 8, "high": 12}, "reserve": 3.0, "floor": 1.0}


class Use:
    """A variant as it was done in a session: the load of its last set."""

    def __init__(self, run, variant, load):
        self.day, self.variant, self.load, self.as_planned = run.day, variant, load, False
        # Every set of it was done to its end and answered with "so many or more".
        sets = [s for s in run.sets if s["variant"] == variant["id"]]
        self.open_ended = all(
            not s.get("stopped") and s.get("reserve") and s["reserve"]["said"] == "at_least" for s in sets
        )


class Exposure:
    """A session and a ladder with at least one working set."""

    def __init__(self, run, level, variant, load):
        self.started = run.started
        self.run, self.day, self.level, self.variant, self.load = run.id, run.day, level, variant, load
        self.chosen = False
        # The last planned set: how many, the reserve said (number, open-ended), the filter's mean of it. None if not done.
        self.count = self.said = self.mean = None
        self.as_planned = False
        # The last round that was done whole, where the last planned one was not: how many, of two sides the fewer.
        self.whole_count = None

    def reserve_at_least(self, threshold):
        """"5+" meets a threshold up to 5; above, the filter's mean decides. Of a timed set no effort is asked."""
        if self.count is None:
            return False
        if self.said is None:
            return self.timed
        number, open_ended = self.said
        if number >= threshold:
            return True
        return open_ended and self.mean is not None and self.mean >= threshold


def evidence(s):
    """Reps, reserve and whether it is open-ended; None for what is no evidence of strength.

    No evidence: sets stopped by a mark, without an effort answer, timed sets, finishers, sets to learn the movement.
    """
    if s["purpose"] not in ("work", "find") or s.get("stopped") or s.get("seconds") is not None or not s.get("reserve"):
        return None
    if not 0 < s["reps"] <= k.MOST_REPS or s["reserve"]["reps"] > k.MOST_RESERVE:
        return None
    return s["reps"], s["reserve"]["reps"], s["reserve"]["said"] == "at_least"


def rounds_of(sets):
    """The sets of a session round by round: of two sides the one with fewer reps to failure. A side that a round has
    already begins another one."""
    rounds = []
    for s in sets:
        side = s.get("side")
        for sides in rounds:
            same = all(sides[0][key] == s[key] for key in ("slot", "round", "variant"))
            if same and side and all(o.get("side") and o["side"] != side for o in sides):
                sides.append(s)
                break
        else:
            rounds.append([s])
    return [reduce(weaker, sides) for sides in rounds]


def weaker(one, other):
    """Of two sides the one with the lower r + f; a side without evidence leaves the round to the other."""
    a, b = evidence(one), evidence(other)
    if a is None or b is None:
        return other if a is None and b is not None else one
    if a[0] + a[1] != b[0] + b[1]:
        return one if a[0] + a[1] < b[0] + b[1] else other
    return one if b[2] else other


class Past:
    """Folds a log."""

    def __init__(self, case, log, catalogue, every_set):
        self.case, self.log, self.catalogue, self.every_set = case, log, catalogue, every_set
        case.past = self
        self.after = {}
        # Days without kit or with a child near that left her place where it was, for the count of cases.
        self.kept = {"below": 0, "above": 0}
        self.fresh = None
        self.start_anew()
        stages = list(log.stages)
        before = None
        for run in log.runs:
            while stages and stages[0][0] <= run.started:
                before = self.enter(before, stages.pop(0)[1])
            self.take(run)
        for _, stage in stages:
            before = self.enter(before, stage)

    def start_anew(self):
        self.states, self.sets_of_day, self.exposures, self.levels, self.uses = {}, {}, {}, {}, {}
        # External load of the last working set of a group, in kg.
        self.held = {}

    def enter(self, before, stage):
        """A birth or a loss closes the history: every ladder starts anew. One that was put right is no second one."""
        day = event(stage)
        known = before and event(before)
        if day and not (known and abs((day - known).days) <= k.SAME_BIRTH_DAYS):
            self.start_anew()
            self.fresh = day
        return stage

    def take(self, run):
        """One session: strength round by round, then its exposures and levels."""
        if self.every_set:
            self.note_every_set(run)
        for s in rounds_of(run.sets):
            self.observe(run, s)
        self.expose(run)

    def note_every_set(self, run):
        """Keeps the state after each set, as if the log ended there: the second side of a round changes what the first did."""
        states, sets_of_day = self.states, self.sets_of_day
        self.states, self.sets_of_day = dict(states), dict(sets_of_day)
        for done in range(1, len(run.sets) + 1):
            rounds = rounds_of(run.sets[:done])
            if len(rounds) == done:
                rounds = rounds[-1:]
            else:
                self.states, self.sets_of_day = dict(states), dict(sets_of_day)
            for s in rounds:
                self.observe(run, s)
            group = self.catalogue.variant(run.sets[done - 1]["variant"]).get("group")
            if group:
                state = self.states.get(group)
                self.after[(run.id, done)] = state and numbers(state)
        self.states, self.sets_of_day = states, sets_of_day

    def observe(self, run, s):
        """One round: if it is evidence, the state of its group moves. What is none tires all the same."""
        variant = self.catalogue.variant(s["variant"])
        group = variant.get("group")
        if not group:
            return
        j = self.done_today(group, run.day)
        if s["purpose"] in ("work", "find"):
            self.sets_of_day[group] = (run.day, j + 1)
        seen = evidence(s)
        load = kit.effective(variant, s["load"], run.body_kg)
        if seen is None or load is None:
            return
        state = self.states.get(group)
        if state is None:
            shown = run.shown_for(s["slot"]) or UNSHOWN
            start = self.case.start_for(variant, run.started)
            same_make = start and start.get("load") and start["load"]["make"] == s["load"]["make"]
            w = kit.effective(variant, start["load"], run.body_kg) if same_make else None
            target = 3.0 if shown["reserve"] is None else shown["reserve"]
            state = strength.begin(self.catalogue.mean_c(group), w or load, shown["range"]["low"], target, run.day)
        self.states[group] = strength.update(state.at(run.day), load, j, *seen)

    def state_on(self, variant, day):
        """The state of a variant's group as expected on a day; None without one."""
        state = self.states.get(variant.get("group"))
        return state and state.at(day)

    def done_today(self, group, day):
        """Working sets of a group on a day so far."""
        on, n = self.sets_of_day.get(group, (None, 0))
        return n if on == day else 0

    def expose(self, run):
        """The exposures of a session, one for each ladder, and the use of each variant.

        A finisher speaks for its ladder only where nothing else was done, and so does what eases in or out without a load.
        """
        last, used = {}, {}
        for wanted in (("finisher", "ease"), ("work", "find")):
            for s in run.sets:
                ladder, _, variant = self.catalogue.places[s["variant"]]
                if s["purpose"] in wanted and not (s["purpose"] == "ease" and eased(ladder)):
                    last[s["ladder"]] = s
                    # Of a variant that is not the ladder's last, its last set speaks, whatever it was for.
                    used[s["variant"]] = max(used.get(s["variant"], s), s, key=run.sets.index)
                    if variant.get("group") and "work" in wanted:
                        self.held[variant["group"]] = kit.external(variant, s["load"])
        for variant_id, s in used.items():
            use = Use(run, self.catalogue.variant(variant_id), s["load"])
            self.uses.setdefault(variant_id, []).append(use)
        for ladder_id, s in last.items():
            ladder, level, variant = self.catalogue.places[s["variant"]]
            exposure = Exposure(run, level, variant, s["load"])
            shown = run.shown_for(s["slot"])
            self.measure(exposure, run, s, shown)
            use = self.uses[variant["id"]][-1]
            use.load, use.as_planned = exposure.load, exposure.as_planned
            exposure.chosen = bool(shown) and shown["variant"] != s["variant"]
            before = self.exposures.setdefault(ladder_id, [])
            twice = bool(before) and before[-1].chosen and before[-1].level == level
            before.append(exposure)
            # Where she stands is kept on a day without her kit or with a child in the room.
            standing = self.levels.get(ladder_id)
            if {"no_kit", "child_near"} & set(run.today) and standing not in (None, level):
                self.kept["below" if level < standing else "above"] += 1
                continue
            # She stands where she trained, not above what was proposed; an easier choice of hers counts from the second time.
            if not exposure.chosen or twice or ladder_id not in self.levels:
                top = run.shown_level(ladder_id)
                self.levels[ladder_id] = level if top is None else min(level, top)

    def measure(self, exposure, run, s, shown):
        """Reads the last planned set; of two sides the weaker."""
        plan = shown or UNSHOWN
        amount, variant = plan["range"], exposure.variant
        exposure.low, exposure.high, exposure.timed = amount["low"], amount["high"], amount["by"] == "seconds"
        exposure.by = amount["by"]
        exposure.target = 3.0 if plan["reserve"] is None else plan["reserve"]
        last_round = shown["sets"] - 1 if shown else s["round"]
        of_round = {}
        for o in run.sets:
            if (o["slot"], o["variant"]) == (s["slot"], s["variant"]):
                of_round.setdefault(o["round"], []).append(o)
        counts = {n: whole_count(sides, variant) for n, sides in of_round.items()}
        planned = sorted((n for n in counts if n <= last_round), reverse=True)
        exposure.whole_count = next((counts[n] for n in planned if counts[n] is not None), None)
        exposure.count = counts.get(last_round)
        if exposure.count is None:
            return
        sides = of_round[last_round]
        # Of two sides held differently the lighter one was done by both.
        exposure.load = min((o["load"] for o in sides), key=lambda load: kit.external(variant, load))
        if all(o.get("reserve") for o in sides):
            exposure.said = min((o["reserve"]["reps"], o["reserve"]["said"] == "at_least") for o in sides)
        group = variant.get("group")
        state = self.states.get(group)
        w = kit.effective(variant, exposure.load, run.body_kg)
        if state and w:
            j = max(self.done_today(group, run.day) - 1, 0)
            exposure.mean, _ = strength.reserve(state, w, exposure.count, j)
        exposure.as_planned = exposure.count >= exposure.low and exposure.reserve_at_least(plan["floor"])


def whole_count(sides, variant):
    """Reps or seconds of a round that was done whole, of two sides the fewer; None for one that was stopped or is half done."""
    if any(o.get("stopped") for o in sides) or (variant.get("per_side") and len(sides) < 2):
        return None
    return min(o["seconds"] if o.get("seconds") is not None else o["reps"] for o in sides)


def event(stage):
    """The day of a birth or a loss."""
    day = stage.get("birth") or stage.get("on")
    return date.fromisoformat(day) if day else None


def numbers(state):
    """b, c, d and the upper half of the covariance, row by row."""
    p = state.p
    return [float(v) for v in (*state.x, p[0, 0], p[0, 1], p[0, 2], p[1, 1], p[1, 2], p[2, 2])]
