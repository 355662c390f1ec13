-- The enrolled bench that a photo was judged by: name, version and hash; empty where none was.

ALTER TABLE method ADD COLUMN bench TEXT;
