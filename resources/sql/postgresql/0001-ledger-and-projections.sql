-- SPDX-License-Identifier: MIT
-- The ledger: facts, sealed and chained, never changed. All times are UTC milliseconds, all slots as in
-- core/base/shiftcalendar.h, all codes as in the records. Tables and columns are those of ../sqlite, in the same
-- order; texts compare by their bytes there, hence COLLATE "C" here. Every key begins with station or unit.

CREATE TABLE cradlepost_schema (
    one BOOLEAN NOT NULL DEFAULT true PRIMARY KEY CHECK (one),
    version BIGINT NOT NULL -- the number of the last step that was done
);
INSERT INTO cradlepost_schema (version) VALUES (0);

CREATE TABLE station (
    station TEXT COLLATE "C" NOT NULL,
    public_key BYTEA NOT NULL,
    PRIMARY KEY (station),
    CHECK (length(public_key) = 32)
);

-- "body" is canonical JSON (RFC 8785), compressed (zlib, RFC 1950; then its CRC-32): a
-- third of the size.
CREATE TABLE record (
    station TEXT COLLATE "C" NOT NULL REFERENCES station (station),
    seq BIGINT NOT NULL,
    unit TEXT COLLATE "C" NOT NULL,
    kind TEXT COLLATE "C" NOT NULL,
    made_at BIGINT NOT NULL,
    actor TEXT COLLATE "C" NOT NULL,
    body BYTEA NOT NULL,
    prev BYTEA NOT NULL,
    hash BYTEA NOT NULL,
    signature BYTEA NOT NULL,
    PRIMARY KEY (station, seq),
    CHECK (seq > 0),
    CHECK (length(prev) = 32 AND length(hash) = 32 AND length(signature) = 64)
);

-- Bytes that are compressed already.
ALTER TABLE record ALTER COLUMN body SET STORAGE EXTERNAL;

CREATE FUNCTION ledger_is_append_only() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
    RAISE EXCEPTION 'the ledger is append-only: nothing in % is changed or deleted', TG_TABLE_NAME;
END
$$;

CREATE TRIGGER record_keeps_rows BEFORE UPDATE OR DELETE ON record
    FOR EACH ROW EXECUTE FUNCTION ledger_is_append_only();
CREATE TRIGGER record_is_not_emptied BEFORE TRUNCATE ON record
    FOR EACH STATEMENT EXECUTE FUNCTION ledger_is_append_only();
CREATE TRIGGER station_keeps_rows BEFORE UPDATE OR DELETE ON station
    FOR EACH ROW EXECUTE FUNCTION ledger_is_append_only();
CREATE TRIGGER station_is_not_emptied BEFORE TRUNCATE ON station
    FOR EACH STATEMENT EXECUTE FUNCTION ledger_is_append_only();

-- Tells open windows that something was written, once the transaction is committed.
CREATE FUNCTION tell_of_record() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
    PERFORM pg_notify('cradlepost', '');
    RETURN NULL;
END
$$;
CREATE TRIGGER record_is_told AFTER INSERT ON record
    FOR EACH STATEMENT EXECUTE FUNCTION tell_of_record();

-- From here on projections: all of it can be rebuilt from the ledger. The columns of a primary key come first.
-- "at" is when a record was made, by a clock that never goes back: the latest time its chain had seen.

-- Records made while the clock was behind what its chain had seen before.
CREATE TABLE clock_back (
    station TEXT COLLATE "C" NOT NULL,
    seq BIGINT NOT NULL,
    latest BIGINT NOT NULL, -- the latest time seen before on the chain
    PRIMARY KEY (station, seq)
);

CREATE TABLE unit (
    unit TEXT COLLATE "C" NOT NULL,
    name TEXT COLLATE "C" NOT NULL,
    zone TEXT COLLATE "C" NOT NULL,
    level TEXT COLLATE "C" NOT NULL,
    at BIGINT NOT NULL,
    station TEXT COLLATE "C" NOT NULL,
    seq BIGINT NOT NULL,
    PRIMARY KEY (unit)
);

CREATE TABLE shift_pattern (
    unit TEXT COLLATE "C" NOT NULL,
    from_day TEXT COLLATE "C" NOT NULL,
    starts TEXT COLLATE "C" NOT NULL, -- the body of the record
    at BIGINT NOT NULL,
    station TEXT COLLATE "C" NOT NULL,
    seq BIGINT NOT NULL,
    PRIMARY KEY (unit, from_day)
);

CREATE TABLE people (
    unit TEXT COLLATE "C" NOT NULL,
    list TEXT COLLATE "C" NOT NULL, -- the body of the record
    at BIGINT NOT NULL,
    station TEXT COLLATE "C" NOT NULL,
    seq BIGINT NOT NULL,
    PRIMARY KEY (unit)
);

