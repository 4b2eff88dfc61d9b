// SPDX-License-Identifier: MIT
#pragma once

#include "ui/pages/ward.h"

#include <QWidget>

class QGridLayout;
class QLabel;

namespace cradlepost {

class LateComboBox;
class WrapLabel;

/** The line over every page: which ward, which shift, who is in charge, what time it is. */
class HeaderBar : public QWidget
{
    Q_OBJECT
public:
    explicit HeaderBar(Ward& ward, QWidget* parent = nullptr);

    /** "saved 19:31:08" beside the clock, until the next refresh of the shift. */
    void showSaved(Instant at);
    /** Units may have been added or renamed. */
    void reload();

Q_SIGNALS:
    void unitChosen(const std::string& unit);

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void refresh();
    void fillPeople();

    void arrange();

    Ward& m_ward;
    QGridLayout* m_grid;
    LateComboBox* m_unit;
    WrapLabel* m_shift;
    LateComboBox* m_actor;
    QLabel* m_clock;
};

}
