-- SPDX-License-Identifier: MIT
-- What came to a shelf and left it, in columns: a page reads years of it at once, and reading each record's text
-- anew took most of its time. Records that set up an item stay in supply_fact.

CREATE TABLE stock_movement (
    unit TEXT NOT NULL,
    item TEXT NOT NULL,
    at INTEGER NOT NULL, -- when it happened
    station TEXT NOT NULL,
    seq INTEGER NOT NULL,
    kind TEXT NOT NULL,
    quantity INTEGER NOT NULL, -- of a count: what is there
    lot TEXT NOT NULL, -- '' when none is named
    expiry TEXT, -- last day of use
    reason TEXT NOT NULL,
    scope TEXT NOT NULL, -- of a count
    counterpart TEXT NOT NULL, -- of a transfer
    PRIMARY KEY (unit, item, at, station, seq)
) STRICT, WITHOUT ROWID;
