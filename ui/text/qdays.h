// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/calendar.h"

#include <QDate>

namespace cradlepost {

inline QDate toQDate(Date date)
{
    return {static_cast<int>(date.year()), static_cast<int>(static_cast<unsigned>(date.month())),
        static_cast<int>(static_cast<unsigned>(date.day()))};
}

inline Date fromQDate(const QDate& date)
{
    return std::chrono::year(date.year()) / std::chrono::month(static_cast<unsigned>(date.month()))
        / std::chrono::day(static_cast<unsigned>(date.day()));
}

}
