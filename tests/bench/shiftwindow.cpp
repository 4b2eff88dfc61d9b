// SPDX-License-Identifier: MIT
// The program's own start, up to the first painted *This shift*: shiftwindow DATABASE
#include "app/stage.h"
#include "app/storeopening.h"
#include "tests/bench/firstpaint.h"
#include "ui/theme/fontset.h"

using namespace cradlepost;

int main(int argc, char** argv)
{
    FontReading fonts;
    const SystemClock clock;
    StoreOpening opening(argc > 1 ? argv[1] : "", clock, "sorrel-hill");
    QApplication application(argc, argv);
    auto store = opening.take();
    fonts.await();
    if (!store)
        return 1;
    Stage stage(application, **store, clock, QString(), {}, QStringLiteral("sorrel-hill"));
    stage.open();
    const bench::FirstPaint watch(stage.window());
    return QApplication::exec();
}
