// SPDX-License-Identifier: MIT
#pragma once

#include <QWidget>

namespace cradlepost {

enum class StepState { Then, Now, Passed, Failed };

/** One step of a function test. */
class StepTile : public QWidget
{
    Q_OBJECT
public:
    explicit StepTile(const QString& text, QWidget* parent = nullptr);

    /** `current` is the one that the keys mark, also when it was marked before. */
    void setState(StepState state, bool current);
    [[nodiscard]] QString stateText() const;

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;

Q_SIGNALS:
    void clicked();

protected:
    void paintEvent(QPaintEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;

private:
    [[nodiscard]] int stateInset() const;
    [[nodiscard]] static QString nowText();

    QString m_text;
    StepState m_state = StepState::Then;
    bool m_current = false;
};

}
