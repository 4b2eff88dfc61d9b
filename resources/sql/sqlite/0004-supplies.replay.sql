-- SPDX-License-Identifier: MIT
-- Stock, equipment, warmers, expected births, fridge readings, handovers: each fact as its record says it, in the
-- order in which it happened. What follows from them is worked out on reading.

CREATE TABLE supply_fact (
    unit TEXT NOT NULL,
    kind TEXT NOT NULL, -- of the record; 'stock-item' for a 'stock' record that sets up an item
    subject TEXT NOT NULL, -- stock item, device, birth; for a handover 'given' or 'taken'
    at INTEGER NOT NULL, -- when it happened
    station TEXT NOT NULL,
    seq INTEGER NOT NULL,
    body TEXT NOT NULL,
    PRIMARY KEY (unit, kind, subject, at, station, seq)
) STRICT, WITHOUT ROWID;
