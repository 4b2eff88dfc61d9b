// SPDX-License-Identifier: MIT
#pragma once

#include <QIcon>
#include <QWidget>

class QPainter;

namespace cradlepost {

struct Roles;

/// One shape an outcome, the same everywhere. Colour only repeats what the shape says.
enum class Mark { Met, GapCritical, Gap, DoesNotApply, NotChecked, Late };

inline constexpr Mark allMarks[]
    = {Mark::Met, Mark::GapCritical, Mark::Gap, Mark::DoesNotApply, Mark::NotChecked, Mark::Late};

/// Paints the mark centred in `box`; its size follows the shorter side. The diamond fills the box, the
/// disc three fifths of it, so that a gap stands out of a row of discs.
void paintMark(QPainter& painter, const QRectF& box, Mark mark, const Roles& roles);

/// `size` in device independent pixels, sharp at `ratio` device pixels each.
QPixmap markPixmap(Mark mark, int size, double ratio, const Roles& roles);
QIcon markIcon(Mark mark, int size, const Roles& roles);

/// A mark that stands alone, with its word for screen readers and as a tool tip.
class OutcomeMark : public QWidget
{
    Q_OBJECT
public:
    explicit OutcomeMark(Mark mark, QWidget* parent = nullptr);

    static QString word(Mark mark);

    Mark mark() const { return m_mark; }
    void setMark(Mark mark);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override { return sizeHint(); }

protected:
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void nameIt();

    Mark m_mark;
};

}
