// A byte that chooses the crop, then any bytes as a photograph.
#include "photo/photo.hpp"
#include "entry.hpp"

int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    if (size == 0) return 0;
    const double cut = (data[0] % 4) * 0.15;
    try {
        const auto photo =
            photo::photo_of(fuzz::text_of(data + 1, size - 1), {cut, cut / 2, cut, 0});
        if (!photo.bytes) std::abort();
        static_cast<void>(photo::widest(photo));
    } catch (const photo::Fault& fault) {
        if (fault.what.empty()) std::abort();
    }
    return 0;
}
