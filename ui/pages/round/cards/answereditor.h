// SPDX-License-Identifier: MIT
#pragma once

#include "ui/pages/round/cards/cardscene.h"

#include <QWidget>

class QKeyEvent;

namespace cradlepost {

/** What stands in an editor, held against the answer that is kept. */
enum class EditState {
    Empty, ///< nothing typed, no answer of this kind
    AsKept,
    Changed, ///< something is typed that is not kept yet
    Cleared, ///< the kept reading was wiped out of the field, and nothing typed in its place
};

/**
 * Takes the answer to one item of one kind. The card around it shows the item, owns the keys that all kinds
 * share and asks the editor first where a key may be part of a reading.
 */
class AnswerEditor : public QWidget
{
    Q_OBJECT
public:
    AnswerEditor(const Item& item, const CardScene& scene, QWidget* parent = nullptr);

    [[nodiscard]] virtual EditState state() const = 0;
    /** What is typed, as an answer. */
    [[nodiscard]] virtual Result<Answer> read() const = 0;
    /** Why read() refused, in the reader's words. */
    [[nodiscard]] virtual QString refusal() const = 0;
    /** Shows what is kept; whatever was typed is gone. */
    virtual void setAnswer(const Answer& answer, const Judgement& judgement) = 0;
    /** The clock has moved on. */
    virtual void tick(const Judgement& /*judgement*/) { }
    /** A key of this kind's own; true when it was used up. */
    virtual bool takeKey(const QKeyEvent& /*event*/) { return false; }
    /** What Enter gives when nothing is typed and nothing kept. */
    [[nodiscard]] virtual std::optional<Answer> answerToEnter() const { return std::nullopt; }
    /** Where the typing goes; the card itself when there is none. */
    [[nodiscard]] virtual QWidget* field() { return nullptr; }
    /** Something of it that stands beside the label of a spreading editor. */
    [[nodiscard]] virtual QWidget* beside() { return nullptr; }
    /** The card has got the keyboard, or has lost it. */
    void setActive(bool active);
    /** Whether `text` belongs to the reading that is being typed and is no command. */
    [[nodiscard]] virtual bool wants(const QString& /*text*/) const { return false; }
    /** Whether it takes the width of the card, below the label. */
    [[nodiscard]] virtual bool spreads() const { return false; }
    /** The keys that work here, in words, for the card one is at. */
    [[nodiscard]] virtual QString keys() const { return {}; }
    /** What '-' does here, for its button. */
    [[nodiscard]] virtual QString minusLabel() const;

Q_SIGNALS:
    void given(const cradlepost::Answer& answer, bool goOn);
    void edited();
    /** Nothing to keep here: on to the next item. */
    void passedOn();
    void gapWanted();

protected:
    /** The keyboard is here: what is typed next replaces what stands there. */
    virtual void begin() { }
    virtual void end() { }
    [[nodiscard]] bool isActive() const { return m_active; }
    [[nodiscard]] const Item& item() const { return m_item; }
    [[nodiscard]] const CardScene& scene() const { return m_scene; }
    /** The limits of the item in words, beside its field. */
    [[nodiscard]] QString limits() const;

private:
    const Item& m_item;
    const CardScene& m_scene;
    bool m_active = false;
};

/** The editor for the item's kind. */
AnswerEditor* makeEditor(const Item& item, const CardScene& scene, QWidget* parent);

}
