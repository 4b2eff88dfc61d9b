// SPDX-License-Identifier: MIT
#pragma once

#include "tests/support/builders.h"
#include "ui/widgets/actiontable.h"
#include "ui/widgets/wraplabel.h"
#include "ui/window/mainwindow.h"

#include <doctest/doctest.h>
#include <QApplication>
#include <QTest>

namespace cradlepost::test {

/** 24 November 2026, 14:00 at Sorrel Hill. */
inline constexpr Instant afternoon = std::chrono::sys_days(std::chrono::year(2026) / 11 / 24)
    + std::chrono::hours(8) + std::chrono::minutes(30);

inline std::vector<Added> twoWarmers()
{
    std::vector<Added> warmers;
    for (const auto& [id, label] : {std::pair("warmer-1", "Warmer 1"), std::pair("warmer-2", "Warmer 2")})
        warmers.push_back({.device = {.id = id, .kind = EquipmentKind::Warmer, .label = label}});
    return warmers;
}

/** The real window on a real store: Sorrel Hill, its devices, "A. T." in charge. */
struct WardWindow
{
    /** In a file of its own, or where `address` says. */
    explicit WardWindow(Instant begin = afternoon, const std::vector<Added>& devices = twoWarmers(),
        const std::string& address = {}, const QString& languageCode = QStringLiteral("en"))
        : clock(begin)
        , store(aStore(address.empty() ? folder.file("ward.db") : address, clock))
        , language(languageCode)
    {
        for (const Added& added : devices)
            must(store->noteEquipment("sorrel-hill",
                {{.device = added.device.id, .at = clock.now(), .deed = added}}, "A. T."));
    }

    /** Saves the round of this shift, finished now. */
    RecordId walk(const std::vector<std::string>& gaps = {})
    {
        const Checklist checklist = must(store->checklist("shift-readiness", 1));
        RoundBuilder round = aRound(checklist);
        round.on(std::chrono::year(2026) / 11 / 24).finishedAt(clock.now());
        for (const std::string& item : gaps)
            round.withGap(item);
        return must(store->saveRound("sorrel-hill", round.done(), "A. T."));
    }

    void open()
    {
        window = std::make_unique<MainWindow>(*store, clock, language, Settings{});
        window->resize(1366, 768);
        window->ward().setActor("A. T.");
        window->show();
        window->activateWindow();
        REQUIRE(QTest::qWaitForWindowActive(window.get()));
        settle();
    }
    static void settle()
    {
        for (int i = 0; i < 4; ++i)
            QApplication::processEvents();
    }
    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier) const
    {
        QWidget* now = QApplication::focusWidget();
        QTest::keyClick(now != nullptr ? now : window.get(), key, modifiers);
        settle();
    }
    void type(const QString& text) const
    {
        for (const QChar letter : text)
            press(letter == QLatin1Char('\n') ? Qt::Key_Return
                                              : static_cast<Qt::Key>(letter.toUpper().unicode()));
    }
    /** A field filled anew with real keys, as whoever fills in a form does. */
    void fill(const char* field, const QString& text) const
    {
        auto& edit = find(field);
        REQUIRE(edit.isVisible());
        edit.setFocus();
        press(Qt::Key_A, Qt::ControlModifier);
        press(Qt::Key_Delete);
        QTest::keyClicks(QApplication::focusWidget(), text);
        settle();
    }
    /** A button, with Space. */
    void push(const char* button) const
    {
        find(button).setFocus();
        press(Qt::Key_Space);
    }
    template <class T = QWidget> T& find(const char* name) const
    {
        T* found = window->findChild<T*>(QLatin1String(name));
        if (found == nullptr)
            throw std::runtime_error(std::string("no widget named ") + name);
        return *found;
    }
    [[nodiscard]] QString text(const char* name) const { return find<WrapLabel>(name).text(); }
    [[nodiscard]] QString row(const char* table, int index) const
    {
        return find<ActionTable>(table).itemText(index);
    }
    void tick(std::chrono::milliseconds time)
    {
        clock.advance(time);
        window->ward().refresh();
        settle();
    }

    TempDir folder;
    FixedClock clock;
    std::unique_ptr<Store> store;
    Language language;
    std::unique_ptr<MainWindow> window;
};

}
