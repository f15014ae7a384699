// Texts by the million, one behind the other in blocks that stay where they are.
#pragma once
#include <cstddef>
#include <cstdint>
#include <memory>
#include <new>
#include <string_view>
#include <vector>

#include "engine/base/ensure.hpp"
#include "engine/base/pages.hpp"

namespace endbell::inline base {

/// REQUIRES: no text has a zero byte or is as long as a block (checked: they may come from somebody else's file).
class Texts {
  public:
    using Offset = std::uint32_t;

    Offset keep(std::string_view text) {
        ensure(text.size() < block && text.find('\0') == std::string_view::npos,
               "texts are short and without zeros");
        if (blocks_.empty() || used_ + text.size() + 1 > block) add_block();
        const auto place = static_cast<Offset>((blocks_.size() - 1) * block + used_);
        char* const to = blocks_.back().get() + used_;
        to[text.copy(to, text.size())] = '\0';
        used_ += text.size() + 1;
        return place;
    }
    std::string_view operator[](Offset place) const { return blocks_[place / block].get() + place % block; }

  private:
    static constexpr std::size_t block = large_page;
    static constexpr std::align_val_t aligned{large_page};
    struct Free {
        void operator()(char* start) const { ::operator delete[](start, aligned); }
    };

    void add_block() {
        blocks_.emplace_back(static_cast<char*>(::operator new[](block, aligned)));
        if (blocks_.size() > 1) prefer_large_pages(blocks_.back().get(), block);  // not for a few
        ensure(blocks_.size() * block <= UINT32_MAX, "texts begin within 32 bits");
        used_ = 0;
    }

    std::vector<std::unique_ptr<char[], Free>> blocks_;
    std::size_t used_ = 0;  // bytes of the last block
};

}  // namespace endbell::inline base
