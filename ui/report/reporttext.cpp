// SPDX-License-Identifier: MIT
#include "ui/report/reporttext.h"

namespace cradlepost {

namespace {
constexpr int groupLength = 8;

/// A hash as people compare it.
QString grouped(const QString& hash)
{
    QStringList groups;
    for (qsizetype i = 0; i < hash.size(); i += groupLength)
        groups.append(hash.mid(i, groupLength));
    return groups.join(u' ');
}
}

QString ReportText::pageOf(int page, int pages) { return tr("%1 of %2", "page").arg(page).arg(pages); }

QString ReportText::onPage(int page) { return tr("page %1").arg(page); }

QString ReportText::continued(const QString& title)
{
    return title.isEmpty() ? title : tr("%1 (continued)").arg(title);
}

QString ReportText::nothingToShow() { return tr("There is nothing to show for these days."); }

QString ReportText::numbersBehind() { return tr("The numbers behind it"); }

QString ReportText::methodTitle() { return tr("How these figures are made"); }

QString ReportText::cautionsTitle() { return tr("Please note"); }

QString ReportText::sealTitle() { return tr("To check this report"); }

std::vector<QString> ReportText::seal(const ReportSeal& seal)
{
    std::vector<QString> lines;
    if (!seal.made.isEmpty())
        lines.push_back(tr("Made %1 at station %2.").arg(seal.made, seal.station));
    if (!seal.headHash.isEmpty()) {
        lines.push_back(tr("Last record of the ledger then: %1").arg(grouped(seal.headHash)));
        lines.push_back(tr("“cradlepost verify” at that station shows whether the ledger is whole, with this "
                           "record in it."));
    }
    return lines;
}

QString ReportText::shortSeal(const ReportSeal& seal)
{
    if (seal.headHash.isEmpty())
        return seal.made;
    return tr("Made %1 · ledger %2…").arg(seal.made, seal.headHash.left(2 * groupLength));
}

QString ReportText::yes() { return tr("yes"); }

QString ReportText::no() { return tr("no"); }

}
