// SPDX-License-Identifier: MIT
#include "ui/pages/handover/handoverpage.h"

#include "tests/support/qstringprint.h"
#include "tests/ui/window/wardwindow.h"

#include <QFile>
#include <QPrinter>
#include <QPushButton>

using namespace cradlepost;
using namespace cradlepost::test;
using namespace std::chrono;

TEST_CASE("H on This shift opens the handover in the order situation, background, assessment, recommendation")
{
    WardWindow ward;
    const Instant now = ward.clock.now();
    must(ward.store->noteBirth("sorrel-hill",
        {.birth = "b1", .at = now, .expected = now + 150min, .babies = 2, .preterm = true}, "AB"));
    must(ward.store->switchWarmer("sorrel-hill", {.device = "warmer-1", .at = now, .on = true}, "AB"));
    ward.walk({"mask-size-0"});
    ward.open();
    ward.press(Qt::Key_H);
    REQUIRE(ward.window->place() == Place::Handover);
    CHECK(ward.text("handoverAnswer").startsWith(QStringLiteral("Handover: ")));
    CHECK(ward.text("situationPart").contains(QStringLiteral("**1 birth** expected")));
    CHECK(ward.text("backgroundPart").contains(QStringLiteral("about 16:30, twins, preterm")));
    CHECK(ward.text("backgroundPart").contains(QStringLiteral("**ready at 14:30**")));
    CHECK(ward.text("assessmentPart").contains(QStringLiteral("nobody yet")));
    CHECK(ward.text("recommendationPart").startsWith(QStringLiteral("Switch **Warmer 2** on by **16:00**")));
    ward.press(Qt::Key_Escape);
    CHECK(ward.window->place() == Place::ThisShift);
}

TEST_CASE("the outgoing signs, cannot take it, the incoming takes it; the next one begins with what changed")
{
    WardWindow ward;
    ward.walk({"mask-size-0"});
    ward.open();
    ward.press(Qt::Key_H);
    ward.find("signButton").setFocus();
    ward.press(Qt::Key_Space);
    auto last = must(ward.store->lastHandover("sorrel-hill"));
    REQUIRE(last.has_value());
    CHECK(last->given.by == "A. T.");
    CHECK_FALSE(last->taken.has_value());
    CHECK(ward.text("signedLabel").contains(QStringLiteral("Given by A. T.")));
    ward.press(Qt::Key_Space); // the same person
    CHECK(ward.text("handoverSaid").startsWith(QStringLiteral("Who gave the handover cannot take it")));
    CHECK_FALSE(must(ward.store->lastHandover("sorrel-hill"))->taken.has_value());
    ward.window->ward().setActor("N. K.");
    CHECK(ward.find<QPushButton>("signButton").text() == QStringLiteral("Take over as N. K."));
    ward.press(Qt::Key_Space);
    last = must(ward.store->lastHandover("sorrel-hill"));
    REQUIRE(last->taken.has_value());
    CHECK(last->taken->by == "N. K.");
    CHECK(ward.text("changesPart") == QStringLiteral("Nothing has changed"));
    must(ward.store->noteBirth(
        "sorrel-hill", {.birth = "b1", .at = ward.clock.now(), .expected = ward.clock.now() + 3h}, "AB"));
    ward.tick(1min);
    CHECK(ward.text("changesPart").startsWith(QStringLiteral("Newly expected: birth about 17:00, one baby")));
    CHECK_FALSE(must(ward.store->verify()).fault);
}

TEST_CASE("nobody named signs nothing")
{
    WardWindow ward;
    ward.open();
    ward.window->ward().setActor({});
    ward.press(Qt::Key_H);
    ward.find("signButton").setFocus();
    ward.press(Qt::Key_Space);
    CHECK(ward.text("handoverSaid") == QStringLiteral("First say who signs: choose or type initials."));
    CHECK_FALSE(must(ward.store->lastHandover("sorrel-hill")).has_value());
}

