// SPDX-License-Identifier: MIT
#include "packs.h"
#include "tests/support/readonlyplace.h"

#include <csignal>
#include <filesystem>
#include <sys/resource.h>

using namespace cradlepost;
using namespace cradlepost::test;

namespace {

/** No file grows beyond so many bytes: as a full disk does to a file that is being written. */
class SmallFiles
{
public:
    explicit SmallFiles(rlim_t bytes)
        : m_handler(std::signal(SIGXFSZ, SIG_IGN))
    {
        ::getrlimit(RLIMIT_FSIZE, &m_before);
        const rlimit small{.rlim_cur = bytes, .rlim_max = m_before.rlim_max};
        ::setrlimit(RLIMIT_FSIZE, &small);
    }
    ~SmallFiles()
    {
        ::setrlimit(RLIMIT_FSIZE, &m_before);
        std::signal(SIGXFSZ, m_handler);
    }
    SmallFiles(const SmallFiles&) = delete;
    SmallFiles& operator=(const SmallFiles&) = delete;

private:
    rlimit m_before{};
    void (*m_handler)(int);
};

std::size_t filesIn(const std::filesystem::path& folder)
{
    return static_cast<std::size_t>(std::distance(std::filesystem::directory_iterator(folder), {}));
}

}

TEST_CASE("an export that meets a full disk leaves no half file and keeps the one that was there")
{
    Station ward(1);
    ward.addUnit("sorrel-hill");
    for (int day = 0; day < 5; ++day)
        ward.walk("sorrel-hill", day);
    must(ward.store->ownKey());
    const TempDir out;
    const std::string path = out.file("old.pack");
    writeBytes(path, "the pack of last week");
    for (const rlim_t bytes : {0U, 100U, 1000U, 2000U}) {
        CAPTURE(bytes);
        const SmallFiles small(bytes);
        for (const std::string& name : {path, out.file("new.pack")}) {
            const auto written
                = writePack(*ward.store, {.overwrite = Overwrite::Replace}, name, ward.clock.now());
            REQUIRE_FALSE(written.has_value());
            CHECK(written.error().code == ErrorCode::DiskFull);
        }
    }
    CHECK(bytesOf(path) == "the pack of last week");
    CHECK(filesIn(out.path()) == 1);
}

TEST_CASE("a small disk that is really full does the same")
{
    Station ward(1);
    ward.addUnit("sorrel-hill");
    const TempDir out;
    const SmallDisk disk(out.path().string(), 8);
    if (!disk.isThere()) {
        MESSAGE("no small file system can be mounted here; the limit on file sizes stands in for it");
        return;
    }
    for (int day = 0; day < 60; ++day)
        ward.walk("sorrel-hill", day);
    const auto written = writePack(*ward.store, {}, out.file("new.pack"), ward.clock.now());
    REQUIRE_FALSE(written.has_value());
    CHECK(written.error().code == ErrorCode::DiskFull);
    CHECK(filesIn(out.path()) == 0);
}

TEST_CASE("an export into a folder that is not there says so")
{
    Station ward(1);
    const auto written = writePack(*ward.store, {}, ward.file("no/where.pack"), ward.clock.now());
    REQUIRE_FALSE(written.has_value());
    CHECK(written.error().code == ErrorCode::NotFound);
}

TEST_CASE("a draft that is dropped is gone, a finished one stands alone")
{
    const TempDir out;
    {
        FileSink sink(out.file("a"), Overwrite::Refuse);
        sink.write("half");
    }
    CHECK(filesIn(out.path()) == 0);
    FileSink sink(out.file("a"), Overwrite::Refuse);
    sink.write("whole");
    sink.finish();
    CHECK(bytesOf(out.file("a")) == "whole");
    CHECK(filesIn(out.path()) == 1);
}
