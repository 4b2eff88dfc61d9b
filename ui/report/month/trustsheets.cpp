// SPDX-License-Identifier: MIT
#include "ui/report/month/monthsheets.h"

#include <algorithm>
#include <QCoreApplication>

namespace cradlepost {

namespace {

struct TrustSheet
{
    Q_DECLARE_TR_FUNCTIONS(TrustSheet)
public:
    explicit TrustSheet(const MonthScene& theScene)
        : scene(theScene)
        , asks(static_cast<int>(
              std::count_if(theScene.review().findings.begin(), theScene.review().findings.end(),
                  [](const MonthFinding& finding) { return finding.isQuestion; })))
    {
    }

    const MonthScene& scene;
    int asks;

    [[nodiscard]] bool asked(MonthFindingCode code) const
    {
        return std::any_of(scene.review().findings.begin(), scene.review().findings.end(),
            [&](const MonthFinding& finding) { return finding.code == code; });
    }

    void add(ShareRowsFigure& figure, const QString& name, const Share& share, bool finding) const
    {
        if (share.tally.n == 0)
            return;
        ShareRow row{.name = name,
            .value = share.value(),
            .text = scene.figures().of(share.tally),
            .finding = finding};
        if (share.interval) {
            row.low = share.interval->low;
            row.high = share.interval->high;
        }
        row.spoken = QStringLiteral("%1: %2").arg(name, scene.figures().share(share));
        figure.rows.push_back(std::move(row));
    }

    [[nodiscard]] ShareRowsFigure figure() const
    {
        using Code = MonthFindingCode;
        const TrustReview& trust = scene.review().trust;
        ShareRowsFigure rows;
        add(rows, tr("Rounds done, of those due"), trust.complete, asked(Code::Incomplete));
        add(rows, tr("Rounds in time"), trust.inTime, asked(Code::AskLate));
        add(rows, tr("Items looked at"), trust.itemsLookedAt, false);
        add(rows, tr("Rounds at a pace one can walk"),
            shareOf({.x = trust.pace.timed - trust.pace.tooFast, .n = trust.pace.timed}),
            asked(Code::AskPace));
        add(rows, tr("Rounds unlike any earlier one"),
            shareOf({.x = trust.repeats.compared - trust.repeats.repeating, .n = trust.repeats.compared}),
            asked(Code::AskRepeats));
        add(rows, tr("Answers that agree with spot checks"), shareOf(trust.agreement.agreed),
            asked(Code::AskAgreement));
        for (const TrustReading& reading : trust.readings)
            add(rows, tr("%1: readings not on .0 or .5").arg(scene.itemName(reading.item)),
                shareOf(
                    {.x = reading.onFives.tally.n - reading.onFives.tally.x, .n = reading.onFives.tally.n}),
                reading.rounded);
        rows.shares = evenAxis({}, 0.0, 1.0, 4, [&](double value) { return scene.figures().percent(value); });
        return rows;
    }

    [[nodiscard]] QString title() const
    {
        if (asks > 0)
            return tr("Can the entries be trusted? %n question(s) to ask", nullptr, asks);
        return tr("Nothing in how the entries were made calls for a question");
    }

    [[nodiscard]] QString smallPrint() const
    {
        QStringList parts{tr("Each is a question to ask, not an accusation; nobody is named or ranked.")};
        const TrustAgreement& agreement = scene.review().trust.agreement;
        if (agreement.ac1)
            parts.append(
                tr("Agreement with %n spot check(s): AC1 %1", nullptr, static_cast<int>(agreement.checks))
                    .arg(scene.figures().number(agreement.ac1->estimate, 2))
                + (agreement.kappa
                        ? tr(", kappa %1.").arg(scene.figures().number(agreement.kappa->estimate, 2))
                        : QStringLiteral(".")));
        if (scene.review().trust.pace.medianPerItem)
            parts.append(tr("Median pace %1 s an item.")
                             .arg(scene.figures().number(*scene.review().trust.pace.medianPerItem, 1)));
        return parts.join(QLatin1Char(' '));
    }
};

struct ChangesSheet
{
    Q_DECLARE_TR_FUNCTIONS(ChangesSheet)
public:
    static ShareRow row(const QString& group, const QString& name, stats::Tally tally,
        const FigureText& figures, bool finding)
    {
        const Share share = shareOf(tally);
        ShareRow out{.group = group,
            .name = name,
            .value = share.value(),
            .text = figures.of(tally),
            .finding = finding};
        if (share.interval) {
            out.low = share.interval->low;
            out.high = share.interval->high;
        }
        out.spoken = QStringLiteral("%1, %2: %3").arg(group, name, figures.share(share));
        return out;
    }

