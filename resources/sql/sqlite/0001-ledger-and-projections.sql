-- SPDX-License-Identifier: MIT
-- The ledger: facts, sealed and chained, never changed. All times are UTC milliseconds, all slots as in
-- core/base/shiftcalendar.h, all codes as in the records.

PRAGMA application_id = 1129338740; -- "CPst": tells this file from other programs' databases

CREATE TABLE station (
    station TEXT NOT NULL,
    public_key BLOB NOT NULL,
    PRIMARY KEY (station),
    CHECK (length(public_key) = 32)
) STRICT;

-- Rows of almost a kilobyte: an ordinary table, since WITHOUT ROWID would move them to overflow pages.
-- "body" is canonical JSON (RFC 8785), compressed (zlib, RFC 1950; then its CRC-32): a
-- third of the size.
CREATE TABLE record (
    station TEXT NOT NULL REFERENCES station (station),
    seq INTEGER NOT NULL,
    unit TEXT NOT NULL,
    kind TEXT NOT NULL,
    made_at INTEGER NOT NULL,
    actor TEXT NOT NULL,
    body BLOB NOT NULL,
    prev BLOB NOT NULL,
    hash BLOB NOT NULL,
    signature BLOB NOT NULL,
    PRIMARY KEY (station, seq),
    CHECK (seq > 0),
    CHECK (length(prev) = 32 AND length(hash) = 32 AND length(signature) = 64)
) STRICT;

CREATE TRIGGER record_keeps_rows BEFORE DELETE ON record
BEGIN
    SELECT RAISE(ABORT, 'the ledger is append-only: no record is deleted');
END;

CREATE TRIGGER record_keeps_values BEFORE UPDATE ON record
BEGIN
    SELECT RAISE(ABORT, 'the ledger is append-only: no record is changed');
END;

-- INSERT OR REPLACE would delete without the trigger above.
CREATE TRIGGER record_is_not_replaced BEFORE INSERT ON record
WHEN EXISTS (SELECT 1 FROM record WHERE station = NEW.station AND seq = NEW.seq)
BEGIN
    SELECT RAISE(ABORT, 'the ledger is append-only: no record is replaced');
END;

CREATE TRIGGER station_keeps_rows BEFORE DELETE ON station
BEGIN
    SELECT RAISE(ABORT, 'a station of the ledger is not deleted');
END;

CREATE TRIGGER station_keeps_values BEFORE UPDATE ON station
BEGIN
    SELECT RAISE(ABORT, 'a station of the ledger is not changed');
END;

-- From here on projections: all of it can be rebuilt from the ledger. The columns of a primary key come first.
-- "at" is when a record was made, by a clock that never goes back: the latest time its chain had seen.

-- Records made while the clock was behind what its chain had seen before.
CREATE TABLE clock_back (
    station TEXT NOT NULL,
    seq INTEGER NOT NULL,
    latest INTEGER NOT NULL, -- the latest time seen before on the chain
    PRIMARY KEY (station, seq)
) STRICT, WITHOUT ROWID;

CREATE TABLE unit (
    unit TEXT NOT NULL,
    name TEXT NOT NULL,
    zone TEXT NOT NULL,
    level TEXT NOT NULL,
    at INTEGER NOT NULL,
    station TEXT NOT NULL,
    seq INTEGER NOT NULL,
    PRIMARY KEY (unit)
) STRICT, WITHOUT ROWID;

CREATE TABLE shift_pattern (
    unit TEXT NOT NULL,
    from_day TEXT NOT NULL,
    starts TEXT NOT NULL, -- the body of the record
    at INTEGER NOT NULL,
    station TEXT NOT NULL,
    seq INTEGER NOT NULL,
    PRIMARY KEY (unit, from_day)
) STRICT, WITHOUT ROWID;

CREATE TABLE people (
    unit TEXT NOT NULL,
    list TEXT NOT NULL, -- the body of the record
    at INTEGER NOT NULL,
    station TEXT NOT NULL,
    seq INTEGER NOT NULL,
    PRIMARY KEY (unit)
) STRICT, WITHOUT ROWID;

-- The document stands in the record that is named: the first that brought it.
CREATE TABLE checklist (
    checklist TEXT NOT NULL,
    version INTEGER NOT NULL,
    sha256 BLOB NOT NULL,
    at INTEGER NOT NULL,
    station TEXT NOT NULL,
    seq INTEGER NOT NULL,
    PRIMARY KEY (checklist, version)
) STRICT, WITHOUT ROWID;

