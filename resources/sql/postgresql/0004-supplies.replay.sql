-- SPDX-License-Identifier: MIT
-- Stock, equipment, warmers, expected births, fridge readings, handovers: each fact as its record says it, in the
-- order in which it happened. What follows from them is worked out on reading.

CREATE TABLE supply_fact (
    unit TEXT COLLATE "C" NOT NULL,
    kind TEXT COLLATE "C" NOT NULL, -- of the record; 'stock-item' for a 'stock' record that sets up an item
    subject TEXT COLLATE "C" NOT NULL, -- stock item, device, birth; for a handover 'given' or 'taken'
    at BIGINT NOT NULL, -- when it happened
    station TEXT COLLATE "C" NOT NULL,
    seq BIGINT NOT NULL,
    body TEXT COLLATE "C" NOT NULL,
    PRIMARY KEY (unit, kind, subject, at, station, seq)
);
