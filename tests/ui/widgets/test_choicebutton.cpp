// SPDX-License-Identifier: MIT
#include "tests/support/qstringprint.h"
#include "tests/ui/widgets/scenery.h"
#include "ui/widgets/choicebutton.h"

#include <doctest/doctest.h>
#include <QSignalSpy>

using namespace cradlepost;

TEST_CASE("the chosen answer is filled with ink, also while it has the ring")
{
    ChoiceButton button(QStringLiteral("Met"), QStringLiteral("Enter"));
    REQUIRE(showWithFocus(button, button.sizeHint()));
    CHECK(countOf(button.grab().toImage(), lightRoles().chosen) < 300); // the letters only
    QTest::keyClick(&button, Qt::Key_Space);
    CHECK(button.isChecked());
    const QImage image = button.grab().toImage();
    CHECK(countOf(image, lightRoles().chosen) > 1000);
    CHECK(countOf(image, lightRoles().accent) > 100);
}

TEST_CASE("the key is shown behind the text and told to screen readers")
{
    const ChoiceButton bare(QStringLiteral("Does not apply"), {});
    ChoiceButton button(QStringLiteral("Does not apply"), QStringLiteral("/"));
    CHECK(button.sizeHint().width() > bare.sizeHint().width());
    CHECK(button.accessibleDescription() == QStringLiteral("/"));
    button.setKeyHint(QStringLiteral("Enter"));
    CHECK(button.accessibleDescription() == QStringLiteral("Enter"));
}

TEST_CASE("an answer is large enough to hit and grows with the text")
{
    const QSize plain = ChoiceButton(QStringLiteral("Gap"), QStringLiteral("-")).sizeHint();
    CHECK(plain.height() >= 24); // WCAG 2.2, 2.5.8
    CHECK(plain.width() >= 24);
    const Scenery twice(2.0);
    CHECK(ChoiceButton(QStringLiteral("Gap"), QStringLiteral("-")).sizeHint().height() > plain.height() + 15);
}
