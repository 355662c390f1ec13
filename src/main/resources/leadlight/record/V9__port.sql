-- Which of several equal rows of a board a photo shows; empty in what was recorded before.

ALTER TABLE scoring ADD COLUMN port TEXT;
ALTER TABLE run_photo ADD COLUMN port TEXT;
