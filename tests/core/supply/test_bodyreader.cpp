// SPDX-License-Identifier: MIT
#include "core/supply/bodyreader.h"

#include "shelf.h"

#include <doctest/doctest.h>

using namespace cradlepost;

namespace {

/** What is said of a body in which `read` asks for what it likes. */
template <class Read> std::string faultOf(const char* text, Read read)
{
    const Json body = parseJson(text).value();
    BodyReader reader(body, "test record");
    read(reader);
    const auto done = reader.finish();
    return done ? "" : done.error().message;
}

bool isFault(const char* text, void (*read)(BodyReader&))
{
    const std::string fault = faultOf(text, read);
    return fault.starts_with("test record: 'a' ");
}

}

TEST_CASE("a sound body is read in full")
{
    const Json body
        = parseJson(R"({"at":1,"d":"2.5","day":"2026-11-24","f":true,"i":"x-1","l":["a","b"],"n":7,)"
                    R"("t":"Zwölf µg"})")
              .value();
    BodyReader read(body, "test record");
    CHECK(read.moment("at") == fromMs(1));
    CHECK(read.decimal("d", {0}, {9000}) == num("2.5"));
    CHECK(read.day("day") == day("2026-11-24"));
    CHECK(read.flag("f"));
    CHECK_FALSE(read.flag("g"));
    CHECK(read.id("i") == "x-1");
    CHECK(read.ids("l", 2) == std::vector<std::string>{"a", "b"});
    CHECK(read.ids("m", 2).empty());
    CHECK(read.list("o", 2).empty());
    CHECK(read.integer("n", 7, 7) == 7);
    CHECK(read.text("t", 8) == "Zwölf µg"); // characters, not bytes
    CHECK(read.finish().has_value());
}

TEST_CASE("what is missing, of another type or out of range is named")
{
    CHECK(isFault("{}", [](BodyReader& r) { r.integer("a", 0, 9); }));
    CHECK(isFault(R"({"a":"1"})", [](BodyReader& r) { r.integer("a", 0, 9); }));
    CHECK(isFault(R"({"a":10})", [](BodyReader& r) { r.integer("a", 0, 9); }));
    CHECK(isFault(R"({"a":-1})", [](BodyReader& r) { r.moment("a"); }));
    CHECK(isFault(R"({"a":253402300800000})", [](BodyReader& r) { r.moment("a"); }));
    CHECK(isFault(R"({"a":1})", [](BodyReader& r) { r.id("a"); }));
    CHECK(isFault(R"({"a":"A"})", [](BodyReader& r) { r.id("a"); }));
    CHECK(isFault(R"({"a":""})", [](BodyReader& r) { r.text("a", 5); }));
    CHECK(isFault(R"({"a":"  "})", [](BodyReader& r) { r.text("a", 5); }));
    CHECK(isFault(R"({"a":"123456"})", [](BodyReader& r) { r.text("a", 5); }));
    CHECK(isFault(R"({"a":"1\n2"})", [](BodyReader& r) { r.text("a", 5); }));
    CHECK(isFault(R"({"a":"2026-02-30"})", [](BodyReader& r) { r.day("a"); }));
    CHECK(isFault(R"({"a":"2.50"})", [](BodyReader& r) { r.decimal("a", {0}, {9000}); }));
    CHECK(isFault(R"({"a":"9.001"})", [](BodyReader& r) { r.decimal("a", {0}, {9000}); }));
    CHECK(isFault(R"({"a":2})", [](BodyReader& r) { r.decimal("a", {0}, {9000}); }));
    CHECK(isFault(R"({"a":false})", [](BodyReader& r) { r.flag("a"); }));
    CHECK(isFault(R"({"a":[]})", [](BodyReader& r) { r.ids("a", 2); }));
    CHECK(isFault(R"({"a":["b","a"]})", [](BodyReader& r) { r.ids("a", 2); }));
    CHECK(isFault(R"({"a":["b","b"]})", [](BodyReader& r) { r.ids("a", 2); }));
    CHECK(isFault(R"({"a":[1]})", [](BodyReader& r) { r.ids("a", 2); }));
    CHECK(isFault(R"({"a":["a","b","c"]})", [](BodyReader& r) { r.ids("a", 2); }));
    CHECK(isFault(R"({"a":{}})", [](BodyReader& r) { r.list("a", 2); }));
    CHECK(isFault("{}", [](BodyReader& r) { r.part("a"); }));
}

TEST_CASE("a member that nobody asked for says that a later version wrote it")
{
    const Json body = parseJson(R"({"a":"x","later":1})").value();
    BodyReader read(body, "test record");
    read.id("a");
    const auto done = read.finish();
    REQUIRE_FALSE(done.has_value());
    CHECK(done.error().code == ErrorCode::NewerSchema);
    CHECK(done.error().message.find("'later'") != std::string::npos);
}

TEST_CASE("the first fault is the one that is told")
{
    CHECK(faultOf(R"({"b":1})",
              [](BodyReader& r) {
                  r.id("a");
                  r.id("b");
              })
              .find("'a' is missing")
        != std::string::npos);
    CHECK(faultOf("[]", [](BodyReader&) {}) == "test record: 'body' is no object");
}

TEST_CASE("the fault of a part is the fault of the whole")
{
    CHECK(faultOf("{}", [](BodyReader& r) {
        r.adopt(Result<void>());
        r.adopt(fail(ErrorCode::BadDocument, "part: broken"));
        r.fault("a", "later");
    }) == "part: broken");
}
