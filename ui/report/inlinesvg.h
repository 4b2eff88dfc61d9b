// SPDX-License-Identifier: MIT
#pragma once

#include "ui/charts/chartfigure.h"
#include "ui/output/output.h"

#include <map>
#include <QString>
#include <utility>

namespace cradlepost {

/// Charts as SVG inside an HTML page. Colours become CSS variables, so that the page's light and dark schemes
/// reach into the drawings.
class InlineSvg
{
public:
    explicit InlineSvg(const Output& output)
        : m_output(output)
    {
    }

    /// An <svg> element of that many units of width, named for screen readers.
    QString of(const ChartFigure& figure, int width, const QString& name, Qt::LayoutDirection direction);

    /// "--c1: #1d2733; --c2: ..." for all drawings so far.
    QString lightVariables() const;
    QString darkVariables() const;

private:
    QString variables(bool dark) const;

    const Output& m_output;
    std::map<std::pair<QString, QString>, int> m_colours; ///< light and dark, to the variable's number
};

}
