// SPDX-License-Identifier: MIT
#include "tests/ui/flows/keywalk.h"

#include <QApplication>
#include <QTest>

namespace cradlepost::test {

namespace {

struct Typing
{
    QString operator()(const ConfirmRule&) const { return QStringLiteral("\n"); }
    QString operator()(const MeasureRule& rule) const
    {
        const LimitSet& set = rule.limits.front();
        return QString::fromStdString((set.low ? *set.low : *set.high).toString()) + QLatin1Char('\n');
    }
    QString operator()(const SinceRule&) const { return QStringLiteral("0500\n"); }
    QString operator()(const StepsRule& rule) const
    {
        return QString(static_cast<qsizetype>(rule.steps.size()), QLatin1Char('\n'));
    }
    QString operator()(const CountRule& rule) const
    {
        const QString pieces = QString::number(rule.par);
        return (rule.expires ? pieces + QStringLiteral(" 12/2030") : pieces) + QLatin1Char('\n');
    }
    QString operator()(const KitRule& rule) const
    {
        QString keys;
        for (const KitPart& part : rule.parts)
            keys += QString::number(part.perKit * rule.par) + QLatin1Char('\n');
        return keys;
    }
    QString operator()(const CylinderRule& rule) const
    {
        return QString::fromStdString(rule.sizes.front().fullPressure.toString()) + QLatin1Char('\n');
    }
};

}

QString meetingKeys(const Item& item) { return std::visit(Typing {}, item.rule); }

std::string cardWithFocus()
{
    for (const QWidget* at = QApplication::focusWidget(); at != nullptr; at = at->parentWidget()) {
        if (at->objectName().startsWith(QLatin1String("card-")))
            return at->objectName().mid(5).toStdString();
    }
    return {};
}

void type(const QString& keys)
{
    for (const QChar key : keys) {
        QWidget* target = QApplication::focusWidget();
        if (target == nullptr)
            return;
        if (key == QLatin1Char('\n'))
            QTest::keyClick(target, Qt::Key_Return);
        else
            QTest::keyClicks(target, QString(key));
        QApplication::processEvents();
    }
}

int walkByKeys(const Checklist& checklist, const Keys& keys, const std::function<bool(int)>& stop)
{
    int answered = 0;
    for (;;) {
        const std::string id = cardWithFocus();
        const auto position = checklist.position(id);
        if (!position || answered > static_cast<int>(checklist.itemCount()) || (stop && stop(answered)))
            return answered;
        const auto own = keys.find(id);
        type(own != keys.end() ? own->second : meetingKeys(checklist.item(*position)));
        ++answered;
    }
}

}
