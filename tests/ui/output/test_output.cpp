// SPDX-License-Identifier: MIT
#include "tests/support/builders.h"
#include "ui/output/output.h"

#include <doctest/doctest.h>
#include <QApplication>
#include <QDialog>
#include <QFile>
#include <QPainter>
#include <QTemporaryDir>
#include <QTimer>
#include <QXmlStreamReader>

using namespace cradlepost;
using namespace cradlepost::test;

namespace {

/// Answers the dialog that opens next.
void answerNext(int answer)
{
    QTimer::singleShot(0, qApp, [answer] {
        auto* dialog = qobject_cast<QDialog*>(QApplication::activeModalWidget());
        CHECK(dialog != nullptr);
        if (dialog != nullptr)
            dialog->done(answer);
    });
}

}

TEST_CASE("an SVG holds size, title, description and what was drawn")
{
    const QByteArray bytes = must(output())->svg(
        {.size = {120, 40}, .title = QStringLiteral("Warmers & towels"), .description = QStringLiteral("n = 3")},
        [](QPainter& painter) { painter.fillRect(QRect(10, 10, 20, 20), Qt::red); });
    QXmlStreamReader xml(bytes);
    QStringList texts;
    bool red = false;
    while (!xml.atEnd()) {
        xml.readNext();
        if (xml.isStartElement() && xml.name() == QStringLiteral("svg"))
            CHECK(xml.attributes().value(QStringLiteral("viewBox")) == QStringLiteral("0 0 120 40"));
        red = red || xml.attributes().value(QStringLiteral("fill")) == QStringLiteral("#ff0000");
        if (xml.isCharacters() && !xml.isWhitespace())
            texts.append(xml.text().toString());
    }
    CHECK_FALSE(xml.hasError());
    CHECK(texts.contains(QStringLiteral("Warmers & towels")));
    CHECK(texts.contains(QStringLiteral("n = 3")));
    CHECK(red);
}

TEST_CASE("nothing is printed when no printer is chosen")
{
    bool asked = false;
    answerNext(QDialog::Rejected);
    CHECK(must(output())->print(nullptr, [&](QPagedPaintDevice&) { return asked = true; }) == Printing::Cancelled);
    CHECK_FALSE(asked);
}

TEST_CASE("without its library nothing crashes, and the message names the file and what to do")
{
    const QTemporaryDir folder;
    const auto missing = outputIn(folder.path());
    REQUIRE_FALSE(missing);
    CHECK(missing.error().code == ErrorCode::Io);
    CHECK(missing.error().message.find("cradlepost_output.so") != std::string::npos);
    CHECK(missing.error().hint.find("Build or install") != std::string::npos);

    QFile torn(folder.filePath(QStringLiteral("cradlepost_output.so")));
    REQUIRE(torn.open(QIODevice::WriteOnly));
    torn.write("\x7f" "ELF, but no more of it");
    torn.close();
    CHECK_FALSE(outputIn(folder.path()));
}
