// SPDX-License-Identifier: MIT
#include "sampledocument.h"

#include "core/checklist/reader.h"

#include <doctest/doctest.h>

std::string sampleDocument()
{
    return R"({
"id": "sample",
"version": 3,
"use": "shift",
"languages": ["en", "hi"],
"title": {"en": "Sample", "hi": "नमूना"},
"sections": [{
"id": "room",
"title": {"en": "Room", "hi": "कमरा"},
"items": [{
"id": "room-temperature",
"severity": "critical",
"mayNotApply": false,
"label": {"en": "Room temperature", "hi": "कमरे का तापमान"},
"help": {"en": "At bed height", "hi": "बेड की ऊँचाई पर"},
"whenNotMet": {"en": "Heat", "hi": "गर्म करें"},
"source": "common practice, no source",
"rule": {"kind": "measure", "unit": "°C", "decimals": 1,
"plausible": {"low": "0.5", "high": 50},
"limits": [
{"id": "narrow", "name": {"en": "Narrow", "hi": "कम"}, "low": 26, "high": "28.5", "source": "A"},
{"id": "open", "name": {"en": "Open", "hi": "खुला"}, "low": 25, "source": "B"}
]}
}, {
"id": "draught",
"severity": "minor",
"mayNotApply": true,
"label": {"en": "Draught", "hi": "हवा"},
"whenNotMet": {"en": "Shut", "hi": "बंद करें"},
"source": "C",
"rule": {"kind": "confirm"}
}]
}, {
"id": "corner",
"title": {"en": "Corner", "hi": "कॉर्नर"},
"items": [
{"id": "warmer", "severity": "major", "mayNotApply": false, "label": {"en": "W", "hi": "व"},
"whenNotMet": {"en": "On", "hi": "चालू"}, "source": "C",
"rule": {"kind": "since", "minutes": 30, "source": "D"}},
{"id": "bag", "severity": "critical", "mayNotApply": false, "label": {"en": "B", "hi": "ब"},
"whenNotMet": {"en": "Swap", "hi": "बदलें"}, "source": "C",
"rule": {"kind": "steps", "steps": [
{"id": "seal", "label": {"en": "Seal", "hi": "सील"}},
{"id": "refill", "label": {"en": "Refill", "hi": "भरना"}}
]}},
{"id": "oxytocin", "severity": "critical", "mayNotApply": false, "label": {"en": "O", "hi": "ऑ"},
"whenNotMet": {"en": "Get", "hi": "लाएँ"}, "source": "C",
"rule": {"kind": "count", "par": 10, "expires": true}},
{"id": "kits", "severity": "critical", "mayNotApply": false, "label": {"en": "K", "hi": "क"},
"whenNotMet": {"en": "Make", "hi": "बनाएँ"}, "source": "C",
"rule": {"kind": "kit", "par": 4, "parts": [
{"id": "ties", "label": {"en": "Ties", "hi": "धागे"}, "perKit": 2},
{"id": "blade", "label": {"en": "Blade", "hi": "ब्लेड"}, "perKit": 1}
]}},
{"id": "oxygen", "severity": "major", "mayNotApply": false, "label": {"en": "X", "hi": "ऑ"},
"whenNotMet": {"en": "Order", "hi": "मँगाएँ"}, "source": "C",
"rule": {"kind": "cylinder", "minutes": 120, "flow": "2.5", "source": "E", "sizes": [
{"id": "us-e", "name": {"en": "US E", "hi": "US E"}, "unit": "psi",
"litresPerUnit": "0.28", "residual": 200, "fullPressure": 2015, "source": "F"}
]}}
]
}]
}
)";
}

std::string broken(std::string text, const Breakage& breakage)
{
    const auto at = text.find(breakage.piece);
    REQUIRE_MESSAGE(at != std::string::npos, "the sample has no ", breakage.piece);
    return text.replace(at, breakage.piece.size(), breakage.instead);
}

void checkRefused(const Breakage& breakage)
{
    CAPTURE(breakage.piece);
    CAPTURE(breakage.instead);
    const auto read = cradlepost::readChecklist(broken(sampleDocument(), breakage));
    REQUIRE_FALSE(read.has_value());
    CHECK(read.error().code == cradlepost::ErrorCode::BadDocument);
    CAPTURE(read.error().message);
    for (const std::string& part : breakage.said)
        CHECK_MESSAGE(read.error().message.find(part) != std::string::npos, "not said: ", part);
}
