// SPDX-License-Identifier: MIT
#include "ui/theme/fontset.h"

#include <algorithm>
#include <fontconfig/fontconfig.h>
#include <string>
#include <string_view>
#include <vector>

namespace cradlepost {

namespace {

/// Names of files without their endings.
constexpr std::string_view takenFaces[] = {"Inter-Regular", "Inter-SemiBold",
    "NotoSans-Regular", "NotoSans-SemiBold", "NotoSans-Bold", "NotoSansDevanagari-Regular",
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

bool isTaken(std::string_view file)
{
    const std::string_view name = file.substr(file.rfind('/') + 1);
    const auto dot = name.rfind('.');
    const std::string_view ending = name.substr(std::min(dot, name.size()));
    if (ending != ".ttf" && ending != ".otf" && ending != ".ttc")
        return false;
    return std::find(std::begin(takenFaces), std::end(takenFaces), name.substr(0, dot)) != std::end(takenFaces);
}

/// Fontconfig's own index of the folders of fonts: held, as building the set of fonts reads the same.
class FolderIndex
{
public:
    explicit FolderIndex(FcConfig* config)
    {
        FcStrList* folders = FcConfigGetFontDirs(config);
        while (const FcChar8* folder = folders != nullptr ? FcStrListNext(folders) : nullptr)
            read(config, folder);
        if (folders != nullptr)
            FcStrListDone(folders);
    }
    ~FolderIndex()
    {
        for (FcCache* cache : m_caches)
            FcDirCacheUnload(cache);
    }
    FolderIndex(const FolderIndex&) = delete;
    FolderIndex& operator=(const FolderIndex&) = delete;

    /// Those of ours.
    const std::vector<std::string>& files() const { return m_files; }

private:
    static constexpr std::size_t mostFolders = 1000; ///< against folders that link to themselves

    void read(FcConfig* config, const FcChar8* folder)
    {
        FcCache* cache = m_caches.size() < mostFolders ? FcDirCacheRead(folder, FcFalse, config) : nullptr;
        if (cache == nullptr)
            return;
        m_caches.push_back(cache);
        FcFontSet* fonts = FcCacheCopySet(cache);
        for (int i = 0; fonts != nullptr && i < fonts->nfont; ++i) {
            FcChar8* file = nullptr;
            if (FcPatternGetString(fonts->fonts[i], FC_FILE, 0, &file) == FcResultMatch)
                take(reinterpret_cast<const char*>(file));
        }
        if (fonts != nullptr)
            FcFontSetDestroy(fonts);
        for (int i = 0; i < FcCacheNumSubdir(cache); ++i)
            read(config, FcCacheSubdir(cache, i));
    }

    void take(std::string file) // once: one file may hold several faces, which stand together
    {
        if (isTaken(file) && (m_files.empty() || m_files.back() != file))
            m_files.push_back(std::move(file));
    }

    std::vector<FcCache*> m_caches;
    std::vector<std::string> m_files;
};

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
    if (take(config, ownRules)) {
        const FolderIndex index(config);
        if (take(config, selection(index.files())) && FcConfigBuildFonts(config) && hasFonts(config))
            return config;
    }
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
