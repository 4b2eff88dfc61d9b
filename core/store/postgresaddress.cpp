// SPDX-License-Identifier: MIT
#include "core/store/postgresaddress.h"

#include "core/store/libpq.h"

#include <map>
#include <memory>

namespace cradlepost {

namespace {

/**
 * What libpq reads in it; nothing where libpq cannot be loaded. Its words about a fault are not used: they may hold the
 * password.
 */
std::map<std::string, std::string> partsOf(const std::string& address)
{
    const auto loaded = loadLibpq();
    if (!loaded)
        return {};
    const Libpq& libpq = **loaded;
    char* fault = nullptr;
    const std::unique_ptr<PQconninfoOption, decltype(libpq.PQconninfoFree)> options(
        libpq.PQconninfoParse(address.c_str(), &fault), libpq.PQconninfoFree);
    libpq.PQfreemem(fault);
    std::map<std::string, std::string> parts;
    for (const PQconninfoOption* one = options.get(); one != nullptr && one->keyword != nullptr; ++one)
        if (one->val != nullptr)
            parts.emplace(one->keyword, one->val);
    return parts;
}

}

bool isPostgresAddress(std::string_view address)
{
    return address.starts_with("postgresql://") || address.starts_with("postgres://");
}

bool canBeRead(const std::string& address) { return !partsOf(address).empty(); }

std::string shownAddress(const std::string& address)
{
    auto parts = partsOf(address);
    std::string shown = "postgresql://";
    if (!parts["user"].empty())
        shown += parts["user"] + '@';
    shown += parts["host"];
    if (!parts["port"].empty())
        shown += ':' + parts["port"];
    if (!parts["dbname"].empty())
        shown += '/' + parts["dbname"];
    if (!parts["service"].empty())
        shown += "?service=" + parts["service"];
    return shown;
}

std::string passwordIn(const std::string& address) { return partsOf(address)["password"]; }

}
