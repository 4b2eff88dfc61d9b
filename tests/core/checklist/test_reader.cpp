// SPDX-License-Identifier: MIT
#include "core/checklist/reader.h"

#include "sampledocument.h"

#include <doctest/doctest.h>

using namespace cradlepost;

TEST_CASE("a valid document is read with all it says")
{
    const auto read = readChecklist(sampleDocument());
    REQUIRE_MESSAGE(read.has_value(), read.error().message);
    CHECK(read->id == "sample");
    CHECK(read->version == 3);
    CHECK(read->use == RoundKind::Shift);
    CHECK(read->title.in("hi") == "नमूना");
    CHECK(read->itemCount() == 7);
    const Item& temperature = read->item(0);
    CHECK(temperature.severity == Severity::Critical);
    CHECK_FALSE(temperature.mayNotApply);
    CHECK(temperature.help.in("en") == "At bed height");
    CHECK(temperature.whenNotMet.in("hi") == "गर्म करें");
    CHECK(temperature.source == "common practice, no source");
    CHECK(read->item(1).mayNotApply);
    CHECK(read->item(1).help.texts().empty());
    CHECK(read->sectionOf(2).title.in("hi") == "कॉर्नर");
}

TEST_CASE("a document already parsed reads the same as its text")
{
    const auto parsed = parseJson(sampleDocument());
    REQUIRE(parsed.has_value());
    CHECK(readChecklist(*parsed).value() == readChecklist(sampleDocument()).value());
}

TEST_CASE("a value without lines is refused with section and item all the same")
{
    Json document = parseJson(sampleDocument()).value();
    Json& sections = std::get<Json::Object>(document.value).back().value;
    sections = Json(Json::Array{Json(Json::Object{{"id", Json("room")}})});
    const auto read = readChecklist(document);
    REQUIRE_FALSE(read.has_value());
    CHECK(read.error().message == "section 'room': 'title' is missing");
}

TEST_CASE("a text that is no JSON, or no object, is refused with its line")
{
    for (const char* text : {"", "{", "[]", "7", "\"text\"", "null", "{\"id\": \"a\",\n\"id\": \"a\"}"}) {
        CAPTURE(text);
        const auto read = readChecklist(text);
        REQUIRE_FALSE(read.has_value());
        CHECK(read.error().message.starts_with("line "));
    }
}

TEST_CASE("a fault of the document is named with its line")
{
    for (const Breakage& breakage : std::vector<Breakage>{
             {"[\"en\", \"hi\"]", "[\"en\", \"hind\"]", {"line 5: 'languages': must hold codes"}},
             {"[\"en\", \"hi\"]", "[\"en\", \"hi-Devanagar\"]", {"line 5: 'languages': must hold codes"}},
             {"\"id\": \"sample\",", "", {"line 1: 'id' is missing"}},
             {"\"sample\"", "\"Sample\"", {"line 2: 'id' must be 1 to 40 of"}},
             {"\"sample\"", "\"" + std::string(41, 'a') + "\"", {"line 2: 'id' must be 1 to 40 of"}},
             {"\"sample\"", "8", {"line 2: 'id' must be a text"}},
             {"\"version\": 3,", "", {"line 1: 'version' is missing"}},
             {"\"version\": 3", "\"version\": 0", {"line 3: 'version' is 0, must be 1 to"}},
             {"\"version\": 3", "\"version\": 3.0", {"line 3: 'version' must be a whole number"}},
             {"\"version\": 3", "\"version\": 4294967297", {"line 3: 'version' is 4294967297"}},
             {"\"use\": \"shift\"", "\"use\": \"recheck\"", {"line 4: 'use' must be shift, pre-birth or"}},
             {"\"use\": \"shift\"", "\"use\": \"night\"", {"line 4: 'use' must be"}},
             {"\"version\"", "\"edition\"", {"line 3: 'edition' is not a known member"}},
             {"[\"en\", \"hi\"]", "[]", {"line 5: 'languages' must not be empty"}},
             {"[\"en\", \"hi\"]", "\"en\"", {"line 5: 'languages' must be a list"}},
             {"[\"en\", \"hi\"]", "[\"hi\"]", {"line 5: 'languages' must hold \"en\""}},
             {"[\"en\", \"hi\"]", "[\"en\", \"en\"]", {"line 5: 'languages': 'en' stands twice"}},
             {"[\"en\", \"hi\"]", "[\"en\", \"Hindi\"]", {"line 5: 'languages': must hold codes"}},
             {"[\"en\", \"hi\"]", "[\"en\", \"hi-\"]", {"line 5: 'languages': must hold codes"}},
             {"[\"en\", \"hi\"]", "[\"en\", 7]", {"line 5: 'languages': must hold codes"}},
             {"[\"en\", \"hi\"]", "[\"en\"]", {"line 6: 'title': language 'hi' is not one of 'languages'"}},
         })
        checkRefused(breakage);
}

