// SPDX-License-Identifier: MIT
#include "ui/text/pseudotranslator.h"

#include <QRegularExpression>
#include <string_view>

namespace cradlepost {

namespace {
constexpr std::u16string_view plainLetters = u"ABCDEGHIJKLNOPRSTUWYZabcdeghijklnoprstuwyz";
constexpr std::u16string_view dressedLetters = u"ÀßÇÐÉĜĤÎĴĶĻÑÖÞŔŠŢÛŴÝŽàƀçðéĝĥîĵķļñöþŕšţûŵýž";
static_assert(plainLetters.size() == dressedLetters.size());

QChar dressed(QChar letter)
{
    const auto at = plainLetters.find(letter.unicode());
    return at == std::u16string_view::npos ? letter : QChar(dressedLetters[at]);
}

constexpr qsizetype longestTail = 6; // longer words than that would not be fair to a wrapping label

/// What is read by the program and not by the reader.
const QRegularExpression& keptPattern()
{
    static const QRegularExpression pattern(
        QStringLiteral("%L?\\d{1,2}|%L?n|&[A-Za-z]+;|&.|<[^<>]*>|\\*\\*|\\n"));
    return pattern;
}
}

QString pseudoText(const QString& source)
{
    if (source.trimmed().isEmpty())
        return source;
    QString text;
    qsizetype letters = 0;
    qsizetype done = 0;
    const auto dressUpTo = [&](qsizetype end) {
        for (; done < end; ++done) {
            text += dressed(source.at(done));
            ++letters;
        }
    };
    for (auto found = keptPattern().globalMatch(source); found.hasNext();) {
        const auto kept = found.next();
        dressUpTo(kept.capturedStart());
        text += kept.capturedView();
        done = kept.capturedEnd();
    }
    dressUpTo(source.size());
    const auto extra = std::max<qsizetype>(1, letters * 4 / 10 - 3); // the brackets and the blank count
    for (qsizetype i = 0; i < extra; ++i) {
        if (i % longestTail == 0)
            text += u' ';
        text += u'~';
    }
    return u'[' + text + u']';
}

PseudoTranslator::PseudoTranslator(Direction direction, QObject* parent)
    : QTranslator(parent)
    , m_direction(direction)
{
}

QString PseudoTranslator::translate(
    const char* context, const char* source, const char* /*disambiguation*/, int /*n*/) const
{
    // Qt asks for the direction of the layout as if it were a text.
    if (std::string_view(source) == "QT_LAYOUT_DIRECTION")
        return m_direction == Direction::RightToLeft ? QStringLiteral("RTL") : QStringLiteral("LTR");
    if (std::string_view(context) == "QShortcut") // names of keys, glued together by Qt
        return QString::fromUtf8(source);
    return pseudoText(QString::fromUtf8(source));
}

}
