// SPDX-License-Identifier: MIT
#include "packs.h"

#include <zlib.h>

using namespace cradlepost;
using namespace cradlepost::test;

namespace {

/** A pack of a ward's ten records, and a supervisor who has the first six of them. */
struct Attempted
{
    Attempted()
    {
        ward.addUnit("sorrel-hill");
        ward.walk("sorrel-hill", 0, 0);
        ward.walk("sorrel-hill", 0, 1);
        ward.pack(ward.file("six.pack"));
        must(supervisor.take(ward.file("six.pack"), trusting({&ward})));
        for (int day = 1; day < 5; ++day)
            ward.walk("sorrel-hill", day);
        ward.pack(ward.file("ten.pack"));
        lines = linesOf(ward.file("ten.pack"));
        checkpoint();
    }
    /** Everything into the main file, so that its bytes say all. */
    void checkpoint()
    {
        supervisor.open();
        before = bytesOf(supervisor.path());
        ledgerBefore = supervisor.ledger();
    }
    void endHere() { endAnew(lines, ward.key); }

    /** Offers the lines; gives the refusal and makes sure that nothing changed. */
    Error refused()
    {
        writeLines(ward.file("changed.pack"), lines);
        return refused(ward.file("changed.pack"));
    }
    Error refused(const std::string& path, const ImportWish& wish = {})
    {
        const auto imported = supervisor.take(path, wish);
        REQUIRE_FALSE(imported.has_value());
        CHECK(supervisor.ledger() == ledgerBefore);
        CHECK(bytesOf(supervisor.path()) == before);
        CHECK(textOf(supervisor.store->verify()) == "");
        return imported.error();
    }
    std::string id() const { return ward.key.id(); }

    Station ward{1};
    Station supervisor{2};
    std::vector<std::string> lines;
    std::string before;
    std::string ledgerBefore;
};

bool says(const Error& error, const std::string& what)
{
    CAPTURE(error.message);
    return error.message.find(what) != std::string::npos;
}

}

TEST_CASE("a pack that is cut anywhere is refused whole")
{
    Attempted pack;
    const std::string whole = bytesOf(pack.ward.file("ten.pack"));
    for (std::size_t size = 0; size < whole.size(); size += 1 + size / 40) {
        CAPTURE(size);
        writeBytes(pack.ward.file("cut.pack"), std::string_view(whole).substr(0, size));
        CHECK(pack.refused(pack.ward.file("cut.pack")).code == ErrorCode::BadDocument);
    }
    CHECK(must(pack.supervisor.take(pack.ward.file("ten.pack"))).fresh == 4);
}

TEST_CASE("what is no pack is said to be none")
{
    Attempted pack;
    for (const char* bytes : {"", "\n", "CRADLEPOST", "CRADLEPOST PACK \n", "CRADLEPOST PACK 0 plain\n",
             "CRADLEPOST PACK 1\n", "CRADLEPOST PACK 1 sealed NOBODY\n", "SQLite format 3", "{\"a\":1}\n"}) {
        CAPTURE(bytes);
        writeBytes(pack.ward.file("x"), bytes);
        const Error error = pack.refused(pack.ward.file("x"));
        CHECK(error.code == ErrorCode::BadDocument);
        CHECK(says(error, "it is no pack of records"));
    }
    CHECK(pack.refused(pack.ward.file("nowhere")).code == ErrorCode::NotFound);
    CHECK(pack.refused(pack.ward.dir.path().string()).code == ErrorCode::InvalidArgument);
}

TEST_CASE("a pack of a later version asks for a later program")
{
    Attempted pack;
    std::string bytes = bytesOf(pack.ward.file("ten.pack"));
    bytes.replace(16, 1, "2");
    writeBytes(pack.ward.file("later.pack"), bytes);
    CHECK(pack.refused(pack.ward.file("later.pack")).code == ErrorCode::NewerSchema);
}

TEST_CASE("a changed line breaks the sum, and with a new sum the seal of its record")
{
    Attempted pack;
    pack.lines[9].replace(pack.lines[9].find("\"AB\""), 4, "\"XY\"");
    CHECK(says(pack.refused(), "record " + pack.id() + "/9: the hash does not fit the record"));
    pack.endHere();
    CHECK(says(pack.refused(), "record " + pack.id() + "/9: the hash does not fit the record"));
    pack.lines[9] = recordWith(pack.lines[9], [](Record& record) { record.hash = hashOf(record); });
    pack.endHere();
    CHECK(says(pack.refused(), "the signature does not fit the station's key"));
    const StationKey forger = aKey(7);
    pack.lines[9] = recordWith(
        pack.lines[9], [](Record&) {}, &forger);
    pack.endHere();
    CHECK(pack.refused().code == ErrorCode::Forged);
}

