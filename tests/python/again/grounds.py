"""What is open on the day: her kit, her stage, restrictions, and the levels that the coach allows (5.4)."""

from datetime import date

from . import constants as k
from . import kit


class Grounds:
    """What is open for a ladder."""

    def __init__(self, case, ladder, day):
        self.case, self.ladder, self.day = case, ladder, day
        self.kit = case.log.kit
        self.stage = case.log.stages[-1][1] if case.log.stages else {"stage": "neither"}

    # -- the stage

    def weeks_pregnant(self):
        """Completed weeks; None if not pregnant. Without a date the latest is assumed."""
        if self.stage["stage"] != "pregnant":
            return None
        if not self.stage.get("due"):
            return 40
        return max(280 - (date.fromisoformat(self.stage["due"]) - self.day).days, 0) // 7

    def weeks_after(self):
        """Completed weeks since a birth or a loss; None if neither."""
        since = self.stage.get("birth") or self.stage.get("on")
        return max((self.day - date.fromisoformat(since)).days, 0) // 7 if since else None

    def finding_allowed(self):
        """Finding sets never before 12 weeks after birth."""
        return self.weeks_after() is None or self.weeks_after() >= k.FINDING_FROM_WEEK

    def unloaded(self):
        """No load in the first six weeks after a birth or a loss."""
        return self.weeks_after() is not None and self.weeks_after() < k.UNLOADED_WEEKS

    def breathing_only(self):
        return self.stage["stage"] == "postpartum" and self.weeks_after() < k.BREATHING_ONLY_WEEKS

    def waits_for_clearance(self):
        """After a caesarean or a severe tear nothing but breathing before a clearance, whatever was recorded since, until
        the next pregnancy."""
        for _, stage in reversed(self.case.log.stages):
            if stage["stage"] == "pregnant":
                return False
            if stage["stage"] == "postpartum":
                asks = stage["mode"] == "caesarean" or stage["severe_tear"]
                birth = date.fromisoformat(stage["birth"])
                return asks and not any(birth <= on <= self.day for on in self.case.log.clearances)
        return False

    def lands(self):
        """No landing while pregnant, and after a birth or a loss none before the checks, which these logs do not hold."""
        return self.weeks_pregnant() is None and self.weeks_after() is None

    # -- what is open

    def loads(self, variant):
        return kit.loads(variant, self.kit)

    def is_open(self, level, variant, slot):
        held = variant["loading"]["with"] not in ("body", "assist")
        pattern = self.ladder["pattern"]
        if self.waits_for_clearance() and pattern not in ("breathing", "pelvic_floor", "mobility"):
            return False
        if self.breathing_only() and pattern not in ("breathing", "pelvic_floor"):
            return False
        if "impact" in variant.get("cautions", []) and not self.lands():
            return False
        if self.unloaded() and held:
            return False
        if (self.weeks_pregnant() or 0) >= k.SUPINE_UNTIL_WEEK and variant["position"] == "supine":
            return False
        for what, until in self.case.log.restrictions:
            if until and self.day > date.fromisoformat(until):
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

    def open_at(self, level, slot):
        return [v for v in self.ladder["levels"][level]["variants"] if self.is_open(level, v, slot)]

    def open_levels(self, slot):
        return [l for l in range(len(self.ladder["levels"])) if self.open_at(l, slot)]

    # -- what the coach and she said

    def override(self, exposures):
        """What the coach set on the ladder after the last exposure of it; None if nothing."""
        since = exposures[-1].started if exposures else None
        fresh = self.case.past.fresh
        later = [
            start
            for when, start in self.case.log.overrides
            if start["ladder"] == self.ladder["id"]
            and (since is None or when > since)
            and not (fresh and when.date() < fresh)
        ]
        return later[-1] if later else None

    def coach_level(self, override):
        """The level of an override, or of the coach's start while nothing was trained; None if there is none."""
        if override and self.level_of(override) is not None:
            return self.level_of(override)
        if self.ladder["id"] in self.case.past.levels:
            return None
        start = self.case.start(self.ladder["id"])
        return self.level_of(start) if start else None

    def level_of(self, start):
        """The level that a start names, or that of its variant."""
        if start["level"] is not None:
            return start["level"]
        return self.case.catalogue.places[start["variant"]][1] if start["variant"] else None

    def coach_variant(self, override):
        """The variant that the coach named last for the ladder."""
        if override and override["variant"]:
            return override["variant"]
        start = self.case.start(self.ladder["id"])
        return start and start["variant"]

    def coach_load(self, variant):
        """The coach's start load for a variant. One of another make tells nothing of it."""
        start = self.case.start_for(variant)
        return self.of_make(variant, start and start["load"])

    def override_load(self, variant, override):
        """The load of an override, where it is for this variant and of its make, be it nothing."""
        if not override or not override["load"] or override["variant"] not in (None, variant["id"]):
            return None
        return override["load"] if override["load"]["make"] == self.loads(variant)[0]["make"] else None

    def ten_reps(self, variant):
        """Her answer to "ten reps with what?"; early after a birth, and from before it, it does not count."""
        fresh = self.case.past.fresh
        said = [
            load
            for when, ident, load in self.case.log.tens
            if ident == variant["id"] and self.of_make(variant, load) and not (fresh and when.date() < fresh)
        ]
        return said[-1] if said and self.finding_allowed() else None

    def of_make(self, variant, load):
        """A load if it is of the make that the variant is done with, and something is held."""
        make = self.loads(variant)[0]["make"]
        return load if load and load["make"] == make != "nothing" else None
