-- The chain that proves the record: an entry for each scoring, overrule, bench result and ended run,
-- in the order they were written, each with the hash of the one before. docs/record.md explains how
-- it is hashed. AUTOINCREMENT remembers the last number, so that a missing end is noticed.

CREATE TABLE entry (
  id      INTEGER PRIMARY KEY AUTOINCREMENT,
  kind    TEXT NOT NULL CHECK (kind <> ''),
  ref     INTEGER NOT NULL,
  at      TEXT NOT NULL,
  content TEXT NOT NULL CHECK (length(content) = 64),
  files   TEXT NOT NULL CHECK (json_valid(files)),
  hash    TEXT NOT NULL CHECK (length(hash) = 64)
);

CREATE INDEX entry_of_ref ON entry (kind, ref);
