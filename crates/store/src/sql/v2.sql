-- Schema 2. Append-only: this file is never edited once released; a change is a new file.

-- A coach's own pictures, by the SHA-256 of their bytes (lower-case hexadecimal). Records name them; a plan file brings
-- them along. They are no projection: a record holds the name alone.
CREATE TABLE pictures (
  name TEXT PRIMARY KEY,
  bytes BLOB NOT NULL
) STRICT, WITHOUT ROWID;

-- What a coach is writing: every step of a draft whole, so that undoing gives it back byte for byte. Local to this profile
-- and no part of the log; what is given to a client travels in a plan file.
CREATE TABLE drafts (
  draft TEXT PRIMARY KEY,
  -- The step that stands now.
  step INTEGER NOT NULL CHECK (step >= 0),
  -- How often it was written on; never goes back.
  edits INTEGER NOT NULL CHECK (edits >= 0),
  -- 1 once it was put away; it can be taken out again.
  away INTEGER NOT NULL CHECK (away IN (0, 1))
) STRICT, WITHOUT ROWID;

CREATE TABLE draft_steps (
  draft TEXT NOT NULL REFERENCES drafts (draft) ON DELETE CASCADE,
  step INTEGER NOT NULL CHECK (step >= 0),
  at_ms INTEGER NOT NULL,
  text TEXT NOT NULL,
  PRIMARY KEY (draft, step)
) STRICT, WITHOUT ROWID;
