"""Runs random logs through both implementations and compares: every strength state to 1e-9, every proposal exactly.

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

CATALOGUE = Path(__file__).parents[2] / "crates/engine/data/catalogue.json"
# States agree to this, absolute or relative, whichever is wider.
WITHIN = 1e-9
# What is compared of a proposal.
COMPARED = ("level", "variant", "load", "sets", "amount", "purpose", "reserve")
# Ten thousand logs hold at least so many of each: an agreement on logs where nothing happens is none.
LEAST = {
    "states": 80_000,
    "proposals": 40_000,
    **{f"reason {name}": 20 for name in (
        "big-step", "body-only", "coach-set", "coach-start", "fresh-start", "kit-gap", "kit-lacks", "lay-off", "level-down-load",
        "level-up", "load-down", "load-same", "load-up", "nothing-lighter", "position-stage", "restricted", "rests", "stage-effort",
        "stage-sets", "stage-unloaded", "start-answer", "start-coach", "start-group", "start-lightest", "step-bound", "still-finding", "tired-today", "unforeseen",
    )},
    **{f"logs with {name}": 300 for name in (
        "a correction", "a withdrawal", "two devices", "a birth or a loss", "one load in the kit", "a year away", "an open end throughout",
        "two variants in turn", "timed sets", "one side at a time", "a stopped set", "no effort answer", "a finisher", "body mass unknown",
        "a pair", "a barbell", "bands", "nothing held",
    )},
}
# Logs that one worker asks the exporter for at a time.
CHUNK = 250


def close(ours, theirs):
    """True where two numbers agree to nine digits."""
    return abs(ours - theirs) <= WITHIN * max(1.0, abs(theirs))


def compare(line, catalogue):
    """Disagreements of one log, and how many states and proposals were compared."""
    whole = json.loads(line)
    case = Case(whole, catalogue, every_set=True)
    wrong, counts = [], Counter(logs=1) + adverse(whole)
    theirs = {(s["run"], s["sets"]): s["state"] for s in whole["states"]}
    ours = case.states()
    counts["states"] += len(theirs)
    for key in sorted(theirs.keys() | ours.keys()):
        told, here = theirs.get(key, "nothing"), ours.get(key, "nothing")
        if told != here and (not (told and here) or not all(map(close, here, told))):
            wrong.append(("state", key, here, told))
    for ask in whole["asks"]:
        known = ask["known"]
        then = case if known == len(whole["records"]) else Case(whole, catalogue, known)
        proposals = then.proposals(date.fromisoformat(ask["day"]), ask["given"])
        for slot in ask["says"]:
            counts["proposals"] += 1
            counts.update(f"reason {reason}" for reason in slot.get("reasons", ["rests"]))
            here = proposals[slot["slot"]]
            told = None if slot.get("rests") else {k: slot[k] for k in COMPARED}
            if here != told:
                wrong.append(("proposal", (known, slot["slot"]), here, told, slot.get("reasons")))
    return whole["number"], wrong, counts


def adverse(whole):
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
    holds = {
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
    catalogue = Catalogue(CATALOGUE)
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
    asks.add_argument("--reasons", action="store_true")
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
    if asked.reasons:
        for reason, n in sorted(counts.items()):
            print(f"  {n:>8} {reason}")
    print(
        f"second implementation: {counts['logs']} logs, {counts['states']} states, {counts['proposals']} proposals; "
        f"{len(found)} logs disagree ({kinds['state']} states, {kinds['proposal']} proposals)"
    )
    scarce = {name: counts[name] for name, least in LEAST.items() if counts[name] < least * asked.logs / 10_000}
    if scarce:
        print(f"too few to be worth anything: {scarce}")
    if counts["logs"] != asked.logs or found or scarce:
        sys.exit(1)


if __name__ == "__main__":
    main()
