// SPDX-License-Identifier: MIT
#include "houserules.h"

#include <doctest/doctest.h>

namespace {

const std::string head = "// SPDX-License-Identifier: MIT\n";

std::string joined(const std::vector<std::string>& faults)
{
    std::string all;
    for (const std::string& fault : faults)
        all += fault + "\n";
    return all;
}

std::vector<std::string> faultsIn(const std::string& path, const std::string& text)
{
    return faultsOf({path, head + text});
}

/** One file and what must be said of it; empty: nothing. */
struct Case
{
    const char* path;
    std::string text;
    const char* said;
};

void check(const std::vector<Case>& table)
{
    for (const Case& c : table) {
        CAPTURE(c.path);
        CAPTURE(c.text);
        const auto faults = faultsIn(c.path, c.text);
        const std::string all = joined(faults);
        CAPTURE(all);
        CHECK(faults.size() == (*c.said == '\0' ? 0U : 1U));
        CHECK(all.find(c.said) != std::string::npos);
    }
}

}

TEST_CASE("an include that runs against the floors is named")
{
    check(
        {{"core/base/a.cpp", "#include \"core/round/judge.h\"\n", "'core/round/judge.h' against the floors"},
            {"core/base/a.cpp", "#include \"core/stats/mean.h\"\n", "against the floors"},
            {"core/stats/a.cpp", "#include \"core/base/result.h\"\n", ""},
            {"core/checklist/a.cpp", "#include \"core/ledger/record.h\"\n", "against the floors"},
            {"core/round/a.cpp", "#include \"core/gap/gap.h\"\n", "against the floors"},
            {"core/round/a.cpp", "#include \"core/supply/lot.h\"\n", "against the floors"},
            {"core/supply/a.cpp", "#include \"core/round/judge.h\"\n", "against the floors"},
            {"core/review/a.cpp", "#  include <core/store/store.h>\n", "against the floors"},
            {"core/store/a.cpp", "#include \"core/exchange/pack.h\"\n", "against the floors"},
            {"core/exchange/a.cpp", "#include \"ui/text/sentence.h\"\n", "against the floors"},
            {"ui/pages/a.cpp", "#include \"app/options.h\"\n", "against the floors"},
            {"core/round/a.cpp", "#include \"core/misfit/a.h\"\n", "has no floor"},
            {"core/round/a.cpp", "#include \"../store/a.h\"\n", "by climbing"},
            {"core/attic/a.cpp", "int x;\n", "lies in a folder that has no floor"}});
}

TEST_CASE("an include that follows the floors is let pass")
{
    check({{"core/round/a.cpp", "#include \"core/round/judge.h\"\n#include \"core/base/result.h\"\n", ""},
        {"core/round/a.cpp", "#include \"judge.h\"\n#include <vector>\n", ""},
        {"core/gap/a.cpp", "#include \"core/round/roundrecord.h\"\n", ""},
        {"core/review/a.cpp", "#include \"core/gap/gap.h\"\n#include \"core/stats/mean.h\"\n", ""},
        {"core/exchange/a.cpp", "#include \"core/store/store.h\"\n", ""},
        {"ui/pages/a.cpp", "#include \"ui/text/sentence.h\"\n#include \"core/store/store.h\"\n", ""},
        {"app/main.cpp", "#include \"ui/window/mainwindow.h\"\n#include <QApplication>\n", ""},
        {"core/base/a.cpp", "// #include \"core/round/judge.h\"\n/* #include \"ui/a.h\" */\n", ""}});
}

TEST_CASE("Qt stands only where it may")
{
    check({{"core/round/a.cpp", "#include <QWidget>\n", "'QWidget', a header of windows, in core"},
        {"core/round/a.cpp", "#include <QtWidgets/QLabel>\n", "a header of windows"},
        {"core/exchange/a.cpp", "#include <QtGui>\n", "a header of windows"},
        {"core/review/a.cpp", "#include <QPainter>\n", "a header of windows"},
        {"core/review/a.cpp", "#include <QtCharts/QChartView>\n", "a header of windows"},
        {"core/stats/a.cpp", "#include <QString>\n", "Qt, in core/stats"},
        {"core/stats/a.cpp", "#include <QtCore/QString>\n", "Qt, in core/stats"},
        {"core/exchange/a.cpp", "#include <QSqlQuery>\n", "outside core/store"},
        {"ui/pages/a.cpp", "#include <QtSql/QSqlDatabase>\n", "outside core/store"},
        {"app/main.cpp", "#include <QSqlDatabase>\n", "outside core/store"},
        {"core/exchange/a.cpp", "#include <sqlite3.h>\n", "outside core/store"},
        {"app/main.cpp", "#include <postgresql/libpq-fe.h>\n", "outside core/store"},
        {"core/base/a.cpp", "void f() { QMessageBox::about(0, t, t); }\n", "a message box in core"},
        {"core/store/a.cpp", "#include <sqlite3.h>\n#include <QString>\n", ""},
        {"core/base/a.cpp", "#include <QTimeZone>\n", ""},
        {"ui/pages/a.cpp", "#include <QPrinter>\n", "outside ui/output"},
        {"app/a.cpp", "#include <QtSvg/QSvgGenerator>\n", "outside ui/output"},
        {"ui/output/a.cpp", "#include <QPrintDialog>\n#include <QSvgGenerator>\n", ""},
        {"ui/a.cpp", "#include <QMessageBox>\n#include <QWidget>\n", ""}});
}

