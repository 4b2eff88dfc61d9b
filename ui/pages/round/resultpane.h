// SPDX-License-Identifier: MIT
#pragma once

#include "ui/pages/ward.h"

#include <QWidget>

class QPushButton;

namespace cradlepost {

/** What a finished walk came to: the verdict, why, and where it is kept. */
class ResultPane : public QWidget
{
    Q_OBJECT
public:
    /** `walk` as it was finished at `at`, recorded as `id`. */
    ResultPane(const Ward& ward, const Walk& walk, const RecordId& id, Instant at, QWidget* parent = nullptr);

    void takeFocus();

Q_SIGNALS:
    void seeShiftWanted();
    void anotherWanted();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    QPushButton* m_see;
};

}
