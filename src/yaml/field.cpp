#include "yaml/field.hpp"

#include "yaml/comb.hpp"
#include "yaml/explain.hpp"

#include <algorithm>

namespace yaml {

std::string plain_key(std::string_view key) {
    std::string plain(key);
    std::ranges::replace_if(
        plain, [](char c) { return c == '_' || c == '-'; }, ' ');
    const std::size_t first = plain.find_first_not_of(' ');
    if (first == std::string::npos) return std::string(key);
    return plain.substr(first, plain.find_last_not_of(' ') - first + 1);
}

std::string plain_word(std::string_view word) {
    std::string plain = plain_key(word);
    std::ranges::transform(plain, plain.begin(), [](char c) {
        return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    });
    return plain;
}

Document::Document(const diag::Source& source, diag::Findings& findings, std::size_t limit)
    : source_(&source)
    , findings_(&findings) {
    if (!diag::is_text(source, limit, findings)) return;
    const Combed combed = comb(source, findings);
    if (!combed.readable) return;
    Growth growth = grow(source, combed.text);
    if (growth.stop)
        if (const std::string mended = explain(source, combed.text, *growth.stop, findings);
            !mended.empty())
            growth = grow(source, mended);
    for (const Twin& twin : growth.twins)
        findings.error(twin.span, "'" + twin.key + "' is written twice",
                       (twin.first_line == twin.span.line
                            ? std::string("it already stands earlier in this line")
                            : "it already stands in line " + std::to_string(twin.first_line)) +
                           ": keep one of the two");
    if (growth.stop) return;
    root_ = std::move(growth.root);
    readable_ = root_.kind != Node::Kind::empty;
    if (!readable_)
        findings.error(source.whole(), "there is nothing in the file",
                       "begin with a line such as 'student: {name: Ruth, hand: right}'");
}

Field Document::root(std::string called) const {
    return {readable_ ? &root_ : nullptr, std::move(called), "", source_->whole(), findings_};
}

Field::Field(const Node* node, std::string name, std::string path, diag::Span key,
             diag::Findings* findings)
    : node_(node)
    , name_(std::move(name))
    , path_(std::move(path))
    , key_(key)
    , findings_(findings) {}

diag::Span Field::span() const {
    const bool value = node_ && node_->kind == Node::Kind::text;
    return value ? node_->span : key_;
}

std::string_view Field::written() const { return is_text() ? node_->text : std::string_view(); }

Field Field::at(std::string_view key) const {
    const std::string name = diag::quote(key);
    const std::string path = path_.empty() ? std::string(key) : path_ + "." + std::string(key);
    if (is_map()) {
        const auto entry = std::ranges::find(node_->entries, key, &Entry::key);
        if (entry != node_->entries.end())
            return {&entry->value, name, path, entry->key_span, findings_};
    }
    return {nullptr, name, path, key_, findings_};
}

Field Field::required(std::string_view key, std::string_view example) const {
    Field field = at(key);
    if (field || !findings_ || !is_map()) return field;
    if (!field.node_ &&
        std::ranges::find(node_->entries, key, &Entry::meant) != node_->entries.end())
        return field; // told where it is misspelt
    const std::string add = (path_.empty() ? "" : " to " + name_);
    const std::string line = std::string(key) + ": " + std::string(example);
    if (field.node_)
        field.error(field.name_ + " is empty", "complete the line, for example '" + line + "'");
    else
        field.error((path_.empty() ? whole() : name_) + " needs " + field.name_,
                    "add" + add + " a line such as '" + line + "'");
    return field;
}

std::vector<Field> Field::items() const {
    std::vector<Field> fields;
    if (!*this) return fields;
    if (!is_list()) return {*this};
    for (std::size_t i = 0; i < node_->items.size(); ++i) {
        const std::string number = std::to_string(i + 1);
        const Node& item = node_->items[i];
        fields.emplace_back(&item, "item " + number + " of " + name_, path_ + "[" + number + "]",
                            item.span, findings_);
    }
    return fields;
}

std::vector<std::pair<diag::Located<std::string>, Field>> Field::entries() const {
    std::vector<std::pair<diag::Located<std::string>, Field>> all;
    if (!is_map()) return all;
    for (const Entry& entry : node_->entries)
        all.emplace_back(diag::Located<std::string>{entry.key, entry.key_span},
                         Field(&entry.value, "'" + entry.key + "'", path_ + "." + entry.key,
                               entry.key_span, findings_));
    return all;
}

void Field::error(std::string what, std::string hint) const {
    if (findings_) findings_->error(span(), std::move(what), std::move(hint));
}

void Field::warning(std::string what, std::string hint) const {
    if (findings_) findings_->warning(span(), std::move(what), std::move(hint));
}

void Field::must(std::string_view what, std::string hint) const {
    const std::string found = is_text()   ? diag::quote(node_->text)
                              : is_list() ? "a list"
                              : is_map()  ? "a group of keys"
                                          : "nothing";
    for (const std::string_view mark : {"“", "”", "„", "‘", "’", "«"})
        if (written().starts_with(mark)) hint = "use straight quotes, or none at all";
    error(name_ + " must " + std::string(what) + ", found " + found, std::move(hint));
}

} // namespace yaml
