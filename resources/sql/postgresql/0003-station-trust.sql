-- SPDX-License-Identifier: MIT
-- No projection: whose records a person has agreed to take in. It stays on this station.

CREATE TABLE station_trust (
    station TEXT COLLATE "C" NOT NULL,
    public_key BYTEA, -- once it was seen; the station's id is made from it
    name TEXT COLLATE "C" NOT NULL, -- as the person calls it
    trusted_at BIGINT NOT NULL,
    trusted_by TEXT COLLATE "C" NOT NULL,
    units TEXT COLLATE "C" NOT NULL, -- JSON: units that it may write though another station has written them
    PRIMARY KEY (station),
    CHECK (public_key IS NULL OR length(public_key) = 32)
);
