#include "cli/term_files.hpp"

#include "cli/file_name.hpp"
#include "cli/records.hpp"
#include "cli/workshop.hpp"
#include "output/file.hpp"
#include "output/pdf.hpp"
#include "output/sha256.hpp"
#include "page/bind.hpp"
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

std::string report_name(const std::string& code, const std::string& ending) {
    return file_stem(code, "student") + ending + ".pdf";
}
std::string overview_name(const std::string& ending) { return "coach-only" + ending + ".pdf"; }
std::string group_name(const std::string& ending) { return "group" + ending + ".pdf"; }
std::string printer_name(const std::string& ending) { return "for-the-printer" + ending + ".pdf"; }
std::string printed_name(const std::string& ending) { return "printed" + ending + ".csv"; }
std::string send_name(const std::string& ending) { return "send" + ending + ".txt"; }

} // namespace

std::string masked(const std::string& address) {
    const std::size_t at = address.rfind('@');
    if (at == std::string::npos || at == 0) return {};
    const std::size_t dot = address.rfind('.');
    const std::string end =
        dot != std::string::npos && dot > at + 1 ? address.substr(dot) : std::string();
    return address.substr(0, 1) + "***@" + address.substr(at + 1, 1) + "***" + end;
}

TermFiles::TermFiles(TermPlace place)
    : place_(std::move(place))
    , ending_("-" + file_stem(place_.term, "term")) {
    for (const auto& code : place_.codes)
        slots_.push_back({code, report_name(code, ending_), {}, {}, {}});
}

std::optional<std::string> TermFiles::name_taken_by(std::size_t at) const {
    for (std::size_t i = 0; i < at; ++i)
        if (in_small_letters(slots_[i].file) == in_small_letters(slots_[at].file))
            return slots_[i].code;
    return std::nullopt;
}

std::string TermFiles::path(const std::string& name) const {
    return (fs::path(place_.folder) / name).string();
}

namespace {

/// A list with the ticks of an earlier one, for lines that say the same.
std::string ticked(std::string list, const std::string& before) {
    const std::string open = "[ ] ";
    for (std::size_t at = list.find(open); at != std::string::npos; at = list.find(open, at + 1)) {
        const std::size_t from = at + open.size() - 1, end = list.find('\n', from);
        const std::size_t same = before.find("]" + list.substr(from, end - from + 1));
        if (same == std::string::npos || same < 2 || before[same - 2] != '[') continue;
        list[at + 1] = before[same - 1];
    }
    return list;
}

/// True when a row of the list names that file with the digest of these bytes.
bool is_listed(const std::string& list, const std::string& name, const std::string& bytes) {
    const std::size_t at = list.find("," + name + ",");
    const std::size_t end = list.find("\r\n", at);
    return at != std::string::npos && end != std::string::npos &&
           std::string_view(list).substr(0, end).ends_with("," + output::sha256(bytes));
}

} // namespace

std::vector<std::string> TermFiles::paths() const {
    std::vector<std::string> out;
    for (const Slot& slot : slots_)
        out.push_back(path(slot.file));
    out.push_back(path(overview_name(ending_)));
    if (place_.group_page) out.push_back(path(group_name(ending_)));
    for (const auto& name : {printer_name(ending_), send_name(ending_), printed_name(ending_)})
        out.push_back(path(name));
    return out;
}

std::vector<std::string> TermFiles::made() const {
    std::vector<std::string> out = others_;
    for (const Slot& slot : slots_)
        if (!slot.hash.empty()) out.push_back(path(slot.file));
    return out;
}

std::vector<std::string> TermFiles::papers_of(const std::vector<std::string>& codes) const {
    std::vector<std::string> out{path(group_name(ending_))};
    for (const auto& code : codes)
        out.push_back(path(report_name(code, ending_)));
    std::error_code gone;
    std::erase_if(out, [&](const auto& file) { return !fs::exists(file, gone); });
    return out;
}

bool TermFiles::are_up_to_date(const output::Digest& inputs) const {
    const auto list = text_of(path(printed_name(ending_)));
    const auto pile = text_of(path(printer_name(ending_)));
    std::error_code gone;
    if (!list || !pile || output::inputs_of(*pile) != inputs ||
        !fs::exists(path(send_name(ending_)), gone))
        return false;
    for (const auto& file : paths()) {
        if (!file.ends_with(".pdf")) continue;
        const auto bytes = text_of(file);
        if (!bytes || !is_listed(*list, fs::path(file).filename().string(), *bytes)) return false;
    }
    return true;
}

bool TermFiles::write(const std::string& name, const std::string& bytes) const {
    if (!place_.all && text_of(path(name)) == bytes) return false;
    output::write_file(path(name), bytes, place_.inputs);
    return true;
}

void TermFiles::write_other(const std::string& name, const std::string& bytes) {
    write(name, bytes);
    others_.push_back(path(name));
}

void TermFiles::write_other(const std::string& name, const page::Book& book,
                            const std::string& first, const output::Digest& inputs) {
    const std::string bytes = output::pdf(book, inputs);
    const std::string pages = std::to_string(book.sheets.size());
    write_other(name, bytes);
    rows_.push_back({"", name, pages, first, first.empty() ? "" : pages, output::sha256(bytes)});
}

bool TermFiles::student(std::size_t at, const Receiver& receiver, page::Book book) {
    Slot& slot = slots_[at];
    const std::string bytes = output::pdf(book);
    const bool fresh = write(slot.file, bytes);
    slot.receiver = receiver;
    slot.book = std::move(book);
    slot.hash = output::sha256(bytes);
    return fresh;
}

void TermFiles::overview(const page::Book& book) {
    write_other(overview_name(ending_), book, "", {});
}

void TermFiles::group(const page::Book& book) { write_other(group_name(ending_), book, "", {}); }

std::vector<page::PileRow> TermFiles::pile(std::size_t before) const {
    std::vector<page::PileRow> out;
    for (const Slot& one : slots_) {
        if (one.hash.empty()) continue;
        out.push_back({one.code, before + 1, before + one.book.sheets.size()});
        before += one.book.sheets.size();
    }
    return out;
}

void TermFiles::printer(page::Book proof, const output::Digest& inputs) {
    first_ = proof.sheets.size();
    for (const Slot& one : slots_)
        if (!one.hash.empty()) page::bind(proof, one.book, "student-" + one.code + "-", one.code);
    write_other(printer_name(ending_), proof, "1", inputs);
}

void TermFiles::write_lists() {
    std::string csv = line({"code", "file", "pages", "first page for the printer",
                            "last page for the printer", "sha256"});
    std::string list = place_.term + "\n\n";
    std::size_t before = first_;
    for (const Slot& one : slots_) {
        if (one.hash.empty()) continue;
        const std::size_t pages = one.book.sheets.size();
        csv += line({one.code, one.file, std::to_string(pages), std::to_string(before + 1),
                     std::to_string(before + pages), one.hash});
        before += pages;
        const std::string to = masked(one.receiver.address);
        list += "[ ] " + one.code + "  " + one.receiver.first_name + "  " +
                (to.empty() ? "no address known" : to) + "  " + one.hash.substr(0, 8) + "  " +
                one.file + "\n";
    }
    for (const auto& row : rows_)
        csv += line(row);
    list += "\nOne line a student: code, first name, where it goes, the first eight digits of the "
            "file's SHA-256, the file.\nTick a line when all of it belongs together. Nothing has "
            "been sent.\n";
    write_other(send_name(ending_), ticked(list, text_of(path(send_name(ending_))).value_or("")));
    write_other(printed_name(ending_), csv);
}

} // namespace cli
