-- SPDX-License-Identifier: MIT
-- What came to a shelf and left it, in columns: a page reads years of it at once, and reading each record's text
-- anew took most of its time. Records that set up an item stay in supply_fact.

CREATE TABLE stock_movement (
    unit TEXT COLLATE "C" NOT NULL,
    item TEXT COLLATE "C" NOT NULL,
    at BIGINT NOT NULL, -- when it happened
    station TEXT COLLATE "C" NOT NULL,
    seq BIGINT NOT NULL,
    kind TEXT COLLATE "C" NOT NULL,
    quantity BIGINT NOT NULL, -- of a count: what is there
    lot TEXT COLLATE "C" NOT NULL, -- '' when none is named
    expiry TEXT COLLATE "C", -- last day of use
    reason TEXT COLLATE "C" NOT NULL,
    scope TEXT COLLATE "C" NOT NULL, -- of a count
    counterpart TEXT COLLATE "C" NOT NULL, -- of a transfer
    PRIMARY KEY (unit, item, at, station, seq)
);
