// SPDX-License-Identifier: MIT
#include "ui/pages/panelfields.h"

#include "tests/support/qstringprint.h"
#include "tests/ui/window/wardwindow.h"

#include <QComboBox>
#include <QImage>
#include <QLineEdit>

using namespace cradlepost;
using namespace cradlepost::test;

namespace {

/** Columns left and right of the ink of a widget. */
std::pair<int, int> marginsOf(QWidget& widget)
{
    const QImage image = widget.grab().toImage();
    int left = image.width();
    int right = image.width();
    for (int x = 0; x < image.width(); ++x) {
        for (int y = 0; y < image.height(); ++y) {
            if (image.pixel(x, y) == image.pixel(0, 0))
                continue;
            left = std::min(left, x);
            right = image.width() - 1 - x;
        }
    }
    return {left, right};
}

/** The labels that stand over a field which is seen, by the name that they share. */
std::vector<WrapLabel*> labelsOfFields(const WardWindow& ward)
{
    std::vector<WrapLabel*> labels;
    for (WrapLabel* label : ward.window->findChildren<WrapLabel*>()) {
        const auto fields
            = label->parentWidget()->findChildren<QWidget*>(QString(), Qt::FindDirectChildrenOnly);
        const bool names = std::any_of(fields.begin(), fields.end(), [&](const QWidget* field) {
            return field != label && field->isVisible() && field->accessibleName() == label->text();
        });
        if (label->isVisible() && !label->text().isEmpty() && names)
            labels.push_back(label);
    }
    return labels;
}

}

TEST_CASE("labels of forms stand at the side where reading begins, whatever letters they are written in")
{
    for (const Qt::LayoutDirection direction : {Qt::LeftToRight, Qt::RightToLeft}) {
        WardWindow ward(afternoon,
            {{.device = {.id = "scale-1", .kind = EquipmentKind::Scale, .label = "Scale"}},
                {.device = {.id = "fridge-1", .kind = EquipmentKind::Fridge, .label = "Fridge"}}});
        must(ward.store->describeStockItem("sorrel-hill",
            {.id = "towels", .name = "Towels", .at = ward.clock.now(), .levels = {.par = 20, .minimum = 8}},
            "A. T."));
        ward.walk({"mask-size-0"});
        ward.open();
        ward.window->setLayoutDirection(direction);
        std::size_t seen = 0;
        for (const auto& [place, part] : {std::pair(Qt::Key_4, Qt::Key_1), std::pair(Qt::Key_4, Qt::Key_2),
                 std::pair(Qt::Key_4, Qt::Key_3), std::pair(Qt::Key_3, Qt::Key_unknown),
                 std::pair(Qt::Key_7, Qt::Key_unknown)}) {
            ward.press(place, Qt::AltModifier);
            if (part != Qt::Key_unknown)
                ward.press(part, Qt::ControlModifier);
            const auto labels = labelsOfFields(ward);
            CHECK(labels.size() >= 4);
            seen += labels.size();
            for (WrapLabel* label : labels) {
                CAPTURE(label->text());
                const auto [left, right] = marginsOf(*label);
                CHECK(label->width() > 200); // as wide as its field, so that its side can be told
                CHECK((direction == Qt::LeftToRight ? left < 6 && right > left : right < 6 && left > right));
            }
        }
        CHECK(seen >= 25);
    }
}
