// SPDX-License-Identifier: MIT
#include "core/exchange/paperrounds.h"

#include "core/exchange/papertemplate.h"
#include "tests/core/store/ward.h"

#include <fstream>
#include <functional>
#include <random>
#include <sstream>

using namespace cradlepost;
using namespace cradlepost::test;
using namespace std::chrono;

namespace {

using Lines = std::vector<std::vector<std::string>>;

std::string csv(const Lines& lines, char separator = ',')
{
    std::string text;
    for (const auto& line : lines)
        appendCsvLine(text, line, separator);
    return text;
}

/** What a cell says of an item that is met. */
std::string metCell(const Item& item)
{
    switch (item.kind()) {
    case ItemKind::Confirm:
        return "m";
    case ItemKind::Measure:
        return item.id == "item-3" || item.id == "item-13" ? "27" : "1";
    case ItemKind::Since:
        return "06:00";
    case ItemKind::Steps:
        return "pass";
    case ItemKind::Count:
        return "40@2028-01-31";
    case ItemKind::Kit:
    case ItemKind::Cylinder:
        break;
    }
    return "";
}

/** Ward, ten days later, and a sheet of two rounds a day for the first eight. */
struct Backlog : Ward
{
    Backlog()
    {
        clock.set(sys_days(addDays(firstDay, 12)));
        lines.push_back(headerOf());
        for (int day = 0; day < 8; ++day)
            for (const char* shift : {"day", "night"})
                lines.push_back(rowOf(addDays(firstDay, day), shift));
    }
    [[nodiscard]] std::vector<std::string> headerOf() const
    {
        std::vector<std::string> header;
        const auto sheet = must(readCsvLines(paperTemplate(checklist)));
        for (const CsvCell& cell : sheet.front())
            header.push_back(cell.text);
        return header;
    }
    [[nodiscard]] std::vector<std::string> rowOf(Date day, const std::string& shift) const
    {
        std::vector<std::string> row{toIso(day), shift, shift == "day" ? "07:40" : "19:35", "AB"};
        for (std::size_t at = 0; at < checklist.itemCount(); ++at)
            row.push_back(metCell(checklist.item(at)));
        return row;
    }
    [[nodiscard]] PaperPreview read(const std::string& text) const
    {
        return must(readPaperRounds(*store, unit, text, clock.now()));
    }
    [[nodiscard]] PaperPreview read() const { return read(csv(lines)); }
    /** The cell of a row (1: the first round) under a name. */
    std::string& cell(std::size_t row, const std::string& name)
    {
        const auto at = std::find(lines[0].begin(), lines[0].end(), name) - lines[0].begin();
        return lines.at(row).at(static_cast<std::size_t>(at));
    }
    /** "wrong-date 3/1 date" */
    [[nodiscard]] std::vector<std::string> faults(const std::string& text) const
    {
        std::vector<std::string> all;
        for (const PaperFault& fault : read(text).faults)
            all.push_back(std::string(codeName(fault.code)) + ' ' + std::to_string(fault.line) + '/'
                + std::to_string(fault.column) + (fault.name.empty() ? "" : " " + fault.name));
        return all;
    }
    [[nodiscard]] std::vector<std::string> faults() const { return faults(csv(lines)); }

    Lines lines;
};

using Faults = std::vector<std::string>;

std::string bytesOf(const std::string& path)
{
    std::ifstream file(path, std::ios::binary);
    std::ostringstream all;
    all << file.rdbuf();
    return all.str();
}

}

TEST_CASE("a sheet from the template becomes rounds, judged as if they were walked, and marked as from paper")
{
    Backlog ward;
    ward.cell(2, "item-4") = "g:not-clean";
    ward.cell(3, "item-5") = "";
    const PaperPreview preview = ward.read();
    REQUIRE(preview.faults.empty());
    CHECK(preview.warnings.empty());
    REQUIRE(preview.rounds.size() == 16);
    CHECK(must(importPaperRounds(*ward.store, ward.unit, preview)).size() == 16);
    const auto rows = must(ward.store->rounds(ward.unit, ward.slot(0), ward.slot(9)));
    REQUIRE(rows.size() == 16);
    CHECK(rows[0].outcomes == std::string(12, 'm'));
    CHECK(rows[1].outcomes[4] == 'g');
    CHECK(rows[2].outcomes[5] == 'u');
    CHECK(rows[0].fromPaper);
    CHECK(rows[0].recorded == ward.clock.now());
    CHECK(rows[0].finished == aCalendar().zone().toInstant({firstDay, hours(7) + minutes(40)}));
    CHECK(rows[0].started == rows[0].finished);
    const RoundRecord walked = must(ward.store->round(rows[1].id)).round;
    CHECK(walked.gaps[0].code == ReasonCode::NotClean);
    CHECK(std::none_of(
        walked.seconds.begin(), walked.seconds.end(), [](const auto& s) { return s.has_value(); }));
    REQUIRE(must(ward.store->gapsOf(ward.unit, "item-4")).size() == 1);
    CHECK_FALSE(must(ward.store->gapsOf(ward.unit, "item-4"))[0].isOpen());
    CHECK(ward.fault() == "");
    CHECK(ward.faults().size() == 16); // all of them are there now
}

