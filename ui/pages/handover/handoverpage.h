// SPDX-License-Identifier: MIT
#pragma once

#include "ui/pages/ward.h"
#include "ui/text/handovertext.h"

#include <QWidget>

class QPagedPaintDevice;
class QPushButton;

namespace cradlepost {

class Sheet;
class WhoRow;
class WrapLabel;

/** One page for the next shift: what changed, then situation, background, assessment, recommendation; given
 * by who leaves and taken by who comes. */
class HandoverPage : public QWidget
{
    Q_OBJECT
public:
    explicit HandoverPage(Ward& ward, QWidget* parent = nullptr);

    /** To who signs. */
    void takeFocus();
    /** The page as a PDF. */
    Result<void> save(const QString& path) const;
    /** All pages of it, A4; whether the printer took them. */
    bool print(QPagedPaintDevice& printer) const;

Q_SIGNALS:
    void leaveWanted();

protected:
    void showEvent(QShowEvent* event) override;

private:
    struct PartSheet
    {
        Sheet* sheet = nullptr;
        WrapLabel* lines = nullptr;
    };

    PartSheet makePart(const char* name);
    QWidget* makeParts();
    QWidget* makeSigning();
    QPushButton* makeButton(const QString& text, const char* name);
    void refresh();
    void showSigning();
    static void show(const PartSheet& part, const HandoverPart& words);
    void sign();
    void saveAsked();
    void printAsked();
    void say(const Result<void>& done, const QString& well);
    void warn(const QString& what);

    Ward& m_ward;
    HandoverWords m_words;
    bool m_takes = false; ///< what is shown was given and waits to be taken
    WrapLabel* m_answer;
    WrapLabel* m_company;
    PartSheet m_changes;
    std::array<PartSheet, 4> m_parts;
    WhoRow* m_who;
    QPushButton* m_sign;
    WrapLabel* m_signed;
    WrapLabel* m_said;
};

}
