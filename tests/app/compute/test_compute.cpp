// SPDX-License-Identifier: MIT
#include "app/compute/compute.h"

#include <doctest/doctest.h>
#include <set>

using namespace cradlepost;
using namespace cradlepost::compute;

namespace {

double numberOf(const Json& json)
{
    if (const auto* whole = json.asInteger())
        return static_cast<double>(*whole);
    const auto* number = std::get_if<double>(&json.value);
    REQUIRE(number);
    return *number;
}

/** Member by a path such as "rows/0/low". */
const Json& at(const Report& report, std::string_view path)
{
    static const Json nothing;
    const Json* json = nullptr;
    const Json root(report.body);
    thread_local Json kept;
    kept = root;
    json = &kept;
    while (!path.empty()) {
        const auto end = std::min(path.find('/'), path.size());
        const std::string step(path.substr(0, end));
        path.remove_prefix(std::min(end + 1, path.size()));
        if (const auto* array = json->asArray())
            json = &array->at(std::stoul(step));
        else
            json = json->find(step);
        if (json == nullptr)
            return nothing;
    }
    return *json;
}

double figure(
    std::string_view method, std::string_view text, std::string_view path, const GivenOptions& options = {})
{
    const auto report = compute::compute(method, text, options);
    if (!report)
        FAIL(report.error().message);
    return numberOf(at(*report, path));
}

/** All member names of an answer, lists as "name[].member". */
void collect(const Json& json, const std::string& prefix, std::set<std::string>& names)
{
    if (const auto* object = json.asObject()) {
        for (const auto& member : *object) {
            const auto name = prefix.empty() ? member.name : prefix + '.' + member.name;
            names.insert(name);
            collect(member.value, name, names);
        }
    } else if (const auto* array = json.asArray()) {
        for (const auto& element : *array)
            collect(element, prefix + "[]", names);
    }
}

}

TEST_CASE("every method answers its own example, with and without its options spelled out")
{
    CHECK(methods().size() == 37);
    for (const auto& method : methods()) {
        CAPTURE(method.name);
        const auto report = compute::compute(method.name, method.example);
        if (!report)
            FAIL(report.error().message);
        CHECK(at(*report, "method").asString() != nullptr);
        CHECK(toJsonLine(*report).find("null,null,null,null") == std::string::npos);
        CHECK(toPlainText(*report).find("method: " + method.name) == 0);
        GivenOptions spelled;
        for (const auto& option : method.options) {
            if (!option.fallback.empty())
                spelled[option.name] = option.fallback;
        }
        const auto again = compute::compute(method.name, method.example, spelled);
        REQUIRE(again);
        CHECK(toJsonLine(*again) == toJsonLine(*report));
    }
}

TEST_CASE("every member of an answer is documented, and help shows columns, options and an example")
{
    for (const auto& method : methods()) {
        CAPTURE(method.name);
        const auto help = helpText(method);
        std::set<std::string> names;
        collect(Json(compute::compute(method.name, method.example)->body), "", names);
        for (const auto& name : names) {
            const auto last
                = name.substr(name.find_last_of(".]") == std::string::npos ? 0 : name.find_last_of(".]") + 1);
            CAPTURE(name);
            if (last != "method" && !last.empty())
                CHECK(help.find(last) != std::string::npos);
        }
        for (const auto& column : method.columns)
            CHECK(help.find("  " + column.name) != std::string::npos);
        for (const auto& option : method.options)
            CHECK(help.find("--" + option.name) != std::string::npos);
        CHECK(help.find(method.example) != std::string::npos);
        CHECK(help.find(method.summary) == 0);
    }
}

