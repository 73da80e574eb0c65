#include "yaml/grow.hpp"

#include "diag/utf8.hpp"
#include "yaml/comb.hpp"
#include "yaml/field.hpp"

#include <yaml-cpp/eventhandler.h>
#include <yaml-cpp/exceptions.h>
#include <yaml-cpp/parser.h>

#include <algorithm>
#include <sstream>

namespace yaml {

namespace {

/// Builds the tree from the parser's events, so that places, twins and bounds are ours.
class Gardener final : public YAML::EventHandler {
  public:
    Gardener(const diag::Source& source, Growth& growth)
        : source_(source)
        , growth_(growth) {}

    void OnDocumentStart(const YAML::Mark&) override {}
    void OnDocumentEnd() override {}
    void OnNull(const YAML::Mark& mark, YAML::anchor_t anchor) override {
        refuse(anchor, mark);
        place(Node{}, mark);
        finish_if_leaf();
    }
    void OnAlias(const YAML::Mark& mark, YAML::anchor_t) override {
        throw Stop{Stop::Reason::repeated, span(mark, 1), {}};
    }
    void OnScalar(const YAML::Mark& mark, const std::string& tag, YAML::anchor_t anchor,
                  const std::string& value) override;
    void OnSequenceStart(const YAML::Mark& mark, const std::string&, YAML::anchor_t anchor,
                         YAML::EmitterStyle::value) override {
        open(mark, anchor, Node::Kind::list);
    }
    void OnSequenceEnd() override { close(); }
    void OnMapStart(const YAML::Mark& mark, const std::string&, YAML::anchor_t anchor,
                    YAML::EmitterStyle::value) override {
        open(mark, anchor, Node::Kind::map);
    }
    void OnMapEnd() override { close(); }

  private:
    diag::Span span(const YAML::Mark& mark, std::size_t bytes) const {
        return source_.in_line(static_cast<std::uint32_t>(std::max(mark.line, 0)) + 1,
                               static_cast<std::size_t>(std::max(mark.column, 0)), bytes);
    }
    void refuse(YAML::anchor_t anchor, const YAML::Mark& mark) const {
        if (anchor != YAML::NullAnchor) throw Stop{Stop::Reason::repeated, span(mark, 1), {}};
    }
    bool wants_key() const {
        return !path_.empty() && path_.back()->kind == Node::Kind::map && !key_pending_;
    }
    void open(const YAML::Mark& mark, YAML::anchor_t anchor, Node::Kind kind) {
        refuse(anchor, mark);
        if (wants_key()) throw Stop{Stop::Reason::odd_key, span(mark, 1), {}};
        if (path_.size() >= deepest) throw Stop{Stop::Reason::deep, span(mark, 1), {}};
        Node node;
        node.kind = kind;
        place(std::move(node), mark);
    }
    void close() { path_.pop_back(); }
    void finish_if_leaf() {
        if (leaf_) path_.pop_back();
        leaf_ = false;
    }
    void check_closed(const YAML::Mark& mark) const;
    void take_key(const std::string& key, const YAML::Mark& mark);
    void place(Node node, const YAML::Mark& mark);

    const diag::Source& source_;
    Growth& growth_;
    std::vector<Node*> path_; ///< from the root to the open part
    bool key_pending_ = false;
    bool leaf_ = false; ///< the last part placed holds no others
    std::size_t parts_ = 0;
};

void Gardener::OnScalar(const YAML::Mark& mark, const std::string& tag, YAML::anchor_t anchor,
                        const std::string& value) {
    refuse(anchor, mark);
    std::string text = value;
    std::ranges::replace(text, kept_hash, '#');
    if (wants_key()) return take_key(text, mark);
    check_closed(mark);
    Node node;
    node.kind = Node::Kind::text;
    node.text = std::move(text);
    node.quoted = tag == "!";
    place(std::move(node), mark);
    Node& placed = *path_.back();
    placed.span = span(mark, std::max<std::size_t>(1, value.size() + (placed.quoted ? 2 : 0)));
    finish_if_leaf();
}

/// yaml-cpp 0.7 takes a quote that is never closed as closed by the end of the file.
void Gardener::check_closed(const YAML::Mark& mark) const {
    const std::string& text = source_.text();
    const std::string_view line =
        source_.line(static_cast<std::uint32_t>(std::max(mark.line, 0)) + 1);
    const auto column = static_cast<std::size_t>(std::max(mark.column, 0));
    if (column >= line.size() || (line[column] != '"' && line[column] != '\'')) return;
    const char quote = line[column];
    std::size_t at = static_cast<std::size_t>(line.data() - text.data()) + column + 1;
    while (at < text.size() && text[at] != quote)
        at += quote == '"' && text[at] == '\\' ? 2 : 1;
    if (at >= text.size()) throw Stop{Stop::Reason::syntax, span(mark, 1), "end of file"};
}

void Gardener::take_key(const std::string& key, const YAML::Mark& mark) {
    std::vector<Entry>& entries = path_.back()->entries;
    const std::string plain = plain_key(key);
    const auto twin = std::ranges::find(entries, plain, &Entry::key);
    const diag::Span place = span(mark, std::max<std::size_t>(1, key.size()));
    if (twin != entries.end()) growth_.twins.push_back({plain, place, twin->key_span.line});
    entries.push_back({plain, place, {}, {}});
    key_pending_ = true;
}

/// Puts `node` where the parser stands and makes it the open part.
void Gardener::place(Node node, const YAML::Mark& mark) {
    if (++parts_ > most_parts) throw Stop{Stop::Reason::large, span(mark, 1), {}};
    node.span = span(mark, 1);
    leaf_ = node.kind == Node::Kind::empty || node.kind == Node::Kind::text;
    Node* target = &growth_.root;
    if (!path_.empty() && path_.back()->kind == Node::Kind::list)
        target = &path_.back()->items.emplace_back();
    else if (!path_.empty()) {
        if (!key_pending_) throw Stop{Stop::Reason::odd_key, span(mark, 1), {}};
        target = &path_.back()->entries.back().value;
        key_pending_ = false;
    }
    *target = std::move(node);
    path_.push_back(target);
}

} // namespace

Growth grow(const diag::Source& source, const std::string& written) {
    Growth growth;
    std::istringstream text(written);
    try {
        YAML::Parser parser(text);
        Gardener gardener(source, growth);
        if (!parser.HandleNextDocument(gardener)) return growth;
        Growth rest;
        Gardener second(source, rest);
        if (parser.HandleNextDocument(second) && rest.root.kind != Node::Kind::empty)
            growth.stop = Stop{Stop::Reason::second, rest.root.span, {}};
    } catch (const Stop& stop) {
        growth.stop = stop;
    } catch (const YAML::Exception& fault) {
        const auto line = static_cast<std::uint32_t>(std::max(fault.mark.line, 0)) + 1;
        const auto column = static_cast<std::size_t>(std::max(fault.mark.column, 0));
        growth.stop = Stop{Stop::Reason::syntax, source.in_line(line, column), fault.msg};
    }
    return growth;
}

} // namespace yaml
