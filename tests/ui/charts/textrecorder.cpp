// SPDX-License-Identifier: MIT
#include "tests/ui/charts/textrecorder.h"

#include <QStringList>

namespace cradlepost::test {

class TextRecorder::Engine : public QPaintEngine
{
public:
    Engine()
        : QPaintEngine(AllFeatures)
    {
    }

    std::vector<SeenText> texts;
    int pictures = 0;
    int strokes = 0;

    bool begin(QPaintDevice* /*device*/) override { return true; }
    bool end() override { return true; }
    Type type() const override { return User; }
    void updateState(const QPaintEngineState& changed) override
    {
        if (changed.state().testFlag(DirtyTransform))
            m_transform = changed.transform();
    }
    void drawPixmap(const QRectF& /*to*/, const QPixmap& /*pixmap*/, const QRectF& /*from*/) override
    {
        ++pictures;
    }
    void drawImage(const QRectF& /*to*/, const QImage& /*image*/, const QRectF& /*from*/,
        Qt::ImageConversionFlags /*flags*/) override
    {
        ++pictures;
    }
    void drawPath(const QPainterPath& /*path*/) override { ++strokes; }
    void drawPolygon(const QPointF* /*points*/, int /*count*/, PolygonDrawMode /*mode*/) override
    {
        ++strokes;
    }
    void drawTextItem(const QPointF& at, const QTextItem& item) override
    {
        const QRectF box(at.x(), at.y() - item.ascent(), item.width(), item.ascent() + item.descent());
        if (!item.text().trimmed().isEmpty())
            texts.push_back({m_transform.mapRect(box), item.text()});
    }

private:
    QTransform m_transform;
};

TextRecorder::TextRecorder(const QSize& size)
    : m_size(size)
    , m_engine(std::make_unique<Engine>())
{
}

TextRecorder::~TextRecorder() = default;

const std::vector<SeenText>& TextRecorder::texts() const { return m_engine->texts; }
int TextRecorder::pictures() const { return m_engine->pictures; }
int TextRecorder::strokes() const { return m_engine->strokes; }
QPaintEngine* TextRecorder::paintEngine() const { return m_engine.get(); }

QStringList TextRecorder::faults() const
{
    QStringList faults;
    const QRectF sheet(-1.0, -2.0, m_size.width() + 2.0, m_size.height() + 4.0);
    const auto& all = m_engine->texts;
    for (std::size_t i = 0; i < all.size(); ++i) {
        if (!sheet.contains(all[i].box))
            faults << QStringLiteral("out of the sheet: %1").arg(all[i].text);
        // Letters fill less than ascent and descent, and runs of one line touch.
        const double spare = all[i].box.height() / 5.0;
        const QRectF letters = all[i].box.adjusted(2.0, spare, -2.0, -spare);
        for (std::size_t j = i + 1; j < all.size(); ++j) {
            const QRectF other = all[j].box.adjusted(2.0, spare, -2.0, -spare);
            if (letters.isValid() && other.isValid() && letters.intersects(other))
                faults << QStringLiteral("on one another: %1 | %2").arg(all[i].text, all[j].text);
        }
    }
    return faults;
}

int TextRecorder::metric(PaintDeviceMetric metric) const
{
    switch (metric) {
    case PdmWidth:
        return m_size.width();
    case PdmHeight:
        return m_size.height();
    case PdmDpiX:
    case PdmDpiY:
    case PdmPhysicalDpiX:
    case PdmPhysicalDpiY:
        return 96;
    case PdmDevicePixelRatio:
        return 1;
    default:
        return QPaintDevice::metric(metric);
    }
}

}
