"""Reads what `newel print` writes back with general libraries: pypdf, icalendar, pandas.

    python tests/python/check_paper.py target/debug/newel

PDF/UA-1 (ISO 14289-1) is checked by the compiler while it writes. Here some of it is looked at once more from outside:
language, title, tags, a description of every figure, heads of tables, headings that skip no level, text that can be read.
"""

import csv
import io
import json
import subprocess
import sys
import tempfile
from datetime import datetime, timedelta, timezone
from pathlib import Path
from zoneinfo import ZoneInfo

import icalendar
import pandas
from pypdf import PdfReader

newel = sys.argv[1]
demo = Path(__file__).resolve().parents[2] / "demo-data"
folder = Path(tempfile.mkdtemp(prefix="newel-paper-"))
wrong = []


def expect(truth, what):
    if not truth:
        wrong.append(what)


def made(name, *arguments):
    path = folder / name
    done = subprocess.run([newel, "print", *arguments, "--out", str(path)], capture_output=True, text=True)
    if done.returncode != 0:
        sys.exit(f"{name}: {done.stdout}{done.stderr}")
    return path


def plans():
    for log in sorted((demo / "logs").glob("*.json")):
        name = log.name.split("-log-")[0]
        yield name, max((demo / "plans").glob(f"{name}-plan-*.json")), log


def content(log):
    return json.loads(log.read_text())["content"]


def elements(node, kind):
    """All structure elements of a kind below a node."""
    if isinstance(node, list):
        for child in node:
            yield from elements(child, kind)
        return
    node = node.get_object() if hasattr(node, "get_object") else node
    if isinstance(node, list):
        yield from elements(node, kind)
    if not hasattr(node, "get"):
        return
    if node.get("/S") in kind:
        yield node
    if "/K" in node:
        yield from elements(node["/K"], kind)


def looks_at(path, language, words, figures):
    reader = PdfReader(path)
    root = reader.trailer["/Root"]
    expect(root.get("/Lang", "").startswith(language), f"{path.name}: its language is {root.get('/Lang')}")
    expect(root["/MarkInfo"].get_object().get("/Marked") is not None, f"{path.name}: not marked as tagged")
    view = root.get("/ViewerPreferences")
    expect(view is not None and view.get_object().get("/DisplayDocTitle"), f"{path.name}: the title is not what is shown")
    expect(reader.metadata.title, f"{path.name}: no title")
    xmp = root["/Metadata"].get_object().get_data().decode("utf-8", "replace")
    expect("pdfuaid:part" in xmp and ">1<" in xmp, f"{path.name}: does not say that it is PDF/UA-1")
    tree = root["/StructTreeRoot"].get_object()
    drawn = list(elements(tree["/K"], {"/Figure"}))
    expect(len(drawn) >= figures, f"{path.name}: {len(drawn)} figures, at least {figures} are expected")
    for figure in drawn:
        expect(figure.get("/Alt"), f"{path.name}: a figure without a description")
    for table in elements(tree["/K"], {"/Table"}):
        expect(any(elements(table.get("/K"), {"/TH"})), f"{path.name}: a table without a head")
    at = 0
    for heading in elements(tree["/K"], {f"/H{n}" for n in range(1, 7)}):
        level = int(heading["/S"][2])
        expect(level <= at + 1, f"{path.name}: a heading skips from {at} to {level}")
        at = level
    text = " ".join(" ".join(page.extract_text() for page in reader.pages).split())
    for word in words:
        expect(word in text, f"{path.name}: “{word}” cannot be read in it")
    boxes = {tuple(round(float(n)) for n in page.mediabox[2:]) for page in reader.pages}
    return len(reader.pages), boxes


def papers():
    steady = ["--programme", "Steady floor"]
    for language, words in [("en", ["Chest pain", "8 to 12 reps", "Goblet squat"]), ("es", ["Dolor en el pecho", "Peldaño"])]:
        spoken = ["--language", language]
        pages, boxes = looks_at(made(f"handout-{language}.pdf", "handout", *steady, *spoken), language, words, 20)
        expect(boxes == {(595, 842)}, f"A4 is {boxes}")
        looks_at(made(f"booklet-{language}.pdf", "booklet", *steady, *spoken), language, words, 40)
    _, boxes = looks_at(made("letter-size.pdf", "handout", *steady, "--paper", "letter"), "en", [], 20)
    expect(boxes == {(612, 792)}, f"US Letter is {boxes}")
    letters = 0
    for name, plan, log in plans():
        called = content(log)["name"]
        asked = ["--plan", str(plan), "--log", str(log), "--on", "2026-11-24", "--agreed", "2026-11-23"]
        asked += ["--to", "Dr Example, Surgery", "--question", "May she go on?"]
        looks_at(made(f"{name}.pdf", "letter", *asked), "en", [called, "May she go on?", "Dr Example"], 0)
        letters += 1
    expect(letters >= 5, f"{letters} letters")


