// SPDX-License-Identifier: MIT
#include "ui/text/boardtext.h"

#include <algorithm>

namespace cradlepost {

QString BoardText::babies(int babies, bool preterm)
{
    const QString names[] = {tr("one baby"), tr("twins"), tr("triplets"), tr("quadruplets")};
    const QString many = names[std::clamp(babies, 1, 4) - 1];
    //: %1 is how many: "twins"
    return preterm ? tr("%1, preterm").arg(many) : many;
}

QString BoardText::device(const std::string& id) const
{
    const auto found = m_board.devices.devices.find(id);
    const bool named = found != m_board.devices.devices.end() && !found->second.device.label.empty();
    return qs(named ? found->second.device.label : id);
}

QString BoardText::birth(const ExpectedBirth& birth) const
{
    return tr("about %1, %2").arg(m_times.moment(birth.expected, m_now), babies(birth.babies, birth.preterm));
}

QString BoardText::birth(const std::string& id) const
{
    for (const BirthCover& cover : m_board.births) {
        if (cover.birth.birth == id)
            return birth(cover.birth);
    }
    return {};
}

QString BoardText::place(const BabyPlace& place) const
{
    const QString name = device(place.device);
    switch (place.place) {
    case WarmPlace::Ready:
        return tr("%1 is warm").arg(name);
    case WarmPlace::Warming:
        return tr("%1 is warm from %2").arg(name, m_times.moment(*place.readyAt, m_now));
    case WarmPlace::SwitchOn:
        return tr("switch %1 on by %2").arg(name, m_times.moment(*place.switchOnBy, m_now));
    case WarmPlace::Late:
        return place.switchOnBy
            ? tr("switch %1 on now: warm from %2, too late").arg(name, m_times.moment(*place.readyAt, m_now))
            : tr("%1 is warm from %2, too late").arg(name, m_times.moment(*place.readyAt, m_now));
    case WarmPlace::None:
        break;
    }
    return tr("no warmer is free");
}

QString BoardText::places(const BirthCover& cover) const
{
    QStringList all;
    for (const BabyPlace& one : cover.places)
        all << place(one);
    return all.join(tr("; "));
}

QString BoardText::kit(const BirthCover& cover) const
{
    if (!m_board.kits)
        return tr("kits were not counted");
    return cover.kit ? tr("a kit is ready") : tr("no kit is left");
}

QString BoardText::running(const WarmerRow& row) const
{
    if (!row.standing.onSince)
        return tr("off, as far as entered"); // a round may have seen it on
    return tr("on for %1, since %2")
        .arg(TimeText::span(row.standing.onFor), m_times.moment(*row.standing.onSince, m_now));
}

QString BoardText::warm(const WarmerRow& row) const
{
    if (!row.standing.readyAt)
        return {};
    const QString at = m_times.moment(*row.standing.readyAt, m_now);
    return row.standing.state == WarmerState::Ready ? tr("warm since %1").arg(at) : tr("ready at %1").arg(at);
}

QString BoardText::offByMistake(const std::string& device) const
{
    for (const OffTooSoon& off : m_board.offTooSoon) {
        if (off.device == device)
            return tr("went off at %1 with a birth expected about %2: by mistake?")
                .arg(m_times.moment(off.off, m_now), m_times.moment(off.expected, m_now));
    }
    return {};
}

QString BoardText::answer() const
{
    if (m_board.births.empty())
        return tr("No birth is on the board");
    const BabyPlace* first = nullptr;
    for (const BirthCover& cover : m_board.births) {
        for (const BabyPlace& one : cover.places) {
            if (one.place == WarmPlace::Late || one.place == WarmPlace::None)
                return tr("A baby %1 has no warm place in time").arg(birth(cover.birth));
            if (one.switchOnBy && (first == nullptr || *one.switchOnBy < *first->switchOnBy))
                first = &one;
        }
    }
    if (first != nullptr)
        return tr("Switch %1 on by %2").arg(device(first->device), m_times.moment(*first->switchOnBy, m_now));
    const bool kits = std::all_of(
        m_board.births.begin(), m_board.births.end(), [](const BirthCover& cover) { return cover.kit; });
    return kits ? tr("A warm place for every baby expected") : tr("A birth is expected without a kit");
}

QString BoardText::sentence() const
{
    QStringList parts;
    if (!m_board.births.empty())
        parts << tr("%n birth(s) expected, the next %1.", nullptr, static_cast<int>(m_board.births.size()))
                     .arg(birth(m_board.births.front().birth));
    parts << (m_board.kits ? tr("%n whole kit(s) left.", nullptr, static_cast<int>(*m_board.kits))
                           : tr("Nobody has counted the kits in this shift."));
    if (m_board.warmers.empty())
        parts << tr("No warmer is on the register of devices yet.");
    return parts.join(QLatin1Char(' '));
}

}
