-- SPDX-License-Identifier: MIT
-- The shift rounds of a month in one row: reviews read years of them at once, and reading each row of "round" took
-- most of their time.

CREATE TABLE round_month (
    unit TEXT COLLATE "C" NOT NULL,
    month BIGINT NOT NULL, -- as in slots: 12 times the year, and the month from 0
    rounds BYTEA NOT NULL, -- see core/store/packedmonth.h
    PRIMARY KEY (unit, month)
);
-- It is small already: pressing it once more on every save would cost more than its room.
ALTER TABLE round_month ALTER COLUMN rounds SET STORAGE EXTERNAL;

-- Gaps that were closed lately, among all that ever were.
CREATE INDEX gap_by_closing ON gap (unit, closed, closed_at);
