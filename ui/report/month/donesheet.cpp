// SPDX-License-Identifier: MIT
#include "ui/report/month/monthsheets.h"

#include <QCoreApplication>

namespace cradlepost {

namespace {

struct DoneSheet
{
    Q_DECLARE_TR_FUNCTIONS(DoneSheet)
public:
    static QString stateWord(DoneState state)
    {
        switch (state) {
        case DoneState::InTime:
            return tr("in time");
        case DoneState::Late:
            return tr("late");
        case DoneState::Paper:
            return tr("from paper");
        case DoneState::Running:
            return tr("not done yet");
        case DoneState::Missing:
            break;
        }
        return tr("missing");
    }

    static ShiftDone markOf(DoneState state)
    {
        switch (state) {
        case DoneState::InTime:
            return ShiftDone::InTime;
        case DoneState::Late:
            return ShiftDone::Late;
        case DoneState::Paper:
            return ShiftDone::Paper;
        case DoneState::Running:
            return ShiftDone::NotDue;
        case DoneState::Missing:
            break;
        }
        return ShiftDone::Missing;
    }

    static QString title(const DoneCalendar& calendar, const FigureText& figures)
    {
        QString text = tr("Rounds done: %1 due").arg(figures.of(calendar.done.tally));
        if (calendar.late > 0)
            //: appended to "Rounds done: 88 of 93 due"
            text += tr(", %n late", nullptr, static_cast<int>(calendar.late));
        return text;
    }

    static QString smallPrint(
        const DoneCalendar& calendar, const ReviewOptions& options, const FigureText& figures)
    {
        QStringList parts{tr("In time: finished and recorded within the first %1 of the shift.")
                              .arg(figures.percent(options.inTimeShare))};
        if (calendar.amended > 0)
            parts.append(tr("%n round(s) amended later.", nullptr, static_cast<int>(calendar.amended)));
        if (calendar.paper > 0)
            parts.append(tr("%n round(s) entered from paper: nothing is said of their time.", nullptr,
                static_cast<int>(calendar.paper)));
        return parts.join(QLatin1Char(' '));
    }

    static void addShift(CalendarDay& day, const DoneCell& cell)
    {
        day.shifts.push_back({.done = markOf(cell.state), .amended = cell.amended > 0});
        QString said = TimeText::shiftName(cell.shift.code) + QLatin1Char(' ') + stateWord(cell.state);
        if (cell.amended > 0)
            said = tr("%1, amended").arg(said);
        day.text += QStringLiteral(" · ") + said;
    }
};

/** Column of a date in the reader's week. */
int columnOf(Date date, Qt::DayOfWeek first)
{
    const auto iso = static_cast<int>(std::chrono::weekday(std::chrono::sys_days(date)).iso_encoding());
    return (iso - static_cast<int>(first) + 7) % 7;
}

}

ChartContent doneSheet(const MonthScene& scene)
{
    const DoneCalendar& calendar = scene.review().calendar;
    const Qt::DayOfWeek first = scene.locale().firstDayOfWeek();
    CalendarFigure figure;
    for (int i = 0; i < 7; ++i)
        figure.weekdays.push_back(scene.locale().standaloneDayName(
            (static_cast<int>(first) - 1 + i) % 7 + 1, QLocale::ShortFormat));
    const Date* last = nullptr;
    for (const DoneCell& cell : calendar.cells) {
        if (last == nullptr || *last != cell.shift.date)
            figure.days.push_back({.column = columnOf(cell.shift.date, first),
                .number = QString::number(static_cast<unsigned>(cell.shift.date.day())),
                .text = scene.times().weekday(cell.shift.date)});
        last = &cell.shift.date;
        DoneSheet::addShift(figure.days.back(), cell);
    }
    return {.title = DoneSheet::title(calendar, scene.figures()),
        .finding = scene.said(MonthPart::Done),
        .smallPrint = DoneSheet::smallPrint(calendar, scene.review().options, scene.figures()),
        .fileName = QStringLiteral("rounds-done"),
        .figure = std::move(figure),
        .table = scene.table("done")};
}

}
