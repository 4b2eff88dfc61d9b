// SPDX-License-Identifier: MIT
#include "ui/report/strip.h"

namespace cradlepost {

namespace {

/// Fills page after page.
class Filling
{
public:
    explicit Filling(int pageHeight)
        : m_pageHeight(pageHeight)
    {
        m_flow.pages.emplace_back();
    }

    /// Strips that stay together, if a page can hold them.
    void add(const Strip* first, const Strip* last)
    {
        int height = 0;
        int spare = 0;
        for (const Strip* strip = first; strip != last; ++strip) {
            height += strip->height + (strip == first ? gapOf(*strip) : strip->gap);
            spare += strip->least > 0 ? strip->height - strip->least : 0;
        }
        if (m_top + height - spare > m_pageHeight && m_top > 0)
            turn();
        const bool isSqueezed = m_top + height > m_pageHeight && m_top + height - spare <= m_pageHeight;
        int lacking = isSqueezed ? m_top + height - m_pageHeight : 0;
        for (const Strip* strip = first; strip != last; ++strip)
            place(*strip, lacking);
    }

    PageFlow take() { return std::move(m_flow); }

private:
    int gapOf(const Strip& strip) const { return m_top > 0 ? strip.gap : 0; }

    void turn()
    {
        m_flow.pages.emplace_back();
        m_top = 0;
    }

    void put(const Strip& strip, int height)
    {
        m_top += gapOf(strip);
        m_flow.pages.back().push_back({&strip, m_top, height});
        m_top += height;
    }

    void place(const Strip& strip, int& lacking)
    {
        const int saved = strip.least > 0 ? std::min(lacking, strip.height - strip.least) : 0;
        lacking -= saved;
        if (m_top > 0 && m_top + gapOf(strip) + strip.height - saved > m_pageHeight)
            turn();
        if (m_top == 0 && strip.heading != nullptr)
            put(*strip.heading, strip.heading->height);
        put(strip, strip.height - saved);
    }

    int m_pageHeight;
    int m_top = 0;
    PageFlow m_flow;
};

}

PageFlow flow(const std::vector<Strip>& strips, int pageHeight)
{
    Filling filling(pageHeight);
    const Strip* end = strips.data() + strips.size();
    int height = 0;
    for (const Strip* first = strips.data(); first != end;) {
        const Strip* last = first + 1;
        while (last != end && (last - 1)->keepsNext)
            ++last;
        filling.add(first, last);
        for (; first != last; ++first)
            height += first->height + (first == strips.data() ? 0 : first->gap);
    }
    PageFlow done = filling.take();
    done.height = height;
    return done;
}

}
