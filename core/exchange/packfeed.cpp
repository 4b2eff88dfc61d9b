// SPDX-License-Identifier: MIT
#include "core/exchange/packfeed.h"

#include "core/base/orderedwork.h"
#include "core/store/failure.h"

#include <algorithm>

namespace cradlepost {

namespace {

/** Entries that go through the threads together: one by one the handing over would cost more than the work.
 */
struct Batch
{
    std::vector<PackEntry> entries;
    std::size_t bytes = 0;
};

constexpr std::size_t batchEntries = 64;
constexpr std::size_t batchBytes = std::size_t{256} << 10U;
constexpr std::size_t mostBatches = 16;
/** Of text on its way; parsed it takes a multiple. */
constexpr std::size_t mostBytes = std::size_t{4} << 20U;

class Feed
{
public:
    Feed(PackReader& reader, const PackSteps& steps)
        : m_reader(reader)
        , m_steps(steps)
        , m_work(std::max(1U, std::thread::hardware_concurrency()), [&steps](Batch& batch) {
            for (PackEntry& entry : batch.entries)
                steps.work(entry);
        })
    {
    }

    void run()
    {
        for (const PackChain& chain : m_reader.manifest().chains)
            for (std::int64_t seq = chain.from; seq <= chain.to; ++seq)
                add(chain, seq);
        send();
        while (m_work.waiting() > 0)
            use();
    }

private:
    void add(const PackChain& chain, std::int64_t seq)
    {
        const std::string_view line = m_reader.nextLine();
        PackEntry entry{.chain = &chain, .seq = seq};
        if (!m_steps.prepare(entry))
            return;
        entry.line = line;
        m_next.bytes += line.size();
        m_next.entries.push_back(std::move(entry));
        if (m_next.entries.size() >= batchEntries || m_next.bytes >= batchBytes)
            send();
    }
    void send()
    {
        if (m_next.entries.empty())
            return;
        while (
            m_work.waiting() > 0 && (m_work.waiting() >= mostBatches || m_bytes + m_next.bytes > mostBytes))
            use();
        m_bytes += m_next.bytes;
        m_work.put(std::exchange(m_next, {}));
    }
    void use()
    {
        Batch batch = m_work.take();
        m_bytes -= batch.bytes;
        for (PackEntry& entry : batch.entries) {
            if (entry.fault)
                throw Failure{atRecord(*entry.chain, entry.seq, *entry.fault)};
            m_steps.use(entry);
        }
    }

    PackReader& m_reader;
    const PackSteps& m_steps;
    Batch m_next;
    std::size_t m_bytes = 0; ///< on their way
    OrderedWork<Batch> m_work;
};

}

void feed(PackReader& reader, const PackSteps& steps) { Feed(reader, steps).run(); }

Error atRecord(const PackChain& chain, std::int64_t seq, const Error& error)
{
    return {.code = error.code,
        .message = "record " + chain.station + '/' + std::to_string(seq) + ": " + error.message,
        .hint = error.hint};
}

}
