#include "text/font_set.hpp"

#include <algorithm>
#include <array>
#include <filesystem>
#include <fstream>

namespace text {

namespace fs = std::filesystem;

const std::vector<Family>& families() {
    static const std::vector<Family> set{
        {"Lato",
         "truetype/lato",
         "fonts-lato",
         {{"Lato-Regular.ttf", 400, false},
          {"Lato-Italic.ttf", 400, true},
          {"Lato-Medium.ttf", 500, false},
          {"Lato-MediumItalic.ttf", 500, true},
          {"Lato-Semibold.ttf", 600, false},
          {"Lato-SemiboldItalic.ttf", 600, true},
          {"Lato-Bold.ttf", 700, false},
          {"Lato-BoldItalic.ttf", 700, true},
          {"Lato-Black.ttf", 900, false},
          {"Lato-BlackItalic.ttf", 900, true}}},
        {"Vollkorn",
         "truetype/vollkorn",
         "fonts-vollkorn",
         {{"Vollkorn-Regular.ttf", 400, false},
          {"Vollkorn-Italic.ttf", 400, true},
          {"Vollkorn-Medium.ttf", 500, false},
          {"Vollkorn-MediumItalic.ttf", 500, true},
          {"Vollkorn-SemiBold.ttf", 600, false},
          {"Vollkorn-SemiBoldItalic.ttf", 600, true},
          {"Vollkorn-Bold.ttf", 700, false},
          {"Vollkorn-BoldItalic.ttf", 700, true},
          {"Vollkorn-Black.ttf", 900, false},
          {"Vollkorn-BlackItalic.ttf", 900, true}}},
    };
    return set;
}

const Face& Family::face(int weight, bool italic) const {
    const auto distance = [&](const Face& face) {
        const int off = face.weight - weight;
        return std::pair{face.italic != italic, off >= 0 ? 2 * off : -2 * off + 1};
    };
    return *std::ranges::min_element(faces, {}, distance);
}

const std::vector<Fallback>& fallbacks() {
    static const std::string_view core = "fonts-noto-core";
    static const auto noto = [](std::string_view regular, std::string_view bold) {
        return std::vector<std::string_view>{regular, bold};
    };
    static const std::vector<Fallback> set{
        {"Noto Sans Armenian", core,
         noto("truetype/noto/NotoSansArmenian-Regular.ttf",
              "truetype/noto/NotoSansArmenian-Bold.ttf"),
         0x0530, 0x058F},
        {"Noto Sans Hebrew", core,
         noto("truetype/noto/NotoSansHebrew-Regular.ttf", "truetype/noto/NotoSansHebrew-Bold.ttf"),
         0x0590, 0x05FF},
        {"Noto Sans Arabic", core,
         noto("truetype/noto/NotoSansArabic-Regular.ttf", "truetype/noto/NotoSansArabic-Bold.ttf"),
         0x0600, 0x08FF},
        {"Noto Sans Devanagari", core,
         noto("truetype/noto/NotoSansDevanagari-Regular.ttf",
              "truetype/noto/NotoSansDevanagari-Bold.ttf"),
         0x0900, 0x097F},
        {"Noto Sans Thai", core,
         noto("truetype/noto/NotoSansThai-Regular.ttf", "truetype/noto/NotoSansThai-Bold.ttf"),
         0x0E00, 0x0E7F},
        {"Noto Sans Georgian", core,
         noto("truetype/noto/NotoSansGeorgian-Regular.ttf",
              "truetype/noto/NotoSansGeorgian-Bold.ttf"),
         0x10A0, 0x10FF},
        {"Noto Sans CJK JP", "fonts-noto-cjk",
         noto("opentype/noto/NotoSansCJK-Regular.ttc", "opentype/noto/NotoSansCJK-Bold.ttc"),
         0x2E80, 0x3FFFF},
        {"DejaVu Sans", "fonts-dejavu-core",
         noto("truetype/dejavu/DejaVuSans.ttf", "truetype/dejavu/DejaVuSans-Bold.ttf"), 0x0080,
         0x10FFFF},
    };
    return set;
}

const Family& family(std::string_view name) {
    const auto& set = families();
    const auto found = std::ranges::find(set, name, &Family::name);
    if (found != set.end()) return *found;
    std::string known;
    for (const auto& f : set)
        known += std::string(known.empty() ? "'" : ", '") + std::string(f.name) + "'";
    throw MissingFont(std::string("the font set has no family '") + std::string(name) +
                      "'; it has " + known);
}

std::string font_stamps(std::string_view root) {
    constexpr std::size_t head = 1024;
    std::string out;
    const auto add = [&](const fs::path& file) {
        std::ifstream in(fs::path(root) / file, std::ios::binary);
        std::array<char, head> bytes{};
        in.read(bytes.data(), head);
        out.append(bytes.data(), static_cast<std::size_t>(in.gcount())) += file.string();
    };
    for (const auto& f : families())
        for (const Face& face : f.faces)
            add(fs::path(f.folder) / face.file);
    for (const auto& f : fallbacks())
        for (const auto file : f.files)
            add(file);
    return out;
}

std::string_view package_for(char32_t character) {
    const auto& set = fallbacks();
    const auto found = std::ranges::find_if(
        set, [&](const Fallback& f) { return character >= f.first && character <= f.last; });
    return found == set.end() ? std::string_view() : found->package;
}

void check_fonts(diag::Findings& findings, std::string_view root) {
    const auto there = [&](const fs::path& file) {
        std::error_code ignored;
        return fs::is_regular_file(fs::path(root) / file, ignored);
    };
    for (const auto& f : families()) {
        const auto lost = std::ranges::find_if(
            f.faces, [&](const Face& face) { return !there(fs::path(f.folder) / face.file); });
        if (lost == f.faces.end()) continue;
        findings.error({},
                       std::string("the font family '") + std::string(f.name) +
                           "' is incomplete: '" + std::string(lost->file) + "' is not in '" +
                           std::string(root) + "/" + std::string(f.folder) + "'",
                       std::string("add it with: apt-get install ") + std::string(f.package));
    }
    for (const auto& f : fallbacks()) {
        if (std::ranges::all_of(f.files, there)) continue;
        findings.note(
            {},
            std::string("the optional font family '") + std::string(f.name) + "' is not installed",
            std::string("names in its script need: apt-get install ") + std::string(f.package));
    }
}

} // namespace text
