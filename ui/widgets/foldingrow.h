// SPDX-License-Identifier: MIT
#pragma once

#include <QWidget>

class QBoxLayout;

namespace cradlepost {

/// Children side by side; one below the other where the width does not do, as with text at twice its size.
class FoldingRow : public QWidget
{
    Q_OBJECT
public:
    explicit FoldingRow(QWidget* parent = nullptr);

    void addWidget(QWidget* widget, int stretch = 0, Qt::Alignment alignment = {});
    void setSpacing(int pixels);
    bool isFolded() const;

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;
    bool hasHeightForWidth() const override;
    int heightForWidth(int width) const override;

protected:
    void resizeEvent(QResizeEvent* event) override;
    bool event(QEvent* event) override;

private:
    int unfoldedWidth() const;
    bool foldsAt(int width) const;
    int foldedHeight() const; ///< of the children below each other; 0 while they stand side by side
    void fold();

    QBoxLayout* m_row;
};

}
