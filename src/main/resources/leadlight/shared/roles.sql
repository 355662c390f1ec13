-- Rights on a shared record. Run by its owner, once it was made, and after a new version of
-- Leadlight changed its tables:  leadlight record roles | psql DATABASE
-- Then a login for each bench and person:  CREATE ROLE bench1 LOGIN IN ROLE leadlight_scoring;

DO $$
DECLARE
  role text;
BEGIN
  FOREACH role IN ARRAY ARRAY['leadlight_scoring', 'leadlight_qa'] LOOP
    IF NOT EXISTS (SELECT 1 FROM pg_roles WHERE rolname = role) THEN
      EXECUTE format('CREATE ROLE %I NOLOGIN', role);
    END IF;
    EXECUTE format('GRANT CONNECT, TEMPORARY ON DATABASE %I TO %I', current_database(), role);
  END LOOP;
END
$$;

GRANT USAGE ON SCHEMA public TO leadlight_scoring, leadlight_qa;
-- QA reads, verifies, exports.
GRANT SELECT ON ALL TABLES IN SCHEMA public TO leadlight_scoring, leadlight_qa;
-- Scoring adds. What was written it can neither change nor take out ...
GRANT INSERT ON job, board, method, photo, run, scoring, joint, measure, finding, opinion, overrule,
  bench_result, run_photo, entry, taken_back, life_event, trainee, sitting, drill_answer, drill_told
  TO leadlight_scoring;
-- ... but for a run that goes on or ends,
GRANT UPDATE (ended_at) ON run, sitting TO leadlight_scoring;
GRANT UPDATE (outcome, scoring_id, message, port) ON run_photo TO leadlight_scoring;
-- what is at work, counts that charts are drawn from (they prove nothing: "record verify" counts anew),
GRANT INSERT, UPDATE, DELETE ON writer_mark, rewriting, tally, counted TO leadlight_scoring;
-- and a trainee who wants to be forgotten.
GRANT DELETE ON trainee TO leadlight_scoring;
