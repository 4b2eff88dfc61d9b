// SPDX-License-Identifier: MIT
// fhir_sample FOLDER: bundles for checkfhir.py, of a full month, of its figures alone and of a month without
// rounds.
#include "core/exchange/fhirbundle.h"
#include "core/ledger/canonical.h"
#include "tests/core/exchange/busymonth.h"

#include <fstream>

using namespace cradlepost;
using namespace cradlepost::test;

int main(int argc, char** argv)
{
    if (argc != 2)
        return 2;
    const std::string folder = argv[1];
    TempDir dir;
    const BusyMonth month(dir.file("ward.db"));
    const auto write = [&](const char* name, std::chrono::year_month of, bool rounds) {
        const Json bundle = must(fhir::monthBundle(
            *month.store, {.unit = month.unit, .month = of, .rounds = rounds}, month.clock.now()));
        std::ofstream(folder + '/' + name) << canonicalText(bundle);
    };
    write("full.json", std::chrono::year(2026) / 11, true);
    write("figures.json", std::chrono::year(2026) / 11, false);
    write("empty.json", std::chrono::year(2026) / 6, true);
    return 0;
}
