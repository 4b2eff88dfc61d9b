// SPDX-License-Identifier: MIT
// To look at, not a test: writes the sample report in each language into the folder it is given.
#include "tests/ui/report/samplereport.h"
#include "ui/theme/theme.h"

#include <cstdio>
#include <QApplication>
#include <QElapsedTimer>

using namespace cradlepost;
using namespace cradlepost::test;

int main(int argc, char** argv)
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication application(argc, argv);
    applyTheme(application, makeTheme(Scheme::Light));
    const QString folder = QString::fromLocal8Bit(argc > 1 ? argv[1] : ".");
    int failures = 0;
    for (const char* code : {"en", "hi", pseudoLanguage}) {
        const Language language{QString::fromLatin1(code)};
        const ReportDocument report = aReport(language.code());
        for (const QString& ending : reportEndings()) {
            QElapsedTimer timer;
            timer.start();
            const auto written
                = writeReport(report, itsTables(), folder + u"/month-" + language.code() + u'.' + ending);
            std::printf("%s %s %lld ms\n", code, qPrintable(ending), static_cast<long long>(timer.elapsed()));
            failures += written ? 0 : 1;
        }
    }
    const auto handOver = writeReport(aHandOver(), itsTables(), folder + QStringLiteral("/handover.pdf"));
    return handOver && failures == 0 ? 0 : 1;
}
