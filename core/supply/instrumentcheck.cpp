// SPDX-License-Identifier: MIT
#include "core/supply/instrumentcheck.h"

#include <cstdlib>

namespace cradlepost {

namespace {
InstrumentCheck judge(Decimal read, Decimal known, Decimal limit)
{
    const Decimal difference{read.thousandths - known.thousandths};
    const bool good = std::abs(difference.thousandths) <= limit.thousandths;
    return {.verdict = good ? InstrumentVerdict::Good : InstrumentVerdict::Off,
        .difference = difference,
        .limit = limit};
}

Decimal whole(int n) { return {std::int64_t{n} * 1000}; }
}

InstrumentCheck judgeScale(const ScaleChecked& check, int division)
{
    return judge(whole(check.read), whole(check.known), whole(division));
}

InstrumentCheck judgeThermometer(const ThermometerChecked& check, Decimal limit)
{
    return judge(check.read, check.reference, limit);
}

const char* codeName(InstrumentVerdict verdict)
{
    return verdict == InstrumentVerdict::Good ? "good" : "off";
}

}
