// SPDX-License-Identifier: MIT
#include "ui/report/textstrips.h"

#include "ui/report/paper.h"
#include "ui/report/textpieces.h"

#include <QPainter>

namespace cradlepost {

namespace {
/// Wider lines are hard to read back to their beginning.
int measureOf(const Paper& paper, const TextClothes& clothes)
{
    if (clothes.wide)
        return paper.body().width();
    const int letters = 46 * textPixels(clothes.role, 1.0);
    return std::min(paper.body().width(), letters);
}
}

void appendText(
    std::vector<Strip>& strips, const Paper& paper, const QString& text, const TextClothes& clothes)
{
    if (text.isEmpty())
        return;
    const int width = measureOf(paper, clothes);
    const auto heightOf
        = [&](const QString& piece) { return paper.ink(piece, clothes.role, clothes.weight).height(width); };
    const auto fits = [&](const QString& piece) { return heightOf(piece) <= paper.body().height() / 2; };
    int gap = clothes.gap;
    for (const QString& piece : piecesOf(text, fits)) {
        strips.push_back({.height = heightOf(piece),
            .gap = gap,
            .keepsNext = clothes.keepsNext,
            .paint = [&paper, piece, clothes, width](QPainter& painter, const QRect& box) {
                painter.setPen(paper.theme().roles.*clothes.colour);
                const QRect line(box.left(), box.top(), width, box.height());
                paper.ink(piece, clothes.role, clothes.weight).draw(painter, paper.seen(line, box));
            }});
        gap = 0;
    }
}

}
