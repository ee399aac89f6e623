"""Writes log files of many invented clients: those of demo-data, each again under another name and other ids.

    python3 tests/python/crowd.py FOLDER COUNT

They are what `newel take-in` reads into a coach's database, to see how Roster and Desk bear hundreds of clients. The logs
are as long as twelve weeks make them; nothing of the training in them is changed.
"""

import hashlib
import json
import sys
from pathlib import Path

NAMES = ["Amélie", "Brontë", "Chloé", "Dóra", "Élodie", "Fatıma", "Gräfin", "Håkon", "Inés", "Jūlija", "Łucja", "Søs"]


def other(uuid: str, nth: int) -> str:
    """Another id that stays in the order of time of the first."""
    head, tail = uuid[:24], int(uuid[24:], 16)
    return f"{head}{(tail ^ (nth << 16)) & (1 << 48) - 1:012x}"


def swapped(value, ids: dict):
    """The same with other ids; the text of a plan file stays as it is, since it bears its own checksum."""
    if isinstance(value, dict):
        return {k: v if k == "plan" else swapped(v, ids) for k, v in value.items()}
    if isinstance(value, list):
        return [swapped(v, ids) for v in value]
    return ids.get(value, value) if isinstance(value, str) else value


def again(log: dict, nth: int) -> str:
    lines = log["lines"]
    of = {log["person"], log["device"], *(l["id"] for l in lines), *(l["device"] for l in lines)}
    ids = {uuid: other(uuid, nth) for uuid in of}
    name = f"{NAMES[nth % len(NAMES)]} {nth:03d}"
    last: dict = {}
    out = []
    for line in lines:
        line = swapped(line, ids)
        if line["payload"]["kind"] == "profile":
            line["payload"]["name"] = name
        line["prev"] = last.get(line["device"])
        text = json.dumps(line, ensure_ascii=False, separators=(",", ":"))
        last[line["device"]] = hashlib.sha256(text.encode()).hexdigest()
        out.append(text)
    rest = {k: v for k, v in log.items() if k != "lines"} | {"person": ids[log["person"]], "name": name}
    rest["device"] = ids[log["device"]]
    body = json.dumps(rest, ensure_ascii=False, separators=(",", ":"))[:-1]
    content = f'{body},"lines":[\n' + ",\n".join(out) + "]}"
    digest = hashlib.sha256(content.encode()).hexdigest()
    return f'{{"format":"newel.log","version":1,"seal":null,"sha256":"{digest}","content":{content}}}'


def main() -> None:
    folder, count = Path(sys.argv[1]), int(sys.argv[2])
    folder.mkdir(parents=True, exist_ok=True)
    found = sorted((Path(__file__).parents[2] / "demo-data" / "logs").glob("*.json"))
    logs = [json.loads(path.read_text())["content"] for path in found]
    for nth in range(count):
        (folder / f"log-{nth:03d}.newel.json").write_text(again(logs[nth % len(logs)], nth + 1))


main()
