// SPDX-License-Identifier: MIT
#include "app/storeopening.h"

#include "core/store/shiftview.h"

#include <algorithm>
#include <QThread>

namespace cradlepost {

namespace {

void readAhead(const Store& store, const std::string& wanted, Instant now)
{
    const auto units = store.units();
    if (!units || units->empty())
        return;
    const bool isThere = std::ranges::any_of(*units, [&](const Unit& unit) { return unit.id == wanted; });
    // What cannot be read is told by the window, which asks again.
    (void)shiftView(store, isThere ? wanted : units->front().id, now);
}

}

StoreOpening::StoreOpening(std::string path, const Clock& clock, std::string unit)
{
    QThread::currentThread(); // the first thread that Qt sees is its main one for good
    m_store = std::async(std::launch::async, [path = std::move(path), &clock, unit = std::move(unit)] {
        auto store = Store::open(path, clock);
        if (store)
            readAhead(**store, unit, clock.now());
        return store;
    });
}

}
