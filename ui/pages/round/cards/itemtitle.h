// SPDX-License-Identifier: MIT
#pragma once

#include <memory>
#include <QWidget>

class QTextLayout;

namespace cradlepost {

/** The item, and small behind it how much it weighs and what was found; wraps, never cuts. */
class ItemTitle : public QWidget
{
    Q_OBJECT
public:
    explicit ItemTitle(const QString& label, QWidget* parent = nullptr);

    void setAside(const QString& aside);
    /** In the colour of gaps. */
    void setFinding(const QString& finding);
    [[nodiscard]] const QString& finding() const { return m_finding; }

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    [[nodiscard]] std::unique_ptr<QTextLayout> layOut(int width) const;
    void change();

    QString m_label;
    QString m_aside;
    QString m_finding;
};

}
