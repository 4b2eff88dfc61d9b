-- SPDX-License-Identifier: MIT
-- The shift rounds of a month in one row: reviews read years of them at once, and reading each row of "round" took
-- most of their time. Rows of kilobytes: an ordinary table, since WITHOUT ROWID would move them to overflow pages.

CREATE TABLE round_month (
    unit TEXT NOT NULL,
    month INTEGER NOT NULL, -- as in slots: 12 times the year, and the month from 0
    rounds BLOB NOT NULL, -- see core/store/packedmonth.h
    PRIMARY KEY (unit, month)
) STRICT;

-- Gaps that were closed lately, among all that ever were.
CREATE INDEX gap_by_closing ON gap (unit, closed, closed_at);
