// SPDX-License-Identifier: MIT
#include "ui/pages/setup/settings.h"

#include <QSettings>

namespace cradlepost {

namespace {
constexpr const char* schemeNames[] = {"system", "light", "dark"};
}

Settings loadSettings(const QString& file)
{
    const QSettings ini(file, QSettings::IniFormat);
    Settings settings;
    settings.language = ini.value(QLatin1String("language")).toString();
    const double scale = ini.value(QLatin1String("text-size"), 0.0).toDouble();
    settings.textScale = scale >= leastTextScale && scale <= mostTextScale ? scale : 0.0;
    const QString scheme = ini.value(QLatin1String("scheme")).toString();
    for (int i = 0; i < 3; ++i) {
        if (scheme == QLatin1String(schemeNames[i]))
            settings.scheme = static_cast<SchemeChoice>(i);
    }
    settings.unit = ini.value(QLatin1String("unit")).toString();
    settings.units = ini.value(QLatin1String("units")).toString();
    settings.visitWeights = ini.value(QLatin1String("visit-weights")).toString();
    settings.review = ini.value(QLatin1String("review")).toString();
    return settings;
}

void saveSettings(const QString& file, const Settings& settings)
{
    QSettings ini(file, QSettings::IniFormat);
    ini.setValue(QLatin1String("language"), settings.language);
    ini.setValue(QLatin1String("text-size"), settings.textScale);
    ini.setValue(QLatin1String("scheme"), QLatin1String(schemeNames[static_cast<int>(settings.scheme)]));
    ini.setValue(QLatin1String("unit"), settings.unit);
    ini.setValue(QLatin1String("units"), settings.units);
    ini.setValue(QLatin1String("visit-weights"), settings.visitWeights);
    ini.setValue(QLatin1String("review"), settings.review);
}

}
