#include "hand/album_bytes.hpp"

#include <array>
#include <cstring>
#include <type_traits>

namespace hand {
namespace {

constexpr std::array finger_names{"index", "middle", "ring", "little"};

class Writer {
  public:
    static constexpr bool reads = false;
    std::string bytes;

    template <class T>
    void plain(const T& v) {
        static_assert(std::is_trivially_copyable_v<T>);
        bytes.append(reinterpret_cast<const char*>(&v), sizeof v);
    }
    template <class E>
    void choice(const E& v, E) {
        plain(std::uint8_t(v));
    }
    template <class C>
    std::size_t size(const C& list, std::size_t) {
        plain(std::uint32_t(list.size()));
        return list.size();
    }
};

class Reader {
  public:
    static constexpr bool reads = true;
    explicit Reader(std::string_view bytes)
        : rest_(bytes) {}

    bool whole() const { return good_ && rest_.empty(); }
    void fail() { good_ = false; }

    template <class T>
    void plain(T& v) {
        static_assert(std::is_trivially_copyable_v<T>);
        if (rest_.size() < sizeof v) good_ = false;
        if (!good_) return;
        std::memcpy(&v, rest_.data(), sizeof v);
        rest_.remove_prefix(sizeof v);
    }
    template <class E>
    void choice(E& v, E last) {
        std::uint8_t n = 0;
        plain(n);
        if (n > std::uint8_t(last)) fail();
        if (good_) v = static_cast<E>(n);
    }
    /// Makes room for what follows; `least` bytes an element keep a wrong count from growing.
    template <class C>
    std::size_t size(C& list, std::size_t least) {
        std::uint32_t n = 0;
        plain(n);
        if (n > rest_.size() / least) fail();
        list.resize(good_ ? n : 0);
        return list.size();
    }

  private:
    std::string_view rest_;
    bool good_ = true;
};

// One description serves both ways: `s` reads into the value or writes it out. Bindings by name:
// a new member does not compile until it is kept.

template <class S, class T>
void flag(S& s, T& v) {
    std::uint8_t n = v ? 1 : 0;
    s.plain(n);
    if constexpr (S::reads) v = n != 0;
}

template <class S, class T>
void text(S& s, T& v) {
    const std::size_t n = s.size(v, 1);
    for (std::size_t i = 0; i < n; ++i)
        s.plain(v[i]);
}

template <class S, class T>
void outline(S& s, T& v) {
    auto& [start, pieces, closed] = v;
    static_assert(sizeof(Dot) == 16 && sizeof(Cubic) == 48); // coordinates and nothing else
    s.plain(start);
    const std::size_t n = s.size(pieces, sizeof(Cubic));
    for (std::size_t i = 0; i < n; ++i)
        s.plain(pieces[i]);
    flag(s, closed);
}

template <class S, class T>
void area(S& s, T& v) {
    auto& [loops, tone] = v;
    const std::size_t n = s.size(loops, sizeof(Dot));
    for (std::size_t i = 0; i < n; ++i)
        outline(s, loops[i]);
    s.choice(tone, Tone::mark);
}

template <class S, class T>
void line(S& s, T& v) {
    auto& [path, pen, taper_start, taper_end] = v;
    outline(s, path);
    s.choice(pen, Pen::accent);
    flag(s, taper_start);
    flag(s, taper_end);
}

template <class S, class T>
void mark(S& s, T& v) {
    bool is_line = std::holds_alternative<Line>(v);
    flag(s, is_line);
    if constexpr (S::reads) {
        if (is_line)
            v = Line{};
        else
            v = Area{};
    }
    is_line ? line(s, std::get<Line>(v)) : area(s, std::get<Area>(v));
}

template <class S, class T>
void picture(S& s, T& v) {
    auto& [width, height, marks, anchors] = v;
    s.plain(width);
    s.plain(height);
    std::size_t n = s.size(marks, 1);
    for (std::size_t i = 0; i < n; ++i)
        mark(s, marks[i]);
    n = s.size(anchors, sizeof(Dot));
    for (std::size_t i = 0; i < n; ++i) {
        auto& [name, at] = anchors[i];
        text(s, name);
        s.plain(at);
    }
}

template <class S, class T>
void contact(S& s, T& v) {
    auto& [finger, first, middle, end] = v;
    std::uint8_t which = 0;
    for (std::size_t i = 0; i < finger_names.size(); ++i) {
        if (std::string_view(finger) == finger_names[i]) which = std::uint8_t(i);
    }
    s.plain(which);
    if constexpr (S::reads) {
        if (which >= finger_names.size()) return s.fail();
        finger = finger_names[which];
    }
    s.plain(first);
    s.plain(middle);
    s.plain(end);
}

template <class S, class T>
void facts(S& s, T& v) {
    auto& [knuckles, v_way, v_points, lay, gap, share, contacts, rests, contradiction, key] = v;
    s.plain(knuckles);
    s.plain(v_way);
    s.choice(v_points, unit::VPoint::outside_trail_shoulder);
    s.plain(lay);
    s.plain(gap);
    s.plain(share);
    const std::size_t n = s.size(contacts, 3 * sizeof(double));
    for (std::size_t i = 0; i < n; ++i)
        contact(s, contacts[i]);
    flag(s, rests);
    flag(s, contradiction);
    text(s, key);
}

} // namespace

std::string bytes_of(const Picture& value) {
    Writer w;
    picture(w, value);
    return std::move(w.bytes);
}

std::string bytes_of(const Facts& value) {
    Writer w;
    facts(w, value);
    return std::move(w.bytes);
}

bool read_bytes(std::string_view bytes, Picture& value) {
    Reader r(bytes);
    picture(r, value);
    return r.whole();
}

bool read_bytes(std::string_view bytes, Facts& value) {
    Reader r(bytes);
    facts(r, value);
    return r.whole();
}

} // namespace hand
