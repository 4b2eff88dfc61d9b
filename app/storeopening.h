// SPDX-License-Identifier: MIT
#pragma once

#include "core/store/store.h"

#include <future>

namespace cradlepost {

/**
 * Opens the store while Qt starts, in a thread that has ended when take() gives it over. What the first page
 * asks for is in memory then. To be made before the application object.
 */
class StoreOpening
{
public:
    /** `unit` is the one looked at last; empty or unknown: the first one. The clock outlives the store. */
    StoreOpening(std::string path, const Clock& clock, std::string unit);

    /** Waits. Once only. */
    Result<std::unique_ptr<Store>> take() { return m_store.get(); }

private:
    std::future<Result<std::unique_ptr<Store>>> m_store; // waits when dropped
};

}
