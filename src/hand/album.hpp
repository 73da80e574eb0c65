// Drawings kept by what they show: within a run what was asked for lately is not drawn twice, and a
// store outside may keep it longer. Memory is bounded by `most_kept`. What comes back is always
// what `facts` and `draw` would give, to the bit.
#pragma once

#include "hand/hand.hpp"

#include <cstdint>
#include <functional>
#include <future>
#include <map>
#include <mutex>

namespace hand {

/// Changes with every source of this room, the compiler and the build: a changed program never
/// takes an old drawing for its own.
extern const char* const edition;

class Album {
  public:
    static constexpr std::size_t most_kept = 128; ///< of one kind; the longest unused goes first

    /// Bytes kept by a key outside of the run. Either function may be empty. Both must allow calls
    /// from several threads; what `find` gives is checked and, when it is not whole, drawn anew.
    struct Store {
        std::function<std::optional<std::string>(const std::string& key)> find;
        std::function<void(const std::string& key, const std::string& bytes)> keep;
    };

    explicit Album(Store store = {})
        : store_(std::move(store)) {}
    /// Before the first drawing.
    void keep_in(Store store) { store_ = std::move(store); }

    /// From any thread; two that want the same wait for one.
    Facts facts(const Wish& wish);
    Picture picture(const Wish& wish, View view);

  private:
    template <class T>
    struct Slot {
        std::shared_future<T> made;
        std::uint64_t used = 0; ///< at which call it was last asked for
    };
    template <class T>
    using Kept = std::map<std::string, Slot<T>>;
    using Solved = std::shared_ptr<const Pose>;

    Solved solved(const Wish& wish);
    template <class T, class Make>
    T once(Kept<T>& kept, const std::string& key, Make&& make);
    template <class T, class Make>
    T stored(const std::string& key, Make&& make);

    Store store_;
    std::mutex mutex_;
    std::uint64_t calls_ = 0;
    Kept<Solved> poses_;
    Kept<Facts> facts_;
    Kept<Picture> pictures_;
};

/// The album of this run.
Album& album();

/// Whether the face of the club, and so `face_degrees`, shows in that view.
bool shows_face(View view);

/// Everything that the facts of a wish depend on, and its picture in a view, as one line of text.
std::string key_of(const Wish& wish);
std::string key_of(const Wish& wish, View view);

} // namespace hand
