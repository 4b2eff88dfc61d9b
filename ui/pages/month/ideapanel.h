// SPDX-License-Identifier: MIT
#pragma once

#include "core/round/changeidea.h"
#include "ui/pages/ward.h"
#include "ui/widgets/sheet.h"

class QComboBox;
class QDateEdit;
class QLineEdit;
class QPushButton;

namespace cradlepost {

class WrapLabel;

/** What is tried so that the room is ready more often: a new idea, or one that is put right or ended. */
class IdeaPanel : public Sheet
{
    Q_OBJECT
public:
    explicit IdeaPanel(Ward& ward, QWidget* parent = nullptr);

    /** Reads the ideas of the unit again. `today`: the first day that a new one is offered from. */
    void show(const Checklist& checklist, Date today);

Q_SIGNALS:
    void kept();

private:
    void choose(int index);
    void keep(bool ended);
    [[nodiscard]] ChangeIdea typed() const;

    Ward& m_ward;
    Date m_today;
    std::vector<ChangeIdea> m_ideas;
    QComboBox* m_which;
    QLineEdit* m_title;
    QDateEdit* m_from;
    QComboBox* m_about;
    QLineEdit* m_hope;
    QPushButton* m_keep;
    QPushButton* m_end;
    WrapLabel* m_said;
};

}
