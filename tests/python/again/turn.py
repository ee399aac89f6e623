"""What the set in hand asks for (5.3, "in the session"): the load, a lighter one where the floor is near, finding sets.

Once a set of the slot is done, the reps of the next working set are chosen anew, and the lighter load follows from them.
"""

from datetime import date

from . import constants as k
from . import kit, strength
from .choice import Choice
from .effort import Effort, effort
from .grounds import Grounds
from .today import Today


def turn(case, asked):
    """Variant, load, lighter load, purpose and reps (None where nothing is left to do); and notes of what made a
    difference."""
    today = Today(case, date.fromisoformat(asked["day"]), asked["run"])
    run = today.run
    block, slot = next(
        (block, slot)
        for block in case.weeks.session(asked["session"], run)
        for slot in block["slots"]
        if slot["id"] == asked["slot"]
    )
    shown = run.shown_for(slot["id"])
    if shown is None:
        return None, set()
    in_hand = Turn(case, today, block, slot, shown)
    return in_hand.says(), in_hand.notes


class Turn:
    """The set in hand of a slot."""

    def __init__(self, case, today, block, slot, shown):
        self.case, self.today, self.block, self.slot, self.shown = case, today, block, slot, shown
        self.past, self.run = case.past, today.run
        self.done = [s for s in self.run.sets if s["slot"] == slot["id"]]
        self.grounds = Grounds(case, case.catalogue.ladders[slot["ladder"]], today)
        given = effort(self.grounds, block, slot)
        # The aim as it was shown holds for the whole session.
        target = slot["dose"]["target_rir"] if shown["reserve"] is None else shown["reserve"]
        left = max(shown["sets"] - len(self.done), 1)
        left = Effort(float(target), shown["floor"], left, given.careful)
        self.choice = Choice(block, slot, self.grounds, left, lambda v: self.past.done_today(v.get("group"), today.day))
        self.notes = set()
        # What the coach set is in what was shown; another option is hers.
        self.choice.override = None
        if not self.choice.bottom_only:
            # What was shown holds; the last load of the ladder is this session's own by now.
            self.choice.cap = None
        self.why = next(p["reasons"] for p in self.run.shown["slots"] if p["slot"] == slot["id"])

    def says(self):
        variant = self.option()
        if variant is None:
            return None
        load, amount, purpose = self.shown["load"], self.shown["target"]["count"], self.shown["purpose"]
        if variant["id"] != self.shown["variant"] or self.answered(variant):
            (load, amount, found, *_), _ = self.choice.pick(variant, 0)
            if purpose not in ("finisher", "ease"):
                purpose = found
        self.variant, self.load, self.purpose = variant, load, purpose
        self.amount = self.planned = amount
        self.lighter = None
        self.regulate()
        self.note()
        return {
            "variant": variant["id"],
            "load": self.load,
            "lighter": self.lighter,
            "amount": self.amount,
            "purpose": self.purpose,
        }

    def note(self):
        """What made a difference, for the count of cases."""
        kind = {
            "with fewer reps": self.purpose == "work" and self.amount < self.planned,
            "with more reps": self.purpose == "work" and self.amount > self.planned,
            "with another option": self.variant["id"] != self.shown["variant"],
            "with an answer just given": self.answered(self.variant),
            "eased with a weight": self.choice.bottom_only and self.load["make"] != "nothing",
            "to step up": bool(self.done) and self.purpose == "find",
            "with a lighter load": self.lighter is not None,
            "with a load that she made lighter": bool(self.done) and self.kg(self.load) < self.kg(self.shown["load"]) - 1e-9,
        }
        self.notes = {name for name, true in kind.items() if true}

    def option(self):
        """What was shown, or what she chose of it at that level or below; where that is closed, the nearest open level below."""
        places = self.case.catalogue.places
        ladder, level, variant = places[self.shown["variant"]]
        chosen = [v for s, v in self.run.chosen if s == self.slot["id"]]
        if chosen and places[chosen[-1]][0] is ladder and places[chosen[-1]][1] <= self.shown["level"]:
            _, level, variant = places[chosen[-1]]
        if not self.grounds.is_open(level, variant, self.slot):
            below = [l for l in self.grounds.open_levels(self.slot) if l <= level]
            if not below:
                return None
            level = below[-1]
            variant = self.without_coach(level, self.grounds.open_at(level, self.slot))
        if self.choice.cap is not None and not self.choice.is_light_enough(variant):
            # Eased, an option of this level without a load comes before the lightest of one.
            light = [v for v in self.grounds.open_at(level, self.slot) if self.choice.is_light_enough(v)]
            variant = self.without_coach(level, light) or variant
        return variant

    def without_coach(self, level, variants):
        """The variant last done, else the first."""
        here = {v["id"]: v for v in variants}
        for exposure in reversed(self.choice.exposures):
            if exposure.variant["id"] in here:
                return here[exposure.variant["id"]]
        return next(iter(here.values()), None)

    def answered(self, variant):
        """"Ten reps with what?" was answered after the proposal was shown, and before the first set."""
        asked = any(reason["code"] == "start-lightest" for reason in self.why)
        return asked and not self.done and not self.grounds.coach_load(variant) and bool(self.grounds.ten_reps(variant))

    # -- with a set of the day known

    def kg(self, load):
        return kit.external(self.variant, load)

    def mean(self, load, reps):
        """Mean reserve of the next set."""
        w = self.choice.effective(self.variant, load)
        return strength.reserve(self.state, w, reps, self.j)[0] if w else None

    def reps_now(self, here):
        """The reps of the range that bring the set in hand nearest the aim, the fewer on a tie; more than planned only where
        that may be. The second side does what the first one did."""
        codes = {reason["code"] for reason in self.why}
        may_grow = not self.choice.careful and "lay-off" not in codes and not self.grounds.nothing_grows()
        low = self.choice.low
        high = max(self.choice.high, self.planned) if may_grow else self.planned
        sides = [s for s in here if s["round"] == here[-1]["round"]]
        if self.variant.get("per_side") and len(sides) < 2:
            return min(max(here[-1]["reps"], low), max(high, low))
        w = self.choice.effective(self.variant, self.load)
        best, distance = low, None
        for reps in range(low, high + 1):
            risk = strength.chance_below(self.state, w, reps, self.j, self.shown["floor"])
            if self.choice.careful and reps > low and risk > k.ALPHA:
                break
            off = abs(strength.reserve(self.state, w, reps, self.j)[0] - self.choice.target)
            if distance is None or off < distance:
                best, distance = reps, off
        return best

    def regulate(self):
        """A lighter load where the next set would likelier than not go under the floor; a heavier one only while it is found."""
        here = [s for s in self.done if s["variant"] == self.variant["id"]]
        if not here:
            return
        if self.kg(here[-1]["load"]) < self.kg(self.load) - 1e-9:
            # A lighter load that she took stays.
            self.load = here[-1]["load"]
        group = self.variant.get("group")
        self.state = self.past.states.get(group)
        if self.choice.by != "reps" or self.state is None or self.state.day != self.today.day:
            return
        self.j = self.past.done_today(group, self.today.day)
        if self.purpose == "find":
            self.find(here)
        if self.purpose == "find":
            return
        w = self.choice.effective(self.variant, self.load)
        if w and self.purpose == "work" and not self.choice.bottom_only:
            self.amount = self.reps_now(here)
        reps = self.amount
        if w and strength.chance_below(self.state, w, reps, self.j, self.shown["floor"]) > k.LIGHTER_CHANCE:
            lighter = [l for l in self.loads() if self.kg(l) < self.kg(self.load) - 1e-9]
            meets = [l for l in lighter if (self.mean(l, reps) or float("-inf")) >= self.choice.target - k.SLACK]
            self.lighter = meets[-1] if meets else lighter[0] if lighter else None

    def loads(self):
        """Loads to choose from; where nothing is held there is no choice."""
        made = self.grounds.loads(self.variant)
        return [] if [l["make"] for l in made] == ["nothing"] else made

    def find(self, here):
        """Up to two sets may step up, where there is room; both sides of a round hold the same."""
        last = here[-1]
        held = self.kg(last["load"])
        self.load = next((l for l in self.loads() if abs(self.kg(l) - held) < 1e-9), self.load)
        sides = [s for s in here if s["round"] == last["round"]]
        if self.variant.get("per_side") and len(sides) < 2:
            self.purpose = last["purpose"]
            return
        self.purpose = "work"
        kgs = [self.kg(s["load"]) for s in here]
        if sum(a != b for a, b in zip(kgs, kgs[1:])) >= k.FINDING_SETS:
            return
        said = [s.get("reserve") for s in sides]
        room = all(r and (r["said"] == "at_least" or r["reps"] >= self.choice.target + k.FINDING_ROOM) for r in said)
        step = self.step(held, all(r and r["said"] == "at_least" for r in said) and self.is_blind())
        if room and step:
            self.load, self.amount, self.purpose = step, self.choice.low, "find"

    def step(self, held, open_ended):
        """The heaviest within reach that is foreseen, or of which "five or more" says that there is room; else the next load
        of the kit within its own reach."""
        lower = self.grounds.ladder["region"] == "lower"
        heavier = [l for l in self.loads() if self.kg(l) > held + 1e-9]
        if self.choice.cap is not None:
            heavier = [l for l in heavier if self.kg(l) <= self.choice.cap + 1e-9]
        reach = held * (k.FINDING_TIMES_LOWER if lower else k.FINDING_TIMES) if held > 0 else held
        next_reach = held * (k.FINDING_NEXT_LOWER if lower else k.FINDING_NEXT) if held > 0 else float("inf")

        def foreseen(load):
            mean = self.mean(load, self.choice.low)
            return mean is not None and mean >= self.choice.target - k.SLACK

        further = [l for l in heavier if self.kg(l) <= reach + 1e-9 and (open_ended or foreseen(l))]
        if further:
            return further[-1]
        # Where body mass moves along and is left out of the load, the curve does not hold far from where she is.
        by_feel = not self.variant.get("share") and lower
        near = [l for l in heavier[:1] if self.kg(l) <= next_reach + 1e-9 and (open_ended or by_feel or foreseen(l))]
        return near[0] if near else None

    def is_blind(self):
        """Nothing told where to begin with it: no start of the coach's, no answer of hers, no other variant of its group."""
        coach = self.grounds.coach_load(self.variant)
        fresh = self.past.fresh
        answers = [
            load
            for when, ident, load in self.case.log.tens
            if ident == self.variant["id"]
            and self.grounds.of_make(self.variant, load)
            and not (fresh and when.date() < fresh)
        ]
        group = self.variant.get("group")
        others = [
            ident
            for ident in self.past.uses
            if ident != self.variant["id"] and self.case.catalogue.variant(ident).get("group") == group
        ]
        return not (coach or answers or others)
