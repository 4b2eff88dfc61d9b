// SPDX-License-Identifier: MIT
#pragma once

#include "core/exchange/paperrounds.h"
#include "ui/pages/ward.h"
#include "ui/widgets/sheet.h"

class QPushButton;

namespace cradlepost {

class ChartTableView;
class WrapLabel;

/** Rounds walked on paper: an empty sheet to fill in, and a filled one taken in, all of it or none. */
class PaperPanel : public Sheet
{
    Q_OBJECT
public:
    explicit PaperPanel(Ward& ward, QWidget* parent = nullptr);

    /** Shows what the sheet holds and every fault in it; writes nothing. */
    Result<void> preview(const QString& path);
    /** Writes the sheet that was previewed, when it is sound. */
    Result<void> enter();
    /** The empty sheet and its guide beside it. */
    Result<void> writeTemplate(const QString& path);

Q_SIGNALS:
    void entered();

private:
    void askForSheet();
    void askForTemplate();
    void showPreview();
    void say(const QString& text, bool isFault);

    Ward& m_ward;
    std::optional<PaperPreview> m_preview;
    WrapLabel* m_said;
    ChartTableView* m_faults;
    QPushButton* m_enter;
};

}
