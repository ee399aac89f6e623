"""Runs random logs through both implementations and compares: every strength state to 1e-9, and exactly every effort, every
proposal, the session that comes next, and what each set in hand asks for.

    python tests/python/second.py EXPORTER [--logs 10000] [--seed 1] [--show 5]

EXPORTER is the program `cases` of the tests' package. Ends with 1 where anything disagrees.
"""

import argparse
import json
import multiprocessing
import subprocess
import sys
from collections import Counter
from datetime import date
from itertools import pairwise
from pathlib import Path

from again.case import Case
from again.catalogue import Catalogue
from again.today import Today
from again.weeks import dosed

CATALOGUE = Path(__file__).parents[2] / "crates/engine/data/catalogue.json"
# States agree to this, absolute or relative, whichever is wider.
WITHIN = 1e-9
# What is compared of a proposal.
COMPARED = ("level", "variant", "load", "sets", "amount", "purpose", "reserve")
# Ten thousand logs hold at least so many of each: an agreement on logs where nothing happens is none.
LEAST = {
    "states": 80_000,
    "efforts": 50_000,
    "proposals": 50_000,
    "turns": 50_000,
    **{f"reason {name}": 20 for name in (
        "after-illness", "big-step", "body-only", "child-near", "coach-set", "coach-start", "condition-reserve", "condition-ruled-out",
        "ease-in", "fresh-start", "kit-away", "kit-gap", "kit-lacks", "lay-off", "learn-first", "level-down-load", "level-up", "light-week",
        "load-down", "load-same", "load-up", "nothing-lighter", "position-stage", "restricted", "restricted-load", "restricted-reserve",
        "rests", "stage-effort", "stage-sets", "stage-unloaded", "start-answer", "start-coach", "start-group", "start-lightest",
        "step-bound", "still-finding", "tired-today", "unforeseen",
    )},
    **{f"logs with {name}": 300 for name in (
        "a correction", "a withdrawal", "two devices", "a birth or a loss", "one load in the kit", "a year away", "an open end throughout",
        "two variants in turn", "timed sets", "one side at a time", "a stopped set", "no effort answer", "a finisher", "body mass unknown",
        "a pair", "a barbell", "bands", "nothing held", "phases", "light weeks", "rounds by week", "doses by week", "a warm-up", "a cool-down",
        "a session of another programme", "eased sets with a weight", "somebody who never trained", "sets to learn", "sets to find",
        "two check-ins", "anaemia", "a condition that waits", "a condition that rules out", "a clearance that ends", "a least reserve",
        "a most load", "a position or a caution ruled out", "moves of the coach's own", "ladders of the coach's own", "her own moves trained",
        "a retired move", "a place kept below", "a place kept above",
    )},
    **{f"asks {name}": 200 for name in (
        "while training waits", "with a light week", "with another week's dose", "with a later phase", "with somebody who learns",
        "with an easy session after illness", "with the second easy session", "with a tired day", "with an unwell day",
        "with no kit at hand", "with a child near",
    )},
    **{f"proposals to {name}": 500 for name in ("work", "find", "learn", "finisher", "ease")},
    # Where a rule of these made a difference.
    **{f"proposals where {name}": 20 for name in (
        "a light week keeps the level", "a light week keeps the load", "a light week keeps the help", "a light week keeps the reps",
        "a light week keeps the count", "a learner who did it before",
    )},
    "proposals where a light week finds nothing light enough at the level": 5,
    **{f"turns {name}": 200 for name in (
        "to step up", "with a lighter load", "with a load that she made lighter", "with an answer just given", "with another option",
        "eased with a weight", "to nothing", "with fewer reps", "with more reps",
    )},
}
# Logs that one worker asks the exporter for at a time.
CHUNK = 250


def close(ours, theirs):
    """True where two numbers agree to nine digits."""
    return abs(ours - theirs) <= WITHIN * max(1.0, abs(theirs))


def compare(line, built_in):
    """Disagreements of one log, and how many of each thing were compared."""
    whole = json.loads(line)
    catalogue = built_in.with_own(whole["own"])
    case = Case(whole, catalogue, every_set=True)
    wrong, counts = [], Counter(logs=1) + adverse(whole, catalogue, case)
    theirs = {(s["run"], s["sets"]): s["state"] for s in whole["states"]}
    ours = case.states()
    counts["states"] += len(theirs)
    for key in sorted(theirs.keys() | ours.keys()):
        told, here = theirs.get(key, "nothing"), ours.get(key, "nothing")
        if told != here and (not (told and here) or not all(map(close, here, told))):
            wrong.append(("state", key, here, told))
    cases = {len(whole["records"]): case}

    def at(known):
        if known not in cases:
            cases[known] = Case(whole, catalogue, known)
        return cases[known]

    for ask in whole["asks"]:
        wrong += compare_ask(ask, at(ask["known"]), counts)
    for told in whole["turns"]:
        wrong += compare_turn(told, at(told["known"]), counts)
    return whole["number"], wrong, counts


