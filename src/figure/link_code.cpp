#include "figure/link_code.hpp"

#include <qrencode.h>

#include <memory>

namespace figure {

namespace {

struct Free {
    void operator()(QRcode* code) const { QRcode_free(code); }
};
using Code = std::unique_ptr<QRcode, Free>;

constexpr std::size_t longest = 150, short_enough = 60;

/// Short links afford a code that stands a stain (15 %); long ones need their room for themselves.
Code encoded(const std::string& link) {
    const QRecLevel level = link.size() <= short_enough ? QR_ECLEVEL_M : QR_ECLEVEL_L;
    return Code(QRcode_encodeString(link.c_str(), 0, level, QR_MODE_8, 1));
}

} // namespace

ink::Drawing link_code(std::string_view link) {
    ink::Drawing out;
    if (link.empty() || link.size() > longest) return out;
    const Code code = encoded(std::string(link));
    if (!code) return out;
    const double side = code_module * mm;
    const int n = code->width;
    ink::Path dark;
    for (int row = 0; row < n; ++row)
        for (int column = 0; column < n;) {
            int end = column; // a run of dark modules is one piece: no hairlines between them
            while (end < n && (code->data[row * n + end] & 1) != 0)
                ++end;
            if (end == column) {
                ++column;
                continue;
            }
            const double left = (quiet_zone + column) * side, top = (quiet_zone + row) * side;
            const double right = (quiet_zone + end) * side, bottom = top + side;
            dark.move({left, top}).line({right, top}).line({right, bottom}).line({left, bottom});
            dark.close();
            column = end;
        }
    const double whole = (n + 2 * quiet_zone) * side;
    out.size = {whole, whole};
    out.add(ink::Fill{std::move(dark), ink::black});
    out.message = link;
    return out;
}

} // namespace figure
