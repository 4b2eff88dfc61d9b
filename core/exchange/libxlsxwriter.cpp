// SPDX-License-Identifier: MIT
#include "core/exchange/libxlsxwriter.h"

#include "core/base/lazylibrary.h"

namespace cradlepost {

Result<const Libxlsxwriter*> loadLibxlsxwriter()
{
    static const auto loaded = [] {
        LazyLibrary library("xlsxwriter", 4, "libxlsxwriter4");
        Libxlsxwriter functions;
#define CRADLEPOST_FUNCTION(name) library.find(functions.name, #name);
        CRADLEPOST_LIBXLSXWRITER(CRADLEPOST_FUNCTION)
#undef CRADLEPOST_FUNCTION
        return std::pair(functions, library.state());
    }();
    if (!loaded.second)
        return tl::unexpected(loaded.second.error());
    return &loaded.first;
}

}
