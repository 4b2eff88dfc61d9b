// SPDX-License-Identifier: MIT
#include "app/compute/method.h"
#include "core/stats/lqas.h"

namespace cradlepost::compute {

namespace {

using namespace stats;

std::vector<LqasStandard> standardsOf(const Table& table)
{
    const auto good = table.numbers("good");
    const auto poor = table.numbers("poor");
    const auto lots = table.texts("lot");
    std::vector<LqasStandard> list;
    for (std::size_t i = 0; i < good.size(); ++i)
        list.push_back(
            {.good = good[i], .poor = poor[i], .lot = lots.empty() ? std::nullopt : readWhole(lots[i])});
    return list;
}

Result<Report> runRisks(const Table& table, const Options&)
{
    const auto standards = standardsOf(table);
    const auto n = table.counts("n");
    auto d = table.counts("d");
    auto given = table.texts("d");
    d.resize(table.size());
    given.resize(table.size()); // empty: the best d is looked for
    Json::Array rows;
    for (std::size_t i = 0; i < standards.size(); ++i) {
        LqasRule rule{.n = n[i], .d = d[i], .risks = {}};
        if (given[i].empty()) {
            const auto best = bestLqasRule(standards[i], n[i]);
            if (!best)
                return table.fault(i, "n", best.error().message);
            rule = *best;
        } else {
            const auto risks = lqasRisks(standards[i], n[i], d[i]);
            if (!risks)
                return table.fault(i, "n", risks.error().message);
            rule.risks = *risks;
        }
        rows.emplace_back(Json::Object{{"row", rowNumber(i)}, {"n", rule.n}, {"d", rule.d},
            {"failures_allowed", rule.n - rule.d}, {"good_failed", rule.risks.goodFailed},
            {"poor_passed", rule.risks.poorPassed}});
    }
    return Report{{{"rows", std::move(rows)}}};
}

Result<Report> runPlan(const Table& table, const Options&)
{
    const auto standards = standardsOf(table);
    const auto alpha = table.numbers("good_failed");
    const auto beta = table.numbers("poor_passed");
    Json::Array rows;
    for (std::size_t i = 0; i < standards.size(); ++i) {
        const auto plan = planLqas(standards[i], alpha[i], beta[i]);
        if (!plan)
            return table.fault(i, "good", plan.error().message);
        rows.emplace_back(Json::Object{{"row", rowNumber(i)}, {"n", plan->rule.n}, {"d", plan->rule.d},
            {"good_failed", plan->rule.risks.goodFailed}, {"poor_passed", plan->rule.risks.poorPassed},
            {"safe_from", plan->safeFrom}});
    }
    return Report{{{"rows", std::move(rows)}}};
}

}

std::vector<Method> samplingMethods()
{
    const ColumnSpec good{"good", ColumnKind::Chance, "share right in a lot that should pass"};
    const ColumnSpec poor{"poor", ColumnKind::Chance, "share right in a lot that should fail"};
    const ColumnSpec lot{.name = "lot",
        .kind = ColumnKind::Count,
        .meaning = "items in the lot; empty: endless",
        .optional = true,
        .gaps = true};
    const std::vector<FieldSpec> riskFields{
        {"rows[].row, rows[].n, rows[].d", "pass when at least d of n are right"},
        {"rows[].good_failed", "chance that a good lot fails (alpha)"},
        {"rows[].poor_passed", "chance that a poor lot passes (beta)"}};
    auto ruleFields = riskFields;
    ruleFields.push_back({"rows[].failures_allowed", "n - d"});
    auto planFields = riskFields;
    planFields.push_back({"rows[].safe_from", "from this n on every larger n has a rule as well"});
    return {
        {.name = "lqas",
            .summary = "Both risks of a rule of lot quality assurance sampling",
            .columns = {{"n", ColumnKind::Count, "sample"},
                {.name = "d",
                    .kind = ColumnKind::Count,
                    .meaning = "pass when at least d are right; empty: the best d",
                    .optional = true,
                    .gaps = true},
                good, poor, lot},
            .options = {},
            .fields = std::move(ruleFields),
            .example = "n,d,good,poor,lot\n19,13,0.8,0.5,\n19,13,0.8,0.5,100\n19,,0.9,0.6,\n",
            .run = runRisks},
        {.name = "lqas-plan",
            .summary = "Smallest sample that keeps both risks",
            .columns = {good, poor, {"good_failed", ColumnKind::Inside, "most chance that a good lot fails"},
                {"poor_passed", ColumnKind::Inside, "most chance that a poor lot passes"}, lot},
            .options = {},
            .fields = std::move(planFields),
            .example = "good,poor,good_failed,poor_passed,lot\n0.8,0.5,0.1,0.1,\n0.8,0.5,0.1,0.1,50\n",
            .run = runPlan},
    };
}

}
