// SPDX-License-Identifier: MIT
#include "ui/pages/round/standingsheet.h"

#include "ui/text/wardtext.h"
#include "ui/widgets/foldingrow.h"
#include "ui/widgets/wraplabel.h"

#include <QVBoxLayout>

namespace cradlepost {

StandingSheet::StandingSheet(bool flat, QWidget* parent)
    : Sheet({}, parent)
    , m_flat(flat)
    , m_word(new WrapLabel({}, TextRole::Title))
    , m_sentence(new WrapLabel({}, TextRole::Small))
{
    m_word->setWeight(TextWeight::SemiBold);
    m_word->setObjectName(QStringLiteral("standingWord"));
    m_sentence->setTone(Tone::Soft);
    m_sentence->setObjectName(QStringLiteral("standingSentence"));
    if (flat) {
        setPadding(Space::Close);
        auto* row = new FoldingRow;
        row->setSpacing(themeOf(*this).space(Space::Apart));
        row->addWidget(m_word, 0, Qt::AlignVCenter);
        row->addWidget(m_sentence, 1, Qt::AlignVCenter);
        content().addWidget(row);
        return;
    }
    auto* title = new WrapLabel(tr("As it stands"), TextRole::Small);
    title->setTone(Tone::Hint);
    content().setSpacing(2);
    content().addWidget(title);
    content().addWidget(m_word);
    content().addWidget(m_sentence);
}

void StandingSheet::setStanding(Readiness state, const QString& sentence)
{
    m_word->setText(WardText::readiness(state));
    if (m_flat)
        m_word->setMinimumWidth(m_word->sizeHint().width());
    m_word->setTone(state == Readiness::NotReady ? Tone::Warning
            : state == Readiness::Ready          ? Tone::Accent
                                                 : Tone::Ink);
    m_sentence->setText(sentence);
    if (const QString name = tr("As it stands: %1. %2").arg(WardText::readiness(state), sentence);
        name != accessibleName())
        setAccessibleName(name);
}

}
