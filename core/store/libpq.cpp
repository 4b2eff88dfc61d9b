// SPDX-License-Identifier: MIT
#include "core/store/libpq.h"

#include "core/base/lazylibrary.h"
#include "core/store/failure.h"

namespace cradlepost {

Result<const Libpq*> loadLibpq()
{
    return functionsOf<Libpq>("pq", 5, "libpq5", [](LazyLibrary& library, Libpq& functions) {
#define CRADLEPOST_FUNCTION(name) library.find(functions.name, #name);
        CRADLEPOST_LIBPQ(CRADLEPOST_FUNCTION)
#undef CRADLEPOST_FUNCTION
    });
}

const Libpq& libpq() { return *need(loadLibpq()); }

}
