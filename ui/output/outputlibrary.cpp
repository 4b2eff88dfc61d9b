// SPDX-License-Identifier: MIT
// The library itself: the one file that includes Qt's SVG and printing.
#include "ui/output/output.h"

#include <QBuffer>
#include <QPainter>
#include <QPrintDialog>
#include <QPrinter>
#include <QSvgGenerator>

namespace cradlepost {

namespace {

class QtOutput : public Output
{
public:
    QByteArray svg(const SvgFrame& frame, const std::function<void(QPainter&)>& draw) const override
    {
        QByteArray bytes;
        QBuffer buffer(&bytes);
        QSvgGenerator generator;
        generator.setOutputDevice(&buffer);
        generator.setSize(frame.size);
        generator.setViewBox(QRect({}, frame.size));
        generator.setResolution(96);
        generator.setTitle(frame.title.toHtmlEscaped()); // Qt writes both as they are
        generator.setDescription(frame.description.toHtmlEscaped());
        QPainter painter(&generator);
        draw(painter);
        painter.end();
        return bytes;
    }

    Printing print(QWidget* parent, const std::function<bool(QPagedPaintDevice&)>& print) const override
    {
        QPrinter printer;
        QPrintDialog dialog(&printer, parent);
        if (dialog.exec() != QDialog::Accepted)
            return Printing::Cancelled;
        return print(printer) ? Printing::Printed : Printing::Refused;
    }
};

}

}

extern "C" Q_DECL_EXPORT const cradlepost::Output* cradlepostOutput()
{
    static const cradlepost::QtOutput output;
    return &output;
}
