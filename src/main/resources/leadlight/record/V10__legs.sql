-- A board's life has its anchor legs, too: a table's check cannot be widened in place.

CREATE TABLE life_event_wider (
  id       INTEGER PRIMARY KEY,
  board_id INTEGER NOT NULL REFERENCES board (id),
  kind     TEXT NOT NULL CHECK (kind IN ('complaint', 'serial', 'part', 'heat', 'looked', 'legs',
             'function-test', 'hand-back')),
  words    TEXT NOT NULL,
  pins     TEXT NOT NULL CHECK (json_valid(pins)),
  is_good  INTEGER CHECK (is_good IN (0, 1)),
  person   TEXT NOT NULL CHECK (person <> ''),
  said_at  TEXT NOT NULL,
  zone     TEXT NOT NULL,
  CHECK ((kind IN ('function-test', 'hand-back')) = (is_good IS NOT NULL)),
  CHECK ((kind = 'heat') = (pins <> '[]')),
  CHECK (kind <> 'legs' OR json_valid(words))
);

INSERT INTO life_event_wider SELECT * FROM life_event;

DROP TABLE life_event;

ALTER TABLE life_event_wider RENAME TO life_event;

CREATE INDEX life_event_of_board ON life_event (board_id);
