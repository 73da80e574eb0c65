#include "photo/formats.hpp"

#include <turbojpeg.h>

#include <cmath>
#include <memory>

namespace photo {

namespace {

struct CloseHandle {
    void operator()(void* handle) const { tjDestroy(handle); }
};
using Handle = std::unique_ptr<void, CloseHandle>;

struct FreeBytes {
    void operator()(unsigned char* bytes) const { tjFree(bytes); }
};

struct Head {
    int width = 0, height = 0, sampling = 0, space = 0;
};

const Fault broken{"is broken or cut short", "copy it again from where it comes"};

const unsigned char* data_of(std::string_view bytes) {
    return reinterpret_cast<const unsigned char*>(bytes.data());
}

Head head_of(void* handle, std::string_view jpeg) {
    Head head;
    if (tjDecompressHeader3(handle, data_of(jpeg), jpeg.size(), &head.width, &head.height,
                            &head.sampling, &head.space) != 0)
        throw broken;
    if (head.space == TJCS_CMYK || head.space == TJCS_YCCK)
        throw Fault{"is mixed for a printing press (CMYK)", "save it as an ordinary JPEG (RGB)"};
    if (head.sampling < 0)
        throw Fault{"is a rare kind of JPEG", "open it in any picture program and save it anew"};
    return head;
}

/// `jpeg` transformed without decoding; nothing but the picture is copied. Empty when the transform
/// is refused.
std::string transformed(void* handle, std::string_view jpeg, tjtransform how) {
    how.options |= TJXOPT_COPYNONE;
    unsigned char* out = nullptr;
    unsigned long size = 0;
    const int failed = tjTransform(handle, data_of(jpeg), jpeg.size(), 1, &out, &size, &how, 0);
    const std::unique_ptr<unsigned char, FreeBytes> owner(out);
    if (failed != 0 && tjGetErrorCode(handle) == TJERR_WARNING) throw broken;
    return failed != 0 ? std::string() : std::string(reinterpret_cast<const char*>(out), size);
}

/// What brings orientation 1 to 8 upright.
constexpr int upright[] = {TJXOP_NONE,   TJXOP_NONE,       TJXOP_HFLIP,
                           TJXOP_ROT180, TJXOP_VFLIP,      TJXOP_TRANSPOSE,
                           TJXOP_ROT90,  TJXOP_TRANSVERSE, TJXOP_ROT270};

/// Turns it; blocks cut by an edge cannot be turned and are trimmed, at most 15 dots.
std::string turned(void* handle, std::string_view jpeg) {
    tjtransform how{};
    how.op = upright[orientation_of(jpeg)];
    how.options = how.op == TJXOP_NONE ? 0 : TJXOPT_PERFECT;
    std::string out = transformed(handle, jpeg, how);
    if (out.empty()) how.options = TJXOPT_TRIM, out = transformed(handle, jpeg, how);
    if (out.empty()) throw broken;
    return out;
}

unsigned word(std::string_view bytes, std::size_t at, std::size_t size, bool little) {
    unsigned value = 0;
    for (std::size_t i = 0; i < size; ++i) {
        const std::size_t k = little ? size - 1 - i : i;
        value =
            value << 8 | (at + k < bytes.size() ? static_cast<unsigned char>(bytes[at + k]) : 0);
    }
    return value;
}

/// The orientation in the first directory of a TIFF head, or 1.
int orientation_in(std::string_view tiff) {
    const bool little = tiff.starts_with("II");
    const std::size_t directory = word(tiff, 4, 4, little);
    if (directory >= tiff.size()) return 1;
    const unsigned entries = word(tiff, directory, 2, little);
    for (std::size_t i = 0; i < entries && i < 1000; ++i) {
        const std::size_t at = directory + 2 + 12 * i;
        if (word(tiff, at, 2, little) != 0x0112) continue;
        const unsigned value = word(tiff, at + 8, 2, little);
        return value >= 1 && value <= 8 ? static_cast<int>(value) : 1;
    }
    return 1;
}

} // namespace

int orientation_of(std::string_view jpeg) {
    for (std::size_t at = 2; at + 4 < jpeg.size() && jpeg[at] == '\xFF';) {
        const unsigned marker = word(jpeg, at + 1, 1, false);
        if (marker == 0xDA) break; // the picture itself begins
        const std::size_t length = word(jpeg, at + 2, 2, false);
        const auto segment = jpeg.substr(at + 4, length > 2 ? length - 2 : 0);
        if (marker == 0xE1 && segment.starts_with(std::string_view("Exif\0\0", 6)))
            return orientation_in(segment.substr(6));
        at += 2 + std::max<std::size_t>(length, 2);
    }
    return 1;
}

Photo jpeg_photo(std::string_view bytes, const Cut& cut) {
    const Handle handle(tjInitTransform());
    if (!handle) throw broken;
    const Head first = head_of(handle.get(), bytes);
    expect_size(first.width, first.height, largest_area);
    std::string upright_bytes = turned(handle.get(), bytes);
    Head head = head_of(handle.get(), upright_bytes);
    ink::Rect shown = shown_part(head.width, head.height, cut);

    // what lies outside leaves the file, up to the edge of a block
    const int block_x = tjMCUWidth[head.sampling], block_y = tjMCUHeight[head.sampling];
    tjtransform how{};
    how.options = TJXOPT_CROP;
    how.r.x = static_cast<int>(shown.x) / block_x * block_x;
    how.r.y = static_cast<int>(shown.y) / block_y * block_y;
    how.r.w = std::min(head.width, static_cast<int>(std::ceil(shown.right()))) - how.r.x;
    how.r.h = std::min(head.height, static_cast<int>(std::ceil(shown.bottom()))) - how.r.y;
    if (how.r.w < head.width || how.r.h < head.height) {
        std::string cropped = transformed(handle.get(), upright_bytes, how);
        if (cropped.empty()) throw broken;
        upright_bytes = std::move(cropped);
        head = head_of(handle.get(), upright_bytes);
        shown.x -= how.r.x, shown.y -= how.r.y;
    }
    return {"jpeg", std::make_shared<const std::string>(std::move(upright_bytes)), head.width,
            head.height, shown};
}

} // namespace photo
