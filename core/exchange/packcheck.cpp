// SPDX-License-Identifier: MIT
#include "core/exchange/packcheck.h"

#include "core/exchange/packfeed.h"
#include "core/exchange/packrecord.h"
#include "core/store/failure.h"

namespace cradlepost {

namespace {

/** Where a chain stands as its records go by. */
struct Walk
{
    std::int64_t here = 0; ///< last seq that is here
    Hash prev{}; ///< hash of the record before the next one; the one here, for the first
};

class Check
{
public:
    Check(const Store& store, PackReader& reader)
        : m_store(store)
        , m_reader(reader)
    {
        m_checked.sealed = reader.head().receiver.has_value();
        m_checked.manifest = reader.manifest();
    }

    PackChecked run()
    {
        placeChains();
        feed(m_reader,
            {.prepare = [this](PackEntry& entry) { return prepare(entry); },
                .work = examine,
                .use = [this](PackEntry& entry) { use(entry); }});
        m_checked.digest = m_reader.finish();
        return std::move(m_checked);
    }

private:
    /** Refuses when records are missing between what is here and what is in the pack; names all of them. */
    void placeChains()
    {
        std::map<std::string, std::int64_t> here;
        for (const Chain& chain : need(m_store.chains()))
            here.emplace(chain.station, chain.seq);
        std::string missing;
        for (const PackChain& chain : m_checked.manifest.chains) {
            const auto at = here.find(chain.station);
            Walk& walk = m_walks[chain.station];
            walk.here = at == here.end() ? 0 : at->second;
            if (chain.from > walk.here + 1)
                missing += (missing.empty() ? "" : ", ") + std::to_string(walk.here + 1) + " to "
                    + std::to_string(chain.from - 1) + " of station " + chain.station;
            else if (chain.from > 1)
                walk.prev = need(m_store.sealOf(chain.station, chain.from - 1)).value_or(RecordSeal{}).hash;
        }
        if (!missing.empty())
            refuse(ErrorCode::NotFound, "records are missing before those in the pack: " + missing,
                "Ask for a pack that begins earlier: 'have' writes a list of what is here, and 'export "
                "--have' "
                "answers it. Nothing was taken in.");
    }

    bool prepare(PackEntry& entry)
    {
        if (entry.seq <= m_walks[entry.chain->station].here)
            entry.known = need(m_store.sealOf(entry.chain->station, entry.seq));
        return true;
    }

    static void examine(PackEntry& entry)
    {
        auto read = readRecord(entry.line);
        if (!read) {
            entry.fault = read.error();
            return;
        }
        Record& record = read->record;
        if (record.station != entry.chain->station || record.seq != entry.seq)
            entry.fault = Error{.code = ErrorCode::Forged,
                .message
                = "record " + record.station + '/' + std::to_string(record.seq) + " stands in its place",
                .hint = {}};
        else if (auto sealed = checkRecord(record, entry.chain->key, entry.known); !sealed)
            entry.fault = std::move(sealed.error());
        record.body.clear(); // only the rest is looked at
        entry.arrival.record = std::move(record);
    }

    void use(PackEntry& entry)
    {
        const Record& record = entry.arrival.record;
        Walk& walk = m_walks[record.station];
        if (record.prev != walk.prev)
            refuseLink(entry, walk);
        if (entry.known && entry.known->hash != record.hash)
            refuseFork(entry);
        walk.prev = record.hash;
        if (entry.known) {
            ++m_checked.known;
            return;
        }
        ++m_checked.arriving[{record.unit, record.kind}];
        ++m_checked.byStation[record.station];
        m_checked.writers[record.station].insert(record.unit);
    }

    [[noreturn]] static void refuseLink(const PackEntry& entry, const Walk& walk)
    {
        // Before the first record of the pack stands one that is here: then two chains grew from one key.
        if (entry.seq == entry.chain->from && entry.seq == walk.here + 1 && entry.seq > 1)
            refuseFork(entry);
        throw Failure{atRecord(*entry.chain, entry.seq,
            {.code = ErrorCode::Forged,
                .message = "it does not follow the record before it (prev)",
                .hint = "Nothing was taken in."})};
    }

    [[noreturn]] static void refuseFork(const PackEntry& entry)
    {
        throw Failure{atRecord(*entry.chain, entry.seq,
            {.code = ErrorCode::Forged,
                .message = "the chain has forked: it is not the record that is here, or does not follow it, "
                           "though its station signed it",
                .hint
                = "Two databases go on with one key, perhaps a copy that was put back by hand. Keep both "
                  "and find out which one is right. Nothing was taken in."})};
    }

    const Store& m_store;
    PackReader& m_reader;
    PackChecked m_checked;
    std::map<std::string, Walk> m_walks;
};

}

PackChecked checkPack(const Store& store, const std::string& path, const PackLimits& limits)
{
    PackReader reader(
        path, [&store] { return need(store.ownKey()); }, limits);
    return Check(store, reader).run();
}

}
