#include "output/picture.hpp"

#include "output/qpdf.hpp"

#include <qpdf/Pl_DCT.hh>
#include <qpdf/Pl_String.hh>

#include <cstddef>
#include <cstring>
#include <string_view>

namespace output {

namespace {

struct Reader {
    std::string_view rest;
    static cairo_status_t read(void* closure, unsigned char* data, unsigned int length) {
        auto& self = *static_cast<Reader*>(closure);
        if (self.rest.size() < length) return CAIRO_STATUS_READ_ERROR;
        std::memcpy(data, self.rest.data(), length);
        self.rest.remove_prefix(length);
        return CAIRO_STATUS_SUCCESS;
    }
};

struct JpegHead {
    int width = 0, height = 0, channels = 0;
};

/// Reads the frame header (ITU-T T.81, B.2.2): the first SOF marker that is not DHT, JPG or DAC.
JpegHead jpeg_head(std::string_view bytes) {
    const auto byte = [&](std::size_t i) {
        return i < bytes.size() ? static_cast<unsigned char>(bytes[i]) : 0;
    };
    const auto word = [&](std::size_t i) { return byte(i) << 8 | byte(i + 1); };
    if (word(0) != 0xFFD8) throw CannotDraw("a picture said to be JPEG is not one");
    for (std::size_t at = 2; at + 9 < bytes.size() && byte(at) == 0xFF;) {
        const int marker = byte(at + 1);
        if (marker == 0xFF) {
            ++at;
            continue;
        }
        const bool frame =
            marker >= 0xC0 && marker <= 0xCF && marker != 0xC4 && marker != 0xC8 && marker != 0xCC;
        if (frame) return {word(at + 7), word(at + 5), byte(at + 9)};
        at += 2 + static_cast<std::size_t>(word(at + 2));
    }
    throw CannotDraw("a JPEG picture has no frame header");
}

Surface blank(const JpegHead& head) {
    Surface surface(cairo_image_surface_create(CAIRO_FORMAT_RGB24, head.width, head.height));
    expect(cairo_surface_status(surface.get()), "making room for a picture");
    return surface;
}

/// The surface's pixels stay untouched zeros: Cairo writes the attached bytes instead.
Surface attach_jpeg(const ink::Picture& picture) {
    Surface surface = blank(jpeg_head(*picture.bytes));
    auto* owner = new std::shared_ptr<const std::string>(picture.bytes);
    const auto release = [](void* p) {
        delete static_cast<std::shared_ptr<const std::string>*>(p);
    };
    expect(
        cairo_surface_set_mime_data(surface.get(), CAIRO_MIME_TYPE_JPEG,
                                    reinterpret_cast<const unsigned char*>(picture.bytes->data()),
                                    picture.bytes->size(), release, owner),
        "attaching a JPEG picture");
    return surface;
}

Surface decode_jpeg(const ink::Picture& picture) {
    const JpegHead head = jpeg_head(*picture.bytes);
    if (head.channels != 1 && head.channels != 3)
        throw CannotDraw("a JPEG picture is neither grey nor in colour of three channels");
    std::string pixels;
    Pl_String samples("samples", nullptr, pixels);
    try {
        Pl_DCT decoder("jpeg", &samples);
        decoder.write(reinterpret_cast<const unsigned char*>(picture.bytes->data()),
                      picture.bytes->size());
        decoder.finish();
    } catch (const std::exception& e) {
        throw CannotDraw(std::string("a JPEG picture is broken: ") + e.what());
    }
    const auto needed = static_cast<std::size_t>(head.width) *
                        static_cast<std::size_t>(head.height) *
                        static_cast<std::size_t>(head.channels);
    if (pixels.size() < needed) throw CannotDraw("a JPEG picture is cut short");
    Surface surface = blank(head);
    unsigned char* out = cairo_image_surface_get_data(surface.get());
    const int stride = cairo_image_surface_get_stride(surface.get());
    const auto* in = reinterpret_cast<const unsigned char*>(pixels.data());
    for (int y = 0; y < head.height; ++y, out += stride) {
        for (int x = 0; x < head.width; ++x, in += head.channels) {
            const bool colour = head.channels == 3;
            const std::uint32_t pixel = static_cast<std::uint32_t>(in[0]) << 16 |
                                        static_cast<std::uint32_t>(in[colour ? 1 : 0]) << 8 |
                                        static_cast<std::uint32_t>(in[colour ? 2 : 0]);
            std::memcpy(out + std::ptrdiff_t{x} * 4, &pixel, 4);
        }
    }
    cairo_surface_mark_dirty(surface.get());
    return surface;
}

} // namespace

Surface picture_surface(const ink::Picture& picture, bool keep_encoding) {
    if (!picture.bytes) throw CannotDraw("a picture has no bytes");
    if (picture.format == "jpeg")
        return keep_encoding ? attach_jpeg(picture) : decode_jpeg(picture);
    if (picture.format != "png")
        throw CannotDraw("a picture of the unknown format '" + picture.format + "'");
    Reader reader{*picture.bytes};
    Surface surface(cairo_image_surface_create_from_png_stream(Reader::read, &reader));
    expect(cairo_surface_status(surface.get()), "reading a PNG picture");
    return surface;
}

} // namespace output
