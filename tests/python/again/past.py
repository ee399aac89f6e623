"""What was done: rounds, strength states and exposures, session by session (5.2 and the words of section 2)."""

from . import constants as k
from . import kit, strength


class Round:
    """One round of a slot: one set, or one on each side."""

    def __init__(self, sets):
        self.sets = sets

    def counted(self):
        """The observation (reps, said, open-ended) of each set that is evidence; the lower r + f where there are two."""
        seen = [(s["reps"], s["reserve"]["reps"], s["reserve"]["said"] == "at_least") for s in self.sets if evidence(s)]
        if not seen:
            return None
        one = seen[0]
        for other in seen[1:]:
            one = strength.lower(one, other)
        return one


def evidence(s):
    """No evidence: stopped by a mark, no effort answer, timed, finishers, sets to learn the movement."""
    return not s["stopped"] and s.get("reserve") and s.get("seconds") is None and s["purpose"] in ("work", "find")


class Past:
    """Folds a log, session by session."""

    def __init__(self, case, log, catalogue):
        self.case, self.log, self.catalogue = case, log, catalogue
        self.states = {}
        self.after_set = []
        self.exposures = []
        self.today = {}
        for run in log.runs:
            if not self.before_ground_zero(run):
                self.take(run)

    def before_ground_zero(self, run):
        """Birth and loss close the load history: every ladder starts anew."""
        for _, stage in self.log.stages:
            zero = stage.get("birth") or stage.get("on")
            if zero and run.day.isoformat() < zero:
                return True
        return False

    def body_kg(self, run):
        """Body mass as last recorded, frozen for the session."""
        known = [m for when, m in self.log.masses if when <= run.started]
        return kit.kilograms(known[-1]) if known else None

    def take(self, run):
        """Takes in one session."""
        rounds = {}
        for s in run.sets:
            rounds.setdefault((s["slot"], s["round"], s["variant"]), []).append(s)
        earlier = {}
        for (slot_id, _, variant_id), sets in rounds.items():
            variant = self.catalogue.variant(variant_id)
            group = variant.get("group")
            if not group:
                continue
            key = (group, run.day)
            j = self.today.get(key, 0)
            self.today[key] = j + 1
            seen = Round(sets).counted()
            load = kit.effective(variant, sets[0]["load"], self.body_kg(run))
            if seen is None or load is None:
                continue
            self.observe(run, group, variant, slot_id, load, j, seen)

    def observe(self, run, group, variant, slot_id, load, j, seen):
        """One round that is evidence: the state of its group moves."""
        slot = self.case.slot(slot_id)
        state = self.states.get(group)
        if state is None:
            start = self.case.start_load(variant)
            w = kit.effective(variant, start, self.body_kg(run)) if start else load
            state = strength.begin(
                self.catalogue.mean_c(group), w or load, slot["dose"]["amount"]["low"], self.case.target(run, slot_id), run.day
            )
        state = strength.update(state.at(run.day), load, j, *seen)
        self.states[group] = state
        self.after_set.append((run.id, group, j, state))
