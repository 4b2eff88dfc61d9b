// SPDX-License-Identifier: MIT
#pragma once

#include "ui/widgets/inktext.h"

#include <QAbstractButton>

namespace cradlepost {

struct KeyHintInk;

/// One answer out of several: the text and the key that gives it. Chosen is filled with ink. The page
/// keeps one chosen at a time (QButtonGroup).
class ChoiceButton : public QAbstractButton
{
    Q_OBJECT
public:
    /// `keyHint` is shown, not bound: the page owns its keys.
    ChoiceButton(const QString& text, const QString& keyHint, QWidget* parent = nullptr);

    QString keyHint() const { return m_keyHint; }
    void setKeyHint(const QString& keyHint);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override { return sizeHint(); }

protected:
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    KeyHintInk label() const;

    QString m_keyHint;
    InkCache m_ink;
};

}
