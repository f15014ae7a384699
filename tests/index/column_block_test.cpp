// A column block gives the sets that it was made of, whether it keeps them or not.
#include <boost/test/unit_test.hpp>
#include <vector>

#include "engine/index/column_block.hpp"

namespace endbell::index_tests {

namespace {

/// Part p is of class p / 2 of a column of 150: two parts a class, and no whole number of words of them.
constexpr std::uint32_t parts = 300;
static_assert(parts % 64 != 0 && parts / 2 > sets_at_most);

struct Made {
    std::vector<Word64> header, payload;
    Made() {
        std::vector<std::uint32_t> of_part;
        for (std::uint32_t p = 0; p < parts; ++p) of_part.push_back(p / 2);
        ColumnBlockBuilder builder(parts / 2);
        builder.make(of_part);
        header = builder.header();
        payload = builder.payload();
    }
    ColumnBlock column_block() const { return ColumnBlock(header, payload, words_for(parts)); }
};

}  // namespace

// Class 148 of 149 has the last set that is not kept: behind the parts of class 149 the last words have room.
BOOST_AUTO_TEST_CASE(every_set_of_a_column_block_holds_the_parts_of_its_classes_and_no_others) {
    const Made made;
    const ColumnBlock column_block = made.column_block();
    Scratch scratch;
    for (std::uint32_t c = 0; c < parts / 2 - 1; ++c) {
        const Word64* set = column_block.up_to(c, scratch);
        for (std::uint32_t p = 0; p < words_for(parts) * 64; ++p) {
            const bool is_in = (set[p / 64] >> (p % 64) & 1) != 0;
            if (is_in != (p < 2 * c + 2)) BOOST_ERROR("class " << c << " part " << p);
        }
        BOOST_TEST(column_block.count_up_to(c) == 2 * c + 2);
    }
}

BOOST_AUTO_TEST_CASE(a_column_block_tells_the_class_of_each_part) {
    const Made made;
    for (std::uint32_t p = 0; p < parts; ++p) BOOST_TEST(made.column_block().class_of(p) == p / 2);
}

}  // namespace endbell::index_tests