def calendars():
    """Half past six on Mondays, Wednesdays and Fridays over the end of summer time in Europe and the United States."""
    _, plan, log = next(plans())
    asked = ["--plan", str(plan), "--log", str(log), "--days", "1,3,5", "--at", "18:30", "--weeks", "4"]
    path = made("sessions.ics", "calendar", *asked, "--from", "2026-10-19")
    raw = path.read_bytes()
    expect(raw.count(b"\n") == raw.count(b"\r\n"), "lines end with CR LF")
    expect(all(len(line) <= 75 for line in raw.split(b"\r\n")), "no line is longer than 75 octets")
    calendar = icalendar.Calendar.from_ical(raw)
    expect(calendar["VERSION"] == "2.0" and calendar["PRODID"], "version and maker are named")
    events = list(calendar.walk("VEVENT"))
    expect(len(events) == 12, f"{len(events)} events")
    expect(len({str(e["UID"]) for e in events}) == len(events), "each event has an id of its own")
    expect([str(e["SUMMARY"]) for e in events[:3]] == ["Session A", "Session B", "Session A"], "sessions in turn")
    for zone, before, after, change in [
        ("Europe/Berlin", 16, 17, datetime(2026, 10, 25)),
        ("America/New_York", 22, 23, datetime(2026, 11, 1)),
    ]:
        for event in events:
            begins, ends = event.decoded("DTSTART"), event.decoded("DTEND")
            expect(begins.tzinfo is None, "a floating time")
            expect((begins.hour, begins.minute) == (18, 30) and begins.isoweekday() in (1, 3, 5), f"{begins}")
            expect(timedelta(minutes=10) < ends - begins < timedelta(hours=2), f"it takes {ends - begins}")
            there = begins.replace(tzinfo=ZoneInfo(zone)).astimezone(timezone.utc)
            expect(there.hour == (before if begins < change else after), f"{zone}: {begins} is {there}")
            expect(event.decoded("DTSTAMP").utcoffset() == timedelta(0), "the stamp is UTC")


def rows():
    sets = 0
    for name, plan, log in plans():
        path = made(f"{name}.csv", "rows", "--plan", str(plan), "--log", str(log))
        table = pandas.read_csv(path, encoding="utf-8-sig")
        lines = content(log)["lines"]
        gone = {line["payload"].get("target") for line in lines if line["payload"]["kind"] == "withdrawal"}
        logged = [line for line in lines if line["payload"]["kind"] == "set_done" and line["id"] not in gone]
        done = table[table["What"] == "set"]
        expect(len(done) == len(logged), f"{name}: {len(done)} rows for {len(logged)} sets")
        sets += len(done)
        # What holds of each set: the last correction of it, or of a correction of it.
        holds = {line["id"]: line["payload"] for line in logged}
        root = {line["id"]: line["id"] for line in logged}
        for line in lines:
            put_right = line["payload"]
            if put_right["kind"] == "correction" and line["id"] not in gone and put_right["target"] in root:
                root[line["id"]] = root[put_right["target"]]
                holds[root[line["id"]]] = put_right["instead"]
        reps = sum(p.get("reps", 0) for p in holds.values() if p.get("seconds") is None)
        expect(done["Reps"].sum() == reps, f"{name}: {done['Reps'].sum()} reps in rows, {reps} in the log")
        with open(path, encoding="utf-8-sig", newline="") as file:
            for row in csv.reader(file):
                expect(len(row) == len(table.columns), f"{name}: a row of {len(row)} cells")
                expect(not any(cell[:1] in ("=", "+", "-", "@", "\t", "\r") for cell in row if cell), f"{name}: {row}")
    expect(sets > 300, f"{sets} sets were compared")


papers()
calendars()
rows()
if wrong:
    print("\n".join(dict.fromkeys(wrong)))
    sys.exit(1)
print(f"papers, calendars and rows read back: nothing wrong ({folder})")
