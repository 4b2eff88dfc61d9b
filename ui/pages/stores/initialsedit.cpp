// SPDX-License-Identifier: MIT
#include "ui/pages/stores/initialsedit.h"

namespace cradlepost {

namespace {
constexpr int mostInitials = 12;
}

InitialsEdit::InitialsEdit(Ward& ward, QWidget* parent)
    : QLineEdit(qs(ward.actor()), parent)
    , m_ward(ward)
{
    setMaxLength(mostInitials);
    connect(&m_ward, &Ward::actorChanged, this, [this] {
        if (!hasFocus())
            setText(qs(m_ward.actor()));
    });
}

bool InitialsEdit::take()
{
    const std::string typed = text().trimmed().toStdString();
    if (typed.empty()) {
        setFocus(Qt::OtherFocusReason);
        return false;
    }
    if (typed != m_ward.actor())
        m_ward.setActor(typed);
    return true;
}

}
