// SPDX-License-Identifier: MIT
#include "core/base/lazylibrary.h"

#include <doctest/doctest.h>

namespace {

using namespace cradlepost;

TEST_CASE("a library is loaded where it is needed, and its functions can be called")
{
    LazyLibrary library("z", 1, "zlib1g");
    const char* (*version)() = nullptr;
    library.find(version, "zlibVersion");
    REQUIRE(library.state());
    CHECK(version()[0] == '1');
}

TEST_CASE("a library that is not there is named with the package to install")
{
    LazyLibrary library("no-such-library", 7, "libnosuch7");
    void (*function)() = nullptr;
    library.find(function, "anything");
    CHECK((function == nullptr));
    REQUIRE_FALSE(library.state());
    CHECK(library.state().error().message.find("no-such-library") != std::string::npos);
    CHECK(library.state().error().hint == "Install the package libnosuch7.");
}

TEST_CASE("a function that is not there is named, and nothing is looked for after it")
{
    LazyLibrary library("z", 1, "zlib1g");
    void (*missing)() = nullptr;
    const char* (*version)() = nullptr;
    library.find(missing, "no_such_function");
    library.find(version, "zlibVersion");
    CHECK((version == nullptr));
    REQUIRE_FALSE(library.state());
    CHECK(library.state().error().message.find("no_such_function") != std::string::npos);
}

}
