// SPDX-License-Identifier: MIT
#pragma once

/** The kinds of records that have projections here. */
namespace cradlepost::recordkind {

inline constexpr char unit[] = "unit";
inline constexpr char shiftPattern[] = "shift-pattern";
inline constexpr char people[] = "people";
inline constexpr char checklistAdopted[] = "checklist-adopted";
inline constexpr char round[] = "round";
inline constexpr char roundAmended[] = "round-amended";
inline constexpr char observation[] = "observation";
inline constexpr char gapAction[] = "gap-action";
inline constexpr char noteOfChange[] = "note-of-change";
inline constexpr char stock[] = "stock";
inline constexpr char equipment[] = "equipment";
inline constexpr char warmer[] = "warmer";
inline constexpr char birthExpected[] = "birth-expected";
inline constexpr char fridgeReading[] = "fridge-reading";
inline constexpr char handover[] = "handover";
inline constexpr char distance[] = "distance";
inline constexpr char visit[] = "visit";
inline constexpr char escalation[] = "escalation";

}
