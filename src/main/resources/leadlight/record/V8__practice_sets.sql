-- The drill's words are the trade's: a practice set has specimens. Values stay as they are.

ALTER TABLE sitting RENAME COLUMN deck_key TO set_key;
ALTER TABLE sitting RENAME COLUMN deck_name TO set_name;
ALTER TABLE sitting RENAME COLUMN cards TO specimens;
ALTER TABLE drill_answer RENAME COLUMN card TO specimen;
ALTER TABLE drill_told RENAME COLUMN card TO specimen;
