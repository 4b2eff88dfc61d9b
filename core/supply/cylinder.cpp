// SPDX-License-Identifier: MIT
#include "core/supply/cylinder.h"

#include "core/supply/codes.h"

#include <cmath>

namespace cradlepost {

namespace {

constexpr CodeTable<PressureUnit, 5> unitNames{{
    {PressureUnit::Psi, "psi"},
    {PressureUnit::Bar, "bar"},
    {PressureUnit::Kilopascal, "kPa"},
    {PressureUnit::Megapascal, "MPa"},
    {PressureUnit::KilogramForce, "kgf/cm2"},
}};

double pascals(PressureUnit unit)
{
    switch (unit) {
    case PressureUnit::Psi:
        return 6894.757293168; // 0.45359237 kg x 9.80665 m/s2 over (0.0254 m)^2
    case PressureUnit::Bar:
        return 1e5;
    case PressureUnit::Kilopascal:
        return 1e3;
    case PressureUnit::Megapascal:
        return 1e6;
    case PressureUnit::KilogramForce:
        break;
    }
    return 98066.5;
}

constexpr std::chrono::minutes longest{std::chrono::hours(24 * 366)};
constexpr std::int64_t largestFlow = 1'000'000; // thousandths of L/min
}

const char* codeName(PressureUnit unit) { return codeIn(unitNames, unit); }
std::optional<PressureUnit> pressureUnitFromCode(std::string_view code)
{
    return fromCodeIn(unitNames, code);
}

Decimal convertPressure(Decimal value, PressureUnit from, PressureUnit to)
{
    if (from == to)
        return value;
    const double thousandths = static_cast<double>(value.thousandths) * pascals(from) / pascals(to);
    return {std::llround(thousandths)};
}

Result<Decimal> lowestGauge(const CylinderSize& size, std::chrono::minutes minutes, Decimal flow)
{
    if (minutes < std::chrono::minutes(0) || minutes > longest)
        return fail(ErrorCode::InvalidArgument, "cylinder: minutes are 0 to a year");
    if (flow.thousandths <= 0 || flow.thousandths > largestFlow || size.litresPerUnit.thousandths <= 0)
        return fail(ErrorCode::InvalidArgument, "cylinder: the flow is above 0 and at most 1000 L/min");
    const std::int64_t gas = flow.thousandths * minutes.count(); // thousandths of a litre
    const std::int64_t factor = size.litresPerUnit.thousandths;
    return Decimal{size.residual.thousandths + (gas * 1000 + factor - 1) / factor};
}

Decimal upToMark(Decimal gauge, Decimal division)
{
    const std::int64_t step = division.thousandths;
    if (step <= 0 || gauge.thousandths <= 0)
        return gauge;
    return {(gauge.thousandths + step - 1) / step * step};
}

}
