// SPDX-License-Identifier: MIT
#include "ui/report/reportabout.h"

#include "tests/support/builders.h"
#include "tests/support/qstringprint.h"

#include <algorithm>
#include <doctest/doctest.h>

using namespace cradlepost;
using namespace cradlepost::test;
using namespace std::chrono;

namespace {

/** Two stations, of which the one with the later id by letters wrote first. */
struct TwoStations
{
    TwoStations()
        : store(aStore(dir.file("ward.db"), clock, aPlainAdoption(12)))
    {
        std::vector<StationKey> keys{aKey(1), aKey(2)};
        std::sort(keys.begin(), keys.end(),
            [](const StationKey& a, const StationKey& b) { return a.id() < b.id(); });
        first = keys[1].id();
        last = keys[0].id();
        write(keys[1], "tarn-ferry");
        write(keys[0], "ostrey");
    }

    void write(const StationKey& key, const std::string& unit)
    {
        clock.advance(hours(1));
        store->signWith(key);
        must(store->describeUnit(aUnit(unit), "AB"));
    }

    [[nodiscard]] ReportSeal seal(const std::string& unit = {}) const
    {
        const TimeText times(language, TimeZone::utc());
        return must(reportSeal(*store, times, clock.now(), unit));
    }

    TempDir dir;
    FixedClock clock{sys_days(2026y / 11 / 3)};
    std::unique_ptr<Store> store;
    Language language{QStringLiteral("en")};
    std::string first;
    std::string last;
};

}

TEST_CASE("the seal names the chain that wrote last, not the last one by its id")
{
    const TwoStations stations;
    CHECK(stations.seal().station == qs(stations.last));
    CHECK(stations.seal().made == QStringLiteral("2026-11-03 02:00"));
}

TEST_CASE("the seal is the hash of that chain's last record, in hex")
{
    const TwoStations stations;
    for (const Chain& chain : must(stations.store->chains())) {
        if (chain.station != stations.last)
            continue;
        const QByteArray hash(reinterpret_cast<const char*>(chain.hash.data()), 32);
        CHECK(stations.seal().headHash == QString::fromLatin1(hash.toHex()));
    }
    CHECK(stations.seal().headHash.size() == 64);
}

TEST_CASE("a report of one unit names a chain that wrote for it")
{
    const TwoStations stations;
    CHECK(stations.seal("tarn-ferry").station == qs(stations.first));
    CHECK(stations.seal("ostrey").station == qs(stations.last));
    CHECK(stations.seal("nowhere").station.isEmpty());
}

TEST_CASE("cautions stand one a line, and every signed document has them")
{
    const Language language(QStringLiteral("en"));
    const auto cautions = reportCautions();
    REQUIRE_FALSE(cautions.empty());
    for (const QString& line : cautions)
        CHECK_FALSE(line.contains(QLatin1Char('\n')));
    ReportDocument document;
    signDocument(document, {.station = QStringLiteral("x")}, language);
    CHECK(document.cautions == cautions);
    CHECK(document.language == QStringLiteral("en"));
    CHECK(document.seal.station == QStringLiteral("x"));
}
