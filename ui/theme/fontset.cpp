// SPDX-License-Identifier: MIT
#include "ui/theme/fontset.h"

#include <algorithm>
#include <filesystem>
#include <fontconfig/fontconfig.h>
#include <string>
#include <string_view>
#include <vector>

namespace cradlepost {

namespace {

namespace fs = std::filesystem;

/// Names of files without their endings.
constexpr std::string_view takenFaces[] = {"Inter-Regular", "Inter-Medium", "Inter-SemiBold",
    "NotoSans-Regular", "NotoSans-Medium", "NotoSans-SemiBold", "NotoSans-Bold", "NotoSansDevanagari-Regular",
    "NotoSansDevanagari-Bold", "NotoSansArabic-Regular", "NotoSansArabic-Bold", "NotoSansArmenian-Regular",
    "NotoSansBengali-Regular", "NotoSansEthiopic-Regular", "NotoSansGeorgian-Regular",
    "NotoSansGujarati-Regular", "NotoSansGurmukhi-Regular", "NotoSansHebrew-Regular",
    "NotoSansKannada-Regular", "NotoSansKhmer-Regular", "NotoSansLao-Regular", "NotoSansMalayalam-Regular",
    "NotoSansMeeteiMayek-Regular", "NotoSansMyanmar-Regular", "NotoSansOlChiki-Regular",
    "NotoSansOriya-Regular", "NotoSansSinhala-Regular", "NotoSansTamil-Regular", "NotoSansTelugu-Regular",
    "NotoSansThaana-Regular", "NotoSansThai-Regular", "NotoSerifTibetan-Regular", "NotoSansMath-Regular",
    "NotoSansSymbols2-Regular", "NotoSansCJK-Regular", "DejaVuSans"};

/// Where fonts lie and how they are drawn. A system's own rules fill some forty files, of which the families that we
/// name by themselves need none; reading them, and holding each font against them, takes longer than opening the store.
/// Full hinting has Qt put each letter on a whole pixel: sharp on a ward PC's panel, and one picture of a letter is
/// drawn instead of four.
constexpr const char* ownRules = R"(<fontconfig>
<dir>/usr/share/fonts</dir><dir>/usr/local/share/fonts</dir><dir prefix="xdg">fonts</dir><dir>~/.fonts</dir>
<cachedir>/var/cache/fontconfig</cachedir><cachedir prefix="xdg">fontconfig</cachedir>
<match target="pattern">
<edit name="antialias" mode="assign"><bool>true</bool></edit>
<edit name="hintstyle" mode="assign"><const>hintfull</const></edit>
</match>
</fontconfig>)";

bool isTaken(const fs::path& file)
{
    const std::string ending = file.extension().string();
    if (ending != ".ttf" && ending != ".otf" && ending != ".ttc")
        return false;
    return std::find(std::begin(takenFaces), std::end(takenFaces), file.stem().string())
        != std::end(takenFaces);
}

void addTaken(const char* folder, std::vector<std::string>& files)
{
    std::error_code error;
    const auto options
        = fs::directory_options::follow_directory_symlink | fs::directory_options::skip_permission_denied;
    for (fs::recursive_directory_iterator at(folder, options, error), end; !error && at != end;
         at.increment(error)) {
        if (isTaken(at->path()))
            files.push_back(at->path().string());
    }
}

/// The files of ours in the folders of fonts.
std::vector<std::string> takenFiles(FcConfig* config)
{
    std::vector<std::string> files;
    if (FcStrList* folders = FcConfigGetFontDirs(config)) {
        while (const FcChar8* folder = FcStrListNext(folders))
            addTaken(reinterpret_cast<const char*>(folder), files);
        FcStrListDone(folders);
    }
    return files;
}

std::string escaped(const std::string& path)
{
    std::string out;
    for (const char c : path)
        out += c == '&' ? std::string("&amp;") : c == '<' ? std::string("&lt;") : std::string(1, c);
    return out;
}

/// An accepted file is taken whatever is rejected. Whole paths: each rule is held against each file of the
/// system, and one with a star is tried at many places of the name.
std::string selection(const std::vector<std::string>& files)
{
    std::string rule = "<fontconfig><selectfont><acceptfont>";
    for (const std::string& file : files)
        rule += "<glob>" + escaped(file) + "</glob>";
    rule += "</acceptfont><rejectfont>";
    // By their endings: a rule for all names would reject the folders too.
    for (const char* ending : {"ttf", "otf", "ttc", "otc", "pfa", "pfb", "pcf", "pcf.gz", "TTF", "OTF"})
        rule += std::string("<glob>*.") + ending + "</glob>";
    return rule + "</rejectfont></selectfont></fontconfig>";
}

bool take(FcConfig* config, const std::string& rules)
{
    return FcConfigParseAndLoadFromMemory(config, reinterpret_cast<const FcChar8*>(rules.c_str()), FcTrue) == FcTrue;
}

bool hasFonts(FcConfig* config)
{
    const FcFontSet* fonts = FcConfigGetFonts(config, FcSetSystem);
    return fonts != nullptr && fonts->nfont > 0;
}

}

FcConfig* windowFaces()
{
    FcConfig* config = FcConfigCreate();
    if (config == nullptr)
        return nullptr;
    if (take(config, ownRules) && take(config, selection(takenFiles(config))) && FcConfigBuildFonts(config)
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
