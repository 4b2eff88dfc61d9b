// SPDX-License-Identifier: MIT
#pragma once

#include <memory>
#include <QPaintDevice>
#include <QPaintEngine>
#include <vector>

namespace cradlepost::test {

struct SeenText
{
    QRectF box; ///< of its letters, in device units
    QString text;
};

/// A sheet that keeps what is written on it, and where, and counts the pictures pasted on it.
class TextRecorder : public QPaintDevice
{
public:
    explicit TextRecorder(const QSize& size);
    ~TextRecorder() override;

    const std::vector<SeenText>& texts() const;
    int pictures() const;
    int strokes() const; ///< lines, shapes and paths

    /// Texts that reach out of the sheet, or lie on one another: each as words for a failing test.
    QStringList faults() const;

    QPaintEngine* paintEngine() const override;

protected:
    int metric(PaintDeviceMetric metric) const override;

private:
    class Engine;
    QSize m_size;
    std::unique_ptr<Engine> m_engine;
};

}
