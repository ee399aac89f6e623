"""One log with what was asked of it: its states after every set, and what is proposed on the day asked."""

from datetime import date

from .choice import Choice
from .grounds import Grounds
from .log import Log
from .past import Past


class Case:
    """A case as the exporter writes it."""

    def __init__(self, given, catalogue):
        self.catalogue = catalogue
        self.day = date.fromisoformat(given["day"])
        self.starts = given["starts"]
        self.given = {g["slot"]: g for g in given["given"]}
        self.blocks = given["programme"]["sessions"][0]["blocks"]
        self.log = Log(given["records"])
        self.past = None
        Past(self, self.log, catalogue)

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

    def proposals(self):
        """The proposal of each slot in turn; None where it rests."""
        planned, made = {}, {}
        for block in self.blocks:
            for slot in block["slots"]:
                ladder = self.catalogue.ladders[slot["ladder"]]

                def earlier(variant):
                    group = variant.get("group")
                    return self.past.done_today(group, self.day) + planned.get(group, 0)

                choice = Choice(
                    slot, ladder, self.past, self.day, self.given[slot["id"]], Grounds(self, ladder), earlier
                )
                proposal = choice.propose()
                if proposal and block["form"] == "finisher":
                    proposal["purpose"] = "finisher"
                if proposal:
                    group = self.catalogue.variant(proposal["variant"]).get("group")
                    planned[group] = planned.get(group, 0) + proposal["sets"]
                made[slot["id"]] = proposal
        return made
