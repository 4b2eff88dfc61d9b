// SPDX-License-Identifier: MIT
#pragma once

#include "ui/pages/ward.h"

#include <QWidget>

class QStackedWidget;

namespace cradlepost {

class PutRightPane;
class ResultPane;
class StartPane;
class WalkInHand;
class WalkPane;

/** The place *Round*: begin or take up a walk, walk it by the keyboard, finish it, see what it came to. */
class RoundPage : public QWidget
{
    Q_OBJECT
public:
    explicit RoundPage(Ward& ward, QWidget* parent = nullptr);
    ~RoundPage() override;

    /** The walk in hand, if any. */
    [[nodiscard]] const WalkInHand* hand() const { return m_hand; }
    [[nodiscard]] WalkPane* walkPane() const { return m_walk; }

public Q_SLOTS:
    /** Takes up the draft of that kind or begins a fresh walk; says on the page why it cannot. */
    void begin(cradlepost::RoundKind kind);
    /** Opens a recorded shift round to put its answers right. */
    void putRight(const cradlepost::SavedRound& round);
    /** A re-check of this one item. */
    void beginOne(const std::string& item);

Q_SIGNALS:
    /** The last answer is on disk. */
    void saved(cradlepost::Instant at);
    /** A walk was recorded; its result is shown on the page. */
    void recorded(cradlepost::RoundKind kind);
    /** The result was seen: on to how the shift stands now. */
    void finished(cradlepost::RoundKind kind);

protected:
    void focusInEvent(QFocusEvent* event) override;
    void hideEvent(QHideEvent* event) override;

private:
    void open(QWidget* pane);
    void take(Result<Walk> walk);
    void drop();
    void toStart();
    void finish();
    void askForReason();
    void leave();
    void followWard();

    Ward& m_ward;
    std::string m_unit;
    QStackedWidget* m_stack;
    StartPane* m_start;
    QWidget* m_startHolder;
    WalkInHand* m_hand = nullptr;
    WalkPane* m_walk = nullptr;
    PutRightPane* m_putRight = nullptr;
    ResultPane* m_result = nullptr;
};

}
