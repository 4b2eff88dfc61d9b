// SPDX-License-Identifier: MIT
#pragma once

#include <cstdio>
#include <cstring>
#include <QCoreApplication>
#include <QEvent>
#include <QTimer>
#include <QWidget>

namespace cradlepost::bench {

/** Resident memory of this process in KiB, from /proc. */
inline long residentKib()
{
    std::FILE* status = std::fopen("/proc/self/status", "r");
    char line[256];
    long kib = 0;
    while (status != nullptr && std::fgets(line, sizeof line, status) != nullptr) {
        if (std::strncmp(line, "VmRSS:", 6) == 0)
            std::sscanf(line + 6, "%ld", &kib);
    }
    if (status != nullptr)
        std::fclose(status);
    return kib;
}

/** Says so on standard output and ends the program once the window has painted for the first time. */
class FirstPaint : public QObject
{
public:
    explicit FirstPaint(QWidget& window)
        : QObject(&window)
    {
        window.installEventFilter(this);
    }

protected:
    bool eventFilter(QObject* watched, QEvent* event) override
    {
        if (event->type() == QEvent::Paint && !m_seen) {
            m_seen = true;
            // After this event the whole window is on the screen.
            QTimer::singleShot(0, this, [] {
                std::printf("%ld\n", residentKib());
                std::fflush(stdout);
                QCoreApplication::exit();
            });
        }
        return QObject::eventFilter(watched, event);
    }

private:
    bool m_seen = false;
};

}