TEST_CASE("a night round written after midnight belongs to the date on which the shift began")
{
    Backlog ward;
    ward.cell(2, "finished") = "01:30";
    const PaperPreview preview = ward.read();
    REQUIRE(preview.faults.empty());
    CHECK(preview.rounds[1].walked.round.finished
        == aCalendar().zone().toInstant({addDays(firstDay, 1), hours(1) + minutes(30)}));
    CHECK(preview.rounds[1].walked.round.shift.date == firstDay);
}

TEST_CASE("every fault of a sheet is named with its line and field, not only the first")
{
    Backlog ward;
    ward.save(ward.round(5));
    ward.clock.set(sys_days(addDays(firstDay, 12)));
    ward.cell(1, "date") = "1/11/2026";
    ward.cell(2, "shift") = "late";
    ward.cell(3, "finished") = "7.40";
    ward.cell(3, "item-2") = "yes";
    ward.cell(3, "item-3") = "270";
    ward.cell(4, "initials") = "";
    ward.cell(5, "date") = "2026-12-24";
    ward.cell(6, "date") = "2019-12-31";
    ward.cell(7, "finished") = "23:00";
    ward.lines[8] = ward.lines[9];
    for (std::size_t at = 4; at < 16; ++at)
        ward.lines[10][at] = "";
    ward.lines[16].pop_back();
    CHECK(ward.faults()
        == Faults{"wrong-date 2/1 date", "wrong-shift 3/2 shift", "wrong-time 4/3 finished",
            "wrong-value 4/7 item-2", "wrong-value 4/8 item-3", "wrong-initials 5/4 initials",
            "in-future 6/1 date", "no-pattern 7/1 date", "before-adoption 7/1 date",
            "time-outside-shift 8/3 finished", "twice-in-sheet 10/1 date", "nothing-checked 11/1 date",
            "already-there 12/1 date", "wrong-width 17/0"});
}

TEST_CASE("columns that are not known, missing or doubled are named in the first line")
{
    Backlog ward;
    for (auto& line : ward.lines)
        line.emplace_back("x");
    ward.lines[0].back() = "remark";
    ward.lines[0][6] = "item-1";
    CHECK(ward.faults()
        == Faults{"column-missing 1/0 item-2", "column-twice 1/7 item-1", "column-unknown 1/17 remark"});
    ward.lines[0][0] = "day";
    CHECK(ward.faults()[0] == "column-missing 1/0 date");
}

TEST_CASE("initials that nobody has are a warning and said once")
{
    Backlog ward;
    ward.cell(1, "initials") = "ZZ";
    ward.cell(2, "initials") = "ZZ";
    const PaperPreview preview = ward.read();
    CHECK(preview.isSound());
    REQUIRE(preview.warnings.size() == 1);
    CHECK(preview.warnings[0].line == 2);
}

TEST_CASE("a sheet reads the same with CR LF or LF, a byte order mark, blank lines, quotes and semicolons")
{
    const Backlog ward;
    const std::string plain = csv(ward.lines);
    const auto expected = ward.read(plain).rounds;
    REQUIRE(expected.size() == 16);
    std::string lf = plain;
    std::erase(lf, '\r');
    std::string quoted = plain;
    quoted.replace(quoted.find("2026-11-01"), 10, "\"2026-11-01\"");
    const std::string variants[]
        = {lf, "\xEF\xBB\xBF" + plain, lf + "\n\n,,,,,,,,,,,,,,,\n", quoted, csv(ward.lines, ';')};
    for (const std::string& text : variants) {
        CAPTURE(text.substr(0, 60));
        const PaperPreview preview = ward.read(text);
        REQUIRE(preview.faults.empty());
        REQUIRE(preview.rounds.size() == expected.size());
        for (std::size_t i = 0; i < expected.size(); ++i)
            CHECK(preview.rounds[i].walked.round == expected[i].walked.round);
    }
}

TEST_CASE("what is no sheet at all is refused in a word")
{
    const Backlog ward;
    const std::string plain = csv(ward.lines);
    std::string wide = "\xFF\xFE";
    for (const char c : plain)
        wide += {c, '\0'};
    CHECK(ward.faults(wide) == Faults{"not-utf8 0/0"});
    CHECK(ward.faults("date,shift\xE9\n") == Faults{"not-utf8 0/0"});
    CHECK(ward.faults("") == Faults{"no-rows 0/0"});
    CHECK(ward.faults(csv({ward.lines[0]})) == Faults{"no-rows 0/0"});
    CHECK(ward.faults(std::string(maxPaperBytes + 1, 'a')) == Faults{"too-large 0/0"});
    CHECK(ward.faults("date,\"shift\n2026") == Faults{"broken-table 1/0"});
    Lines many{ward.lines[0]};
    many.resize(maxPaperRows + 2, ward.lines[1]);
    CHECK(ward.faults(csv(many)) == Faults{"too-many-rows 0/0"});
    CHECK(
        readPaperRounds(*ward.store, "nowhere", plain, ward.clock.now()).error().code == ErrorCode::NotFound);
}

