// SPDX-License-Identifier: MIT
#include "ui/text/refusaltext.h"

#include "core/base/refusal.h"
#include "tests/support/qstringprint.h"
#include "ui/text/errortext.h"
#include "ui/text/language.h"

#include <doctest/doctest.h>
#include <QRegularExpression>

using namespace cradlepost;

namespace {

Error refusedFor(const char* word) { return refused(word, {"7", "8", "9"}, "an English message", "a hint"); }

}

TEST_CASE("every word of core for what is not taken is said, with its values and what to do")
{
    for (const char* word : refusal::all) {
        CAPTURE(word);
        const auto text = RefusalText::of(refusedFor(word));
        REQUIRE(text.has_value());
        CHECK(text->what.endsWith(QLatin1Char('.')));
        CHECK(text->advice.endsWith(QLatin1Char('.')));
        const QString whole = text->what + text->advice;
        CHECK_FALSE(whole.contains(QRegularExpression(QStringLiteral("%\\d"))));
    }
}

TEST_CASE("in Hindi the whole reason is Hindi; only units and examples keep their letters")
{
    const Language hindi(QStringLiteral("hi"));
    static const QRegularExpression example(QStringLiteral("°C|Asia/Kolkata|\\bday\\b|\\bnight\\b"));
    for (const char* word : refusal::all) {
        CAPTURE(word);
        QString told = ErrorText::told(refusedFor(word));
        CHECK(told.contains(QRegularExpression(QStringLiteral("\\p{Devanagari}"))));
        CHECK_FALSE(told.remove(example).contains(QRegularExpression(QStringLiteral("[A-Za-z]"))));
    }
}

TEST_CASE("the values stand where the sentence names them")
{
    CHECK(ErrorText::told(refused(refusal::bookHolds, {"9", "50"}, "", ""))
        == QStringLiteral("The book holds 9 of these 50 pieces. Count the shelf and enter the count first."));
    CHECK(ErrorText::sentence(refused(refusal::fridgeRange, {"-40", "60"}, ""))
        == QStringLiteral("No fridge shows that: a reading is -40 to 60 °C."));
}

TEST_CASE("an error without a word is told by its code, with its own hint")
{
    const Error error{
        .code = ErrorCode::NotFound, .message = "unit 'x' is not known", .hint = "Describe it."};
    CHECK_FALSE(RefusalText::of(error).has_value());
    CHECK(ErrorText::told(error) == QStringLiteral("It is not there. Describe it."));
    CHECK(ErrorText::told({.code = ErrorCode::NotFound, .message = "x", .hint = {}})
        == QStringLiteral("It is not there."));
}
