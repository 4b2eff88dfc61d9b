// SPDX-License-Identifier: MIT
#pragma once

#include <QWidget>

class QPushButton;

namespace cradlepost {

class FoldingRow;
class WrapLabel;

/** Ends a walk: says what is still open and asks once before it is left open. */
class FinishBar : public QWidget
{
    Q_OBJECT
public:
    explicit FinishBar(const QString& finishText, QWidget* parent = nullptr);

    void setOpen(int items);
    /** Why it could not be recorded. */
    void setFault(const QString& text);
    /** As the button: asks first when items are open, finishes when asked already. */
    void finish();
    void takeFocus();
    [[nodiscard]] bool isAsking() const { return m_asking; }

Q_SIGNALS:
    void finishWanted();
    /** Not yet: back to the items. */
    void goOnWanted();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void ask(bool asking);
    void showState();

    QString m_finishText;
    int m_open = 0;
    bool m_asking = false;
    QString m_fault;
    WrapLabel* m_words;
    QPushButton* m_finish;
    QPushButton* m_goOn;
};

}
