#include "engine/words/write.hpp"

#include <boost/test/unit_test.hpp>
#include <clocale>
#include <limits>
#include <locale>

#include "engine/words/words.hpp"

using namespace endbell;

namespace {

/// A locale whose decimal mark is a comma and whose thousands mark is a point.
struct CommaDecimal : std::numpunct<char> {
    char do_decimal_point() const override { return ','; }
    char do_thousands_sep() const override { return '.'; }
    std::string do_grouping() const override { return "\3"; }
};

/// Takes the process into such a locale, C and C++, as far as this machine has one.
struct InCommaLocale {
    std::locale before = std::locale::global(std::locale(std::locale::classic(), new CommaDecimal));
    std::string c_before = std::setlocale(LC_ALL, nullptr);
    InCommaLocale() {
        for (const char* name : {"de_DE.UTF-8", "de_DE.utf8", "fr_FR.UTF-8", "pt_BR.UTF-8"}) {
            if (std::setlocale(LC_ALL, name)) break;
        }
    }
    ~InCommaLocale() {
        std::setlocale(LC_ALL, c_before.c_str());
        std::locale::global(before);
    }
};

template <class E>
void all_words_read_back() {
    for (const Word<E>& own : Words<E>::table) {
        const Read<E> read = read_kind<E>(fold(write(own.value)));
        BOOST_CHECK_MESSAGE(read.reading.value == own.value, own.text);
    }
}

}  // namespace

BOOST_AUTO_TEST_SUITE(writing)

BOOST_AUTO_TEST_CASE(values_are_written_as_the_trade_writes_them) {
    BOOST_CHECK_EQUAL(write(horsepower(0.5)), "1/2 hp");
    BOOST_CHECK_EQUAL(write(horsepower(1.0 / 3)), "1/3 hp");
    BOOST_CHECK_EQUAL(write(horsepower(1.5)), "1 1/2 hp");
    BOOST_CHECK_EQUAL(write(horsepower(2)), "2 hp");
    BOOST_CHECK_EQUAL(write(horsepower(0.45)), "0.45 hp");
    BOOST_CHECK_EQUAL(write(plate_volts(208, 230)), "208-230 V");
    BOOST_CHECK_EQUAL(write(std::vector<PlateVolts>{plate_volts(115), plate_volts(208, 230)}),
                      "115 V or 208-230 V");
    BOOST_CHECK_EQUAL(write(inch(5.625)), "5 5/8 in");
    BOOST_CHECK_EQUAL(write(inch(5.6)), "5.6 in");
    BOOST_CHECK_EQUAL(write(ohm(std::numeric_limits<double>::infinity())), "OL");
    BOOST_CHECK_EQUAL(write(Share{82'500}), "8.25 %");
    BOOST_CHECK_EQUAL(write(Temperature::celsius(40)), "40 C");
    BOOST_CHECK_EQUAL(write(Rotation::cw_shaft_end), "CWSE");
    BOOST_CHECK_EQUAL(write(rpm(1075)), "1075 rpm");
}

BOOST_AUTO_TEST_CASE(every_word_of_every_enumeration_reads_back) {
    all_words_read_back<Load>();
    all_words_read_back<Family>();
    all_words_read_back<SignalClass>();
    all_words_read_back<TapRule>();
    all_words_read_back<Mount>();
    all_words_read_back<Enclosure>();
    all_words_read_back<Bearing>();
    all_words_read_back<ShaftPosition>();
    all_words_read_back<Protection>();
    all_words_read_back<VoltageSelection>();
    all_words_read_back<PartKind>();
    all_words_read_back<PartStatus>();
    all_words_read_back<Relation>();
    all_words_read_back<Cure>();
    all_words_read_back<ControlSource>();
    all_words_read_back<HeatKind>();
    all_words_read_back<RiseHeat>();
    all_words_read_back<ReversingValve>();
    all_words_read_back<DehumidifyLogic>();
    all_words_read_back<Call>();
    all_words_read_back<Symptom>();
    for (const Word<Rotation>& own : Words<Rotation>::table) {
        BOOST_CHECK(read_rotation(fold(write(own.value))).reading.value == own.value);
    }
}

BOOST_AUTO_TEST_CASE(a_date_is_ten_characters_of_a_day_that_exists) {
    BOOST_CHECK(read_date(fold(" 2024-02-29 ")).reading.value == date_of(2024, 2, 29));
    BOOST_CHECK_EQUAL(write(date_of(2024, 2, 29)), "2024-02-29");
    BOOST_CHECK_EQUAL(write(date_of(987, 1, 5)), "0987-01-05");
    for (const char* refused : {"2023-02-29", "2025-13-01", "2025-00-10", "2025-01-32", "25-01-10",
                                "2025-1-10", "2025/01/10", "2025- 1-10", "10.01.2025", "last week"}) {
        BOOST_TEST_CONTEXT(refused) BOOST_TEST(read_date(fold(refused)).failed());
    }
    // As it stands in a store: the day need not exist, and is written as it was read.
    BOOST_CHECK_EQUAL(write(*date_of_digits("2025-02-30")), "2025-02-30");
    BOOST_TEST(!date_of_digits(" 2025-02-03"));
    BOOST_TEST(!date_of_digits("2025-02-3x"));
}

BOOST_AUTO_TEST_CASE(the_locale_changes_nothing) {
    const InCommaLocale comma;
    BOOST_CHECK(read_power(fold(".5")).reading.value == horsepower(0.5));
    BOOST_CHECK(read_power(fold("0,5")).reading.value == horsepower(0.5));
    BOOST_CHECK(read_speed(fold("1,075")).reading.value == rpm(1075));
    BOOST_CHECK(read_pressure(fold("-0.25")).reading.value == inch_water(-0.25));
    BOOST_CHECK(read_shaft_length(fold("4.5")).reading.value == inch(4.5));
    BOOST_CHECK_EQUAL(write(horsepower(0.45)), "0.45 hp");
    BOOST_CHECK_EQUAL(write(btu_per_hour(36000)), "36000 Btu/h");
    BOOST_CHECK_EQUAL(write(inch_water(-0.25)), "-0.25 in wc");
    BOOST_CHECK_EQUAL(write(rpm(1075.5)), "1075.5 rpm");
    BOOST_CHECK_EQUAL(read_money(fold("1,234.50"), Currency{}).reading->minor(), 123450);
}

BOOST_AUTO_TEST_SUITE_END()
