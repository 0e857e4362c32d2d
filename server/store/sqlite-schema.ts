/**
 * The tables, as numbered steps that are each run once, in a transaction with the version they lead to.
 * A step that has been released is never edited.
 */

export const MIGRATIONS: readonly string[] = [
  `
  CREATE TABLE meta (name TEXT PRIMARY KEY, value TEXT NOT NULL) STRICT, WITHOUT ROWID;

  CREATE TABLE desk_session (
    token_hash TEXT PRIMARY KEY,
    teacher_id TEXT NOT NULL,
    opened_ms  INTEGER NOT NULL
  ) STRICT, WITHOUT ROWID;

  CREATE TABLE room (
    id         TEXT PRIMARY KEY,
    code       TEXT NOT NULL,
    teacher_id TEXT NOT NULL,
    -- Read-only and shown at the desk again and again, so it is not hashed.
    viewer_key TEXT NOT NULL,
    locked     INTEGER NOT NULL DEFAULT 0,
    settings   TEXT NOT NULL,
    opened_ms  INTEGER NOT NULL,
    closed_ms  INTEGER
  ) STRICT, WITHOUT ROWID;
  CREATE UNIQUE INDEX room_code_open ON room (code) WHERE closed_ms IS NULL;

  CREATE TABLE seat (
    id         TEXT PRIMARY KEY,
    room_id    TEXT NOT NULL REFERENCES room (id),
    name       TEXT NOT NULL,
    token_hash TEXT NOT NULL,
    pretend    INTEGER NOT NULL,
    joined_ms  INTEGER NOT NULL,
    removed_ms INTEGER
  ) STRICT, WITHOUT ROWID;
  CREATE INDEX seat_room ON seat (room_id);

  CREATE TABLE round (
    id        TEXT PRIMARY KEY,
    room_id   TEXT NOT NULL REFERENCES room (id),
    number    INTEGER NOT NULL,
    settings  TEXT NOT NULL,
    start     TEXT NOT NULL,
    drawn_ms  INTEGER NOT NULL,
    closed_ms INTEGER,
    UNIQUE (room_id, number)
  ) STRICT, WITHOUT ROWID;

  CREATE TABLE clock_event (
    round_id TEXT NOT NULL REFERENCES round (id),
    ordinal  INTEGER NOT NULL,
    event    TEXT NOT NULL,
    at_ms    INTEGER NOT NULL,
    PRIMARY KEY (round_id, ordinal)
  ) STRICT, WITHOUT ROWID;

  CREATE TABLE try (
    key       INTEGER PRIMARY KEY,
    round_id  TEXT NOT NULL REFERENCES round (id),
    seat_id   TEXT NOT NULL REFERENCES seat (id),
    number    INTEGER NOT NULL,
    late      INTEGER NOT NULL,
    opened_ms INTEGER NOT NULL,
    UNIQUE (round_id, seat_id, number)
  ) STRICT;

  CREATE TABLE step (
    try_key   INTEGER NOT NULL REFERENCES try (key),
    number    INTEGER NOT NULL,
    step      INTEGER NOT NULL CHECK (step BETWEEN 0 AND 54),
    moment_ms INTEGER NOT NULL,
    at_ms     INTEGER NOT NULL,
    PRIMARY KEY (try_key, number)
  ) STRICT, WITHOUT ROWID;
  `,
  `
  ALTER TABLE room ADD COLUMN entry TEXT;
  ALTER TABLE room ADD COLUMN plan TEXT;
  ALTER TABLE room ADD COLUMN deadline_ms INTEGER;
  ALTER TABLE seat ADD COLUMN pupil_id TEXT;
  ALTER TABLE round ADD COLUMN par_shown INTEGER NOT NULL DEFAULT 0;
  ALTER TABLE try ADD COLUMN kept INTEGER NOT NULL DEFAULT 0;
  ALTER TABLE try ADD COLUMN written INTEGER NOT NULL DEFAULT 0;

  -- Hints are steps too: 55 to 57. A check cannot be changed in place.
  CREATE TABLE step_with_hints (
    try_key   INTEGER NOT NULL REFERENCES try (key),
    number    INTEGER NOT NULL,
    step      INTEGER NOT NULL CHECK (step BETWEEN 0 AND 57),
    moment_ms INTEGER NOT NULL,
    at_ms     INTEGER NOT NULL,
    PRIMARY KEY (try_key, number)
  ) STRICT, WITHOUT ROWID;
  INSERT INTO step_with_hints SELECT try_key, number, step, moment_ms, at_ms FROM step;
  DROP TABLE step;
  ALTER TABLE step_with_hints RENAME TO step;

  CREATE TABLE nudge (
    key         INTEGER PRIMARY KEY,
    round_id    TEXT NOT NULL REFERENCES round (id),
    seat_id     TEXT NOT NULL REFERENCES seat (id),
    try_number  INTEGER NOT NULL,
    after_steps INTEGER NOT NULL,
    nudge       TEXT NOT NULL,
    at_ms       INTEGER NOT NULL
  ) STRICT;
  CREATE INDEX nudge_round ON nudge (round_id);

  CREATE TABLE handed_in (
    round_id   TEXT NOT NULL REFERENCES round (id),
    seat_id    TEXT NOT NULL REFERENCES seat (id),
    try_number INTEGER NOT NULL,
    steps      TEXT NOT NULL,
    at_ms      INTEGER NOT NULL,
    PRIMARY KEY (round_id, seat_id)
  ) STRICT, WITHOUT ROWID;

  CREATE TABLE lesson_plan (
    id         TEXT PRIMARY KEY,
    teacher_id TEXT NOT NULL,
    plan       TEXT NOT NULL,
    kept_ms    INTEGER NOT NULL
  ) STRICT, WITHOUT ROWID;

  CREATE TABLE class_roster (
    id         TEXT PRIMARY KEY,
    teacher_id TEXT NOT NULL,
    roster     TEXT NOT NULL,
    kept_ms    INTEGER NOT NULL
  ) STRICT, WITHOUT ROWID;
  `,
]
