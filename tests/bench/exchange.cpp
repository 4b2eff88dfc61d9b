// SPDX-License-Identifier: MIT
// Figures of the exchange: rounds a second out of a database and into another one, everything verified, and
// what share of the import the signatures alone would take on one core.
#include "core/exchange/packimport.h"
#include "core/exchange/packrecord.h"
#include "core/exchange/packtext.h"
#include "core/exchange/packwriter.h"
#include "tests/support/builders.h"

#include <chrono>
#include <cstdio>
#include <filesystem>
#include <sys/resource.h>

using namespace cradlepost;
using namespace cradlepost::test;
using namespace std::chrono;

namespace {

double secondsOf(const std::function<void()>& run)
{
    const auto from = steady_clock::now();
    run();
    return duration<double>(steady_clock::now() - from).count();
}

double processorSeconds()
{
    rusage usage{};
    getrusage(RUSAGE_SELF, &usage);
    return static_cast<double>(usage.ru_utime.tv_sec + usage.ru_stime.tv_sec)
        + static_cast<double>(usage.ru_utime.tv_usec + usage.ru_stime.tv_usec) / 1e6;
}

/** About one item in twenty is a gap, moving through the list, as in a real unit. */
void walk(Store& store, FixedClock& clock, const Checklist& checklist, const std::string& unit, int rounds)
{
    must(store.together([&]() -> Result<void> {
        for (int n = 0; n < rounds; ++n) {
            RoundBuilder builder(checklist);
            builder.on(addDays(2020y / 1 / 1, n / 2), n % 2);
            for (std::size_t k = 0; k < 3; ++k)
                builder.withGap(
                    checklist.item((static_cast<std::size_t>(n) / 5 * 7 + k * 19) % checklist.itemCount())
                        .id);
            const RoundRecord round = builder.done();
            clock.set(round.finished);
            if (auto saved = store.saveRound(unit, round, "M. R."); !saved)
                return tl::unexpected(saved.error());
        }
        return {};
    }));
}

/** Processor seconds for all seals, hash and signature. */
double checkSeals(const Store& store)
{
    std::vector<std::pair<Record, PublicKey>> records;
    for (const Chain& chain : must(store.chains()))
        must(store.records(chain.station, 1, chain.seq, [&](const Record& record) -> Result<void> {
            records.emplace_back(record, chain.key);
            return {};
        }));
    const double before = processorSeconds();
    for (const auto& [record, key] : records)
        must(checkSeal(record, key));
    return processorSeconds() - before;
}

}

int main(int argc, char** argv)
{
    const int units = 8;
    const int each = argc > 1 ? std::stoi(argv[1]) / units : 1000;
    const int rounds = units * each;
    const TempDir dir;
    FixedClock clock(sys_days(2020y / 1 / 1));
    const auto district = must(Store::open(dir.file("district.db"), clock));
    ImportWish wish{.by = "M. R."};
    for (unsigned char n = 1; n <= units; ++n) {
        district->signWith(aKey(n));
        wish.trust.push_back(aKey(n).id());
        const std::string unit = "unit-" + std::to_string(n);
        addUnit(*district, aUnit(unit), anAdoption());
        walk(*district, clock, must(district->checklist("shift-readiness", 1)), unit, each);
    }
    const std::string pack = dir.file("district.pack");
    const double out = secondsOf([&] { must(writePack(*district, {}, pack, clock.now())); });
    ImportWish dryRun = wish;
    dryRun.dryRun = true;
    const auto target = must(Store::open(dir.file("target.db"), clock));
    const double first = secondsOf([&] { must(importPack(*target, pack, dryRun, clock.now())); });
    const double cpuBefore = processorSeconds();
    const double in = secondsOf([&] { must(importPack(*target, pack, wish, clock.now())); });
    const double cpu = processorSeconds() - cpuBefore;
    const double again = secondsOf([&] { must(importPack(*target, pack, wish, clock.now())); });
    const double seals = checkSeals(*target);
    if (must(target->verify()).fault)
        return 1;
    std::printf("%d rounds of %d units, %.0f bytes a round in the pack\n", rounds, units,
        static_cast<double>(std::filesystem::file_size(pack)) / rounds);
    std::printf("export                  %8.0f rounds/s\n", rounds / out);
    std::printf("import, all verified    %8.0f rounds/s, target 5000  %s\n", rounds / in,
        rounds / in >= 5000 ? "met" : "MISSED");
    std::printf("  of it the first reading %6.0f rounds/s alone\n", rounds / first);
    // Unlike the rates these hold on a busy machine too.
    std::printf("  processor time %.0f us a round; seals %.0f us of it, %.0f %%\n", cpu / rounds * 1e6,
        seals / rounds * 1e6, 100 * seals / cpu);
    std::printf("the same pack again     %8.0f rounds/s\n", rounds / again);
    return 0;
}
