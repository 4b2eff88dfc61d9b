// SPDX-License-Identifier: MIT
#pragma once

#include <thread>

struct _FcConfig;

namespace cradlepost {

/// The system's font configuration, with only the faces that the window writes with: those of fontFamilies()
/// and one face for each living script that a text may hold. A system has hundreds of others, and each is
/// listed, named and compared before the first letter is painted. Without any of ours, all of them are kept.
/// The caller destroys it; nullptr when there is no configuration.
_FcConfig* windowFaces();

/// Reads the fonts while the program does something else, and makes them Qt's. To be started before the
/// application object is made, and awaited before anything asks for the size of a text.
class FontReading
{
public:
    FontReading();
    ~FontReading();
    FontReading(const FontReading&) = delete;
    FontReading& operator=(const FontReading&) = delete;

    void await();

private:
    std::thread m_thread;
};

}
