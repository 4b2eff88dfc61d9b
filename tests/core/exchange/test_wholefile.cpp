// SPDX-License-Identifier: MIT
#include "core/exchange/wholefile.h"

#include "tests/support/builders.h"
#include "tests/support/readonlyplace.h"

#include <doctest/doctest.h>
#include <fstream>

using namespace cradlepost;
using namespace cradlepost::test;

namespace {
std::string read(const std::string& path)
{
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

long filesIn(const TempDir& folder)
{
    return std::distance(std::filesystem::directory_iterator(folder.path()), {});
}
}

TEST_CASE("A file is written and replaced whole, with no draft left")
{
    const TempDir folder;
    REQUIRE(writeWholeFile(folder.file("a"), "first"));
    REQUIRE(writeWholeFile(folder.file("a"), "second"));
    CHECK(read(folder.file("a")) == "second");
    CHECK(filesIn(folder) == 1);
}

TEST_CASE("A draft that is not published goes away and the old file stays")
{
    const TempDir folder;
    REQUIRE(writeWholeFile(folder.file("a"), "old"));
    {
        const auto draft = WholeFile::draftOf(folder.file("a"));
        REQUIRE(draft);
        CHECK(filesIn(folder) == 2);
    }
    CHECK(read(folder.file("a")) == "old");
    CHECK(filesIn(folder) == 1);
}

TEST_CASE("Two drafts of the same file do not meet")
{
    const TempDir folder;
    const auto one = WholeFile::draftOf(folder.file("a"));
    const auto other = WholeFile::draftOf(folder.file("a"));
    REQUIRE(one);
    REQUIRE(other);
    CHECK(one->draft() != other->draft());
}

TEST_CASE("A full disk is said and leaves the old file as it was")
{
    const TempDir folder;
    const SmallDisk disk(folder.path().string(), 64);
    if (!disk.isThere())
        return;
    REQUIRE(writeWholeFile(folder.file("a"), "old"));
    const auto written = writeWholeFile(folder.file("a"), std::string(100'000, 'x'));
    REQUIRE(!written);
    CHECK(written.error().code == ErrorCode::DiskFull);
    CHECK(read(folder.file("a")) == "old");
    CHECK(filesIn(folder) == 1);
}

TEST_CASE("A folder that cannot be written or is not there is said")
{
    const TempDir folder;
    const auto missing = writeWholeFile(folder.file("none/a"), "x");
    REQUIRE(!missing);
    CHECK(missing.error().code == ErrorCode::NotFound);
    const auto isFolder = writeWholeFile(folder.path().string(), "x");
    REQUIRE(!isFolder);
    CHECK(isFolder.error().code == ErrorCode::InvalidArgument);
    const ClosedFolder closed(folder.path().string());
    if (!closed.isClosed())
        return;
    const auto written = writeWholeFile(folder.file("a"), "x");
    REQUIRE(!written);
    CHECK(written.error().code == ErrorCode::ReadOnly);
}
