// Which plural form a language uses for a number.
#pragma once

#include <memory>
#include <string>

namespace words {

/// The plural rules of one language, from ICU. Copies share the rules; safe to read from threads.
class Plural {
  public:
    explicit Plural(const std::string& language);
    /// "one", "few", "other" …
    std::string form(double number) const;

  private:
    struct Rules;
    std::shared_ptr<const Rules> rules_;
};

} // namespace words
