// SPDX-License-Identifier: MIT
// All widgets with sample data, in both schemes, at both ends of the text size, in both directions.
// Run as: gallery FOLDER
#include "tests/tour/chartpages.h"
#include "ui/text/pseudotranslator.h"
#include "ui/theme/theme.h"
#include "ui/widgets/actiontable.h"
#include "ui/widgets/choicebutton.h"
#include "ui/widgets/factsheet.h"
#include "ui/widgets/foldingrow.h"
#include "ui/widgets/markslegend.h"
#include "ui/widgets/navigationrail.h"
#include "ui/widgets/readinessstrip.h"
#include "ui/widgets/sectionlist.h"
#include "ui/widgets/sheet.h"
#include "ui/widgets/verdictbanner.h"
#include "ui/widgets/wraplabel.h"

#include <cstdio>
#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QDir>
#include <QLineEdit>
#include <QPushButton>
#include <QRadioButton>
#include <QScrollArea>
#include <QSpinBox>
#include <QVBoxLayout>

using namespace cradlepost;

namespace {
QString s(const char* text) { return QCoreApplication::translate("Gallery", text); }

StripData sampleStrip()
{
    StripData data{.finding = s("The warmer corner has not been ready since 21 Nov")};
    data.rows = {s("Room"), s("Warmer corner"), s("Resuscitation"), s("Kits and linen"),
        s("Hands and gloves"), s("Medicines, cold chain")};
    for (int day = 11; day <= 24; ++day)
        data.days.push_back({.label = QStringLiteral("%1 Nov").arg(day), .shifts = 3});
    for (int row = 0; row < 6; ++row) {
        std::vector<StripCell> cells;
        for (int column = 0; column < 42; ++column) {
            Mark mark = (row * 7 + column * 5) % 23 == 3 ? Mark::Gap : Mark::Met;
            if (row == 1 && column > 29)
                mark = Mark::GapCritical;
            if (column == 23)
                mark = Mark::NotChecked;
            if (row == 5 && column % 9 == 4)
                mark = Mark::DoesNotApply;
            if (row == 0 && column % 11 == 4)
                mark = Mark::Late;
            cells.push_back(
                {.mark = column < 41 ? std::optional(mark) : std::nullopt, .word = {}});
        }
        data.cells.push_back(cells);
    }
    return data;
}

std::vector<ActionRow> sampleActions()
{
    return {
        {.mark = Mark::GapCritical,
            .title = s("Warmer warm"),
            .subtitle = s("on since 19:24"),
            .what = s("Leave on, towels under it"),
            .who = s("runs by itself"),
            .by = QStringLiteral("19:54"),
            .byAside = s("12 min")},
        {.mark = Mark::Gap,
            .title = s("Delivery kits: 2 whole of 4"),
            .subtitle = s("cord ties limit; third night running"),
            .what = s("Sterile store, shelf B"),
            .who = QStringLiteral("A. T."),
            .by = QStringLiteral("21:00")},
        {.mark = Mark::Gap,
            .title = s("Size 0 mask"),
            .subtitle = s("cracked rim, failed step 1 of 3"),
            .what = s("Spare from drawer 2, test it"),
            .who = s("nobody yet"),
            .by = QStringLiteral("20:30")},
    };
}

std::vector<RailPlace> places()
{
    return {{s("This shift"), 1}, {s("Round"), 2}, {s("Gaps"), 3}, {s("Stores"), 4}, {s("Month"), 5}, {s("Units"), 6},
        {s("Set-up"), 7}};
}

/// The head of a page and a body beside the rail, in a scroll area as the window has it.
QWidget* framed(QWidget* page, int place)
{
    auto* window = new QWidget;
    auto* row = new QHBoxLayout(window);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(0);
    auto* rail = new NavigationRail;
    rail->setPlaces(places());
    rail->setPlace(place);
    row->addWidget(rail);
    auto* scroll = new QScrollArea;
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setWidget(page);
    row->addWidget(scroll, 1);
    return window;
}

QVBoxLayout* plainColumn(int spacing)
{
    auto* column = new QVBoxLayout(new QWidget);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(spacing);
    return column;
}

QWidget* shiftPage()
{
    auto* page = new QWidget;
    const Theme& theme = themeOf(*page);
    auto* column = new QVBoxLayout(page);
    const int wide = theme.space(Space::Wide);
    column->setContentsMargins(wide, wide, wide, wide);
    column->setSpacing(theme.space(Space::Apart));
    auto* upper = new FoldingRow;
    upper->setSpacing(theme.space(Space::Wide));
    auto* left = plainColumn(theme.space(Space::Near));
    auto* banner = new VerdictBanner;
    banner->setVerdict(VerdictState::NotReady,
        s("One critical gap: **the warmer has been on for 18 of 30 minutes**. Two lesser gaps. 54 of 57 "
          "items "
          "met, round finished 19:40."));
    left->addWidget(banner);
    auto* title = new WrapLabel(s("Mend first"), TextRole::Small);
    title->setTone(Tone::Soft);
    title->setWeight(TextWeight::SemiBold);
    left->addWidget(title);
    auto* table = new ActionTable;
    table->setRows(sampleActions());
    left->addWidget(table);
    auto* buttons = new QHBoxLayout;
    auto* primary = new QPushButton(s("Re-check what is missing"));
    primary->setProperty("primary", true);
    buttons->addWidget(primary);
    buttons->addWidget(new QPushButton(s("Hand over")));
    buttons->addWidget(new QPushButton(s("Check before a birth")));
    buttons->addStretch();
    left->addLayout(buttons);
    left->addStretch();
    upper->addWidget(left->parentWidget(), 2);
    auto* right = plainColumn(theme.space(Space::Near));
    for (const Fact& fact : {Fact{.title = s("Warmer"),
                            .value = s("ready at 19:54"),
                            .progress = 0.6,
                            .lines = {s("on 18 min of 30 · next birth about 20:30")}},
             Fact{.title = s("Births expected this shift"),
             .value = QStringLiteral("2"),
             .aside = s("whole kits 2 · chance they are enough 0.62"),
             .lines = {s("one more kit makes it 0.84; two more 0.94")}},
             Fact{.title = s("Room"),
             .value = s("26.4 °C"),
             .aside = s("limits 26 to 28"),
             .lines = {s("read 19:31 · fridge reading due 20:00 · scale check 22:00")}}}) {
        auto* sheet = new FactSheet;
        sheet->setFact(fact);
        right->addWidget(sheet);
    }
    right->addStretch();
    upper->addWidget(right->parentWidget(), 1);
    column->addWidget(upper);
    auto* strip = new ReadinessStrip;
    strip->setData(sampleStrip());
    column->addWidget(strip);
    column->addWidget(new MarksLegend);
    column->addStretch();
    return page;
}

QWidget* roundRow(const QString& text, Mark mark, int chosen)
{
    auto* sheet = new Sheet;
    sheet->setPadding(Space::Near);
    auto* row = new FoldingRow;
    auto* item = new QWidget;
    auto* itemRow = new QHBoxLayout(item);
    itemRow->setContentsMargins(0, 0, 0, 0);
    itemRow->addWidget(new OutcomeMark(mark));
    itemRow->addWidget(new WrapLabel(text, TextRole::Lead), 1, Qt::AlignVCenter);
    row->addWidget(item, 1);
    auto* buttons = new QWidget;
    auto* buttonRow = new QHBoxLayout(buttons);
    buttonRow->setContentsMargins(0, 0, 0, 0);
    const QStringList answers{s("Met"), s("Gap"), s("Does not apply")};
    const QStringList keys{s("Enter"), QStringLiteral("−"), QStringLiteral("/")};
    for (int i = 0; i < 3; ++i) {
        auto* button = new ChoiceButton(answers.at(i), keys.at(i));
        button->setChecked(i == chosen);
        buttonRow->addWidget(button);
    }
    row->addWidget(buttons, 0, Qt::AlignTop);
    sheet->content().addWidget(row);
    return sheet;
}

QWidget* controls()
{
    auto* sheet = new Sheet(s("Controls of Qt in the house's clothes"));
    auto* row = new QHBoxLayout;
    auto* edit = new QLineEdit;
    edit->setPlaceholderText(s("Reading"));
    auto* combo = new QComboBox;
    combo->addItems({s("not working"), s("absent"), s("expired")});
    auto* check = new QCheckBox(s("Critical only"));
    check->setChecked(true);
    auto* radio = new QRadioButton(s("Night"));
    radio->setChecked(true);
    auto* off = new QPushButton(s("Not now"));
    off->setEnabled(false);
    for (QWidget* widget : std::initializer_list<QWidget*>{edit, combo, new QSpinBox, check, radio, off})
        row->addWidget(widget);
    sheet->content().addLayout(row);
    return sheet;
}

QWidget* roundPage()
{
    auto* page = new QWidget;
    const Theme& theme = themeOf(*page);
    auto* outer = new QVBoxLayout(page);
    auto* row = new FoldingRow;
    outer->addWidget(row);
    const int wide = theme.space(Space::Wide);
    outer->setContentsMargins(wide, wide, wide, wide);
    row->setSpacing(wide);
    auto* sections = new SectionList;
    sections->setSections({{s("Room"), 3, 3}, {s("Warmer corner"), 5, 7}, {s("Resuscitation set"), 0, 14},
        {s("Kits and linen"), 0, 11}, {s("Hands and gloves"), 0, 6}, {s("Medicines, cold chain"), 0, 10},
        {s("Scale, thermometer"), 0, 4}, {s("Papers and people"), 0, 4}});
    sections->setCursorAt(1);
    auto* left = plainColumn(0);
    left->addWidget(sections);
    left->addStretch();
    row->addWidget(left->parentWidget(), 0, Qt::AlignTop);
    auto* right = plainColumn(theme.space(Space::Close));
    right->addWidget(roundRow(s("Heater works, all elements glow"), Mark::Met, 0));
    right->addWidget(roundRow(s("Radiant warmer on since"), Mark::GapCritical, 1));
    right->addWidget(roundRow(s("Warmer surface clean and dry"), Mark::NotChecked, -1));
    right->addWidget(controls());
    for (const auto state : {VerdictState::Ready, VerdictState::ReadyWithGaps, VerdictState::NoRound}) {
        auto* banner = new VerdictBanner;
        banner->setVerdict(state, s("A sentence **with its weight** explains it."));
        right->addWidget(banner);
    }
    right->addStretch();
    row->addWidget(right->parentWidget(), 1);
    return page;
}

void save(QWidget* window, const QString& name, const QDir& folder)
{
    const int height = window->hasHeightForWidth() ? window->heightForWidth(1366) : 0;
    window->resize(1366, std::max(768, height));
    window->show();
    QCoreApplication::processEvents();
    window->grab().save(folder.filePath(name));
    delete window;
}

void saveBoth(const QString& name, const QDir& folder, test::Wording wording = test::Wording::English)
{
    for (int page = 0; page < chartPageCount; ++page)
        save(chartPage(page, wording), QStringLiteral("charts%1-%2.png").arg(page + 1).arg(name), folder);
    save(framed(shiftPage(), 0), QStringLiteral("shift-%1.png").arg(name), folder);
    save(framed(roundPage(), 1), QStringLiteral("round-%1.png").arg(name), folder);
}
}

int main(int argc, char** argv)
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication application(argc, argv);
    const QStringList arguments = QCoreApplication::arguments();
    if (arguments.size() != 2 || !QDir().mkpath(arguments.at(1))) {
        std::fprintf(stderr, "gallery FOLDER\n");
        return 2;
    }
    const QDir folder(arguments.at(1));
    for (const auto& [name, scheme] : {std::pair("light", Scheme::Light), std::pair("dark", Scheme::Dark)}) {
        for (const int percent : {100, 200}) {
            applyTheme(application, makeTheme(scheme, percent / 100.0));
            saveBoth(QStringLiteral("%1-%2").arg(QLatin1String(name)).arg(percent), folder);
        }
    }
    applyTheme(application, makeTheme(Scheme::Light));
    saveBoth(QStringLiteral("hindi-100"), folder, test::Wording::Hindi);
    PseudoTranslator pseudo;
    QCoreApplication::installTranslator(&pseudo);
    for (const int percent : {100, 200}) {
        applyTheme(application, makeTheme(Scheme::Light, percent / 100.0));
        saveBoth(QStringLiteral("pseudo-%1").arg(percent), folder);
    }
    return 0;
}
