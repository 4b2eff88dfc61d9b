// SPDX-License-Identifier: MIT
#pragma once

#include "ui/theme/type.h"
#include "ui/widgets/inktext.h"

#include <QWidget>

namespace cradlepost {

/// How loud a text is.
enum class Tone { Ink, Soft, Hint, Accent, Warning };

/// A text that wraps, knows its height for a width, and grows with the text size. **Bold** spans allowed.
class WrapLabel : public QWidget
{
    Q_OBJECT
public:
    explicit WrapLabel(const QString& text = {}, TextRole role = TextRole::Body, QWidget* parent = nullptr);

    QString text() const { return m_text; }
    void setText(const QString& text);
    void setTone(Tone tone);
    void setWeight(TextWeight weight);
    void setTextAlignment(Qt::Alignment alignment); ///< AlignLeft is the leading side

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;

protected:
    void paintEvent(QPaintEvent* event) override;

    void changeEvent(QEvent* event) override;

private:
    const InkText& ink() const;

    QString m_text;
    TextRole m_role;
    TextWeight m_weight = TextWeight::Regular;
    Tone m_tone = Tone::Ink;
    Qt::Alignment m_alignment = Qt::AlignLeft;
    InkCache m_ink;
};

}
