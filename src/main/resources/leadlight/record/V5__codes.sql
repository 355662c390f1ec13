-- Doubts and notes as codes with arguments beside their sentences, and the chances of an opinion as
-- one JSON object by the questions' names. docs/record.md explains each column. What was written
-- before keeps its sentences: they are read as remarks of the code "earlier".

CREATE TABLE opinion_by_question (
  joint_id      INTEGER NOT NULL REFERENCES joint (id),
  whose         TEXT NOT NULL CHECK (whose IN ('measures', 'reader')),
  chances       TEXT NOT NULL CHECK (json_valid(chances)),
  strangeness   REAL CHECK (strangeness BETWEEN 0 AND 1),
  is_unlike     INTEGER CHECK (is_unlike IN (0, 1)),
  moved_pitches TEXT,
  PRIMARY KEY (joint_id, whose),
  CHECK ((whose = 'reader') = (strangeness IS NOT NULL)),
  CHECK ((whose = 'reader') = (is_unlike IS NOT NULL)),
  CHECK (whose = 'reader' OR moved_pitches IS NULL)
) WITHOUT ROWID;

-- The patch leaves out what is null (RFC 7396): a question that was not asked has no answer.
INSERT INTO opinion_by_question
SELECT joint_id, whose,
  json_patch('{}', json_object(
    'missing', missing, 'unwetted', unwetted, 'open', open, 'excess', excess,
    'bridge_before', bridge_before, 'bridge_after', bridge_after,
    'ball', ball, 'over_quarter', over_quarter, 'over_half', over_half)),
  strangeness, is_unlike, moved_pitches
FROM opinion;

DROP TABLE opinion;
ALTER TABLE opinion_by_question RENAME TO opinion;

ALTER TABLE joint ADD COLUMN doubts TEXT CHECK (doubts IS NULL OR json_valid(doubts));
ALTER TABLE joint ADD COLUMN grounds TEXT CHECK (grounds IS NULL OR json_valid(grounds));
ALTER TABLE joint ADD COLUMN unfit TEXT CHECK (unfit IS NULL OR json_valid(unfit));

ALTER TABLE scoring ADD COLUMN row_note TEXT CHECK (row_note IS NULL OR json_valid(row_note));
ALTER TABLE scoring ADD COLUMN row_notes TEXT CHECK (row_notes IS NULL OR json_valid(row_notes));
ALTER TABLE scoring ADD COLUMN fitness_notes TEXT
  CHECK (fitness_notes IS NULL OR json_valid(fitness_notes));

ALTER TABLE finding ADD COLUMN share REAL CHECK (share BETWEEN 0 AND 1);
ALTER TABLE finding ADD COLUMN measured TEXT CHECK (measured IS NULL OR json_valid(measured));
ALTER TABLE finding ADD COLUMN reasons TEXT CHECK (reasons IS NULL OR json_valid(reasons));
