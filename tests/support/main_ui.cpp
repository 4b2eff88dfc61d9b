// SPDX-License-Identifier: MIT
#define DOCTEST_CONFIG_IMPLEMENT
#include <doctest/doctest.h>

#include "ui/theme/theme.h"

#include <cstdio>
#include <QApplication>

namespace {
/// The offscreen platform says this for every window; it means nothing.
constexpr char harmless[] = "This plugin does not support propagateSizeHints()";

void passOn(QtMsgType /*type*/, const QMessageLogContext& /*context*/, const QString& message)
{
    if (message != QLatin1String(harmless))
        std::fprintf(stderr, "%s\n", qPrintable(message));
}
}

/// Tests of windows need no display: without a platform asked for, they run offscreen.
int main(int argc, char** argv)
{
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    qInstallMessageHandler(passOn);
    QApplication application(argc, argv);
    QApplication::setEffectEnabled(Qt::UI_AnimateMenu, false);
    cradlepost::applyTheme(application, cradlepost::makeTheme(cradlepost::Scheme::Light));
    doctest::Context context(argc, argv);
    return context.run();
}
