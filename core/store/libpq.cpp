// SPDX-License-Identifier: MIT
#include "core/store/libpq.h"

#include "core/base/lazylibrary.h"
#include "core/store/failure.h"

namespace cradlepost {

Result<const Libpq*> loadLibpq()
{
    static const auto loaded = [] {
        LazyLibrary library("pq", 5, "libpq5");
        Libpq functions;
#define CRADLEPOST_FUNCTION(name) library.find(functions.name, #name);
        CRADLEPOST_LIBPQ(CRADLEPOST_FUNCTION)
#undef CRADLEPOST_FUNCTION
        return std::pair(functions, library.state());
    }();
    if (!loaded.second)
        return tl::unexpected(loaded.second.error());
    return &loaded.first;
}

const Libpq& libpq() { return *need(loadLibpq()); }

}