    static QString title(const MonthScene& scene)
    {
        const auto& effects = scene.review().changeEffects;
        if (effects.empty())
            return tr("No change idea was tried in this time");
        for (const ChangeEffect& effect : effects) {
            const QString name = qs(scene.review().changes[effect.change].title);
            if (effect.better())
                return tr("“%1”: more items met since").arg(name);
            if (effect.worse())
                return tr("“%1”: fewer items met since").arg(name);
        }
        return tr("Change ideas: too early to say");
    }

    static QString before() { return tr("before"); }
    static QString after() { return tr("since"); }
    static QString smallPrint()
    {
        return tr("Items met of those looked at, of the items named in the idea. It shows that something "
                  "changed then, not "
                  "that the idea did it.");
    }
};

}

ChartContent trustSheet(const MonthScene& scene)
{
    const TrustSheet sheet(scene);
    return {.title = sheet.title(),
        .finding = scene.said(MonthPart::Trust),
        .smallPrint = sheet.smallPrint(),
        .fileName = QStringLiteral("trust"),
        .figure = sheet.figure(),
        .table = scene.table("trust")};
}

ChartContent changesSheet(const MonthScene& scene)
{
    ShareRowsFigure figure;
    double least = 1.0;
    for (const ChangeEffect& effect : scene.review().changeEffects) {
        const QString name = qs(scene.review().changes[effect.change].title);
        const bool finding = effect.better() || effect.worse();
        if (effect.metBefore.n > 0)
            figure.rows.push_back(
                ChangesSheet::row(name, ChangesSheet::before(), effect.metBefore, scene.figures(), false));
        if (effect.metAfter.n > 0)
            figure.rows.push_back(
                ChangesSheet::row(name, ChangesSheet::after(), effect.metAfter, scene.figures(), finding));
    }
    for (const ShareRow& row : figure.rows)
        least = std::min(least, row.low.value_or(1.0));
    figure.shares = evenAxis(
        {}, std::min(least, 0.9), 1.0, 4, [&](double value) { return scene.figures().percent(value); });
    return {.title = ChangesSheet::title(scene),
        .finding = scene.said(MonthPart::Changes),
        .smallPrint = ChangesSheet::smallPrint(),
        .fileName = QStringLiteral("change-ideas"),
        .figure = std::move(figure),
        .table = scene.table("changes")};
}

std::vector<MonthSheet> monthSheets(const MonthScene& scene)
{
    std::vector<MonthSheet> sheets{{MonthPart::Done, doneSheet(scene)},
        {MonthPart::Course, courseSheet(scene, CourseMeasure::ItemsMet)}, {MonthPart::Lost, lostSheet(scene)},
        {MonthPart::Restore, restoreSheet(scene)},
        {MonthPart::Readiness, courseSheet(scene, CourseMeasure::NoCriticalGap)},
        {MonthPart::ByShift, patternSheet(scene)}, {MonthPart::ItemWeeks, itemWeeksSheet(scene)},
        {MonthPart::OpenGaps, openGapsSheet(scene)}, {MonthPart::Availability, availabilitySheet(scene)},
        {MonthPart::Trust, trustSheet(scene)}, {MonthPart::Changes, changesSheet(scene)}};
    for (const ReadingReview& reading : scene.review().readings) {
        sheets.push_back({MonthPart::Readings, readingSheet(scene, reading)});
        sheets.push_back({MonthPart::Readings, histogramSheet(scene, reading)});
    }
    return sheets;
}

}
