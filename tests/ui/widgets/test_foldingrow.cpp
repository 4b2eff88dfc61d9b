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

TEST_CASE("a row in a row stays on one line as long as the outer one can fold instead")
{
    FoldingRow outer;
    outer.setSpacing(10);
    std::vector<FoldingRow*> halves;
    for (int half = 0; half < 2; ++half) {
        auto* inner = new FoldingRow;
        inner->setSpacing(10);
        for (int i = 0; i < 2; ++i) {
            auto* child = new QWidget;
            child->setMinimumSize(100, 30);
            inner->addWidget(child);
        }
        outer.addWidget(inner);
        halves.push_back(inner);
    }
    outer.show();
    outer.resize(500, 100);
    QCoreApplication::processEvents();
    CHECK_FALSE(outer.isFolded());
    outer.resize(300, 200);
    QCoreApplication::processEvents();
    CHECK(outer.isFolded());
    for (const FoldingRow* half : halves)
        CHECK_FALSE(half->isFolded());
    outer.resize(150, 300);
    QCoreApplication::processEvents();
    for (const FoldingRow* half : halves)
        CHECK(half->isFolded());
}
