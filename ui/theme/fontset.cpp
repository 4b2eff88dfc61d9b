// SPDX-License-Identifier: MIT
#include "ui/theme/fontset.h"

#include <fontconfig/fontconfig.h>
#include <string>

namespace cradlepost {

namespace {

/// Names of files. An accepted one is taken whatever is rejected.
constexpr const char* takenFaces[] = {"Inter-Regular", "Inter-Medium", "Inter-SemiBold", "NotoSans-Regular",
    "NotoSans-Medium", "NotoSans-SemiBold", "NotoSans-Bold", "NotoSansDevanagari-Regular",
    "NotoSansDevanagari-Bold", "NotoSansArabic-Regular", "NotoSansArabic-Bold", "NotoSansArmenian-Regular",
    "NotoSansBengali-Regular", "NotoSansEthiopic-Regular", "NotoSansGeorgian-Regular",
    "NotoSansGujarati-Regular", "NotoSansGurmukhi-Regular", "NotoSansHebrew-Regular",
    "NotoSansKannada-Regular", "NotoSansKhmer-Regular", "NotoSansLao-Regular", "NotoSansMalayalam-Regular",
    "NotoSansMeeteiMayek-Regular", "NotoSansMyanmar-Regular", "NotoSansOlChiki-Regular",
    "NotoSansOriya-Regular", "NotoSansSinhala-Regular", "NotoSansTamil-Regular", "NotoSansTelugu-Regular",
    "NotoSansThaana-Regular", "NotoSansThai-Regular", "NotoSerifTibetan-Regular", "NotoSansMath-Regular",
    "NotoSansSymbols2-Regular"};

std::string selection()
{
    std::string rule = "<fontconfig><selectfont><acceptfont>";
    // One star each: fontconfig compares such a rule from the end, at once.
    for (const char* face : takenFaces) {
        for (const char* ending : {".ttf", ".otf"})
            rule += std::string("<glob>*/") + face + ending + "</glob>";
    }
    rule += "<glob>*/NotoSansCJK-Regular.ttc</glob><glob>*/DejaVuSans.ttf</glob>";
    rule += "</acceptfont><rejectfont>";
    // By their endings: a rule for all names would reject the folders too.
    for (const char* ending : {"ttf", "otf", "ttc", "otc", "pfa", "pfb", "pcf", "pcf.gz", "TTF", "OTF"})
        rule += std::string("<glob>*.") + ending + "</glob>";
    return rule + "</rejectfont></selectfont></fontconfig>";
}

bool hasFonts(FcConfig* config)
{
    const FcFontSet* fonts = FcConfigGetFonts(config, FcSetSystem);
    return fonts != nullptr && fonts->nfont > 0;
}

}

FcConfig* windowFaces()
{
    FcConfig* config = FcInitLoadConfig();
    if (config == nullptr)
        return nullptr;
    const std::string rule = selection();
    const auto* bytes = reinterpret_cast<const FcChar8*>(rule.c_str());
    if (FcConfigParseAndLoadFromMemory(config, bytes, FcTrue) && FcConfigBuildFonts(config)
        && hasFonts(config))
        return config;
    FcConfigDestroy(config);
    return FcInitLoadConfigAndFonts();
}

FontReading::FontReading()
    : m_thread([] {
        if (FcConfig* config = windowFaces()) {
            FcConfigSetCurrent(config);
            FcConfigDestroy(config); // held by fontconfig from now on
        }
    })
{
}

FontReading::~FontReading() { await(); }

void FontReading::await()
{
    if (m_thread.joinable())
        m_thread.join();
}

}
