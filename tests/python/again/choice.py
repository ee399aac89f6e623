"""The choice of a level and of a load (5.3 and 5.4)."""

from . import constants as k
from . import kit, strength


class Choice:
    """Chooses for one slot on one day."""

    def __init__(self, slot, ladder, past, day, given, grounds):
        self.slot, self.ladder, self.past, self.day = slot, ladder, past, day
        self.target, self.floor = given["target"], given["floor"]
        self.sets, self.careful = given["sets"], given["careful"]
        self.grounds = grounds
        amount = slot["dose"]["amount"]
        self.by, self.low, self.high = amount["by"], amount["low"], amount["high"]
        self.exposures = past.exposures.get(ladder["id"], [])

    # -- the level (5.4)

    def propose(self):
        """Level, variant, load, reps, sets and purpose; None where nothing is open."""
        open_levels = self.grounds.open_levels(self.ladder, self.slot)
        if not open_levels:
            return None
        level = self.standing(open_levels)
        variant = self.variant_at(level)
        above = [l for l in open_levels if l > level]
        more = 0
        if above and self.due(variant):
            candidate = self.variant_at(above[0])
            if self.start_holds(candidate):
                return self.with_load(above[0], candidate)
            more = k.MORE_REPS
        while True:
            proposal = self.with_load(level, variant, more)
            if proposal is not None:
                return proposal
            below = [l for l in open_levels if l < level]
            if not below:
                return self.lightest(level, variant)
            level = below[-1]
            variant = self.variant_at(level)

    def standing(self, open_levels):
        """The level she stands at: the last one trained; without an exposure the coach's start, else the easiest."""
        if self.exposures:
            level = self.exposures[-1].level
        else:
            start = self.grounds.start(self.ladder["id"])
            level = start["level"] if start and start.get("level") is not None else open_levels[0]
        if level in open_levels:
            return level
        below = [l for l in open_levels if l < level]
        return below[-1] if below else open_levels[0]

    def variant_at(self, level):
        """Last done symptom-free, then the client's choice, then the coach's order."""
        open_here = self.grounds.open_at(self.ladder, level, self.slot)
        for exposure in reversed(self.exposures):
            if any(v["id"] == exposure.variant["id"] for v in open_here):
                return next(v for v in open_here if v["id"] == exposure.variant["id"])
        start = self.grounds.start(self.ladder["id"])
        if start and any(v["id"] == start.get("variant") for v in open_here):
            return next(v for v in open_here if v["id"] == start["variant"])
        return open_here[0]

    def running(self, variant, count):
        """The last exposures of the ladder if all of them are of this variant."""
        last = self.exposures[-count:]
        if len(last) == count and all(e.variant["id"] == variant["id"] for e in last):
            return last
        return None

    def due(self, variant):
        """Two symptom-free exposures running at the top, a rep in hand, at the ready mark or the heaviest of her kit."""
        last = self.running(variant, k.UP_EXPOSURES)
        if last is None or not all(e.at_top(k.UP_OVER_TARGET) for e in last):
            return False
        return self.ready(variant, last[-1])

    def ready(self, variant, exposure):
        mark = variant["ready"]
        if mark["by"] == "load" and self.held(exposure) >= mark["kg"]:
            return True
        if mark["by"] == "reps" and exposure.count >= mark["reps"]:
            return True
        if mark["by"] == "seconds" and exposure.count >= mark["seconds"]:
            return True
        made = self.grounds.loads(variant)
        return self.held(exposure) >= kit.external(variant, made[-1])

    def start_holds(self, variant):
        """The new level's start load passes the mean test, or there is no prediction for it."""
        load = self.start_load(variant)
        state = self.past.state_on(variant, self.day)
        w = self.past.effective_today(variant, load)
        if state is None or w is None:
            return True
        return self.mean_holds(state, w)

    # -- the load (5.3)

    def middle(self):
        return (self.sets - 1) / 2

    def mean_holds(self, state, w):
        mean, _ = strength.reserve(state, w, self.low, self.middle())
        return mean >= self.target - k.SLACK

    def safe(self, state, w, reps):
        return strength.chance_below(state, w, reps, self.sets - 1, self.floor) <= k.ALPHA

    def start_load(self, variant):
        """The coach's start load, else the answer to "ten reps with what?", else the lightest."""
        made = self.grounds.loads(variant)
        for given in (self.grounds.coach_load(self.ladder["id"], variant), self.grounds.ten_reps(variant)):
            if given is not None:
                top = kit.external(variant, given)
                fits = [l for l in made if kit.external(variant, l) <= top + 1e-9]
                return fits[-1] if fits else made[0]
        return made[0]

    def with_load(self, level, variant, more=0):
        """The proposal at a level; None where no load holds."""
        if not variant.get("group"):
            return self.counted(level, variant, more)
        made = self.grounds.loads(variant)
        done = [e for e in self.exposures if e.variant["id"] == variant["id"]]
        if not done:
            load = self.start_load(variant)
            heavier = kit.external(variant, load) < kit.external(variant, made[-1])
            find = heavier and self.grounds.finding_allowed()
            return self.answer(level, variant, load, self.low, "find" if find else "work")
        state = self.past.state_on(variant, self.day)
        if state is None:
            return self.answer(level, variant, made[0], self.low, "work")
        bound = self.bound(variant, done, made)
        permitted = [l for l in made if kit.external(variant, l) <= bound + 1e-9]
        fits = []
        for load in permitted:
            w = self.past.effective_today(variant, load)
            if w and self.mean_holds(state, w) and self.safe(state, w, self.low):
                fits.append(load)
        if fits:
            load = fits[-1]
        else:
            load = made[0]
            w = self.past.effective_today(variant, load)
            if w is None or not self.mean_holds(state, w):
                return None
        return self.answer(level, variant, load, self.reps_for(state, variant, load, more), "work")

    def bound(self, variant, done, made):
        """The heaviest external load that is permitted, in kg."""
        recent = [self.held(e) for e in done if e.as_planned and (self.day - e.day).days <= k.STEP_DAYS]
        last = done[-1]
        if recent:
            bound = max(recent) + abs(max(recent)) * k.STEP
            if self.big_step(variant):
                heavier = [kit.external(variant, l) for l in made if kit.external(variant, l) > max(recent) + 1e-9]
                if heavier:
                    bound = max(bound, heavier[0])
        else:
            bound = self.held(last)
        away = (self.day - last.day).days
        for days, share in k.LAY_OFF:
            if away >= days:
                bound = min(bound, share * self.held(last))
                break
        return bound

    def big_step(self, variant):
        two = self.running(variant, k.BIG_STEP_EXPOSURES)
        one = self.running(variant, 1)
        return bool(two and all(e.at_top(0) for e in two)) or bool(one and one[0].at_top(k.BIG_STEP_ALONE))

    def reps_for(self, state, variant, load, more):
        """The reps that bring the middle set nearest the target, the fewer on a tie."""
        w = self.past.effective_today(variant, load)
        best, distance = self.low, None
        for reps in range(self.low, self.high + more + 1):
            if reps > self.low and self.careful and not self.safe(state, w, reps):
                break
            mean, _ = strength.reserve(state, w, reps, self.middle())
            if distance is None or abs(mean - self.target) < distance:
                best, distance = reps, abs(mean - self.target)
        return best

    def counted(self, level, variant, more):
        """Variants without a strength state: reps or seconds go up when the last exposure was as planned."""
        made = self.grounds.loads(variant)
        done = [e for e in self.exposures if e.variant["id"] == variant["id"]]
        step = k.STEP_REPS if self.by == "reps" else k.STEP_SECONDS
        amount = self.low
        if done:
            last = done[-1]
            amount = last.count or self.low
            if last.as_planned and last.reserve_at_least(self.target):
                amount += step
        return self.answer(level, variant, made[0], min(max(amount, self.low), self.high + more), "work")

    def lightest(self, level, variant):
        return self.answer(level, variant, self.grounds.loads(variant)[0], self.low, "work")

    def answer(self, level, variant, load, amount, purpose):
        return {
            "level": level, "variant": variant["id"], "load": load, "amount": amount, "sets": self.sets, "purpose": purpose,
        }

    def held(self, exposure):
        """External load of an exposure's last set, in kg."""
        return kit.external(exposure.variant, exposure.load)
