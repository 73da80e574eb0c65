// What an academy's files hold about one person.
#pragma once

#include "cli/lessons_below.hpp"
#include "report/held.hpp"
#include "theme/theme.hpp"

namespace cli {

/// The day until which a person's records are kept: the person's own, else the house's months after
/// the last lesson. Nothing when neither is known.
std::optional<record::Date> due_of(const Academy& academy, const people::Person& person,
                                   const Lessons& lessons);
/// The same by the day of the last lesson.
std::optional<record::Date> due_after(const Academy& academy, const people::Person& person,
                                      std::optional<record::Date> last);

std::string language_of(const Academy& academy, const people::Person& person);
theme::Theme theme_of(const Workshop& workshop, const Academy& academy,
                      const people::Person& person);

/// Term files below `folder` whose register names the code, by their way from there.
std::vector<fs::path> terms_of(const fs::path& folder, std::string_view code);

report::Held held_of(const Academy& academy, const people::Person& person, const Lessons& lessons,
                     const std::vector<fs::path>& terms, const words::Speaker& say);

} // namespace cli