-- The document stands in the record that is named: the first that brought it.
CREATE TABLE checklist (
    checklist TEXT COLLATE "C" NOT NULL,
    version BIGINT NOT NULL,
    sha256 BYTEA NOT NULL,
    at BIGINT NOT NULL,
    station TEXT COLLATE "C" NOT NULL,
    seq BIGINT NOT NULL,
    PRIMARY KEY (checklist, version)
);

CREATE TABLE adoption (
    unit TEXT COLLATE "C" NOT NULL,
    kind TEXT COLLATE "C" NOT NULL, -- of the rounds it is for
    from_day TEXT COLLATE "C" NOT NULL,
    checklist TEXT COLLATE "C" NOT NULL,
    version BIGINT NOT NULL,
    limits TEXT COLLATE "C" NOT NULL, -- JSON: item to limit set
    at BIGINT NOT NULL,
    station TEXT COLLATE "C" NOT NULL,
    seq BIGINT NOT NULL,
    PRIMARY KEY (unit, kind, from_day)
);

CREATE TABLE round (
    unit TEXT COLLATE "C" NOT NULL,
    slot BIGINT NOT NULL,
    station TEXT COLLATE "C" NOT NULL,
    seq BIGINT NOT NULL,
    kind TEXT COLLATE "C" NOT NULL,
    checklist TEXT COLLATE "C" NOT NULL,
    version BIGINT NOT NULL,
    outcomes TEXT COLLATE "C" NOT NULL, -- m met, g gap, n does not apply, u not checked; in the order of the checklist
    verdict TEXT COLLATE "C" NOT NULL,
    met BIGINT NOT NULL,
    applicable BIGINT NOT NULL,
    readiness BIGINT NOT NULL, -- the index, in ten-thousandths
    started BIGINT NOT NULL,
    finished BIGINT NOT NULL,
    set_back BIGINT NOT NULL, -- milliseconds that the clock was behind what the chain had seen
    actor TEXT COLLATE "C" NOT NULL,
    readings TEXT COLLATE "C" NOT NULL, -- measured values: "0=26400 20=80000", position of the item and thousandths
    PRIMARY KEY (unit, slot, station, seq),
    CHECK (length(outcomes) > 0 AND outcomes ~ '^[mgnu]*$'),
    CHECK (0 <= met AND met <= applicable AND applicable <= length(outcomes)),
    CHECK (readiness BETWEEN 0 AND 10000)
);

-- The open gaps of a unit stand together: a round touches most of them.
CREATE TABLE gap (
    unit TEXT COLLATE "C" NOT NULL,
    closed BIGINT NOT NULL, -- 0 open, 1 closed
    item TEXT COLLATE "C" NOT NULL,
    nth BIGINT NOT NULL,
    severity TEXT COLLATE "C" NOT NULL,
    reason TEXT COLLATE "C" NOT NULL,
    reason_value TEXT COLLATE "C" NOT NULL,
    reason_limit TEXT COLLATE "C" NOT NULL,
    reason_part TEXT COLLATE "C" NOT NULL,
    reason_ready_at BIGINT,
    opened_slot BIGINT NOT NULL,
    opened_at BIGINT NOT NULL,
    opened_station TEXT COLLATE "C" NOT NULL,
    opened_seq BIGINT NOT NULL,
    found BIGINT NOT NULL,
    last_found BIGINT NOT NULL,
    closed_slot BIGINT,
    closed_at BIGINT,
    closed_station TEXT COLLATE "C",
    closed_seq BIGINT,
    closed_as_not_applicable BIGINT NOT NULL,
    owner TEXT COLLATE "C" NOT NULL,
    due BIGINT NOT NULL,
    remark TEXT COLLATE "C" NOT NULL,
    PRIMARY KEY (unit, closed, item, nth),
    CHECK (nth > 0 AND found > 0),
    CHECK (closed IN (0, 1) AND (closed = 1) = (closed_at IS NOT NULL))
);

CREATE TABLE gap_action (
    unit TEXT COLLATE "C" NOT NULL,
    at BIGINT NOT NULL,
    station TEXT COLLATE "C" NOT NULL,
    seq BIGINT NOT NULL,
    PRIMARY KEY (unit, at, station, seq)
);

-- How far the gaps of a unit are carried: the last round or action that went into them.
CREATE TABLE gap_progress (
    unit TEXT COLLATE "C" NOT NULL,
    at BIGINT NOT NULL,
    station TEXT COLLATE "C" NOT NULL,
    seq BIGINT NOT NULL,
    held BIGINT NOT NULL, -- actions that came before the gap they name
    PRIMARY KEY (unit)
);

-- No projection: rounds that are being walked.
CREATE TABLE draft (
    unit TEXT COLLATE "C" NOT NULL,
    kind TEXT COLLATE "C" NOT NULL,
    body TEXT COLLATE "C" NOT NULL,
    saved_at BIGINT NOT NULL,
    PRIMARY KEY (unit, kind)
);
