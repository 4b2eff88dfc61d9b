// SPDX-License-Identifier: MIT
#include "ui/pages/stores/stockform.h"

#include "core/base/refusal.h"
#include "ui/pages/panelfields.h"
#include "ui/text/errortext.h"
#include "ui/text/storestext.h"
#include "ui/theme/theme.h"
#include "ui/widgets/wraplabel.h"

#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace cradlepost {

namespace {

constexpr MovementKind kinds[] = {MovementKind::Receipt, MovementKind::Issue, MovementKind::CountCorrection,
    MovementKind::Wastage, MovementKind::ExpiredRemoved};
constexpr MovementReason lossReasons[]
    = {MovementReason::Damaged, MovementReason::Opened, MovementReason::ColdChain, MovementReason::Lost};
constexpr MovementReason countReasons[] = {MovementReason::NotWrittenDown, MovementReason::CountedWrong,
    MovementReason::Lost, MovementReason::NotKnown};
constexpr int whoLength = 12;

bool wantsReason(MovementKind kind)
{
    return kind == MovementKind::Wastage || kind == MovementKind::CountCorrection;
}

}

StockForm::StockForm(Ward& ward, QWidget* parent)
    : Sheet({}, parent)
    , m_ward(ward)
    , m_about(new WrapLabel({}, TextRole::Small))
    , m_kind(new QComboBox)
    , m_pieces(new QLineEdit)
    , m_piecesSaid(new WrapLabel({}, TextRole::Small))
    , m_lot(new QLineEdit)
    , m_expiry(new QLineEdit)
    , m_expirySaid(new WrapLabel({}, TextRole::Small))
    , m_reason(new QComboBox)
    , m_who(new QLineEdit)
    , m_whoSaid(new WrapLabel({}, TextRole::Small))
    , m_keep(new QPushButton(tr("Keep")))
    , m_said(new WrapLabel({}, TextRole::Small))
{
    m_kind->setObjectName(QStringLiteral("kindComboBox"));
    m_pieces->setObjectName(QStringLiteral("piecesEdit"));
    m_piecesSaid->setObjectName(QStringLiteral("piecesSaid"));
    m_lot->setObjectName(QStringLiteral("lotEdit"));
    m_lot->setMaxLength(static_cast<int>(maxLotLength));
    m_expiry->setObjectName(QStringLiteral("expiryEdit"));
    m_expiry->setPlaceholderText(QStringLiteral("2027-03-31"));
    m_expirySaid->setObjectName(QStringLiteral("expirySaid"));
    m_reason->setObjectName(QStringLiteral("reasonComboBox"));
    m_who->setObjectName(QStringLiteral("whoEdit"));
    m_who->setMaxLength(whoLength);
    m_whoSaid->setObjectName(QStringLiteral("whoSaid"));
    m_said->setObjectName(QStringLiteral("formSaid"));
    m_keep->setObjectName(QStringLiteral("keepMovementButton"));
    m_keep->setProperty("primary", true);
    m_about->setObjectName(QStringLiteral("shelfAbout"));
    m_about->setTone(Tone::Soft);
    content().addWidget(m_about);
    addField(tr("What happened"), m_kind);
    addField(tr("Pieces"), m_pieces, m_piecesSaid);
    addField(tr("Last day of use"), m_expiry, m_expirySaid);
    addField(tr("Lot number"), m_lot);
    m_reasonLabel = addField(tr("Why"), m_reason);
    addField(tr("Your initials"), m_who, m_whoSaid);
    content().addWidget(m_keep, 0, Qt::AlignLeft);
    content().addWidget(m_said);
    fillKinds();
    connect(m_kind, &QComboBox::currentIndexChanged, this, &StockForm::followKind);
    connect(m_keep, &QPushButton::clicked, this, &StockForm::keep);
    for (QLineEdit* edit : {m_pieces, m_lot, m_expiry, m_who})
        connect(edit, &QLineEdit::returnPressed, this, &StockForm::keep);
    setShelf(std::nullopt);
}

WrapLabel* StockForm::addField(const QString& name, QWidget* field, WrapLabel* below)
{
    WrapLabel* const label = cradlepost::addField(*this, name, field);
    m_fields.insert(m_fields.end(), {label, field});
    if (below != nullptr) {
        content().addWidget(below);
        say(below, {});
    }
    return label;
}

void StockForm::fillKinds()
{
    for (const MovementKind one : kinds)
        m_kind->addItem(StoresText::movement(one), static_cast<int>(one));
    m_kind->setCurrentIndex(1);
    fillReasons();
}

void StockForm::fillReasons()
{
    const auto fill = [this](const auto& reasons) {
        for (const MovementReason one : reasons)
            m_reason->addItem(StoresText::reason(one), static_cast<int>(one));
    };
    m_reason->clear();
    if (kind() == MovementKind::Wastage)
        fill(lossReasons);
    else
        fill(countReasons);
}

void StockForm::followKind()
{
    m_offered.reset();
    fillReasons();
    const bool shown = m_shelf && wantsReason(kind());
    m_reason->setVisible(shown);
    m_reasonLabel->setVisible(shown);
}

