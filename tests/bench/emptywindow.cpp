// SPDX-License-Identifier: MIT
// The peer of the start-up figure: a Qt Widgets program that shows an empty window of the same size.
#include "tests/bench/firstpaint.h"

#include <QApplication>

int main(int argc, char** argv)
{
    QApplication application(argc, argv);
    QWidget window;
    window.resize(1366, 768);
    const cradlepost::bench::FirstPaint watch(window);
    window.showMaximized();
    return QApplication::exec();
}
