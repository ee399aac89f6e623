"""Every number of the model, typed in by hand from the design and its page of sources, not read from the rule pack.

The mark says how a value was come by: [o] read in the original, [s] second-hand, [d] derived, [p] common practice, "chosen"
where there is no source at all.
"""

import math

# Reports of effort: the SD of reps to failure is S0 + S1 x reps in reserve. Refalo MC et al. 2024 [o], Zourdos MC et al.
# 2021 [o]; derived [d].
S0 = 1.0
S1 = 0.30
# How a day differs from usual, in ln load: CV of the maximum 4.2 %, Grgic J et al. 2020 [s].
SIGMA_D = 0.042
# Drift of b, in squared ln load per day: fitted to an open series of one-rep maxima (CC0) [d].
T_DAYS = 5.3
Q0 = 3.3e-3
Q_INF = 9.3e-5
# Drift of c, in squared reps per day; reps lost per earlier set; the band that c is kept in: chosen.
Q_C = 1 / 7
PHI = 0.5
C_MIN = 17.0
C_MAX = 100.0
# SD of c between people, Nuzzo JL et al. 2024 [d]; SD of b at the start and the two reps of margin: chosen.
SD_C = 10.0
SD_B = 0.3
START_MARGIN = 2.0

# The test of a load: chosen and tried on paper.
SLACK = 0.5
ALPHA = 0.15

# At most a tenth more than what was done as planned in four weeks: Ratamess NA et al. (ACSM) 2009 [o] gives 2-10 %.
STEP = 0.10
STEP_DAYS = 28
# A bigger step of the kit: two exposures, or one that is this much over the target. Two-for-two [s], adapted [p].
BIG_STEP_EXPOSURES = 2
BIG_STEP_ALONE = 1.5
# After a lay-off, days and share of the last load [p]; McMaster DT et al. 2013 [s] for the loss itself.
LAY_OFF = ((28, 0.8), (14, 0.9))
LAY_OFF_MORE_RESERVE = 1.0
# A gap in the kit, a level up, and the reps beyond the range [p].
GAP_OVER_TARGET = 3.0
MORE_REPS = 4
UP_EXPOSURES = 2
UP_OVER_TARGET = 1.0
# Finding sets of a first exposure, and the week after birth from which there are any [p].
FINDING_SETS = 2
FINDING_FROM_WEEK = 12
# First time with a variant whose group is known: at most this share of the load last held in the group [p].
SHARE_OF_GROUP = 0.9
# A step that the model cannot foresee: exposures running at the top, and so much more in reserve than the target [p].
UNFORESEEN_EXPOSURES = 2
UNFORESEEN_OVER_TARGET = 2.0
# Such a step is to no more than so many times the load, by region, and by no more than this share of her body mass [p].
UNFORESEEN_MOST_TIMES = 1.5
UNFORESEEN_MOST_TIMES_LOWER = 2.0
UNFORESEEN_MOST_OF_BODY = 0.1
# The steps of what is counted alone [p].
STEP_REPS = 1
STEP_SECONDS = 5

# Body mass where none is known, in kg [p].
ASSUMED_BODY_KG = 70.0
# One pound in kg, exactly, NIST SP 811 [s]; standard gravity in m/s2 [m].
KG_PER_LB = 0.45359237
G = 9.80665

SQRT_2PI = math.sqrt(2 * math.pi)

# Weeks after a birth with nothing held, weeks with breathing alone, and the week from which nothing is done flat on the back
# while pregnant [p].
UNLOADED_WEEKS = 6
BREATHING_ONLY_WEEKS = 2
SUPINE_UNTIL_WEEK = 20
# Beyond so many reps, or so much in reserve, a set is no evidence; a birth dated anew within so many days is the same: chosen.
MOST_REPS = 60
MOST_RESERVE = 10
SAME_BIRTH_DAYS = 28
# What is moved is above zero, also where a band carries more than the share of body mass, in kg: chosen.
LEAST_EFFECTIVE_KG = 1.0

# What goes on while all else rests or is eased.
GOES_ON = ("breathing", "pelvic_floor", "mobility")
# Effort by stage [p]: stage, from week, before week, least target, the same for somebody trained, least floor, most sets.
EFFORT = (
    ("pregnant", 0, 28, 3, 2, 1, None),
    ("pregnant", 28, None, 4, 3, 1, None),
    ("postpartum", 0, 2, 5, None, 3, 2),
    ("postpartum", 2, 6, 5, None, 3, 2),
    ("postpartum", 6, 12, 5, 4, 3, None),
    ("postpartum", 12, 26, 3, 3, 1, None),
    ("postpartum", 26, 52, 3, 2, 1, None),
    ("postpartum", 52, None, 3, 1, 0, None),
    ("after_loss", 0, 6, 5, None, 3, 2),
    ("after_loss", 6, None, 3, 2, 1, None),
    ("neither", 0, None, 3, 1, 0, None),
)
FLOOR_BELOW_TARGET = 2.0
PREGNANT_FLOOR = 1.0
CAREFUL_WEEKS = 12
# First time on a ladder after a birth or a loss; breath that is not to be held [p].
FRESH_RESERVE = 5.0
BREATH_RESERVE = 3.0
# Somebody who never trained; back after an illness; a tired and an unwell day; a light week [p].
LEARN_SESSIONS, LEARN_RESERVE, LEARN_SETS = 2, 5.0, 2
ILLNESS_SESSIONS, ILLNESS_MORE_RESERVE, ILLNESS_SETS = 2, 2.0, 2
TIRED_MORE_RESERVE = 1.0
UNWELL_MORE_RESERVE, UNWELL_SETS = 2.0, 1
LIGHT_SHARE, LIGHT_MORE_RESERVE = 0.5, 1.0
# In mid-session: chance of falling under the floor from which on a lighter load is offered; how far a step of finding goes,
# and how far to the next load of the kit, by region; what has to be left over the target for one [p].
LIGHTER_CHANCE = 0.5
FINDING_TIMES, FINDING_TIMES_LOWER = 1.25, 1.5
FINDING_NEXT, FINDING_NEXT_LOWER = 1.5, 2.0
FINDING_ROOM = 1.0
