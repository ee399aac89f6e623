"""A log read in the engine's order (4): corrections and withdrawals resolved, sessions in the order of their start."""

from datetime import date, datetime

from . import kit


CARE = ("usual", "tired", "unwell")


class Run:
    """A session that was trained: its day, what was shown, and its sets in order."""

    def __init__(self, ident, started):
        self.id, self.started, self.day = ident, started, started.date()
        self.shown, self.sets, self.body_kg = None, [], None
        # Programme and planned session; what was said at check-in; options that she chose, as (slot, variant).
        self.planned, self.readiness, self.today, self.chosen = None, None, [], []

    def hear(self, check_in):
        """What was said before it. Of two check-ins the more careful readiness counts, and all that either names."""
        self.readiness = max((self.readiness or "usual", check_in["readiness"]), key=CARE.index)
        self.today += check_in.get("today", [])

    def shown_for(self, slot_id):
        """What was proposed for a slot; None where it rested or nothing was shown."""
        for proposal in (self.shown or {}).get("slots", []):
            if proposal["slot"] == slot_id:
                return proposal["outcome"] if proposal["outcome"]["do"] == "train" else None
        return None

    def shown_level(self, ladder_id):
        """The highest level that was proposed for a ladder; None if none was."""
        slots = [p for p in (self.shown or {}).get("slots", []) if p["ladder"] == ladder_id]
        return max((p["outcome"]["level"] for p in slots if p["outcome"]["do"] == "train"), default=None)


class Log:
    """What the records say after corrections and withdrawals."""

    def __init__(self, lines):
        self.kit = {}
        self.lines = lines
        self.stages, self.masses, self.tens, self.overrides = [], [], [], []
        self.restrictions, self.clearances, self.intakes = [], [], []
        runs = {}
        for record, says in settle(lines):
            payload, when = says[-1], instant(record)
            kind = payload["kind"]
            if kind == "kit_changed":
                self.kit = payload["kit"]
            elif kind == "stage_changed":
                self.stages.append((when, payload["stage"]))
            elif kind == "body_mass":
                self.masses.append((when, kit.kilograms(payload["mass"])))
            elif kind == "ten_reps":
                self.tens.append((when, payload["variant"], payload["load"]))
            elif kind == "override":
                self.overrides.append((when, payload["start"]))
            elif kind == "restriction":
                self.restrictions.append((payload["what"], payload["until"]))
            elif kind == "clearance":
                self.clearances.append((when, payload))
            elif kind == "screening":
                self.intakes.append((when, payload))
            elif payload.get("run"):
                run = runs.setdefault(payload["run"], Run(payload["run"], when))
                run.started = min(run.started, when)
                if kind == "session_started":
                    run.day = date.fromisoformat(payload["day"])
                    run.planned = payload["programme"], payload["session"]
                elif kind == "check_in":
                    for said in says:
                        run.hear(said)
                elif kind == "option_chosen":
                    run.chosen.append((payload["slot"], payload["variant"]))
                elif kind == "proposal_shown" and run.shown is None:
                    run.shown = payload["result"]
                elif kind == "set_done":
                    run.sets.append(min(says, key=strictness))
        self.runs = sorted(runs.values(), key=lambda run: (run.started, run.id))
        for run in self.runs:
            known = [kg for when, kg in self.masses if when <= run.started]
            run.body_kg = known[-1] if known else None


def settle(lines):
    """Records that hold, each with what it says now, in the engine's order: session start, device, number.

    A correction speaks in the place of what it corrects; two of one record speak side by side. What is withdrawn is gone.
    """
    starts = {}
    for record in lines:
        run = run_of(record["payload"])
        if run:
            starts[run] = min(starts.get(run, instant(record)), instant(record))

    def place(record):
        return starts.get(run_of(record["payload"]), instant(record)), record["device"], record["seq"]

    lines = sorted(lines, key=place)
    withdrawn = {r["payload"]["target"] for r in lines if r["payload"]["kind"] == "withdrawal"}
    corrections = {}
    for record in lines:
        if record["payload"]["kind"] == "correction" and record["id"] not in withdrawn:
            corrections.setdefault(record["payload"]["target"], []).append(record)

    def says(record, payload):
        """What holds of a record: the ends of the tree of its corrections, in the order of writing."""
        newer = corrections.get(record["id"], [])
        if not newer:
            return [((instant(record), record["device"], record["seq"]), payload)]
        return [leaf for c in newer for leaf in says(c, c["payload"]["instead"])]

    kept = []
    for record in lines:
        if record["payload"]["kind"] not in ("correction", "withdrawal") and record["id"] not in withdrawn:
            leaves = sorted(says(record, record["payload"]), key=lambda leaf: leaf[0])
            kept.append((record, [payload for _, payload in leaves]))
    return kept


def run_of(payload):
    """The session that a record belongs to. The answer of the next morning stands for itself."""
    if payload["kind"] == "correction":
        return run_of(payload["instead"])
    return None if payload["kind"] == "next_day_answer" else payload.get("run")


def instant(record):
    """When it was written."""
    return datetime.fromisoformat(record["at"])


def strictness(s):
    """Orders what two corrections say of one set, the stricter first: stopped, fewer reps to failure, the lighter load."""
    if s.get("stopped"):
        first = 0
    else:
        first = 1 + s["reps"] + (s.get("seconds") or 0) + (s["reserve"]["reps"] if s.get("reserve") else 0)
    open_ended = bool(s.get("reserve")) and s["reserve"]["said"] == "at_least"
    return first, open_ended, int(kit.external({"loading": {"stretch": 1.0}}, s["load"]) * 1000)
