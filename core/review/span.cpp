// SPDX-License-Identifier: MIT
#include "core/review/span.h"

#include <algorithm>

namespace cradlepost {

using namespace std::chrono;

namespace {

bool isAmong(const std::vector<std::string>& chosen, const std::string& one)
{
    return chosen.empty() || std::find(chosen.begin(), chosen.end(), one) != chosen.end();
}

}

ReviewSpan ReviewSpan::ofMonth(year_month month)
{
    return {.from = month / 1, .to = (month + months(1)) / 1};
}

Date mondayOf(Date day)
{
    const sys_days at(day);
    return at - days(weekday(at).iso_encoding() - 1);
}

Date lookBack(const ReviewSpan& span) { return addDays(mondayOf(span.from), -7 * weeksBefore); }

bool ReviewFilter::takesShift(const std::string& code) const { return isAmong(shifts, code); }

bool ReviewFilter::takesItem(const std::string& section, const std::string& item) const
{
    return isAmong(sections, section) && isAmong(items, item);
}

}
