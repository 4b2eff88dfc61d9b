// SPDX-License-Identifier: MIT
#include "tests/ui/widgets/scenery.h"
#include "ui/widgets/foldingrow.h"
#include "ui/widgets/wraplabel.h"

#include <doctest/doctest.h>

using namespace cradlepost;

TEST_CASE("children stand side by side and fold when the width does not do")
{
    FoldingRow row;
    row.setSpacing(10);
    QWidget left;
    QWidget right;
    left.setMinimumSize(200, 40);
    right.setMinimumSize(100, 60);
    row.addWidget(&left, 1);
    row.addWidget(&right);
    row.show();
    row.resize(400, 60);
    QCoreApplication::processEvents();
    CHECK_FALSE(row.isFolded());
    CHECK(left.y() == right.y());
    row.resize(300, 200);
    QCoreApplication::processEvents();
    CHECK(row.isFolded());
    CHECK(right.y() > left.y());
    CHECK(row.minimumSizeHint().width() == 200);
    row.resize(400, 60);
    QCoreApplication::processEvents();
    CHECK_FALSE(row.isFolded());
    left.setParent(nullptr);
    right.setParent(nullptr);
}

TEST_CASE("a folded row asks for the height of all its children")
{
    FoldingRow row;
    row.setSpacing(10);
    auto* one = new QWidget;
    auto* other = new QWidget;
    one->setMinimumSize(200, 40);
    other->setMinimumSize(100, 60);
    row.addWidget(one);
    row.addWidget(other);
    CHECK(row.heightForWidth(250) >= 110);
    CHECK(row.heightForWidth(400) < 110);
}
