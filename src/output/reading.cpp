#include "output/reading.hpp"

namespace output {

namespace {

class Reader {
  public:
    explicit Reader(const std::vector<ink::Mark>& marks)
        : marks_(marks) {}

    std::vector<Element> parts(bool root) {
        std::vector<Element> out;
        while (at_ < marks_.size()) {
            const auto& mark = marks_[at_++];
            if (const auto* tag = std::get_if<ink::Tag>(&mark)) {
                if (!tag->opens) return out;
                Element e{tag->role, {}, tag->alternative, parts(false)};
                if (e.role != "Artifact") out.push_back(std::move(e));
            } else if (const auto* words = std::get_if<ink::Words>(&mark); words && !root) {
                out.push_back({{}, words->text, {}, {}});
            }
        }
        return out;
    }

  private:
    const std::vector<ink::Mark>& marks_;
    std::size_t at_ = 0;
};

void append(std::string& to, const std::string& more) {
    if (more.empty()) return;
    if (!to.empty() && to.back() != ' ') to += ' ';
    to += more;
}

} // namespace

std::vector<Element> reading_of(const std::vector<ink::Mark>& marks) {
    return Reader(marks).parts(true);
}

std::string text_of(const Element& element, const std::string& figure_name) {
    if (element.role == "Figure")
        return element.alternative.empty() || figure_name.empty()
                   ? ""
                   : figure_name + ": " + element.alternative;
    std::string out = element.text;
    for (const auto& part : element.parts)
        append(out, text_of(part, figure_name));
    return out;
}

} // namespace output
