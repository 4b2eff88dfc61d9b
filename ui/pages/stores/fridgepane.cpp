// SPDX-License-Identifier: MIT
#include "ui/pages/stores/fridgepane.h"

#include "ui/pages/stores/initialsedit.h"
#include "ui/text/errortext.h"
#include "ui/text/storestext.h"
#include "ui/theme/theme.h"
#include "ui/widgets/factsheet.h"
#include "ui/widgets/foldingrow.h"
#include "ui/widgets/sheet.h"
#include "ui/widgets/wraplabel.h"

#include <QLabel>
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
    , m_fact(new FactSheet)
    , m_about(new WrapLabel)
    , m_none(new WrapLabel(tr("No fridge is on the register of this unit.")))
    , m_celsius(new QLineEdit)
    , m_lowest(new QLineEdit)
    , m_highest(new QLineEdit)
    , m_who(new InitialsEdit(ward))
    , m_said(new WrapLabel({}, TextRole::Small))
    , m_form(makeForm())
{
    const Theme& theme = themeOf(*this);
    m_about->setObjectName(QStringLiteral("fridgeAbout"));
    auto* words = new QWidget;
    auto* left = new QVBoxLayout(words);
    left->setContentsMargins(0, 0, 0, 0);
    left->setSpacing(theme.space(Space::Apart));
    left->addWidget(m_none);
    left->addWidget(m_fact);
    left->addWidget(m_about);
    left->addStretch(1);
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
    m_celsius->setObjectName(QStringLiteral("celsiusEdit"));
    m_lowest->setObjectName(QStringLiteral("lowestEdit"));
    m_highest->setObjectName(QStringLiteral("highestEdit"));
    m_who->setObjectName(QStringLiteral("fridgeWhoEdit"));
    addField(tr("Reading now, °C"), m_celsius, *form);
    addField(tr("Lowest since the last reset, °C"), m_lowest, *form);
    addField(tr("Highest since the last reset, °C"), m_highest, *form);
    addField(tr("Your initials"), m_who, *form);
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

void FridgePane::addField(const QString& name, QLineEdit* field, QWidget& form)
{
    auto& content = static_cast<Sheet&>(form).content();
    field->setAccessibleName(name);
    auto* label = new QLabel(name);
    label->setFont(themeOf(*this).font(TextRole::Small));
    label->setBuddy(field);
    content.addWidget(label);
    content.addWidget(field);
    connect(field, &QLineEdit::returnPressed, this, &FridgePane::keep);
}

void FridgePane::display(const StoresView& view)
{
    const bool there = !view.fridges.empty();
    m_fridge = there ? view.fridges.front().device.id : std::string();
    for (QWidget* widget : {static_cast<QWidget*>(m_fact), static_cast<QWidget*>(m_about), m_form})
        widget->setVisible(there);
    m_none->setVisible(!there);
    if (!there)
        return;
    const StoresText text(m_ward.language(), m_ward.times(), m_ward.now());
    const FridgeRow& row = view.fridges.front();
    m_fact->setFact({.title = qs(row.device.label),
        .value = text.reading(row),
        .aside = text.fridgeLimits(),
        .progress = {},
        .lines = {text.fridge(row)}});
    m_about->setText(text.fridgeCourse(row, view).join(QLatin1Char('\n')));
}

Result<FridgeReading> FridgePane::read() const
{
    FridgeReading reading{.fridge = m_fridge, .at = m_ward.now(), .celsius = {}, .lowest = {}, .highest = {}};
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
    if (m_fridge.empty())
        return;
    const auto reading = read();
    m_said->setVisible(true);
    m_said->setTone(Tone::Warning);
    if (!reading) {
        m_said->setText(tr("Give the reading as a number, 4.5."));
        return;
    }
    if (!m_who->take()) {
        m_said->setText(tr("Say who you are: your initials."));
        return;
    }
    const auto done = m_ward.store().noteFridge(m_ward.unit(), *reading, m_ward.actor());
    if (!done) {
        m_said->setText(
            QStringLiteral("%1 (%2)").arg(ErrorText::advice(done.error()), qs(done.error().message)));
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
