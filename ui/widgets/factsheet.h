// SPDX-License-Identifier: MIT
#pragma once

#include "ui/theme/type.h"
#include "ui/widgets/inktext.h"

#include <QStringList>
#include <QWidget>

#include <optional>

namespace cradlepost {

/// One fact with its company: "Warmer", "ready at 19:54", "on 18 min of 30".
struct Fact
{
    QString title; ///< what it is about, small
    QString value; ///< the answer, large
    QString aside; ///< behind the value when there is room, else below it
    std::optional<double> progress; ///< 0 to 1: what is warming; no bar without it
    QStringList lines; ///< small print
};

/// A sheet with one fact, painted in one widget.
class FactSheet : public QWidget
{
    Q_OBJECT
public:
    explicit FactSheet(QWidget* parent = nullptr);

    void setFact(const Fact& fact);
    const Fact& fact() const { return m_fact; }

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    /// Walks down the sheet's parts; paints them when there is a painter. Returns where it ended.
    int layOut(int width, QPainter* painter) const;
    int valueAndAside(const QRect& room, QPainter* painter) const;
    void paintBar(QPainter& painter, const QRect& bar) const;

    const InkText& ink(const QString& text, TextRole role, TextWeight weight = TextWeight::Regular) const;

    Fact m_fact;
    InkCache m_ink;
};

}
