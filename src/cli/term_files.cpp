#include "cli/term_files.hpp"

#include "cli/plain_letters.hpp"
#include "output/pdf.hpp"
#include "output/sha256.hpp"
#include "page/bind.hpp"

#include <filesystem>

namespace cli {

namespace {

/// A cell of a CSV file (RFC 4180).
std::string cell(const std::string& text) {
    if (text.find_first_of(",\"\r\n") == std::string::npos) return text;
    std::string out = "\"";
    for (const char c : text)
        out += c == '"' ? std::string("\"\"") : std::string(1, c);
    return out + "\"";
}

std::string line(const std::vector<std::string>& cells) {
    std::string out;
    for (std::size_t i = 0; i < cells.size(); ++i)
        out += (i > 0 ? "," : "") + cell(cells[i]);
    return out + "\r\n";
}

} // namespace

std::string masked(const std::string& address) {
    const std::size_t at = address.rfind('@');
    if (at == std::string::npos || at == 0) return {};
    const std::size_t dot = address.rfind('.');
    const std::string end =
        dot != std::string::npos && dot > at + 1 ? address.substr(dot) : std::string();
    return address.substr(0, 1) + "***@" + address.substr(at + 1, 1) + "***" + end;
}

std::string file_stem(const std::string& name) {
    std::string out;
    for (const char c : plain_letters(name)) {
        const bool plain =
            (c >= '0' && c <= '9') || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
        if (plain)
            out += c;
        else if (!out.empty() && out.back() != '-')
            out += '-';
    }
    while (!out.empty() && out.back() == '-')
        out.pop_back();
    return out.empty() ? "term" : out;
}

TermFiles::TermFiles(std::string folder, const record::Term& term, std::vector<std::string> inputs)
    : folder_(std::move(folder))
    , ending_("-" + file_stem(term.name))
    , term_(term)
    , inputs_(std::move(inputs)) {}

std::string TermFiles::write(const std::string& name, const std::string& bytes) {
    const std::string path = (std::filesystem::path(folder_) / name).string();
    output::write_file(path, bytes, inputs_);
    written_.push_back(path);
    return output::sha256(bytes);
}

bool TermFiles::student(const std::string& code, const Receiver& receiver, page::Book book) {
    for (const Printed& other : printed_)
        if (file_stem(other.code) == file_stem(code)) return false;
    Printed one{code, file_stem(code) + ending_ + ".pdf", {}, receiver, std::move(book)};
    one.hash = write(one.file, output::pdf(one.book));
    printed_.push_back(std::move(one));
    return true;
}

void TermFiles::overview(const page::Book& book) {
    const std::string file = "coach-only" + ending_ + ".pdf";
    const std::string pages = std::to_string(book.sheets.size());
    others_.push_back({"", file, pages, "", "", write(file, output::pdf(book))});
}

void TermFiles::group(const page::Book& book) {
    const std::string file = "group" + ending_ + ".pdf";
    const std::string pages = std::to_string(book.sheets.size());
    others_.push_back({"", file, pages, "", "", write(file, output::pdf(book))});
}

std::vector<page::PileRow> TermFiles::pile(std::size_t before) const {
    std::vector<page::PileRow> out;
    for (const Printed& one : printed_) {
        out.push_back({one.code, before + 1, before + one.book.sheets.size()});
        before += one.book.sheets.size();
    }
    return out;
}

void TermFiles::printer(page::Book proof) {
    first_ = proof.sheets.size();
    for (const Printed& one : printed_)
        page::bind(proof, one.book, "student-" + one.code + "-", one.code);
    const std::string file = "for-the-printer" + ending_ + ".pdf";
    const std::string pages = std::to_string(proof.sheets.size());
    others_.push_back({"", file, pages, "1", pages, write(file, output::pdf(proof))});
}

void TermFiles::write_lists() {
    std::string csv = line({"code", "file", "pages", "first page for the printer",
                            "last page for the printer", "sha256"});
    const auto rows = pile(first_);
    std::string list = term_.name + "\n\n";
    for (std::size_t i = 0; i < printed_.size(); ++i) {
        const Printed& one = printed_[i];
        csv += line({one.code, one.file, std::to_string(one.book.sheets.size()),
                     std::to_string(rows[i].first), std::to_string(rows[i].last), one.hash});
        const std::string to = masked(one.receiver.address);
        list += "[ ] " + one.code + "  " + one.receiver.first_name + "  " +
                (to.empty() ? "no address known" : to) + "  " + one.hash.substr(0, 8) + "  " +
                one.file + "\n";
    }
    for (const auto& other : others_)
        csv += line(other);
    write("printed" + ending_ + ".csv", csv);
    list += "\nOne line a student: code, first name, where it goes, the first eight digits of the "
            "file's SHA-256, the file.\nTick a line when all of it belongs together. Nothing has "
            "been sent.\n";
    write("send" + ending_ + ".txt", list);
}

} // namespace cli
