// SPDX-License-Identifier: MIT
#include "core/supply/birthboard.h"

#include "core/checklist/objectreader.h"
#include "core/supply/bodyreader.h"
#include "core/supply/codes.h"

namespace cradlepost {

namespace {
constexpr CodeTable<BirthChange, 4> changeNames{{
    {BirthChange::Expected, "expected"},
    {BirthChange::Done, "done"},
    {BirthChange::Cancelled, "cancelled"},
    {BirthChange::Moved, "moved"},
}};
constexpr int mostBabies = 4;

tl::unexpected<Error> wrong(const std::string& what)
{
    return fail(ErrorCode::InvalidArgument, "birth expected: " + what);
}
}

const char* codeName(BirthChange change) { return codeIn(changeNames, change); }
std::optional<BirthChange> birthChangeFromCode(std::string_view code)
{
    return fromCodeIn(changeNames, code);
}

Result<void> checkBirth(const BirthEvent& event)
{
    if (!isId(event.birth))
        return wrong("'" + event.birth + "' is no id");
    if (event.babies < 1 || event.babies > mostBabies)
        return wrong("1 to 4 babies");
    return {};
}

Json toBody(const BirthEvent& event)
{
    Json::Object body{{"at", toMs(event.at)}, {"birth", event.birth}, {"change", codeName(event.change)}};
    if (event.change != BirthChange::Expected)
        return body;
    body.push_back({"babies", event.babies});
    body.push_back({"expected", toMs(event.expected)});
    if (event.preterm)
        body.push_back({"preterm", true});
    return body;
}

Result<BirthEvent> birthEventFromBody(const Json& body)
{
    BodyReader read(body, "birth-expected record");
    BirthEvent event{.birth = read.id("birth"),
        .at = read.moment("at"),
        .change = read.code("change", birthChangeFromCode)};
    if (event.change == BirthChange::Expected) {
        event.expected = read.moment("expected");
        event.babies = static_cast<int>(read.integer("babies", 1, mostBabies));
        event.preterm = read.flag("preterm");
    }
    if (auto done = read.finish(); !done)
        return tl::unexpected(done.error());
    return event;
}

std::vector<BirthSpan> foldBirths(std::vector<Recorded<BirthEvent>> events)
{
    std::vector<BirthSpan> spans;
    std::map<std::string, std::size_t> latest; // birth to its last span
    for (const auto& event : inOrder(std::move(events))) {
        const BirthEvent& what = event.what;
        const auto known = latest.find(what.birth);
        if (known != latest.end()) {
            BirthSpan& before = spans[known->second];
            if (before.until)
                continue;
            before.until = what.at;
            before.end = what.change;
        }
        if (what.change == BirthChange::Expected) {
            latest[what.birth] = spans.size();
            spans.push_back({.what = {.birth = what.birth,
                                 .expected = what.expected,
                                 .babies = what.babies,
                                 .preterm = what.preterm},
                .from = what.at,
                .until = std::nullopt});
        } else if (known == latest.end()) {
            // Done before it was put up here: it must not come back when that arrives.
            latest[what.birth] = spans.size();
            spans.push_back({.what = {.birth = what.birth, .expected = what.at, .babies = 1},
                .from = what.at,
                .until = what.at,
                .end = what.change});
        }
    }
    return spans;
}

std::vector<ExpectedBirth> expectedAt(const std::vector<BirthSpan>& board, Instant t)
{
    std::vector<ExpectedBirth> out;
    for (const BirthSpan& span : board) {
        if (span.from <= t && (!span.until || *span.until > t))
            out.push_back(span.what);
    }
    std::sort(out.begin(), out.end(), [](const ExpectedBirth& a, const ExpectedBirth& b) {
        return a.expected != b.expected ? a.expected < b.expected : a.birth < b.birth;
    });
    return out;
}

}
