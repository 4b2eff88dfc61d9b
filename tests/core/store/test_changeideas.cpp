// SPDX-License-Identifier: MIT
#include "ward.h"

using namespace cradlepost;
using namespace cradlepost::test;

TEST_CASE("a change idea gets an id, and a later record of that id puts it right or ends it")
{
    Ward ward;
    ChangeIdea idea{.id = "",
        .title = "Kits checked at handover",
        .from = addDays(firstDay, 7),
        .until = {},
        .items = {"item-1", "item-2"},
        .hope = "half as many gaps"};
    idea.id = must(ward.store->noteChange(ward.unit, idea, "QO"));
    CHECK_FALSE(idea.id.empty());
    CHECK(must(ward.store->changeIdeas(ward.unit)) == std::vector{idea});
    const ChangeIdea other{
        .id = "", .title = "A lamp by the door", .from = firstDay, .until = {}, .items = {}, .hope = ""};
    const std::string otherId = must(ward.store->noteChange(ward.unit, other, "QO"));
    CHECK(otherId != idea.id);
    idea.until = addDays(firstDay, 30);
    must(ward.store->noteChange(ward.unit, idea, "QO"));
    const auto ideas = must(ward.store->changeIdeas(ward.unit));
    REQUIRE(ideas.size() == 2);
    CHECK(ideas[0].id == otherId);
    CHECK(ideas[1] == idea);
    CHECK(ward.fault() == "");
    must(ward.store->rebuild());
    CHECK(must(ward.store->changeIdeas(ward.unit)).size() == 2);
}

TEST_CASE("a change idea that does not hold is refused")
{
    Ward ward;
    ChangeIdea idea{.id = "", .title = "x", .from = firstDay, .until = {}, .items = {}, .hope = ""};
    CHECK(ward.store->noteChange(ward.unit, idea, "QO").error().code == ErrorCode::InvalidArgument);
    idea.title = "Long enough";
    CHECK(ward.store->noteChange("nowhere", idea, "QO").error().code == ErrorCode::NotFound);
    CHECK(must(ward.store->changeIdeas(ward.unit)).empty());
}
