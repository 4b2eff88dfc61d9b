// SPDX-License-Identifier: MIT
// No text of a widget may be cut: not in English, not in a language half as long again, not at twice the
// size.
#include "tests/ui/widgets/scenery.h"
#include "ui/text/pseudotranslator.h"
#include "ui/widgets/actiontable.h"
#include "ui/widgets/choicebutton.h"
#include "ui/widgets/factsheet.h"
#include "ui/widgets/inktext.h"
#include "ui/widgets/markslegend.h"
#include "ui/widgets/navigationrail.h"
#include "ui/widgets/sectionlist.h"
#include "ui/widgets/verdictbanner.h"
#include "ui/widgets/wraplabel.h"

#include <doctest/doctest.h>

using namespace cradlepost;

namespace {
QString said(const char* text, bool pseudo)
{
    return pseudo ? pseudoText(QString::fromUtf8(text)) : QString::fromUtf8(text);
}

/// Calls `check` in English and in the pseudo language, at both ends of the text size, in both directions.
template <typename Check> void everywhere(Check check)
{
    for (const double scale : {1.0, 2.0}) {
        for (const bool pseudo : {false, true}) {
            const Scenery scenery(scale, pseudo ? Qt::RightToLeft : Qt::LeftToRight);
            PseudoTranslator translator;
            if (pseudo)
                QCoreApplication::installTranslator(&translator);
            INFO("text size ", scale, pseudo ? ", pseudo" : ", English");
            check(pseudo);
            QCoreApplication::removeTranslator(&translator);
        }
    }
}

int textWidth(
    const QWidget& widget, const QString& text, TextRole role, TextWeight weight = TextWeight::Regular)
{
    return InkText(text, themeOf(widget).font(role, weight), widget.layoutDirection()).naturalWidth();
}
}

TEST_CASE("a label's height holds all its lines at any width from the widest word on")
{
    everywhere([](bool pseudo) {
        const WrapLabel label(said("Never delay the care of a mother or baby to fill this in.", pseudo));
        const int least = label.minimumSizeHint().width();
        const int line = label.minimumSizeHint().height();
        const int area = textWidth(label, label.text(), TextRole::Body) * line;
        for (const int width : {least, 2 * least, 5 * least})
            CHECK(label.heightForWidth(width) * width >= area);
        CHECK(label.heightForWidth(10000) == line);
    });
}

TEST_CASE("an answer button holds its text and its key")
{
    everywhere([](bool pseudo) {
        const QString text = said("Does not apply", pseudo);
        const ChoiceButton button(text, QStringLiteral("/"));
        CHECK(button.sizeHint().width() >= textWidth(button, text, TextRole::Body)
                + textWidth(button, QStringLiteral("/"), TextRole::Small) + 16);
    });
}

TEST_CASE("the rail holds every word of its places")
{
    everywhere([](bool pseudo) {
        NavigationRail rail;
        rail.setPlaces({{said("This shift", pseudo), 1}, {said("Set-up", pseudo), 7}});
        const InkText name(said("Set-up", pseudo), themeOf(rail).font(TextRole::Small, TextWeight::SemiBold),
            rail.layoutDirection());
        CHECK(rail.sizeHint().width() >= name.widestWord() + 8);
        CHECK(rail.sizeHint().width() < 1366 / 4);
    });
}

TEST_CASE("a section's name and count do not meet, at the least width too")
{
    everywhere([](bool pseudo) {
        SectionList list;
        list.setSections({{said("Medicines, cold chain", pseudo), 10, 10}});
        const QString name = said("Medicines, cold chain", pseudo);
        const InkText text(
            name, themeOf(list).font(TextRole::Body, TextWeight::SemiBold), list.layoutDirection());
        const QString count = list.itemText(0).mid(name.size() + 2);
        CHECK(list.minimumSizeHint().width()
            >= text.widestWord() + textWidth(list, count, TextRole::Small) + 24);
        list.resize(list.minimumSizeHint().width(), 400);
        CHECK(list.itemRect(0).height() > text.height(1 << 20) + 8);
    });
}

TEST_CASE("the verdict's longest word fits a narrow page")
{
    everywhere([](bool pseudo) {
        VerdictBanner banner;
        banner.setVerdict(VerdictState::ReadyWithGaps, said("One critical gap: **the warmer**.", pseudo));
        CHECK(banner.minimumSizeHint().width() <= 760);
        CHECK(banner.heightForWidth(760) >= banner.minimumSizeHint().height());
    });
}

TEST_CASE("a fact, the table and the legend find a height for the least width they ask")
{
    everywhere([](bool pseudo) {
        FactSheet fact;
        fact.setFact({.title = said("Births expected this shift", pseudo),
            .value = QStringLiteral("2"),
            .aside = said("whole kits 2, chance they are enough 0.62", pseudo),
            .progress = {},
            .lines = {said("one more kit makes it 0.84", pseudo)}});
        ActionTable table;
        table.setRows({{.mark = Mark::Gap,
            .title = said("Delivery kits: 2 whole of 4", pseudo),
            .subtitle = said("cord ties limit; third night running", pseudo),
            .what = said("Sterile store, shelf B", pseudo),
            .who = said("nobody yet", pseudo),
            .by = QStringLiteral("21:00"),
            .byAside = said("12 min", pseudo)}});
        const MarksLegend legend;
        for (const QWidget* widget : std::initializer_list<const QWidget*>{&fact, &table, &legend}) {
            const int least = widget->minimumSizeHint().width();
            const int natural = widget->sizeHint().width();
            CHECK(least <= natural);
            CHECK(widget->heightForWidth(least) >= widget->heightForWidth(natural));
            CHECK(least <= 1000);
        }
    });
}

TEST_CASE("the legend is one line where it fits")
{
    everywhere([](bool) {
        const MarksLegend legend;
        CHECK(legend.heightForWidth(legend.sizeHint().width()) == legend.sizeHint().height());
        CHECK(legend.heightForWidth(legend.minimumSizeHint().width()) >= 4 * legend.sizeHint().height());
    });
}
