// SPDX-License-Identifier: MIT
#pragma once

#include "ui/widgets/inktext.h"
#include "ui/widgets/outcomemark.h"

#include <vector>

namespace cradlepost {

/// The marks of a page with their words, on one line when it fits; once a page.
class MarksLegend : public QWidget
{
    Q_OBJECT
public:
    /// `marks` in the order in which they are explained; all of them when empty.
    explicit MarksLegend(const std::vector<Mark>& marks = {}, QWidget* parent = nullptr);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    const InkText& word(Mark mark) const;
    int entryWidth(Mark mark) const;
    int lineHeight() const;
    QPoint nextPlace(QPoint place, int entry, int width) const;
    void nameIt();

    std::vector<Mark> m_marks;
    InkCache m_ink;
};

}
