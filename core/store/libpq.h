// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"

#include <libpq-fe.h>

namespace cradlepost {

// The functions of PostgreSQL's client library that are used here.
#define CRADLEPOST_LIBPQ(EACH)                                                                                       \
    EACH(PQclear) EACH(PQcmdStatus) EACH(PQconnectdbParams) EACH(PQconninfoFree) EACH(PQconninfoParse)               \
    EACH(PQconsumeInput) EACH(PQenterPipelineMode) EACH(PQerrorMessage) EACH(PQexec) EACH(PQexitPipelineMode)        \
    EACH(PQfinish) EACH(PQfname) EACH(PQfreemem) EACH(PQftype) EACH(PQgetResult) EACH(PQgetisnull) EACH(PQgetlength) \
    EACH(PQgetvalue) EACH(PQnfields) EACH(PQnotifies) EACH(PQntuples) EACH(PQpipelineStatus) EACH(PQpipelineSync)    \
    EACH(PQresultErrorField) EACH(PQresultStatus) EACH(PQsendPrepare) EACH(PQsendQueryParams)                        \
    EACH(PQsendQueryPrepared) EACH(PQsetNoticeProcessor) EACH(PQsocket) EACH(PQstatus) EACH(PQtransactionStatus)

struct Libpq
{
#define CRADLEPOST_FUNCTION(name) decltype(&::name) name = nullptr;
    CRADLEPOST_LIBPQ(CRADLEPOST_FUNCTION)
#undef CRADLEPOST_FUNCTION
};

/** Loads it the first time. */
Result<const Libpq*> loadLibpq();
/** The same; throws Failure. */
const Libpq& libpq();

}
