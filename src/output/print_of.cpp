#include "output/print_of.hpp"

#include "output/number.hpp"
#include "output/qpdf.hpp"
#include "output/sha256.hpp"
#include "output/trace.hpp"

#include <exception>

namespace output {

namespace {

/// The trace tells long paths by their box alone: here every end point counts.
std::string points(const ink::Path& path) {
    std::string out;
    for (const auto& s : path.segments())
        out += fixed(s.to.x, 1) + " " + fixed(s.to.y, 1) + ";";
    return out;
}

std::string everything(const page::Sheet& sheet) {
    std::string out = fixed(sheet.size.width, 1) + " x " + fixed(sheet.size.height, 1) + "\n" +
                      trace(sheet.marks);
    for (const auto& mark : sheet.marks) {
        if (const auto* fill = std::get_if<ink::Fill>(&mark)) out += points(fill->path);
        if (const auto* stroke = std::get_if<ink::Stroke>(&mark)) out += points(stroke->path);
        if (const auto* picture = std::get_if<ink::Picture>(&mark); picture && picture->bytes)
            out += *picture->bytes;
    }
    return out;
}

} // namespace

std::vector<std::string> prints_of(const page::Book& book) {
    std::vector<std::string> out;
    for (std::size_t i = 0; i < book.sheets.size(); i += 2) {
        std::string both = everything(book.sheets[i]);
        if (i + 1 < book.sheets.size()) both += everything(book.sheets[i + 1]);
        out.push_back(sha256(both).substr(0, 16));
    }
    return out;
}

std::optional<std::string> producer_of(const std::string& pdf) {
    try {
        QPDF file;
        file.setSuppressWarnings(true);
        file.processMemoryFile("earlier.pdf", pdf.data(), pdf.size());
        auto info = file.getTrailer().getKey("/Info");
        if (!info.isDictionary() || !info.getKey("/Producer").isString()) return std::nullopt;
        return info.getKey("/Producer").getUTF8Value();
    } catch (const std::exception&) { // no PDF, or locked
        return std::nullopt;
    }
}

std::string note_in(const std::string& pdf) {
    try {
        QPDF file;
        file.setSuppressWarnings(true);
        file.processMemoryFile("earlier.pdf", pdf.data(), pdf.size());
        auto piece = file.getRoot().getKey("/PieceInfo");
        if (!piece.isDictionary()) return {};
        auto ours = piece.getKey(note_key);
        if (!ours.isDictionary() || !ours.getKey("/Private").isString()) return {};
        return ours.getKey("/Private").getStringValue();
    } catch (const std::exception&) { // not a PDF: there is no note in it
        return {};
    }
}

} // namespace output
