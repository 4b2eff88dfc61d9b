// SPDX-License-Identifier: MIT
#include "ui/charts/chartview.h"
#include "ui/charts/chartcanvas.h"
#include "ui/charts/charttableview.h"
#include "ui/text/errortext.h"
#include "ui/widgets/foldingrow.h"
#include "ui/widgets/wraplabel.h"

#include <algorithm>
#include <QEvent>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QShortcut>
#include <QToolButton>

namespace cradlepost {

namespace {
constexpr int leastPrintWidth = 180; ///< a narrower column is hard to read: the buttons go below then

QToolButton* footButton(const char* name, QWidget* parent)
{
    auto* button = new QToolButton(parent);
    button->setObjectName(QLatin1String(name));
    button->setAutoRaise(true);
    button->setToolButtonStyle(Qt::ToolButtonTextOnly);
    button->setFocusPolicy(Qt::StrongFocus);
    return button;
}
}

ChartView::ChartView(QWidget* parent)
    : Sheet({}, parent)
    , m_canvas(new ChartCanvas(this))
    , m_table(new ChartTableView(this))
    , m_smallPrint(new WrapLabel({}, TextRole::Small, this))
    , m_trouble(new WrapLabel({}, TextRole::Small, this))
    , m_turn(footButton("turnButton", this))
    , m_save(footButton("saveButton", this))
{
    content().addWidget(m_canvas, 1);
    content().addWidget(m_table, 1);
    addFoot();
    m_table->hide();
    m_trouble->hide();
    m_trouble->setTone(Tone::Warning);
    m_smallPrint->setTone(Tone::Hint);
    auto* turn = new QShortcut(Qt::Key_T, this);
    turn->setContext(Qt::WidgetWithChildrenShortcut);
    connect(turn, &QShortcut::activated, this, [this] { showTable(!m_showsTable); });
    connect(m_turn, &QToolButton::clicked, this, [this] { showTable(!m_showsTable); });
    connect(m_save, &QToolButton::clicked, this, &ChartView::askAndSave);
    dressFoot();
    nameIt();
}

void ChartView::addFoot()
{
    content().addWidget(m_trouble);
    auto* buttons = new QWidget;
    auto* row = new QHBoxLayout(buttons);
    row->setContentsMargins(0, 0, 0, 0);
    row->addStretch(1);
    row->addWidget(m_turn);
    row->addWidget(m_save);
    auto* foot = new FoldingRow;
    foot->setSpacing(themeOf(*this).space(Space::Tight));
    foot->addWidget(m_smallPrint, 1, Qt::AlignVCenter);
    foot->addWidget(buttons, 0, Qt::AlignVCenter);
    content().addWidget(foot);
}

void ChartView::dressFoot()
{
    const QFont& small = themeOf(*this).font(TextRole::Small);
    m_turn->setFont(small);
    m_save->setFont(small);
}

void ChartView::setContent(const ChartContent& content)
{
    m_content = content;
    setTitle(content.title);
    m_canvas->setEmptyText(content.emptyText);
    m_canvas->setFigure(content.figure);
    m_table->setTable(content.table);
    m_smallPrint->setText(content.smallPrint);
    m_smallPrint->setMinimumWidth(content.smallPrint.isEmpty() ? 0 : themeOf(*this).px(leastPrintWidth));
    m_trouble->hide();
    if (content.table.rows.empty())
        showTable(false);
    m_turn->setVisible(!content.table.rows.empty());
    m_save->setVisible(!content.table.rows.empty());
    nameIt();
}

void ChartView::showTable(bool table)
{
    if (table == m_showsTable || (table && m_content.table.rows.empty()))
        return;
    m_showsTable = table;
    const bool takesFocus = (table ? static_cast<QWidget*>(m_canvas) : m_table)->hasFocus();
    m_canvas->setVisible(!table);
    m_table->setVisible(table);
    if (takesFocus)
        (table ? static_cast<QWidget*>(m_table) : m_canvas)->setFocus(Qt::ShortcutFocusReason);
    nameIt();
    Q_EMIT turned(table);
}

Result<void> ChartView::saveTo(const QString& path)
{
    auto result = saveChart(m_content, path, width(), themeOf(*this), layoutDirection());
    m_trouble->setVisible(!result);
    if (result)
        Q_EMIT saved(path);
    else
        m_trouble->setText(ErrorText::sentence(result.error()) % u' ' % ErrorText::advice(result.error()));
    return result;
}

void ChartView::askAndSave()
{
    const QString filters = tr("Picture (*.png);;Drawing (*.svg);;Table (*.csv)");
    QString chosen;
    QString path = QFileDialog::getSaveFileName(
        this, tr("Save the chart"), QString(m_content.fileName % QStringLiteral(".png")), filters, &chosen);
    if (path.isEmpty())
        return;
    if (!path.contains(u'.')) // typed without an ending: that of the kind that was chosen
        path += chosen.section(u'*', 1).section(u')', 0, 0);
    saveTo(path);
}

void ChartView::nameIt()
{
    m_turn->setText(m_showsTable ? tr("Chart  T") : tr("Table  T"));
    m_turn->setAccessibleName(m_showsTable ? tr("Show the chart") : tr("Show the table behind it"));
    m_turn->setToolTip(m_turn->accessibleName());
    m_save->setText(tr("Save…"));
    m_save->setAccessibleName(tr("Save this chart"));
    QStringList words{m_content.finding, m_content.smallPrint};
    words.removeAll(QString());
    for (QWidget* widget : std::initializer_list<QWidget*>{this, m_canvas, m_table}) {
        widget->setAccessibleName(m_content.title);
        widget->setAccessibleDescription(words.join(u' '));
    }
}

void ChartView::changeEvent(QEvent* event)
{
    Sheet::changeEvent(event);
    if (event->type() == QEvent::StyleChange)
        dressFoot();
    if (event->type() == QEvent::LanguageChange)
        nameIt();
}

}
