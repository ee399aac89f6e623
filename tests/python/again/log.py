"""A log read in the engine's order (4): corrections and withdrawals resolved, sessions in the order of their start."""

from datetime import date, datetime


class Run:
    """A session that was trained: its day and its sets in order, each a payload `set_done`."""

    def __init__(self, ident, day, started):
        self.id, self.day, self.started = ident, day, started
        self.sets = []
        self.marks = []


class Log:
    """What the records say after corrections and withdrawals."""

    def __init__(self, lines):
        kept = settle(lines)
        self.kit = {}
        self.stages = []
        self.masses = []
        self.tens = []
        self.overrides = []
        self.runs = []
        by_id = {}
        for when, payload in kept:
            kind = payload["kind"]
            if kind == "session_started":
                run = Run(payload["run"], date.fromisoformat(payload["day"]), when)
                by_id.setdefault(run.id, run)
        self.runs = sorted(by_id.values(), key=lambda r: r.started)
        for when, payload in kept:
            kind = payload["kind"]
            if kind == "kit_changed":
                self.kit = payload["kit"]
            elif kind == "stage_changed":
                self.stages.append((when, payload["stage"]))
            elif kind == "body_mass":
                self.masses.append((when, payload["mass"]))
            elif kind == "ten_reps":
                self.tens.append((when, payload["variant"], payload["load"]))
            elif kind == "override":
                self.overrides.append((when, payload["start"]))
            elif kind == "set_done" and payload["run"] in by_id:
                by_id[payload["run"]].sets.append(payload)


def settle(lines):
    """Records that hold, as (time, payload) in the engine's order: by device and number within a session.

    A correction speaks in the place of what it corrects. Of two corrections of one record the stricter holds. What is
    withdrawn is gone.
    """
    lines = sorted(lines, key=lambda r: (instant(r), r["device"], r["seq"]))
    withdrawn = {r["payload"]["target"] for r in lines if r["payload"]["kind"] == "withdrawal"}
    corrections = {}
    for record in lines:
        if record["payload"]["kind"] == "correction" and record["id"] not in withdrawn:
            corrections.setdefault(record["payload"]["target"], []).append(record)

    def says(record_id, payload):
        newer = corrections.get(record_id, [])
        if not newer:
            return payload
        return strictest([says(c["id"], c["payload"]["instead"]) for c in newer])

    kept = []
    for record in lines:
        if record["payload"]["kind"] in ("correction", "withdrawal") or record["id"] in withdrawn:
            continue
        kept.append((instant(record), says(record["id"], record["payload"]), record))
    started = {
        p["run"]: when for when, p, _ in kept if p["kind"] == "session_started"
    }
    kept.sort(key=lambda k: (started.get(k[1].get("run"), k[0]), k[2]["device"], k[2]["seq"]))
    return [(when, payload) for when, payload, _ in kept]


def instant(record):
    """When it was written."""
    return datetime.fromisoformat(record["at"])


def strictest(payloads):
    """The strictest of what several corrections say of one record: for a set, the fewest reps to failure."""

    def reps_to_failure(payload):
        reserve = payload.get("reserve")
        return payload.get("reps", 0) + (reserve["reps"] if reserve else 0)

    return min(payloads, key=reps_to_failure)
