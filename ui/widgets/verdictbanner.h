// SPDX-License-Identifier: MIT
#pragma once

#include "ui/widgets/inktext.h"

#include <QWidget>

namespace cradlepost {

enum class VerdictState { NotReady, ReadyWithGaps, Ready, NoRound };

/// The answer, as large as it can be read from two metres, and the sentence that explains it.
class VerdictBanner : public QWidget
{
    Q_OBJECT
public:
    explicit VerdictBanner(QWidget* parent = nullptr);

    static QString word(VerdictState state);

    /// `sentence` may hold **bold** spans.
    void setVerdict(VerdictState state, const QString& sentence);
    VerdictState state() const { return m_state; }

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    const InkText& wordText() const;
    const InkText& sentenceText() const;
    int markSide() const;
    int wordLeft() const; ///< where the word begins, behind the mark
    void paintStateMark(QPainter& painter, const QRect& box) const;
    void nameIt();

    VerdictState m_state = VerdictState::NoRound;
    QString m_sentence;
    InkCache m_ink;
};

}
