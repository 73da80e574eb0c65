#include "output/svg_logo.hpp"

#include <librsvg/rsvg.h>

#include <dlfcn.h>
#include <memory>

namespace output {

namespace {

/// The few functions of librsvg that are needed (2.52 and later).
struct Library {
    decltype(&rsvg_handle_new_from_data) open = nullptr;
    decltype(&rsvg_handle_get_intrinsic_size_in_pixels) pixels = nullptr;
    decltype(&rsvg_handle_get_intrinsic_dimensions) dimensions = nullptr;
    decltype(&rsvg_handle_render_document) render = nullptr;
};

template <class F>
void find(void* library, F& function, const char* name) {
    function = reinterpret_cast<F>(dlsym(library, name));
    if (!function) throw CannotDraw(std::string("librsvg lacks ") + name);
}

const Library& library() {
    static const Library loaded = [] {
        void* file = dlopen("librsvg-2.so.2", RTLD_NOW | RTLD_LOCAL);
        if (!file)
            throw CannotDraw("SVG needs the package librsvg2-2 (apt-get install librsvg2-2)");
        Library l;
        find(file, l.open, "rsvg_handle_new_from_data");
        find(file, l.pixels, "rsvg_handle_get_intrinsic_size_in_pixels");
        find(file, l.dimensions, "rsvg_handle_get_intrinsic_dimensions");
        find(file, l.render, "rsvg_handle_render_document");
        return l;
    }();
    return loaded;
}

struct Unref {
    void operator()(RsvgHandle* handle) const { g_object_unref(handle); }
};
using Handle = std::unique_ptr<RsvgHandle, Unref>;

[[noreturn]] void fail(GError* error) {
    const std::string why = error ? error->message : "unknown fault";
    if (error) g_error_free(error);
    throw CannotDraw("an SVG picture cannot be read: " + why);
}

Handle opened(const std::string& bytes) {
    GError* error = nullptr;
    Handle handle(
        library().open(reinterpret_cast<const guint8*>(bytes.data()), bytes.size(), &error));
    if (!handle) fail(error);
    return handle;
}

} // namespace

void draw_svg(cairo_t* context, const ink::Rect& box, const std::string& bytes) {
    const Handle handle = opened(bytes);
    const RsvgRectangle place{box.x, box.y, box.width, box.height};
    GError* error = nullptr;
    if (!library().render(handle.get(), context, &place, &error)) fail(error);
}

ink::Size svg_size(const std::string& bytes) {
    const Handle handle = opened(bytes);
    double width = 0, height = 0;
    if (library().pixels(handle.get(), &width, &height) && width > 0 && height > 0)
        return {width, height};
    gboolean has_width = 0, has_height = 0, has_box = 0;
    RsvgLength w{}, h{};
    RsvgRectangle box{};
    library().dimensions(handle.get(), &has_width, &w, &has_height, &h, &has_box, &box);
    if (has_box && box.width > 0 && box.height > 0) return {box.width, box.height};
    throw CannotDraw("an SVG picture does not say how wide and high it is");
}

} // namespace output
