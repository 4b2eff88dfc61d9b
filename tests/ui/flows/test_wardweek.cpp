// SPDX-License-Identifier: MIT
// A week of a ward, entered at the real window with keys and clicks alone and read off its pages. The figures
// are worked by hand in the comments; the tails of Poisson and negative binomial distributions were summed term
// by term outside the program.
#include "tests/support/qstringprint.h"
#include "tests/ui/flows/wardweek.h"
#include "ui/widgets/factsheet.h"
#include "ui/widgets/verdictbanner.h"

#include <QLineEdit>

using namespace cradlepost;
using namespace cradlepost::test;

namespace {

constexpr char unit[] = "sorrel-hill";

QString factOf(const WardWeek& ward, const char* title)
{
    for (const auto* sheet : ward.window->findChildren<FactSheet*>()) {
        const Fact& fact = sheet->fact();
        if (fact.title == QString::fromUtf8(title))
            return QStringList{fact.value, fact.aside, fact.lines.join(QLatin1Char('|'))}.join(
                QLatin1Char('|'));
    }
    return {};
}

VerdictState verdict(const WardWeek& ward)
{
    ward.open(Qt::Key_1);
    return ward.find<VerdictBanner>("verdictBanner").state();
}

/** What a round counts on the shelves: as many whole kits, and lots as on the packs. */
Keys counts(int kits, const char* oxytocin, const char* vitaminK)
{
    QString parts;
    for (const int each : {1, 2, 1, 1, 5, 2})
        parts += QString::number(kits * each) + QLatin1Char('\n');
    return {{"delivery-kits", parts}, {"oxytocin", QLatin1String(oxytocin) + QLatin1Char('\n')},
        {"vitamin-k", QLatin1String(vitaminK) + QLatin1Char('\n')}, {"fridge-temperature", QStringLiteral("4.5\n")}};
}

/** Deliveries, a round with all met, a birth at Warmer 1, the first handover. */
void monday(WardWeek& ward)
{
    ward.until(23, 7, 10);
    ward.inCharge("AB");
    ward.enter("Oxytocin", "Came in", "4", "2026-11-25", "OX1");
    ward.enter("Oxytocin", "Came in", "20", "2027-06-30", "OX2");
    ward.enter("Vitamin K", "Came in", "12", "2027-03-31", "VK1");
    for (const auto& [shelf, pieces] : {std::pair("Plastic sheets", "8"), std::pair("Cord ties", "16"),
             std::pair("Blades", "8"), std::pair("Soap", "8"), std::pair("Gauze", "40"),
             std::pair("Cloths", "16")})
        ward.enter(shelf, "Came in", pieces);
    // 8 of each part for one kit: 8 whole kits, 4 wanted. All are at or above the level to order at (4 kits,
    // 15, 10), and nothing was used yet, so nothing is ordered. 4 ampoules end in two days; at no use at all each
    // of the 36 with a last day would expire.
    CHECK(ward.text("storesAnswer") == QStringLiteral("Nothing has to be ordered now"));
    CHECK(ward.text("storesKits").startsWith(QStringLiteral("Kits that the shelf can make up: 8 of 4.")));
    CHECK(ward.rowOf("shelvesTable", "Oxytocin")
              .contains(QStringLiteral("4 until 2026-11-25 (OX1), 20 until 2027-06-30 (OX2)")));
    CHECK(ward.rowOf("shelvesTable", "Oxytocin").contains(QStringLiteral("24 of 40")));
    CHECK(ward.text("storesExpiring")
              .startsWith(QStringLiteral(
                  "Pieces that expire: 4 within 30 days, 0 in 31 to 60, 0 in 61 to 90. At today's use 36 will")));

    ward.until(23, 7, 40);
    ward.walkRound(counts(8, "4 2026-11-25, 20 06/2027", "12 03/2027"));
    CHECK(verdict(ward) == VerdictState::Ready);
    ward.open(Qt::Key_4, Qt::Key_1);
    CHECK(ward.find<ActionTable>("differencesTable").itemCount() == 0); // round and book agree

    ward.until(23, 9, 0);
    ward.readFridge("4.5");
    ward.until(23, 9, 10);
    ward.expectBirth("1500");
    // 30 minutes to warm up: on by 14:30. 9:10 to 15:00 is 5 h and some.
    CHECK(ward.text("boardAnswer") == QStringLiteral("Switch Warmer 1 on by 14:30"));
    CHECK(ward.rowOf("birthsTable", "About 15:00").contains(QStringLiteral("a kit is ready, In 5 h")));
    ward.until(23, 14, 20);
    ward.switchWarmer("Warmer 1");
    CHECK(ward.rowOf("warmersTable", "Warmer 1").contains(QStringLiteral("ready at 14:50")));
    ward.until(23, 15, 10);
    CHECK(ward.rowOf("warmersTable", "Warmer 1").contains(QStringLiteral("on for 50 min, since 14:20")));
    CHECK(ward.rowOf("birthsTable", "About 15:00").contains(QStringLiteral("Warmer 1 is warm")));
    ward.born();
    CHECK(ward.text("boardAnswer") == QStringLiteral("No birth is on the board"));
    ward.useForBirth();
    ward.until(23, 16, 0);
    ward.switchWarmer("Warmer 1");
    ward.until(23, 18, 0);
    ward.readFridge("5.0");
    // 8 kits counted, one birth since.
    ward.open(Qt::Key_1);
    CHECK(factOf(ward, "Births expected") == QStringLiteral("none|7 whole kits left|"));

    ward.until(23, 18, 50);
    ward.signHandover();
    CHECK(ward.text("handoverAnswer") == QStringLiteral("Handover: Ready"));
    CHECK(ward.text("situationPart") == QStringLiteral("No critical gap is open\nNo birth is on the board"));
    CHECK(ward.text("assessmentPart") == QStringLiteral("Nothing is open and nothing runs out"));
    CHECK(ward.text("recommendationPart") == QStringLiteral("Walk the round of Night by 20:00"));
    ward.until(23, 19, 5);
    ward.inCharge("CD");
    ward.signHandover();
    REQUIRE(must(ward.store->lastHandover(unit))->taken.has_value());
    CHECK(must(ward.store->lastHandover(unit))->taken->by == "CD");
}

/** The warmer fails its test; the spare steps in, passes it, and warms for the next birth. */
void tuesday(WardWeek& ward)
{
    ward.until(24, 7, 20);
    ward.inCharge("AB");
    Keys keys = counts(7, "3 2026-11-25, 20 06/2027", "11 03/2027");
    keys["warmer-function-test"] = QStringLiteral("-\n"); // no heat
    ward.walkRound(keys);
    // 62 of 63; the one gap is major: ready with gaps, due in 24 hours.
    CHECK(verdict(ward) == VerdictState::ReadyWithGaps);
    ward.open(Qt::Key_3);
    CHECK(ward.find<ActionTable>("openGapsTable").itemCount() == 1);
    CHECK(ward.row("openGapsTable", 0).contains(QStringLiteral("Who nobody yet, By Wed 07:20, 24 h")));
    ward.clickRow("openGapsTable", "Warmer function test");
    REQUIRE(QApplication::focusWidget() == &ward.find("ownerEdit"));
    type(QStringLiteral("engineer\n"));
    CHECK(ward.row("openGapsTable", 0).contains(QStringLiteral("Who engineer")));

    ward.until(24, 7, 30);
    ward.happensTo("Warmer 1", "Goes out: failed its test");
    CHECK(ward.text("deviceSaid") == QStringLiteral("Kept; the spare changed places with it."));
    CHECK(ward.rowOf("devicesTable", "Warmer 1").contains(QStringLiteral("State out for repair, 0 min")));
    CHECK(ward.rowOf("devicesTable", "Warmer 2").contains(QStringLiteral("State in use")));
    CHECK(ward.text("storesSentence").contains(QStringLiteral("Warmer 1: out for repair for 0 min.")));

    ward.until(24, 7, 40);
    ward.open(Qt::Key_3);
    ward.click("recheckItemButton"); // just that item, with Warmer 2
    const Checklist checklist = must(ward.store->checklist("shift-readiness", 1));
    REQUIRE(cardWithFocus() == "warmer-function-test");
    CHECK(walkByKeys(checklist, {}) == 1);
    ward.press(Qt::Key_Return, Qt::ControlModifier);
    CHECK(verdict(ward) == VerdictState::Ready);
    ward.open(Qt::Key_3);
    CHECK(ward.find<ActionTable>("openGapsTable").itemCount() == 0);
    CHECK(ward.row("mendedGapsTable", 0).contains(QStringLiteral("open 20 min, found 1 time"))); // 7:20 to 7:40

    ward.until(24, 8, 0);
    ward.readFridge("4.2");
    ward.until(24, 12, 0);
    ward.expectBirth("1600");
    CHECK(ward.text("boardAnswer") == QStringLiteral("Switch Warmer 2 on by 15:30"));
    CHECK(ward.find<ActionTable>("warmersTable").itemCount() == 1); // Warmer 1 is not there
    ward.until(24, 15, 25);
    ward.switchWarmer("Warmer 2");
    ward.until(24, 16, 10);
    CHECK(ward.rowOf("warmersTable", "Warmer 2").contains(QStringLiteral("warm since 15:55")));
    ward.born();
    ward.useForBirth();
    ward.switchWarmer("Warmer 2");
    ward.open(Qt::Key_1);
    CHECK(factOf(ward, "Births expected") == QStringLiteral("none|6 whole kits left|"));
    ward.until(24, 18, 0);
    ward.readFridge("4.8");
}

/** The fridge was too warm over night; a birth without a round; the second handover. */
void wednesday(WardWeek& ward)
{
    ward.until(25, 7, 15);
    ward.readFridge("9.4", "4.1", "10.2");
    // Last read well at 18:00, 13 h 15 min ago: it may have been above 8 °C for the ten hours of an alarm.
    CHECK(factOf(ward, "Ward fridge")
        == QStringLiteral("9.4 °C, 07:15|2 to 8 °C|set apart what is inside, label it “do not "
                          "use”, ask who is responsible."));
    // 4 + 20 came in, two were used of the lot that ends first.
    CHECK(ward.text("fridgeAbout").contains(QStringLiteral(
        "Inside at the last one: 2 Oxytocin ampoules OX1 and 20 Oxytocin ampoules OX2.")));
    ward.until(25, 8, 15);
    ward.readFridge("8.6");
    ward.until(25, 10, 0);
    ward.readFridge("6.5");
    CHECK(factOf(ward, "Ward fridge").endsWith(QStringLiteral("|within its limits.")));
    // Outside from 7:15 to 8:15 at least.
    CHECK(ward.text("fridgeAbout").startsWith(QStringLiteral(
        "Too warm from 07:15, up to 10.2 °C, for 60 min at least. It may have been long enough for an alarm.")));

    ward.until(25, 11, 50);
    ward.expectBirth("1230");
    CHECK(ward.text("boardAnswer") == QStringLiteral("Switch Warmer 2 on by 12:00"));
    ward.switchWarmer("Warmer 2");
    ward.until(25, 12, 40);
    CHECK(ward.rowOf("birthsTable", "About 12:30").contains(QStringLiteral("kits were not counted")));
    ward.born();
    ward.useForBirth();
    ward.until(25, 13, 30);
    ward.switchWarmer("Warmer 2");
    ward.until(25, 18, 30);
    ward.readFridge("5.2");

    ward.until(25, 18, 45);
    ward.open(Qt::Key_1);
    ward.press(Qt::Key_H);
    CHECK(ward.text("changesPart")
        == QStringLiteral("Was: Ready. Now: **No round in this shift**\nShorter: Vitamin K ampoules\nOut for repair: "
                          "Warmer 1"));
    CHECK(ward.text("handoverAnswer") == QStringLiteral("Handover: No round in this shift"));
    // Vitamin K: 12 - 3 = 9, at the level of 10 or below it. One a day on Monday and Tuesday: the tenth would be
    // wanted nine days from today, 4 December.
    CHECK(ward.text("assessmentPart")
        == QStringLiteral(
            "Short: **Vitamin K ampoules**, 9 left, runs out 4 Dec\nWarmer 1 is out for repair"));
    CHECK(ward.text("recommendationPart")
        == QStringLiteral("Ask after the repair of Warmer 1\nWalk the round of Night by 20:00\nRestock "
                          "Vitamin K ampoules"));
    ward.signHandover();
    CHECK(ward.text("changesPart") == QStringLiteral("Nothing has changed"));
}

/** An expired lot is taken off, a wrong count put right, the warmer comes back. */
void thursday(WardWeek& ward)
{
    ward.until(26, 7, 20);
    ward.walkRound(counts(5, "1 2026-11-25, 20 06/2027", "8 03/2027"));
    CHECK(verdict(ward) == VerdictState::Ready); // 20 in date, 10 wanted
    ward.until(26, 7, 30);
    ward.open(Qt::Key_4, Qt::Key_1);
    CHECK(ward.text("storesSentence").contains(QStringLiteral("1 expired piece to take off.")));
    CHECK(ward.text("storesSentence").contains(QStringLiteral("The last round counted otherwise 1 time.")));
    CHECK(ward.text("storesSentence").contains(QStringLiteral("Warmer 1: out for repair for 2 days.")));
    CHECK(ward.text("storesSentence").contains(QStringLiteral("Ward fridge: a reading is due.")));
    CHECK(ward.rowOf("shelvesTable", "Oxytocin").contains(QStringLiteral("take off 1 expired")));
    CHECK(ward.rowOf("differencesTable", "Vitamin K")
              .contains(QStringLiteral("counted 8, the book says 9")));
    ward.clickRow("differencesTable", "Vitamin K");
    ward.tabTo("whoEdit");
    ward.press(Qt::Key_Return);
    CHECK(ward.find<ActionTable>("differencesTable").itemCount() == 0);
    ward.enter("Oxytocin", "Expired, taken off", "1");
    CHECK_FALSE(ward.text("storesSentence").contains(QStringLiteral("expired")));
    ward.until(26, 7, 40);
    ward.readFridge("4.6");
    ward.until(26, 13, 30);
    ward.happensTo("Warmer 1", "In use again");
    CHECK(ward.rowOf("devicesTable", "Warmer 1").contains(QStringLiteral("State in use")));
    CHECK(ward.rowOf("devicesTable", "Warmer 2").contains(QStringLiteral("State spare")));
}

/** What the pages say on Friday at 10:00. */
void friday(WardWeek& ward)
{
    ward.until(27, 10, 0);
    CHECK(verdict(ward) == VerdictState::NoRound);
    ward.open(Qt::Key_4, Qt::Key_1);
    // Days since the delivery: Monday 1 birth, Tuesday 1, Wednesday 1, Thursday 0; 0.75 a day. All came in on
    // one day only, so the next delivery is reckoned 30 days after it: 23 December, in 26 days.
    // Single pieces: 1, 1, 1, 0 spread less than Poisson's (variance 0.25), so Poisson with mean 26 x 0.75 =
    // 19.5: P(N <= 20) = 0.603, P(N <= 8) = 0.003, P(N <= 5) = 0.0001; 27 is the least with P >= 0.95.
    // Oxytocin: 20 left last 26.7 days = 53 shifts = 0.9 months; at most 27, so filled up to 40: 20.
    CHECK(ward.rowOf("shelvesTable", "Oxytocin")
              .endsWith(QStringLiteral("Oxytocin ampoules, 20 until 2027-06-30 (OX2), order 20, Lasts 26 days, "
                                       "In date 20 of 40, 60% to last until 23 Dec")));
    // Vitamin K: 8 last 10.7 days; filled up to 27, more than its 24: 19, in packs of 6: 24.
    CHECK(ward.rowOf("shelvesTable", "Vitamin K")
              .endsWith(QStringLiteral("Vitamin K ampoules, 8 until 2027-03-31 (VK1), order 24, Lasts 10 days, "
                                       "In date 8 of 24, 0% to last until 23 Dec")));
    // Sheets, blades, soap: 8 - 3 = 5 last 6.7 days; up to 27: 22.
    for (const char* part : {"Plastic sheets", "Blades", "Soap"})
        CHECK(ward.rowOf("shelvesTable", part)
                  .endsWith(QLatin1String(part)
                      + QStringLiteral(", order 22, Lasts 6 days, In date 5 of 12, 0% to last until 23 Dec")));
    // Ties and cloths: 2, 2, 2, 0, variance 1 below the mean of 1.5: Poisson with mean 39; 50 is the least with
    // P >= 0.95; 16 - 6 = 10 left: 40.
    for (const char* part : {"Cord ties", "Cloths"})
        CHECK(ward.rowOf("shelvesTable", part)
                  .endsWith(QLatin1String(part)
                      + QStringLiteral(", order 40, Lasts 6 days, In date 10 of 24, 0% to last until 23 Dec")));
    // Gauze: 5, 5, 5, 0, variance 6.25 above the mean of 3.75: gamma-Poisson of size 3.75^2 / 2.5 = 5.625 with
    // mean 97.5; 176 is the least with P >= 0.95, P(N <= 25) = 0.010; 25 left: 151, in packs of 10: 160.
    CHECK(ward.rowOf("shelvesTable", "Gauze")
              .endsWith(QStringLiteral("Gauze, order 160, Lasts 6 days, In date 25 of 60, 1% to last until 23 Dec")));
    // All six parts last equally long; the first of them by name.
    CHECK(ward.text("storesAnswer") == QStringLiteral("Blades: enough for 6 days more, order 22"));
    CHECK(ward.text("storesSentence").startsWith(QStringLiteral("8 items to order.")));
    CHECK(ward.text("storesKits").startsWith(QStringLiteral("Kits that the shelf can make up: 5 of 4.")));
    CHECK(ward.text("storesExpiring")
        == QStringLiteral("Nothing more expires within 90 days."));
    ward.clickRow("shelvesTable", "Oxytocin");
    CHECK(ward.text("shelfAbout")
        == QStringLiteral("Fill up to 40, order at 15, never under 5.\nLasts about 53 shifts, 0.9 months.\nUsed: "
                          "0.8 a day.\nTo have enough in 95 of 100 cases, order when 27 are left."));

    ward.open(Qt::Key_4, Qt::Key_2);
    ward.choose("devicesTable", "Warmer 1");
    // On the register for 110 hours, out for 54: 56 of 110, one failure in 56 hours. Passed on Monday and
    // Thursday, failed on Tuesday. Service after 180 days: 21 May.
    CHECK(ward.rowOf("devicesTable", "Warmer 1").contains(QStringLiteral("service 21 May")));
    CHECK(ward.text("deviceAbout")
        == QStringLiteral("In order in 2 of 3 rounds of the last 30 days.\nLast found not in order: Tue 07:20.\nThere "
                          "for use 51% of the last year.\n1 failure, one in 2 days."));
    ward.choose("devicesTable", "Warmer 2");
    CHECK(ward.text("deviceAbout") == QStringLiteral("There for use 100% of the last year."));

    ward.readFridge("4.4");
    // Each reading stands until the next: 4.5 for 9 h, 5.0 for 14, 4.2 for 10, 4.8 for 13.25, 9.4 for 1, 8.6 for
    // 1.75, 6.5 for 8.5, 5.2 for 13.167, 4.6 for 26.333 (at most 24): by Haynes' formula 5.07 °C. Of the parts
    // of the days, 6 to 14 and 14 to 6, the one of Thursday evening was left out.
    CHECK(ward.text("fridgeAbout").contains(QStringLiteral("Mean kinetic temperature over 60 days: 5.1 °C.")));
    CHECK(ward.text("fridgeAbout").endsWith(QStringLiteral("1 reading left out in 60 days; two a day are due.")));
    CHECK(factOf(ward, "Ward fridge")
        == QStringLiteral("4.4 °C, 10:00|2 to 8 °C|within its limits."));

    // Since the handover of Wednesday: vitamin K is as short as it was, the warmer is back.
    ward.open(Qt::Key_1);
    ward.press(Qt::Key_H);
    CHECK(ward.text("changesPart").contains(QStringLiteral("Back from repair: Warmer 1")));
    CHECK(ward.text("assessmentPart")
              .contains(QStringLiteral("Short: **Vitamin K ampoules**, 8 left, runs out 8 Dec")));
    ward.open(Qt::Key_3);
    CHECK(ward.find<ActionTable>("openGapsTable").itemCount() == 0);
}

}

TEST_CASE("a week of a ward: deliveries, births, a warmer and its spare, an expired lot, a warm fridge")
{
    WardWeek ward;
    monday(ward);
    tuesday(ward);
    wednesday(ward);
    thursday(ward);
    friday(ward);

    CHECK_FALSE(must(ward.store->verify()).fault);
    const QStringList before = ward.allPages();
    must(ward.store->rebuild());
    CHECK_FALSE(must(ward.store->verify()).fault);
    ward.window->ward().refresh();
    CHECK(ward.allPages() == before);
}
