// SPDX-License-Identifier: MIT
#include "sample.h"

#include <doctest/doctest.h>

using namespace cradlepost;

namespace {

struct Case
{
    const char* item;
    Answer answer;
    bool allowed;
    const char* why;
};

std::string repeated(const std::string& piece, int times)
{
    std::string text;
    for (int i = 0; i < times; ++i)
        text += piece;
    return text;
}

Counted lots(std::size_t n) { return {std::vector<Lot>(n, Lot{.quantity = 1, .expiry = {}, .number = {}})}; }
Counted lot(int quantity, std::optional<Date> expiry = {}, std::string number = {})
{
    return {{{.quantity = quantity, .expiry = expiry, .number = std::move(number)}}};
}

void check(const std::vector<Case>& table)
{
    for (const Case& c : table) {
        CAPTURE(c.item);
        CAPTURE(c.why);
        const auto allowed = checkAnswer(sampleItem(c.item), c.answer);
        CHECK(allowed.has_value() == c.allowed);
        if (!allowed) {
            CHECK(allowed.error().code == ErrorCode::InvalidArgument);
            CHECK(allowed.error().message.find(c.item) != std::string::npos);
            CHECK_FALSE(allowed.error().hint.empty());
        }
    }
}

}

TEST_CASE("an answer is allowed only where its kind is asked")
{
    const Checklist checklist = sampleChecklist();
    const std::vector<Answer> answers = allMet();
    for (std::size_t i = 0; i < answers.size(); ++i) {
        for (std::size_t j = 0; j < answers.size(); ++j) {
            CAPTURE(i);
            CAPTURE(j);
            const bool sameKind = checklist.item(i).kind() == checklist.item(j).kind();
            CHECK(checkAnswer(checklist.item(i), answers[j]).has_value() == sameKind);
        }
        CHECK(checkAnswer(checklist.item(i), NotChecked{}).has_value());
        CHECK(checkAnswer(checklist.item(i), GapFound{GapReason::Absent}).has_value());
        CHECK(checkAnswer(checklist.item(i), DoesNotApply{}).has_value() == checklist.item(i).mayNotApply);
    }
}

TEST_CASE("a reading outside the plausible band is refused, at its ends allowed")
{
    check({{"temperature", Measured{num("0.499")}, false, "below the band"},
        {"temperature", Measured{num("0.5")}, true, "lower end"},
        {"temperature", Measured{num("50")}, true, "upper end"},
        {"temperature", Measured{num("50.001")}, false, "above the band"},
        {"temperature", Measured{num("264")}, false, "point forgotten"}});
}

TEST_CASE("steps need one known mark each")
{
    check({{"bag", StepsDone{"pp", ""}, false, "one short"},
        {"bag", StepsDone{"pppp", ""}, false, "one too many"},
        {"bag", StepsDone{"ppx", ""}, false, "unknown mark"},
        {"bag", StepsDone{"PPP", ""}, false, "capitals"},
        {"bag", StepsDone{"pf-", ""}, true, "all three marks"},
        {"bag", StepsDone{"---", ""}, true, "not begun"},
        {"bag", StepsDone{"ppp", repeated("7", 24)}, true, "24 characters"},
        {"bag", StepsDone{"ppp", repeated("7", 25)}, false, "25 characters"},
        {"bag", StepsDone{"ppp", repeated("क", 24)}, true, "24 letters of three bytes"},
        {"bag", StepsDone{"ppp", repeated("क", 25)}, false, "25 letters of three bytes"}});
}

TEST_CASE("counts are whole, not negative and not beyond measure")
{
    const Date noDay{std::chrono::year(2027), std::chrono::month(2), std::chrono::day(30)};
    check({{"oxytocin", Counted{}, true, "no lots at all"}, {"oxytocin", lot(0), true, "none"},
        {"oxytocin", lot(-1), false, "negative"}, {"oxytocin", lot(100000), true, "the most"},
        {"oxytocin", lot(100001), false, "beyond the most"},
        {"oxytocin", lot(1, noDay), false, "30 February"},
        {"oxytocin", lot(1, {}, repeated("L", 32)), true, "32 characters"},
        {"oxytocin", lot(1, {}, repeated("L", 33)), false, "33 characters"},
        {"oxytocin", lot(1, {}, repeated("ल", 32)), true, "32 letters of three bytes"},
        {"oxytocin", lots(100), true, "100 lots"}, {"oxytocin", lots(101), false, "101 lots"}});
    check({{"kits", KitCounted{{8, 4}}, false, "a part short"},
        {"kits", KitCounted{{8, 4, 12, 1}}, false, "a part more"},
        {"kits", KitCounted{{0, 0, 0}}, true, "none"}, {"kits", KitCounted{{8, -1, 12}}, false, "negative"},
        {"kits", KitCounted{{8, 100000, 12}}, true, "the most"},
        {"kits", KitCounted{{8, 100001, 12}}, false, "beyond"}});
}

TEST_CASE("a gauge may stand a tenth above the full cylinder, not more")
{
    const auto read = [](const char* gauge, const char* size = "us-e", const char* flow = "5") {
        return CylinderRead{.gauge = num(gauge), .size = size, .flow = num(flow)};
    };
    // 2015 psi and the 10 % overfill 2216.5 psi; 150.005 bar and 165.0055 bar, which no gauge of three
    // decimals meets.
    check({{"oxygen", read("-0.001"), false, "below zero"}, {"oxygen", read("0"), true, "empty"},
        {"oxygen", read("2216.5"), true, "a tenth above"},
        {"oxygen", read("2216.501"), false, "more than a tenth"},
        {"oxygen", read("165.005", "ten-litre"), true, "just within a tenth"},
        {"oxygen", read("165.006", "ten-litre"), false, "just beyond a tenth"},
        {"oxygen", read("100", "uk-e"), false, "size of another list"},
        {"oxygen", read("100", ""), false, "no size"}, {"oxygen", read("100", "us-e", "0"), false, "no flow"},
        {"oxygen", read("100", "us-e", "0.001"), true, "least flow"},
        {"oxygen", read("100", "us-e", "60"), true, "most flow"},
        {"oxygen", read("100", "us-e", "60.001"), false, "beyond"},
        {"oxygen", read("100", "us-e", "-5"), false, "flow below zero"}});
}

TEST_CASE("every gap reason has a code of its own that reads back")
{
    for (int i = 0; i <= static_cast<int>(GapReason::NotKnown); ++i) {
        const auto reason = static_cast<GapReason>(i);
        CHECK(gapReasonFromCode(codeName(reason)) == reason);
    }
    CHECK_FALSE(gapReasonFromCode("").has_value());
    CHECK_FALSE(gapReasonFromCode("Absent").has_value());
}