def compare_ask(ask, case, counts):
    """One question: which session comes next, whether she trains, effort and proposal of each slot."""
    known = ask["known"]
    if ask.get("next") and case.weeks.next_id() != ask["session"]:
        return [("session", (known, None), case.weeks.next_id(), ask["session"])]
    proposals = case.proposals(date.fromisoformat(ask["day"]), ask["session"], ask["run"])
    if (proposals is not None) != ask["open"]:
        return [("gate", (known, None), proposals is not None, ask["open"])]
    if proposals is None:
        counts["asks while training waits"] += 1
        return []
    counts.update(f"asks with {name}" for name, true in day_of(case, ask).items() if true)
    wrong = []
    for effort in ask["efforts"]:
        counts["efforts"] += 1
        here = vars(proposals[effort["slot"]][0])
        told = {k: effort[k] for k in ("target", "floor", "sets", "careful")}
        if here != told:
            wrong.append(("effort", (known, effort["slot"]), here, told))
    for slot in ask["says"]:
        counts["proposals"] += 1
        counts.update(f"reason {reason}" for reason in (["rests"] if slot.get("rests") else slot["reasons"]))
        _, here, notes = proposals[slot["slot"]]
        counts.update(f"proposals where {note}" for note in notes)
        told = None if slot.get("rests") else {k: slot[k] for k in COMPARED}
        counts.update([f"proposals to {told['purpose']}"] if told else [])
        if here != told:
            wrong.append(("proposal", (known, slot["slot"]), here, told, slot["reasons"]))
    return wrong


def day_of(case, ask):
    """What the days that are asked about hold of what eases or bars."""
    today = Today(case, date.fromisoformat(ask["day"]), ask["run"])
    return {
        "a light week": today.light,
        "a later phase": case.weeks.at(case.weeks.now(today.run))[0] not in (None, *case.weeks.phases[:1]),
        "somebody who learns": today.learning,
        "an easy session after illness": today.after_illness,
        "the second easy session": today.after_illness and "after_illness" not in today.things,
        "a tired day": today.readiness == "tired",
        "an unwell day": today.readiness == "unwell",
        "no kit at hand": "no_kit" in today.things,
        "a child near": "child_near" in today.things,
        "another week's dose": case.weeks.session(ask["session"], today.run) != dosed_first(case, ask),
    }


def dosed_first(case, ask):
    """The session as it stands without any week."""
    return dosed(next(s for s in case.weeks.programme["sessions"] if s["id"] == ask["session"]), None)


def compare_turn(told, case, counts):
    """One set in hand."""
    says = told["says"]
    here, notes = case.turn(told)
    counts["turns"] += 1
    counts.update(f"turns {note}" for note in notes)
    counts["turns to nothing"] += says is None
    return [] if here == says else [("turn", (told["known"], told["slot"]), here, says)]


