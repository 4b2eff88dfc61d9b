// SPDX-License-Identifier: MIT
#include "core/exchange/packcipher.h"

#include "core/store/failure.h"
#include "packs.h"

using namespace cradlepost;
using namespace cradlepost::test;

namespace {

struct Bytes final : ByteSink, ByteSource
{
    void write(std::span<const unsigned char> bytes) override
    {
        all.insert(all.end(), bytes.begin(), bytes.end());
    }
    void finish() override { finished = true; }
    std::size_t read(std::span<unsigned char> into) override
    {
        const std::size_t n = std::min(into.size(), all.size() - taken);
        std::copy_n(all.begin() + static_cast<std::ptrdiff_t>(taken), n, into.begin());
        taken += n;
        return n;
    }
    std::vector<unsigned char> all;
    std::size_t taken = 0;
    bool finished = false;
};

std::vector<unsigned char> someBytes(std::size_t size)
{
    std::vector<unsigned char> bytes(size);
    for (std::size_t i = 0; i < size; ++i)
        bytes[i] = static_cast<unsigned char>(i * 7 + i / 251);
    return bytes;
}

Bytes sealedOf(const std::vector<unsigned char>& text)
{
    Bytes file;
    SealedSink sink(file, aKey(2).publicKey(), "head\n");
    for (std::size_t at = 0; at < text.size(); at += 1000)
        sink.write(std::span(text).subspan(at, std::min<std::size_t>(1000, text.size() - at)));
    sink.finish();
    return file;
}

Result<std::vector<unsigned char>> opened(
    Bytes file, const std::string& head = "head\n", unsigned char key = 2)
{
    return attempt([&] {
        SealedSource source(file, aKey(key), head);
        std::vector<unsigned char> text(1'000'000);
        text.resize(source.read(text));
        return text;
    });
}

}

TEST_CASE("what is sealed opens to the same bytes, also at the ends of its pieces")
{
    for (const std::size_t size : {0U, 1U, 65535U, 65536U, 65537U, 131072U, 200'000U}) {
        CAPTURE(size);
        const auto text = someBytes(size);
        const Bytes file = sealedOf(text);
        CHECK(file.finished);
        CHECK(opened(file) == text);
    }
}

TEST_CASE("another key, another first line, a turned bit, a cut or an addition do not open")
{
    const auto text = someBytes(70'000);
    const Bytes file = sealedOf(text);
    CHECK_FALSE(opened(file, "head\n", 3).has_value());
    CHECK_FALSE(opened(file, "tail\n").has_value());
    for (std::size_t at = 0; at < file.all.size(); at += 97) {
        CAPTURE(at);
        Bytes changed = file;
        changed.all[at] ^= 4;
        REQUIRE_FALSE(opened(changed).has_value());
        changed = file;
        changed.all.resize(at);
        REQUIRE_FALSE(opened(changed).has_value());
    }
    Bytes longer = file;
    longer.all.push_back(0);
    CHECK_FALSE(opened(longer).has_value());
}

TEST_CASE("pieces that change their places do not open")
{
    Bytes file = sealedOf(someBytes(3 * 65536));
    constexpr std::ptrdiff_t start = 80 + 24;
    constexpr std::ptrdiff_t piece = 65536 + 17;
    std::swap_ranges(
        file.all.begin() + start, file.all.begin() + start + piece, file.all.begin() + start + piece);
    CHECK_FALSE(opened(file).has_value());
}

TEST_CASE("a sealed pack opens at its receiver and nowhere else")
{
    Station ward(1);
    Station supervisor(2);
    Station stranger(3);
    ward.addUnit("sorrel-hill");
    ward.walk("sorrel-hill", 0);
    const std::string path = ward.file("sealed.pack");
    ward.pack(path, {.receiver = PackReceiver{supervisor.key.id(), supervisor.key.publicKey()}});
    const std::string bytes = bytesOf(path);
    CHECK(bytes.starts_with("CRADLEPOST PACK 1 sealed " + supervisor.key.id() + "\n"));
    const auto refused = stranger.take(path, trusting({&ward}));
    REQUIRE_FALSE(refused.has_value());
    CHECK(refused.error().code == ErrorCode::InvalidArgument);
    CHECK(refused.error().message.find(supervisor.key.id()) != std::string::npos);
    std::string readdressed = bytes;
    readdressed.replace(25, 16, stranger.key.id());
    writeBytes(ward.file("readdressed.pack"), readdressed);
    CHECK_FALSE(stranger.take(ward.file("readdressed.pack"), trusting({&ward})).has_value());
    const Imported imported = must(supervisor.take(path, trusting({&ward})));
    CHECK(imported.pack.sealed);
    CHECK(difference(ward, supervisor) == "");
}
