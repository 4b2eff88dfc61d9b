// SPDX-License-Identifier: MIT
#pragma once

#include "core/review/district.h"
#include "ui/text/figuretext.h"
#include "ui/text/itemnames.h"
#include "ui/text/timetext.h"

namespace cradlepost {

/** What a comparison of units says, in sentences: none stronger than the finding it is made from. */
class DistrictText
{
    Q_DECLARE_TR_FUNCTIONS(DistrictText)
public:
    /** All must outlive it. */
    DistrictText(const Language& language, const ItemNames& names, const DistrictReview& review)
        : m_names(names)
        , m_review(review)
        , m_figures(language)
    {
    }

    /** The largest thing on the page: "See Penny Weir first". */
    [[nodiscard]] QString answer() const;
    /** Why: the reasons of the first unit, or how much was seen. */
    [[nodiscard]] QString company() const;
    [[nodiscard]] QString sentence(const DistrictFinding& finding) const;
    /** "2 critical gaps open, the oldest for 6.7 days: Oxytocin" */
    [[nodiscard]] QString reason(const VisitReason& reason) const;
    /** All reasons of a unit, one after the other. */
    [[nodiscard]] QString reasons(const VisitNeed& need) const;
    /** "3 Nov: 13 of 18 met, does not reach the standard"; `day`: when it was. */
    [[nodiscard]] QString visit(const VisitResult& visit, const QString& day) const;
    [[nodiscard]] static QString decision(VisitDecision decision);
    /** "Gloves: 40 pieces from Alder to Beck" and "12.5 km", as far as it is known. */
    [[nodiscard]] QString transfer(const Transfer& move) const;
    [[nodiscard]] QString distance(const Transfer& move) const;
    /** Who can do most about it: "the engineer". */
    [[nodiscard]] static QString help(VisitHelp help);
    /** "18 items picked by lot; with 16 or more met the room passes ..." */
    [[nodiscard]] QString sample(const VisitSample& sample) const;
    /** How the limits were made, for the small print. */
    [[nodiscard]] QString limits() const;
    [[nodiscard]] QString unit(std::size_t unit) const;
    [[nodiscard]] QString units(const std::vector<std::size_t>& units) const;
    /** "clearly lower" */
    [[nodiscard]] static QString band(UnitBand band);

private:
    [[nodiscard]] QString items(const std::vector<std::string>& ids) const;
    [[nodiscard]] QString percentOf(const Share& share) const;
    [[nodiscard]] QString standing(const DistrictFinding& finding) const;
    [[nodiscard]] QString reporting(const DistrictFinding& finding) const;
    [[nodiscard]] QString names(const std::vector<std::string>& names) const;

    const ItemNames& m_names;
    const DistrictReview& m_review;
    FigureText m_figures;
};

}
