// SPDX-License-Identifier: MIT
#pragma once

#include <QLineEdit>

namespace cradlepost {

/** One reading, large. Digits of any script count as digits; of other characters only those it is told. */
class ValueField : public QLineEdit
{
    Q_OBJECT
public:
    /** `letters` is how many fit in its width. */
    ValueField(const QString& allowed, int letters, QWidget* parent = nullptr);

    /** Without blanks around it. */
    [[nodiscard]] std::string typed() const { return text().trimmed().toStdString(); }
    /** All of it is marked: the next character replaces it. */
    [[nodiscard]] bool isMarked() const { return hasSelectedText() && selectedText() == text(); }
    /** How to write it; shown while the keyboard is here, or it would look like an answer. */
    void setExample(const QString& example) { m_example = example; }
    /** What it means to leave it empty; shown for as long as it is. */
    void setEmptyMeans(const QString& meaning) { m_emptyMeans = meaning; }
    /** What stands in it while nothing is typed. */
    [[nodiscard]] QString hint() const;
    /** In a card with one field the card wears the ring; with several the field does as well. */
    void setRing(bool ring) { m_ring = ring; }

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void initStyleOption(QStyleOptionFrame* option) const override;

private:
    [[nodiscard]] QString accepted(const QString& text) const;

    QString m_allowed;
    QString m_example;
    QString m_emptyMeans;
    int m_letters;
    bool m_ring = false;
};

}
