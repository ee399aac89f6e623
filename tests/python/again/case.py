"""One log, and what is made of it: states after every set, and proposals."""

from .choice import Choice
from .grounds import Grounds
from .log import Log
from .past import Past


class Case:
    """A log up to some record, with the coach's starts: her states, and what is proposed on a day."""

    def __init__(self, whole, catalogue, known=None, every_set=False):
        self.catalogue = catalogue
        self.starts = whole["starts"]
        self.blocks = whole["programme"]["sessions"][0]["blocks"]
        self.log = Log(whole["records"][:known])
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

    def proposals(self, day, given):
        """The proposal of each slot in turn; None where it rests. The effort of the day is given for each."""
        efforts = {effort["slot"]: effort for effort in given}
        planned, made = {}, {}
        for block in self.blocks:
            for slot in block["slots"]:
                ladder = self.catalogue.ladders[slot["ladder"]]

                def earlier(variant):
                    group = variant.get("group")
                    return self.past.done_today(group, day) + planned.get(group, 0)

                grounds = Grounds(self, ladder, day)
                proposal = Choice(slot, ladder, self.past, day, efforts[slot["id"]], grounds, earlier).propose()
                if proposal and block["form"] == "finisher":
                    proposal["purpose"] = "finisher"
                if proposal:
                    group = self.catalogue.variant(proposal["variant"]).get("group")
                    planned[group] = planned.get(group, 0) + proposal["sets"]
                made[slot["id"]] = proposal
        return made
