// SPDX-License-Identifier: MIT
#pragma once

#include "core/checklist/checklist.h"

#include <memory>
#include <QLocale>
#include <QString>
#include <vector>

class QTranslator;

namespace cradlepost {

/** Code of the language that nobody speaks: longer, accented, mirrored; shows what escapes translation. */
inline constexpr const char* pseudoLanguage = "pseudo";

struct LanguageChoice
{
    QString code; ///< "en", "hi"
    QString name; ///< in the language itself
};

/** Languages that the program can be read in; the pseudo-language only when asked for by name. */
std::vector<LanguageChoice> languageChoices();

/** The language in use: its translator is installed for as long as this lives. One at a time. */
class Language
{
public:
    /** A code that is not known falls back to English. */
    explicit Language(const QString& code);
    ~Language();
    Language(const Language&) = delete;
    Language& operator=(const Language&) = delete;

    [[nodiscard]] const QString& code() const { return m_code; }
    [[nodiscard]] const QLocale& locale() const { return m_locale; }
    [[nodiscard]] bool isRightToLeft() const;
    /** Checklist wording in this language. */
    [[nodiscard]] QString wording(const Wording& wording) const;

private:
    QString m_code;
    QLocale m_locale;
    std::unique_ptr<QTranslator> m_translator;
};

inline QString qs(const std::string& utf8) { return QString::fromStdString(utf8); }

}
