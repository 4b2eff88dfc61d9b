// SPDX-License-Identifier: MIT
#include "ui/report/textpieces.h"

#include <QTextBoundaryFinder>

namespace cradlepost {

namespace {

std::vector<qsizetype> boundariesOf(const QString& text, QTextBoundaryFinder::BoundaryType type)
{
    QTextBoundaryFinder finder(type, text);
    std::vector<qsizetype> places;
    for (qsizetype at = finder.toNextBoundary(); at > 0; at = finder.toNextBoundary())
        places.push_back(at);
    return places;
}

/// The furthest place up to which the text fits; 0 when none does.
qsizetype furthest(const QString& text, const std::vector<qsizetype>& places,
    const std::function<bool(const QString&)>& fits)
{
    std::size_t good = 0; // how many of the places fit
    std::size_t bad = places.size() + 1;
    while (bad - good > 1) {
        const std::size_t middle = (good + bad) / 2;
        (fits(text.left(places[middle - 1])) ? good : bad) = middle;
    }
    return good == 0 ? 0 : places[good - 1];
}

}

std::vector<QString> piecesOf(const QString& text, const std::function<bool(const QString&)>& fits)
{
    std::vector<QString> pieces;
    QString rest = text;
    while (!fits(rest)) {
        qsizetype at = furthest(rest, boundariesOf(rest, QTextBoundaryFinder::Line), fits);
        const auto letters = boundariesOf(rest, QTextBoundaryFinder::Grapheme);
        if (at == 0)
            at = furthest(rest, letters, fits);
        if (at == 0)
            at = letters.empty() ? rest.size()
                                 : letters.front(); // no room for one letter: go on all the same
        if (at >= rest.size())
            break;
        pieces.push_back(rest.left(at));
        rest = rest.mid(at);
    }
    pieces.push_back(rest);
    return pieces;
}

}
