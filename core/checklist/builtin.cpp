// SPDX-License-Identifier: MIT
#include "core/checklist/reader.h"

#include <QFile>

/** A static library's resources are only linked in when asked for, and only from outside any namespace. */
static void initialiseChecklistResources() { Q_INIT_RESOURCE(checklists); }

namespace cradlepost {

namespace {

QString builtInPath(RoundKind use)
{
    switch (use) {
    case RoundKind::Shift:
    case RoundKind::Recheck:
    case RoundKind::SpotCheck:
        return QStringLiteral(":/checklists/shift-readiness.json");
    case RoundKind::PreBirth:
        return QStringLiteral(":/checklists/pre-birth.json");
    case RoundKind::AfterUse:
        return QStringLiteral(":/checklists/after-use.json");
    }
    return {};
}

}

std::string builtInChecklistText(RoundKind use)
{
    initialiseChecklistResources();
    QFile file(builtInPath(use));
    if (!file.open(QIODevice::ReadOnly))
        return {}; // reading it then fails as an empty document
    return file.readAll().toStdString();
}

Result<Checklist> builtInChecklist(RoundKind use) { return readChecklist(builtInChecklistText(use)); }

}
