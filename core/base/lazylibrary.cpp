// SPDX-License-Identifier: MIT
#include "core/base/lazylibrary.h"

#include "core/base/refusal.h"

#include <QLibrary>

namespace cradlepost {

LazyLibrary::LazyLibrary(const char* name, int version, const char* package)
    : m_name(name)
    , m_version(version)
    , m_package(package)
{
    QLibrary library(QString::fromUtf8(name), version);
    if (!library.load())
        fail(library.errorString().toStdString());
}

LazyLibrary::Function LazyLibrary::functionOf(const char* name)
{
    const Function function = QLibrary::resolve(QString::fromUtf8(m_name), m_version, name);
    if (function == nullptr)
        fail(std::string("it has no function ") + name);
    return function;
}

void LazyLibrary::fail(const std::string& what)
{
    m_state = tl::unexpected(refused(refusal::packageMissing, {m_package},
        std::string("the library ") + m_name + " of version " + std::to_string(m_version) + " cannot be used: " + what,
        std::string("Install the package ") + m_package + '.', ErrorCode::Io));
}

}
