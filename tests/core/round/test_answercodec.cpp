// SPDX-License-Identifier: MIT
#include "core/round/answercodec.h"

#include "core/ledger/canonical.h"
#include "sample.h"

#include <doctest/doctest.h>

using namespace cradlepost;

namespace {
Result<Answer> readText(const std::string& text)
{
    const auto json = parseJson(text);
    REQUIRE_MESSAGE(json.has_value(), text);
    return answerFromJson(*json);
}
}

TEST_CASE("every answer has the text that records are kept in")
{
    struct Case
    {
        Answer answer;
        const char* text;
    };
    for (const Case& c :
        std::vector<Case>{{NotChecked{}, "null"}, {DoesNotApply{}, R"("-")"}, {Confirmed{}, R"("y")"},
            {GapFound{GapReason::NotWorking}, R"("not-working")"}, {Measured{num("26.4")}, R"({"v":"26.4"})"},
            {RunningSince{fromMs(1764012240000)}, R"({"s":1764012240000})"},
            {StepsDone{"pp-", "7"}, R"({"d":"7","t":"pp-"})"}, {StepsDone{"ppp", ""}, R"({"t":"ppp"})"},
            {Counted{
                 {{4, date("2027-03-31"), "LOT"}, {2, {}, ""}, {1, {}, "X"}, {3, date("2027-01-01"), ""}}},
                R"({"n":[[4,"2027-03-31","LOT"],[2],[1,null,"X"],[3,"2027-01-01"]]})"},
            {Counted{}, R"({"n":[]})"}, {KitCounted{{4, 3}}, R"({"k":[4,3]})"},
            {CylinderRead{num("120"), "us-e", num("5")}, R"({"f":"5","g":"120","z":"us-e"})"}}) {
        CAPTURE(c.text);
        CHECK(canonicalText(toJson(c.answer)) == c.text);
        const auto back = readText(c.text);
        REQUIRE(back.has_value());
        CHECK(*back == c.answer);
    }
}

TEST_CASE("what is no answer is refused")
{
    for (const char* text : {"true", "7", "1.5", "[]", "{}", R"("")", R"("Y")", R"("met")", R"({"v":26.4})",
             R"({"v":"x"})", R"({"v":null})", R"({"s":"1764012240000"})", R"({"s":null})", R"({"t":7})",
             R"({"d":"7"})", R"({"n":4})", R"({"n":[4]})", R"({"n":[[]]})", R"({"n":[["4"]]})",
             R"({"n":[[-1]]})", R"({"n":[[99999999999]]})", R"({"n":[[1,"2027-02-30"]]})",
             R"({"n":[[1,20270331]]})", R"({"n":[[1,null,7]]})", R"({"n":[[1,null,""]]})",
             R"({"n":[[1,null,"L",1]]})", R"({"k":7})", R"({"k":["7"]})", R"({"k":[-1]})", R"({"z":"us-e"})",
             R"({"z":"us-e","g":"1"})", R"({"z":"us-e","f":"1"})", R"({"g":"1","f":"1"})",
             R"({"z":7,"g":"1","f":"1"})", R"({"z":"us-e","g":1,"f":"1"})", R"({"q":1})"}) {
        CAPTURE(text);
        const auto answer = readText(text);
        REQUIRE_FALSE(answer.has_value());
        CHECK_FALSE(answer.error().message.empty());
    }
}

TEST_CASE("two thousand answers of every kind come back as they went")
{
    Dice dice(20261124);
    const Checklist checklist = sampleChecklist();
    std::vector<int> kinds(std::variant_size_v<Answer>, 0);
    for (int i = 0; i < 2000; ++i) {
        const Item& item = checklist.item(dice.below(checklist.itemCount()));
        const Answer answer = randomAnswer(item, dice);
        REQUIRE(checkAnswer(item, answer).has_value());
        ++kinds[answer.index()];
        const std::string text = canonicalText(toJson(answer));
        REQUIRE(checkBody(toJson(answer)).has_value());
        const auto back = readText(text);
        REQUIRE_MESSAGE(back.has_value(), text);
        REQUIRE_MESSAGE(*back == answer, text);
    }
    for (const int n : kinds)
        CHECK(n > 20);
}
