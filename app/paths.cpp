// SPDX-License-Identifier: MIT
#include "app/paths.h"

#include <QDir>
#include <QStandardPaths>

namespace cradlepost {

QString dataFolder()
{
    const QString base = QStandardPaths::writableLocation(QStandardPaths::GenericDataLocation);
    QDir folder(base + QStringLiteral("/cradlepost"));
    folder.mkpath(QStringLiteral("."));
    return folder.path();
}

QString defaultDatabase() { return dataFolder() + QStringLiteral("/ward.cradlepost"); }

QString settingsFile()
{
    return QStandardPaths::writableLocation(QStandardPaths::GenericConfigLocation) + QStringLiteral("/cradlepost.ini");
}

QString logFile() { return dataFolder() + QStringLiteral("/cradlepost.log"); }

}
