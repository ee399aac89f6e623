"""What is open on the day: her kit, her stage, restrictions, and the levels that the coach allows (5.4)."""

from datetime import date

from . import constants as k
from . import kit


class Grounds:
    def __init__(self, case, ladder):
        self.case, self.ladder = case, ladder
        self.kit = case.log.kit
        self.stage = case.log.stages[-1][1] if case.log.stages else {"stage": "neither"}

    # -- the stage

    def weeks_pregnant(self):
        """Completed weeks; None if not pregnant. Without a date the latest is assumed."""
        if self.stage["stage"] != "pregnant":
            return None
        if not self.stage.get("due"):
            return 40
        return max(280 - (date.fromisoformat(self.stage["due"]) - self.case.day).days, 0) // 7

    def weeks_after(self):
        """Completed weeks since a birth or a loss; None if neither."""
        since = self.stage.get("birth") or self.stage.get("on")
        return max((self.case.day - date.fromisoformat(since)).days, 0) // 7 if since else None

    def finding_allowed(self):
        """Finding sets never before 12 weeks after birth."""
        return self.weeks_after() is None or self.weeks_after() >= k.FINDING_FROM_WEEK

    def unloaded(self):
        """No load in the first six weeks after a birth or a loss."""
        return self.weeks_after() is not None and self.weeks_after() < k.UNLOADED_WEEKS

    def breathing_only(self):
        return self.stage["stage"] == "postpartum" and self.weeks_after() < k.BREATHING_ONLY_WEEKS

    def waits_for_clearance(self):
        """After a caesarean or a severe tear nothing but breathing before a clearance."""
        if self.stage["stage"] != "postpartum" or not (self.stage["mode"] == "caesarean" or self.stage["severe_tear"]):
            return False
        birth = date.fromisoformat(self.stage["birth"])
        return not any(birth <= on <= self.case.day for on in self.case.log.clearances)

    # -- what is open

    def loads(self, variant):
        return kit.loads(variant, self.kit)

    def is_open(self, level, variant, slot):
        held = variant["loading"]["with"] not in ("body", "assist")
        if self.waits_for_clearance() and self.ladder["pattern"] != "breathing":
            return False
        if self.breathing_only() and self.ladder["pattern"] != "breathing":
            return False
        if self.unloaded() and held:
            return False
        if (self.weeks_pregnant() or 0) >= k.SUPINE_UNTIL_WEEK and variant["position"] == "supine":
            return False
        for what, until in self.case.log.restrictions:
            if until and self.case.day > date.fromisoformat(until):
                continue
            kind = what["rules_out"]
            if kind == "all_load" and held:
                return False
            if kind == "variant" and what["variant"] == variant["id"]:
                return False
            if kind == "level_above" and what["ladder"] == self.ladder["id"] and level > what["level"]:
                return False
        if any(thing not in self.kit.get("things", []) for thing in variant.get("needs", [])):
            return False
        if not self.loads(variant):
            return False
        span = slot.get("levels")
        return not span or span["low"] <= level <= span["high"]

    def open_at(self, ladder, level, slot):
        return [v for v in ladder["levels"][level]["variants"] if self.is_open(level, v, slot)]

    def open_levels(self, ladder, slot):
        return [l for l in range(len(ladder["levels"])) if self.open_at(ladder, l, slot)]

    # -- what the coach and she said

    def start(self, ladder_id):
        return self.case.start(ladder_id)

    def coach_load(self, ladder_id, variant):
        start = self.case.start_for(variant)
        load = start and start["load"]
        made = self.loads(variant)
        return load if load and load["make"] == made[0]["make"] else None

    def ten_reps(self, variant):
        said = [load for _, ident, load in self.case.log.tens if ident == variant["id"]]
        return said[-1] if said else None
