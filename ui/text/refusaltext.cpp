// SPDX-License-Identifier: MIT
#include "ui/text/refusaltext.h"

#include "core/base/refusal.h"
#include "ui/text/language.h"

#include <algorithm>

namespace cradlepost {

namespace {

struct Words
{
    const char* refusal;
    const char* what; ///< %1 and %2 are the values
    const char* advice;
};

QString filled(QString text, const std::vector<std::string>& values)
{
    for (std::size_t at = 0; at < values.size(); ++at)
        text.replace(QLatin1Char('%') + QString::number(at + 1), qs(values[at]));
    return text;
}

}

std::optional<RefusalText> RefusalText::of(const Error& error)
{
    static constexpr Words words[] = {
        {refusal::pieces, QT_TR_NOOP("The pieces have to be %1 to %2."),
            QT_TR_NOOP("Count single pieces, not packs.")},
        {refusal::lotNumber, QT_TR_NOOP("A lot number has 1 to %1 letters and digits."),
            QT_TR_NOOP("Copy it from the pack, or leave it empty.")},
        {refusal::lastDayMissing, QT_TR_NOOP("The last day of use is missing."),
            QT_TR_NOOP("Read it off the pack.")},
        {refusal::shelfRetired, QT_TR_NOOP("This item is no longer kept."),
            QT_TR_NOOP("To keep it again, choose Change this shelf.")},
        {refusal::bookHolds, QT_TR_NOOP("The book holds %1 of these %2 pieces."),
            QT_TR_NOOP("Count the shelf and enter the count first.")},
        {refusal::levelRange, QT_TR_NOOP("A level is 0 to %1 pieces."),
            QT_TR_NOOP("Count single pieces, not packs.")},
        {refusal::levelOrder,
            QT_TR_NOOP("Never under %1, order at %2, fill up to %3: each is at most the next."),
            QT_TR_NOOP("Change the one that stands out.")},
        {refusal::name, QT_TR_NOOP("A name has 1 to %1 characters."),
            QT_TR_NOOP("Say what the ward calls it.")},
        {refusal::deviceNumber, QT_TR_NOOP("The number on a device has at most %1 characters."),
            QT_TR_NOOP("Copy it from the device, or leave it empty.")},
        {refusal::upkeepDays, QT_TR_NOOP("The days between two services or calibrations are 1 to %1."),
            QT_TR_NOOP("Leave them empty when none is planned.")},
        {refusal::onRegister, QT_TR_NOOP("This device is on the register already."),
            QT_TR_NOOP("Look at the list again.")},
        {refusal::fridgeRange, QT_TR_NOOP("No fridge shows that: a reading is %1 to %2 °C."),
            QT_TR_NOOP("Read the thermometer again.")},
        {refusal::fridgeOrder,
            QT_TR_NOOP("The lowest that was kept is above the reading, or the highest is below it."),
            QT_TR_NOOP("Read all three again; the reading lies between the two.")},
        {refusal::scaleRange, QT_TR_NOOP("A known weight is 1 to %1 g, and a scale shows 0 to %1 g."),
            QT_TR_NOOP("Give both in grams.")},
        {refusal::thermometerRange,
            QT_TR_NOOP("No thermometer of a ward shows that: a reading is %1 to %2 °C."),
            QT_TR_NOOP("Read both again.")},
        {refusal::offBoard, QT_TR_NOOP("This birth is off the board already."),
            QT_TR_NOOP("Put up a new one.")},
        {refusal::handoverTaken, QT_TR_NOOP("This handover was taken already."),
            QT_TR_NOOP("Nothing is left to sign until the next one is given.")},
        {refusal::giverTakes, QT_TR_NOOP("Who gave the handover cannot take it."),
            QT_TR_NOOP("Let the one who comes sign.")},
        {refusal::gapClosed, QT_TR_NOOP("This gap is closed."),
            QT_TR_NOOP("Choose the one that is open now.")},
        {refusal::notMended, QT_TR_NOOP("Nobody has said that it is mended."),
            QT_TR_NOOP("Say first who mended it.")},
        {refusal::menderVerifies, QT_TR_NOOP("Who mended it cannot be the one who looks."),
            QT_TR_NOOP("Let a second person do it.")},
        {refusal::owner, QT_TR_NOOP("Who mends it is said in at most %1 characters."),
            QT_TR_NOOP("Give initials or a role.")},
        {refusal::remark, QT_TR_NOOP("A remark has at most %1 characters."), QT_TR_NOOP("Shorten it.")},
        {refusal::escalationOrder, QT_TR_NOOP("Each has to hear later than the one before."),
            QT_TR_NOOP("Give rising numbers, or “never”.")},
        {refusal::distanceRange, QT_TR_NOOP("A way between units is 0 to %1 km."),
            QT_TR_NOOP("Give it in kilometres.")},
        {refusal::tableHead, QT_TR_NOOP("The table does not begin as it should."),
            QT_TR_NOOP("Its first line is %1.")},
        {refusal::tableCell, QT_TR_NOOP("Line %1 of the table: “%2” cannot be taken. Nothing was."),
            QT_TR_NOOP("Mend that line, then take in the table again.")},
        {refusal::visitLooked, QT_TR_NOOP("The items looked at are 1 to %1, as many as the sample has."),
            QT_TR_NOOP("Count them again on the sheet.")},
        {refusal::visitNotMet, QT_TR_NOOP("Not more items can be not met than the %1 looked at."),
            QT_TR_NOOP("Count both again.")},
        {refusal::unitName, QT_TR_NOOP("The name of a ward is one line, and not empty."),
            QT_TR_NOOP("Say what the ward is called.")},
        {refusal::initials, QT_TR_NOOP("“%1” are no initials of 1 to 12 characters."),
            QT_TR_NOOP("Give initials, no full names.")},
        {refusal::initialsTwice, QT_TR_NOOP("The initials “%1” stand twice in the list."),
            QT_TR_NOOP("Add a letter to one of them.")},
        {refusal::timeZone, QT_TR_NOOP("The time zone “%1” is not known to this computer."),
            QT_TR_NOOP("Choose one from the list, for example Asia/Kolkata.")},
        {refusal::shiftText, QT_TR_NOOP("“%1” is no shift."),
            QT_TR_NOOP("Write start times and names, for example 07:00 day, 19:00 night.")},
        {refusal::shiftOrder, QT_TR_NOOP("The shifts do not follow one another through the day."),
            QT_TR_NOOP("Give one to four start times in order, each with a name of its own.")},
        {refusal::line, QT_TR_NOOP("This wants one line of %1 to %2 characters."),
            QT_TR_NOOP("Say it in a few words; nothing about a patient.")},
        {refusal::shiftsMissing, QT_TR_NOOP("This ward has no shifts yet."), QT_TR_NOOP("Give them in Set-up.")},
        {refusal::checklistMissing, QT_TR_NOOP("This ward has no checklist for that yet."),
            QT_TR_NOOP("Take one into use in Set-up.")},
        {refusal::shiftDone, QT_TR_NOOP("This shift has its round already."),
            QT_TR_NOOP("Re-check what was mended instead.")},
        {refusal::nothingChanged, QT_TR_NOOP("Nothing is different."), QT_TR_NOOP("Change an answer first.")},
        {refusal::endsFirst, QT_TR_NOOP("The end lies before the beginning."),
            QT_TR_NOOP("Give the later one as the end.")},
        {refusal::packageMissing, QT_TR_NOOP("This computer lacks a part that this needs."),
            QT_TR_NOOP("Have the package %1 installed.")},
        {refusal::partMissing, QT_TR_NOOP("A part of this program is missing: %1."),
            QT_TR_NOOP("Have the program installed again.")},
        {refusal::nobodyNamed, QT_TR_NOOP("Nobody is named."),
            QT_TR_NOOP("Give your initials, 1 to 12 characters.")},
        {refusal::aheadOfNow, QT_TR_NOOP("This time lies ahead of now."),
            QT_TR_NOOP("Look at the time that was typed and at the clock of this computer.")},
        {refusal::gone, QT_TR_NOOP("It is not there any more."),
            QT_TR_NOOP("Look at the list again and choose anew.")},
    };
    const auto* const found = std::find_if(
        std::begin(words), std::end(words), [&](const Words& one) { return error.refusal == one.refusal; });
    if (found == std::end(words))
        return std::nullopt;
    RefusalText text;
    text.what = filled(tr(found->what), error.values);
    text.advice = filled(tr(found->advice), error.values);
    return text;
}

}
