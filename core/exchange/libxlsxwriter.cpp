// SPDX-License-Identifier: MIT
#include "core/exchange/libxlsxwriter.h"

#include "core/base/lazylibrary.h"

namespace cradlepost {

Result<const Libxlsxwriter*> loadLibxlsxwriter()
{
    return functionsOf<Libxlsxwriter>("xlsxwriter", 4, "libxlsxwriter4", [](LazyLibrary& library, Libxlsxwriter& functions) {
#define CRADLEPOST_FUNCTION(name) library.find(functions.name, #name);
        CRADLEPOST_LIBXLSXWRITER(CRADLEPOST_FUNCTION)
#undef CRADLEPOST_FUNCTION
    });
}

}
