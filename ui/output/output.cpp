// SPDX-License-Identifier: MIT
#include "ui/output/output.h"

#include <QCoreApplication>
#include <QLibrary>

namespace cradlepost {

Result<const Output*> outputIn(const QString& folder)
{
    QLibrary library(folder + QStringLiteral("/cradlepost_output.so"));
    using Make = const Output* (*)();
    const auto make = reinterpret_cast<Make>(library.resolve("cradlepostOutput"));
    if (make == nullptr)
        return fail(ErrorCode::Io, "cannot load what draws for SVG and printers: " + library.errorString().toStdString(),
            "Build or install the program again: this file belongs beside it.");
    return make();
}

Result<const Output*> output()
{
    static const auto loaded = outputIn(QCoreApplication::applicationDirPath());
    return loaded;
}

}
