-- Schema 3. Append-only: this file is never edited once released; a change is a new file.

-- How a coach arranges her clients: her own order, and no part of anybody's record. Local to this profile.
CREATE TABLE client_groups (
  id TEXT PRIMARY KEY,
  name TEXT NOT NULL,
  -- Where it stands among the others.
  place INTEGER NOT NULL,
  -- 1 once it was removed; its row stays, so that removing can be undone.
  removed INTEGER NOT NULL CHECK (removed IN (0, 1))
) STRICT, WITHOUT ROWID;

-- A client may be in several groups; `place` is the coach's order within one.
CREATE TABLE group_members (
  client_group TEXT NOT NULL REFERENCES client_groups (id) ON DELETE CASCADE,
  person TEXT NOT NULL,
  place INTEGER NOT NULL,
  PRIMARY KEY (client_group, person)
) STRICT, WITHOUT ROWID;
CREATE INDEX group_members_of_person ON group_members (person);

-- Clients that the coach has laid aside. Their records stay whole.
CREATE TABLE archived (
  person TEXT PRIMARY KEY,
  at_ms INTEGER NOT NULL
) STRICT, WITHOUT ROWID;

-- The programme that a client was last sent, as it went out: what a revision is held against until her log says what she
-- has. The log keeps only the hash of the file.
CREATE TABLE last_sent (
  person TEXT PRIMARY KEY,
  sequence INTEGER NOT NULL,
  at_ms INTEGER NOT NULL,
  -- The SHA-256 of what the programme says, whatever its revision: two that say the same bear the same.
  content TEXT NOT NULL,
  programme TEXT NOT NULL,
  begins TEXT
) STRICT, WITHOUT ROWID;
