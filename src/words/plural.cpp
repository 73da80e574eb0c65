#include "words/plural.hpp"

#include <stdexcept>
#include <unicode/plurrule.h>

namespace words {

struct Plural::Rules {
    std::unique_ptr<icu::PluralRules> rules;
};

Plural::Plural(const std::string& language) {
    UErrorCode code = U_ZERO_ERROR;
    auto rules = std::make_shared<Rules>();
    rules->rules.reset(icu::PluralRules::forLocale(icu::Locale(language.c_str()), code));
    if (U_FAILURE(code)) throw std::runtime_error("ICU has no plural rules for " + language);
    rules_ = std::move(rules);
}

std::string Plural::form(double number) const {
    std::string out;
    rules_->rules->select(number).toUTF8String(out);
    return out;
}

} // namespace words
