-- Schema 4. Append-only: this file is never edited once released; a change is a new file.

-- What the coach's screens say of a client at a glance, kept for the next start. A cache and nothing else: `key` is a hash
-- over all that the value was made from, and a value whose key differs is never shown. It may be emptied at any time, and
-- travels in no file.
CREATE TABLE glances (
  person TEXT PRIMARY KEY,
  key TEXT NOT NULL,
  value TEXT NOT NULL
) STRICT, WITHOUT ROWID;

-- A line that comes, and a stream that goes, takes what was kept of her along, whoever writes it.
CREATE TRIGGER glances_end_with_a_record AFTER INSERT ON records
BEGIN DELETE FROM glances WHERE person = NEW.person; END;
CREATE TRIGGER glances_end_with_a_stream AFTER DELETE ON streams
BEGIN DELETE FROM glances WHERE person = OLD.person; END;
