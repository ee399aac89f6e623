"""Works out again, with scipy and pandas, what the engine's `monitor` worked out.

    cargo run -p newel-engine --example monitor_cases > cases.jsonl
    python tests/python/check_monitor.py cases.jsonl

Reads standard input if no file is named. Exit status 1 if anything differs, or if a kind of case is missing.
Needs scipy, numpy and pandas.
"""

import json
import math
import sys
from fractions import Fraction

import pandas as pd
from scipy import stats

# Relative, or absolute below 1.
TOLERANCE = 1e-10
# So many cases of each kind there have to be: an empty file is no agreement.
LEAST = {"jeffreys": 2000, "fisher": 2000, "series": 20}

differences = []


def near(what, ours, theirs, case):
    """Notes a difference; None stands for "undefined"."""
    if ours is None or theirs is None:
        if ours is not theirs:
            differences.append((what, ours, theirs, case))
        return
    if not abs(ours - theirs) <= TOLERANCE * max(1.0, abs(theirs)):
        differences.append((what, ours, theirs, case))


def relative(what, ours, theirs, case):
    """As `near`, relative however small the number is."""
    if not abs(ours - theirs) <= TOLERANCE * abs(theirs):
        differences.append((what, ours, theirs, case))


def jeffreys(case):
    x, n = case["x"], case["n"]
    tail = (1 - case["confidence"]) / 2
    beta = stats.beta(x + 0.5, n - x + 0.5)
    near("low", case["low"], 0.0 if x == 0 else beta.ppf(tail), case)
    near("high", case["high"], 1.0 if x == n else beta.isf(tail), case)
    near("cdf", case["cdf"], beta.cdf(case["at"]), case)


def exact_fisher(a, b, c, d):
    """Two-sided, in whole numbers: all tables with these sums that are no likelier."""
    here, rest, marked = a + b, c + d, a + c
    ways = lambda k: math.comb(here, k) * math.comb(rest, marked - k)
    possible = range(max(0, marked - rest), min(here, marked) + 1)
    mine = ways(a)
    return float(Fraction(sum(w for w in map(ways, possible) if w <= mine), math.comb(here + rest, marked)))


def fisher(case):
    a, b, c, d = case["table"]
    relative("p in whole numbers", case["p"], exact_fisher(a, b, c, d), case)
    # scipy gives 1 (or none) where a row or a column is empty: there is one table alone.
    theirs = stats.fisher_exact([[a, b], [c, d]]).pvalue
    if math.isnan(theirs):
        theirs = 1.0
    relative("p by scipy", case["p"], theirs, case)


def series(case):
    sessions = pd.DataFrame(case["sessions"])
    sessions["day"] = pd.to_datetime(sessions["day"])
    sessions["load"] = sessions["effort"] * sessions["minutes"]
    days = pd.date_range(sessions["day"].min(), case["on"], freq="D")
    by_day = sessions.groupby("day")
    # Days without a session are days of rest.
    load = by_day["load"].sum().reindex(days, fill_value=0).astype(float)
    minutes = by_day["minutes"].sum().reindex(days, fill_value=0)
    trained = by_day.size().reindex(days, fill_value=0)
    week = load.rolling(7)
    sums, means, sds = week.sum(), week.mean(), week.std(ddof=1)
    if len(case["weeks"]) < 12:
        differences.append(("weeks", len(case["weeks"]), 12, case["on"]))
    for shown in case["weeks"]:
        to = pd.Timestamp(shown["to"])
        if not shown["whole"]:
            differences.append(("whole", False, True, shown))
            continue
        # One window by itself, and the rolling SD beside it more loosely: pandas drags rounding along from window to
        # window, so that seven days of rest after a hard month have an SD of some millionths.
        window = load[pd.Timestamp(shown["from"]) : to]
        sd = window.std(ddof=1)
        alike = window.nunique() == 1
        near("sum", shown["sum"], sums[to], shown)
        near("mean", shown["mean"], means[to], shown)
        near("sd", shown["sd"], sd, shown)
        if abs(sds[to] - sd) > 1e-6 * load.max():
            differences.append(("rolling sd", sd, sds[to], shown))
        monotony = None if alike else window.mean() / sd
        near("monotony", shown["monotony"], monotony, shown)
        near("strain", shown["strain"], None if alike else window.sum() * monotony, shown)
        near("monotony as shown", shown["shown"][0], monotony, shown)
        near("strain as shown", shown["shown"][1], None if alike else window.sum() * monotony, shown)
        near("minutes", shown["minutes"], int(minutes[window.index].sum()), shown)
        near("days", shown["days"], int((trained[window.index] > 0).sum()), shown)
        near("sessions", shown["sessions"], int(trained[window.index].sum()), shown)


def main():
    counts = dict.fromkeys(LEAST, 0)
    check = {"jeffreys": jeffreys, "fisher": fisher, "series": series}
    source = open(sys.argv[1], encoding="utf-8") if len(sys.argv) > 1 else sys.stdin
    with source:
        for line in source:
            case = json.loads(line)
            counts[case["of"]] += 1
            check[case["of"]](case)
    for kind, least in LEAST.items():
        print(f"{kind}: {counts[kind]} cases")
        if counts[kind] < least:
            differences.append((kind, counts[kind], f"at least {least}", ""))
    for what, ours, theirs, case in differences[:20]:
        print(f"{what}: {ours!r} for {theirs!r} in {case}", file=sys.stderr)
    print(f"{len(differences)} differences")
    return 1 if differences else 0


if __name__ == "__main__":
    sys.exit(main())
