"""One log, and what is made of it: states after every set, efforts and proposals, and what a set in hand asks for."""

from .choice import Choice
from .effort import effort
from .grounds import Grounds
from .log import Log
from .past import Past
from .today import Today
from .turn import turn
from .weeks import Weeks


class Case:
    """A log up to some record, with the coach's starts: her states, and what is proposed on a day."""

    def __init__(self, whole, catalogue, known=None, every_set=False):
        self.catalogue = catalogue
        self.starts = whole["starts"]
        self.log = Log(whole["records"][:known])
        self.weeks = Weeks(whole["programme"], self.log)
        self.past = None
        Past(self, self.log, catalogue, every_set)

    def states(self):
        """(run, sets so far) -> b, c, d and the upper half of the covariance; None before the first evidence."""
        return self.past.after

    def starts_at(self, until=None):
        """The coach's starts as known at an instant, later ones last; what was set before a birth is of before it."""
        fresh = self.past.fresh
        later = [
            start
            for when, start in self.log.overrides
            if (until is None or when <= until) and not (fresh and when.date() < fresh)
        ]
        return self.starts + later

    def start(self, ladder_id):
        """The coach's latest start on a ladder."""
        here = [s for s in self.starts_at() if s["ladder"] == ladder_id]
        return here[-1] if here else None

    def start_for(self, variant, until=None):
        """The coach's start for a variant: one that names it, else one for its ladder that names none."""
        ladder = self.catalogue.places[variant["id"]][0]["id"]
        here = [s for s in self.starts_at(until) if s["ladder"] == ladder]
        named = [s for s in here if s["variant"] == variant["id"]] or [s for s in here if s["variant"] is None]
        return named[-1] if named else None

    def proposals(self, day, session, run_id=None):
        """Effort, proposal and notes of each slot of a planned session in turn, None where it rests; None where training waits."""
        today = Today(self, day, run_id)
        planned, made = {}, {}
        for block in self.weeks.session(session, today.run):
            for slot in block["slots"]:
                ladder = self.catalogue.ladders[slot["ladder"]]
                grounds = Grounds(self, ladder, today)
                if "clearance" in grounds.waits():
                    return None

                def earlier(variant):
                    group = variant.get("group")
                    return self.past.done_today(group, day) + planned.get(group, 0)

                given = effort(grounds, block, slot)
                choice = Choice(block, slot, grounds, given, earlier)
                proposal = choice.propose()
                if proposal and block["form"] == "finisher" and proposal["purpose"] != "learn":
                    proposal["purpose"] = "finisher"
                if proposal and block["form"] in ("warm_up", "cool_down"):
                    proposal["purpose"] = "ease"
                elif proposal:
                    group = self.catalogue.variant(proposal["variant"]).get("group")
                    planned[group] = planned.get(group, 0) + proposal["sets"]
                made[slot["id"]] = given, proposal, choice.notes
        return made

    def turn(self, asked):
        """What the set in hand of a slot asks for."""
        return turn(self, asked)
