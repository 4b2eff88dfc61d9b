// SPDX-License-Identifier: MIT
#include "tests/support/qstringprint.h"
#include "tests/ui/pages/round/roundbench.h"
#include "ui/theme/theme.h"

#include <doctest/doctest.h>
#include <QApplication>
#include <QScrollArea>

using namespace cradlepost;
using namespace cradlepost::test;

namespace {

/** Puts the application into one look for the time of a test. */
class Look
{
public:
    Look(Scheme scheme, double scale, bool rightToLeft)
    {
        applyTheme(*qApp, makeTheme(scheme, scale));
        QGuiApplication::setLayoutDirection(rightToLeft ? Qt::RightToLeft : Qt::LeftToRight);
    }
    ~Look()
    {
        applyTheme(*qApp, makeTheme(Scheme::Light));
        QGuiApplication::setLayoutDirection(Qt::LeftToRight);
    }
    Look(const Look&) = delete;
    Look& operator=(const Look&) = delete;
};

/** What sticks out of its parent or is smaller than it needs to be, of all that is shown. */
QStringList cut(const QWidget& page)
{
    QStringList faults;
    for (const QWidget* one : page.findChildren<QWidget*>()) {
        const QWidget* parent = one->parentWidget();
        const bool scrolled = parent->objectName() == QLatin1String("qt_scrollarea_viewport");
        if (!one->isVisible() || scrolled || one->objectName().startsWith(QLatin1String("qt_")))
            continue;
        const QString name
            = QStringLiteral("%1 '%2' in '%3'")
                  .arg(QLatin1String(one->metaObject()->className()), one->accessibleName().left(30),
                      QLatin1String(parent->metaObject()->className()));
        if (!parent->rect().contains(one->geometry()) && !one->size().isEmpty())
            faults << name + QStringLiteral(" sticks out");
        const int height = one->hasHeightForWidth() ? one->heightForWidth(one->width()) : 0;
        if (one->height() < height && one->layout() == nullptr)
            faults << name + QStringLiteral(" is %1 of %2 high").arg(one->height()).arg(height);
        if (one->width() < one->minimumSizeHint().width() && one->layout() == nullptr)
            faults << name
                    + QStringLiteral(" is %1 of %2 wide")
                          .arg(one->width())
                          .arg(one->minimumSizeHint().width());
    }
    return faults;
}

void checkAllSections(const QString& language, double scale)
{
    RoundBench bench(language);
    bench.ward->setActor("AB");
    CHECK(cut(*bench.page).join(QStringLiteral("; ")) == QString());
    bench.page->begin(RoundKind::Shift);
    settle();
    CHECK_MESSAGE(bench.page->size() == QSize(1254, 716), "the page pushes the window to ",
        bench.page->width(), " x ", bench.page->height(), " at ", scale);
    for (const Section& section : bench.checklist().sections) {
        for (const Item& item : section.items) {
            bench.at(item.id);
            for (int i = 0; i < 6; ++i)
                settle(); // rows that fold ask for their height more than once
            const QString faults = cut(*bench.page).join(QStringLiteral("; "));
            CHECK_MESSAGE(faults.isEmpty(), item.id, ": ", faults.toStdString());
        }
    }
    for (const SectionPage* page : bench.page->findChildren<SectionPage*>())
        CHECK(page->widget()->width() <= page->viewport()->width());
}

}

TEST_CASE("nothing is cut in English")
{
    const Look look(Scheme::Light, 1.0, false);
    checkAllSections(QStringLiteral("en"), 1.0);
}

TEST_CASE("nothing is cut in Hindi at twice the text")
{
    const Look look(Scheme::Dark, 2.0, false);
    checkAllSections(QStringLiteral("hi"), 2.0);
}

TEST_CASE("nothing is cut in a long language from right to left")
{
    const Look look(Scheme::Light, 1.0, true);
    checkAllSections(QStringLiteral("pseudo"), 1.0);
}

TEST_CASE("nothing is cut in a long language at twice the text")
{
    const Look look(Scheme::Light, 2.0, true);
    checkAllSections(QStringLiteral("pseudo"), 2.0);
}

TEST_CASE("from right to left the sections stand at the right")
{
    const Look look(Scheme::Light, 1.0, true);
    RoundBench bench(QStringLiteral("pseudo"));
    bench.ward->setActor("AB");
    bench.page->begin(RoundKind::Shift);
    settle();
    const auto left = [&](QWidget& widget) { return widget.mapTo(bench.page.get(), QPoint()).x(); };
    CHECK(left(bench.find("sectionList")) > left(bench.card("draught")));
}

TEST_CASE("what a card grows by comes into view")
{
    const Look look(Scheme::Light, 2.0, false);
    RoundBench bench;
    bench.ward->setActor("AB");
    bench.page->begin(RoundKind::Shift);
    settle();
    ItemCard& card = bench.at("corner-clean");
    settle();
    type(QStringLiteral("-"));
    for (int i = 0; i < 6; ++i)
        settle();
    const QWidget* reason = card.findChild<QWidget*>(QStringLiteral("reason-not-known"));
    REQUIRE(reason != nullptr);
    CHECK(reason->visibleRegion().boundingRect() == reason->rect());
}

TEST_CASE("of a card that is higher than the page one sees the name and what has the keyboard")
{
    const Look look(Scheme::Light, 2.0, false);
    RoundBench bench(QStringLiteral("en"), {1254, 560});
    bench.ward->setActor("AB");
    bench.page->begin(RoundKind::Shift);
    settle();
    int higher = 0;
    for (const Section& section : bench.checklist().sections)
        for (const Item& item : section.items) {
            const ItemCard& card = bench.at(item.id);
            for (int i = 0; i < 6; ++i)
                settle();
            const QWidget* viewport = card.parentWidget()->parentWidget();
            if (card.height() <= viewport->height())
                continue;
            ++higher;
            CAPTURE(item.id);
            const QWidget* focus = QApplication::focusWidget();
            REQUIRE(focus != nullptr);
            REQUIRE(card.isAncestorOf(focus));
            if (focus->height() < viewport->height() - 20)
                CHECK(focus->visibleRegion().boundingRect() == focus->rect());
            const int top = card.mapTo(viewport, QPoint()).y();
            const int focusBottom = focus->mapTo(&card, QPoint(0, focus->height())).y();
            if (focusBottom + 20 < viewport->height())
                CHECK(top >= 0);
        }
    CHECK(higher > 0);
}