TEST_CASE("SQL outside core/store is found, a sentence is not")
{
    check({{"ui/pages/a.cpp", "auto q = \"SELECT item FROM gap\";\n", "holds SQL"},
        {"core/review/a.cpp", "auto q = \"select item from gap where unit = ?\";\n", "holds SQL"},
        {"core/exchange/a.cpp", "auto q = R\"(insert\n  into gap values (1))\";\n", "holds SQL"},
        {"core/exchange/a.cpp", "auto q = R\"sql(update gap set x = ')'; delete from gap)sql\";\n",
            "holds SQL"},
        {"app/a.cpp", "auto q = \"PRAGMA user_version\";\n", "holds SQL"},
        {"app/a.cpp", "auto q = u\"create table x (a)\";\n", "holds SQL"},
        {"core/store/a.cpp", "auto q = \"SELECT item FROM gap\";\n", ""},
        {"ui/pages/a.cpp", "auto q = tr(\"Select a unit from the list\");\n", ""},
        {"ui/pages/a.cpp", "// SELECT item FROM gap\nint selectFrom;\n", ""},
        {"ui/pages/a.cpp", "auto c = '\"'; auto n = 1'000; // SELECT \"SELECT a FROM b\"\n", ""}});
}

TEST_CASE("singletons and names that say nothing are found")
{
    check({{"core/round/a.h", "#pragma once\nstatic Judge& instance();\n", "has a singleton"},
        {"ui/a.cpp", "auto& s = Store::instance();\n", "has a singleton"},
        {"ui/a.cpp", "auto* a = QCoreApplication::instance();\nauto b = lastinstance();\n", ""},
        {"core/round/roundutils.cpp", "int x;\n", "'util' in its path"},
        {"ui/helpers/a.cpp", "int x;\n", "'helper' in its path"},
        {"core/round/RoundManager.cpp", "int x;\n", "'manager' in its path"},
        {"core/round/misc.cpp", "int x;\n", "'misc' in its path"},
        {"core/round/a.cpp", "class RoundManager { };\n", "a type named"},
        {"core/round/a.cpp", "namespace strutil {\n}\n", "a type named"},
        {"core/round/a.cpp", "class QNetworkAccessManager;\nclass Round { };\n", ""}});
}

TEST_CASE("form is kept: length, licence line, one inclusion")
{
    std::string lines;
    for (int i = 0; i < 399; ++i)
        lines += "\n";
    check({{"core/round/a.cpp", lines, ""}, {"core/round/a.cpp", lines + "\n", "401 lines"},
        {"core/round/a.h", "int x;\n", "without #pragma once"}, {"core/round/a.h", "#pragma once\n", ""}});
    CHECK(joined(faultsOf({"core/round/a.cpp", "int x;\n"}))
        == "core/round/a.cpp: does not begin with its SPDX line\n");
    CHECK(faultsOf({"core/round/a.cpp", "\n" + head}).size() == 1);
}

TEST_CASE("a source without its mirror is named, and so is a reason that nothing needs")
{
    const std::vector<std::string> sources{
        "core/a/one.cpp", "core/a/two.cpp", "core/b/three.cpp", "core/a/four.h", "ui/x.cpp"};
    const std::vector<std::string> tests{"tests/core/a/test_one.cpp", "tests/core/b/test_two.cpp"};
    CHECK(joined(mirrorFaults(sources, tests, {}))
        == "core/a/two.cpp: has no tests/core/a/test_two.cpp and no reason for it\n"
           "core/b/three.cpp: has no tests/core/b/test_three.cpp and no reason for it\n");
    CHECK(mirrorFaults(sources, tests, {{"core/a/two.cpp", "r"}, {"core/b/", "r"}}).empty());
    CHECK(joined(mirrorFaults(sources, tests, {{"core/a/one.cpp", "r"}, {"core/a/", "r"}, {"core/b/", "r"}}))
        == "core/a/one.cpp: is listed without need\n");
}
