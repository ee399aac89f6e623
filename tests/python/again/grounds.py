"""What is open on the day: her kit, her stage, restrictions, and the levels that the coach allows (5.4)."""

from datetime import date

from . import constants as k
from . import kit
from .conditions import CONDITIONS


class Grounds:
    """What is open for a ladder."""

    def __init__(self, case, ladder, today):
        self.case, self.ladder, self.today, self.day = case, ladder, today, today.day
        self.kit = {} if "no_kit" in today.things else case.log.kit
        self.intake = case.log.intakes[-1][1] if case.log.intakes else {}
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
        """Finding sets never before 12 weeks after birth, and none where nothing grows."""
        return not self.nothing_grows() and (self.weeks_after() is None or self.weeks_after() >= k.FINDING_FROM_WEEK)

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
                about = {"of": "birth"}
                return asks and not self.cleared(about, lambda when, on: on >= birth)
        return False

    def cleared(self, about, counts):
        """Whether a clearance holds today that speaks of something, or of all that waited when it was given."""
        for when, said in self.case.log.clearances:
            on, until = date.fromisoformat(said["on"]), said.get("until")
            holds = on <= self.day and (not until or self.day <= date.fromisoformat(until))
            if holds and counts(when, on) and (said.get("speaks_of") is None or about in said["speaks_of"]):
                return True
        return False

    # -- what was said at screening

    def trained(self):
        return bool(self.intake.get("trained"))

    def conditions(self):
        """Her conditions that count at her stage."""
        pregnant = self.stage["stage"] == "pregnant"
        named = (CONDITIONS[ident] for ident in self.intake.get("conditions", []))
        return [c for c in named if c.counts(pregnant)]

    def waits(self):
        """What her conditions wait for: the provider or a clearance, unless one was given since they were first named."""
        pregnant, waits = self.stage["stage"] == "pregnant", set()
        for ident in self.intake.get("conditions", []):
            condition = CONDITIONS[ident]
            asks = condition.counts(pregnant) and condition.asked(pregnant, self.weeks_pregnant())
            since = None
            for when, intake in reversed(self.case.log.intakes):
                if ident not in intake["conditions"]:
                    break
                since = when
            about = {"of": "condition", "condition": ident}
            if asks and not self.cleared(about, lambda when, on: when >= since):
                waits.add(asks)
        return waits

    def restrictions(self):
        """What the coach or a provider rules out today."""
        return [what for what, until in self.case.log.restrictions if not until or self.day <= date.fromisoformat(until)]

    def least_reserve(self):
        """The least in reserve that a restriction asks for; 0 where none does."""
        asked = [r["reps"] for r in self.restrictions() if r["rules_out"] == "reserve_below"]
        if any(r["rules_out"] == "breath_holding" for r in self.restrictions()):
            asked.append(k.BREATH_RESERVE)
        return float(max(asked, default=0.0))

    def most_kg(self):
        """The most that a restriction leaves to be held on the ladder."""
        most = [
            kit.kilograms(r["most"])
            for r in self.restrictions()
            if r["rules_out"] == "load_above" and r.get("ladder") in (None, self.ladder["id"])
        ]
        return min(most, default=None)

    def lands(self):
        """No landing while pregnant, and after a birth or a loss none before the checks, which these logs do not hold."""
        return self.weeks_pregnant() is None and self.weeks_after() is None

    # -- what grows

    def goes_on(self):
        """Breathing, pelvic floor and mobility go on as they are."""
        return self.ladder["pattern"] in k.GOES_ON

    def nothing_grows(self):
        """In a light week, in the easy sessions after an illness and on an unwell day level, load and count stay."""
        easy = self.today.light or self.today.after_illness or self.today.readiness == "unwell"
        return easy and not self.goes_on()

    def nothing_grew(self, run_id):
        """The ladder was shown on a day on which nothing grows."""
        run = next(r for r in self.case.log.runs if r.id == run_id)
        slots = (run.shown or {}).get("slots", [])
        whys = [why for p in slots if p["ladder"] == self.ladder["id"] for why in p["reasons"]]
        eased = any(why["code"] in ("light-week", "after-illness") or why["rule"] == "today.unwell" for why in whys)
        return eased and not self.goes_on()

    def no_level_up(self, level, above):
        """Nothing grows, or between the two a level is closed for the day alone."""
        between = [(n, v) for n in range(level + 1, above) for v in self.ladder["levels"][n]["variants"]]
        for_the_day = any(self.closed_for_the_day(n, v) for n, v in between)
        return self.nothing_grows() or for_the_day

    def closed_for_the_day(self, level, variant):
        """Closed, and open but for what is said of the day: no kit, or a child in the room."""
        slot = {"levels": None}
        if self.is_open(level, variant, slot):
            return False
        things, owned = self.today.things, self.kit
        self.today.things, self.kit = set(), self.case.log.kit
        usually = self.is_open(level, variant, slot)
        self.today.things, self.kit = things, owned
        return usually

    # -- what is open

    def kit_loads(self, variant):
        return kit.loads(variant, self.kit)

    def loads(self, variant):
        """What her kit makes and no restriction rules out."""
        most = self.most_kg()
        return [load for load in self.kit_loads(variant) if most is None or kit.external(variant, load) <= most + 1e-9]

    def is_open(self, level, variant, slot):
        held = variant["loading"]["with"] not in ("body", "assist")
        pattern = self.ladder["pattern"]
        cautions = variant.get("cautions") or []
        if variant.get("retired"):
            return False
        if (self.waits_for_clearance() or self.waits()) and pattern not in k.GOES_ON:
            return False
        if "child_near" in self.today.things and "overhead" in cautions and held and variant["loading"]["with"] != "band":
            return False
        if any(c.rules_out in cautions for c in self.conditions()):
            return False
        if self.breathing_only() and pattern not in ("breathing", "pelvic_floor"):
            return False
        if "impact" in cautions and not self.lands():
            return False
        if self.unloaded() and held:
            return False
        if (self.weeks_pregnant() or 0) >= k.SUPINE_UNTIL_WEEK and variant["position"] == "supine":
            return False
        for what in self.restrictions():
            kind = what["rules_out"]
            if kind == "position" and what["position"] == variant["position"]:
                return False
            if kind == "caution" and what["caution"] in cautions:
                return False
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

    def override_today(self, exposures):
        """What the coach set, as far as it counts today: where nothing grows, a higher level or a heavier load waits."""
        override = self.override(exposures)
        standing = self.case.past.levels.get(self.ladder["id"])
        if not override or not self.nothing_grows() or not exposures:
            return override
        level, last = self.level_of(override), exposures[-1]
        higher = standing is not None and level is not None and level > standing
        variant = self.case.catalogue.variant(override["variant"]) if override["variant"] else last.variant
        heavier = override["load"] and kit.external(variant, override["load"]) > kit.external(last.variant, last.load)
        return None if higher or heavier else override

    def override(self, exposures):
        """What the coach set on the ladder after the last exposure of it; None if nothing. An exposure that came where
        nothing grows has not used it up."""
        used = [e for e in exposures if not self.nothing_grew(e.run)]
        since = used[-1].started if used else None
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