TEST_CASE("answers carry the engine's figures without losing a digit")
{
    // Values of the engine's own checks; sources there.
    const auto near = [](double v) { return doctest::Approx(v).epsilon(1e-9); };
    CHECK(figure("wilson", "x,n\n81,263\n", "rows/0/low") == near(0.2552885199));
    CHECK(figure("clopper-pearson", "x,n\n0,12\n", "rows/0/high", {{"level", "0.99"}}) == near(0.3569459166));
    CHECK(figure("difference", "x1,n1,x2,n2\n56,70,48,80\n", "rows/0/high") == near(0.333872654));
    CHECK(figure("poisson-interval", "events\n5\n", "rows/0/low") == near(1.62348639));
    CHECK(figure("poisson-interval", "events,exposure\n5,2\n", "rows/0/high") == near(11.66833208 / 2));
    CHECK(figure("xmr", "value\n36.5\n36.7\n\"\"\n36.9\n36.4\n", "points/0/low") == near(35.69414894));
    CHECK(figure("stock-out", "mean,stock\n3.4,6\n", "rows/0/stock_out") == near(0.05785322066));
    CHECK(figure("stock-out", "mean,stock,size\n3.4,6,1.7\n", "rows/0/unmet") == near(0.5014737656));
    CHECK(figure("reorder-point", "mean,days,size\n2.3,7,4\n", "rows/0/reorder_point",
              {{"model", "independent-days"}})
        == 25);
    CHECK(figure("lqas", "n,good,poor\n19,0.8,0.5\n", "rows/0/d") == 13);
    CHECK(figure("lqas-plan", "good,poor,good_failed,poor_passed,lot\n0.95,0.8,0.05,0.1,100\n", "rows/0/n")
        == 29);
    CHECK(figure("mkt", "celsius,duration\n5,22\n15,2\n", "mkt") == near(6.462284944));
    CHECK(figure("share-trend", "x,n\n83,86\n90,93\n129,136\n70,82\n", "chi_square") == near(8.224922285));
    CHECK(figure("kappa", findMethod("kappa")->example, "ac1/estimate") == near(0.808));
    CHECK(figure("kappa", findMethod("kappa")->example, "ac1/estimate", {{"categories", "met,gap,none"}})
        == near(0.8315789474));
    CHECK(figure("log-rank", "group,time,ended\na,9,1\na,13,1\na,13,0\nb,5,1\nb,5,1\nb,8,1\n", "df") == 1);
    CHECK(
        figure("kaplan-meier", "time,ended\n2,1\n3,yes\n3,no\n5,0\n8,1\n", "steps/1/survival") == near(0.6));
    CHECK(
        figure("kaplan-meier", "time,ended\n2,1\n4,1\n", "restricted_mean", {{"horizon", "3"}}) == near(2.5));
    CHECK(figure("transport", findMethod("transport")->example, "cost") == 104);
    CHECK(figure("trend", findMethod("trend")->example, "slope") == near(1.5));
    CHECK(figure("run-chart", findMethod("run-chart")->example, "centre", {{"centre", "90"}}) == 90);
}

TEST_CASE("chart options reach the chart")
{
    std::string table = "x,n\n";
    for (int i = 0; i < 8; ++i)
        table += i < 4 ? "10,100\n" : "30,100\n";
    CHECK(figure("p-chart", table, "phases/1/centre", {{"phases", "5"}}) == doctest::Approx(0.3));
    CHECK(figure("p-chart", table, "signals/0/row", {{"baseline", "4"}, {"rules", "beyond-limit"}}) == 5);
    CHECK(figure("p-chart", table, "phases/0/baseline_points", {{"exclude", "1,2"}}) == 6);
    const auto unknown = compute::compute("p-chart", table, {{"rules", "sometimes"}});
    REQUIRE_FALSE(unknown);
    CHECK(unknown.error().code == ErrorCode::NotFound);
    const auto beyond = compute::compute("p-chart", table, {{"phases", "9"}});
    REQUIRE_FALSE(beyond);
    CHECK(beyond.error().message.find("names row 9, the table has 8") != std::string::npos);
}

TEST_CASE("wrong use, a faulty table and a figure that does not exist are told apart")
{
    CHECK(compute::compute("tea-leaves", "x,n\n1,2\n").error().code == ErrorCode::NotFound);
    CHECK(compute::compute("wilson", "x,n\n1,2\n", {{"level", "7"}}).error().code
        == ErrorCode::InvalidArgument);
    CHECK(compute::compute("wilson", "x,n\n3,2\n").error().code == ErrorCode::BadDocument);
    CHECK(compute::compute("run-chart", "value\n5\n5\n").error().code == ErrorCode::Undefined);
    const auto engine = compute::compute("u-chart", "events,exposure\n1,2\n\n3,0\n");
    CHECK(engine.error().code == ErrorCode::BadDocument);
    CHECK(engine.error().message.find("line 4: events without exposure") == 0);
    const auto empty = compute::compute("wilson", "x,n\n0,0\n5,10\n");
    REQUIRE(empty);
    CHECK(at(*empty, "rows/0/low").isNull());
    CHECK(at(*empty, "rows/1/low").asInteger() == nullptr);
    CHECK(compute::compute("transport", "from,on_hand,A\nx,5,1\n")
              .error()
              .message.find("no row is called 'need'")
        != std::string::npos);
    CHECK(compute::compute("transport", "from,on_hand,A\nx,5,1.5\nneed,,3\n")
              .error()
              .message.find("line 2, column 5: (A)")
        == 0);
    CHECK(compute::compute("kappa", "first,second\na,b\nc,a\n", {{"categories", "a,b"}})
              .error()
              .message.find("line 3, column 1: (first) 'c'")
        == 0);
    CHECK(compute::compute("digit-preference", "reading\nwarm\n").error().message.find("line 2, column 1")
        == 0);
    CHECK(compute::compute("repeated-rounds", "round\nmmg\nmm\n").error().message.find("line 3, column 1")
        == 0);
}
