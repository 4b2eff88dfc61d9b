// SPDX-License-Identifier: MIT
#include "tests/support/qstringprint.h"
#include "ui/text/language.h"
#include "ui/text/timetext.h"
#include "ui/text/wardtext.h"

#include <doctest/doctest.h>
#include <QCoreApplication>
#include <QDirIterator>
#include <QFile>
#include <QRegularExpression>
#include <QSet>
#include <QXmlStreamReader>
#include <vector>

using namespace cradlepost;

namespace {

const QString top = QStringLiteral(CRADLEPOST_SOURCE_DIR);

struct Message
{
    QString source;
    bool plural = false;
    bool finished = true;
    QStringList forms; ///< one, or one for each number where the text counts something
};

Message readMessage(QXmlStreamReader& xml)
{
    Message message{.plural = xml.attributes().value(QLatin1String("numerus")) == QLatin1String("yes")};
    while (xml.readNextStartElement()) {
        if (xml.name() == QLatin1String("source")) {
            message.source = xml.readElementText();
        } else if (xml.name() == QLatin1String("translation")) {
            message.finished = !xml.attributes().hasAttribute(QLatin1String("type"));
            if (!message.plural)
                message.forms << xml.readElementText();
            while (message.plural && xml.readNextStartElement())
                message.forms << xml.readElementText();
        } else {
            xml.skipCurrentElement();
        }
    }
    return message;
}

std::vector<Message> catalogue(const QString& language)
{
    QFile file(top + QStringLiteral("/translations/cradlepost_%1.ts").arg(language));
    REQUIRE(file.open(QIODevice::ReadOnly));
    QXmlStreamReader xml(&file);
    std::vector<Message> messages;
    while (!xml.atEnd()) {
        if (xml.readNext() == QXmlStreamReader::StartElement && xml.name() == QLatin1String("message"))
            messages.push_back(readMessage(xml));
    }
    REQUIRE_FALSE(xml.hasError());
    REQUIRE_FALSE(messages.empty());
    return messages;
}

/** Sorted; the number itself is left out where a word may stand for it. */
QStringList placeholders(const QString& text, bool withNumber)
{
    static const QRegularExpression pattern(QStringLiteral("%L?(?:\\d+|n)"));
    QStringList found;
    for (auto all = pattern.globalMatch(text); all.hasNext();) {
        const QString one = all.next().captured();
        if (withNumber || !one.endsWith(QLatin1Char('n')))
            found << one;
    }
    found.sort();
    return found;
}

void checkForms(const Message& message)
{
    INFO(message.source.toStdString());
    CHECK(message.finished);
    CHECK(message.forms.size() == (message.plural ? 2 : 1));
    for (qsizetype i = 0; i < message.forms.size(); ++i) {
        const QString& form = message.forms[i];
        const bool withNumber = !(message.plural && i == 0);
        CHECK_FALSE(form.trimmed().isEmpty());
        CHECK(placeholders(form, withNumber) == placeholders(message.source, withNumber));
        CHECK(form.count(QLatin1String("**")) == message.source.count(QLatin1String("**")));
    }
}

QSet<QString> sourcesOf(const std::vector<Message>& messages, bool pluralOnly)
{
    QSet<QString> sources;
    for (const Message& message : messages) {
        if (message.plural || !pluralOnly)
            sources.insert(message.source);
    }
    return sources;
}

/** Texts that stand in one literal right behind tr(; a longer one, cut in pieces, is left to lupdate. */
QSet<QString> shownTexts()
{
    static const QRegularExpression call(QStringLiteral("\\btr\\(\\s*\"((?:[^\"\\\\]|\\\\.)*)\"\\s*[,)]"));
    QSet<QString> texts;
    QDirIterator files(top + QStringLiteral("/ui"), {QStringLiteral("*.cpp"), QStringLiteral("*.h")},
        QDir::Files, QDirIterator::Subdirectories);
    while (files.hasNext()) {
        QFile file(files.next());
        REQUIRE(file.open(QIODevice::ReadOnly));
        const QString code = QString::fromUtf8(file.readAll());
        for (auto all = call.globalMatch(code); all.hasNext();) {
            QString text = all.next().captured(1);
            text.replace(QLatin1String("\\n"), QLatin1String("\n"))
                .replace(QLatin1String("\\\""), QLatin1String("\""));
            texts.insert(text);
        }
    }
    return texts;
}

QString critical(int gaps)
{
    return QCoreApplication::translate("VerdictText", "%n critical gap(s).", nullptr, gaps);
}

}

TEST_CASE("the Hindi catalogue is whole: every text, number and mark of the source is in it")
{
    for (const Message& message : catalogue(QStringLiteral("hi")))
        checkForms(message);
}

TEST_CASE("the English catalogue has both forms of each text that counts, and nothing else")
{
    const auto english = catalogue(QStringLiteral("en"));
    for (const Message& message : english) {
        checkForms(message);
        CHECK(message.plural);
        for (const QString& form : message.forms)
            CHECK_MESSAGE(!form.contains(QLatin1String("(s)")), form.toStdString());
    }
    CHECK(sourcesOf(english, true) == sourcesOf(catalogue(QStringLiteral("hi")), true));
}

TEST_CASE("every text shown by the window is in the Hindi catalogue; lupdate adds what is missing")
{
    const auto texts = shownTexts();
    const auto known = sourcesOf(catalogue(QStringLiteral("hi")), false);
    CHECK(texts.contains(QStringLiteral("Not ready"))); // the search finds something
    for (const QString& text : texts)
        CHECK_MESSAGE(known.contains(text), text.toStdString());
}

TEST_CASE("in Hindi the program says what the checklists say, in the right number")
{
    const Language hindi(QStringLiteral("hi"));
    CHECK(WardText::readiness(Readiness::NotReady) == QStringLiteral("तैयार नहीं"));
    CHECK(WardText::readiness(Readiness::ReadyWithGaps) == QStringLiteral("कमियों के साथ तैयार"));
    CHECK(WardText::outcome(Outcome::NotChecked) == QStringLiteral("नहीं देखा"));
    CHECK(critical(0) == QStringLiteral("0 गंभीर कमियाँ।"));
    CHECK(critical(1) == QStringLiteral("1 गंभीर कमी।"));
    CHECK(critical(2) == QStringLiteral("2 गंभीर कमियाँ।"));
    CHECK(TimeText::span(std::chrono::hours(3)) == QStringLiteral("3 घंटे"));
}

TEST_CASE("in English a number and its word agree")
{
    const Language english(QStringLiteral("en"));
    CHECK(critical(0) == QStringLiteral("0 critical gaps."));
    CHECK(critical(1) == QStringLiteral("1 critical gap."));
    CHECK(critical(2) == QStringLiteral("2 critical gaps."));
    CHECK(TimeText::span(std::chrono::hours(24 * 5)) == QStringLiteral("5 days"));
    CHECK(WardText::readiness(Readiness::Ready) == QStringLiteral("Ready"));
}

TEST_CASE("a language is gone with its object")
{
    {
        const Language hindi(QStringLiteral("hi"));
        REQUIRE(critical(1) == QStringLiteral("1 गंभीर कमी।"));
    }
    CHECK(critical(1) == QStringLiteral("1 critical gap(s)."));
}
