// SPDX-License-Identifier: MIT
#include "ui/pages/round/cards/itemtitle.h"

#include "ui/theme/theme.h"
#include "ui/widgets/inktext.h"

#include <cmath>
#include <QPainter>
#include <QStyle>
#include <QTextLayout>

namespace cradlepost {

namespace {
constexpr int unbounded = 100000;

int heightOf(const QTextLayout& layout)
{
    return static_cast<int>(std::ceil(layout.boundingRect().height()));
}
}

ItemTitle::ItemTitle(const QString& label, QWidget* parent)
    : QWidget(parent)
    , m_label(label)
{
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    change();
}

void ItemTitle::setAside(const QString& aside)
{
    m_aside = aside;
    change();
}

void ItemTitle::setFinding(const QString& finding)
{
    if (m_finding == finding)
        return;
    m_finding = finding;
    change();
}

void ItemTitle::change()
{
    updateGeometry();
    update();
}

std::unique_ptr<QTextLayout> ItemTitle::layOut(int width) const
{
    const Theme& theme = themeOf(*this);
    // Lines break between the parts at the wide blank, and words within one part stay on their base line.
    const QString gap = QStringLiteral("\u2002");
    QString text = m_label;
    QList<QTextLayout::FormatRange> ranges;
    const auto append = [&](const QString& part, const QColor& colour) {
        if (part.isEmpty())
            return;
        text += gap;
        QTextLayout::FormatRange range{
            .start = static_cast<int>(text.size()), .length = static_cast<int>(part.size()), .format = {}};
        range.format.setFont(theme.font(TextRole::Small));
        range.format.setForeground(colour);
        ranges.append(range);
        text += part;
    };
    append(m_aside, theme.roles.inkHint);
    append(m_finding, theme.roles.warning);
    auto layout = std::make_unique<QTextLayout>(text, theme.font(TextRole::Lead));
    QTextOption option(QStyle::visualAlignment(layoutDirection(), Qt::AlignLeft) | Qt::AlignAbsolute);
    option.setTextDirection(textDirection(text, layoutDirection()));
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    layout->setTextOption(option);
    layout->setFormats(ranges);
    double top = 0.0;
    layout->beginLayout();
    for (QTextLine line = layout->createLine(); line.isValid(); line = layout->createLine()) {
        line.setLineWidth(std::max(1, width));
        line.setPosition({0.0, top});
        top += line.height();
    }
    layout->endLayout();
    return layout;
}

QSize ItemTitle::sizeHint() const
{
    const auto layout = layOut(unbounded);
    return {static_cast<int>(std::ceil(layout->maximumWidth())) + 2, heightOf(*layout)};
}

QSize ItemTitle::minimumSizeHint() const
{
    const QFont font = themeOf(*this).font(TextRole::Lead);
    const int word = InkText(m_label, font, layoutDirection()).widestWord();
    return {std::max(word, themeOf(*this).px(180)), heightOf(*layOut(unbounded))};
}

int ItemTitle::heightForWidth(int width) const { return heightOf(*layOut(width)); }

void ItemTitle::paintEvent(QPaintEvent* /*event*/)
{
    QPainter painter(this);
    painter.setPen(themeOf(*this).roles.ink);
    const auto layout = layOut(width());
    layout->draw(&painter, QPointF(0.0, std::max(0, (height() - heightOf(*layout)) / 2)));
}

}
