// SPDX-License-Identifier: MIT
#pragma once

#include <QComboBox>
#include <QHash>

namespace cradlepost {

/// A combo box as wide as its widest entry that makes its list when it is first opened. Qt's makes the list, with
/// its view and scroll bars, to follow a font or to measure entries: before the window is seen.
class LateComboBox : public QComboBox
{
    Q_OBJECT
public:
    using QComboBox::QComboBox;

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override { return sizeHint(); }
    void showPopup() override;

protected:
    void changeEvent(QEvent* event) override;

private:
    int entryWidth(const QString& text) const;

    mutable QHash<QString, int> m_widths; ///< of entries in this font: layouts ask many times
    bool m_opened = false;
};

}
