// SPDX-License-Identifier: MIT
#include "ui/text/papertext.h"

#include "ui/text/language.h"

namespace cradlepost {

QString PaperText::place(const PaperFault& fault)
{
    if (fault.line == 0)
        return {};
    if (fault.column == 0)
        return tr("Line %1").arg(fault.line);
    //: %2 the how-many-eth field of the line, %3 the name of its column
    return tr("Line %1, field %2 (%3)")
        .arg(QString::number(fault.line), QString::number(fault.column), qs(fault.name));
}

QString PaperText::sentence(const PaperFault& fault)
{
    return fault.code < PaperFaultCode::WrongDate ? ofTheSheet(fault) : ofTheRow(fault);
}

QString PaperText::ofTheSheet(const PaperFault& fault)
{
    switch (fault.code) {
    case PaperFaultCode::TooLarge:
        return tr("The file is too large: %1 bytes of at most %2. Split it.")
            .arg(qs(fault.value), qs(fault.limit));
    case PaperFaultCode::NotUtf8:
        return tr("This is no text in UTF-8. Save the sheet as “CSV UTF-8”.");
    case PaperFaultCode::NoRows:
        return tr("There is no round in it. Write one round a line below the names of the columns.");
    case PaperFaultCode::TooManyRows:
        return tr("%1 lines are more than the %2 that are taken at once. Split the sheet.")
            .arg(qs(fault.value), qs(fault.limit));
    case PaperFaultCode::ColumnUnknown:
        return tr("No item of the checklist has the name “%1”. Use the names of the template.")
            .arg(qs(fault.name));
    case PaperFaultCode::ColumnTwice:
        return tr("The column “%1” is there twice.").arg(qs(fault.name));
    case PaperFaultCode::ColumnMissing:
        return tr("The column “%1” is missing. Use the names of the template.").arg(qs(fault.name));
    case PaperFaultCode::WrongWidth:
        return tr("The line has %1 fields, the line of names has %2.").arg(qs(fault.value), qs(fault.limit));
    default:
        break;
    }
    return tr("This is no table as CSV has it: %1.").arg(qs(fault.value));
}

QString PaperText::ofTheRow(const PaperFault& fault)
{
    const QString value = qs(fault.value);
    switch (fault.code) {
    case PaperFaultCode::WrongDate:
        return tr("“%1” is no date. Write it as 2026-03-14.").arg(value);
    case PaperFaultCode::WrongShift:
        return tr("“%1” is no shift of that day. It has: %2.").arg(value, qs(fault.limit));
    case PaperFaultCode::WrongTime:
        return tr("“%1” is no clock time. Write it as 07:45.").arg(value);
    case PaperFaultCode::TimeOutsideShift:
        return tr("%1 is not in the shift (%2), nor in the three hours after it.")
            .arg(value, qs(fault.limit));
    case PaperFaultCode::WrongInitials:
        return tr("“%1” are no initials. Write 1 to 12 characters, no full name.").arg(value);
    case PaperFaultCode::InFuture:
        return tr("This round would be finished in the future. See the date and the time.");
    case PaperFaultCode::NoPattern:
        return tr("The unit had no shifts on that day.");
    case PaperFaultCode::BeforeAdoption:
        return tr("The unit had no checklist on that day.");
    case PaperFaultCode::AlreadyThere:
        return tr("This shift has its round already.");
    case PaperFaultCode::TwiceInSheet:
        return tr("Line %1 has the same shift already.").arg(qs(fault.limit));
    case PaperFaultCode::NothingChecked:
        return tr("Nothing was checked in this round. Take the line out.");
    case PaperFaultCode::NotAsked:
        return tr("The checklist of that day does not ask this. Leave the field empty.");
    case PaperFaultCode::UnknownInitials:
        return tr("“%1” is not among the people of the unit. The round is taken all the same.").arg(value);
    default:
        break;
    }
    return tr("“%1” cannot be. The field takes: %2; or nothing, when it was not checked.")
        .arg(value, qs(fault.limit));
}

}