CREATE TABLE adoption (
    unit TEXT NOT NULL,
    kind TEXT NOT NULL, -- of the rounds it is for
    from_day TEXT NOT NULL,
    checklist TEXT NOT NULL,
    version INTEGER NOT NULL,
    limits TEXT NOT NULL, -- JSON: item to limit set
    at INTEGER NOT NULL,
    station TEXT NOT NULL,
    seq INTEGER NOT NULL,
    PRIMARY KEY (unit, kind, from_day)
) STRICT, WITHOUT ROWID;

CREATE TABLE round (
    unit TEXT NOT NULL,
    slot INTEGER NOT NULL,
    station TEXT NOT NULL,
    seq INTEGER NOT NULL,
    kind TEXT NOT NULL,
    checklist TEXT NOT NULL,
    version INTEGER NOT NULL,
    outcomes TEXT NOT NULL, -- m met, g gap, n does not apply, u not checked; in the order of the checklist
    verdict TEXT NOT NULL,
    met INTEGER NOT NULL,
    applicable INTEGER NOT NULL,
    readiness INTEGER NOT NULL, -- the index, in ten-thousandths
    started INTEGER NOT NULL,
    finished INTEGER NOT NULL,
    set_back INTEGER NOT NULL, -- milliseconds that the clock was behind what the chain had seen
    actor TEXT NOT NULL,
    readings TEXT NOT NULL, -- measured values: "0=26400 20=80000", position of the item and thousandths
    PRIMARY KEY (unit, slot, station, seq),
    CHECK (length(outcomes) > 0 AND outcomes NOT GLOB '*[^mgnu]*'),
    CHECK (0 <= met AND met <= applicable AND applicable <= length(outcomes)),
    CHECK (readiness BETWEEN 0 AND 10000)
) STRICT, WITHOUT ROWID;

-- The open gaps of a unit stand together: a round touches most of them.
CREATE TABLE gap (
    unit TEXT NOT NULL,
    closed INTEGER NOT NULL, -- 0 open, 1 closed
    item TEXT NOT NULL,
    nth INTEGER NOT NULL,
    severity TEXT NOT NULL,
    reason TEXT NOT NULL,
    reason_value TEXT NOT NULL,
    reason_limit TEXT NOT NULL,
    reason_part TEXT NOT NULL,
    reason_ready_at INTEGER,
    opened_slot INTEGER NOT NULL,
    opened_at INTEGER NOT NULL,
    opened_station TEXT NOT NULL,
    opened_seq INTEGER NOT NULL,
    found INTEGER NOT NULL,
    last_found INTEGER NOT NULL,
    closed_slot INTEGER,
    closed_at INTEGER,
    closed_station TEXT,
    closed_seq INTEGER,
    closed_as_not_applicable INTEGER NOT NULL,
    owner TEXT NOT NULL,
    due INTEGER NOT NULL,
    remark TEXT NOT NULL,
    PRIMARY KEY (unit, closed, item, nth),
    CHECK (nth > 0 AND found > 0),
    CHECK (closed IN (0, 1) AND (closed = 1) = (closed_at IS NOT NULL))
) STRICT, WITHOUT ROWID;

CREATE TABLE gap_action (
    unit TEXT NOT NULL,
    at INTEGER NOT NULL,
    station TEXT NOT NULL,
    seq INTEGER NOT NULL,
    PRIMARY KEY (unit, at, station, seq)
) STRICT, WITHOUT ROWID;

-- How far the gaps of a unit are carried: the last round or action that went into them.
CREATE TABLE gap_progress (
    unit TEXT NOT NULL,
    at INTEGER NOT NULL,
    station TEXT NOT NULL,
    seq INTEGER NOT NULL,
    held INTEGER NOT NULL, -- actions that came before the gap they name
    PRIMARY KEY (unit)
) STRICT, WITHOUT ROWID;

-- No projection: rounds that are being walked.
CREATE TABLE draft (
    unit TEXT NOT NULL,
    kind TEXT NOT NULL,
    body TEXT NOT NULL,
    saved_at INTEGER NOT NULL,
    PRIMARY KEY (unit, kind)
) STRICT, WITHOUT ROWID;
