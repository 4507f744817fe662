-- Which values of a machine are typical and not stated, by name, blanks between them.
ALTER TABLE machine ADD COLUMN typical TEXT NOT NULL DEFAULT '';
