-- What only a shared record needs; no rows of these go into an export.

-- Number of the last entry that was ever written, so that a missing end is noticed.
CREATE TABLE IF NOT EXISTS chain_end (
  is_one  BOOLEAN PRIMARY KEY DEFAULT true CHECK (is_one),
  entries BIGINT NOT NULL
);

INSERT INTO chain_end (entries) VALUES (0) ON CONFLICT DO NOTHING;

-- The last write of each program that is at work: whether a commit whose answer was lost took place.
CREATE TABLE IF NOT EXISTS writer_mark (
  writer TEXT PRIMARY KEY,
  number BIGINT NOT NULL
);

-- With the rights of the tables' owner: who scores may add to the chain and cannot set its end back.
CREATE OR REPLACE FUNCTION note_chain_end() RETURNS trigger
LANGUAGE plpgsql SECURITY DEFINER SET search_path = public, pg_temp AS $$
BEGIN
  UPDATE chain_end SET entries = greatest(entries, NEW.id);
  RETURN NULL;
END
$$;

CREATE OR REPLACE TRIGGER entry_noted AFTER INSERT ON entry
FOR EACH ROW EXECUTE FUNCTION note_chain_end();
