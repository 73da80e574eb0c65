#include "hand/album.hpp"

#include "hand/album_bytes.hpp"
#include "hand/pose.hpp"

#include <algorithm>
#include <bit>
#include <charconv>

namespace hand {
namespace {

/// The shortest text that reads back as the same number.
void add(std::string& key, double v) {
    char text[32];
    key.append(text, std::to_chars(text, text + sizeof text, v).ptr);
    key += ' ';
}

template <class T>
void add(std::string& key, const std::optional<T>& v) {
    if (v)
        add(key, double(*v));
    else
        key += "- ";
}

/// Bindings by name: a new member does not compile until it is part of the key.
void add(std::string& key, const unit::Grip& grip) {
    const auto& [lay, knuckles, v, side, length, pad, gap, balance, join, square, first] = grip;
    add(key, lay);
    add(key, knuckles);
    add(key, v);
    add(key, side);
    add(key, length);
    add(key, pad);
    add(key, gap);
    add(key, balance);
    add(key, join);
    add(key, square);
    add(key, first);
}

void add(std::string& key, const Wish& wish) {
    const auto& [seen, target, build, glove, join, face] = wish;
    add(key, seen);
    add(key, target);
    add(key, double(build));
    add(key, double(glove));
    add(key, double(join));
    add(key, face);
}

std::string edition_of(const char* kind) {
    const bool little = std::endian::native == std::endian::little;
    return std::string(kind) + (little ? " l " : " b ") + edition + ' ';
}

Wish without_face(Wish wish) {
    wish.face_degrees = 0;
    return wish;
}

} // namespace

std::string key_of(const Wish& wish) {
    std::string key = edition_of("facts");
    add(key, without_face(wish));
    return key;
}

std::string key_of(const Wish& wish, View view) {
    std::string key = edition_of("picture");
    add(key, shows_face(view) ? wish : without_face(wish));
    add(key, double(view));
    return key;
}

bool shows_face(View view) { return view == View::golfers_eye; }

template <class T, class Make>
T Album::once(Kept<T>& kept, const std::string& key, Make&& make) {
    std::promise<T> promise;
    std::shared_future<T> made;
    {
        const std::lock_guard lock(mutex_);
        if (const auto found = kept.find(key); found != kept.end()) {
            made = found->second.made;
            found->second.used = ++calls_;
        } else {
            if (kept.size() >= most_kept)
                kept.erase(std::ranges::min_element(
                    kept, {}, [](const auto& slot) { return slot.second.used; }));
            kept.emplace(key, Slot<T>{promise.get_future().share(), ++calls_});
        }
    }
    if (made.valid()) return made.get();
    try {
        const T value = make();
        promise.set_value(value);
        return value;
    } catch (...) {
        promise.set_exception(std::current_exception());
        throw;
    }
}

template <class T, class Make>
T Album::stored(const std::string& key, Make&& make) {
    if (store_.find) {
        if (const auto bytes = store_.find(key)) {
            T value;
            if (read_bytes(*bytes, value)) return value;
        }
    }
    T value = make();
    if (store_.keep) store_.keep(key, bytes_of(value));
    return value;
}

Album::Solved Album::solved(const Wish& wish) {
    return once(poses_, key_of(wish), [&] { return pose(without_face(wish)); });
}

Facts Album::facts(const Wish& wish) {
    const std::string key = key_of(wish);
    return once(facts_, key,
                [&] { return stored<Facts>(key, [&] { return hand::facts(*solved(wish)); }); });
}

Picture Album::picture(const Wish& wish, View view) {
    const std::string key = key_of(without_face(wish), view);
    const auto drawn = [&] {
        const Solved pose = solved(wish);
        return shows_face(view) ? draw_without_club(*pose) : draw(*pose, view);
    };
    Picture kept = once(pictures_, key, [&] { return stored<Picture>(key, drawn); });
    return shows_face(view) ? with_club(std::move(kept), wish.face_degrees) : kept;
}

Album& album() {
    static Album of_this_run;
    return of_this_run;
}

} // namespace hand
