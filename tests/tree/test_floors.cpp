// SPDX-License-Identifier: MIT
#include "houserules.h"

#include <doctest/doctest.h>

namespace {

const std::string top = CRADLEPOST_SOURCE_DIR;

std::vector<std::string> pathsUnder(const std::string& folder)
{
    std::vector<std::string> paths;
    for (const SourceFile& file : sourcesUnder(top, folder))
        paths.push_back(file.path);
    return paths;
}

}

TEST_CASE("every file of the product keeps the rules of the house")
{
    std::size_t files = 0;
    std::size_t includes = 0;
    for (const char* folder : {"core", "ui", "app"}) {
        for (const SourceFile& file : sourcesUnder(top, folder)) {
            ++files;
            includes += readSource(file.text).includes.size();
            for (const std::string& fault : faultsOf(file))
                FAIL_CHECK(fault);
        }
    }
    // Fewer would mean that the walk over the tree went wrong.
    CHECK(files > 60);
    CHECK(includes > 3 * files);
}

TEST_CASE("every source of core has its mirror in the tests, or a reason")
{
    const auto faults = mirrorFaults(pathsUnder("core"), pathsUnder("tests/core"),
        {{"core/base/clock.cpp", "one line that asks the system"},
            {"core/base/result.cpp", "one table of names"},
            {"core/checklist/objectreader.cpp",
                "seen through the readers that use it: test_reader, test_rulereader"},
            {"core/review/options.cpp", "three weights: test_lostreadiness"},
            {"core/review/instrumentstep.cpp", "seen through what reads readings: test_readingreview"},
            {"core/review/findingcodes.cpp", "two tables of names"},
            {"core/review/readinesstables.cpp", "parts of monthTables: test_monthtables"},
            {"core/review/coursetables.cpp", "parts of monthTables: test_monthtables"},
            {"core/review/patterntables.cpp", "parts of monthTables: test_monthtables"},
            {"core/review/readingtables.cpp", "parts of monthTables: test_monthtables"},
            {"core/review/gaptables.cpp", "parts of monthTables: test_monthtables"},
            {"core/review/trusttables.cpp", "parts of monthTables: test_monthtables"},
            {"core/review/district.cpp", "puts the parts together: test_districtfindings"},
            {"core/review/unitquestions.cpp", "what a month asks: tests/app/demo/test_planteddistrict"},
            {"core/review/unittables.cpp", "parts of districtTables: test_districttables"},
            {"core/review/visittables.cpp", "parts of districtTables: test_districttables"},
            {"core/store/districthistory.cpp", "against the months of its units: tests/app/demo/test_planteddistrict"},
            {"core/store/dueshifts.cpp", "seen through test_unithistory"},
            {"core/stats/countdistributions.cpp", "part of distributions: test_distributions, and R on random cases"},
            {"core/stats/saddlepoint.cpp", "part of distributions: test_distributions, and R on random cases"},
            {"core/stats/specialfunctions.cpp", "part of distributions: test_distributions, and R on random cases"},
            {"core/stats/check.cpp", "refusals of the methods that use it, each tested there"},
            {"core/stats/controlchart.cpp", "what the charts share: test_pchart, test_uchart, test_xmrchart"},
            {"core/stats/linear.cpp", "solves for run lengths and log-rank, tested there"},
            {"core/exchange/libxlsxwriter.cpp", "a table of functions: test_tablesxlsx, test_lazylibrary"},
            {"core/exchange/packcheck.cpp", "the first reading of an import: test_packimport"},
            {"core/exchange/packfeed.cpp", "both readings go through it: test_packimport, test_orderedwork"},
            {"core/exchange/packfields.cpp", "members of a pack's lines: test_packimport, test_packmutations"},
            {"core/exchange/packformat.cpp", "lines of a pack: test_packimport, test_packmutations"},
            {"core/exchange/packhave.cpp", "the list that export answers: test_packwriter"},
            {"core/exchange/packreader.cpp", "a pack from head to end: test_packimport, test_packmutations"},
            {"core/exchange/packrecord.cpp", "record lines of a pack: test_packimport, test_packmutations"},
            {"core/exchange/packtext.cpp", "compressed lines within limits: test_packimport"},
            {"core/exchange/csvdictionary.cpp", "held against the tables: test_csvexport"},
            {"core/exchange/csvrounds.cpp", "rows of the tables: test_csvexport"},
            {"core/exchange/csvtablefile.cpp", "one table on its way: test_csvexport"},
            {"core/exchange/fhirmeasure.cpp", "in a bundle: test_fhirbundle, tests/standards"},
            {"core/exchange/fhirparts.cpp", "in a bundle: test_fhirbundle, tests/standards"},
            {"core/exchange/fhirquestionnaire.cpp", "in a bundle: test_fhirbundle, tests/standards"},
            {"core/exchange/fhirresponse.cpp", "in a bundle: test_fhirbundle, tests/standards"},
            {"core/store/", "one contract suite for the store as a whole"}});
    for (const std::string& fault : faults)
        FAIL_CHECK(fault);
    CHECK(pathsUnder("tests/core").size() > 10);
}
