// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

namespace cradlepost {

/** Folders of the user, made when they are missing. */
QString dataFolder();
QString defaultDatabase();
QString settingsFile();
QString logFile();

}
