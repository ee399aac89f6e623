"""The choice of a level and of a load for one slot (5.3 and 5.4)."""

from . import constants as k
from . import kit, strength
from .kit import eased


class Choice:
    """What a choice stands on. `earlier` counts sets of a group today: done already, and planned by slots before this one."""

    def __init__(self, block, slot, grounds, effort, earlier):
        self.slot, self.grounds, self.earlier = slot, grounds, earlier
        self.ladder, self.past, self.day = grounds.ladder, grounds.case.past, grounds.day
        self.target, self.floor, self.sets, self.careful = effort.target, effort.floor, effort.sets, effort.careful
        amount = slot["dose"]["amount"]
        self.by, self.low, self.high = amount["by"], amount["low"], amount["high"]
        self.exposures = self.past.exposures.get(self.ladder["id"], [])
        self.override = grounds.override_today(self.exposures)
        # Breathing, pelvic floor and mobility go on as they are.
        goes_on = self.ladder["pattern"] in k.GOES_ON
        self.light, self.learns = grounds.nothing_grows(), grounds.today.learning and not goes_on
        # What made a difference here, for the count of cases.
        self.notes = set()
        # No heavier than this in kg, and no more than the bottom of the range.
        self.cap, self.bottom_only = None, False
        self.ease(block["form"] in ("warm_up", "cool_down") and eased(self.ladder))

    # -- the level (5.4)

    def propose(self):
        """Level, variant, load, reps, sets, purpose and reserve; None where nothing is open."""
        levels = self.grounds.open_levels(self.slot)
        if not levels:
            return None
        level, more = self.level_today(levels)
        if self.cap is not None and not self.bottom_only:
            # Nothing light enough here: the nearest below that has something.
            light = next((l for l in reversed(range(level + 1)) if self.can_do(l)), None)
            if light is None:
                # Nothing was held, and there is nothing without a load: the least.
                self.bottom_only = self.cap <= 0
            else:
                if light < level:
                    self.notes.add("a light week finds nothing light enough at the level")
                level = light
        variant = self.variant_for(level)
        if variant is None:
            return None
        proposal, holds = self.pick(variant, more)
        below = [l for l in levels if l < level]
        held = None if holds else self.leap(variant)
        if held is not None:
            # Down to what is done with no more than she held.
            self.cap = held if self.cap is None else min(self.cap, held)
            below = [l for l in below if self.can_do(l)]
        if not holds and below:
            # No load holds: one level down, once.
            lighter = self.variant_for(below[-1])
            if lighter:
                level, variant = below[-1], lighter
                proposal, _ = self.pick(variant, 0)
        load, amount, purpose, *more = proposal
        return {
            "level": level,
            "variant": variant["id"],
            "load": load,
            "amount": amount,
            "sets": self.sets,
            "purpose": purpose,
            # Of a timed set nobody is asked what was left.
            "reserve": self.target + sum(more) if self.by == "reps" else None,
        }

    def ease(self, eases):
        """A warm-up and a cool-down are done with the least load that there is, at the bottom of the range. In a light week
        nothing heavier is held than last time on the ladder."""
        if eases:
            self.cap, self.bottom_only = 0.0, True
        elif self.light and self.exposures and self.held(self.exposures[-1]) >= 0:
            self.cap = self.held(self.exposures[-1])

    def is_light_enough(self, variant):
        """Her kit makes the variant with a load that is not above the cap."""
        return self.cap is None or any(kit.external(variant, l) <= self.cap + 1e-9 for l in self.grounds.loads(variant))

    def can_do(self, level):
        return any(self.is_light_enough(v) for v in self.grounds.open_at(level, self.slot))

    def under_cap(self, variant):
        """Loads up to the cap, else the lightest."""
        made = self.grounds.loads(variant)
        return [l for l in made if self.cap is None or kit.external(variant, l) <= self.cap + 1e-9] or made[:1]

    def level_today(self, levels):
        """The level, and how many reps beyond the range are open because neither load nor level can go up."""
        coach = self.grounds.coach_level(self.override)
        if coach is not None:
            return nearest(levels, coach), 0
        standing = self.past.levels.get(self.ladder["id"])
        if standing is None:
            return levels[0], 0
        level = nearest(levels, standing)
        above = [l for l in levels if l > level]
        if level != standing or not above or not self.due(level):
            return level, 0
        if self.grounds.no_level_up(level, above[0]):
            self.notes.add("a light week keeps the level" if self.light else "a day that leaves a level out")
            return level, 0
        if self.start_holds(self.variant_at(above[0])):
            return above[0], 0
        return level, k.MORE_REPS

    def variant_for(self, level):
        """The variant at a level; one that the coach has just named comes first."""
        named = self.override and self.override["variant"]
        here = [v for v in self.grounds.open_at(level, self.slot) if v["id"] == named]
        return here[0] if here else self.variant_at(level)

    def variant_at(self, level):
        """The variant last done symptom-free, then the coach's, then the first in order."""
        every = self.grounds.open_at(level, self.slot)
        light = [v for v in every if self.is_light_enough(v)]
        here = {v["id"]: v for v in light or (every if self.bottom_only else [])}
        for exposure in reversed(self.exposures):
            if exposure.variant["id"] in here:
                return here[exposure.variant["id"]]
        coach = self.grounds.coach_variant(self.override)
        return here.get(coach) or next(iter(here.values()), None)

    def due(self, level):
        """Two exposures running of one variant, no easier than this level, at the top with a rep more than the target, at
        the ready mark or the heaviest."""
        last = self.exposures[-k.UP_EXPOSURES :]
        if len(last) < k.UP_EXPOSURES or any(e.variant is not last[0].variant for e in last):
            return False
        variant = last[0].variant
        if (self.day - last[-1].day).days >= min(days for days, _ in k.LAY_OFF):
            return False
        if last[-1].level < level or not self.grounds.is_open(last[-1].level, variant, self.slot):
            return False
        # The target of then or of today, whichever asks for more.
        return all(
            e.by == self.by
            and self.at_top(e, max(e.target, self.target) + k.UP_OVER_TARGET)
            and self.at_ready_mark(variant, e)
            for e in last
        )

    def at_top(self, exposure, reserve):
        """The last planned set at the top of the range, of then or of today, with so much in reserve."""
        top = max(self.high, exposure.high)
        return exposure.count is not None and exposure.count >= top and exposure.reserve_at_least(reserve)

    def at_ready_mark(self, variant, exposure):
        """At the ready mark of the catalogue, or at the heaviest that her kit makes."""
        held = self.held(exposure)
        mark = variant["ready"]
        if mark["by"] == "load":
            marked = held >= mark["kg"] - 1e-9
        else:
            # A mark beyond the top of this dose is met at the top.
            marked = exposure.count >= min(mark[mark["by"]], self.high)
        heaviest = kit.external(variant, self.grounds.kit_loads(variant)[-1])
        return marked or (exposure.load["make"] != "nothing" and held >= heaviest - 1e-9)

    def start_holds(self, variant):
        """The new level's start load passes the mean test, or there is no prediction for it."""
        state = self.past.state_on(variant, self.day)
        w = self.effective(variant, self.start_load(variant))
        return state is None or w is None or self.mean_holds(variant, state, w)

    # -- the load (5.3)

    def effective(self, variant, load):
        """Effective load with the body mass of the day."""
        return kit.effective(variant, load, self.grounds.today.body_kg)

    def middle(self, variant):
        """Sets of the group before the middle one: j + (n - 1) / 2."""
        return self.earlier(variant) + (self.sets - 1) / 2

    def mean_holds(self, variant, state, w, more=0.0):
        """Mean reserve in the middle set, at the bottom of the range, at least target - 0.5."""
        mean, _ = strength.reserve(state, w, self.low, self.middle(variant))
        return mean >= self.target + more - k.SLACK

    def safe(self, variant, state, w, reps):
        """P(reserve in the last set < floor) at most alpha."""
        last = self.earlier(variant) + self.sets - 1
        return strength.chance_below(state, w, reps, last, self.floor) <= k.ALPHA

    def start_load(self, variant):
        """The coach's start load, else the answer to "ten reps with what?", else what the group tells, else the lightest."""
        made = self.under_cap(variant)
        wanted = self.grounds.coach_load(variant) or self.grounds.ten_reps(variant)
        if wanted:
            return heaviest_to(variant, made, kit.external(variant, wanted))
        held = self.past.held.get(variant.get("group"))
        state = self.past.state_on(variant, self.day)
        if state is None or held is None or not self.grounds.finding_allowed() or self.by != "reps":
            return made[0]
        fits = [
            load
            for load in made
            if kit.external(variant, load) <= k.SHARE_OF_GROUP * held + 1e-9 and self.qualifies(variant, state, load)
        ]
        return fits[-1] if fits else made[0]

    def qualifies(self, variant, state, load, more=0.0):
        """A load that passes both tests at the bottom of the range."""
        w = self.effective(variant, load)
        return w and self.mean_holds(variant, state, w, more) and self.safe(variant, state, w, self.low)

    def pick(self, variant, more):
        """((load, reps or seconds, purpose), True) for a variant; False where not even the lightest passes the mean test."""
        uses = self.past.uses.get(variant["id"], [])
        if self.learns:
            # The moves come first: the lightest that there is, whatever was written, answered or done before.
            if uses:
                self.notes.add("a learner who did it before")
            return (self.grounds.loads(variant)[0], self.low, "learn"), True
        if not uses:
            return self.first(variant), True
        made = self.under_cap(variant)
        wanted = self.grounds.override_load(variant, self.override)
        if wanted:
            return (heaviest_to(variant, made, kit.external(variant, wanted)), self.low, "work"), True
        done = [e for e in self.exposures if e.variant is variant and e.by == self.by]
        state = self.past.state_on(variant, self.day)
        known = state and self.by == "reps" and self.effective(variant, uses[-1].load)
        if not known:
            return self.counted(variant, uses, done, more), self.leap(variant) is None
        return self.by_strength(variant, state, uses, done, more)

    def first(self, variant):
        """First exposure of a variant: the start load at the bottom of the range; finding sets where they may be."""
        load = self.start_load(variant)
        finds = (
            self.by == "reps"
            and variant.get("group")
            and load["make"] != "nothing"
            and self.grounds.finding_allowed()
            and not self.held_back()
        )
        return load, self.low, "find" if finds else "work"

    def held_back(self):
        """No load is looked for, and none tried that is not foreseen."""
        return self.cap is not None or self.bottom_only or self.light

    def by_strength(self, variant, state, uses, done, more):
        """The heaviest permitted load that passes both tests, then the reps."""
        made = self.grounds.loads(variant)
        permitted, away, nothing_to_take_off = self.permitted(variant, made, uses, done)
        easier = k.LAY_OFF_MORE_RESERVE if nothing_to_take_off else 0.0
        fits = [load for load in permitted if self.qualifies(variant, state, load, easier)]
        finding = None if away or self.held_back() else self.still_finding(variant, made, permitted, uses, done, fits)
        if finding:
            return (finding, self.low, "find"), True
        load = fits[-1] if fits else made[0]
        w = self.effective(variant, load)
        leap = self.leap(variant) is not None
        holds = (bool(fits) or self.mean_holds(variant, state, w, easier)) and not leap
        last_kg = self.held(uses[-1])
        steps_up = bool(fits) and kit.external(variant, load) > last_kg + 1e-9
        if not steps_up and not away and not self.held_back():
            unforeseen = self.unforeseen(variant, made, uses, done)
            if unforeseen:
                return (unforeseen, self.low, "find" if self.grounds.finding_allowed() else "work"), True
        if done and not away and not self.held_back() and self.at_top(done[-1], self.target + k.GAP_OVER_TARGET):
            # A gap in the kit: much in reserve at the top, and no next load.
            if abs(kit.external(variant, load) - last_kg) <= 1e-9:
                more = k.MORE_REPS
        high = self.low if nothing_to_take_off or self.bottom_only or leap else self.high + more
        if self.light:
            # No count grows: as many as in the last round that was done whole.
            last = done[-1].whole_count if done else None
            bound = max(self.low, min(high, last or self.low))
            if self.reps_for(variant, state, w, high) > bound:
                self.notes.add("a light week keeps the reps")
            high = bound
        return (load, self.reps_for(variant, state, w, high), "work", easier), holds

    def still_finding(self, variant, made, permitted, uses, done, fits):
        """The load to go on finding with, where every set of the variant was answered "5 or more"; else None.

        No answer has told yet how heavy is heavy enough: the load last held as far as it is
        permitted (one that was tried and not done as planned is no ground to go on from), or a heavier one that holds by
        the tests.
        """
        kg = lambda load: kit.external(variant, load)
        held = [load for load in permitted if kg(load) <= self.held(uses[-1]) + 1e-9]
        if not held or not self.grounds.finding_allowed() or self.fell_short(uses[-1], done):
            return None
        load = max(held[-1:] + fits[-1:], key=kg)
        heavier = kg(made[-1]) > kg(load) + 1e-9
        return load if heavier and all(u.open_ended for u in uses) else None

    def unforeseen(self, variant, made, uses, done):
        """The next load, where the model does not foresee it and the last two exposures have shown it; else None."""
        last_kg = self.held(uses[-1])
        heavier = [load for load in made if kit.external(variant, load) > last_kg + 1e-9]
        running = done[-k.UNFORESEEN_EXPOSURES :]
        shown = len(running) == k.UNFORESEEN_EXPOSURES and all(
            self.held(e) >= last_kg - 1e-9 and self.at_top(e, self.target + k.UNFORESEEN_OVER_TARGET) for e in running
        )
        if not heavier or not shown or self.fell_short(uses[-1], done):
            return None
        most = last_kg + self.grounds.today.body_kg * k.UNFORESEEN_MOST_OF_BODY
        most = min(most, self.reach(last_kg))
        return heavier[0] if kit.external(variant, heavier[0]) <= most + 1e-9 else None

    def reach(self, held):
        """The heaviest that a step may go to which nothing foresees; of help that shrinks there is no share."""
        lower = self.ladder["region"] == "lower"
        return held * (k.UNFORESEEN_MOST_TIMES_LOWER if lower else k.UNFORESEEN_MOST_TIMES) if held > 0 else float("inf")

    def leap(self, variant):
        """What was held last of a variant, where all that her kit makes of it now is far above that; else None."""
        uses = self.past.uses.get(variant["id"], [])
        if not uses:
            return None
        made = self.grounds.loads(variant)
        done = [e for e in self.exposures if e.variant is variant and e.by == self.by]
        permitted, _, _ = self.permitted(variant, made, uses, done, within=True)
        held = self.held(uses[-1])
        return held if not permitted and kit.external(variant, made[0]) > self.reach(held) + 1e-9 else None

    def fell_short(self, last, done):
        """The last exposure was not done as planned."""
        return bool(done) and done[-1].day == last.day and done[-1].count is not None and not done[-1].as_planned

    def reps_for(self, variant, state, w, high):
        """The reps that bring the middle set nearest the target, the fewer on a tie; where care is due alpha binds them."""
        best, distance = self.low, None
        for reps in range(self.low, high + 1):
            if reps > self.low and self.careful and not self.safe(variant, state, w, reps):
                break
            mean, _ = strength.reserve(state, w, reps, self.middle(variant))
            if distance is None or abs(mean - self.target) < distance:
                best, distance = reps, abs(mean - self.target)
        return best

    def permitted(self, variant, made, uses, done, within=False):
        """Loads that the step and a lay-off permit, whether she was away, and whether there was no load to take off."""
        kg = lambda load: kit.external(variant, load)
        last = uses[-1]
        recent = [self.held(u) for u in uses if u.as_planned and (self.day - u.day).days <= k.STEP_DAYS]
        best = max(recent, default=None)
        fell_short = self.fell_short(last, done)
        if best is None:
            bound = self.held(last)
        else:
            # A tenth of assistance has no meaning: it shrinks by the next band.
            bound = best * (1 + k.STEP) if best > 0 else best
        if fell_short:
            bound = min(bound, self.held(last))
        heavier = [load for load in made if kg(load) > bound + 1e-9]
        between = best is not None and any(best + 1e-9 < kg(load) <= bound + 1e-9 for load in made)
        if best is not None and heavier and not fell_short and not between and self.big_step(done, best):
            bound = kg(heavier[0])
        away = (self.day - last.day).days
        share = next((share for days, share in k.LAY_OFF if away >= days), None)
        if share is not None:
            bound = min(bound, share * self.held(last) if self.held(last) > 0 else self.held(last))
        if self.light:
            # With help as with a weight: no more of the work than last time.
            if any(self.held(last) + 1e-9 < kg(load) <= bound + 1e-9 for load in made):
                self.notes.add("a light week keeps the help" if self.held(last) < 0 else "a light week keeps the load")
            bound = min(bound, self.held(last))
        if self.cap is not None:
            bound = min(bound, self.cap)
        permitted = [load for load in made if kg(load) <= bound + 1e-9]
        nothing_to_take_off = share is not None and (self.held(last) <= 0 or not permitted)
        return permitted or ([] if within else made[:1]), share is not None, nothing_to_take_off

    def big_step(self, done, least):
        """Two exposures running at the top with the target in reserve, or one with more; none at less than this load."""
        running = []
        for exposure in reversed(done):
            if self.held(exposure) < least - 1e-9:
                break
            running.append(exposure)
        two = running[: k.BIG_STEP_EXPOSURES]
        if two and self.at_top(two[0], self.target + k.BIG_STEP_ALONE):
            return True
        return len(two) == k.BIG_STEP_EXPOSURES and all(self.at_top(e, self.target) for e in two)

    def counted(self, variant, uses, done, more):
        """Without a strength state: reps or seconds go up a step after a set as planned, and down after one that was not."""
        made = self.grounds.loads(variant)
        kg = lambda load: kit.external(variant, load)
        permitted, away, nothing_to_take_off = self.permitted(variant, made, uses, done)
        easier = k.LAY_OFF_MORE_RESERVE if nothing_to_take_off else 0.0
        under = [load for load in permitted if kg(load) <= self.held(uses[-1]) + 1e-9]
        load = under[-1] if under else permitted[0]
        step = k.STEP_REPS if self.by == "reps" else k.STEP_SECONDS
        last = done[-1] if done else None
        if last is None:
            amount = self.low
        elif last.count is None:
            # Not done to the end: as many as in the last round that was, and no step either way.
            whole = self.low if last.whole_count is None else last.whole_count
            amount = min(whole, self.high)
        elif not last.as_planned:
            amount = last.count - step
        elif not last.reserve_at_least(self.target):
            amount = last.count
        elif self.light:
            amount = last.count
            self.notes.add("a light week keeps the count")
        else:
            heavier = [l for l in permitted if kg(load) + 1e-9 < kg(l)][:1]
            heavier = [l for l in heavier if kg(l) <= self.reach(kg(load)) + 1e-9]
            earned = last.count >= self.high and self.big_step(done, float("-inf"))
            if heavier and earned and kg(load) >= self.held(uses[-1]) - 1e-9:
                return heavier[0], self.low, "work"
            amount = last.count + step
        amount = self.low if away or self.bottom_only or self.leap(variant) is not None else min(max(amount, self.low), self.high + more)
        return load, amount, "work", easier

    def held(self, exposure):
        """External load of an exposure's last set, in kg."""
        return kit.external(exposure.variant, exposure.load)


def nearest(levels, wanted):
    """Among the open levels the one wanted, else the next below, else the lowest."""
    return max((l for l in levels if l <= wanted), default=levels[0])


def heaviest_to(variant, made, kg):
    """The heaviest load up to a number of kg, else the lightest."""
    return max((l for l in made if kit.external(variant, l) <= kg + 1e-9), key=lambda l: kit.external(variant, l), default=made[0])
