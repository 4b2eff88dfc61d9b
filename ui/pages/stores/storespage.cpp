// SPDX-License-Identifier: MIT
#include "ui/pages/stores/storespage.h"

#include "core/supply/shelfplan.h"
#include "ui/pages/stores/devicespane.h"
#include "ui/pages/stores/fridgepane.h"
#include "ui/pages/stores/shelvespane.h"
#include "ui/text/errortext.h"
#include "ui/text/storestext.h"
#include "ui/theme/theme.h"
#include "ui/widgets/choicebutton.h"
#include "ui/widgets/wraplabel.h"

#include <QButtonGroup>
#include <QHBoxLayout>
#include <QShortcut>

namespace cradlepost {

StoresPage::StoresPage(Ward& ward, QWidget* parent)
    : QWidget(parent)
    , m_ward(ward)
    , m_answer(new WrapLabel({}, TextRole::Finding))
    , m_sentence(new WrapLabel({}, TextRole::Lead))
    , m_choice(new QButtonGroup(this))
    , m_shelves(new ShelvesPane(ward))
    , m_devices(new DevicesPane(ward))
    , m_fridge(new FridgePane(ward))
{
    const Theme& theme = themeOf(*this);
    auto* page = new QVBoxLayout(this);
    page->setContentsMargins(theme.space(Space::Wide), theme.space(Space::Apart), theme.space(Space::Wide),
        theme.space(Space::Apart));
    page->setSpacing(theme.space(Space::Near));
    m_answer->setWeight(TextWeight::SemiBold);
    m_answer->setObjectName(QStringLiteral("storesAnswer"));
    m_sentence->setObjectName(QStringLiteral("storesSentence"));
    page->addWidget(m_answer);
    page->addWidget(m_sentence);
    page->addWidget(makeChoice());
    for (QWidget* pane :
        {static_cast<QWidget*>(m_shelves), static_cast<QWidget*>(m_devices), static_cast<QWidget*>(m_fridge)})
        page->addWidget(pane);
    page->addStretch(1);
    open(0);
    connect(&m_ward, &Ward::changed, this, &StoresPage::refresh);
    refresh();
}

QWidget* StoresPage::makeChoice()
{
    auto* holder = new QWidget;
    auto* row = new QHBoxLayout(holder);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(themeOf(*this).space(Space::Close));
    m_choice->setExclusive(true);
    int pane = 0;
    for (const auto& [name, objectName] : {std::pair(tr("Shelves"), "shelvesButton"),
             std::pair(tr("Devices"), "devicesButton"), std::pair(tr("Fridge"), "fridgeButton")}) {
        const QKeySequence keys(Qt::CTRL | static_cast<Qt::Key>(Qt::Key_1 + pane));
        auto* button = new ChoiceButton(name, keys.toString(QKeySequence::NativeText));
        button->setObjectName(QLatin1String(objectName));
        button->setCheckable(true);
        m_choice->addButton(button, pane);
        row->addWidget(button);
        auto* shortcut = new QShortcut(keys, this);
        connect(shortcut, &QShortcut::activated, this, [this, pane] { open(pane); });
        ++pane;
    }
    row->addStretch(1);
    connect(m_choice, &QButtonGroup::idClicked, this, &StoresPage::open);
    return holder;
}

void StoresPage::open(int pane)
{
    m_choice->button(pane)->setChecked(true);
    QWidget* const panes[] = {m_shelves, m_devices, m_fridge};
    for (int i = 0; i < 3; ++i)
        panes[i]->setVisible(i == pane);
    if (isVisible())
        panes[pane]->setFocus(Qt::OtherFocusReason);
}

/** Read when it is looked at: the ward changes more often than anybody opens the stores. */
void StoresPage::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    if (m_stale)
        refresh();
}

void StoresPage::refresh()
{
    m_stale = !isVisible() && m_read;
    if (m_stale || !m_ward.view())
        return;
    auto view = storesView(m_ward.store(), *m_ward.view(), m_ward.now());
    if (!view) {
        m_answer->setText(ErrorText::sentence(view.error()));
        m_sentence->setText(ErrorText::advice(view.error()));
        return;
    }
    m_read = true;
    for (ShelfRow& row : view->shelves)
        row.item.name = shelfName(
            row.item.name, m_ward.view()->adopted.checklist, m_ward.language().code().toStdString())
                            .value_or(row.item.name);
    const StoresText text(m_ward.language(), m_ward.times(), m_ward.now());
    m_answer->setText(text.answer(*view));
    const bool out = !view->shelves.empty() && view->shelves.front().usable == 0;
    m_answer->setTone(out ? Tone::Warning : Tone::Ink);
    const QString more = text.sentence(*view);
    m_sentence->setText(more);
    m_sentence->setVisible(!more.isEmpty());
    m_shelves->display(*view);
    m_devices->display(*view);
    m_fridge->display(*view);
}

}
