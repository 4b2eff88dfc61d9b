// SPDX-License-Identifier: MIT
#pragma once

#include "core/base/result.h"

#include <xlsxwriter.h>

namespace cradlepost {

// The functions of libxlsxwriter that are used here.
#define CRADLEPOST_LIBXLSXWRITER(EACH)                                                                               \
    EACH(format_set_align) EACH(format_set_bold) EACH(format_set_bottom) EACH(format_set_num_format)                 \
    EACH(format_set_text_wrap) EACH(lxw_strerror) EACH(workbook_add_format) EACH(workbook_add_worksheet)             \
    EACH(workbook_close) EACH(workbook_new) EACH(workbook_set_properties) EACH(worksheet_autofilter)                 \
    EACH(worksheet_fit_to_pages) EACH(worksheet_freeze_panes) EACH(worksheet_repeat_rows)                            \
    EACH(worksheet_right_to_left) EACH(worksheet_set_column) EACH(worksheet_set_landscape) EACH(worksheet_set_paper) \
    EACH(worksheet_write_boolean) EACH(worksheet_write_datetime) EACH(worksheet_write_number)                        \
    EACH(worksheet_write_string)

struct Libxlsxwriter
{
#define CRADLEPOST_FUNCTION(name) decltype(&::name) name = nullptr;
    CRADLEPOST_LIBXLSXWRITER(CRADLEPOST_FUNCTION)
#undef CRADLEPOST_FUNCTION
};

/** Loads it the first time. */
Result<const Libxlsxwriter*> loadLibxlsxwriter();

}
