# SPDX-License-Identifier: MIT
"""Prints every cell of a work book, one a line: sheet!A1|type|number format|value."""
import sys

import openpyxl

book = openpyxl.load_workbook(sys.argv[1])
print("sheets|" + ",".join(book.sheetnames))
for sheet in book:
    print(f"{sheet.title}#frozen|{sheet.freeze_panes}")
    print(f"{sheet.title}#filter|{sheet.auto_filter.ref}")
    print(f"{sheet.title}#merged|{len(sheet.merged_cells.ranges)}")
    print(f"{sheet.title}#rightToLeft|{bool(sheet.sheet_view.rightToLeft)}")
    for row in sheet.iter_rows():
        for cell in row:
            if cell.value is not None:
                value = repr(cell.value) if isinstance(cell.value, float) else str(cell.value)
                value = value.replace("\n", "\\n")
                print(f"{sheet.title}!{cell.coordinate}|{cell.data_type}|{cell.number_format}|{value}")
