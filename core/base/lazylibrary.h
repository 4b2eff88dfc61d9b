// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"

#include <utility>

namespace cradlepost {

/**
 * A library of the system that is loaded where it is first needed. What a program is linked to is loaded, with all that
 * it needs itself, before its first line runs; a station on a file needs no client of a database server for that.
 * Stays loaded.
 */
class LazyLibrary
{
public:
    /** lib`name`.so.`version`; `package` is the Debian package that has it. */
    LazyLibrary(const char* name, int version, const char* package);

    /** Fills `function`; nothing happens once something was not found. */
    template <class F> void find(F*& function, const char* name)
    {
        if (m_state)
            function = reinterpret_cast<F*>(functionOf(name));
    }
    /** What could not be loaded or found, and the package to install. */
    [[nodiscard]] const Result<void>& state() const { return m_state; }

private:
    using Function = void (*)();
    Function functionOf(const char* name);
    void fail(const std::string& what);

    const char* m_name;
    int m_version;
    const char* m_package;
    Result<void> m_state;
};

/** The functions of a library, of which `find` fills each; loaded the first time. */
template <class Functions>
Result<const Functions*> functionsOf(
    const char* name, int version, const char* package, void (*find)(LazyLibrary&, Functions&))
{
    static const auto loaded = [&] {
        LazyLibrary library(name, version, package);
        Functions functions;
        find(library, functions);
        return std::pair(functions, library.state());
    }();
    if (!loaded.second)
        return tl::unexpected(loaded.second.error());
    return &loaded.first;
}

}
