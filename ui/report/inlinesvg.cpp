// SPDX-License-Identifier: MIT
#include "ui/report/inlinesvg.h"

#include "ui/report/htmlwords.h"
#include "ui/report/paper.h"

#include <QPainter>
#include <QRegularExpression>

namespace cradlepost {

namespace {

/// What is inside the <svg> element.
QString drawn(const Output& output, const ChartFigure& figure, QSize size, const Theme& theme,
    Qt::LayoutDirection direction)
{
    const auto paint
        = [&](QPainter& painter) { paintChart(painter, QRectF({}, size), figure, theme, direction); };
    const QString text = QString::fromUtf8(output.svg({.size = size, .title = {}, .description = {}}, paint));
    const qsizetype from = text.indexOf(u'>', text.indexOf(QLatin1String("<svg"))) + 1;
    QString inside = text.mid(from, text.lastIndexOf(QLatin1String("</svg>")) - from);
    static const QRegularExpression notes(QStringLiteral("<(title|desc)>.*?</\\1>|<defs>\\s*</defs>"),
        QRegularExpression::DotMatchesEverythingOption);
    return inside.remove(notes);
}

Theme darkTheme()
{
    Theme theme = paperTheme();
    theme.scheme = Scheme::Dark;
    theme.roles = darkRoles();
    return theme;
}

/// A colour or how much of it covers: all that differs between the schemes.
const QRegularExpression& paintPattern()
{
    static const QRegularExpression pattern(QStringLiteral("#[0-9a-fA-F]{6}\\b|(?<=-opacity=\")[0-9.]+"));
    return pattern;
}

struct Paints
{
    QStringList between; ///< the text around the paints, one more than paints
    QStringList paints;
};

Paints paintsOf(const QString& text)
{
    Paints found;
    qsizetype at = 0;
    for (auto it = paintPattern().globalMatch(text); it.hasNext();) {
        const auto match = it.next();
        found.between.append(text.mid(at, match.capturedStart() - at));
        found.paints.append(match.captured());
        at = match.capturedEnd();
    }
    found.between.append(text.mid(at));
    return found;
}

}

QString InlineSvg::of(
    const ChartFigure& figure, int width, const QString& name, Qt::LayoutDirection direction)
{
    const Theme theme = paperTheme();
    const QSize size(width, chartHeight(figure, width, theme, direction));
    const Paints light = paintsOf(drawn(m_output, figure, size, theme, direction));
    const Paints dark = paintsOf(drawn(m_output, figure, size, darkTheme(), direction));
    const bool isSameDrawing = light.between == dark.between;
    // Positions are from the left, also in a mirrored page.
    QString out
        = QStringLiteral("<svg viewBox=\"0 0 %1 %2\" direction=\"ltr\" role=\"img\" aria-label=\"%3\"%4>")
              .arg(size.width())
              .arg(size.height())
              .arg(htmlAttribute(name), isSameDrawing ? QString() : QStringLiteral(" class=\"light\""));
    for (qsizetype i = 0; i < light.paints.size(); ++i) {
        out += light.between.at(i);
        const QString& shade = light.paints.at(i);
        if (!isSameDrawing || shade == dark.paints.at(i)) {
            out += shade;
            continue;
        }
        const auto number = static_cast<int>(m_colours.size()) + 1;
        const auto known = m_colours.emplace(std::pair(shade, dark.paints.at(i)), number).first;
        out += QStringLiteral("var(--c%1)").arg(known->second);
    }
    return out + light.between.last() + QStringLiteral("</svg>");
}

QString InlineSvg::variables(bool dark) const
{
    QStringList out;
    for (const auto& [shades, number] : m_colours)
        out.append(QStringLiteral("--c%1: %2;").arg(number).arg(dark ? shades.second : shades.first));
    return out.join(u' ');
}

QString InlineSvg::lightVariables() const { return variables(false); }

QString InlineSvg::darkVariables() const { return variables(true); }

}
