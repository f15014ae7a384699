#include "engine/index/bodies.hpp"

#include <algorithm>

#include "engine/base/check.hpp"
#include "engine/index/pages.hpp"

namespace endbell {

Bodies::Bodies(const SideFile& file, std::size_t section, std::span<const TileStart> starts,
               std::size_t columns)
    : file_(file),
      section_(section),
      starts_(starts),
      columns_(columns),
      words_(file.numbers<Word64>(section)),
      times_(columns > 0 ? starts.size() / columns : 0) {
    for (std::size_t s = 0; s < times_.size(); ++s) {
        check(first(s) <= first(s + 1) && first(s + 1) <= words_.size(), "stretches follow each other");
        longest_ = std::max(longest_, first(s + 1) - first(s));
    }
}

std::size_t Bodies::first(std::size_t stretch) const {
    const std::size_t start = stretch * columns_;
    return start < starts_.size() ? starts_[start].body : words_.size();
}

std::span<const Word64> Bodies::of(std::size_t stretch) const {
    return words_.subspan(first(stretch), first(stretch + 1) - first(stretch));
}

std::span<const Word64> Bodies::all_of(std::size_t stretch, BodyRoom& room) const {
    const std::span<const Word64> mapped = of(stretch);
    std::atomic<int>& times = times_[stretch];
    constexpr int copied = 1, brought_in = 2;
    if (times.load(std::memory_order_relaxed) == brought_in) return mapped;
    if (times.fetch_add(1, std::memory_order_relaxed) + 1 == copied) {
        if (room.size < mapped.size()) room = {std::make_unique_for_overwrite<Word64[]>(longest_), longest_};
        const std::span<Word64> copy(room.words.get(), mapped.size());
        if (file_.copy(section_, first(stretch) * sizeof(Word64), std::as_writable_bytes(copy))) return copy;
    }
    times.store(brought_in, std::memory_order_relaxed);
    bring_in(mapped.data(), mapped.size_bytes());
    return mapped;
}

}  // namespace endbell
