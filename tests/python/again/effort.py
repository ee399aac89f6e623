"""How hard today: reserve aimed at, its floor, and the number of sets (docs/rules.md).

What asks for a least comes first, then what asks for more on top of it: of two readings the safer.
"""

import math

from . import constants as k


class Effort:
    """Target, floor, sets, and whether alpha binds the reps, too."""

    def __init__(self, target, floor, sets, careful):
        self.target, self.floor, self.sets, self.careful = target, floor, sets, careful


def effort(grounds, block, slot):
    """The effort of a slot today."""
    today, past = grounds.today, grounds.case.past
    goes_on = grounds.ladder["pattern"] in k.GOES_ON
    row = stage_row(grounds)
    _, _, _, least, trained, least_floor, most_sets = row
    target = float(max(slot["dose"]["target_rir"], trained if grounds.trained() and trained is not None else least))
    sets = block["rounds"] if most_sets is None else min(block["rounds"], most_sets)
    exposures = past.exposures.get(grounds.ladder["id"])
    if not exposures and past.fresh and grounds.weeks_after() is not None:
        target = max(target, k.FRESH_RESERVE)
    target = max(target, grounds.least_reserve())
    if today.learning and not goes_on:
        target, sets = max(target, k.LEARN_RESERVE), min(sets, k.LEARN_SETS)
    if today.light and not goes_on:
        target += k.LIGHT_MORE_RESERVE
        sets = max(math.ceil(sets * k.LIGHT_SHARE), 1)
    target += max((c.extra_reserve for c in grounds.conditions()), default=0.0)
    if today.after_illness and not goes_on:
        target += k.ILLNESS_MORE_RESERVE
        sets = min(sets, k.ILLNESS_SETS)
    if today.readiness == "tired" and not goes_on:
        target += k.TIRED_MORE_RESERVE
    if today.readiness == "unwell":
        sets = min(sets, k.UNWELL_SETS)
        if not goes_on:
            target += k.UNWELL_MORE_RESERVE
    floor = max(target - k.FLOOR_BELOW_TARGET, 0.0, least_floor)
    pregnant = grounds.stage["stage"] == "pregnant"
    if pregnant:
        floor = max(floor, k.PREGNANT_FLOOR)
    weeks = grounds.weeks_after()
    return Effort(target, floor, sets, pregnant or (weeks is not None and weeks < k.CAREFUL_WEEKS))


def stage_row(grounds):
    """The row of the table of effort by stage and week."""
    stage = grounds.stage["stage"]
    week = grounds.weeks_pregnant() if stage == "pregnant" else grounds.weeks_after()
    week = week or 0
    return next(r for r in k.EFFORT if r[0] == stage and r[1] <= week and (r[2] is None or week < r[2]))
