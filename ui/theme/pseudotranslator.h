// SPDX-License-Identifier: MIT
#pragma once

#include <QTranslator>

namespace cradlepost {

/// Text in brackets, accented and about 40 % longer, with everything a program reads left as it is:
/// %1, %L1, %n, %Ln, the letter after &, **, tags and entities. "Ready" becomes "[Ŕéàðý ~~]".
QString pseudoText(const QString& source);

/// A language that nobody speaks: text that was forgotten by the translation shows at once, and text
/// that only fits in English is cut.
class PseudoTranslator : public QTranslator
{
    Q_OBJECT
public:
    enum class Direction { LeftToRight, RightToLeft };

    explicit PseudoTranslator(Direction direction = Direction::RightToLeft, QObject* parent = nullptr);

    bool isEmpty() const override { return false; }
    QString translate(const char* context, const char* source, const char* disambiguation = nullptr,
        int n = -1) const override;

private:
    Direction m_direction;
};

}
