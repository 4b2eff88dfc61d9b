// SPDX-License-Identifier: MIT
// The program's own start, up to the first painted *This shift*: shiftwindow DATABASE
#include "app/storeopening.h"
#include "app/windowkeeper.h"
#include "tests/bench/firstpaint.h"
#include "ui/theme/fontset.h"

using namespace cradlepost;

int main(int argc, char** argv)
{
    FontReading fonts;
    const SystemClock clock;
    StoreOpening opening(argc > 1 ? argv[1] : "", clock, "sorrel-hill");
    QApplication application(argc, argv);
    fonts.await();
    WindowKeeper keeper(application, QString(), {}, QStringLiteral("sorrel-hill"));
    auto store = opening.take();
    if (!store)
        return 1;
    keeper.open(**store, clock);
    const bench::FirstPaint watch(keeper.window());
    return QApplication::exec();
}
