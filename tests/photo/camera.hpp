// Photographs as a camera writes them, made here: dots, EXIF with place and device, comments.
#pragma once

#include <turbojpeg.h>

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace camera {

/// A picture whose red grows to the right and whose green grows downwards, so that its sides can be
/// told apart. `sampling` of the colours: TJSAMP_420 has blocks of 16 dots.
inline std::string plain_jpeg(int width, int height, int sampling = TJSAMP_420) {
    std::vector<unsigned char> dots;
    for (int y = 0; y < height; ++y)
        for (int x = 0; x < width; ++x) {
            dots.push_back(static_cast<unsigned char>(x * 255 / width));
            dots.push_back(static_cast<unsigned char>(y * 255 / height));
            dots.push_back(40);
        }
    tjhandle handle = tjInitCompress();
    unsigned char* out = nullptr;
    unsigned long size = 0;
    tjCompress2(handle, dots.data(), width, 0, height, TJPF_RGB, &out, &size, sampling, 90, 0);
    std::string bytes(reinterpret_cast<const char*>(out), size);
    tjFree(out);
    tjDestroy(handle);
    return bytes;
}

inline void little(std::string& to, std::uint32_t value, int bytes) {
    for (int i = 0; i < bytes; ++i)
        to += static_cast<char>(value >> (8 * i) & 255);
}

/// EXIF (CIPA DC-008): device, orientation and a place at 51° 30' N, little-endian.
inline std::string exif(int orientation) {
    std::string out("II*\0", 4);
    little(out, 8, 4);
    little(out, 3, 2);
    const auto entry = [&](std::uint32_t tag, std::uint32_t type, std::uint32_t count,
                           std::uint32_t value) {
        little(out, tag, 2), little(out, type, 2), little(out, count, 4), little(out, value, 4);
    };
    entry(0x010F, 2, 12, 50);                                     // Make, at 50
    entry(0x0112, 3, 1, static_cast<std::uint32_t>(orientation)); // Orientation
    entry(0x8825, 4, 1, 62);                                      // GPS, at 62
    little(out, 0, 4);
    out.append("NosyCamera7").append(1, '\0');
    little(out, 2, 2);
    entry(1, 2, 2, 'N');
    entry(2, 5, 3, 92);
    little(out, 0, 4);
    for (const std::uint32_t n : {51u, 1u, 30u, 1u, 987654u, 1000u})
        little(out, n, 4);
    std::string head = "Exif";
    head.append(2, '\0');
    return head.append(out);
}

inline std::string segment(unsigned char marker, const std::string& body) {
    const std::size_t size = body.size() + 2;
    std::string out;
    for (const std::size_t byte : {std::size_t{0xFF}, std::size_t{marker}, size >> 8, size & 255})
        out += static_cast<char>(byte);
    return out.append(body);
}

/// The same with EXIF, XMP and a comment, and something hung on behind the end.
inline std::string photograph(int width, int height, int orientation, int sampling = TJSAMP_420) {
    const std::string plain = plain_jpeg(width, height, sampling);
    std::string xmp = "http://ns.adobe.com/xap/1.0/";
    xmp += '\0';
    xmp += "<x:xmpmeta><owner>NosyOwner</owner></x:xmpmeta>";
    return plain.substr(0, 2) + segment(0xE1, exif(orientation)) + segment(0xE1, xmp) +
           segment(0xFE, "NosyComment") + plain.substr(2) + "NosyTail";
}

struct Dots {
    int width = 0, height = 0;
    std::vector<unsigned char> rgb;
    int red(double x, double y) const { return at(x, y)[0]; }
    int green(double x, double y) const { return at(x, y)[1]; }

  private:
    const unsigned char* at(double x, double y) const {
        const int column = static_cast<int>(x * (width - 1)),
                  row = static_cast<int>(y * (height - 1));
        return &rgb[static_cast<std::size_t>((row * width + column) * 3)];
    }
};

inline Dots decoded(const std::string& jpeg) {
    Dots out;
    int sampling = 0, space = 0;
    tjhandle handle = tjInitDecompress();
    const auto* bytes = reinterpret_cast<const unsigned char*>(jpeg.data());
    tjDecompressHeader3(handle, bytes, jpeg.size(), &out.width, &out.height, &sampling, &space);
    out.rgb.resize(static_cast<std::size_t>(out.width * out.height * 3));
    tjDecompress2(handle, bytes, jpeg.size(), out.rgb.data(), out.width, 0, out.height, TJPF_RGB,
                  0);
    tjDestroy(handle);
    return out;
}

} // namespace camera
