// SPDX-License-Identifier: MIT
#pragma once

#include "ui/pages/month/reviewchoice.h"
#include "ui/text/timetext.h"

#include <QWidget>

class QPushButton;

namespace cradlepost {

class WrapLabel;

/** Which days, shifts and sections are looked at, and the way to change them: one line over the month. */
class SpanBar : public QWidget
{
    Q_OBJECT
public:
    explicit SpanBar(const Language& language, QWidget* parent = nullptr);

    /** `today`: nothing later can be looked at. */
    void show(const ReviewChoice& choice, Date today, const QString& filterWords);
    void setPanelOpen(bool open);

Q_SIGNALS:
    void monthWanted(int beside); ///< -1 the one before, +1 the one after
    void panelWanted(bool open);
    void reportWanted();

private:
    [[nodiscard]] QString spanWords(const ReviewChoice& choice) const;

    const Language& m_language;
    QPushButton* m_before;
    WrapLabel* m_span;
    QPushButton* m_after;
    QPushButton* m_choose;
    WrapLabel* m_filter;
    QPushButton* m_report;
};

}
