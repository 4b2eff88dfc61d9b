// SPDX-License-Identifier: MIT
#include "core/ledger/stationkey.h"

#include "core/ledger/sha256.h"

#include <cerrno>
#include <cstdlib>
#include <cstring>
#include <fcntl.h>
#include <sodium.h>
#include <unistd.h>

namespace cradlepost {

namespace {

using Seed = std::array<unsigned char, crypto_sign_SEEDBYTES>;

/** Closes a file descriptor when dropped. */
class File
{
public:
    explicit File(int descriptor)
        : m_descriptor(descriptor)
    {
    }
    ~File()
    {
        if (m_descriptor >= 0)
            ::close(m_descriptor);
    }
    File(const File&) = delete;
    File& operator=(const File&) = delete;
    [[nodiscard]] int get() const { return m_descriptor; }
    [[nodiscard]] bool isOpen() const { return m_descriptor >= 0; }

private:
    int m_descriptor;
};

void startSodium()
{
    static const int started = sodium_init();
    if (started < 0)
        std::abort(); // no random numbers: no key may be made
}

tl::unexpected<Error> fileFailure(const std::string& path, const char* doing)
{
    const int why = errno;
    const auto code = why == EROFS || why == EACCES || why == EPERM ? ErrorCode::ReadOnly
        : why == ENOSPC || why == EDQUOT || why == EFBIG            ? ErrorCode::DiskFull
        : why == ENOENT                                             ? ErrorCode::NotFound
                                                                    : ErrorCode::Io;
    return fail(code, std::string(doing) + " key file " + path + ": " + std::strerror(why),
        "Check that the folder is there, can be written and has room.");
}

/** 64 hex digits and a line end. */
Result<Seed> readSeed(const File& file, const std::string& path)
{
    char text[2 * sizeof(Seed) + 2];
    const ssize_t size = ::read(file.get(), text, sizeof text);
    if (size < 0)
        return fileFailure(path, "cannot read");
    Seed seed;
    std::size_t decoded = 0;
    const bool sound = size == static_cast<ssize_t>(2 * sizeof(Seed) + 1) && text[size - 1] == '\n'
        && sodium_hex2bin(seed.data(), seed.size(), text, 2 * sizeof(Seed), nullptr, &decoded, nullptr) == 0
        && decoded == seed.size();
    sodium_memzero(text, sizeof text);
    if (!sound)
        return fail(ErrorCode::Damaged, "key file " + path + " does not hold a station key",
            "Move it away; the station then starts a new chain with a new key.");
    return seed;
}

bool writeWhole(const File& file, const char* text, std::size_t size)
{
    while (size > 0) {
        const ssize_t written = ::write(file.get(), text, size);
        if (written < 0)
            return false;
        text += written;
        size -= static_cast<std::size_t>(written);
    }
    return ::fsync(file.get()) == 0;
}

void syncFolderOf(const std::string& path)
{
    const auto slash = path.rfind('/');
    const File folder(::open(slash == std::string::npos ? "." : path.substr(0, slash + 1).c_str(), O_RDONLY));
    if (folder.isOpen())
        ::fsync(folder.get());
}

/** Whole under its name or not at all; fails with EEXIST when another program was quicker. */
bool writeNew(const std::string& path, const Seed& seed)
{
    std::string draft = path + ".XXXXXX";
    char text[2 * sizeof(Seed) + 1];
    sodium_bin2hex(text, sizeof text, seed.data(), seed.size());
    text[2 * sizeof(Seed)] = '\n';
    bool done = false;
    {
        const File file(::mkstemp(draft.data())); // mode 0600
        done = file.isOpen() && writeWhole(file, text, sizeof text);
    }
    sodium_memzero(text, sizeof text);
    if (done)
        done = ::link(draft.c_str(), path.c_str()) == 0
            || (errno != EEXIST && ::access(path.c_str(), F_OK) != 0
                && ::rename(draft.c_str(), path.c_str()) == 0); // file systems without hard links
    const int why = errno;
    ::unlink(draft.c_str());
    syncFolderOf(path);
    errno = why;
    return done;
}

}

std::string stationId(const PublicKey& key)
{
    static constexpr char letters[] = "abcdefghijklmnopqrstuvwxyz234567";
    const Hash hash = sha256({reinterpret_cast<const char*>(key.data()), key.size()});
    std::string id;
    unsigned bits = 0;
    int held = 0;
    for (std::size_t i = 0; i < 10; ++i) {
        bits = (bits << 8 | hash[i]) & 0xFFFU;
        for (held += 8; held >= 5; held -= 5)
            id += letters[bits >> (held - 5) & 31U];
    }
    return id;
}

std::optional<std::vector<unsigned char>> sealedFor(
    const PublicKey& station, std::span<const unsigned char> message)
{
    startSodium();
    std::array<unsigned char, crypto_box_PUBLICKEYBYTES> box;
    if (crypto_sign_ed25519_pk_to_curve25519(box.data(), station.data()) != 0)
        return std::nullopt;
    std::vector<unsigned char> sealed(message.size() + crypto_box_SEALBYTES);
    if (crypto_box_seal(sealed.data(), message.data(), message.size(), box.data()) != 0)
        return std::nullopt;
    return sealed;
}

StationKey StationKey::generate()
{
    startSodium();
    Seed seed;
    randombytes_buf(seed.data(), seed.size());
    StationKey key = fromSeed(seed);
    sodium_memzero(seed.data(), seed.size());
    return key;
}

StationKey StationKey::fromSeed(std::span<const unsigned char, 32> seed)
{
    startSodium();
    StationKey key;
    crypto_sign_seed_keypair(key.m_public.data(), key.m_secret.data(), seed.data());
    key.m_id = stationId(key.m_public);
    return key;
}

Result<StationKey> StationKey::loadOrCreate(const std::string& path)
{
    startSodium();
    for (int attempt = 0; attempt < 2; ++attempt) {
        const File file(::open(path.c_str(), O_RDONLY | O_CLOEXEC));
        if (file.isOpen()) {
            auto seed = readSeed(file, path);
            if (!seed)
                return tl::unexpected(seed.error());
            StationKey key = fromSeed(*seed);
            sodium_memzero(seed->data(), seed->size());
            return key;
        }
        if (errno != ENOENT)
            return fileFailure(path, "cannot open");
        Seed seed;
        randombytes_buf(seed.data(), seed.size());
        const bool written = writeNew(path, seed);
        const int why = errno;
        StationKey key = fromSeed(seed);
        sodium_memzero(seed.data(), seed.size());
        if (written)
            return key;
        errno = why;
        if (why != EEXIST)
            return fileFailure(path, "cannot write");
    }
    return fail(
        ErrorCode::Io, "key file " + path + " comes and goes", "Check what else writes into its folder.");
}

StationKey::~StationKey() { sodium_memzero(m_secret.data(), m_secret.size()); }

std::array<unsigned char, 64> StationKey::sign(std::span<const unsigned char> message) const
{
    std::array<unsigned char, 64> signature;
    crypto_sign_detached(signature.data(), nullptr, message.data(), message.size(), m_secret.data());
    return signature;
}

std::optional<std::vector<unsigned char>> StationKey::unseal(std::span<const unsigned char> box) const
{
    if (box.size() < crypto_box_SEALBYTES)
        return std::nullopt;
    std::array<unsigned char, crypto_box_PUBLICKEYBYTES> open;
    std::array<unsigned char, crypto_box_SECRETKEYBYTES> secret;
    std::vector<unsigned char> message(box.size() - crypto_box_SEALBYTES);
    const bool opened = crypto_sign_ed25519_pk_to_curve25519(open.data(), m_public.data()) == 0
        && crypto_sign_ed25519_sk_to_curve25519(secret.data(), m_secret.data()) == 0
        && crypto_box_seal_open(message.data(), box.data(), box.size(), open.data(), secret.data()) == 0;
    sodium_memzero(secret.data(), secret.size());
    return opened ? std::optional(std::move(message)) : std::nullopt;
}

}
