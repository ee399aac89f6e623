-- Schema 2. Append-only: this file is never edited once released; a change is a new file.

-- A coach's own pictures, by the SHA-256 of their bytes (lower-case hexadecimal). Records name them; a plan file brings
-- them along. They are no projection: a record holds the name alone.
CREATE TABLE pictures (
  name TEXT PRIMARY KEY,
  bytes BLOB NOT NULL
) STRICT, WITHOUT ROWID;
