// SPDX-License-Identifier: MIT
#pragma once

#include "ui/theme/theme.h"

#include <QString>

namespace cradlepost {

/** What this computer remembers of its user; loaded once and handed down. */
struct Settings
{
    QString language; ///< code; empty: as the system
    double textScale = 0.0; ///< 1..2; 0: as the system
    SchemeChoice scheme = SchemeChoice::FollowSystem;
    QString unit; ///< the ward last looked at
    QString units; ///< what *Units* showed last, see UnitsChoice
    QString visitWeights; ///< as weightsText; empty: as they come
    QString review; ///< what *Month* showed last, see ReviewChoice
    bool operator==(const Settings&) const = default;
};

/** From an ini file; what is missing or broken keeps its default. */
Settings loadSettings(const QString& file);
void saveSettings(const QString& file, const Settings& settings);

}
