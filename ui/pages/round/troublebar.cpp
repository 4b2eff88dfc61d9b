// SPDX-License-Identifier: MIT
#include "ui/pages/round/troublebar.h"

#include "ui/text/errortext.h"
#include "ui/theme/theme.h"
#include "ui/widgets/wraplabel.h"

#include <QPushButton>

namespace cradlepost {

TroubleBar::TroubleBar(QWidget* parent)
    : FoldingRow(parent)
    , m_words(new WrapLabel)
{
    m_words->setTone(Tone::Warning);
    m_words->setObjectName(QStringLiteral("troubleWords"));
    auto* again = new QPushButton(tr("Keep it now"));
    again->setObjectName(QStringLiteral("keepAgainButton"));
    again->setFocusPolicy(Qt::TabFocus);
    setSpacing(themeOf(*this).space(Space::Near));
    addWidget(m_words, 1, Qt::AlignVCenter);
    addWidget(again, 0, Qt::AlignVCenter);
    connect(again, &QPushButton::clicked, this, &TroubleBar::againWanted);
    hide();
}

void TroubleBar::setTrouble(const std::optional<Error>& trouble)
{
    if (trouble)
        m_words->setText(tr("%1 %2 The answers are held here and kept with the next one.")
                             .arg(ErrorText::sentence(*trouble), ErrorText::advice(*trouble)));
    setVisible(trouble.has_value());
}

}
