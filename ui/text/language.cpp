// SPDX-License-Identifier: MIT
#include "ui/text/language.h"

#include "ui/text/pseudotranslator.h"

#include <algorithm>
#include <QCoreApplication>

namespace cradlepost {

std::vector<LanguageChoice> languageChoices()
{
    return {{QStringLiteral("en"), QStringLiteral("English")}, {QStringLiteral("hi"), QStringLiteral("हिन्दी")}};
}

Language::Language(const QString& code)
    : m_code(QStringLiteral("en"))
    , m_locale(QLocale::English, QLocale::UnitedKingdom)
{
    if (code == QLatin1String(pseudoLanguage)) {
        m_code = code;
        m_translator = std::make_unique<PseudoTranslator>();
    } else {
        // English has a catalogue too: its plural forms.
        const auto choices = languageChoices();
        const QString base = code.section(QLatin1Char('-'), 0, 0).section(QLatin1Char('_'), 0, 0);
        const auto known = std::find_if(
            choices.begin(), choices.end(), [&](const LanguageChoice& c) { return c.code == base; });
        if (known != choices.end())
            m_code = known->code;
        if (m_code != QLatin1String("en"))
            m_locale = QLocale(m_code);
        m_translator = std::make_unique<QTranslator>();
        if (!m_translator->load(QStringLiteral(":/i18n/cradlepost_%1.qm").arg(m_code)))
            m_translator.reset();
    }
    if (m_translator)
        QCoreApplication::installTranslator(m_translator.get());
}

Language::~Language()
{
    if (m_translator && QCoreApplication::instance() != nullptr)
        QCoreApplication::removeTranslator(m_translator.get());
}

bool Language::isRightToLeft() const
{
    return m_code == QLatin1String(pseudoLanguage) || m_locale.textDirection() == Qt::RightToLeft;
}

QString Language::wording(const Wording& wording) const
{
    const QString text = qs(wording.in(m_code.toStdString()));
    return m_code == QLatin1String(pseudoLanguage) ? pseudoText(text) : text;
}

}