TEST_CASE("an end of another station, another sum or another count is refused")
{
    Attempted pack;
    const auto good = pack.lines;
    endAnew(pack.lines, aKey(7));
    CHECK(says(pack.refused(), "the signature at its end"));
    pack.lines = good;
    PackEnd end = must(readEnd(good.back()));
    end.records = 9;
    pack.lines.back() = endLine(end);
    pack.lines.back().pop_back();
    CHECK(says(pack.refused(), "counts other records"));
    end.records = 10;
    end.digest[3] ^= 1;
    pack.lines.back() = endLine(end);
    pack.lines.back().pop_back();
    CHECK(says(pack.refused(), "the sum over its lines does not fit"));
    pack.lines = good;
    pack.lines.pop_back();
    CHECK(says(pack.refused(), "ends too early"));
    pack.lines = good;
    pack.lines.push_back("more");
    CHECK(says(pack.refused(), "something stands behind"));
}

TEST_CASE("records that change places, are left out or stand twice are named")
{
    Attempted pack;
    const auto good = pack.lines;
    std::swap(pack.lines[8], pack.lines[9]);
    pack.endHere();
    CHECK(says(pack.refused(), "record " + pack.id() + "/8: record " + pack.id() + "/9 stands in its place"));
    pack.lines = good;
    pack.lines.erase(pack.lines.begin() + 8);
    pack.lines[0] = manifestWith(pack.lines[0], {{1, 9}});
    pack.endHere();
    CHECK(says(pack.refused(), "record " + pack.id() + "/9 stands in its place"));
    pack.lines = good;
    pack.lines.insert(pack.lines.begin() + 8, pack.lines[8]);
    pack.lines[0] = manifestWith(pack.lines[0], {{1, 11}});
    pack.endHere();
    CHECK(says(pack.refused(), "record " + pack.id() + "/8 stands in its place"));
}

TEST_CASE("a link that its own station signed wrongly is refused")
{
    Attempted pack;
    pack.lines[9] = recordWith(
        pack.lines[9], [](Record& record) { record.prev[0] ^= 1; }, &pack.ward.key);
    pack.endHere();
    CHECK(says(pack.refused(), "record " + pack.id() + "/9: it does not follow the record before it"));
}

TEST_CASE("a fork is refused with the place where it begins")
{
    Attempted pack;
    // The same key went on with other records from the fifth on.
    std::vector<std::string> forked = pack.lines;
    Hash prev = must(pack.ward.store->sealOf(pack.id(), 4))->hash;
    for (std::size_t i = 5; i <= 10; ++i)
        forked[i] = recordWith(
            forked[i],
            [&](Record& record) {
                record.prev = prev;
                record.actor = "ZZ";
                record.hash = hashOf(record);
                prev = record.hash;
            },
            &pack.ward.key);
    pack.lines = forked;
    pack.endHere();
    const Error error = pack.refused();
    CHECK(error.code == ErrorCode::Forged);
    CHECK(says(error, "record " + pack.id() + "/5: the chain has forked"));
    // The same when only records behind what is here are brought.
    pack.lines.erase(pack.lines.begin() + 1, pack.lines.begin() + 7);
    pack.lines[0] = manifestWith(pack.lines[0], {{7, 10}});
    pack.endHere();
    CHECK(says(pack.refused(), "record " + pack.id() + "/7: the chain has forked"));
}

TEST_CASE("records that are missing before the pack are named")
{
    Attempted pack;
    pack.lines.erase(pack.lines.begin() + 1, pack.lines.begin() + 9);
    pack.lines[0] = manifestWith(pack.lines[0], {{9, 10}});
    pack.endHere();
    const Error error = pack.refused();
    CHECK(error.code == ErrorCode::NotFound);
    CHECK(says(error, "7 to 8 of station " + pack.id()));
}

TEST_CASE("a record that is not canonical, or may not stand in the ledger, is refused")
{
    Attempted pack;
    const auto good = pack.lines;
    const auto with = [&](const std::string& body) {
        pack.lines = good;
        pack.lines[10] = recordWith(
            good[10], [&](Record& record) { record.body = body; }, &pack.ward.key);
        pack.endHere();
        return pack.refused();
    };
    CHECK(says(with("{\"b\":1,\"a\":2}"), "it is not in canonical form"));
    CHECK(says(with("{\"a\":1.5}"), "no floating point"));
    CHECK(says(with("{\"a\":9007199254740993}"), "2^53"));
    CHECK(says(with("{\"a\":1,\"a\":1}"), "stands twice"));
    CHECK(says(with(""), "it is no JSON"));
    CHECK(says(with("{\"a\":\"\xff\"}"), "it is no JSON"));
    pack.lines = good;
    pack.lines[10].insert(1, "\"z\":1,");
    pack.endHere();
    CHECK(says(pack.refused(), "members that are not known"));
}

