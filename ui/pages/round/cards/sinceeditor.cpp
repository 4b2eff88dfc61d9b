// SPDX-License-Identifier: MIT
#include "ui/pages/round/cards/sinceeditor.h"

#include "core/round/entry.h"

namespace cradlepost {

namespace {
constexpr int letters = 6;
}

SinceEditor::SinceEditor(const Item& item, const CardScene& scene, QWidget* parent)
    : FieldEditor(item, scene, new ValueField(QStringLiteral(":"), letters), parent)
{
    value().setExample(tr("hh:mm", "a clock time, as a placeholder"));
}

Result<Answer> SinceEditor::read() const
{
    return readSince(value().typed(), scene().now(), scene().times.zone()).map([](const RunningSince& since) {
        return Answer(since);
    });
}

QString SinceEditor::refusal() const
{
    if (value().typed().empty())
        return tr("Type when it was switched on, as 19:24 or 1924.");
    return tr("%1 is no clock time. Type it as 19:24 or 1924.").arg(value().text());
}

void SinceEditor::setAnswer(const Answer& answer, const Judgement& judgement)
{
    m_answer = answer;
    FieldEditor::setAnswer(answer, judgement);
}

void SinceEditor::tick(const Judgement& judgement) { setCompany(company(m_answer, judgement)); }

std::optional<Answer> SinceEditor::answerToEnter() const { return RunningSince{scene().now()}; }

QString SinceEditor::keys() const
{
    return isChecked(m_answer) ? QString() : tr("Enter alone: switched on just now.");
}

QString SinceEditor::typedForm(const Answer& answer) const
{
    const auto* since = std::get_if<RunningSince>(&answer);
    return since != nullptr ? scene().times.clock(since->since) : QString();
}

QString SinceEditor::company(const Answer& answer, const Judgement& judgement) const
{
    using namespace std::chrono;
    const auto* since = std::get_if<RunningSince>(&answer);
    if (since == nullptr)
        return limits();
    if (judgement.reason && judgement.reason->readyAt) {
        const Instant at = *judgement.reason->readyAt;
        //: %1 a clock time, %2 a length of time
        return tr("warming, ready at %1\n%2 to go")
            .arg(scene().times.clock(at), TimeText::span(ceil<minutes>(at - scene().now())));
    }
    return tr("warm since %1")
        .arg(scene().times.moment(since->since + std::get<SinceRule>(item().rule).minutes, scene().now()));
}

}
