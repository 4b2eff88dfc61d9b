-- SPDX-License-Identifier: MIT
-- Rounds that were amended or came from paper, spot checks, change ideas. What is made anew here is a projection;
-- ".replay" in the name has all of them filled from the ledger after this step.

DROP TABLE round;

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
    recorded INTEGER NOT NULL, -- when its record was made, by a clock that never goes back
    set_back INTEGER NOT NULL, -- milliseconds that the clock was behind what the chain had seen
    source TEXT NOT NULL, -- station, or paper: entered later from a sheet
    amended INTEGER NOT NULL, -- how many times; outcomes to readings are those of the last one
    amended_at INTEGER, -- when the last time
    actor TEXT NOT NULL,
    readings TEXT NOT NULL, -- measured values: "0=26400 20=80000", position of the item and thousandths
    PRIMARY KEY (unit, slot, station, seq),
    CHECK (length(outcomes) > 0 AND outcomes NOT GLOB '*[^mgnu]*'),
    CHECK (0 <= met AND met <= applicable AND applicable <= length(outcomes)),
    CHECK (readiness BETWEEN 0 AND 10000),
    CHECK (source IN ('station', 'paper')),
    CHECK (amended >= 0 AND (amended = 0) = (amended_at IS NULL))
) STRICT, WITHOUT ROWID;

-- All amendments by the round that they name, also those that came before it or do not fit it.
CREATE TABLE amendment (
    station TEXT NOT NULL, -- of the round
    seq INTEGER NOT NULL,
    at INTEGER NOT NULL,
    by_station TEXT NOT NULL, -- of the amendment
    by_seq INTEGER NOT NULL,
    PRIMARY KEY (station, seq, at, by_station, by_seq)
) STRICT, WITHOUT ROWID;

-- "item" and "nth" name the gap, so that an action that came before its gap is found when that opens.
DROP TABLE gap_action;

CREATE TABLE gap_action (
    unit TEXT NOT NULL,
    at INTEGER NOT NULL,
    station TEXT NOT NULL,
    seq INTEGER NOT NULL,
    item TEXT NOT NULL,
    nth INTEGER NOT NULL,
    PRIMARY KEY (unit, at, station, seq)
) STRICT, WITHOUT ROWID;

CREATE TABLE change_idea (
    unit TEXT NOT NULL,
    idea TEXT NOT NULL,
    body TEXT NOT NULL, -- of the last record about it
    at INTEGER NOT NULL,
    station TEXT NOT NULL,
    seq INTEGER NOT NULL,
    PRIMARY KEY (unit, idea)
) STRICT, WITHOUT ROWID;