MovementKind StockForm::kind() const { return static_cast<MovementKind>(m_kind->currentData().toInt()); }

void StockForm::setShelf(const std::optional<ShelfRow>& shelf)
{
    const bool same = shelf && m_shelf && shelf->item.id == m_shelf->item.id;
    m_shelf = shelf;
    for (QWidget* field : m_fields)
        field->setVisible(shelf.has_value());
    m_keep->setVisible(shelf.has_value());
    setTitle(shelf ? qs(shelf->item.name) : tr("No shelf chosen"));
    const StoresText text(m_ward.language(), m_ward.times(), m_ward.now());
    m_about->setText(shelf ? text.shelfCourse(*shelf).join(QLatin1Char('\n')) : QString());
    m_about->setVisible(shelf.has_value());
    if (!same) {
        clearFields();
        say(m_said, {});
    }
    if (!m_who->hasFocus())
        m_who->setText(qs(m_ward.actor()));
    const bool withReason = shelf && wantsReason(kind());
    m_reason->setVisible(withReason);
    m_reasonLabel->setVisible(withReason);
}

void StockForm::clearFields()
{
    m_offered.reset();
    for (QLineEdit* edit : {m_pieces, m_lot, m_expiry})
        edit->clear();
    for (WrapLabel* said : {m_piecesSaid, m_expirySaid, m_whoSaid})
        say(said, {});
}

void StockForm::offer(const BookDifference& difference)
{
    m_kind->setCurrentIndex(2);
    clearFields();
    m_pieces->setText(QString::number(difference.correction.quantity));
    m_lot->setText(qs(difference.correction.lot));
    if (difference.correction.expiry)
        m_expiry->setText(qs(toIso(*difference.correction.expiry)));
    m_offered = difference.correction;
    m_reason->setFocus(Qt::OtherFocusReason);
}

void StockForm::focusPieces()
{
    m_pieces->setFocus(Qt::OtherFocusReason);
    m_pieces->selectAll();
}

void StockForm::say(WrapLabel* where, const QString& text)
{
    where->setTone(Tone::Warning);
    where->setText(text);
    where->setVisible(!text.isEmpty());
}

std::optional<StockMovement> StockForm::read()
{
    bool sound = false;
    const qlonglong pieces = m_pieces->text().trimmed().toLongLong(&sound);
    say(m_piecesSaid, sound ? QString() : tr("Give the pieces as a whole number."));
    const std::string date = m_expiry->text().trimmed().toStdString();
    const auto expiry = date.empty() ? Result<Date>(Date()) : dateFromIso(date);
    say(m_expirySaid, expiry ? QString() : tr("Write the date as year-month-day, 2027-03-31."));
    const QString who = m_who->text().trimmed();
    say(m_whoSaid, who.isEmpty() ? tr("Say who you are: your initials.") : QString());
    QLineEdit* const wrong = !sound ? m_pieces : !expiry ? m_expiry : who.isEmpty() ? m_who : nullptr;
    if (wrong != nullptr) {
        wrong->setFocus(Qt::OtherFocusReason);
        return std::nullopt;
    }
    StockMovement movement{.item = m_shelf->item.id, .kind = kind(), .at = m_ward.now(), .quantity = pieces};
    movement.lot = m_lot->text().trimmed().toStdString();
    if (!date.empty())
        movement.expiry = *expiry;
    if (wantsReason(movement.kind))
        movement.reason = static_cast<MovementReason>(m_reason->currentData().toInt());
    if (movement.kind != MovementKind::CountCorrection)
        return movement;
    movement.scope = !movement.lot.empty() ? CountScope::OneLot
        : movement.expiry                  ? CountScope::OneDate
                                           : CountScope::Everything;
    if (m_offered && m_offered->quantity == movement.quantity && m_offered->lot == movement.lot
        && m_offered->expiry == movement.expiry) {
        movement.at = m_offered->at; // as the round saw it: what went out since stays out
        movement.scope = m_offered->scope;
    }
    return movement;
}

void StockForm::tell(const Error& error)
{
    WrapLabel* where = m_said;
    if (error.refusal == refusal::lastDayMissing) {
        where = m_expirySaid;
        m_expiry->setFocus(Qt::OtherFocusReason);
    } else if (error.refusal == refusal::lotNumber) {
        m_lot->setFocus(Qt::OtherFocusReason);
    } else {
        if (error.refusal == refusal::pieces || error.refusal == refusal::bookHolds)
            where = m_piecesSaid;
        focusPieces();
    }
    say(where, ErrorText::told(error));
}

void StockForm::keep()
{
    if (!m_shelf)
        return;
    say(m_said, {});
    const auto movement = read();
    if (!movement)
        return;
    m_ward.setActor(m_who->text().trimmed().toStdString());
    const auto done = m_ward.store().moveStock(m_ward.unit(), {*movement}, m_ward.actor());
    if (!done)
        return tell(done.error());
    clearFields();
    say(m_said, tr("Kept."));
    m_said->setTone(Tone::Soft);
    focusPieces();
    m_ward.refresh();
}

}
