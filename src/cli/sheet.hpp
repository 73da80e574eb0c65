// One record to its finished sheet: used by every command that draws.
#pragma once

#include "cli/workshop.hpp"
#include "page/flow.hpp"
#include "page/story.hpp"
#include "report/lesson_report.hpp"
#include "text/pango_typesetter.hpp"

#include <memory>

namespace cli {

/// To whom a sheet of that lesson speaks, and on what it is printed.
words::Voice voice_of(const record::Lesson& lesson);

/// A story with all it stands on.
class Sheet {
  public:
    /// Adds findings to `read` (an unknown drill, a language without wording).
    Sheet(const Workshop& workshop, Read& read, const text::Typesetter& type);

    const figure::Easel& easel() const { return easel_; }
    const page::Story& story() const { return story_; }
    /// Lays out all pages; faults of the layout become warnings of `read`.
    page::Book book(Read& read) const;

  private:
    words::Speaker speaker_;
    theme::Theme theme_;
    figure::Easel easel_;
    page::Story story_;
    const report::Plan& plan_;
};

} // namespace cli
