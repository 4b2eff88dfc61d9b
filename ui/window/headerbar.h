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
    /** Stands between the shift and who is in charge where there is room, else below; the bar takes it over. */
    void setNotice(QWidget* notice);
    /** Places its parts anew: the notice came or went. */
    void arrange();
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

    Ward& m_ward;
    QGridLayout* m_grid;
    LateComboBox* m_unit;
    WrapLabel* m_shift;
    LateComboBox* m_actor;
    QLabel* m_clock;
    QWidget* m_notice = nullptr;
};

}
