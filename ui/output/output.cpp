// SPDX-License-Identifier: MIT
#include "ui/output/output.h"

#include "core/base/refusal.h"

#include <QCoreApplication>
#include <QLibrary>

namespace cradlepost {

namespace {
constexpr char fileName[] = "cradlepost_output.so";
}

Result<const Output*> outputIn(const QString& folder)
{
    QLibrary library(folder + u'/' + QLatin1String(fileName));
    using Make = const Output* (*)();
    const auto make = reinterpret_cast<Make>(library.resolve("cradlepostOutput"));
    if (make == nullptr)
        return tl::unexpected(refused(refusal::partMissing, {fileName},
            "cannot load what draws for SVG and printers: " + library.errorString().toStdString(),
            "Build or install the program again: this file belongs beside it.", ErrorCode::Io));
    return make();
}

Result<const Output*> output()
{
    static const auto loaded = outputIn(QCoreApplication::applicationDirPath());
    return loaded;
}

}
