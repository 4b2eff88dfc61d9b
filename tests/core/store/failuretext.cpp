// SPDX-License-Identifier: MIT
// So that a test that throws a Failure says which.
#include "core/store/failure.h"

#include <doctest/doctest.h>

REGISTER_EXCEPTION_TRANSLATOR(const cradlepost::Failure& failure) { return failure.error.message.c_str(); }