TEST_CASE("a wording has every language of the document and no blank text")
{
    for (const Breakage& breakage :
        std::vector<Breakage>{
            {"{\"en\": \"Sample\", \"hi\": \"नमूना\"}", "\"Sample\"",
                {"line 6: 'title' must be an object of language and text"}},
            {"\"en\": \"Sample\", ", "", {"line 6: 'title' has no wording in language 'en'"}},
            {", \"hi\": \"नमूना\"", "", {"line 6: 'title' has no wording in language 'hi'"}},
            {"\"नमूना\"", "\"\"", {"line 6: 'title': language 'hi' must not be empty"}},
            {"\"Sample\"", "\"   \"", {"line 6: 'title': language 'en' must not be empty"}},
            {"\"Sample\"", "true", {"line 6: 'title': language 'en' must be a text"}},
            {"\"Sample\"", "\"Sam\\nple\"", {"line 6: 'title': language 'en' has a control character"}},
            {"\"Sample\"", "\"" + std::string(1001, 'a') + "\"", {"language 'en' is longer than 1000 bytes"}},
            {"\"At bed height\"", "\"\"",
                {"line 15, section 'room', item 'room-temperature': 'help': language 'en' must not be "
                 "empty"}},
        })
        checkRefused(breakage);
}

TEST_CASE("a language may name a region")
{
    std::string text = sampleDocument();
    for (auto at = text.find("\"hi\""); at != std::string::npos; at = text.find("\"hi\"", at))
        text.replace(at, 4, "\"hi-IN\"");
    const auto read = readChecklist(text);
    REQUIRE_MESSAGE(read.has_value(), read.error().message);
    CHECK(read->title.in("hi-IN") == "नमूना");
}

TEST_CASE("a fault of a section is named with line and section")
{
    for (const Breakage& breakage : std::vector<Breakage>{
             {"\"id\": \"room\",", "", {"line 7, section 1: 'id' is missing"}},
             {"\"id\": \"room\"", "\"id\": \"Room\"", {"line 8, section 1: 'id' must be 1 to 40"}},
             {"\"title\": {\"en\": \"Room\", \"hi\": \"कमरा\"},", "",
                 {"line 7, section 'room': 'title' is missing"}},
             {"\"title\": {\"en\": \"Room\"", "\"name\": {\"en\": \"Room\"",
                 {"line 9, section 'room': 'name' is not a known member"}},
             {"\"id\": \"corner\"", "\"id\": \"room\"", {"line 33, section 'room': 'id' stands twice"}},
         })
        checkRefused(breakage);
}

TEST_CASE("empty lists of sections and items are refused")
{
    const std::string head = R"({"id":"a","version":1,"use":"shift","languages":["en"],"title":{"en":"A"},)";
    const auto noSections = readChecklist(head + "\n\"sections\":[]}");
    REQUIRE_FALSE(noSections.has_value());
    CHECK(noSections.error().message == "line 2: 'sections' must not be empty");
    const auto noItems
        = readChecklist(head + "\"sections\":[{\"id\":\"s\",\"title\":{\"en\":\"S\"},\n\"items\":[]}]}");
    REQUIRE_FALSE(noItems.has_value());
    CHECK(noItems.error().message == "line 2, section 's': 'items' must not be empty");
    const auto noObject = readChecklist(head + "\n\"sections\":[3]}");
    REQUIRE_FALSE(noObject.has_value());
    CHECK(noObject.error().message == "line 2, section 1: must be an object");
}

