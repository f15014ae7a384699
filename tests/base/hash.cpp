#include "engine/base/hash.hpp"

#include <boost/test/unit_test.hpp>

using namespace endbell;

BOOST_AUTO_TEST_CASE(a_fingerprint_is_xxh3_of_64_bits) {
    // As `xxhsum -H3` prints them; the first is also the published value of no bytes with seed 0.
    BOOST_TEST(fingerprint("") == "2d06800538d394c2");
    BOOST_TEST(fingerprint("a") == "e6c632b61e964e1f");
    BOOST_TEST(fingerprint("abc") == "78af5f94892f3950");
    BOOST_TEST(fingerprint("1/2 hp, 208-230 V") == "d8165bdb3b0c90a8");
    std::string kilobyte;  // longer texts go another way
    for (int i = 0; i < 1024; ++i) kilobyte += static_cast<char>(i % 256);
    BOOST_TEST(fingerprint(kilobyte) == "a870f92984398d22");
}

BOOST_AUTO_TEST_CASE(a_hash_is_written_with_all_its_zeros) {
    BOOST_TEST(in_hexadecimal(0x2a) == "000000000000002a");
    BOOST_TEST(hash_of("abc") == 0x78af5f94892f3950U);
}
