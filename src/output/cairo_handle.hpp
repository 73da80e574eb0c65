// Owned Cairo objects. Internal to room output.
#pragma once

#include <cairo.h>

#include <memory>
#include <stdexcept>
#include <string>

namespace output {

struct Destroy {
    void operator()(cairo_t* p) const { cairo_destroy(p); }
    void operator()(cairo_surface_t* p) const { cairo_surface_destroy(p); }
};
using Context = std::unique_ptr<cairo_t, Destroy>;
using Surface = std::unique_ptr<cairo_surface_t, Destroy>;

/// The marks cannot be drawn: a fault of the program or of an embedded picture, named in what().
struct CannotDraw : std::runtime_error {
    using std::runtime_error::runtime_error;
};

inline void expect(cairo_status_t status, const char* doing) {
    if (status != CAIRO_STATUS_SUCCESS)
        throw CannotDraw(std::string(doing) + ": " + cairo_status_to_string(status));
}

/// A Cairo write function that appends to a std::string.
inline cairo_status_t append(void* closure, const unsigned char* data, unsigned int length) {
    static_cast<std::string*>(closure)->append(reinterpret_cast<const char*>(data), length);
    return CAIRO_STATUS_SUCCESS;
}

} // namespace output
