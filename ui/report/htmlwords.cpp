// SPDX-License-Identifier: MIT
#include "ui/report/htmlwords.h"

#include <QStringList>

namespace cradlepost {

namespace {
QString withoutControls(const QString& text)
{
    QString out;
    for (const QChar letter : text) {
        const bool isBlank = letter == u'\n' || letter == u'\t';
        if (isBlank || letter.category() != QChar::Other_Control)
            out += letter;
    }
    return out;
}

QString escaped(const QString& text)
{
    return withoutControls(text).toHtmlEscaped().replace(u'\'', QLatin1String("&#39;"));
}
}

QString htmlText(const QString& text) { return escaped(text).replace(u'\n', QLatin1String("<br>")); }

QString htmlAttribute(const QString& text) { return escaped(text).replace(u'\n', u' '); }

QString htmlMarked(const QString& marked)
{
    const QStringList parts = marked.split(QStringLiteral("**"));
    QString out;
    for (qsizetype i = 0; i < parts.size(); ++i) {
        const QString words = htmlText(parts.at(i));
        out += i % 2 == 1 && !words.isEmpty() ? QString(u"<strong>" % words % u"</strong>") : words;
    }
    return out;
}

}
