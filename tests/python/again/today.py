"""A day and what was said of it: readiness, illness, kit, a child in the room, the week, and whether she still learns."""

from . import constants as k


class Today:
    """The day that is asked about, in the run in hand if there is one."""

    def __init__(self, case, day, run_id=None):
        log = case.log
        self.case, self.day = case, day
        self.run = next((r for r in log.runs if r.id == run_id), None)
        self.things = set(self.run.today) if self.run else set()
        self.readiness = self.run.readiness if self.run else None
        self.light = case.weeks.is_light(self.run)
        intake = log.intakes[-1][1] if log.intakes else {}
        before = {r.id for r in log.runs if r.sets and r.day < day}
        self.learning = bool(intake.get("never")) and len(before) < k.LEARN_SESSIONS
        self.after_illness = "after_illness" in self.things or self.is_back_since_last()
        # Frozen for a session; between sessions as last recorded.
        known = self.run.body_kg if self.run else (log.masses[-1][1] if log.masses else None)
        self.body_kg = k.ASSUMED_BODY_KG if known is None else known

    def is_back_since_last(self):
        """Two sessions are easy: the one that is the first after an illness, and the next one that is trained. What was said
        before one that was not trained holds for the next."""
        earlier = [r for r in self.case.log.runs if self.run is None or (r is not self.run and r.started <= self.run.started)]
        trained = 0
        for run in reversed(earlier):
            trained += bool(run.sets)
            if trained >= k.ILLNESS_SESSIONS:
                return False
            if "after_illness" in run.today:
                return True
        return False
