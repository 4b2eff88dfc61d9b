// SPDX-License-Identifier: MIT
#pragma once

#include "ui/widgets/paintedlist.h"

#include <QStringList>

namespace cradlepost {

/// A place and the digit that leads there with Alt; the digit stays when other places come or go.
struct RailPlace
{
    QString name;
    int key = 1; ///< 1 to 9
};

/// The places of the window, one below the other at its leading side. Alt+1, Alt+2 ... open them from
/// anywhere in the window; within the rail the arrows move and Enter opens.
class NavigationRail : public PaintedList
{
    Q_OBJECT
public:
    explicit NavigationRail(QWidget* parent = nullptr);

    void setPlaces(const std::vector<RailPlace>& places);
    int place() const { return m_place; }
    void setPlace(int index); ///< marks it; does not emit

    int itemCount() const override { return static_cast<int>(m_places.size()); }
    QString listName() const override;
    QString itemText(int index) const override;
    bool isChosen(int index) const override { return index == m_place; }

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

Q_SIGNALS:
    void placeChosen(int index);

protected:
    std::vector<QRect> layOutItems() const override;
    void forgetLayout() override;
    void paintEvent(QPaintEvent* event) override;

private:
    struct Density
    {
        bool hints = true;
        int padding = 0; ///< above and below an item's text
    };

    QString hint(int index) const;
    const QString& name(int index) const;
    const InkText& nameText(const QString& name, bool current) const;
    const InkText& hintText(int index) const;
    int railWidth() const;
    int nameHeight(int index) const;
    int hintHeight() const;
    int itemHeight(int index, const Density& density) const;
    int totalHeight(const Density& density) const;
    Density densityFor(int height) const;
    void paintPlace(QPainter& painter, int index, const QRect& box) const;
    void bindKeys();

    std::vector<RailPlace> m_places;
    int m_place = 0;
    mutable Density m_density; ///< of the last layOutItems()
    mutable int m_railWidth = 0; ///< 0: not measured yet
};

}
