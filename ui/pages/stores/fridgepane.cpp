// SPDX-License-Identifier: MIT
#include "ui/pages/stores/fridgepane.h"

#include "ui/pages/panelfields.h"
#include "ui/pages/stores/initialsedit.h"
#include "ui/text/errortext.h"
#include "ui/text/storestext.h"
#include "ui/theme/theme.h"
#include "ui/widgets/factsheet.h"
#include "ui/widgets/foldingrow.h"
#include "ui/widgets/sheet.h"
#include "ui/widgets/wraplabel.h"

#include <algorithm>
#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace cradlepost {

namespace {
constexpr int formWidth = 330;
}

FridgePane::FridgePane(Ward& ward, QWidget* parent)
    : QWidget(parent)
    , m_ward(ward)
    , m_none(new WrapLabel(tr("No fridge is on the register of this unit.")))
    , m_which(new QComboBox)
    , m_celsius(new QLineEdit)
    , m_lowest(new QLineEdit)
    , m_highest(new QLineEdit)
    , m_who(new InitialsEdit(ward))
    , m_said(new WrapLabel({}, TextRole::Small))
    , m_form(makeForm())
{
    const Theme& theme = themeOf(*this);
    auto* words = new QWidget;
    m_column = new QVBoxLayout(words);
    m_column->setContentsMargins(0, 0, 0, 0);
    m_column->setSpacing(theme.space(Space::Apart));
    m_column->addWidget(m_none);
    m_column->addStretch(1);
    auto* row = new FoldingRow;
    row->setSpacing(theme.space(Space::Wide));
    row->addWidget(words, 1);
    row->addWidget(m_form, 0, Qt::AlignTop);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(row);
    setFocusProxy(m_celsius);
}

QWidget* FridgePane::makeForm()
{
    auto* form = new Sheet(tr("Write down a reading"));
    const Theme& theme = themeOf(*this);
    form->setMinimumWidth(theme.px(formWidth));
    form->setMaximumWidth(theme.px(formWidth));
    m_which->setObjectName(QStringLiteral("whichFridgeComboBox"));
    m_celsius->setObjectName(QStringLiteral("celsiusEdit"));
    m_lowest->setObjectName(QStringLiteral("lowestEdit"));
    m_highest->setObjectName(QStringLiteral("highestEdit"));
    m_who->setObjectName(QStringLiteral("fridgeWhoEdit"));
    m_whichLabel = addField(*form, tr("Which fridge"), m_which);
    addField(*form, tr("Reading now, °C"), m_celsius);
    addField(*form, tr("Lowest since the last reset, °C"), m_lowest);
    addField(*form, tr("Highest since the last reset, °C"), m_highest);
    addField(*form, tr("Your initials"), m_who);
    for (QLineEdit* field : {m_celsius, m_lowest, m_highest, static_cast<QLineEdit*>(m_who)})
        connect(field, &QLineEdit::returnPressed, this, &FridgePane::keep);
    auto* button = new QPushButton(tr("Keep the reading"));
    button->setObjectName(QStringLiteral("keepReadingButton"));
    button->setProperty("primary", true);
    connect(button, &QPushButton::clicked, this, &FridgePane::keep);
    m_said->setObjectName(QStringLiteral("celsiusSaid"));
    form->content().addWidget(button, 0, Qt::AlignLeft);
    form->content().addWidget(m_said);
    m_said->setVisible(false);
    return form;
}

void FridgePane::display(const StoresView& view)
{
    m_none->setVisible(view.fridges.empty());
    m_form->setVisible(!view.fridges.empty());
    fillChoice(view);
    showFridges(view);
}

/** The one that was chosen stays so; one alone needs no choice. */
void FridgePane::fillChoice(const StoresView& view)
{
    const QVariant before = m_which->currentData();
    m_which->clear();
    for (const FridgeRow& row : view.fridges)
        m_which->addItem(qs(row.device.label), qs(row.device.id));
    m_which->setCurrentIndex(std::max(0, m_which->findData(before)));
    m_which->setVisible(view.fridges.size() > 1);
    m_whichLabel->setVisible(view.fridges.size() > 1);
}

void FridgePane::showFridges(const StoresView& view)
{
    while (m_words.size() < view.fridges.size()) {
        const Words words{.fact = new FactSheet, .about = new WrapLabel};
        words.about->setObjectName(QStringLiteral("fridgeAbout"));
        m_column->insertWidget(m_column->count() - 1, words.fact);
        m_column->insertWidget(m_column->count() - 1, words.about);
        m_words.push_back(words);
    }
    const StoresText text(m_ward.language(), m_ward.times(), m_ward.now());
    for (std::size_t at = 0; at < m_words.size(); ++at) {
        const bool there = at < view.fridges.size();
        m_words[at].fact->setVisible(there);
        m_words[at].about->setVisible(there);
        if (!there)
            continue;
        const FridgeRow& row = view.fridges[at];
        m_words[at].fact->setFact({.title = qs(row.device.label),
            .value = text.reading(row),
            .aside = text.fridgeLimits(),
            .progress = {},
            .lines = text.fridgeToDo(row)});
        m_words[at].about->setText(text.fridgeCourse(row, view).join(QLatin1Char('\n')));
    }
}

Result<FridgeReading> FridgePane::read() const
{
    FridgeReading reading{.fridge = m_which->currentData().toString().toStdString(),
        .at = m_ward.now(),
        .celsius = {},
        .lowest = {},
        .highest = {}};
    const auto celsius = Decimal::parse(m_celsius->text().trimmed().toStdString());
    if (!celsius)
        return tl::unexpected(celsius.error());
    reading.celsius = *celsius;
    for (const auto& [field, value] :
        {std::pair(m_lowest, &reading.lowest), std::pair(m_highest, &reading.highest)}) {
        const std::string typed = field->text().trimmed().toStdString();
        if (typed.empty())
            continue;
        const auto parsed = Decimal::parse(typed);
        if (!parsed)
            return tl::unexpected(parsed.error());
        *value = *parsed;
    }
    return reading;
}

void FridgePane::keep()
{
    if (m_which->count() == 0)
        return;
    const auto reading = read();
    m_said->setVisible(true);
    m_said->setTone(Tone::Warning);
    if (!reading) {
        m_said->setText(tr("Give each reading as a number, for example 4.5."));
        return;
    }
    if (!m_who->take()) {
        m_said->setText(tr("Say who you are: your initials."));
        return;
    }
    const auto done = m_ward.store().noteFridge(m_ward.unit(), *reading, m_ward.actor());
    if (!done) {
        m_said->setText(ErrorText::told(done.error()));
        return;
    }
    m_said->setTone(Tone::Soft);
    m_said->setText(tr("Kept."));
    for (QLineEdit* field : {m_celsius, m_lowest, m_highest})
        field->clear();
    m_celsius->setFocus(Qt::OtherFocusReason);
    m_ward.refresh();
}

}
