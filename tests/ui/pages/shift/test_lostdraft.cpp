// SPDX-License-Identifier: MIT
#include "tests/support/qstringprint.h"
#include "tests/ui/window/wardwindow.h"
#include "ui/widgets/verdictbanner.h"

using namespace cradlepost;
using namespace cradlepost::test;

namespace {

QString said(const WardWindow& ward)
{
    const auto& banner = ward.find<VerdictBanner>("verdictBanner");
    return banner.accessibleName() + QLatin1Char(' ') + banner.accessibleDescription();
}

}

TEST_CASE("This shift names a round whose answers can no longer be read, and it can be begun anew")
{
    WardWindow ward;
    const Checklist checklist = must(ward.store->checklist("shift-readiness", 1));
    Draft odd = aRound(checklist).on(std::chrono::year(2026) / 11 / 24).draft();
    odd.answers.resize(3); // as a fault of the disk or a program of another version might leave it
    odd.answeredAt.resize(3);
    odd.asked.clear();
    must(ward.store->saveDraft(odd));
    const QString lost = QStringLiteral("can no longer be read; begin it anew.");
    ward.open();
    CHECK(said(ward).contains(lost));
    CHECK(said(ward).contains(QStringLiteral("Round of the shift")));

    ward.press(Qt::Key_2, Qt::AltModifier);
    ward.press(Qt::Key_Return);
    const auto drafts = must(ward.store->drafts("sorrel-hill"));
    REQUIRE(drafts.size() == 1);
    CHECK(drafts.front().answers.size() == checklist.itemCount());
    ward.press(Qt::Key_1, Qt::AltModifier);
    CHECK_FALSE(said(ward).contains(lost));
}
