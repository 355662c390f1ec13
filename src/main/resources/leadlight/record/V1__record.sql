-- The job record. docs/record.md explains each table; times are ISO 8601 with offset.

CREATE TABLE job (
  id   INTEGER PRIMARY KEY,
  name TEXT NOT NULL UNIQUE CHECK (name <> '')
);

CREATE TABLE board (
  id     INTEGER PRIMARY KEY,
  job_id INTEGER NOT NULL REFERENCES job (id),
  name   TEXT NOT NULL CHECK (name <> ''),
  UNIQUE (job_id, name)
);

CREATE TABLE method (
  id            INTEGER PRIMARY KEY,
  key           TEXT NOT NULL UNIQUE CHECK (length(key) = 64),
  settings      TEXT NOT NULL,
  limits_sha256 TEXT NOT NULL CHECK (length(limits_sha256) = 64),
  tool_version  TEXT NOT NULL
);

CREATE TABLE photo (
  id               INTEGER PRIMARY KEY,
  sha256           TEXT NOT NULL CHECK (length(sha256) = 64),
  file_name        TEXT NOT NULL,
  width_px         INTEGER NOT NULL,
  height_px        INTEGER NOT NULL,
  format           TEXT NOT NULL,
  bits_per_channel INTEGER NOT NULL,
  exif_orientation INTEGER NOT NULL,
  taken_at         TEXT,
  UNIQUE (sha256, file_name)
);

CREATE TABLE run (
  id           INTEGER PRIMARY KEY,
  folder       TEXT NOT NULL UNIQUE,
  source       TEXT NOT NULL,
  person       TEXT NOT NULL,
  started_at   TEXT NOT NULL,
  zone         TEXT NOT NULL,
  ended_at     TEXT,
  tool_version TEXT NOT NULL
);

CREATE TABLE scoring (
  id              INTEGER PRIMARY KEY,
  board_id        INTEGER NOT NULL REFERENCES board (id),
  photo_id        INTEGER NOT NULL REFERENCES photo (id),
  method_id       INTEGER NOT NULL REFERENCES method (id),
  run_id          INTEGER REFERENCES run (id),
  stage           TEXT NOT NULL CHECK (stage IN ('as-received', 'after-rework', 'final')),
  attempt         INTEGER NOT NULL CHECK (attempt >= 1),
  repeat          INTEGER NOT NULL CHECK (repeat >= 1),
  photo_path      TEXT NOT NULL,
  results         TEXT NOT NULL,
  connector       TEXT NOT NULL,
  leads           INTEGER NOT NULL,
  pitch_mm        REAL NOT NULL,
  product_class   INTEGER NOT NULL CHECK (product_class IN (1, 2, 3)),
  person          TEXT NOT NULL,
  scored_at       TEXT NOT NULL,
  zone            TEXT NOT NULL,
  verdict         TEXT NOT NULL
                  CHECK (verdict IN ('acceptable', 'process-indicator', 'unjudged', 'defect')),
  row_reason      TEXT,
  pitch_px        REAL,
  angle_rad       REAL,
  scale_px_per_mm REAL,
  body_side       TEXT,
  confidence      REAL,
  tilt_rad        REAL,
  mm_to_px        TEXT,
  fitness         TEXT NOT NULL,
  UNIQUE (board_id, stage, attempt, photo_id, method_id, repeat),
  CHECK ((row_reason IS NULL) = (mm_to_px IS NOT NULL))
);

