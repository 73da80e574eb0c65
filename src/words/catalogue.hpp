// Sentences by key, in one language.
#pragma once

#include "diag/finding.hpp"
#include "unit/display.hpp"
#include "unit/measure.hpp"
#include "words/pattern.hpp"
#include "words/plural.hpp"

#include <concepts>
#include <map>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

namespace words {

/// To whom a sheet speaks.
struct Voice {
    unit::Hand hand = unit::Hand::right;
    bool junior = false;
    unit::Units units;
};

/// What goes into a hole: text, or a number that a plural can count. Text comes ready to print;
/// numbers that stand in the sentence get the language's marks and at most three decimals.
class Hole {
  public:
    Hole(std::string text)
        : value_(std::move(text)) {}
    Hole(std::string_view text)
        : value_(std::string(text)) {}
    Hole(const char* text)
        : value_(std::string(text)) {}
    Hole(double number)
        : value_(number) {}
    template <std::integral T>
    Hole(T count)
        : value_(static_cast<long>(count)) {}

    const std::variant<std::string, double, long>& value() const { return value_; }

  private:
    std::variant<std::string, double, long> value_;
};
using Holes = std::vector<std::pair<std::string_view, Hole>>;

/// All sentences of one language. A file has lines `key = sentence`; '#' starts a comment line; an
/// indented line continues the sentence. Sentences are ICU MessageFormat with plain, select and
/// plural holes. Two holes fill themselves: {hand} is right or left, {age} is adult or junior.
/// Constant after reading, so that threads may share it.
class Catalogue {
  public:
    explicit Catalogue(std::string language);

    /// Adds the sentences of one file. A key that is there already is an error.
    void add(const diag::Source& source, diag::Findings& findings);

    /// Puts other sentences in place of those that are there: a translation, a regional spelling or
    /// a coach's own wording. Holes the first sentence did not have and a caution made empty are
    /// errors, an unknown key is a warning; all leave the sentence as it was.
    void replace(const diag::Source& source, diag::Findings& findings);

    /// The sentence. An unknown key or an unfilled hole is a fault of the program:
    /// std::logic_error.
    std::string say(const Voice& voice, std::string_view key, const Holes& holes = {}) const;

    bool has(std::string_view key) const { return entries_.contains(key); }
    const std::string& language() const { return language_; }
    std::vector<std::string_view> keys() const; ///< sorted
    /// Names of the holes of that sentence, without {hand} and {age}; sorted.
    std::vector<std::string> holes(std::string_view key) const;

  private:
    struct Entry {
        Pattern pattern;
        std::string file;
        std::uint32_t line = 0;
    };
    std::string language_;
    Plural plural_;
    std::map<std::string, Entry, std::less<>> entries_;
};

/// A catalogue that speaks to one student: what pages use.
class Speaker {
  public:
    /// `catalogue` must outlive the speaker.
    Speaker(const Catalogue& catalogue, Voice voice)
        : catalogue_(&catalogue)
        , voice_(voice) {}

    std::string say(std::string_view key, const Holes& holes = {}) const {
        return catalogue_->say(voice_, key, holes);
    }
    bool has(std::string_view key) const { return catalogue_->has(key); }
    const Voice& voice() const { return voice_; }
    const std::string& language() const { return catalogue_->language(); }

  private:
    const Catalogue* catalogue_;
    Voice voice_;
};

/// The language whose sentences are added first, before those of `language` replace them: en-GB, so
/// that a sentence without a translation is there in English; empty for en-GB itself.
std::string_view base_language(std::string_view language);

} // namespace words
