-- What trainees said of joints. docs/drill.md explains each table; times are ISO 8601 with offset.
-- The truth stands beside each answer, so that a history outlives the deck it came from.

CREATE TABLE trainee (
  id   INTEGER PRIMARY KEY,
  name TEXT NOT NULL UNIQUE CHECK (name <> '')
);

CREATE TABLE sitting (
  id         INTEGER PRIMARY KEY,
  trainee_id INTEGER NOT NULL REFERENCES trainee (id) ON DELETE CASCADE,
  own_work   INTEGER NOT NULL CHECK (own_work IN (0, 1)),
  deck_key   TEXT NOT NULL CHECK (length(deck_key) = 64),
  deck_name  TEXT NOT NULL,
  cards      INTEGER NOT NULL CHECK (cards >= 1),
  started_at TEXT NOT NULL,
  zone       TEXT NOT NULL,
  ended_at   TEXT
);

-- Only ever added to; the last line of a pin counts.
CREATE TABLE drill_answer (
  id             INTEGER PRIMARY KEY,
  sitting_id     INTEGER NOT NULL REFERENCES sitting (id) ON DELETE CASCADE,
  card           INTEGER NOT NULL CHECK (card >= 1),
  pin            INTEGER NOT NULL CHECK (pin >= 1),
  item           TEXT NOT NULL CHECK (item <> ''),
  verdict        TEXT NOT NULL CHECK (verdict IN ('acceptable', 'unjudged', 'defect')),
  finding        TEXT,
  truth          TEXT CHECK (truth IN ('acceptable', 'limit', 'defect')),
  truth_findings TEXT NOT NULL,
  tool           TEXT CHECK (tool IN ('acceptable', 'process-indicator', 'unjudged', 'defect')),
  tool_findings  TEXT NOT NULL,
  took_ms        INTEGER NOT NULL CHECK (took_ms >= 0),
  given_at       TEXT NOT NULL,
  CHECK (finding IS NULL OR verdict = 'defect')
);

-- Cards whose truth was told: no answer to them counts after that.
CREATE TABLE drill_told (
  sitting_id INTEGER NOT NULL REFERENCES sitting (id) ON DELETE CASCADE,
  card       INTEGER NOT NULL,
  told_at    TEXT NOT NULL,
  PRIMARY KEY (sitting_id, card)
) WITHOUT ROWID;

CREATE INDEX sitting_of_trainee ON sitting (trainee_id);
CREATE INDEX drill_answer_of_sitting ON drill_answer (sitting_id);
