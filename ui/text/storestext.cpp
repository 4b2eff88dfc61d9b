// SPDX-License-Identifier: MIT
#include "ui/text/storestext.h"

#include <algorithm>

namespace cradlepost {

QString StoresText::nameOf(const StoresView& view, const std::string& item)
{
    const auto row = std::find_if(
        view.shelves.begin(), view.shelves.end(), [&](const ShelfRow& r) { return r.item.id == item; });
    return qs(row == view.shelves.end() ? item : row->item.name);
}

QString StoresText::answer(const StoresView& view) const
{
    if (view.shelves.empty())
        return tr("No shelf is kept here yet");
    const ShelfRow& first = view.shelves.front();
    const QString name = qs(first.item.name);
    if (first.order == 0)
        return tr("Nothing has to be ordered now");
    if (first.usable == 0)
        return tr("%1: none left, order %2").arg(name, m_figures.count(first.order));
    if (!first.cover)
        return tr("%1: order %2").arg(name, m_figures.count(first.order));
    return tr("%1: enough for %2 more, order %3").arg(name, cover(first), m_figures.count(first.order));
}

QString StoresText::sentence(const StoresView& view) const
{
    const auto orders = std::count_if(
        view.shelves.begin(), view.shelves.end(), [](const ShelfRow& row) { return row.order > 0; });
    std::int64_t expired = 0;
    for (const ShelfRow& row : view.shelves)
        expired += row.expiring.expired;
    QStringList parts;
    if (orders > 1)
        parts << tr("%n item(s) to order.", nullptr, static_cast<int>(orders));
    if (expired > 0)
        parts << tr("%n expired piece(s) to take off.", nullptr, static_cast<int>(expired));
    if (!view.differences.empty())
        parts << tr("The last round counted otherwise %n time(s).", nullptr,
            static_cast<int>(view.differences.size()));
    parts << devicesToSee(view);
    for (const FridgeRow& row : view.fridges) {
        if (row.verdict.advice != ColdChainAdvice::None || row.due)
            parts << fridge(row);
    }
    return parts.join(QLatin1Char(' '));
}

QString StoresText::cover(const ShelfRow& row) const
{
    if (row.usable == 0)
        return tr("none left");
    if (!row.cover)
        return tr("not used lately");
    constexpr double fewShifts = 10;
    if (row.cover->shifts < fewShifts)
        return tr("%n shift(s)", nullptr, static_cast<int>(row.cover->shifts));
    return tr("%n day(s)", nullptr, static_cast<int>(row.cover->days));
}

QString StoresText::pieces(const ShelfRow& row) const
{
    const QString usable = m_figures.count(row.usable);
    return row.item.levels.par == 0 ? usable
                                    : tr("%1 of %2").arg(usable, m_figures.count(row.item.levels.par));
}

QString StoresText::lots(const ShelfRow& row, Date today) const
{
    QStringList parts;
    const std::vector<BookLot>& lots = row.book.lots;
    if (lots.size() == 1 && !lots.front().key.expiry && lots.front().key.number.empty())
        return {}; // as many as the shelf says
    for (const BookLot& lot : lots) {
        const QString pieces = m_figures.count(lot.pieces);
        QString text = !lot.key.expiry ? tr("%1 without a day").arg(pieces)
            : lot.key.usableOn(today)  ? tr("%1 until %2").arg(pieces, qs(toIso(*lot.key.expiry)))
                                       : tr("%1 expired %2").arg(pieces, qs(toIso(*lot.key.expiry)));
        if (!lot.key.number.empty())
            text += QStringLiteral(" (%1)").arg(qs(lot.key.number));
        parts << text;
    }
    return parts.join(QStringLiteral(", "));
}

QString StoresText::lot(const LotKey& lot)
{
    QStringList parts;
    if (!lot.number.empty())
        parts << qs(lot.number);
    if (lot.expiry)
        parts << qs(toIso(*lot.expiry));
    return parts.join(QStringLiteral(" · "));
}

QString StoresText::toDo(const ShelfRow& row) const
{
    QStringList parts;
    if (row.order > 0)
        parts << tr("order %1").arg(m_figures.count(row.order));
    if (row.expiring.expired > 0)
        parts << tr("take off %1 expired").arg(m_figures.count(row.expiring.expired));
    return parts.join(QStringLiteral(", "));
}

QString StoresText::chance(const ShelfRow& row) const
{
    if (!row.lasts || row.usable == 0)
        return {};
    return tr("%1 to last until %2").arg(m_figures.percent(*row.lasts), m_times.day(row.nextDelivery));
}

QString StoresText::expiring(const StoresView& view) const
{
    Expiring all;
    for (const ShelfRow& row : view.shelves) {
        all.within30 += row.expiring.within30;
        all.within60 += row.expiring.within60;
        all.within90 += row.expiring.within90;
    }
    std::int64_t unused = 0;
    for (const ShelfRow& row : view.shelves)
        unused += row.runDown.unused - row.expiring.expired;
    QStringList parts;
    if (all.within30 + all.within60 + all.within90 > 0)
        parts << tr("Pieces that expire: %1 within 30 days, %2 in 31 to 60, %3 in 61 to 90.")
                     .arg(m_figures.count(all.within30), m_figures.count(all.within60),
                         m_figures.count(all.within90));
    else
        parts << tr("Nothing more expires within 90 days.");
    if (unused > 0)
        parts << tr("At today's use %1 will expire unused.").arg(m_figures.count(unused));
    return parts.join(QLatin1Char(' '));
}

QStringList StoresText::shelfCourse(const ShelfRow& row) const
{
    QStringList lines;
    const StockLevels& levels = row.item.levels;
    if (levels.par > 0)
        lines << tr("Fill up to %1, order at %2, never under %3.")
                     .arg(m_figures.count(levels.par), m_figures.count(levels.minimum),
                         m_figures.count(levels.emergency));
    if (row.cover && row.usable > 0)
        lines << tr("Lasts about %1 shifts, %2 months.")
                     .arg(m_figures.number(row.cover->shifts), m_figures.number(row.cover->months, 1));
    if (row.perDay)
        lines << tr("Used: %1 a day.").arg(m_figures.number(*row.perDay, 1));
    if (row.reorderAt > 0)
        lines << tr("To have enough in %1 of 100 cases, order when %2 are left.")
                     .arg(m_figures.number(100 * row.service), m_figures.count(row.reorderAt));
    if (row.item.deliveryDays > 0)
        lines << tr("Delivered every %n day(s).", nullptr, row.item.deliveryDays);
    if (const std::int64_t unused = row.runDown.unused - row.expiring.expired; unused > 0)
        lines << tr("At this use %1 will expire unused.").arg(m_figures.count(unused));
    return lines;
}

QString StoresText::difference(const BookDifference& difference) const
{
    return tr("counted %1, the book says %2")
        .arg(m_figures.count(difference.seen), m_figures.count(difference.book));
}

QString StoresText::kit(const KitRow& row, const StoresView& view) const
{
    QStringList limiting;
    for (const std::string& part : row.possible.limiting)
        limiting << nameOf(view, part);
    return tr("Kits that the shelf can make up: %1 of %2. What limits: %3.")
        .arg(m_figures.count(row.possible.kits), m_figures.count(row.plan.par), m_figures.list(limiting));
}

QString StoresText::movement(MovementKind kind)
{
    switch (kind) {
    case MovementKind::Receipt:
        return tr("Came in");
    case MovementKind::Issue:
        return tr("Used");
    case MovementKind::Wastage:
        return tr("Lost or spoiled");
    case MovementKind::ExpiredRemoved:
        return tr("Expired, taken off");
    case MovementKind::CountCorrection:
        return tr("Counted");
    case MovementKind::TransferOut:
        return tr("Given to another unit");
    case MovementKind::TransferIn:
        return tr("From another unit");
    }
    return {};
}

QString StoresText::reason(MovementReason reason)
{
    switch (reason) {
    case MovementReason::None:
        return {};
    case MovementReason::Damaged:
        return tr("damaged");
    case MovementReason::Opened:
        return tr("opened, not used up");
    case MovementReason::ColdChain:
        return tr("too warm or frozen");
    case MovementReason::Lost:
        return tr("lost");
    case MovementReason::NotWrittenDown:
        return tr("not written down before");
    case MovementReason::CountedWrong:
        return tr("counted wrong before");
    case MovementReason::NotKnown:
        return tr("not known");
    }
    return {};
}

}
