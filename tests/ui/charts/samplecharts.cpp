// SPDX-License-Identifier: MIT
#include "tests/ui/charts/samplecharts.h"

#include <cmath>
#include <QDate>
#include <QLocale>

namespace cradlepost::test {

namespace {
QString s(const char* text) { return QString::fromUtf8(text); }

QString either(Wording wording, const char* english, const char* hindi)
{
    return s(wording == Wording::English ? english : hindi);
}

QString percent(double share) { return QStringLiteral("%1%").arg(std::lround(share * 100.0)); }
QString whole(double value) { return QString::number(std::lround(value)); }
QString tenth(double value) { return QString::number(value, 'f', 1); }

std::vector<QString> items(Wording wording)
{
    if (wording == Wording::Hindi)
        return {s("प्रसव किट पूरी और जीवाणुरहित"), s("शून्य नंबर मास्क की जाँच"), s("वार्मर गर्म है"),
            s("विटामिन के की तिथि ठीक"), s("तौलिये गर्म"), s("सक्शन दबाव बनाए रखता है")};
    return {s("Delivery kits whole"), s("Size 0 mask test"), s("Warmer warm"), s("Vitamin K in date"),
        s("Towels warm"), s("Suction holds")};
}

/// Mondays from 4 May on.
QString day(int week)
{
    return QLocale::c().toString(QDate(2026, 5, 4).addDays(7 * week), QStringLiteral("d MMM"));
}

ControlSeries weekly(const QString& name, int seed, bool falls)
{
    ControlSeries series{.name = name};
    for (int i = 0; i < 26; ++i) {
        const int n = 18 + (i * 5 + seed) % 4;
        const bool later = falls && i >= 19;
        const double centre = later ? 0.66 : 0.81;
        const double reach = 3.0 * std::sqrt(centre * (1.0 - centre) / (n * 4.0));
        ControlPoint point{.label = day(i)};
        if (i != 9)
            point.value = centre + ((i * 7 + seed) % 11 - 5) / 100.0;
        point.limits
            = ControlLimits{.centre = centre, .low = centre - reach, .high = std::min(1.0, centre + reach)};
        point.phase = later ? 1 : 0;
        point.inSpan = i >= 16;
        point.signal = later && i < 23;
        point.paper = i == 17 || i == 20;
        point.text = point.value
            ? QStringLiteral("%1: %2 of %3 shifts").arg(point.label, percent(*point.value)).arg(n)
            : QStringLiteral("%1: no round").arg(point.label);
        series.points.push_back(point);
    }
    return series;
}

/// The numbers of a figure's items as a table of their words: enough to compare by.
ChartTable tableOf(const std::vector<ControlSeries>& series)
{
    ChartTable table{.headers = {s("Week")}, .numbers = {false}};
    for (const ControlSeries& one : series) {
        table.headers << (one.name.isEmpty() ? s("Share") : one.name);
        table.numbers.push_back(true);
    }
    for (std::size_t i = 0; i < series.front().points.size(); ++i) {
        QStringList row{series.front().points[i].label};
        for (const ControlSeries& one : series)
            row << (one.points[i].value ? percent(*one.points[i].value) : QString());
        table.rows.push_back(row);
    }
    return table;
}
}

ChartContent sampleControl(Wording wording)
{
    const ControlFigure figure{.series = {weekly({}, 0, true)},
        .values = evenAxis(either(wording, "items met", "पूरी हुई चीज़ें"), 0.5, 1.0, 6, percent),
        .periods = either(wording, "week beginning", "सप्ताह का आरंभ"),
        .marks = {{19, either(wording, "nights, from 12 Oct", "रात की पालियाँ, 12 अक्तूबर से")},
            {23, either(wording, "kits packed on Mondays", "किट हर सोमवार को बाँधी जाती हैं")}}};
    return {.title = either(wording, "Share of items met each week: nights changed in week 39",
                "हर सप्ताह पूरी हुई चीज़ों का हिस्सा: सप्ताह 39 में रातें बदलीं"),
        .finding = s("It fell from 81% to 66%, more than chance explains."),
        .smallPrint = either(wording, "88 rounds, 18 to 21 a week · limits three standard errors",
            "88 राउंड, सप्ताह में 18 से 21 · सीमाएँ तीन मानक त्रुटि"),
        .fileName = s("readiness"),
        .figure = figure,
        .table = tableOf(figure.series)};
}

ChartContent sampleShiftControl(Wording wording)
{
    const ControlFigure figure{.series = {weekly(either(wording, "days", "दिन"), 3, false),
                                   weekly(either(wording, "nights", "रातें"), 0, true)},
        .values = evenAxis(either(wording, "items met", "पूरी हुई चीज़ें"), 0.5, 1.0, 3, percent),
        .marks = {{19, either(wording, "checklist by the door", "जाँच-सूची दरवाज़े के पास")}},
        .arrangement = ControlFigure::Arrangement::Apart};
    return {.title = either(wording, "Days held, nights fell", "दिन टिके रहे, रातें गिरीं"),
        .smallPrint = s("88 rounds"),
        .fileName = s("days-and-nights"),
        .figure = figure,
        .table = tableOf(figure.series)};
}

ChartContent sampleSurvival(Wording wording)
{
    SurvivalFigure figure{
        .times = evenAxis(either(wording, "hours since found", "मिलने के बाद घंटे"), 0, 72, 7, whole),
        .shares = evenAxis(either(wording, "still open", "अब भी खुले"), 0, 1, 3, percent),
        .atRiskTitle = either(wording, "gaps still open and watched", "खुली और देखी जा रही कमियाँ")};
    ChartTable table{.headers = {s("Severity"), s("Hours"), s("Open")}, .numbers = {false, true, true}};
    const char* names[] = {"minor", "major", "critical"};
    const char* hindi[] = {"छोटी", "बड़ी", "गंभीर"};
    for (int c = 0; c < 3; ++c) {
        SurvivalCurve curve{.name = either(wording, names[c], hindi[c]), .end = 70.0 - 8.0 * c};
        double share = 1.0;
        for (int i = 1; i <= 9; ++i) {
            share *= 0.94 - 0.05 * c;
            const double time = i * (7.0 - 1.2 * c);
            curve.steps.push_back(
                {.time = time, .share = share, .low = share * 0.85, .high = std::min(1.0, share * 1.1)});
            curve.steps.back().text
                = QStringLiteral("%1: %2 open after %3 h").arg(curve.name, percent(share), tenth(time));
            table.rows.push_back({curve.name, tenth(time), percent(share)});
        }
        curve.censored = {12.0 + c, 30.0 + c, 66.0 - 8.0 * c};
        for (int t = 0; t < static_cast<int>(figure.times.ticks.size()); ++t)
            curve.atRisk.push_back(QString::number(std::max(0, 60 - 9 * t - 11 * c)));
        figure.curves.push_back(curve);
    }
    figure.curves[2].median = 23.0;
    figure.curves[2].medianLabel = either(wording, "half of the critical ones are mended by 23 h (18 to 30)",
        "आधी गंभीर कमियाँ 23 घंटे में ठीक (18 से 30)");
    figure.curves[1].median = 41.0;
    figure.curves[1].medianLabel = either(wording, "half of the major ones by 41 h", "आधी बड़ी कमियाँ 41 घंटे में");
    return {.title = either(wording, "Half of the critical gaps are mended within 23 hours",
                "आधी गंभीर कमियाँ 23 घंटों में ठीक होती हैं"),
        .smallPrint = s("112 gaps, 9 still open · band 95%"),
        .fileName = s("time-to-restore"),
        .figure = figure,
        .table = table};
}

ChartContent sampleHistogram(Wording wording)
{
    HistogramFigure figure{.values = evenAxis(either(wording, "room, °C", "कमरा, °C"), 23, 29, 7, whole),
        .counts = evenAxis(either(wording, "readings", "माप"), 0, 20, 5, whole)};
    ChartTable table{.headers = {s("From"), s("To"), s("Readings")}, .numbers = {true, true, true}};
    const int counts[] = {1, 2, 3, 6, 12, 19, 14, 16, 8, 4, 2, 1};
    for (int i = 0; i < 12; ++i) {
        const double from = 23.0 + i * 0.5;
        figure.bars.push_back({.from = from,
            .to = from + 0.5,
            .count = 1.0 * counts[i],
            .outside = from < 25 || from >= 28,
            .text = QStringLiteral("%1 to %2 °C: %3").arg(tenth(from), tenth(from + 0.5)).arg(counts[i])});
        table.rows.push_back({tenth(from), tenth(from + 0.5), QString::number(counts[i])});
    }
    figure.guides = {{25.0, HistogramGuide::Kind::Limit, either(wording, "least 25", "न्यूनतम 25")},
        {28.0, HistogramGuide::Kind::Limit, either(wording, "most 28", "अधिकतम 28")},
        {26.1, HistogramGuide::Kind::Mean, either(wording, "mean 26.1", "औसत 26.1")}};
    return {.title
        = either(wording, "The room was too cold on 12 of 88 shifts", "88 में से 12 पालियों में कमरा ठंडा था"),
        .smallPrint = s("88 readings"),
        .fileName = s("room"),
        .figure = figure,
        .table = table};
}

ChartContent sampleFunnel(Wording wording)
{
    FunnelFigure figure{.centre = 0.78,
        .centreLabel = either(wording, "district 78%", "ज़िला 78%"),
        .numbers = evenAxis(either(wording, "rounds in the month", "महीने के राउंड"), 0, 100, 6, whole),
        .values = evenAxis(either(wording, "shifts ready", "तैयार पालियाँ"), 0.4, 1.0, 4, percent)};
    for (const double z : {3.09, 1.96}) {
        FunnelLimit limit{.label = z > 3 ? s("99.8%") : s("95%"), .outer = z > 3};
        for (int n = 8; n <= 100; n += 2) {
            const double reach = z * std::sqrt(0.78 * 0.22 / n);
            limit.low.emplace_back(n, std::max(0.4, 0.78 - reach));
            limit.high.emplace_back(n, std::min(1.0, 0.78 + reach));
        }
        figure.limits.push_back(limit);
    }
    const struct
    {
        const char* name;
        double n;
        double value;
        bool outside;
        bool few;
    } units[] = {{"Ash Lock", 10, 0.67, false, true}, {"Hallow Down", 20, 0.86, false, false},
        {"Tarn Ferry", 30, 0.5, true, false}, {"Marl Gate", 44, 0.76, false, false},
        {"Ostrey", 58, 0.8, false, false}, {"Quillmere", 88, 0.91, false, false},
        {"Sorrel Hill", 86, 0.71, false, false}, {"Penny Weir", 91, 0.6, true, false}};
    ChartTable table{.headers = {s("Unit"), s("Rounds"), s("Ready")}, .numbers = {false, true, true}};
    for (const auto& unit : units) {
        figure.points.push_back({.n = unit.n,
            .value = unit.value,
            .name = s(unit.name),
            .outside = unit.outside,
            .few = unit.few,
            .text
            = QStringLiteral("%1: %2 of %3 rounds").arg(s(unit.name), percent(unit.value), whole(unit.n))});
        table.rows.push_back({s(unit.name), whole(unit.n), percent(unit.value)});
    }
    return {
        .title = either(wording, "Two units stand out; five do not differ", "दो इकाइयाँ अलग हैं; पाँच में अंतर नहीं"),
        .smallPrint = s("8 units · limits 95% and 99.8%"),
        .fileName = s("units"),
        .figure = figure,
        .table = table};
}

ChartContent sampleBars(Wording wording)
{
    BarsFigure figure{.most = 0.42};
    ChartTable table{.headers = {s("Item"), s("Share"), s("Rounds")}, .numbers = {false, true, true}};
    const double shares[] = {0.31, 0.22, 0.18, 0.09, 0.08, 0.06};
    double sum = 0.0;
    const auto names = items(wording);
    for (std::size_t i = 0; i < names.size(); ++i) {
        sum += shares[i];
        const QString rounds = QStringLiteral("%1 of 88").arg(std::lround(shares[i] * 88));
        figure.items.push_back({.name = names[i],
            .value = shares[i],
            .low = shares[i] * 0.75,
            .high = shares[i] * 1.25 + 0.02,
            .text = QString(percent(shares[i]) % s(" · ") % rounds),
            .cumulated = either(wording, "%1 so far", "अब तक %1").arg(percent(sum)),
            .finding = i < 3,
            .spoken
            = QStringLiteral("%1: %2 of what was lost, %3").arg(names[i], percent(shares[i]), rounds)});
        table.rows.push_back({names[i], percent(shares[i]), rounds});
    }
    return {.title = either(wording, "Where readiness is lost: three items carry most of it",
                "तैयारी कहाँ घटी: तीन चीज़ें सबसे अधिक"),
        .smallPrint = s("88 rounds · intervals 95%"),
        .fileName = s("lost"),
        .figure = figure,
        .table = table};
}

ChartContent sampleShares(Wording wording)
{
    ShareRowsFigure figure{
        .shares = evenAxis(either(wording, "shifts ready", "तैयार पालियाँ"), 0, 1, 5, percent),
        .whole = 0.71,
        .wholeLabel = either(wording, "all shifts 71%", "सभी पालियाँ 71%")};
    const struct
    {
        const char* group;
        const char* name;
        const char* hindi;
        double value;
        int n;
    } rows[] = {{"by shift", "Morning", "सुबह", 0.82, 30}, {"by shift", "Afternoon", "दोपहर बाद", 0.79, 29},
        {"by shift", "Night", "रात", 0.52, 29}, {"by weekday", "Monday", "सोमवार", 0.7, 13},
        {"by weekday", "Tuesday", "मंगलवार", 0.76, 12}, {"by weekday", "Sunday", "रविवार", -1.0, 0}};
    ChartTable table{.headers = {s("Group"), s("Ready")}, .numbers = {false, true}};
    for (const auto& row : rows) {
        ShareRow share{.group = either(wording, row.group, row.n > 20 ? "पाली के अनुसार" : "दिन के अनुसार"),
            .name = either(wording, row.name, row.hindi),
            .finding = row.value > 0 && row.value < 0.6};
        if (row.n > 0) {
            const double reach = 1.96 * std::sqrt(row.value * (1 - row.value) / row.n);
            share.value = row.value;
            share.low = row.value - reach;
            share.high = std::min(1.0, row.value + reach);
        }
        share.text = row.n > 0 ? QStringLiteral("%1 of %2").arg(std::lround(row.value * row.n)).arg(row.n)
                               : s("no round");
        share.spoken = QString(share.name % s(": ") % share.text);
        table.rows.push_back({share.name, share.text});
        figure.rows.push_back(share);
    }
    return {.title = either(wording, "Nights were ready less often than days", "रातें दिनों से कम तैयार रहीं"),
        .smallPrint = s("88 rounds · intervals 95%"),
        .fileName = s("shifts"),
        .figure = figure,
        .table = table};
}

ChartContent sampleCalendar(Wording wording)
{
    CalendarFigure figure;
    for (const char* name : {"Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"})
        figure.weekdays.push_back(s(name));
    if (wording == Wording::Hindi)
        figure.weekdays = {s("सोम"), s("मंगल"), s("बुध"), s("गुरु"), s("शुक्र"), s("शनि"), s("रवि")};
    ChartTable table{.headers = {s("Day"), s("Done")}, .numbers = {false, true}};
    for (int day = 1; day <= 31; ++day) {
        CalendarDay cell{.column = (day + 2) % 7, .number = QString::number(day)};
        int done = 0;
        for (int shift = 0; shift < 3; ++shift) {
            const int at = (day * 5 + shift * 7) % 17;
            const ShiftDone state = day > 28 ? ShiftDone::NotDue
                : at == 3                    ? ShiftDone::Missing
                : at == 8                    ? ShiftDone::Late
                : day == 12 || day == 13     ? ShiftDone::Paper
                                             : ShiftDone::InTime;
            done += state == ShiftDone::Missing || state == ShiftDone::NotDue ? 0 : 1;
            cell.shifts.push_back({.done = state, .amended = at == 11});
        }
        cell.text = QStringLiteral("%1 October: %2 of 3 done").arg(day).arg(done);
        table.rows.push_back({cell.number, QString::number(done)});
        figure.days.push_back(cell);
    }
    return {.title = either(wording, "Rounds done: 88 of 93 due", "राउंड: 93 में से 88 हुए"),
        .smallPrint = s("late: more than 60 minutes"),
        .fileName = s("calendar"),
        .figure = figure,
        .table = table};
}

ChartContent sampleMap(Wording wording)
{
    MapFigure figure{.rowsTitle = either(wording, "item", "चीज़"),
        .columnsTitle = either(wording, "gaps in 100 rounds, by week", "100 राउंड में कमियाँ, सप्ताह से"),
        .rows = items(wording),
        .shadeTitle = either(wording, "the deeper, the more was lost", "जितना गहरा, उतनी अधिक कमी")};
    ChartTable table{.headers = {s("Item")}, .numbers = {false}};
    for (int week = 0; week < 9; ++week) {
        figure.columns.push_back(QStringLiteral("%1 Oct").arg(1 + week * 3));
        table.headers << figure.columns.back();
        table.numbers.push_back(true);
    }
    for (std::size_t row = 0; row < figure.rows.size(); ++row) {
        std::vector<MapCell> cells;
        QStringList line{figure.rows[row]};
        for (int week = 0; week < 9; ++week) {
            const double share = static_cast<double>((static_cast<int>(row) * 31 + week * 17) % 48) / 47.0;
            MapCell cell{.share = share, .label = whole(share * 60)};
            if (week == 4)
                cell = {};
            cell.text = QString(figure.rows[row] % s(", ") % figure.columns[static_cast<std::size_t>(week)]
                % s(": ") % (cell.share ? cell.label : s("no round")));
            line << cell.label;
            cells.push_back(cell);
        }
        figure.cells.push_back(cells);
        table.rows.push_back(line);
    }
    return {.title
        = either(wording, "Kits ran short in the second and the last week", "दूसरे और अंतिम सप्ताह में किट कम पड़ीं"),
        .smallPrint = s("88 rounds"),
        .fileName = s("items-by-week"),
        .figure = figure,
        .table = table};
}

ChartContent sampleMultiples(Wording wording)
{
    SmallMultiplesFigure figure{.values = evenAxis({}, 0, 1, 3, percent),
        .firstPeriod = either(wording, "May", "मई"),
        .lastPeriod = either(wording, "Oct", "अक्तूबर")};
    ChartTable table{.headers = {s("Unit"), s("Last")}, .numbers = {false, true}};
    for (const char* name : {"Ash Lock", "Hallow Down", "Tarn Ferry", "Marl Gate", "Ostrey", "Quillmere",
             "Sorrel Hill", "Penny Weir"}) {
        SmallPanel panel{.name = s(name),
            .centre = 0.78,
            .finding = figure.panels.size() == 2 || figure.panels.size() == 7};
        for (int i = 0; i < 12; ++i) {
            if (figure.panels.size() != 4 || (i != 5 && i < 9))
                panel.values.emplace_back((panel.finding ? 0.5 : 0.78)
                    + ((i * 7 + static_cast<int>(figure.panels.size()) * 3) % 9 - 4) / 50.0);
            else
                panel.values.emplace_back();
        }
        panel.note = QStringLiteral("71% of 88");
        panel.text = QString(panel.name % s(": 71% of 88"));
        table.rows.push_back({panel.name, panel.note});
        figure.panels.push_back(panel);
    }
    return {
        .title = either(wording, "Two units are below the district all year", "दो इकाइयाँ पूरे वर्ष ज़िले से नीचे"),
        .smallPrint = s("8 units"),
        .fileName = s("units-over-time"),
        .figure = figure,
        .table = table};
}

std::vector<ChartContent> sampleCharts(Wording wording)
{
    return {sampleControl(wording), sampleShiftControl(wording), sampleSurvival(wording),
        sampleHistogram(wording), sampleFunnel(wording), sampleBars(wording), sampleShares(wording),
        sampleCalendar(wording), sampleMap(wording), sampleMultiples(wording)};
}

}
