// SPDX-License-Identifier: MIT
#pragma once

#include "tests/support/builders.h"
#include "ui/pages/round/cards/itemcard.h"
#include "ui/pages/round/roundpage.h"
#include "ui/pages/round/walkinhand.h"
#include "ui/pages/round/walkpane.h"

#include <QTest>

namespace cradlepost::test {

/** Keys as a person presses them: each goes to whatever has the keyboard. */
void press(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier);
void type(const QString& text);
/** Lets what is queued happen. */
void settle();

/** The page of the round over a real store, at the clock's 19:10 of 24 Nov 2026 in Sorrel Hill. */
class RoundBench
{
public:
    explicit RoundBench(const QString& language = QStringLiteral("en"), QSize size = {1254, 716});

    /** A page of its own over the same store, as after a restart; the old one is gone. */
    void restart();
    /** The rows of the store's chain that are rounds of this shift. */
    [[nodiscard]] std::vector<SavedRound> recorded() const;
    [[nodiscard]] std::vector<Draft> drafts() const { return must(store->drafts("sorrel-hill")); }

    template <class T = QWidget> [[nodiscard]] T& find(const char* name) const
    {
        T* found = page->findChild<T*>(QLatin1String(name));
        if (found == nullptr)
            throw std::runtime_error(std::string("no widget named ") + name);
        return *found;
    }
    /** The card of an item; its section is opened. */
    [[nodiscard]] ItemCard& card(const std::string& item) const;
    /** The keyboard at that card. */
    ItemCard& at(const std::string& item) const;
    [[nodiscard]] const Answer& answer(const std::string& item) const;
    [[nodiscard]] const Checklist& checklist() const { return page->hand()->checklist(); }
    [[nodiscard]] std::size_t position(const std::string& item) const
    {
        return checklist().position(item).value();
    }
    /** The item whose card has the keyboard. */
    [[nodiscard]] std::string current() const;

    TempDir dir;
    FixedClock clock;
    Language language;
    std::unique_ptr<Store> store;
    std::unique_ptr<Ward> ward;
    std::unique_ptr<RoundPage> page;

private:
    QSize m_size;
};

}
