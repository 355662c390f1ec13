-- What charts count, kept beside what it is counted from and changed with it in one transaction.
-- It proves nothing and is in no export: it can be counted again, and "record verify" does.

CREATE TABLE tally (
  unit     TEXT NOT NULL CHECK (unit IN ('joint', 'board', 'photo')),
  scope    TEXT NOT NULL,
  axis     TEXT NOT NULL,
  name     TEXT NOT NULL,
  verdicts TEXT NOT NULL,
  findings TEXT NOT NULL,
  n        INTEGER NOT NULL,
  PRIMARY KEY (unit, scope, axis, name, verdicts, findings)
) WITHOUT ROWID;

-- By which rules the whole record was counted; empty until it was.
CREATE TABLE counted (
  rules INTEGER NOT NULL
);
