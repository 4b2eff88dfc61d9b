// SPDX-License-Identifier: MIT
#include "tests/ui/pages/round/roundbench.h"

#include <QApplication>

namespace cradlepost::test {

namespace {
Instant tenPastSeven()
{
    const auto zone = must(TimeZone::named(aUnit().zone));
    return zone.toInstant(
        {std::chrono::year(2026) / 11 / 24, std::chrono::hours(19) + std::chrono::minutes(10)});
}

QWidget& keyboard()
{
    QWidget* now = QApplication::focusWidget();
    if (now == nullptr)
        throw std::runtime_error("nothing has the keyboard");
    return *now;
}
}

void press(Qt::Key key, Qt::KeyboardModifiers modifiers)
{
    QTest::keyClick(&keyboard(), key, modifiers);
    settle();
}

void type(const QString& text)
{
    for (const QChar c : text) {
        QTest::keyClick(&keyboard(), c.toLatin1());
        settle();
    }
}

void settle()
{
    for (int i = 0; i < 3; ++i)
        QApplication::processEvents();
}

RoundBench::RoundBench(const QString& code, QSize size)
    : clock(tenPastSeven())
    , language(code)
    , store(aStore(dir.file("ward.db"), clock))
    , m_size(size)
{
    for (const RoundKind use : {RoundKind::PreBirth, RoundKind::AfterUse})
        must(store->adopt("sorrel-hill", anAdoption(use), "AB"));
    restart();
}

void RoundBench::restart()
{
    page.reset();
    ward = std::make_unique<Ward>(*store, clock, language, "sorrel-hill");
    ward->refresh();
    page = std::make_unique<RoundPage>(*ward);
    page->resize(m_size);
    page->show();
    page->activateWindow();
    static_cast<void>(QTest::qWaitForWindowActive(page.get()));
    page->setFocus();
    settle();
}

std::vector<SavedRound> RoundBench::recorded() const
{
    return must(store->roundsOfShift("sorrel-hill", ward->view()->shift.slot()));
}

ItemCard& RoundBench::card(const std::string& item) const
{
    ItemCard* card = page->walkPane()->showItem(position(item));
    settle();
    return *card;
}

ItemCard& RoundBench::at(const std::string& item) const
{
    ItemCard& one = card(item);
    one.takeFocus();
    settle();
    return one;
}

const Answer& RoundBench::answer(const std::string& item) const
{
    return page->hand()->walk().answer(position(item));
}

std::string RoundBench::current() const
{
    for (const ItemCard* one : page->findChildren<ItemCard*>()) {
        const QWidget* now = QApplication::focusWidget();
        if (now == one || one->isAncestorOf(now))
            return one->item().id;
    }
    return {};
}

}
