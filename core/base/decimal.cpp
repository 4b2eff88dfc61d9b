// SPDX-License-Identifier: MIT
#include "core/base/decimal.h"

#include <cctype>

namespace cradlepost {

namespace {
constexpr int maxWholeDigits = 12;
constexpr int maxDecimals = 3;

tl::unexpected<Error> notANumber(std::string_view text)
{
    return fail(ErrorCode::InvalidArgument, "'" + std::string(text) + "' is not a number with at most three decimals",
        "type digits and one point, for example 26.4");
}
}

std::string Decimal::toString() const
{
    const bool negative = thousandths < 0;
    const std::uint64_t size = negative ? ~static_cast<std::uint64_t>(thousandths) + 1U
                                        : static_cast<std::uint64_t>(thousandths);
    std::string text = (negative ? "-" : "") + std::to_string(size / 1000);
    const std::uint64_t rest = size % 1000;
    if (rest == 0)
        return text;
    std::string decimals = std::to_string(1000 + rest).substr(1);
    decimals.erase(decimals.find_last_not_of('0') + 1);
    return text + "." + decimals;
}

Result<Decimal> Decimal::parse(std::string_view text)
{
    std::string_view rest = text;
    const bool negative = !rest.empty() && rest.front() == '-';
    if (negative)
        rest.remove_prefix(1);
    std::int64_t value = 0;
    int whole = 0;
    int decimals = -1; // -1 until the point was seen
    for (const char c : rest) {
        if ((c == '.' || c == ',') && decimals < 0 && whole > 0) {
            decimals = 0;
            continue;
        }
        if (std::isdigit(static_cast<unsigned char>(c)) == 0)
            return notANumber(text);
        if (decimals >= 0 ? ++decimals > maxDecimals : ++whole > maxWholeDigits)
            return notANumber(text);
        value = value * 10 + (c - '0');
    }
    if (whole == 0 || decimals == 0)
        return notANumber(text);
    for (int i = decimals < 0 ? 0 : decimals; i < maxDecimals; ++i)
        value *= 10;
    return Decimal{negative ? -value : value};
}

}