TEST_CASE("random bytes are never taken in")
{
    const Backlog ward;
    std::mt19937 random(5);
    for (int i = 0; i < 500; ++i) {
        std::string bytes(random() % 400, '\0');
        for (char& byte : bytes)
            byte = static_cast<char>(random() % (i % 2 == 0 ? 256 : 128));
        CHECK_FALSE(ward.read(bytes).isSound());
    }
}

TEST_CASE("500 broken sheets are refused with the line that was broken, and the database stays as it is, "
          "byte for byte")
{
    Backlog ward;
    const auto records = must(ward.store->verify()).records;
    const std::string before = bytesOf(ward.dir.file("ward.db")) + bytesOf(ward.dir.file("ward.db-wal"));
    const Lines good = ward.lines;
    std::mt19937 random(500);
    const auto oneOf
        = [&](auto n) { return static_cast<std::size_t>(random()) % static_cast<std::size_t>(n); };
    const std::vector<std::string> broken{"x", "yes", "-1", "g:rusty", "9999999", "\"", "27,5,1", "मिला"};
    const std::vector<std::function<void(std::vector<std::string>&)>> injuries{
        [&](auto& row) { row[0] = "2026-11-31"; }, [&](auto& row) { row[0] = "01.11.2026"; },
        [&](auto& row) { row[0] = "2031-01-01"; }, [&](auto& row) { row[0] = "2019-06-01"; },
        [&](auto& row) { row[1] = "noon"; }, [&](auto& row) { row[2] = "25:00"; },
        [&](auto& row) { row[2] = row[1] == "day" ? "03:00" : "15:00"; },
        [&](auto& row) { row[3] = "A VERY LONG NAME"; },
        [&](auto& row) { row[4 + oneOf(12)] = broken[oneOf(broken.size())]; },
        [&](auto& row) { row.pop_back(); }, [&](auto& row) { row.emplace_back("m"); },
        [&](auto& row) { std::swap(row[0], row[3]); }};
    for (int i = 0; i < 500; ++i) {
        CAPTURE(i);
        Lines lines = good;
        std::vector<int> hurt;
        for (std::size_t n = 1 + oneOf(3); n > 0; --n) {
            const std::size_t row = 1 + oneOf(lines.size() - 1);
            if (lines[row] != good[row])
                continue;
            injuries[oneOf(injuries.size())](lines[row]);
            hurt.push_back(static_cast<int>(row) + 1);
        }
        const PaperPreview preview = ward.read(csv(lines));
        REQUIRE_FALSE(preview.isSound());
        for (const int line : hurt)
            CHECK(std::any_of(preview.faults.begin(), preview.faults.end(),
                [&](const PaperFault& fault) { return fault.line == line; }));
        for (const PaperFault& fault : preview.faults)
            CHECK(std::find(hurt.begin(), hurt.end(), fault.line) != hurt.end());
        CHECK_FALSE(importPaperRounds(*ward.store, ward.unit, preview).has_value());
    }
    CHECK(bytesOf(ward.dir.file("ward.db")) + bytesOf(ward.dir.file("ward.db-wal")) == before);
    CHECK(must(ward.store->verify()).records == records);
    ward.lines = good;
    CHECK(ward.read().isSound());
}

TEST_CASE("a sheet that was sound is not half written when a round came in between")
{
    Backlog ward;
    const PaperPreview preview = ward.read();
    ward.save(ward.round(7));
    CHECK(importPaperRounds(*ward.store, ward.unit, preview).error().code == ErrorCode::AlreadyExists);
    CHECK(must(ward.store->rounds(ward.unit, ward.slot(0), ward.slot(9))).size() == 1);
    CHECK(ward.fault() == "");
}

TEST_CASE("days with another version of the checklist take its items")
{
    Backlog ward;
    must(ward.store->adopt(ward.unit,
        {.from = addDays(firstDay, 4), .document = aPlainAdoption(11, 2).document, .limits = {}}, "AB"));
    CHECK(ward.faults().size() == 8); // the last item is not asked any more from the fifth day on
    for (std::size_t row = 9; row <= 16; ++row)
        ward.cell(row, "item-11") = "";
    const PaperPreview preview = ward.read();
    REQUIRE(preview.faults.empty());
    CHECK(preview.rounds[7].walked.round.version == 1);
    CHECK(preview.rounds[8].walked.round.version == 2);
}
