// SPDX-License-Identifier: MIT
#include "ui/text/errortext.h"

#include "ui/text/language.h"
#include "ui/text/refusaltext.h"

namespace cradlepost {

QString ErrorText::sentence(const Error& error)
{
    if (const auto refusal = RefusalText::of(error))
        return refusal->what;
    switch (error.code) {
    case ErrorCode::InvalidArgument:
        return tr("This cannot be taken as it is.");
    case ErrorCode::BadDocument:
        return tr("The document breaks its own rules.");
    case ErrorCode::NotFound:
        return tr("It is not there.");
    case ErrorCode::AlreadyExists:
        return tr("It is there already.");
    case ErrorCode::ReadOnly:
        return tr("The file cannot be written. Nothing was lost.");
    case ErrorCode::DiskFull:
        return tr("The disk is full. Nothing was lost.");
    case ErrorCode::Locked:
        return tr("Another program holds the file. Nothing was lost.");
    case ErrorCode::Damaged:
        return tr("The database file is damaged.");
    case ErrorCode::NewerSchema:
        return tr("A later version of Cradlepost wrote this file.");
    case ErrorCode::NotADatabase:
        return tr("This file is no Cradlepost database.");
    case ErrorCode::Forged:
        return tr("A record does not hold: it was changed after it was signed.");
    case ErrorCode::Undefined:
        return tr("These numbers do not give that figure.");
    case ErrorCode::ServerAway:
        return tr("The database server does not answer.");
    case ErrorCode::NotAdmitted:
        return tr("The database server does not let this user in.");
    case ErrorCode::Io:
        break;
    }
    return tr("The file system or the database refused.");
}

QString ErrorText::advice(const Error& error)
{
    if (const auto refusal = RefusalText::of(error))
        return refusal->advice;
    switch (error.code) {
    case ErrorCode::ReadOnly:
        return tr("Give this user the right to write to the file and its folder, then try again.");
    case ErrorCode::DiskFull:
        return tr("Free some space, then try again.");
    case ErrorCode::Locked:
        return tr("Close the other program, then try again.");
    case ErrorCode::Damaged:
        return tr("Keep a copy of the file, then restore the last backup.");
    case ErrorCode::NewerSchema:
        return tr("Open it with that version or a later one.");
    case ErrorCode::NotADatabase:
        return tr("Choose another file.");
    case ErrorCode::Forged:
        return tr("Keep a copy of the file and tell whoever answers for the records.");
    case ErrorCode::ServerAway:
        return tr("Check the network and the server, then try again. "
                  "A round that is being walked is kept on this computer.");
    case ErrorCode::NotAdmitted:
        return tr("Check the user in the address and the password in ~/.pgpass or in the service file.");
    default:
        return qs(error.hint);
    }
}

QString ErrorText::told(const Error& error)
{
    //: %1 what went wrong, %2 what to do about it; both are whole sentences
    return tr("%1 %2").arg(sentence(error), advice(error)).trimmed();
}

}
