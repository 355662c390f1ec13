-- Words of SQLite that the migrations use.

CREATE FUNCTION json_valid(text) RETURNS boolean
LANGUAGE plpgsql IMMUTABLE STRICT PARALLEL SAFE AS $$
BEGIN
  PERFORM $1::json;
  RETURN true;
EXCEPTION WHEN others THEN
  RETURN false;
END
$$;

-- Only ever called to leave out what is null.
CREATE FUNCTION json_patch(text, json) RETURNS text
LANGUAGE sql IMMUTABLE STRICT PARALLEL SAFE AS $$ SELECT json_strip_nulls($2)::text $$;
