// SPDX-License-Identifier: MIT
#include "core/store/statement.h"

#include <utility>

namespace cradlepost {

Statement::Statement(Query& kept)
    : m_query(&kept)
{
    m_query->inUse = true;
}

Statement::Statement(std::unique_ptr<Query> own)
    : m_own(std::move(own))
    , m_query(m_own.get())
{
}

Statement::Statement(Statement&& other) noexcept
    : m_own(std::move(other.m_own))
    , m_query(std::exchange(other.m_query, nullptr))
    , m_bound(other.m_bound)
{
}

Statement::~Statement()
{
    if (m_query == nullptr)
        return;
    m_query->reset();
    m_query->inUse = false;
}

void Statement::run()
{
    m_query->run();
    m_bound = 0;
}

}
