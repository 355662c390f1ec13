-- The two opinions on a joint's solder, each by itself. docs/record.md explains each column.

CREATE TABLE opinion (
  joint_id      INTEGER NOT NULL REFERENCES joint (id),
  whose         TEXT NOT NULL CHECK (whose IN ('measures', 'reader')),
  missing       REAL NOT NULL CHECK (missing BETWEEN 0 AND 1),
  unwetted      REAL NOT NULL CHECK (unwetted BETWEEN 0 AND 1),
  open          REAL NOT NULL CHECK (open BETWEEN 0 AND 1),
  excess        REAL NOT NULL CHECK (excess BETWEEN 0 AND 1),
  bridge_before REAL NOT NULL CHECK (bridge_before BETWEEN 0 AND 1),
  bridge_after  REAL NOT NULL CHECK (bridge_after BETWEEN 0 AND 1),
  strangeness   REAL CHECK (strangeness BETWEEN 0 AND 1),
  is_unlike     INTEGER CHECK (is_unlike IN (0, 1)),
  moved_pitches TEXT,
  PRIMARY KEY (joint_id, whose),
  CHECK ((whose = 'reader') = (strangeness IS NOT NULL)),
  CHECK ((whose = 'reader') = (is_unlike IS NOT NULL)),
  CHECK (whose = 'reader' OR moved_pitches IS NULL)
) WITHOUT ROWID;

-- Which network read the joints; empty where measures alone were asked.
ALTER TABLE method ADD COLUMN reader TEXT;
