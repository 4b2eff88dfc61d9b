// SPDX-License-Identifier: MIT
#include "ui/pages/round/standingsheet.h"

#include "ui/text/wardtext.h"
#include "ui/widgets/wraplabel.h"

#include <QVBoxLayout>

namespace cradlepost {

StandingSheet::StandingSheet(QWidget* parent)
    : Sheet({}, parent)
    , m_word(new WrapLabel({}, TextRole::Title))
    , m_sentence(new WrapLabel({}, TextRole::Small))
{
    auto* title = new WrapLabel(tr("As it stands"), TextRole::Small);
    title->setTone(Tone::Hint);
    m_word->setWeight(TextWeight::SemiBold);
    m_word->setObjectName(QStringLiteral("standingWord"));
    m_sentence->setTone(Tone::Soft);
    m_sentence->setObjectName(QStringLiteral("standingSentence"));
    content().setSpacing(2);
    content().addWidget(title);
    content().addWidget(m_word);
    content().addWidget(m_sentence);
}

void StandingSheet::setStanding(Readiness state, const QString& sentence)
{
    m_word->setText(WardText::readiness(state));
    m_word->setTone(state == Readiness::NotReady ? Tone::Warning
            : state == Readiness::Ready          ? Tone::Accent
                                                 : Tone::Ink);
    m_sentence->setText(sentence);
    setAccessibleName(tr("As it stands: %1. %2").arg(WardText::readiness(state), sentence));
}

}
