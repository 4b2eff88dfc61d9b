-- SPDX-License-Identifier: MIT
-- How a gap is mended: what helps until then, who mended it, who looked at it afterwards, how often it was not.

ALTER TABLE gap ADD COLUMN measure TEXT COLLATE "C" NOT NULL DEFAULT '';
ALTER TABLE gap ADD COLUMN mended_by TEXT COLLATE "C" NOT NULL DEFAULT '';
ALTER TABLE gap ADD COLUMN mended_at BIGINT;
ALTER TABLE gap ADD COLUMN verified_by TEXT COLLATE "C" NOT NULL DEFAULT '';
ALTER TABLE gap ADD COLUMN verified_at BIGINT;
ALTER TABLE gap ADD COLUMN reopened BIGINT NOT NULL DEFAULT 0;
