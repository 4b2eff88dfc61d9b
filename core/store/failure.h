// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"

#include <type_traits>

namespace cradlepost {

/** What this folder throws inside; the functions of Store turn it into a Result. */
struct Failure
{
    Error error;
    bool isPassing = false; ///< the whole transaction, tried again, may well succeed
    bool isAway = false; ///< the server does not answer
    bool isInDoubt = false; ///< nobody knows whether the transaction was committed
};

[[noreturn]] inline void refuse(ErrorCode code, std::string message, std::string hint = {})
{
    throw Failure{Error{.code = code, .message = std::move(message), .hint = std::move(hint)}};
}

/** The same for what a word of core/base/refusal.h says. */
[[noreturn]] inline void refuse(Error error)
{
    throw Failure{std::move(error)};
}

/** The value, or its error thrown. */
template <class T> T need(Result<T> result)
{
    if (!result)
        throw Failure{std::move(result.error())};
    if constexpr (!std::is_void_v<T>)
        return std::move(*result);
}

/** Runs `work`; what it throws comes out as the error. */
template <class F> auto attempt(F&& work) -> Result<std::invoke_result_t<F>>
{
    try {
        if constexpr (std::is_void_v<std::invoke_result_t<F>>) {
            work();
            return {};
        } else {
            return work();
        }
    } catch (Failure& failure) {
        return tl::unexpected(std::move(failure.error));
    }
}

}
