// SPDX-License-Identifier: MIT
#pragma once

#include "ui/widgets/paintedlist.h"

#include <vector>

namespace cradlepost {

struct SectionEntry
{
    QString name;
    int done = 0;
    int total = 0;
};

/// The sections of a round with how far each is; Up and Down go from one to the next at once.
class SectionList : public PaintedList
{
    Q_OBJECT
public:
    explicit SectionList(QWidget* parent = nullptr);

    void setSections(const std::vector<SectionEntry>& sections);
    void setProgress(int index, int done); ///< of one section, without moving anything

    int itemCount() const override { return static_cast<int>(m_sections.size()); }
    QString listName() const override;
    QString itemText(int index) const override;

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

Q_SIGNALS:
    void sectionChosen(int index);

protected:
    std::vector<QRect> layOutItems() const override;
    void paintEvent(QPaintEvent* event) override;

private:
    QString progress(int index) const;
    const InkText& nameText(int index, bool current) const;
    int countWidth() const;
    int rowHeight(int index, int width) const;
    int nameRoom(int width) const;
    void paintRow(QPainter& painter, int index, const QRect& box) const;

    std::vector<SectionEntry> m_sections;
};

}
