// SPDX-License-Identifier: MIT
#pragma once

#include "ui/theme/theme.h"

#include <QWidget>

class QVBoxLayout;

namespace cradlepost {

class WrapLabel;

/// A white sheet for what belongs together: a small title that says what was found, and content below it.
class Sheet : public QWidget
{
    Q_OBJECT
public:
    explicit Sheet(const QString& title = {}, QWidget* parent = nullptr);

    void setTitle(const QString& title);
    void setPadding(Space padding); ///< between the border and the content; Apart at first

    /// Where the content goes.
    QVBoxLayout& content() { return *m_content; }

protected:
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void spaceOut();

    Space m_padding = Space::Apart;
    WrapLabel* m_title;
    QVBoxLayout* m_content;
};

}
