"""The weeks of a programme: which one it is, what is trained in it, and with which doses (docs/engine.md, "Weeks")."""


class Weeks:
    """A programme and how far it has come: a week has gone by when its sessions are trained."""

    def __init__(self, programme, log):
        self.programme, self.log = programme, log
        self.phases = programme.get("phases", [])

    def now(self, run=None):
        """The week, from 1, that a session belongs to: that of a run as it began, else the one that comes next."""
        trained = 0
        for other in self.log.runs:
            before = run is None or (other is not run and other.started <= run.started)
            if before and other.sets and other.planned and other.planned[0] == self.programme["id"]:
                trained += 1
        return trained // max(self.programme["per_week"], 1) + 1

    def at(self, week):
        """(phase or None, week of the phase, light) of a week. Past the end the last one goes on, and is not light."""
        if not self.phases:
            end = self.programme.get("weeks")
            if end is not None and week > end:
                return None, end, False
            return None, week, week in self.programme.get("light_weeks", [])
        for phase in self.phases:
            if week <= phase["weeks"]:
                return phase, week, week in phase.get("light_weeks", [])
            week -= phase["weeks"]
        return self.phases[-1], self.phases[-1]["weeks"], False

    def is_light(self, run=None):
        return self.at(self.now(run))[2]

    def session(self, ident, run=None):
        """The blocks of a planned session with the doses of the week; of another phase, of its week that is nearest."""
        session = next(s for s in self.programme["sessions"] if s["id"] == ident)
        week, first = self.now(run), 1
        for phase in self.phases:
            if phase["id"] == session.get("phase"):
                week = min(max(week, first), first + phase["weeks"] - 1)
                break
            first += phase["weeks"]
        return dosed(session, self.at(week)[1])

    def next_id(self):
        """The session after the last that was trained, among those of the week's phase; its first where that is none of them."""
        phase = self.at(self.now())[0]
        ids = [s["id"] for s in self.programme["sessions"] if s.get("phase") == (phase and phase["id"])]
        of_it = [r.planned[1] for r in self.log.runs if r.sets and r.planned and r.planned[0] == self.programme["id"]]
        if not of_it or of_it[-1] not in ids:
            return ids[0]
        return ids[(ids.index(of_it[-1]) + 1) % len(ids)]


def dosed(session, week):
    """Blocks with the rounds and doses that a week of the phase asks for."""
    blocks = []
    for block in session["blocks"]:
        own = next((w for w in block.get("by_week", []) if w["week"] == week), block)
        slots = []
        for slot in block["slots"]:
            told = next((w for w in slot.get("by_week", []) if w["week"] == week), slot)
            slots.append({**slot, "dose": told["dose"]})
        blocks.append({**block, "rounds": own["rounds"], "slots": slots})
    return blocks
