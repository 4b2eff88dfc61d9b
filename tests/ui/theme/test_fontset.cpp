// SPDX-License-Identifier: MIT
#include "ui/theme/fontset.h"

#include "ui/theme/type.h"

#include <doctest/doctest.h>
#include <fontconfig/fontconfig.h>
#include <memory>
#include <set>
#include <string>

using namespace cradlepost;

namespace {

struct ConfigDrop
{
    void operator()(FcConfig* config) const { FcConfigDestroy(config); }
};

std::string textIn(FcPattern* font, const char* what)
{
    FcChar8* text = nullptr;
    return FcPatternGetString(font, what, 0, &text) == FcResultMatch ? reinterpret_cast<const char*>(text)
                                                                     : "";
}

}

TEST_CASE("the window reads the faces it writes with and one for each script of a name, and no others")
{
    const std::unique_ptr<FcConfig, ConfigDrop> config(windowFaces());
    REQUIRE(config != nullptr);
    const FcFontSet* fonts = FcConfigGetFonts(config.get(), FcSetSystem);
    REQUIRE(fonts != nullptr);
    CHECK(fonts->nfont < 60);
    std::set<std::string> families;
    for (int i = 0; i < fonts->nfont; ++i) {
        families.insert(textIn(fonts->fonts[i], FC_FAMILY));
        CHECK_MESSAGE(textIn(fonts->fonts[i], FC_STYLE).find("Italic") == std::string::npos,
            textIn(fonts->fonts[i], FC_FILE));
    }
    for (const QString& family : fontFamilies())
        CHECK_MESSAGE(families.count(family.toStdString()) == 1, family.toStdString());
    for (const char* family :
        {"Noto Sans Bengali", "Noto Sans Tamil", "Noto Sans Telugu", "Noto Sans Ethiopic"})
        CHECK_MESSAGE(families.count(family) == 1, family);
}