def adverse(whole, catalogue, case):
    """What a log holds of the cases that are easily got wrong."""
    payloads = [r["payload"] for r in whole["records"]]
    kinds = {p["kind"] for p in payloads}
    sets = [p for p in payloads if p["kind"] == "set_done"]
    makes = {s["load"]["make"] for s in sets}
    days = [date.fromisoformat(p["day"]) for p in payloads if p["kind"] == "session_started"]
    days.append(date.fromisoformat(whole["asks"][-1]["day"]))
    bells = [p["kit"]["dumbbells"] for p in payloads if p["kind"] == "kit_changed"]
    stages = [p["stage"]["stage"] for p in payloads if p["kind"] == "stage_changed"]
    variants = [s["variant"] for s in sets if s["slot"] == "slot-0"]
    turns = [a for a, b in pairwise(variants) if a != b]
    said = [s["reserve"] for s in sets if s["reserve"]]
    restrictions = {p["what"]["rules_out"] for p in payloads if p["kind"] == "restriction"}
    screened = [p for p in payloads if p["kind"] == "screening"]
    named = {c for p in screened for c in p["conditions"]}
    purposes = {s["purpose"] for s in sets}
    plan = whole["programme"]
    blocks = [b for s in plan["sessions"] for b in s["blocks"]]
    forms = {b["form"] for b in blocks}
    mine = [p["payload"]["id"] for p in whole["own"] if p["payload"]["kind"] == "own_variant"]
    holds = {
        "phases": bool(plan.get("phases")),
        "light weeks": bool(plan.get("light_weeks")) or any(p.get("light_weeks") for p in plan.get("phases", [])),
        "rounds by week": any(b.get("by_week") for b in blocks),
        "doses by week": any(s.get("by_week") for b in blocks for s in b["slots"]),
        "a warm-up": "warm_up" in forms,
        "a cool-down": "cool_down" in forms,
        "a session of another programme": any(p.get("programme", plan["id"]) != plan["id"] for p in payloads),
        "eased sets with a weight": any(s["purpose"] == "ease" and s["load"]["make"] != "nothing" for s in sets),
        "somebody who never trained": any(p.get("never") for p in screened),
        "sets to learn": "learn" in purposes,
        "sets to find": "find" in purposes,
        "two check-ins": any(n > 1 for n in Counter(p["run"] for p in payloads if p["kind"] == "check_in").values()),
        "anaemia": "anaemia" in named,
        "a condition that waits": bool(named & {"anaemia-felt", "twins", "placenta-praevia", "thyroid-unsettled"}),
        "a condition that rules out": bool(named & {"wrist-pain", "shoulder-pain", "girdle-pain", "prolapse", "pelvic-floor-tense"}),
        "a clearance that ends": any(p["kind"] == "clearance" and p["until"] for p in payloads),
        "a least reserve": bool(restrictions & {"reserve_below", "breath_holding"}),
        "a most load": "load_above" in restrictions,
        "a position or a caution ruled out": bool(restrictions & {"position", "caution"}),
        "moves of the coach's own": bool(mine),
        "her own moves trained": any(s["variant"] in mine for s in sets),
        "ladders of the coach's own": any(p["payload"]["kind"] == "own_ladder" for p in whole["own"]),
        "a retired move": any(v["retired"] for _, _, v in catalogue.places.values() if v["id"] in mine),
        "a place kept below": case.past.kept["below"] > 0,
        "a place kept above": case.past.kept["above"] > 0,
        "a correction": "correction" in kinds,
        "a withdrawal": "withdrawal" in kinds,
        "two devices": len({r["device"] for r in whole["records"]}) > 1,
        "a birth or a loss": any(stage in ("postpartum", "after_loss") for stage in stages[1:]),
        "one load in the kit": any(len(b) == 1 for b in bells),
        "a year away": any((b - a).days >= 200 for a, b in pairwise(days)),
        "an open end throughout": len(said) >= 4 and all(r["said"] == "at_least" for r in said),
        "two variants in turn": len(turns) >= 4,
        "timed sets": any(s["seconds"] is not None for s in sets),
        "one side at a time": any(s["side"] for s in sets),
        "a stopped set": any(s["stopped"] for s in sets),
        "no effort answer": any(s["reserve"] is None for s in sets),
        "a finisher": any(s["purpose"] == "finisher" for s in sets),
        "body mass unknown": "body_mass" not in kinds,
        "a pair": "pair" in makes,
        "a barbell": "barbell" in makes,
        "bands": bool(makes & {"bands", "assist"}),
        "nothing held": "nothing" in makes,
    }
    return Counter(f"logs with {name}" for name, true in holds.items() if true)


def work(arguments):
    """One worker's chunk."""
    exporter, seed, first, logs = arguments
    catalogue = Catalogue.read(CATALOGUE)
    command = [exporter, "--seed", str(seed), "--first", str(first), "--logs", str(logs)]
    found, counts = [], Counter()
    with subprocess.Popen(command, stdout=subprocess.PIPE, text=True, encoding="utf-8") as run:
        for line in run.stdout:
            number, wrong, more = compare(line, catalogue)
            counts += more
            if wrong:
                found.append((number, wrong))
    if run.returncode:
        raise SystemExit(f"the exporter ended with {run.returncode}")
    return found, counts


def main():
    asks = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    asks.add_argument("exporter")
    asks.add_argument("--logs", type=int, default=10_000)
    asks.add_argument("--first", type=int, default=0)
    asks.add_argument("--seed", type=int, default=1)
    asks.add_argument("--show", type=int, default=5)
    asked = asks.parse_args()
    end = asked.first + asked.logs
    chunks = [(asked.exporter, asked.seed, n, min(CHUNK, end - n)) for n in range(asked.first, end, CHUNK)]
    found, counts = [], Counter()
    with multiprocessing.Pool() as pool:
        for more, counted in pool.imap_unordered(work, chunks):
            found += more
            counts += counted
    kinds = Counter(kind for _, wrong in found for kind, *_ in wrong)
    for number, wrong in sorted(found)[: asked.show]:
        print(f"log {number} of seed {asked.seed}:")
        for kind, at, here, told, *more in wrong[:3]:
            print(f"  {kind} {at}\n    python {here}\n    engine {told} {more or ''}")
    for kind, least in LEAST.items():
        print(f"  {counts[kind]:>8} {kind} (of {least:_} in 10_000 logs at the least)")
    print(
        f"second implementation: {counts['logs']} logs, {counts['states']} states, {counts['efforts']} efforts, "
        f"{counts['proposals']} proposals, {counts['turns']} sets in hand; {len(found)} logs disagree {dict(kinds) or ''}"
    )
    scarce = {name: counts[name] for name, least in LEAST.items() if counts[name] < least * asked.logs / 10_000}
    if scarce:
        print(f"too few to be worth anything: {scarce}")
    if counts["logs"] != asked.logs or found or scarce:
        sys.exit(1)


if __name__ == "__main__":
    main()
