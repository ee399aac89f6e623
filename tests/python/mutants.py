"""What no test of the engine would notice: changes one operator or value at a time, and runs the engine's tests on each.

    cargo install cargo-mutants --locked
    python3 tests/python/mutants.py crates/engine/src/strength.rs crates/engine/src/proposal/load/*.rs

The list of changes is that of cargo-mutants. That tool builds every test of the package for each change; this builds the
stories, and the unit tests for what no story notices, in a work tree of its own under target/. Results are appended to
target/mutants.jsonl, and a change that stands there already is not tried again, so a long run can be stopped.
Prints what survived. A few of a hundred are no faults: `>` for `>=` between floats that never meet, say.
"""

import json
import os
import pathlib
import subprocess
import sys

HOME = pathlib.Path(__file__).resolve().parents[2]
TREE = HOME / "target" / "mutants"
RESULTS = HOME / "target" / "mutants.jsonl"
TESTS = ["cargo", "test", "--quiet", "--package", "newel-engine"]
STORIES, UNITS = [*TESTS, "--test", "it"], [*TESTS, "--lib"]
# Fewer cases of each property: a survivor is tried again with all of them by the plain test command.
SETTINGS = dict(os.environ, PROPTEST_CASES="12", RUST_BACKTRACE="0", CARGO_PROFILE_DEV_DEBUG="0")


def run(command, **more):
    return subprocess.run(command, cwd=TREE, text=True, capture_output=True, **more)


def prepare():
    """A work tree of what is committed."""
    if not TREE.exists():
        subprocess.run(["git", "worktree", "add", "--quiet", "--detach", TREE, "HEAD"], cwd=HOME, check=True)
    head = subprocess.run(["git", "rev-parse", "HEAD"], cwd=HOME, text=True, capture_output=True, check=True).stdout
    run(["git", "checkout", "--quiet", "--force", "--detach", head.strip()], check=True)
    if run([*STORIES, "--lib"], env=SETTINGS).returncode:
        sys.exit("the tests fail as they are: mend that first")


def outcome(change, file):
    """caught, survived, unviable (it does not compile) or hung."""
    run(["git", "checkout", "--quiet", "--", file], check=True)
    run(["patch", "--silent", file], input=change["diff"], check=True)
    if run([*STORIES, "--no-run"], env=SETTINGS).returncode:
        return "unviable"
    try:
        noticed = any(run(tests, env=SETTINGS, timeout=120).returncode for tests in (STORIES, UNITS))
        return "caught" if noticed else "survived"
    except subprocess.TimeoutExpired:
        return "hung"


def main(files):
    prepare()
    known = {}
    if RESULTS.exists():
        known = {r["change"]: r["outcome"] for r in map(json.loads, RESULTS.read_text().splitlines())}
    survived = []
    for file in files:
        listed = run(["cargo", "mutants", "--list", "--json", "--diff", "--file", file], check=True).stdout
        for change in json.loads(listed):
            # With the text, so that a file that has moved on is tried again.
            name = change["name"] + "\n" + change["diff"]
            if name not in known:
                known[name] = outcome(change, file)
                with RESULTS.open("a") as out:
                    out.write(json.dumps({"change": name, "outcome": known[name]}) + "\n")
            if known[name] in ("survived", "hung"):
                survived.append(f"{known[name]}: {change['name']}")
        run(["git", "checkout", "--quiet", "--", file], check=True)
    print("\n".join([*survived, f"{len(survived)} of {len(known)} survived"]))


if __name__ == "__main__":
    main(sys.argv[1:])
