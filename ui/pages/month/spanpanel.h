// SPDX-License-Identifier: MIT
#pragma once

#include "core/checklist/checklist.h"
#include "ui/pages/month/reviewchoice.h"
#include "ui/text/language.h"
#include "ui/widgets/sheet.h"

class QCheckBox;
class QDateEdit;
class QTreeWidget;
class QVBoxLayout;

namespace cradlepost {

/** The one place where days, shifts, sections and items are chosen, and the days to compare them with. */
class SpanPanel : public Sheet
{
    Q_OBJECT
public:
    explicit SpanPanel(const Language& language, QWidget* parent = nullptr);

    /** `shifts`: codes of the unit's shifts; `checklist`: the one in force. */
    void show(const ReviewChoice& choice, const std::vector<std::string>& shifts, const Checklist& checklist,
        Date today);
    [[nodiscard]] ReviewChoice choice() const;

Q_SIGNALS:
    void chosen(const ReviewChoice& choice);

private:
    QWidget* makeDays();
    QWidget* makeWhat();
    void showShifts(const std::vector<std::string>& shifts, const ReviewFilter& filter);
    void showItems(const Checklist& checklist, const ReviewFilter& filter);
    void wantMonth();

    const Language& m_language;
    QDateEdit* m_from;
    QDateEdit* m_to;
    QCheckBox* m_compare;
    QDateEdit* m_againstFrom;
    QDateEdit* m_againstTo;
    QVBoxLayout* m_shifts;
    std::vector<QCheckBox*> m_shiftBoxes;
    QTreeWidget* m_items;
};

}
