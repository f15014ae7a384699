// Every spelling of spellings.tsv: one row of trade usage after another, 1 to 109. A lone "?" expects a
// question and does not say which; "as written" expects the text itself.
#include <boost/test/data/monomorphic.hpp>
#include <boost/test/data/test_case.hpp>
#include <boost/test/unit_test.hpp>
#include <fstream>
#include <functional>
#include <map>
#include <set>

#include "engine/words/plate_text.hpp"
#include "tests/words/outcome.hpp"

using namespace endbell;
using namespace endbell::test;

namespace {

struct Spelling {
    int row;
    std::string field;
    std::string text;
    std::string expected;
};

std::ostream& operator<<(std::ostream& out, const Spelling& s) {
    return out << "row " << s.row << " " << s.field << " '" << s.text << "'";
}

const std::vector<Spelling>& table() {
    static const std::vector<Spelling> rows = [] {
        std::vector<Spelling> read;
        std::ifstream file(ENDBELL_ROOT "/tests/words/spellings.tsv");
        std::string line;
        std::getline(file, line);
        while (std::getline(file, line)) {
            const std::vector<std::string> cells = split(line, '\t');
            read.push_back({std::stoi(cells.at(0)), cells.at(1), cells.at(2), cells.at(3)});
        }
        return read;
    }();
    return rows;
}

std::string hp(Power p) {
    return figure(p.in(horsepower)) + " hp";
}
std::string number(int n) {
    return std::to_string(n);
}
std::string itself(const std::string& text) {
    return text;
}

using Ask = std::function<std::string(const std::string&)>;

std::string all_of(const std::vector<std::string>& words) {
    return words.empty() ? "missing" : joined(words, " ");
}

std::string noted(const std::string& text) {
    std::vector<std::string> words;
    for (const UnderstoodWords& u : read_plate(text).understood) {
        if (u.key == "noted") words.push_back(u.text);
    }
    return all_of(words);
}

std::string shaft(const std::string& text) {
    const ShaftText read = read_shaft(fold(text));
    return outcome_in(read.diameter, inch, "in") + " x " + outcome_in(read.length, inch, "in");
}

std::string rise_range(const std::string& text) {
    const RiseRange read = read_rise_range(fold(text));
    return outcome_in(read.low, fahrenheit_degree, "F") + " to " +
           outcome_in(read.high, fahrenheit_degree, "F");
}

template <class T>
Read<T> as_read(const Reading<T>& reading) {
    Read<T> read;
    read.reading = reading;
    return read;
}

const std::map<std::string, Ask>& fields() {
    static const std::map<std::string, Ask> asks{
        {"power", [](auto& t) { return outcome(read_power(fold(t)), hp); }},
        {"powers",
         [](auto& t) {
             return outcome(read_powers(fold(t)), [](const std::vector<Power>& list) {
                 std::vector<std::string> words;
                 for (Power p : list) words.push_back(hp(p));
                 return joined(words, ", ");
             });
         }},
        {"plate volts", [](auto& t) { return outcome_volts(read_plate_volts(fold(t))); }},
        {"electronic volts",
         [](auto& t) { return outcome_volts(read_plate_volts(fold(t), Family::constant_torque)); }},
        {"supply",
         [](auto& t) {
             return outcome(read_supply(fold(t)), [](const SupplySystem& s) { return write(s); });
         }},
        {"phase", [](auto& t) { return outcome(read_phase(fold(t)), number); }},
        {"signal", [](auto& t) { return outcome_word(read_kind<SignalClass>(fold(t))); }},
        {"speed", [](auto& t) { return outcome_in(read_speed(fold(t)), rpm, "rpm"); }},
        {"speed and speeds",
         [](auto& t) {
             const SpeedText read = read_speed_text(fold(t));
             return outcome_in(read.speed, rpm, "rpm") + ", " + outcome(read.speeds, number);
         }},
        {"speeds", [](auto& t) { return outcome(read_speeds(fold(t)), number); }},
        {"poles", [](auto& t) { return outcome(read_poles(fold(t)), number); }},
        {"rotation", [](auto& t) { return outcome_word(read_rotation(fold(t))); }},
        {"double shaft",
         [](auto& t) { return std::string(read_rotation_text(fold(t)).double_shaft ? "yes" : "no"); }},
        {"shaft", shaft},
        {"shaft diameter", [](auto& t) { return outcome_in(read_shaft_diameter(fold(t)), inch, "in"); }},
        {"body diameter", [](auto& t) { return outcome_in(read_body_diameter(fold(t)), inch, "in"); }},
        {"mount", [](auto& t) { return outcome_word(read_kind<Mount>(fold(t))); }},
        {"capacitor", [](auto& t) { return outcome_in(read_capacitance(fold(t)), microfarad, "MFD"); }},
        {"capacitor and volts",
         [](auto& t) {
             const CapacitorText read = read_capacitor(fold(t));
             return outcome_in(read.farads, microfarad, "MFD") + ", " + outcome_in(read.volts, volt, "V");
         }},
        {"plate amps", [](auto& t) { return outcome_in(read_plate_amps(fold(t)), ampere, "A"); }},
        {"service factor", [](auto& t) { return outcome(read_service_factor(fold(t)), figure); }},
        {"enclosure", [](auto& t) { return outcome_word(read_kind<Enclosure>(fold(t))); }},
        {"bearing", [](auto& t) { return outcome_word(read_kind<Bearing>(fold(t))); }},
        {"shaft position", [](auto& t) { return outcome_word(read_kind<ShaftPosition>(fold(t))); }},
        {"family", [](auto& t) { return outcome_word(read_kind<Family>(fold(t))); }},
        {"load", [](auto& t) { return outcome_word(read_kind<Load>(fold(t))); }},
        {"part kind", [](auto& t) { return outcome_word(read_kind<PartKind>(fold(t))); }},
        {"part status", [](auto& t) { return outcome_word(read_kind<PartStatus>(fold(t))); }},
        {"relation", [](auto& t) { return outcome_word(read_kind<Relation>(fold(t))); }},
        {"terminal", [](auto& t) { return outcome_word(read_terminal(fold(t))); }},
        {"pressure", [](auto& t) { return outcome_in(read_pressure(fold(t)), inch_water, "in wc"); }},
        {"airflow", [](auto& t) { return outcome_in(read_airflow(fold(t)), cfm, "cfm"); }},
        {"cooling", [](auto& t) { return outcome_in(read_cooling(fold(t)), btu_per_hour, "Btu/h"); }},
        {"heat",
         [](auto& t) { return outcome_in(read_heat(fold(t), HeatSide::not_said), btu_per_hour, "Btu/h"); }},
        {"heat input",
         [](auto& t) { return outcome_in(read_heat(fold(t), HeatSide::input), btu_per_hour, "Btu/h"); }},
        {"electric heat", [](auto& t) { return outcome_in(read_electric_heat(fold(t)), kilowatt, "kW"); }},
        {"rise range", rise_range},
        {"text", [](auto& t) { return outcome(read_text(fold(t)), itself); }},
        {"price",
         [](auto& t) {
             return outcome(read_price(fold(t), Currency{}), [](const Money& m) { return m.amount(); });
         }},
        {"selling unit", [](auto& t) { return outcome(read_selling_unit(fold(t)), number); }},
        {"part number", [](auto& t) { return outcome(read_part_number(fold(t)), itself); }},
        {"plate power",
         [](auto& t) {
             return outcome(read_plate(t).plate.power, [](auto&) { return std::string("a power"); });
         }},
        {"plate shaft diameter",
         [](auto& t) { return outcome_in(as_read(read_plate(t).plate.shaft_diameter), inch, "in"); }},
        {"plate shaft flat",
         [](auto& t) { return outcome_in(as_read(read_plate(t).plate.shaft_flat), inch, "in"); }},
        {"plate phase", [](auto& t) { return outcome(read_plate(t).plate.phase, number); }},
        {"plate capacitor volts",
         [](auto& t) { return outcome_in(as_read(read_plate(t).plate.capacitor_volts), volt, "V"); }},
        {"plate double shaft",
         [](auto& t) {
             return outcome(read_plate(t).plate.double_shaft,
                            [](bool b) { return std::string(b ? "yes" : "no"); });
         }},
        {"plate frame", [](auto& t) { return outcome(read_plate(t).plate.frame, itself); }},
        {"plate bearing", [](auto& t) { return outcome_word(as_read(read_plate(t).plate.bearing)); }},
        {"plate mount", [](auto& t) { return outcome_word(as_read(read_plate(t).plate.mount)); }},
        {"plate family", [](auto& t) { return outcome_word(as_read(read_plate(t).plate.family)); }},
        {"plate ambient",
         [](auto& t) {
             return outcome(read_plate(t).plate.ambient,
                            [](Temperature x) { return figure(x.in_celsius()) + " C"; });
         }},
        {"plate noted", noted},
        {"plate not understood", [](auto& t) { return all_of(read_plate(t).not_understood); }}};
    return asks;
}

bool agrees(const Spelling& s, const std::string& got) {
    if (s.expected == "?") return got.starts_with("?");
    if (s.expected == "as written") return got == s.text;
    return got == s.expected;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(spellings)

BOOST_DATA_TEST_CASE(a_spelling_reads_as_the_trade_means_it, boost::unit_test::data::make(table()),
                     spelling) {
    const auto field = fields().find(spelling.field);
    BOOST_REQUIRE_MESSAGE(field != fields().end(), "no reader for " << spelling.field);
    const std::string got = field->second(spelling.text);
    BOOST_CHECK_MESSAGE(agrees(spelling, got),
                        spelling << ": expected '" << spelling.expected << "', got '" << got << "'");
}

BOOST_AUTO_TEST_CASE(all_109_rows_are_covered) {
    std::set<int> rows;
    for (const Spelling& s : table()) rows.insert(s.row);
    for (int row = 1; row <= 109; ++row)
        BOOST_CHECK_MESSAGE(rows.count(row) == 1, "row " << row << " has no spelling");
}

BOOST_AUTO_TEST_CASE(the_costliest_ambiguities_never_give_a_value) {
    // The texts of these rows that the trade itself cannot decide; row 15 has a value that is no proof of
    // 208.
    const std::set<int> costliest{12, 13, 18, 25, 39, 51, 83, 91, 94, 97};
    for (const Spelling& s : table()) {
        if (costliest.count(s.row) == 0) continue;
        BOOST_CHECK_MESSAGE(s.expected.starts_with("?"), s << " must be a question");
    }
}

BOOST_AUTO_TEST_CASE(two_hundred_and_thirty_is_no_span_that_reaches_208) {
    for (const char* text : {"230", "220", "240", "2-30"}) {
        const auto read = read_plate_volts(fold(text));
        BOOST_REQUIRE(read.reading);
        BOOST_CHECK_EQUAL(read.reading->size(), 1U);
        BOOST_CHECK(read.reading->front().low > volt(208));
    }
}

BOOST_AUTO_TEST_SUITE_END()
