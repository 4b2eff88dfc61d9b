// SPDX-License-Identifier: MIT
#pragma once

#include "ui/pages/round/cards/answereditor.h"
#include "ui/widgets/outcomemark.h"

class QVBoxLayout;

namespace cradlepost {

class ChoiceButton;
class ItemTitle;
class ReasonRow;
class WrapLabel;

/** Where the keyboard wants to go from a card. */
enum class CardMove { Previous, Next, PreviousSection, NextSection, NextOpen };

/**
 * One item of a round: what it is, how it stands, and the editor of its kind. Shows what it is told and says
 * what was answered; it keeps nothing itself but what is half typed.
 */
class ItemCard : public QWidget
{
    Q_OBJECT
public:
    ItemCard(const Item& item, const CardScene& scene, QWidget* parent = nullptr);
    ~ItemCard() override;

    /** As it is kept now. */
    void setAnswer(const Answer& answer, const Judgement& judgement);
    /** The clock has moved on. */
    void tick(const Judgement& judgement);
    /** What was given was not taken; keeps the keyboard. */
    void refuse(const Error& error);
    /** Takes the keyboard, in its field when it has one. */
    void takeFocus(Qt::FocusReason reason = Qt::OtherFocusReason);

    [[nodiscard]] const Item& item() const { return m_item; }
    [[nodiscard]] const Answer& answer() const { return m_answer; }
    [[nodiscard]] Mark mark() const { return m_mark->mark(); }
    [[nodiscard]] bool isActive() const { return m_active; }
    /** What the card says below its item: a refusal or what to do. */
    [[nodiscard]] QString message() const;
    [[nodiscard]] bool asksReason() const;
    [[nodiscard]] AnswerEditor& editor() const { return *m_editor; }

Q_SIGNALS:
    void given(const cradlepost::Answer& answer, bool goOn);
    void moveWanted(cradlepost::CardMove move);
    /** It has got the keyboard. */
    void activated();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void build();
    QWidget* makeHead();
    QWidget* makeSide();
    ChoiceButton* makeButton(const QString& text, const QString& key, const char* name);
    void watch();
    void followFocus(QWidget* now);
    void setActive(bool active);
    void showOutcome(const Judgement& judgement);
    void showHelp();
    void say(const QString& text, bool fault);
    bool takeKey(const QKeyEvent& event);
    bool takeMoveKey(int key);
    bool takeReasonKey(const QKeyEvent& event);
    bool takeTextKey(const QKeyEvent& event);
    bool takeDelete(int key);
    bool bringBack();
    void enter();
    void leave(CardMove move);
    void minus();
    void doesNotApply();
    void openReasons();
    void closeReasons();
    void acceptReason(GapReason reason, bool goOn);
    [[nodiscard]] bool hasReading() const;
    [[nodiscard]] QString kept() const;
    void nameIt(const Judgement& judgement);

    const Item& m_item;
    const CardScene& m_scene;
    Answer m_answer;
    std::optional<Answer> m_before; ///< what the last change replaced: Esc brings it back
    bool m_active = false;
    bool m_reasonPending = false; ///< a reading would be lost: the reason is chosen, not given yet
    AnswerEditor* m_editor;
    OutcomeMark* m_mark;
    ItemTitle* m_title;
    WrapLabel* m_help;
    WrapLabel* m_message;
    ReasonRow* m_reasons;
    ChoiceButton* m_gap;
    ChoiceButton* m_notApplying = nullptr;
};

}
