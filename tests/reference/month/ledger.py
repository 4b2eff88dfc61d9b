# SPDX-License-Identifier: MIT
"""One unit of a database, read from its ledger alone: none of the program's own tables but `record`."""

import datetime as dt
import json
import sqlite3
import zlib
import zoneinfo
from dataclasses import dataclass, field
from fractions import Fraction


def body_of(packed):
    """zlib, then the CRC-32 of the packed bytes, big-endian."""
    stream, crc = packed[:-4], packed[-4:]
    if zlib.crc32(stream) != int.from_bytes(crc, "big"):
        raise SystemExit("a body of the ledger does not fit its CRC-32")
    return json.loads(zlib.decompress(stream))


def moment(ms):
    return dt.datetime.fromtimestamp(0, dt.timezone.utc) + dt.timedelta(milliseconds=ms)


@dataclass
class Item:
    id: str
    section: str
    severity: str
    rule: dict


@dataclass
class Checklist:
    id: str
    version: int
    use: str
    items: list

    def position(self, item):
        return next((at for at, one in enumerate(self.items) if one.id == item), None)


@dataclass
class Shift:
    date: dt.date
    index: int
    code: str
    begins: int  # milliseconds since 1970
    ends: int


@dataclass
class Round:
    id: tuple  # station, seq
    made_at: int
    actor: str
    body: dict
    amendments: list = field(default_factory=list)  # moments

    @property
    def kind(self):
        return self.body["kind"]

    @property
    def outcomes(self):
        return self.body["outcomes"]

    @property
    def day(self):
        return dt.date.fromisoformat(self.body["shift"]["date"])

    @property
    def shift(self):
        return self.body["shift"]["code"]

    @property
    def slot(self):
        return self.body["shift"]["date"], self.body["shift"]["index"]

    @property
    def paper(self):
        return self.body.get("source") == "paper"


@dataclass
class Unit:
    id: str
    zone: zoneinfo.ZoneInfo = None
    patterns: list = field(default_factory=list)  # (from day, [(code, minutes)])
    adopted: list = field(default_factory=list)  # (kind of round, from day, checklist key, chosen limits)
    checklists: dict = field(default_factory=dict)  # (id, version)
    rounds: list = field(default_factory=list)  # of all kinds, by when they were finished
    actions: list = field(default_factory=list)  # (made_at, station, seq, body)
    changes: dict = field(default_factory=dict)  # id: body of the last record
    spot_checks: list = field(default_factory=list)

    def shift_rounds(self):
        """One a shift, in order of time."""
        found = {}
        for one in sorted((r for r in self.rounds if r.kind == "shift"), key=lambda r: (r.slot, r.made_at)):
            found.setdefault(one.slot, one)
        return list(found.values())

    def checklist_of(self, one):
        return self.checklists[one.body["checklist"], one.body["version"]]

    def first_day(self):
        return min(day for kind, day, *_ in self.adopted if kind == "shift")

    def instant(self, day, minutes):
        local = dt.datetime.combine(day, dt.time(minutes // 60, minutes % 60), self.zone)
        return int(local.timestamp()) * 1000

    def shifts(self, first, last, now):
        """The shifts due from `first` to before `last` that have begun by `now`."""
        due = []
        day = max(first, self.first_day())
        while day < last:
            starts = [starts for since, starts in self.patterns if since <= day][-1]
            following = [starts for since, starts in self.patterns if since <= day + dt.timedelta(1)][-1]
            for at, (code, minutes) in enumerate(starts):
                ends = (self.instant(day, starts[at + 1][1]) if at + 1 < len(starts)
                        else self.instant(day + dt.timedelta(1), following[0][1]))
                shift = Shift(day, at, code, self.instant(day, minutes), ends)
                if shift.begins <= now:
                    due.append(shift)
            day += dt.timedelta(1)
        return due


def checklist_from(document):
    items = [Item(i["id"], s["id"], i["severity"], i["rule"]) for s in document["sections"] for i in s["items"]]
    return Checklist(document["id"], document["version"], document.get("use", ""), items)


def take(unit, record):
    station, seq, kind, made_at, actor, packed = record
    body = body_of(packed)
    if kind == "unit":
        unit.zone = zoneinfo.ZoneInfo(body["zone"])
    elif kind == "shift-pattern":
        unit.patterns.append((dt.date.fromisoformat(body["from"]),
                              [(one["code"], one["minutes"]) for one in body["starts"]]))
    elif kind == "checklist-adopted":
        checklist = checklist_from(body["document"])
        key = checklist.id, checklist.version
        unit.checklists[key] = checklist
        use = body["document"]["use"]
        unit.adopted.append((use, dt.date.fromisoformat(body["from"]), key, body["limits"]))
    elif kind == "round":
        unit.rounds.append(Round((station, seq), made_at, actor, body))
    elif kind == "observation":
        unit.spot_checks.append(Round((station, seq), made_at, actor, body))
    elif kind == "round-amended":
        amended = next(r for r in unit.rounds if r.id == tuple(body["amends"]))
        amended.body = body["round"]
        amended.amendments.append(made_at)
    elif kind == "gap-action":
        unit.actions.append((made_at, station, seq, body))
    elif kind == "note-of-change":
        unit.changes[body["id"]] = body


def read_unit(path, name):
    unit = Unit(name)
    database = sqlite3.connect(f"file:{path}?mode=ro", uri=True)
    for record in database.execute("SELECT station, seq, kind, made_at, actor, body FROM record"
                                   " WHERE unit = ? ORDER BY made_at, station, seq", (name,)):
        take(unit, record)
    database.close()
    unit.patterns.sort()
    unit.rounds.sort(key=lambda r: (r.body["finished"], r.id))
    return unit


def written(text):
    """A decimal as it was written, exactly."""
    return Fraction(text.replace(",", "."))
