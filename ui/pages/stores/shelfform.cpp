// SPDX-License-Identifier: MIT
#include "ui/pages/stores/shelfform.h"

#include "core/supply/shelfplan.h"
#include "ui/pages/panelfields.h"
#include "ui/pages/stores/initialsedit.h"
#include "ui/text/errortext.h"
#include "ui/theme/theme.h"
#include "ui/widgets/foldingrow.h"
#include "ui/widgets/wraplabel.h"

#include <algorithm>
#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QVBoxLayout>

namespace cradlepost {

namespace {
constexpr int longestName = 60;
constexpr int mostDays = 366;
constexpr int services[] = {800, 900, 950, 980, 990}; // thousandths
}

ShelfForm::ShelfForm(Ward& ward, QWidget* parent)
    : Sheet({}, parent)
    , m_ward(ward)
    , m_name(new QLineEdit)
    , m_service(new QComboBox)
    , m_fridge(new QComboBox)
    , m_expires(new QCheckBox(tr("Has a last day of use")))
    , m_frost(new QCheckBox(tr("Harmed by frost")))
    , m_retired(new QCheckBox(tr("No longer kept")))
    , m_who(new InitialsEdit(ward))
    , m_said(new WrapLabel({}, TextRole::Small))
{
    constexpr int most = static_cast<int>(mostPieces);
    m_name->setObjectName(QStringLiteral("shelfNameEdit"));
    m_name->setMaxLength(longestName);
    addField(*this, tr("What the ward calls it"), m_name);
    m_par = addNumber(tr("Fill up to, pieces"), "parSpinBox", 0, most);
    m_minimum = addNumber(tr("Order when it falls to"), "minimumSpinBox", 0, most);
    m_emergency = addNumber(tr("Never under"), "emergencySpinBox", 0, most);
    m_pack = addNumber(tr("Pieces in a pack of the store"), "packSpinBox", 1, most);
    m_days = addNumber(tr("Days between deliveries"), "daysSpinBox", 0, mostDays);
    m_days->setSpecialValueText(tr("as it came so far"));
    addChoices();
    m_who->setObjectName(QStringLiteral("shelfWhoEdit"));
    addField(*this, tr("Your initials"), m_who);
    addButtons();
    connect(m_name, &QLineEdit::returnPressed, this, &ShelfForm::keep);
    connect(m_who, &QLineEdit::returnPressed, this, &ShelfForm::keep);
}

QSpinBox* ShelfForm::addNumber(const QString& name, const char* objectName, int least, int most)
{
    auto* box = new QSpinBox;
    box->setRange(least, most);
    box->setObjectName(QLatin1String(objectName));
    box->setLocale(m_ward.language().locale());
    addField(*this, name, box);
    return box;
}

void ShelfForm::addChoices()
{
    m_service->setObjectName(QStringLiteral("serviceComboBox"));
    m_service->addItem(tr("as usual, in 95 of 100"), 0);
    for (const int service : services)
        m_service->addItem(tr("in %1 of 100").arg(service / 10), service);
    addField(*this, tr("Enough until the delivery"), m_service);
    m_fridge->setObjectName(QStringLiteral("shelfFridgeComboBox"));
    addField(*this, tr("Kept in"), m_fridge);
    m_expires->setObjectName(QStringLiteral("expiresCheckBox"));
    m_frost->setObjectName(QStringLiteral("frostCheckBox"));
    m_retired->setObjectName(QStringLiteral("retiredCheckBox"));
    for (QCheckBox* box : {m_expires, m_frost, m_retired})
        content().addWidget(box);
}

void ShelfForm::addButtons()
{
    auto* keepButton = new QPushButton(tr("Keep"));
    keepButton->setObjectName(QStringLiteral("keepShelfButton"));
    keepButton->setProperty("primary", true);
    auto* aside = new QPushButton(tr("Do not keep"));
    aside->setObjectName(QStringLiteral("leaveShelfButton"));
    auto* row = new FoldingRow;
    row->setSpacing(themeOf(*this).space(Space::Close));
    row->addWidget(keepButton);
    row->addWidget(aside);
    row->addWidget(new QWidget, 1);
    content().addWidget(row);
    m_said->setObjectName(QStringLiteral("shelfSaid"));
    m_said->setTone(Tone::Warning);
    content().addWidget(m_said);
    connect(keepButton, &QPushButton::clicked, this, &ShelfForm::keep);
    connect(aside, &QPushButton::clicked, this, [this] { Q_EMIT closed({}); });
}

void ShelfForm::open(const std::optional<StockItem>& item)
{
    m_item = item;
    const StockItem shown = item.value_or(StockItem{});
    setTitle(item ? tr("Change this shelf") : tr("A new shelf"));
    m_name->setText(qs(shown.name));
    m_par->setValue(static_cast<int>(shown.levels.par));
    m_minimum->setValue(static_cast<int>(shown.levels.minimum));
    m_emergency->setValue(static_cast<int>(shown.levels.emergency));
    m_pack->setValue(static_cast<int>(shown.packSize));
    m_days->setValue(shown.deliveryDays);
    m_service->setCurrentIndex(
        std::max(0, m_service->findData(static_cast<int>(shown.service.thousandths))));
    m_expires->setChecked(shown.expires);
    m_frost->setChecked(shown.harmedByFrost);
    m_retired->setChecked(shown.retired);
    m_retired->setVisible(item.has_value());
    fillFridges(shown.fridge);
    say({});
    m_name->setFocus(Qt::OtherFocusReason);
    m_name->selectAll();
}

void ShelfForm::fillFridges(const std::string& chosen)
{
    m_fridge->clear();
    m_fridge->addItem(tr("no fridge"), QString());
    if (const auto known = m_ward.store().equipmentRegister(m_ward.unit())) {
        for (const auto& [id, standing] : known->devices) {
            if (standing.device.kind == EquipmentKind::Fridge && standing.state() != EquipmentState::Retired)
                m_fridge->addItem(qs(standing.device.label), qs(id));
        }
    }
    if (m_fridge->findData(qs(chosen)) < 0)
        m_fridge->addItem(qs(chosen), qs(chosen)); // one that is no longer there
    m_fridge->setCurrentIndex(m_fridge->findData(qs(chosen)));
}

StockItem ShelfForm::read() const
{
    StockItem item = m_item.value_or(StockItem{});
    item.name = m_name->text().trimmed().toStdString();
    if (!m_item)
        item.id = shelfIdFor(item.name);
    item.at = m_ward.now();
    item.levels = {.par = m_par->value(), .minimum = m_minimum->value(), .emergency = m_emergency->value()};
    item.packSize = m_pack->value();
    item.deliveryDays = m_days->value();
    item.service = Decimal{m_service->currentData().toInt()};
    item.fridge = m_fridge->currentData().toString().toStdString();
    item.expires = m_expires->isChecked();
    item.harmedByFrost = m_frost->isChecked();
    item.retired = m_item && m_retired->isChecked();
    return item;
}

bool ShelfForm::isTaken(const std::string& id) const
{
    const auto items = m_ward.store().stockItems(m_ward.unit()).value_or(std::vector<StockItem>());
    return std::any_of(items.begin(), items.end(), [&](const StockItem& item) { return item.id == id; });
}

void ShelfForm::keep()
{
    const StockItem item = read();
    if (!m_item && !item.name.empty() && isTaken(item.id))
        return say(tr("There is a shelf of that name already: change that one."));
    if (!m_who->take())
        return say(tr("Say who you are: your initials."));
    const auto done = m_ward.store().describeStockItem(m_ward.unit(), item, m_ward.actor());
    if (!done)
        return say(ErrorText::told(done.error()));
    m_ward.refresh();
    Q_EMIT closed(item.id);
}

void ShelfForm::say(const QString& text)
{
    m_said->setText(text);
    m_said->setVisible(!text.isEmpty());
}

}
