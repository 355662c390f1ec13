-- Scorings whose results are being written anew: files and entry cannot change in one step.

CREATE TABLE rewriting (
  scoring_id INTEGER PRIMARY KEY REFERENCES scoring (id)
);
