// SPDX-License-Identifier: MIT
#pragma once

#include "core/checklist/checklist.h"

#include <functional>
#include <map>
#include <QString>
#include <string>

class QWidget;

namespace cradlepost::test {

/** What is typed for an item: each letter a key, '\n' is Enter. */
using Keys = std::map<std::string, QString>;

/** Keys that meet the item in a shift that began at 07:00: yes, a reading inside its limits, enough pieces. */
QString meetingKeys(const Item& item);

/** Id of the item whose card has the keyboard; empty when no card has it. */
std::string cardWithFocus();

/** Sends the keys to whatever has the keyboard, one by one, as a person would. */
void type(const QString& keys);

/**
 * Walks on from the card that has the keyboard until no card has it or `stop` says so, with nothing but keys:
 * those of `keys` for the items named there, meetingKeys() for the others. Returns the number of items answered.
 */
int walkByKeys(const Checklist& checklist, const Keys& keys, const std::function<bool(int)>& stop = {});

}