TEST_CASE("a manifest with other keys, ranges or orders is refused")
{
    Attempted pack;
    const auto good = pack.lines;
    const auto with = [&](const std::string& what, const std::string& by) {
        pack.lines = good;
        pack.lines[0].replace(pack.lines[0].find(what), what.size(), by);
        pack.endHere();
        return pack.refused();
    };
    CHECK(says(with("\"to\":10", "\"to\":0"), "records 1 to 0 are none"));
    CHECK(says(with("\"to\":10", "\"to\":9007199254740991"), "more than 10000000 records"));
    CHECK(says(with("\"to\":10", "\"to\":11"), "the last line") == false);
    CHECK(with("\"version\":1", "\"version\":2").code == ErrorCode::BadDocument);
    CHECK(with("\"from\":1", "\"from\":-1").code == ErrorCode::BadDocument);
    CHECK(with("\"from\":1", "\"from\": 1").code == ErrorCode::BadDocument);
    CHECK(with("\"by\":\"" + pack.id(), "\"by\":\"" + aKey(9).id()).code == ErrorCode::Forged);
    CHECK(with("\"station\":\"" + pack.id(), "\"station\":\"" + aKey(9).id()).code == ErrorCode::Forged);
}

TEST_CASE("a pack beyond the limits is refused before it takes memory")
{
    Attempted pack;
    const auto within = [&](const PackLimits& limits) {
        ImportWish wish;
        wish.limits = limits;
        return pack.refused(pack.ward.file("ten.pack"), wish);
    };
    CHECK(says(within({.records = 9}), "more than 9 records"));
    CHECK(says(within({.chains = 0}), "more than 0 stations"));
    CHECK(says(within({.lineBytes = 800}), "a line is longer than 800 bytes"));
    CHECK(says(within({.textBytes = 4000}), "unpacks to more than 4000 bytes"));
    // A quarter of a gibibyte of spaces in a quarter of a mebibyte.
    z_stream stream{};
    REQUIRE(deflateInit(&stream, Z_BEST_COMPRESSION) == Z_OK);
    std::string bomb(std::size_t{1} << 20U, '\0');
    stream.next_out = reinterpret_cast<Bytef*>(bomb.data());
    stream.avail_out = static_cast<uInt>(bomb.size());
    std::string spaces(std::size_t{1} << 20U, ' ');
    for (int i = 0; i < 256; ++i) {
        spaces.back() = i % 4 == 3 ? '\n' : ' ';
        stream.next_in = reinterpret_cast<Bytef*>(spaces.data());
        stream.avail_in = static_cast<uInt>(spaces.size());
        REQUIRE(deflate(&stream, i == 255 ? Z_FINISH : Z_NO_FLUSH) != Z_STREAM_ERROR);
    }
    bomb.resize(stream.total_out);
    deflateEnd(&stream);
    writeBytes(pack.ward.file("bomb.pack"), headLine({}) + bomb);
    CHECK(says(pack.refused(pack.ward.file("bomb.pack")), "times its size"));
}

TEST_CASE("a file that changes between its two readings is noticed and nothing stays")
{
    Attempted pack;
    // Another sound pack takes its place as soon as the first reading has asked for the last record it knows.
    const std::string path = pack.ward.file("moving.pack");
    pack.ward.pack(path);
    pack.ward.walk("sorrel-hill", 7);
    pack.ward.pack(pack.ward.file("eleven.pack"));
    const PackChecked checked = checkPack(*pack.supervisor.store, path, {});
    CHECK(checked.byStation.at(pack.id()) == 4);
    const auto taken = takePack(*pack.supervisor.store, pack.ward.file("eleven.pack"), checked, {}, {});
    REQUIRE_FALSE(taken.has_value());
    CHECK(says(taken.error(), "the file changed while it was read"));
    CHECK(pack.supervisor.ledger() == pack.ledgerBefore);
    CHECK(textOf(pack.supervisor.store->verify()) == "");
    CHECK(must(takePack(*pack.supervisor.store, path, checked, {}, {})) == 4);
    CHECK(textOf(pack.supervisor.store->verify()) == "");
}

TEST_CASE("what came in by itself between the two readings is not taken twice")
{
    Attempted pack;
    const std::string path = pack.ward.file("ten.pack");
    const PackChecked checked = checkPack(*pack.supervisor.store, path, {});
    CHECK(must(pack.supervisor.take(path)).fresh == 4);
    CHECK(must(takePack(*pack.supervisor.store, path, checked, {}, {})) == 0);
    CHECK(difference(pack.ward, pack.supervisor) == "");
}
