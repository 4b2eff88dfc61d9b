// SPDX-License-Identifier: MIT
#include "core/review/trustagreement.h"

#include <algorithm>

namespace cradlepost {

namespace {

constexpr std::int64_t fewestAnswers = 30; // our own

bool isMetOrGap(char letter) { return letter == 'm' || letter == 'g'; }

void compare(ItemAgreement& item, char round, char check)
{
    ++item.both;
    item.agreed += round == check ? 1 : 0;
    item.roundMetCheckGap += round == 'm' && check == 'g' ? 1 : 0;
    item.roundGapCheckMet += round == 'g' && check == 'm' ? 1 : 0;
}

std::vector<ItemAgreement> compared(
    const Selection& selection, TrustAgreement& trust, stats::AgreementTable& table)
{
    std::vector<ItemAgreement> items(selection.items.size());
    for (const SpotCheck& check : selection.history->spotChecks) {
        const auto rounds = selection.rounds();
        const auto round = std::find_if(rounds.begin(), rounds.end(),
            [&](const ChosenRound& one) { return one.fact->slot == check.slot; });
        if (round == rounds.end())
            continue;
        ++trust.checks;
        for (const SpotCheck::Seen& seen : check.seen) {
            const auto item = selection.itemAt(seen.item);
            const char said = item ? round->letters[*item] : 'n';
            const char found = static_cast<char>(seen.outcome);
            if (!isMetOrGap(said) || !isMetOrGap(found))
                continue;
            compare(items[*item], said, found);
            ++table.counts[(said == 'g' ? 2U : 0U) + (found == 'g' ? 1U : 0U)];
        }
    }
    return items;
}

}

TrustAgreement trustAgreement(const Selection& selection)
{
    TrustAgreement trust;
    stats::AgreementTable table{.q = 2, .counts = std::vector<std::int64_t>(4)};
    auto items = compared(selection, trust, table);
    for (std::size_t i = 0; i < items.size(); ++i) {
        items[i].item = i;
        trust.agreed += {.x = items[i].agreed, .n = items[i].both};
    }
    std::erase_if(items, [](const ItemAgreement& item) { return item.both == 0; });
    std::stable_sort(items.begin(), items.end(),
        [](const ItemAgreement& a, const ItemAgreement& b) { return a.both - a.agreed > b.both - b.agreed; });
    trust.items = std::move(items);
    if (trust.agreed.n < fewestAnswers) {
        trust.why = trust.agreed.n == 0 ? CannotSay::NoData : CannotSay::TooFew;
        return trust;
    }
    if (const auto kappa = stats::kappa(table))
        trust.kappa = *kappa;
    if (const auto ac1 = stats::ac1(table))
        trust.ac1 = *ac1;
    if (const auto adjusted = stats::adjustedKappa(table))
        trust.adjusted = *adjusted;
    return trust;
}

}
