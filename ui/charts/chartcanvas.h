// SPDX-License-Identifier: MIT
#pragma once

#include "ui/charts/chartfigure.h"
#include "ui/widgets/paintedlist.h"

#include <memory>

namespace cradlepost {

class Drawing;
struct Stage;

/// One figure on screen. Its points, bars or cells are the items: the arrows walk them, hover and screen
/// readers get each in words.
class ChartCanvas : public PaintedList
{
    Q_OBJECT
public:
    explicit ChartCanvas(QWidget* parent = nullptr);
    ~ChartCanvas() override;

    const ChartFigure& figure() const { return m_figure; }
    void setFigure(const ChartFigure& figure);
    void setEmptyText(const QString& text); ///< instead of the plain sentence
    const Drawing& drawing() const { return *m_drawing; }

    int itemCount() const override;
    QString listName() const override;
    QString itemText(int index) const override;

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;

protected:
    std::vector<QRect> layOutItems() const override;
    int itemBeside(int index, Qt::Key key) const override;
    bool event(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    Stage stage(const QSize& size) const;
    QString emptyText() const;

    ChartFigure m_figure;
    bool m_isEmpty = true;
    QString m_emptyText;
    std::unique_ptr<Drawing> m_drawing; ///< kept while the kind of figure stays, and its series with it
    InkCache m_texts;
};

}
