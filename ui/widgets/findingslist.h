// SPDX-License-Identifier: MIT
#pragma once

#include "ui/widgets/paintedlist.h"

namespace cradlepost {

/// One sentence that leads to what it was made from.
struct FindingRow
{
    QString text;
    bool question = false; ///< to be asked, not told
};

/// What a page says first, a sentence a row; each is a link: Enter or a click follows it.
class FindingsList : public PaintedList
{
    Q_OBJECT
public:
    explicit FindingsList(QWidget* parent = nullptr);

    void setRows(const std::vector<FindingRow>& rows);

    int itemCount() const override { return static_cast<int>(m_rows.size()); }
    QString itemText(int index) const override;
    QString listName() const override;

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;

protected:
    std::vector<QRect> layOutItems() const override;
    void paintEvent(QPaintEvent* event) override;

private:
    const InkText& textOf(int index) const;
    int markRoom() const;
    int rowHeight(int index, int width) const;
    void paintMark(QPainter& painter, const QRect& box, bool question) const;

    std::vector<FindingRow> m_rows;
};

}