TEST_CASE("the handover is saved as one page of PDF, also when nearly everything is missing")
{
    WardWindow ward;
    const Checklist checklist = must(ward.store->checklist("shift-readiness", 1));
    std::vector<std::string> gaps;
    for (std::size_t at = 0; at < checklist.itemCount(); ++at)
        gaps.push_back(checklist.item(at).id);
    ward.walk(gaps);
    for (int n = 0; n < 12; ++n)
        must(ward.store->noteBirth("sorrel-hill",
            {.birth = "b" + std::to_string(n),
                .at = ward.clock.now(),
                .expected = ward.clock.now() + hours(n)},
            "AB"));
    ward.open();
    ward.press(Qt::Key_H);
    auto* page = ward.window->findChild<HandoverPage*>();
    REQUIRE(page);
    const std::string file = ward.folder.file("handover.pdf");
    must(page->save(qs(file))); // refuses what is longer than its page
    QFile pdf(qs(file));
    REQUIRE(pdf.open(QIODevice::ReadOnly));
    CHECK(pdf.readAll().startsWith("%PDF"));
}

TEST_CASE("the handover is printed on A4, all of it on one page")
{
    WardWindow ward;
    ward.walk({"mask-size-0"});
    ward.open();
    ward.press(Qt::Key_H);
    auto* page = ward.window->findChild<HandoverPage*>();
    REQUIRE(page);
    const QString file = qs(ward.folder.file("printed.pdf"));
    QPrinter printer;
    printer.setOutputFormat(QPrinter::PdfFormat);
    printer.setOutputFileName(file);
    CHECK(page->print(printer));
    CHECK(printer.pageLayout().pageSize().id() == QPageSize::A4);
    QFile pdf(file);
    REQUIRE(pdf.open(QIODevice::ReadOnly));
    const QByteArray bytes = pdf.readAll();
    CHECK(bytes.startsWith("%PDF"));
    CHECK(bytes.count("/Type /Page\n") == 1);
    QPrinter broken;
    broken.setOutputFormat(QPrinter::PdfFormat);
    broken.setOutputFileName(qs(ward.folder.file("nowhere/printed.pdf")));
    CHECK_FALSE(page->print(broken));
}

TEST_CASE("a ward of many people signs in a small window with large letters, nobody beside the page")
{
    WardWindow ward;
    std::vector<Person> people;
    for (const char* initials : {"NV", "AQ", "TR", "JE", "MB", "HU", "SY", "DK", "PL"})
        people.push_back({.initials = initials, .role = "in charge"});
    must(ward.store->setPeople("sorrel-hill", people, "A. T."));
    applyTheme(*qApp, makeTheme(Scheme::Light, 2.0));
    ward.open();
    ward.press(Qt::Key_H);
    const auto& page = ward.find("handoverAnswer");
    const int room = page.parentWidget()->parentWidget()->width(); // what the scroll area shows
    for (const Person& person : people) {
        CAPTURE(person.initials);
        const auto& choice = ward.find(("person-" + person.initials).c_str());
        CHECK(choice.isVisible());
        CHECK(choice.mapTo(page.parentWidget(), choice.rect().topRight()).x() < room);
    }
    ward.find("person-NV").setFocus();
    for (std::size_t at = 0; at < people.size(); ++at)
        ward.press(Qt::Key_Tab);
    CHECK(QApplication::focusWidget()->objectName() == QStringLiteral("initialsEdit")); // after all the people
    applyTheme(*qApp, makeTheme(Scheme::Light));
}

TEST_CASE("the assessment says why each gap is open")
{
    WardWindow ward;
    ward.walk({"mask-size-0"});
    ward.open();
    ward.press(Qt::Key_H);
    const QStringList lines = ward.text("assessmentPart").split(QLatin1Char('\n'));
    CHECK(lines.front().startsWith(
        QStringLiteral("**Mask size 0, for a small baby** · absent · nobody yet · by ")));
}
