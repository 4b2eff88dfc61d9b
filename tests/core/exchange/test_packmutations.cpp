// SPDX-License-Identifier: MIT
#include "packs.h"

#include <algorithm>
#include <filesystem>
#include <random>

using namespace cradlepost;
using namespace cradlepost::test;

namespace {

/** Makes changed packs out of a sound one. */
class Mutator
{
public:
    Mutator(std::string bytes, std::string otherBytes, const StationKey& owner)
        : m_bytes(std::move(bytes))
        , m_other(std::move(otherBytes))
        , m_lines(*linesIn(m_bytes))
        , m_owner(owner)
    {
    }

    /** Writes the next one. */
    void write(const std::string& path)
    {
        if (pick(2) == 0) {
            writeBytes(path, changedBytes());
            return;
        }
        auto lines = changedLines();
        if (pick(3) > 0)
            endAnew(lines, pick(3) == 0 ? aKey(77) : m_owner);
        writeLines(path, lines);
    }

private:
    std::size_t pick(std::size_t n) { return m_random() % n; }

    std::string changedBytes()
    {
        std::string bytes = m_bytes;
        const std::size_t at = pick(bytes.size());
        const std::size_t length = 1 + pick(200);
        switch (pick(6)) {
        case 0:
            bytes[at] = static_cast<char>(bytes[at] ^ (1 << pick(8)));
            break;
        case 1:
            bytes.resize(at);
            break;
        case 2:
            bytes.erase(at, length);
            break;
        case 3:
            bytes.insert(at, bytes.substr(pick(bytes.size()), length));
            break;
        case 4: // the start of one, the end of another
            bytes = bytes.substr(0, at) + m_other.substr(std::min(at, m_other.size()));
            break;
        default:
            for (std::size_t i = at; i < std::min(bytes.size(), at + length); ++i)
                bytes[i] = static_cast<char>(m_random());
        }
        return bytes;
    }

    std::vector<std::string> changedLines()
    {
        auto lines = m_lines;
        const std::size_t at = pick(lines.size());
        const std::size_t record = 1 + pick(lines.size() - 2);
        switch (pick(9)) {
        case 0:
            std::swap(lines[at], lines[pick(lines.size())]);
            break;
        case 1:
            lines.erase(lines.begin() + static_cast<std::ptrdiff_t>(at));
            break;
        case 2:
            lines.insert(lines.begin() + static_cast<std::ptrdiff_t>(at), lines[pick(lines.size())]);
            break;
        case 3: {
            std::string& line = lines[at];
            line[pick(line.size())] = static_cast<char>(32 + pick(95));
            break;
        }
        case 4:
            lines[at].resize(pick(lines[at].size()));
            break;
        case 5: { // forged with another key
            const StationKey forger = aKey(78);
            lines[record] = recordWith(
                lines[record], [](Record& r) { r.actor = "ZZ"; }, &forger);
            break;
        }
        case 6: // forged without one
            lines[record] = recordWith(lines[record], [](Record& r) {
                r.actor = "ZZ";
                r.hash = hashOf(r);
            });
            break;
        case 7: { // huge or odd counts
            static constexpr std::int64_t odd[] = {2, 9, 99, 9'999'999, (std::int64_t{1} << 53) - 1};
            lines[0] = manifestWith(lines[0], {{odd[pick(2)] - 1, odd[pick(5)]}});
            break;
        }
        default: { // a digit becomes another
            std::string& line = lines[at];
            const auto digit = line.find_first_of("0123456789", pick(line.size()));
            if (digit != std::string::npos)
                line[digit] = static_cast<char>('0' + pick(10));
        }
        }
        if (lines.empty())
            lines.emplace_back();
        return lines;
    }

    std::string m_bytes;
    std::string m_other;
    std::vector<std::string> m_lines;
    const StationKey& m_owner;
    std::mt19937 m_random{20261124};
};

bool isSound(const std::string& line, const std::vector<std::string>& genuine)
{
    return std::find(genuine.begin(), genuine.end(), line) != genuine.end();
}

}

TEST_CASE("of 10000 changed packs none is taken in that says anything else, and none does harm")
{
    Station ward(1);
    ward.addUnit("sorrel-hill");
    ward.walk("sorrel-hill", 0);
    Station supervisor(2);
    ward.pack(ward.file("first.pack"));
    must(supervisor.take(ward.file("first.pack"), trusting({&ward})));
    ward.walk("sorrel-hill", 1);
    ward.walk("sorrel-hill", 2);
    ward.pack(ward.file("all.pack"));
    ward.walk("sorrel-hill", 3);
    ward.pack(ward.file("other.pack"), {.units = {"sorrel-hill"}});
    const auto genuine = linesOf(ward.file("other.pack"));
    supervisor.open();
    const std::string ledger = supervisor.ledger();
    const std::string database = bytesOf(supervisor.path());

    Mutator mutator(bytesOf(ward.file("all.pack")), bytesOf(ward.file("other.pack")), ward.key);
    const std::string path = ward.file("changed.pack");
    int taken = 0;
    for (int i = 0; i < 10'000; ++i) {
        mutator.write(path);
        const auto imported = supervisor.take(path);
        if (!imported) {
            if (i % 50 == 0)
                REQUIRE(supervisor.ledger() == ledger);
            continue;
        }
        CAPTURE(i);
        ++taken;
        const auto lines = linesOf(path);
        for (std::size_t k = 1; k + 1 < lines.size(); ++k)
            REQUIRE(isSound(lines[k], genuine));
        REQUIRE(textOf(supervisor.store->verify()) == "");
        supervisor.store.reset();
        for (const char* ending : {"-wal", "-shm"})
            std::filesystem::remove(supervisor.path() + ending);
        writeBytes(supervisor.path(), database);
        supervisor.open();
    }
    CHECK(supervisor.ledger() == ledger);
    CHECK(bytesOf(supervisor.path()) == database);
    CHECK(textOf(supervisor.store->verify()) == "");
    // Bits that mean nothing to zlib, a digit that became itself: the records are still the same.
    MESSAGE("taken in with the same records: ", taken);
    CHECK(taken < 1000);
}
