// SPDX-License-Identifier: MIT
#pragma once

#include "core/exchange/packformat.h"
#include "core/store/chain.h"

namespace cradlepost {

/** A record of a pack, and its body read. */
struct ReadRecord
{
    Record record;
    Json body;
};

/** A record as one line of canonical JSON, its end in. */
std::string recordLine(const Record& record);
/**
 * The record in a line (without its end) that is canonical to the letter, with a body that may stand in the
 * ledger. Neither hash nor signature is looked at.
 */
Result<ReadRecord> readRecord(std::string_view line);
/** The same of a line that readRecord has passed before: whether the body is canonical is not asked again. */
Result<ReadRecord> readCheckedRecord(std::string_view line);

/**
 * Whether the record is what its station sealed. One that is `known` here with the same seal was looked at
 * when it came in: only its hash is computed again.
 */
Result<void> checkRecord(const Record& record, const PublicKey& key, const std::optional<RecordSeal>& known);

}
