#include "output/plain_text.hpp"

#include "output/reading.hpp"

#include <algorithm>
#include <string_view>

namespace output {

namespace {

std::size_t letters(std::string_view text) {
    return static_cast<std::size_t>(std::ranges::count_if(
        text, [](char c) { return (static_cast<unsigned char>(c) & 0xC0) != 0x80; }));
}

bool has(const Element& element, std::string_view role) {
    return std::ranges::any_of(element.parts, [&](const Element& p) { return p.role == role; });
}

class Writer {
  public:
    explicit Writer(const TwinWords& words)
        : words_(words) {}

    void write(const std::vector<Element>& elements) {
        for (const auto& element : elements)
            write(element);
    }
    std::string take() {
        while (out_.ends_with("\n\n"))
            out_.pop_back();
        return std::move(out_);
    }

  private:
    void write(const Element& e) {
        if (e.role == "H1") return heading(say(e), '=');
        if (e.role == "H2" || e.role == "H3") return heading(say(e), '-');
        if (e.role == "Table") return table(e);
        if (e.role == "L") return list(e);
        if (e.role == "Figure") return paragraph(say(e).empty() ? "" : "[" + say(e) + "]");
        const bool whole = std::ranges::all_of(
            e.parts, [](const Element& p) { return p.role.empty() || p.role == "Span"; });
        if (e.role.empty() || whole) return paragraph(say(e));
        write(e.parts);
    }

    std::string say(const Element& e) const { return text_of(e, words_.picture); }

    /// `text` from column `indent`; the first line begins with `head`.
    void lines(const std::string& head, const std::string& text, std::size_t indent) {
        std::string line = head;
        line.append(indent > letters(head) ? indent - letters(head) : 0, ' ');
        bool fresh = true;
        for (std::size_t at = 0; at < text.size();) {
            const std::size_t end = std::min(text.find_first_of(" \n", at), text.size());
            const std::string word = text.substr(at, end - at);
            at = end + 1;
            if (word.empty()) continue;
            if (!fresh && letters(line) + 1 + letters(word) > twin_width) {
                out_ += line + "\n";
                line.assign(indent, ' ');
                fresh = true;
            }
            line += (fresh ? "" : " ") + word;
            fresh = false;
        }
        out_ += line + "\n";
    }

    void gap() {
        if (!out_.empty() && !out_.ends_with("\n\n")) out_ += "\n";
    }
    void paragraph(const std::string& text) {
        if (text.empty()) return;
        gap();
        lines({}, text, 0);
    }
    void heading(const std::string& text, char under) {
        if (text.empty()) return;
        gap();
        lines({}, text, 0);
        out_ += std::string(std::min(letters(text), twin_width), under) + "\n";
    }

    void list(const Element& e) {
        gap();
        for (const auto& item : e.parts) {
            std::string label, body;
            for (const auto& part : item.parts)
                (part.role == "Lbl" ? label : body) +=
                    (part.role == "Lbl" || body.empty() ? "" : " ") + say(part);
            if (label.empty() && body.empty()) body = say(item);
            lines(label.empty() ? "-" : label, body, 3);
        }
    }

    /// "Face angle. Before: 11.2°. After: 2.0°."
    void row(const Element& tr, const std::vector<std::string>& heads) {
        std::string text;
        std::size_t first = 0; // the cell the row begins with, until another one follows
        for (std::size_t i = 0; i < tr.parts.size(); ++i) {
            const std::string cell =
                text_of(tr.parts[i], {}); // its numbers say what a figure would
            if (cell.empty()) continue;
            if (text.empty()) {
                text = cell;
                first = i;
                continue;
            }
            const bool stopped = text.ends_with('.') || text.ends_with('?');
            text += first != tr.parts.size() ? (stopped ? " " : ": ") : "; ";
            first = tr.parts.size();
            text += (i < heads.size() && !heads[i].empty() ? heads[i] + " " : "") + cell;
        }
        lines({}, text, 0);
    }

    /// Cells that all say the same are said once: fourteen days to fill in.
    static bool repeats(const Element& tr) {
        if (tr.parts.size() < 6) return false;
        const std::string first = text_of(tr.parts[1], {});
        return std::all_of(tr.parts.begin() + 2, tr.parts.end(),
                           [&](const Element& c) { return text_of(c, {}) == first; });
    }

    void table(const Element& e) {
        gap();
        std::vector<std::string> heads;
        for (const auto& tr : e.parts) {
            const bool all_heads =
                has(tr, "TH") &&
                std::ranges::all_of(tr.parts, [](const Element& c) { return c.role == "TH"; });
            if (heads.empty() && all_heads) {
                for (const auto& cell : tr.parts)
                    heads.push_back(say(cell));
                continue;
            }
            if (repeats(tr)) {
                const std::string each = say(tr.parts[1]);
                lines({},
                      say(tr.parts[0]) + ": " + std::to_string(tr.parts.size() - 1) + " × " +
                          (each.empty() ? "…" : each),
                      0);
                continue;
            }
            row(tr, heads);
        }
    }

    const TwinWords& words_;
    std::string out_;
};

} // namespace

std::string plain_text(const page::Book& book, const TwinWords& words) {
    Writer writer(words);
    for (const auto& sheet : book.sheets)
        writer.write(reading_of(sheet.marks));
    return writer.take();
}

} // namespace output
