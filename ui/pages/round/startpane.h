// SPDX-License-Identifier: MIT
#pragma once

#include "ui/pages/ward.h"

#include <QWidget>

class QPushButton;

namespace cradlepost {

class VerdictBanner;
class WhoRow;
class WrapLabel;

/** No walk in hand: what can be walked now, by whom. */
class StartPane : public QWidget
{
    Q_OBJECT
public:
    explicit StartPane(Ward& ward, QWidget* parent = nullptr);

    /** Reads the ward again. */
    void refresh();
    /** Why a walk could not be begun. */
    void setFault(const QString& text);
    /** To the primary button, or to the initials when nobody is chosen. */
    void takeFocus();
    /** The kind that the primary button stands for. */
    [[nodiscard]] RoundKind primaryKind() const { return m_primaryKind; }

Q_SIGNALS:
    void beginWanted(cradlepost::RoundKind kind);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    QWidget* makeButtons();
    QWidget* makePutAside();
    void showState();
    void showButtons();
    void begin(RoundKind kind);
    void putAside();
    [[nodiscard]] const Draft* draft(RoundKind kind) const;
    [[nodiscard]] bool isDone() const;
    [[nodiscard]] QString sentence() const;

    Ward& m_ward;
    RoundKind m_primaryKind = RoundKind::Shift;
    bool m_askingAside = false;
    VerdictBanner* m_banner;
    WrapLabel* m_fault;
    WhoRow* m_who;
    WrapLabel* m_whoTitle;
    QPushButton* m_primary = nullptr;
    QPushButton* m_recheck = nullptr;
    QPushButton* m_preBirth = nullptr;
    QPushButton* m_afterUse = nullptr;
    QPushButton* m_spotCheck = nullptr;
    QWidget* m_aside = nullptr;
    WrapLabel* m_asideWords = nullptr;
    QPushButton* m_asideButton = nullptr;
    QPushButton* m_keepButton = nullptr;
};

}
