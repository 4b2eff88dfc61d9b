// SPDX-License-Identifier: MIT
#include "ui/report/district/districtsheets.h"

#include <algorithm>
#include <QCoreApplication>

namespace cradlepost {

namespace {

struct StockSheet
{
    Q_DECLARE_TR_FUNCTIONS(StockSheet)
public:
    static QString title(const DistrictReview& review)
    {
        if (!review.transfers || review.transfers->balances.empty())
            return tr("No stock book shows a shortage or a surplus");
        return review.transfers->moves.empty() ? tr("No stock that one unit lacks can be spared by another")
                                               : tr("Stock that could move: %n transfer(s) would help",
                                                   nullptr, static_cast<int>(review.transfers->moves.size()));
    }

    static QString print(const DistrictScene& scene)
    {
        const QString rule = tr(
            "From the units' stock books as they stand now. A giver keeps its par, and what it uses in %1 "
            "days or until its delivery.")
                                 .arg(scene.figures().number(scene.review().options.transfers.coverDays));
        const auto& plan = scene.review().transfers;
        if (!plan || plan->moves.empty())
            return rule;
        return rule + QLatin1Char(' ')
            + (plan->byDistance
                    ? tr("The least pieces times kilometres: %1.")
                          .arg(scene.figures().number(static_cast<double>(plan->pieceMetres) / 1000))
                    : tr("No distances are known: any way counts the same."));
    }
    static QString nothing() { return tr("Nothing to move."); }

    static BarItem bar(const DistrictScene& scene, const Transfer& move)
    {
        BarItem bar{.name = scene.text().transfer(move),
            .value = static_cast<double>(move.pieces),
            .text = scene.text().distance(move)};
        bar.spoken = QStringLiteral("%1; %2").arg(bar.name, bar.text);
        return bar;
    }
};

}

ChartContent stockSheet(const DistrictScene& scene)
{
    const DistrictReview& review = scene.review();
    BarsFigure figure;
    double most = 1.0;
    if (review.transfers) {
        for (const Transfer& move : review.transfers->moves) {
            figure.items.push_back(StockSheet::bar(scene, move));
            most = std::max(most, figure.items.back().value);
        }
    }
    figure.most = most;
    return {.title = StockSheet::title(review),
        .finding = {},
        .smallPrint = StockSheet::print(scene),
        .emptyText = StockSheet::nothing(),
        .fileName = QStringLiteral("units-stock"),
        .figure = std::move(figure),
        .table = scene.table("transfers")};
}

}
