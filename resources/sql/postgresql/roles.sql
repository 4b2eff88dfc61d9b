-- SPDX-License-Identifier: MIT
-- Rights for stations and reviewers. Whoever owns the tables runs it, again after each schema step; then grants
-- the role to each login: GRANT cradlepost_station TO "sorrel-hill-pc".
-- A station appends to the ledger and reads it; it never changes or deletes there. In the projections it changes
-- what its records change; `verify` compares them with the ledger, and only the owner can rebuild them.

DO $$
BEGIN
    IF NOT EXISTS (SELECT 1 FROM pg_roles WHERE rolname = 'cradlepost_station') THEN
        CREATE ROLE cradlepost_station NOLOGIN;
    END IF;
    IF NOT EXISTS (SELECT 1 FROM pg_roles WHERE rolname = 'cradlepost_reviewer') THEN
        CREATE ROLE cradlepost_reviewer NOLOGIN;
    END IF;
    EXECUTE format('GRANT USAGE ON SCHEMA %I TO cradlepost_station, cradlepost_reviewer', current_schema());
    EXECUTE format(
        'GRANT SELECT ON ALL TABLES IN SCHEMA %I TO cradlepost_station, cradlepost_reviewer', current_schema());
END
$$;

GRANT INSERT ON record, station TO cradlepost_station;
GRANT INSERT ON clock_back, round, amendment, gap_action, supply_fact, stock_movement TO cradlepost_station;
GRANT UPDATE ON round TO cradlepost_station; -- an amended round
GRANT INSERT, UPDATE ON unit, shift_pattern, people, checklist, adoption, change_idea, gap_progress, round_month
    TO cradlepost_station;
GRANT INSERT, UPDATE, DELETE ON gap TO cradlepost_station; -- a closed gap moves to another key
GRANT INSERT, UPDATE, DELETE ON draft, station_trust TO cradlepost_station;
