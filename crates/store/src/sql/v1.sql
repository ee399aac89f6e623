-- Schema 1. Append-only: this file is never edited once released; a change is a new file.

-- What is local to this profile and no part of the log. One row.
-- `device` is the name under which this profile writes; `instance` is also kept in a file beside the
-- database, so that a copy or a restored backup is noticed; `projected` is the version of the
-- program's projections that the tables below were made with.
CREATE TABLE here (
  one INTEGER PRIMARY KEY CHECK (one = 1),
  device TEXT NOT NULL,
  instance TEXT NOT NULL,
  projected TEXT NOT NULL
) STRICT;

-- Every name that this profile ever wrote under, the present one included.
CREATE TABLE own_devices (
  device TEXT PRIMARY KEY
) STRICT, WITHOUT ROWID;

CREATE TABLE settings (
  key TEXT PRIMARY KEY,
  value TEXT NOT NULL
) STRICT, WITHOUT ROWID;

-- The log. A stream is what one device wrote about one person.
CREATE TABLE streams (
  device TEXT NOT NULL,
  person TEXT NOT NULL,
  PRIMARY KEY (device, person)
) STRICT, WITHOUT ROWID;
CREATE INDEX streams_of_person ON streams (person);

-- `line` is the record, verbatim; every other column repeats what stands in it, for queries.
-- `at_ms` is the time in milliseconds since 1970 UTC; `hash` is the SHA-256 of the line's bytes.
-- The rowid is the order of arrival here, which no other device shares.
CREATE TABLE records (
  arrival INTEGER PRIMARY KEY AUTOINCREMENT,
  id TEXT NOT NULL UNIQUE,
  device TEXT NOT NULL,
  person TEXT NOT NULL,
  seq INTEGER NOT NULL CHECK (seq >= 0),
  prev TEXT,
  at_ms INTEGER NOT NULL,
  kind TEXT NOT NULL,
  v INTEGER NOT NULL,
  line TEXT NOT NULL,
  hash TEXT NOT NULL,
  UNIQUE (device, person, seq),
  FOREIGN KEY (device, person) REFERENCES streams (device, person) ON DELETE CASCADE
) STRICT;
CREATE INDEX records_of_person ON records (person, kind, at_ms);

-- The log is append-only: no statement of this program or of another changes a line.
CREATE TRIGGER records_never_change BEFORE UPDATE ON records
BEGIN SELECT RAISE(ABORT, 'a record is never changed'); END;

-- Projections. Each row is made from one record alone, so the order of arrival does not matter.
CREATE TABLE people (
  person TEXT PRIMARY KEY,
  record TEXT NOT NULL REFERENCES records (id) ON DELETE CASCADE,
  at_ms INTEGER NOT NULL,
  device TEXT NOT NULL,
  seq INTEGER NOT NULL,
  name TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE sessions (
  record TEXT PRIMARY KEY REFERENCES records (id) ON DELETE CASCADE,
  person TEXT NOT NULL,
  run TEXT NOT NULL,
  day TEXT NOT NULL,
  programme TEXT NOT NULL,
  revision INTEGER NOT NULL,
  session TEXT NOT NULL
) STRICT, WITHOUT ROWID;
CREATE INDEX sessions_of_person ON sessions (person, day);
CREATE INDEX sessions_of_run ON sessions (run);

CREATE TABLE session_ends (
  record TEXT PRIMARY KEY REFERENCES records (id) ON DELETE CASCADE,
  person TEXT NOT NULL,
  run TEXT NOT NULL,
  amends TEXT,
  effort INTEGER,
  minutes INTEGER
) STRICT, WITHOUT ROWID;
CREATE INDEX session_ends_of_run ON session_ends (run);

-- `amends` is the record that a correction speaks of. `external_kg` is absent where the load depends
-- on the stretch of a band. `reserve_open` is 1 for "so many or more".
CREATE TABLE sets (
  record TEXT PRIMARY KEY REFERENCES records (id) ON DELETE CASCADE,
  person TEXT NOT NULL,
  run TEXT NOT NULL,
  amends TEXT,
  slot TEXT NOT NULL,
  round INTEGER NOT NULL,
  side TEXT,
  ladder TEXT NOT NULL,
  variant TEXT NOT NULL,
  external_kg REAL,
  reps INTEGER NOT NULL,
  seconds INTEGER,
  reserve INTEGER,
  reserve_open INTEGER NOT NULL CHECK (reserve_open IN (0, 1)),
  purpose TEXT NOT NULL,
  stopped INTEGER NOT NULL CHECK (stopped IN (0, 1))
) STRICT, WITHOUT ROWID;
CREATE INDEX sets_of_person ON sets (person, ladder);
CREATE INDEX sets_of_run ON sets (run);

-- Symptoms, wherever they were told: marked in a session, at check-in, or the next day.
CREATE TABLE marks (
  record TEXT NOT NULL REFERENCES records (id) ON DELETE CASCADE,
  nth INTEGER NOT NULL,
  person TEXT NOT NULL,
  run TEXT,
  amends TEXT,
  source TEXT NOT NULL CHECK (source IN ('mark', 'check_in', 'next_day')),
  slot TEXT,
  ladder TEXT,
  variant TEXT,
  at_rest INTEGER NOT NULL CHECK (at_rest IN (0, 1)),
  symptom TEXT,
  amount TEXT,
  pain INTEGER,
  place TEXT,
  PRIMARY KEY (record, nth)
) STRICT, WITHOUT ROWID;
CREATE INDEX marks_of_person ON marks (person);

-- What was taken back or corrected, and by which record.
CREATE TABLE amendments (
  record TEXT PRIMARY KEY REFERENCES records (id) ON DELETE CASCADE,
  person TEXT NOT NULL,
  target TEXT NOT NULL,
  what TEXT NOT NULL CHECK (what IN ('withdrawal', 'correction'))
) STRICT, WITHOUT ROWID;
CREATE INDEX amendments_of_target ON amendments (target);
