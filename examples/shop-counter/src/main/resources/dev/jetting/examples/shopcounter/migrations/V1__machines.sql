-- A machine belongs to one visitor; its sheet and its session are the library's own JSON.
CREATE TABLE machine (
  id       TEXT PRIMARY KEY,
  visitor  TEXT NOT NULL,
  name     TEXT NOT NULL,
  sheet    TEXT NOT NULL,
  session  TEXT,
  changed  TEXT NOT NULL
) STRICT;

CREATE INDEX machine_visitor ON machine (visitor, changed);

-- What was done to a machine, over the years.
CREATE TABLE entry (
  id       INTEGER PRIMARY KEY AUTOINCREMENT,
  machine  TEXT NOT NULL REFERENCES machine (id) ON DELETE CASCADE,
  at       TEXT NOT NULL,
  kind     TEXT NOT NULL,
  text     TEXT NOT NULL,
  sheet    TEXT
) STRICT;

CREATE INDEX entry_machine ON entry (machine, id);
