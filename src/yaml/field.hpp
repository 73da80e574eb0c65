// A cursor over a YAML document that knows its path and position and reports what it cannot read.
#pragma once

#include "diag/finding.hpp"
#include "yaml/node.hpp"

#include <initializer_list>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace yaml {

/// One value of the document, or the place where it is missing. Readers return nothing for a value
/// that is absent or empty, without a finding; a value that is there and wrong is reported once.
class Field {
  public:
    Field() = default;
    Field(const Node* node, std::string name, std::string path, diag::Span key,
          diag::Findings* findings);

    /// True when the key is written and has a value. "hand:" alone counts as left out.
    explicit operator bool() const { return node_ && node_->kind != Node::Kind::empty; }
    /// True for a key without a value.
    bool is_empty() const { return node_ && node_->kind == Node::Kind::empty; }
    bool is_text() const { return node_ && node_->kind == Node::Kind::text; }
    bool is_list() const { return node_ && node_->kind == Node::Kind::list; }
    bool is_map() const { return node_ && node_->kind == Node::Kind::map; }

    /// "student.hand", "drills[2].id"; empty for the whole document.
    const std::string& path() const { return path_; }
    /// For messages: "'hand'", "item 2 of 'drills'", "the file".
    const std::string& called() const { return name_; }
    /// Where the value stands, or where it should: the place of the key or of the parent's key.
    diag::Span span() const;
    diag::Span key_span() const { return key_; }
    /// A text as written, without its quotes; empty for anything else.
    std::string_view written() const;
    bool quoted() const { return node_ && node_->quoted; }

    /// Reports each key that is not known, with the nearest known one, and a value that has no
    /// keys. Keys in `told` have been reported already and are not offered.
    void only(const std::vector<std::string_view>& known,
              const std::vector<std::string_view>& told = {}) const;
    /// The value of that key; an absent field when there is none.
    Field at(std::string_view key) const;
    /// The same, reported when absent or empty, unless `only` has offered the key for one that is
    /// misspelt. `example` is the value to add.
    Field required(std::string_view key, std::string_view example) const;
    /// The items of a list; a single value counts as a list of one.
    std::vector<Field> items() const;
    /// Keys and values in the order of the file, for keys that the coach makes up.
    std::vector<std::pair<diag::Located<std::string>, Field>> entries() const;

    std::optional<std::string> text() const;
    /// A finite number with a decimal point. A degree sign behind it is allowed.
    std::optional<double> number() const;
    std::optional<double> number(double least, double most) const;
    std::optional<int> whole(int least, int most) const;
    std::optional<bool> yes_no() const;
    /// The place of the value among `words`; capitals, '-' and '_' do not matter.
    std::optional<std::size_t> one_of(std::span<const std::string_view> words) const;

    /// Reports this value: "'hand' must be right or left, found 'both'" is what("must be …").
    void must(std::string_view what, std::string hint = {}) const;
    void error(std::string what, std::string hint = {}) const;
    void warning(std::string what, std::string hint = {}) const;

  private:
    bool expect_text(std::string_view wanted) const;
    bool slip(const Entry& entry) const;
    /// For messages about missing and unknown keys of the whole document.
    std::string whole() const { return name_ == "the file" ? "the record" : name_; }

    const Node* node_ = nullptr;
    std::string name_ = "the file";
    std::string path_;
    diag::Span key_;
    diag::Findings* findings_ = nullptr;
};

/// A parsed document. Reading faults (indentation, tabs, colons, quotes, texts cut at a '#', keys
/// written twice, repeated parts, nesting deeper than 24, more than 20,000 parts) go to `findings`.
class Document {
  public:
    /// `limit` bounds the size in bytes.
    Document(const diag::Source& source, diag::Findings& findings, std::size_t limit = 1'000'000);
    Document(const Document&) = delete;
    Document& operator=(const Document&) = delete;

    /// False when the text could not be read as a whole: a finding says so, and looking for missing
    /// keys would only mislead.
    bool readable() const { return readable_; }
    /// `called`: for messages; "the file" means a lesson record.
    Field root(std::string called = "the file") const;

  private:
    const diag::Source* source_;
    diag::Findings* findings_;
    Node root_;
    bool readable_ = false;
};

/// Turns '_' and '-' into spaces and drops spaces around: how keys are compared.
std::string plain_key(std::string_view key);
/// The same in small letters: how words are compared.
std::string plain_word(std::string_view word);

} // namespace yaml
