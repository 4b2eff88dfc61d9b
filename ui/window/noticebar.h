// SPDX-License-Identifier: MIT
#pragma once

#include "core/supply/noticedesk.h"
#include "ui/pages/ward.h"

#include <QWidget>

class QPushButton;

namespace cradlepost {

class WrapLabel;

/** The weightiest thing that is due, quietly, in the line over the pages. It never takes the keyboard; Alt+0
 * puts it away, and it comes back by its rule while it still holds. */
class NoticeBar : public QWidget
{
    Q_OBJECT
public:
    explicit NoticeBar(Ward& ward, QWidget* parent = nullptr);

    /** What it shows now; empty when it is hidden. */
    [[nodiscard]] QString text() const;

Q_SIGNALS:
    /** It came, went or says something else. */
    void changed();

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void refresh();
    void putAway();

    Ward& m_ward;
    std::string m_unit;
    NoticeDesk m_desk;
    std::vector<Notice> m_shown;
    WrapLabel* m_words;
    QPushButton* m_seen;
};

}
