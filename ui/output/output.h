// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"

#include <functional>
#include <QByteArray>
#include <QSize>
#include <QString>

class QPagedPaintDevice;
class QPainter;
class QWidget;

namespace cradlepost {

/// What an SVG file says besides its drawing. Texts may be empty.
struct SvgFrame
{
    QSize size; ///< of the drawing, in units of 1/96 inch
    QString title;
    QString description;
};

enum class Printing
{
    Printed,
    Cancelled, ///< by who was asked for a printer
    Refused ///< the printer took no pages
};

/// Where drawings go by libraries of Qt's that bring much and are seldom wanted: SVG and printers. They are in a
/// library of our own beside the program, loaded when the first drawing goes there, for no window needs them to open.
class Output
{
public:
    virtual ~Output() = default;

    /// A whole SVG file.
    virtual QByteArray svg(const SvgFrame& frame, const std::function<void(QPainter&)>& draw) const = 0;

    /// Asks for a printer over `parent`, and has `print` fill its pages; false from it is a refusal.
    virtual Printing print(QWidget* parent, const std::function<bool(QPagedPaintDevice&)>& print) const = 0;
};

/// The library beside the program, or in another `folder`. Errors: Io with what is missing.
Result<const Output*> output();
Result<const Output*> outputIn(const QString& folder);

}
