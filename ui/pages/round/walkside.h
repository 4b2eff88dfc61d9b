// SPDX-License-Identifier: MIT
#pragma once

#include "core/round/verdict.h"
#include "ui/widgets/sectionlist.h"

#include <QScrollArea>

namespace cradlepost {

class StandingSheet;

/** The side of a walk: whose it is, the sections with how far each is, and the verdict as it forms. */
class WalkSide : public QScrollArea
{
    Q_OBJECT
public:
    WalkSide(const QString& title, const QString& walker, QWidget* parent = nullptr);

    void setSections(const std::vector<SectionEntry>& entries);
    /** Marks it; tells nobody. */
    void setSection(int section);
    void setStanding(Readiness state, const QString& sentence);
    void takeFocus(Qt::FocusReason reason);

Q_SIGNALS:
    void sectionChosen(int section);
    /** Chosen for good: the keyboard goes to its items. */
    void sectionEntered(int section);
    void leaveWanted();

private:
    SectionList* m_list;
    StandingSheet* m_standing;
};

}
