// SPDX-License-Identifier: MIT
#include "ui/widgets/latecombobox.h"

#include <doctest/doctest.h>
#include <QAbstractItemView>
#include <QTest>

using namespace cradlepost;

namespace {

bool hasList(const QComboBox& box) { return !box.findChildren<QAbstractItemView*>().isEmpty(); }

QFont sized(int pixels)
{
    QFont font;
    font.setPixelSize(pixels);
    return font;
}

}

TEST_CASE("a combo box makes its list when it is opened, in the font it has then")
{
    LateComboBox box;
    box.addItems({QStringLiteral("Sorrel Hill"), QStringLiteral("Fern Dale")});
    box.setFont(sized(21));
    CHECK_FALSE(hasList(box));
    box.show();
    box.showPopup();
    CHECK(hasList(box));
    CHECK(box.view()->font().pixelSize() == 21);
    box.setFont(sized(25));
    CHECK(box.view()->font().pixelSize() == 25);
    box.hidePopup();
}

TEST_CASE("a combo box that was not opened grows and shrinks with its font")
{
    LateComboBox box;
    box.addItem(QStringLiteral("Sorrel Hill"));
    box.setFont(sized(12));
    const int small = box.sizeHint().width();
    box.setFont(sized(30));
    CHECK(box.sizeHint().width() > small);
    box.setFont(sized(12));
    CHECK(box.sizeHint().width() == small);
}
