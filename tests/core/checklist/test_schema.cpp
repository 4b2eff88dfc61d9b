// SPDX-License-Identifier: MIT
#include "core/checklist/reader.h"

#include "sampledocument.h"

#include <doctest/doctest.h>
#include <fstream>
#include <iterator>
#include <rapidjson/document.h>
#include <rapidjson/schema.h>
#include <rapidjson/stringbuffer.h>

using namespace cradlepost;

namespace {

rapidjson::Document parsed(const std::string& text)
{
    rapidjson::Document document;
    document.Parse<rapidjson::kParseFullPrecisionFlag>(text.data(), text.size());
    REQUIRE_FALSE(document.HasParseError());
    return document;
}

const rapidjson::SchemaDocument& schema()
{
    static const rapidjson::SchemaDocument loaded = [] {
        std::ifstream file(std::string(CRADLEPOST_SOURCE_DIR) + "/resources/checklists/checklist.schema.json",
            std::ios::binary);
        REQUIRE(file.good());
        return rapidjson::SchemaDocument(
            parsed({std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()}));
    }();
    return loaded;
}

/** Where the schema refuses the text, as "rule at place"; empty when it is valid. */
std::string refusal(const std::string& text)
{
    rapidjson::SchemaValidator validator(schema());
    if (parsed(text).Accept(validator))
        return {};
    rapidjson::StringBuffer place;
    validator.GetInvalidDocumentPointer().Stringify(place);
    return std::string(validator.GetInvalidSchemaKeyword()) + " at " + place.GetString();
}

}

TEST_CASE("the documents that come with the program fulfil the schema")
{
    for (const RoundKind use : {RoundKind::Shift, RoundKind::PreBirth, RoundKind::AfterUse})
        CHECK(refusal(builtInChecklistText(use)) == "");
    CHECK(refusal(sampleDocument()) == "");
}

TEST_CASE("the schema refuses what the reader refuses, as far as a schema can say it")
{
    for (const Breakage& breakage : std::vector<Breakage>{
             {"\"id\": \"sample\",", "", {}},
             {"\"sample\"", "\"Sample\"", {}},
             {"\"sample\"", "\"" + std::string(41, 'a') + "\"", {}},
             {"\"version\": 3", "\"version\": 0", {}},
             {"\"version\": 3", "\"version\": 3.5", {}},
             {"\"use\": \"shift\"", "\"use\": \"recheck\"", {}},
             {"\"version\"", "\"edition\"", {}},
             {"[\"en\", \"hi\"]", "[]", {}},
             {"[\"en\", \"hi\"]", "[\"en\", \"en\"]", {}},
             {"[\"en\", \"hi\"]", "[\"en\", \"Hindi\"]", {}},
             {"\"en\": \"Sample\", ", "", {}},
             {"\"critical\"", "\"high\"", {}},
             {"\"mayNotApply\": false", "\"mayNotApply\": 0", {}},
             {"\"label\"", "\"lable\"", {}},
             {"\"source\": \"C\",", "", {}},
             {"{\"kind\": \"confirm\"}", "{\"kind\": \"yes\"}", {}},
             {"{\"kind\": \"confirm\"}", "{\"kind\": \"confirm\", \"par\": 1}", {}},
             {"\"low\": \"0.5\"", "\"low\": 0.5", {}},
             {"\"low\": \"0.5\"", "\"low\": \"0,5\"", {}},
             {"\"low\": \"0.5\"", "\"low\": \"0.5000\"", {}},
             {"\"decimals\": 1", "\"decimals\": 4", {}},
             {"\"low\": 25, ", "", {}},
             {"\"minutes\": 30", "\"minutes\": 0", {}},
             {",\n{\"id\": \"refill\", \"label\": {\"en\": \"Refill\", \"hi\": \"भरना\"}}", "", {}},
             {"\"par\": 10", "\"par\": 0", {}},
             {"\"perKit\": 2", "\"perKit\": 0", {}},
             {"\"unit\": \"psi\"", "\"unit\": \"kPa\"", {}},
             {", \"source\": \"F\"", "", {}},
         }) {
        checkRefused(breakage);
        CAPTURE(breakage.piece);
        CAPTURE(breakage.instead);
        CHECK(refusal(broken(sampleDocument(), breakage)) != "");
    }
}
