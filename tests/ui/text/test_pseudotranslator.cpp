// SPDX-License-Identifier: MIT
#include "tests/support/qstringprint.h"
#include "ui/text/pseudotranslator.h"

#include <doctest/doctest.h>
#include <QApplication>

using namespace cradlepost;

TEST_CASE("pseudo text is bracketed, accented and at least a third longer")
{
    const QString source = QStringLiteral("Round finished a moment ago");
    const QString text = pseudoText(source);
    CHECK(text.startsWith(u'['));
    CHECK(text.endsWith(u']'));
    CHECK_FALSE(text.contains(source));
    CHECK(text.size() * 3 >= source.size() * 4);
    CHECK(pseudoText(QStringLiteral("Ready")) == QString::fromUtf8("[Ŕéàðý ~]"));
}

TEST_CASE("pseudo text keeps what the program reads")
{
    const QString text
        = pseudoText(QStringLiteral("&Save **%1 of %2** in %Ln day(s), %n, %L3<br/>&amp;\nnext"));
    for (const char* kept : {"&S", "**%1", "%2**", "%Ln", "%n", "%L3", "<br/>", "&amp;", "\n"})
        CHECK(text.contains(QString::fromUtf8(kept)));
    CHECK(pseudoText(QString()).isEmpty());
    CHECK(pseudoText(QStringLiteral("  ")) == QStringLiteral("  "));
}

TEST_CASE("installed, it fills in numbers and leaves the names of keys alone")
{
    PseudoTranslator translator(PseudoTranslator::Direction::LeftToRight);
    REQUIRE(QCoreApplication::installTranslator(&translator));
    const QString text = QCoreApplication::translate("Any", "%n item(s) to go", nullptr, 49);
    CHECK(text.contains(QStringLiteral("49")));
    CHECK(text.startsWith(u'['));
    CHECK(QCoreApplication::translate("QShortcut", "Alt") == QStringLiteral("Alt"));
    QCoreApplication::removeTranslator(&translator);
}

TEST_CASE("it turns the window when it was made to")
{
    const PseudoTranslator turned(PseudoTranslator::Direction::RightToLeft);
    const PseudoTranslator straight(PseudoTranslator::Direction::LeftToRight);
    CHECK(turned.translate("QGuiApplication", "QT_LAYOUT_DIRECTION") == QStringLiteral("RTL"));
    CHECK(straight.translate("QGuiApplication", "QT_LAYOUT_DIRECTION") == QStringLiteral("LTR"));
}
