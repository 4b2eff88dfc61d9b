// SPDX-License-Identifier: MIT
#include "core/store/stationplace.h"

#include <QCryptographicHash>
#include <QDir>
#include <QStandardPaths>

namespace cradlepost {

std::string besideOf(const Database& database)
{
    if (database.dialect() == Dialect::Sqlite)
        return database.path();
    const QDir folder(QStandardPaths::writableLocation(QStandardPaths::GenericDataLocation)
        + QStringLiteral("/cradlepost"));
    if (!folder.mkpath(QStringLiteral(".")))
        refuse(ErrorCode::ReadOnly, "folder " + folder.path().toStdString() + " cannot be made",
            "Check the rights of the user's data folder.");
    // Whoever logs in writes for the same station.
    const std::string& shown = database.path();
    const std::size_t user = shown.find('@');
    const std::size_t from = user == std::string::npos ? shown.find("//") + 2 : user + 1;
    QByteArray where = QByteArray::fromStdString(shown.substr(from));
    // One database may hold several districts; the server's usual schema goes without saying.
    if (const std::string schema = database.schema(); schema != "public")
        where += '#' + QByteArray::fromStdString(schema);
    const QByteArray name = QCryptographicHash::hash(where, QCryptographicHash::Sha256).toHex().left(16);
    return folder.filePath(QStringLiteral("server-") + QString::fromLatin1(name)).toStdString();
}

}
