// SPDX-License-Identifier: MIT
#include "ui/pages/round/cards/itemcard.h"

#include "ui/pages/round/cards/itemtitle.h"
#include "ui/pages/round/cards/reasonrow.h"
#include "ui/text/reasontext.h"
#include "ui/text/wardtext.h"
#include "ui/theme/plate.h"
#include "ui/theme/theme.h"
#include "ui/widgets/choicebutton.h"
#include "ui/widgets/foldingrow.h"
#include "ui/widgets/wraplabel.h"

#include <QApplication>
#include <QMouseEvent>
#include <QPainter>
#include <QVBoxLayout>

namespace cradlepost {

namespace {
Mark markOf(const Item& item, Outcome outcome)
{
    switch (outcome) {
    case Outcome::Met:
        return Mark::Met;
    case Outcome::Gap:
        return item.severity == Severity::Critical ? Mark::GapCritical : Mark::Gap;
    case Outcome::DoesNotApply:
        return Mark::DoesNotApply;
    case Outcome::NotChecked:
        break;
    }
    return Mark::NotChecked;
}
}

ItemCard::ItemCard(const Item& item, const CardScene& scene, QWidget* parent)
    : QWidget(parent)
    , m_item(item)
    , m_scene(scene)
    , m_editor(makeEditor(item, scene, nullptr))
    , m_mark(new OutcomeMark(Mark::NotChecked))
    , m_title(new ItemTitle(scene.language.wording(item.label)))
    , m_help(new WrapLabel({}, TextRole::Small))
    , m_message(new WrapLabel({}, TextRole::Small))
    , m_reasons(new ReasonRow)
    , m_gap(makeButton(m_editor->minusLabel(), QStringLiteral("−"), "gapButton"))
{
    setObjectName(QStringLiteral("card-%1").arg(qs(item.id)));
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    if (m_editor->field() == nullptr)
        setFocusPolicy(Qt::StrongFocus);
    if (item.mayNotApply)
        m_notApplying = makeButton(tr("Does not apply"), QStringLiteral("/"), "doesNotApplyButton");
    if (item.severity == Severity::Critical)
        m_title->setAside(WardText::severity(item.severity));
    build();
    watch();
    setAnswer(NotChecked{}, {});
}

/// Its fields go after it, and a field that goes with the keyboard in it moves the focus once more.
ItemCard::~ItemCard() { disconnect(qApp, nullptr, this, nullptr); }

ChoiceButton* ItemCard::makeButton(const QString& text, const QString& key, const char* name)
{
    auto* button = new ChoiceButton(text, key);
    button->setObjectName(QLatin1String(name));
    button->setFocusPolicy(Qt::NoFocus); // the card has the keyboard; the button shows its key
    return button;
}

void ItemCard::build()
{
    const Theme& theme = themeOf(*this);
    auto* column = new QVBoxLayout(this);
    const int near = theme.space(Space::Near);
    column->setContentsMargins(
        theme.space(Space::Apart), theme.space(Space::Close), near, theme.space(Space::Close));
    column->setSpacing(theme.space(Space::Close));
    auto* row = new FoldingRow;
    row->setSpacing(near);
    row->addWidget(makeHead(), 1, Qt::AlignVCenter);
    row->addWidget(makeSide());
    column->addWidget(row);
    if (m_editor->spreads())
        column->addWidget(m_editor);
    column->addWidget(m_message);
    column->addWidget(m_reasons);
    m_message->setObjectName(QStringLiteral("cardMessage"));
    m_message->hide();
    m_reasons->hide();
    m_help->hide();
}

QWidget* ItemCard::makeSide()
{
    auto* side = new FoldingRow;
    side->setSpacing(themeOf(*this).space(Space::Close));
    side->addWidget(new WrapLabel, 1); // keeps the rest at the trailing side, in line with other cards
    if (m_editor->beside() != nullptr)
        side->addWidget(m_editor->beside(), 0, Qt::AlignVCenter);
    if (m_notApplying != nullptr)
        side->addWidget(m_notApplying, 0, Qt::AlignVCenter);
    if (!m_editor->spreads())
        side->addWidget(m_editor, 0, Qt::AlignVCenter);
    side->addWidget(m_gap, 0, Qt::AlignVCenter);
    return side;
}

QWidget* ItemCard::makeHead()
{
    const Theme& theme = themeOf(*this);
    auto* head = new QWidget;
    auto* row = new QHBoxLayout(head);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(theme.space(Space::Near));
    auto* words = new QVBoxLayout;
    words->setSpacing(2);
    words->addWidget(m_title);
    words->addWidget(m_help);
    m_help->setTone(Tone::Soft);
    row->addWidget(m_mark, 0, Qt::AlignVCenter);
    row->addLayout(words, 1);
    return head;
}

void ItemCard::watch()
{
    installEventFilter(this);
    const auto fields = findChildren<QWidget*>();
    for (QWidget* one : fields) {
        if (one->focusPolicy() != Qt::NoFocus)
            one->installEventFilter(this);
    }
    connect(qApp, &QApplication::focusChanged, this,
        [this](QWidget* /*old*/, QWidget* now) { followFocus(now); });
    connect(m_editor, &AnswerEditor::given, this, &ItemCard::given);
    connect(m_editor, &AnswerEditor::passedOn, this, [this] { Q_EMIT moveWanted(CardMove::NextOpen); });
    connect(m_editor, &AnswerEditor::gapWanted, this, [this] {
        m_editor->setAnswer(m_answer, {});
        openReasons();
    });
    connect(m_editor, &AnswerEditor::edited, this, [this] {
        say({}, false);
        showHelp();
        m_gap->setText(m_editor->minusLabel());
    });
    connect(m_gap, &ChoiceButton::clicked, this, [this] {
        m_gap->setChecked(std::holds_alternative<GapFound>(m_answer));
        const bool was = m_active; // the button says what it does only on the card one is at
        takeFocus(Qt::MouseFocusReason);
        was ? minus() : openReasons();
    });
    if (m_notApplying != nullptr)
        connect(m_notApplying, &ChoiceButton::clicked, this, [this] {
            m_notApplying->setChecked(std::holds_alternative<DoesNotApply>(m_answer));
            doesNotApply();
        });
    connect(m_reasons, &ReasonRow::clicked, this, [this](GapReason reason) { acceptReason(reason, true); });
}

void ItemCard::setAnswer(const Answer& answer, const Judgement& judgement)
{
    // Choosing among reasons and going on with a function test are one change, not many.
    const bool sameKind = answer.index() == m_answer.index()
        && (std::holds_alternative<GapFound>(answer) || std::holds_alternative<StepsDone>(answer));
    if (answer != m_answer && isChecked(m_answer) && !sameKind)
        m_before = m_answer;
    m_answer = answer;
    m_editor->setAnswer(answer, judgement);
    m_gap->setChecked(std::holds_alternative<GapFound>(answer));
    m_gap->setText(m_editor->minusLabel());
    if (m_notApplying != nullptr)
        m_notApplying->setChecked(std::holds_alternative<DoesNotApply>(answer));
    say({}, false);
    showOutcome(judgement);
    showHelp();
}

void ItemCard::tick(const Judgement& judgement)
{
    m_editor->tick(judgement);
    showOutcome(judgement);
}

void ItemCard::showOutcome(const Judgement& judgement)
{
    m_mark->setMark(markOf(m_item, judgement.outcome));
    QString finding;
    // What is warming says so beside its field, with the minutes to go.
    if (judgement.outcome == Outcome::Gap && judgement.reason
        && judgement.reason->code != ReasonCode::Warming)
        finding = ReasonText(m_scene.language).why(*judgement.reason, &m_item);
    m_title->setFinding(finding);
    nameIt(judgement);
}

void ItemCard::nameIt(const Judgement& judgement)
{
    const QString limits = ReasonText(m_scene.language).limits(m_item, m_scene.limits);
    QStringList parts{m_scene.language.wording(m_item.label), WardText::outcome(judgement.outcome)};
    if (!m_title->finding().isEmpty())
        parts << m_title->finding();
    if (!limits.isEmpty())
        parts << limits;
    const QString name = parts.join(QStringLiteral(", "));
    if (name == accessibleName())
        return; // a screen reader is told of changes only
    setAccessibleName(name);
    setAccessibleDescription(m_scene.language.wording(m_item.help));
    if (QWidget* field = m_editor->field(); field != nullptr && !m_editor->spreads())
        field->setAccessibleName(accessibleName());
}

void ItemCard::showHelp()
{
    QStringList parts;
    for (const QString& part : {m_scene.language.wording(m_item.help), m_editor->keys()}) {
        if (!part.isEmpty())
            parts << part;
    }
    m_help->setText(parts.join(QLatin1Char(' ')));
    m_help->setVisible(m_active && !parts.isEmpty());
}

void ItemCard::say(const QString& text, bool fault)
{
    m_message->setTone(fault ? Tone::Warning : Tone::Soft);
    m_message->setText(text);
    m_message->setVisible(!text.isEmpty());
}

QString ItemCard::message() const { return m_message->text(); }

bool ItemCard::asksReason() const { return m_reasons->isVisibleTo(this); }

void ItemCard::refuse(const Error& error)
{
    const QString reason = m_editor->refusal();
    say(reason.isEmpty() ? qs(error.hint) : reason, true);
    takeFocus();
}

void ItemCard::takeFocus(Qt::FocusReason reason)
{
    QWidget* target = m_editor->field() != nullptr ? m_editor->field() : this;
    target->setFocus(reason);
}

void ItemCard::followFocus(QWidget* now)
{
    if (now == nullptr) // another window: the card stays as it is
        return;
    const bool here = now == this || isAncestorOf(now);
    if (here != m_active)
        setActive(here);
}

void ItemCard::setActive(bool active)
{
    m_active = active;
    if (!active) {
        closeReasons();
        if (m_editor->state() == EditState::Changed)
            say(tr("Not kept yet: Enter keeps it."), true);
    }
    m_editor->setActive(active);
    m_gap->setText(m_editor->minusLabel());
    showHelp();
    update();
    if (!active)
        return;
    Q_EMIT activated();
}

void ItemCard::mousePressEvent(QMouseEvent* event)
{
    if (!m_active)
        takeFocus(Qt::MouseFocusReason);
    event->accept();
}

void ItemCard::paintEvent(QPaintEvent* /*event*/)
{
    const Theme& theme = themeOf(*this);
    QPainter painter(this);
    paintPlate(painter, rect(), m_active ? theme.roles.accentWash : theme.roles.sheet, theme.roles.line);
    if (m_active)
        paintFocusRing(painter, rect(), theme);
}

}
