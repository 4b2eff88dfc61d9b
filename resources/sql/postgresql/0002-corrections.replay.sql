-- SPDX-License-Identifier: MIT
-- Rounds that were amended or came from paper, spot checks, change ideas. What is made anew here is a projection;
-- ".replay" in the name has all of them filled from the ledger after this step.

DROP TABLE round;

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
    recorded BIGINT NOT NULL, -- when its record was made, by a clock that never goes back
    set_back BIGINT NOT NULL, -- milliseconds that the clock was behind what the chain had seen
    source TEXT COLLATE "C" NOT NULL, -- station, or paper: entered later from a sheet
    amended BIGINT NOT NULL, -- how many times; outcomes to readings are those of the last one
    amended_at BIGINT, -- when the last time
    actor TEXT COLLATE "C" NOT NULL,
    readings TEXT COLLATE "C" NOT NULL, -- measured values: "0=26400 20=80000", position of the item and thousandths
    PRIMARY KEY (unit, slot, station, seq),
    CHECK (length(outcomes) > 0 AND outcomes ~ '^[mgnu]*$'),
    CHECK (0 <= met AND met <= applicable AND applicable <= length(outcomes)),
    CHECK (readiness BETWEEN 0 AND 10000),
    CHECK (source IN ('station', 'paper')),
    CHECK (amended >= 0 AND (amended = 0) = (amended_at IS NULL))
);

-- All amendments by the round that they name, also those that came before it or do not fit it.
CREATE TABLE amendment (
    station TEXT COLLATE "C" NOT NULL, -- of the round
    seq BIGINT NOT NULL,
    at BIGINT NOT NULL,
    by_station TEXT COLLATE "C" NOT NULL, -- of the amendment
    by_seq BIGINT NOT NULL,
    PRIMARY KEY (station, seq, at, by_station, by_seq)
);

-- "item" and "nth" name the gap, so that an action that came before its gap is found when that opens.
DROP TABLE gap_action;

CREATE TABLE gap_action (
    unit TEXT COLLATE "C" NOT NULL,
    at BIGINT NOT NULL,
    station TEXT COLLATE "C" NOT NULL,
    seq BIGINT NOT NULL,
    item TEXT COLLATE "C" NOT NULL,
    nth BIGINT NOT NULL,
    PRIMARY KEY (unit, at, station, seq)
);

CREATE TABLE change_idea (
    unit TEXT COLLATE "C" NOT NULL,
    idea TEXT COLLATE "C" NOT NULL,
    body TEXT COLLATE "C" NOT NULL, -- of the last record about it
    at BIGINT NOT NULL,
    station TEXT COLLATE "C" NOT NULL,
    seq BIGINT NOT NULL,
    PRIMARY KEY (unit, idea)
);
