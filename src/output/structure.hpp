// The structure of one sheet, told to Cairo so that no content falls out of it. Internal to output.
#pragma once

#include "ink/mark.hpp"
#include "output/cairo_handle.hpp"

#include <vector>

namespace output {

/// Cairo's stand-in for an artifact, which it has no tag for; finish_pdf turns it into one.
inline constexpr const char* artifact_role = "Private";

/// Cairo 1.16 marks content in leaf elements only. So what is drawn beside child elements is put
/// into a Span, what is drawn in no element is an artifact, elements inside an artifact are left
/// out, and links and places wait until all elements are closed. Throws CannotDraw.
class Structure {
  public:
    Structure(cairo_t* context, const std::vector<ink::Mark>& marks);

    /// Before mark `index`: true when the mark is to be drawn now.
    bool enter(std::size_t index);
    void finish();

  private:
    struct Open {
        std::string role;
        bool leaf = true;
        bool told = true; ///< false inside an artifact
    };

    void open(std::size_t index, const ink::Tag& tag);
    void close(const ink::Tag& tag);
    void wrap(const char* role);
    void unwrap();
    void write(const ink::Link& mark);
    void write(const ink::Place& mark);

    cairo_t* context_;
    const std::vector<ink::Mark>& marks_;
    std::vector<bool> leaf_; ///< of the tag that mark n opens
    std::vector<Open> open_;
    const char* wrapped_ = nullptr;
    std::vector<std::size_t> waiting_; ///< links and places
};

} // namespace output
