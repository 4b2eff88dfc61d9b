// SPDX-License-Identifier: MIT
#include "app/commands/command.h"
#include "core/ledger/canonical.h"
#include "core/store/shiftview.h"
#include "ui/text/verdicttext.h"
#include "ui/text/wardtext.h"

#include <algorithm>
#include <cstdio>

namespace cradlepost {

namespace {

Json toJson(const Reason& reason)
{
    Json::Object out {{"code", codeName(reason.code)}, {"item", reason.item}, {"limit", reason.limit},
        {"part", reason.part}, {"severity", codeName(reason.severity)}, {"value", reason.value}};
    out.push_back({"readyAt", reason.readyAt ? Json(toMs(*reason.readyAt)) : Json()});
    return out;
}

Json toJson(const Gap& gap, Instant now)
{
    return Json::Object {{"code", codeName(gap.reason.code)}, {"due", toMs(gap.due)}, {"found", gap.found},
        {"item", gap.item}, {"late", gap.due < now}, {"nth", gap.nth}, {"openedAt", toMs(gap.openedAt)},
        {"owner", gap.owner}, {"severity", codeName(gap.severity)}};
}

/**
 * --json of status, one object a unit. Times are UTC milliseconds. "verdict" is "no-round" before the shift's round
 * is done; "index" is in ten-thousandths.
 */
Json toJson(const ShiftView& view, Instant now)
{
    Json::Array gaps;
    for (const Gap& gap : view.gaps)
        gaps.push_back(toJson(gap, now));
    Json::Array reasons;
    Json::Array warm;
    if (view.standing) {
        for (const Reason& reason : view.standing->verdict.reasons)
            reasons.push_back(toJson(reason));
        for (const std::size_t at : view.standing->warmByClock)
            warm.emplace_back(view.adopted.checklist.item(at).id);
    }
    Json::Object out {{"gaps", std::move(gaps)}, {"name", view.unit.name}, {"reasons", std::move(reasons)},
        {"shift", Json::Object {{"begins", toMs(view.shift.begins)}, {"code", view.shift.code},
                      {"date", toIso(view.shift.date)}, {"ends", toMs(view.shift.ends)}}},
        {"unit", view.unit.id}, {"verdict", view.standing ? codeName(view.standing->verdict.state) : "no-round"},
        {"warmByClock", std::move(warm)}};
    if (view.standing) {
        out.push_back({"met", view.standing->verdict.met});
        out.push_back({"applicable", view.standing->verdict.applicable});
        out.push_back({"index", view.standing->verdict.index});
        out.push_back({"finished", toMs(view.standing->round.finished)});
    }
    return out;
}

void print(const QString& line) { std::printf("%s\n", line.toUtf8().constData()); }

void printGaps(const CommandContext& context, const Store& store, const ShiftView& view, const TimeText& times, Instant now)
{
    const ReasonText reasons(context.language);
    for (const Gap& gap : view.gaps) {
        const auto found = itemNamed(store, view, gap.item);
        const Item* item = found ? &*found : nullptr;
        print(QStringLiteral("  %1 · %2: %3 · %4 · %5")
                  .arg(WardText::severity(gap.severity), reasons.title(gap.reason, item), reasons.why(gap.reason, item),
                      gap.owner.empty() ? QStringLiteral("-") : qs(gap.owner), times.moment(gap.due, now)));
    }
}

void printView(const CommandContext& context, const Store& store, const ShiftView& view, Instant now)
{
    const TimeText times(context.language, view.calendar.zone());
    print(QStringLiteral("%1 · %2").arg(qs(view.unit.name), times.shift(view.shift)));
    if (view.standing) {
        QString sentence
            = VerdictText(context.language, times).sentence(view.adopted.checklist, *view.standing, now);
        print(QStringLiteral("  %1. %2").arg(WardText::readiness(view.standing->verdict.state),
            sentence.remove(QStringLiteral("**"))));
        print(QStringLiteral("  %1").arg(VerdictText::figures(view.standing->verdict)));
    } else {
        print(QStringLiteral("  %1").arg(WardText::sectionState(false, Outcome::NotChecked, false)));
    }
    printGaps(context, store, view, times, now);
}

}

int runStatus(const CommandContext& context, bool json)
{
    const std::string& unit = context.options.unit;
    const auto store = context.openStore(OpenMode::ReadOnly);
    if (!store)
        return complain(store.error());
    auto units = (*store)->units();
    if (!units)
        return complain(units.error());
    if (!unit.empty())
        std::erase_if(*units, [&](const Unit& u) { return u.id != unit; });
    if (units->empty())
        return complain({ErrorCode::NotFound, unit.empty() ? "no unit is set up" : "there is no unit '" + unit + "'", {}});
    const Instant now = context.clock.now();
    bool ready = true;
    Json::Array all;
    for (const Unit& one : *units) {
        const auto view = shiftView(**store, one.id, now);
        if (!view)
            return complain(view.error());
        ready = ready && view->standing && view->standing->verdict.state != Readiness::NotReady;
        if (json)
            all.push_back(toJson(*view, now));
        else
            printView(context, **store, *view, now);
    }
    if (json)
        std::printf("%s\n", canonicalText(Json(std::move(all))).c_str());
    return ready ? Done : NotReadyNow;
}

}
