-- SPDX-License-Identifier: MIT
-- No projection: whose records a person has agreed to take in. It stays on this station.

CREATE TABLE station_trust (
    station TEXT NOT NULL,
    public_key BLOB, -- once it was seen; the station's id is made from it
    name TEXT NOT NULL, -- as the person calls it
    trusted_at INTEGER NOT NULL,
    trusted_by TEXT NOT NULL,
    units TEXT NOT NULL, -- JSON: units that it may write though another station has written them
    PRIMARY KEY (station),
    CHECK (public_key IS NULL OR length(public_key) = 32)
) STRICT, WITHOUT ROWID;
