// SPDX-License-Identifier: MIT
#include "core/exchange/packimport.h"

#include "core/exchange/packfeed.h"
#include "core/exchange/packrecord.h"
#include "core/store/arrivals.h"
#include "core/store/failure.h"
#include "core/store/packing.h"
#include "core/store/recordkind.h"

#include <algorithm>

namespace cradlepost {

namespace {

/** Refuses when a question stays open. Gives what is to be trusted from now on. */
std::vector<TrustedStation> wordsGiven(
    const Store& store, const PackChecked& checked, const ImportWish& wish, Instant now)
{
    std::map<std::string, PublicKey> keys;
    for (const PackChain& chain : checked.manifest.chains)
        keys.emplace(chain.station, chain.key);
    auto questions = need(trustQuestions(store, checked.writers, keys));
    const auto answered = [&](const std::string& station) {
        return std::ranges::find(wish.trust, station) != wish.trust.end();
    };
    const auto before = need(store.trustedStations());
    std::vector<TrustedStation> given;
    for (const TrustQuestion& question : questions) {
        if (!answered(question.station))
            continue;
        const auto word = std::ranges::find(before, question.station, &TrustedStation::station);
        TrustedStation trusted = word != before.end() ? *word : TrustedStation{.station = question.station};
        trusted.key = keys.at(question.station);
        trusted.at = now;
        trusted.by = wish.by;
        for (const auto& [unit, others] : question.others)
            trusted.units.push_back(unit);
        given.push_back(std::move(trusted));
    }
    std::erase_if(questions, [&](const TrustQuestion& q) { return answered(q.station); });
    if (!questions.empty())
        throw Failure{untrusted(questions)};
    return given;
}

/** The second reading: what the first one found sound is written. */
class Taking
{
public:
    Taking(const PackChecked& checked, PackReader& reader, Arrivals& arrivals)
        : m_checked(checked)
        , m_reader(reader)
        , m_arrivals(arrivals)
    {
    }

    std::int64_t run()
    {
        for (const PackChain& chain : m_reader.manifest().chains) {
            need(m_arrivals.addStation(chain.station, chain.key));
            m_here[&chain] = need(m_arrivals.endOf(chain.station));
        }
        feed(m_reader,
            {.prepare = [this](PackEntry& entry) { return prepare(entry); },
                .work = makeReady,
                .use = [this](PackEntry& entry) { use(entry); }});
        if (m_reader.finish() != m_checked.digest)
            refuse(
                ErrorCode::Forged, "the file changed while it was read", "Nothing was taken in. Try again.");
        return m_fresh;
    }

private:
    bool prepare(PackEntry& entry)
    {
        if (entry.seq <= m_here[entry.chain])
            entry.known = need(m_arrivals.sealOf(entry.chain->station, entry.seq));
        return true;
    }

    /** The first reading has checked this very line, or else the sum at the end does not fit. */
    static void makeReady(PackEntry& entry)
    {
        auto read = readCheckedRecord(entry.line);
        if (!read) {
            entry.fault = read.error();
            return;
        }
        Arrival& arrival = entry.arrival;
        arrival.record = std::move(read->record);
        if (entry.known)
            return;
        arrival.packedBody = packed(arrival.record.body);
        arrival.body = std::move(read->body);
        if (arrival.record.kind != recordkind::round && arrival.record.kind != recordkind::observation)
            return;
        if (auto round = roundFromBody(arrival.body, arrival.record.body)) {
            arrival.round = std::move(*round);
            arrival.body = {};
        }
    }

    void use(PackEntry& entry)
    {
        const Record& record = entry.arrival.record;
        if (!entry.known) {
            need(m_arrivals.add(entry.arrival));
            ++m_fresh;
        } else if (entry.known->hash != record.hash) { // written since by somebody else
            refuse(ErrorCode::Forged,
                "record " + record.station + '/' + std::to_string(record.seq) + ": the chain has forked",
                "Nothing was taken in.");
        }
    }

    const PackChecked& m_checked;
    PackReader& m_reader;
    Arrivals& m_arrivals;
    std::map<const PackChain*, std::int64_t> m_here; ///< seq of its last record here
    std::int64_t m_fresh = 0;
};

Imported import(Store& store, const std::string& path, const ImportWish& wish, Instant now)
{
    Imported imported{.pack = checkPack(store, path, wish.limits)};
    const auto given = wordsGiven(store, imported.pack, wish, now);
    for (const TrustedStation& trusted : given)
        imported.trusted.push_back(trusted.station);
    for (const auto& [station, records] : imported.pack.byStation)
        imported.fresh += records;
    if (wish.dryRun || imported.fresh == 0)
        return imported;
    imported.fresh = need(takePack(store, path, imported.pack, given, wish.limits));
    return imported;
}

}

Result<std::int64_t> takePack(Store& store, const std::string& path, const PackChecked& checked,
    const std::vector<TrustedStation>& trusted, const PackLimits& limits)
{
    std::int64_t fresh = 0;
    const auto taken = store.takeIn([&](Arrivals& arrivals) {
        return attempt([&] {
            for (const TrustedStation& station : trusted)
                need(arrivals.trust(station));
            PackReader reader(
                path, [&store] { return need(store.ownKey()); }, limits);
            fresh = Taking(checked, reader, arrivals).run();
        });
    });
    if (!taken)
        return tl::unexpected(taken.error());
    return fresh;
}

Result<Imported> importPack(Store& store, const std::string& path, const ImportWish& wish, Instant now)
{
    auto imported = attempt([&] { return import(store, path, wish, now); });
    if (!imported)
        imported.error().message = "pack " + path + ": " + imported.error().message;
    return imported;
}

}