TEST_CASE("a fault of an item is named with line, section and item")
{
    const std::string place = ", section 'room', item 'room-temperature': ";
    for (const Breakage& breakage : std::vector<Breakage>{
             {"\"id\": \"room-temperature\",", "", {"line 10, section 'room', item 1: 'id' is missing"}},
             {"\"id\": \"draught\"", "\"id\": \"room_temperature\"",
                 {"line 25, section 'room', item 2: 'id' must be 1 to 40"}},
             {"\"id\": \"draught\"", "\"id\": \"room-temperature\"",
                 {"line 24" + place + "'id' stands twice"}},
             {"\"id\": \"warmer\"", "\"id\": \"draught\"",
                 {"line 37, section 'corner', item 'draught': 'id' stands twice"}},
             {"\"severity\": \"critical\",", "", {"line 10" + place + "'severity' is missing"}},
             {"\"severity\": \"critical\"", "\"severity\": \"high\"",
                 {"line 12" + place + "'severity' must be critical, major or minor"}},
             {"\"mayNotApply\": false,", "", {"line 10" + place + "'mayNotApply' is missing"}},
             {"\"mayNotApply\": false", "\"mayNotApply\": 0",
                 {"line 13" + place + "'mayNotApply' must be true or false"}},
             {"\"label\"", "\"lable\"", {"line 14" + place + "'lable' is not a known member"}},
             {"\"whenNotMet\": {\"en\": \"Heat\", \"hi\": \"गर्म करें\"},", "",
                 {"line 10" + place + "'whenNotMet' is missing"}},
             {"\"source\": \"common practice, no source\",", "", {"line 10" + place + "'source' is missing"}},
             {"\"common practice, no source\"", "\" \"", {"line 17" + place + "'source' must not be empty"}},
             {",\n\"rule\": {\"kind\": \"confirm\"}", "",
                 {"line 24, section 'room', item 'draught': 'rule' is missing"}},
         })
        checkRefused(breakage);
}

namespace {

std::string documentOf(int sections, int itemsEach)
{
    std::string text
        = R"({"id":"a","version":1,"use":"after-use","languages":["en"],"title":{"en":"A"},"sections":[)";
    int number = 0;
    for (int s = 0; s < sections; ++s) {
        text += (s == 0 ? "\n" : ",\n");
        text += R"({"id":"s)" + std::to_string(s) + R"(","title":{"en":"S"},"items":[)";
        for (int i = 0; i < itemsEach; ++i) {
            text += (i == 0 ? "\n" : ",\n");
            text += R"({"id":"i)" + std::to_string(number++)
                + R"(","severity":"minor","mayNotApply":false,"label":{"en":"L"},"whenNotMet":{"en":"W"},)"
                + R"("source":"S","rule":{"kind":"confirm"}})";
        }
        text += "]}";
    }
    return text + "]}";
}

}

TEST_CASE("a document has at most 20 sections and 120 items")
{
    CHECK(readChecklist(documentOf(20, 6)).has_value());
    CHECK(readChecklist(documentOf(1, 120)).has_value());
    const auto sections = readChecklist(documentOf(21, 1));
    REQUIRE_FALSE(sections.has_value());
    CHECK(sections.error().message == "line 1: 'sections' has 21, must have 1 to 20");
    const auto inOne = readChecklist(documentOf(1, 121));
    REQUIRE_FALSE(inOne.has_value());
    CHECK(inOne.error().message == "line 2, section 's0': 'items' has 121, must have 1 to 120");
    const auto inAll = readChecklist(documentOf(11, 11));
    REQUIRE_FALSE(inAll.has_value());
    CHECK(inAll.error().message == "line 1: 'sections' hold more than 120 items");
}
