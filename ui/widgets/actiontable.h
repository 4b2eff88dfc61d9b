// SPDX-License-Identifier: MIT
#pragma once

#include "ui/widgets/outcomemark.h"
#include "ui/widgets/paintedlist.h"

#include <array>
#include <map>
#include <optional>
#include <QStringList>

namespace cradlepost {

/// What is missing, what to do, who does it, by when.
struct ActionRow
{
    Mark mark = Mark::Gap;
    QString title;
    QString subtitle; ///< small, below the title
    QString what;
    QString who;
    QString by; ///< set in bold
    QString byAside; ///< behind it: "12 min"

    bool operator==(const ActionRow&) const = default;
};

/// The rows of "Mend first": wraps where a column is too narrow, never cuts. Up and Down move, Enter or a
/// click opens a row.
class ActionTable : public PaintedList
{
    Q_OBJECT
public:
    explicit ActionTable(QWidget* parent = nullptr);

    void setRows(const std::vector<ActionRow>& rows);
    void setHeaders(const QStringList& headers); ///< up to four; the table has its own for the rest
    void setEmptyText(const QString& text); ///< what it says without rows

    int itemCount() const override { return static_cast<int>(m_rows.size()); }
    QString itemText(int index) const override;
    QString listName() const override;
    bool isChosen(int index) const override { return hasFocus() && index == cursor(); }

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;

Q_SIGNALS:
    void rowActivated(int index);

protected:
    std::vector<QRect> layOutItems() const override;
    void forgetLayout() override;
    void paintEvent(QPaintEvent* event) override;

private:
    static constexpr int columns = 4;
    using Widths = std::array<int, columns>;

    struct Plan
    {
        int headerHeight = 0;
        Widths columnWidths{};
        std::vector<int> rowHeights;
    };

    struct Extent
    {
        Widths natural{};
        Widths least{};
        int name = 0; ///< of the first column: the widest title, without what stands under it
    };

    QString header(int column) const;
    std::vector<const InkText*> cellTexts(const ActionRow& row, int column) const;
    const InkText& headerText(int column) const;
    const InkText& emptyText() const;
    int markColumn() const;
    int padding() const;
    const Extent& extent() const;
    Widths columnWidths(int width) const;
    const Plan& plan(int width) const;
    int cellHeight(const ActionRow& row, int column, int width) const;
    int headerHeight(const Widths& widths) const;
    QRect cellBox(const Plan& plan, int column, const QRect& row) const;
    void paintHeader(QPainter& painter, const Plan& plan) const;
    void paintRow(QPainter& painter, const Plan& plan, int index) const;

    std::vector<ActionRow> m_rows;
    QStringList m_headers;
    QString m_emptyText;
    mutable std::map<int, Plan> m_plans; ///< by width: a layout asks for several, in turns
    mutable std::optional<Extent> m_extent;
};

}
