#include "output/pack.hpp"

#include "output/cairo_handle.hpp"

#include <libdeflate.h>
#include <zlib.h>

#include <memory>

namespace {

thread_local int unpacked = 0;

} // namespace

/// Stands before zlib's own for the whole program, by the usual order of symbols. It opens the same
/// stream by the wider function. Were it passed over, files would only be a little slower to make.
extern "C" int deflateInit_(z_streamp stream, int level, const char* version, int size) {
    return deflateInit2_(stream, unpacked > 0 ? 0 : level, Z_DEFLATED, MAX_WBITS, MAX_MEM_LEVEL - 1,
                         Z_DEFAULT_STRATEGY, version, size);
}

namespace output {

Unpacked::Unpacked() { ++unpacked; }
Unpacked::~Unpacked() { --unpacked; }

std::string packed(std::string_view bytes) {
    struct Free {
        void operator()(libdeflate_compressor* p) const { libdeflate_free_compressor(p); }
    };
    constexpr int level = 6;
    thread_local const std::unique_ptr<libdeflate_compressor, Free> compressor(
        libdeflate_alloc_compressor(level));
    if (!compressor) throw CannotDraw("packing a page: out of memory");
    std::string out(libdeflate_zlib_compress_bound(compressor.get(), bytes.size()), '\0');
    out.resize(libdeflate_zlib_compress(compressor.get(), bytes.data(), bytes.size(), out.data(),
                                        out.size()));
    return out;
}

} // namespace output
