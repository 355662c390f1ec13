-- What was taken back, and a board's life beside its photos. docs/record.md explains each column.
-- Rows are only ever added: what was said stays, with who took it back.

CREATE TABLE taken_back (
  id              INTEGER PRIMARY KEY,
  overrule_id     INTEGER UNIQUE REFERENCES overrule (id),
  bench_result_id INTEGER UNIQUE REFERENCES bench_result (id),
  reason          TEXT NOT NULL,
  person          TEXT NOT NULL CHECK (person <> ''),
  taken_back_at   TEXT NOT NULL,
  zone            TEXT NOT NULL,
  CHECK ((overrule_id IS NULL) <> (bench_result_id IS NULL))
);

CREATE TABLE life_event (
  id       INTEGER PRIMARY KEY,
  board_id INTEGER NOT NULL REFERENCES board (id),
  kind     TEXT NOT NULL CHECK (kind IN ('complaint', 'serial', 'part', 'heat', 'looked',
             'function-test', 'hand-back')),
  words    TEXT NOT NULL,
  pins     TEXT NOT NULL CHECK (json_valid(pins)),
  is_good  INTEGER CHECK (is_good IN (0, 1)),
  person   TEXT NOT NULL CHECK (person <> ''),
  said_at  TEXT NOT NULL,
  zone     TEXT NOT NULL,
  CHECK ((kind IN ('function-test', 'hand-back')) = (is_good IS NOT NULL)),
  CHECK ((kind = 'heat') = (pins <> '[]'))
);

CREATE INDEX life_event_of_board ON life_event (board_id);