CREATE TABLE joint (
  id               INTEGER PRIMARY KEY,
  scoring_id       INTEGER NOT NULL REFERENCES scoring (id),
  pin              INTEGER NOT NULL CHECK (pin >= 1),
  name             TEXT NOT NULL,
  verdict          TEXT NOT NULL
                   CHECK (verdict IN ('acceptable', 'process-indicator', 'unjudged', 'defect')),
  unjudged_because TEXT,
  toe_x_px         REAL NOT NULL,
  toe_y_px         REAL NOT NULL,
  heel_x_px        REAL NOT NULL,
  heel_y_px        REAL NOT NULL,
  land_toe_x_px    REAL NOT NULL,
  land_toe_y_px    REAL NOT NULL,
  land_heel_x_px   REAL NOT NULL,
  land_heel_y_px   REAL NOT NULL,
  match            REAL NOT NULL,
  u_across_px      REAL NOT NULL,
  u_along_px       REAL NOT NULL,
  UNIQUE (scoring_id, pin),
  CHECK ((verdict = 'unjudged') = (unjudged_because IS NOT NULL))
);

CREATE TABLE measure (
  joint_id INTEGER NOT NULL REFERENCES joint (id),
  name     TEXT NOT NULL,
  value    REAL NOT NULL,
  u        REAL NOT NULL CHECK (u >= 0),
  PRIMARY KEY (joint_id, name)
) WITHOUT ROWID;

CREATE TABLE finding (
  id          INTEGER PRIMARY KEY,
  joint_id    INTEGER NOT NULL REFERENCES joint (id),
  kind        TEXT NOT NULL,
  pins        TEXT NOT NULL,
  verdict     TEXT NOT NULL,
  probability REAL NOT NULL CHECK (probability BETWEEN 0 AND 1),
  evidence    TEXT NOT NULL,
  clause      TEXT NOT NULL,
  settle_by   TEXT NOT NULL
);

CREATE TABLE overrule (
  id       INTEGER PRIMARY KEY,
  joint_id INTEGER NOT NULL REFERENCES joint (id),
  verdict  TEXT NOT NULL CHECK (verdict IN ('acceptable', 'process-indicator', 'defect')),
  finding  TEXT,
  reason   TEXT NOT NULL CHECK (reason <> ''),
  person   TEXT NOT NULL CHECK (person <> ''),
  given_at TEXT NOT NULL,
  zone     TEXT NOT NULL
);

CREATE TABLE bench_result (
  id        INTEGER PRIMARY KEY,
  joint_id  INTEGER NOT NULL REFERENCES joint (id),
  test      TEXT NOT NULL CHECK (test IN ('prod', 'meter')),
  result    TEXT NOT NULL,
  other_pin INTEGER,
  person    TEXT NOT NULL CHECK (person <> ''),
  taken_at  TEXT NOT NULL,
  zone      TEXT NOT NULL,
  CHECK ((test = 'prod' AND result IN ('firm', 'moves') AND other_pin IS NULL)
    OR (test = 'meter' AND result IN ('open', 'short', 'ok')))
);

CREATE TABLE run_photo (
  id         INTEGER PRIMARY KEY,
  run_id     INTEGER NOT NULL REFERENCES run (id),
  photo_path TEXT NOT NULL,
  job        TEXT NOT NULL,
  board      TEXT NOT NULL,
  stage      TEXT NOT NULL,
  attempt    INTEGER NOT NULL,
  method_key TEXT NOT NULL,
  outcome    TEXT NOT NULL CHECK (outcome IN ('scored', 'unchanged', 'refused', 'fault')),
  scoring_id INTEGER REFERENCES scoring (id),
  message    TEXT,
  UNIQUE (run_id, photo_path, job, board, stage, attempt, method_key),
  CHECK ((outcome IN ('scored', 'unchanged')) = (scoring_id IS NOT NULL)),
  CHECK ((outcome IN ('refused', 'fault')) = (message IS NOT NULL))
);

CREATE INDEX board_of_job ON board (job_id);
CREATE INDEX scoring_of_photo ON scoring (photo_id);
CREATE INDEX scoring_of_run ON scoring (run_id);
CREATE INDEX finding_of_joint ON finding (joint_id);
CREATE INDEX overrule_of_joint ON overrule (joint_id);
CREATE INDEX bench_result_of_joint ON bench_result (joint_id);
CREATE INDEX run_photo_of_scoring ON run_photo (scoring_id);
