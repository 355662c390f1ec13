-- What either opinion says of solder balls and of side overhang; empty in older scorings, which did
-- not ask. docs/record.md explains each column.

ALTER TABLE opinion ADD COLUMN ball REAL CHECK (ball BETWEEN 0 AND 1);
ALTER TABLE opinion ADD COLUMN over_quarter REAL CHECK (over_quarter BETWEEN 0 AND 1);
ALTER TABLE opinion ADD COLUMN over_half REAL CHECK (over_half BETWEEN 0 AND 1);
