-- The ledger's one table and its guards. Statements are separated by one empty line; verification
-- compares them, character by character, with what a ledger file holds.

CREATE TABLE entry (
  seq INTEGER PRIMARY KEY NOT NULL CHECK (seq >= 1),
  prev BLOB NOT NULL CHECK (length(prev) = 32),
  hash BLOB NOT NULL CHECK (length(hash) = 32),
  jws TEXT NOT NULL CHECK (length(jws) BETWEEN 1 AND 8388608)
) STRICT

CREATE TRIGGER entry_follows_the_head BEFORE INSERT ON entry
WHEN NEW.seq IS NOT (SELECT coalesce(max(seq), 0) + 1 FROM entry)
  OR NEW.prev IS NOT coalesce((SELECT hash FROM entry ORDER BY seq DESC LIMIT 1), zeroblob(32))
BEGIN
  SELECT RAISE(ABORT, 'ledger: an entry must follow the head');
END

CREATE TRIGGER entry_is_never_changed BEFORE UPDATE ON entry
BEGIN
  SELECT RAISE(ABORT, 'ledger: entries are never changed');
END

CREATE TRIGGER entry_is_never_deleted BEFORE DELETE ON entry
BEGIN
  SELECT RAISE(ABORT, 'ledger: entries are never deleted');
END
