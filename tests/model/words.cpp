// Every value has one word, and the word leads back to it.
#include <boost/test/unit_test.hpp>
#include <set>

#include "engine/model/finding.hpp"
#include "engine/model/kinds.hpp"

using namespace endbell;

namespace {

template <class E>
void round_trip() {
    std::set<std::string_view> words;
    for (const Word<E>& entry : Words<E>::table) {
        BOOST_TEST_CONTEXT(entry.text) {
            BOOST_TEST(word(entry.value) == entry.text);
            BOOST_CHECK(from_word<E>(entry.text) == entry.value);
            BOOST_TEST(words.insert(entry.text).second);  // no word stands for two values
        }
    }
    BOOST_CHECK(!from_word<E>("?"));
    BOOST_CHECK(!from_word<E>(""));
}

}  // namespace

BOOST_AUTO_TEST_CASE(words_and_values_lead_to_each_other) {
    round_trip<Load>();
    round_trip<Family>();
    round_trip<SignalClass>();
    round_trip<TapRule>();
    round_trip<Rotation>();
    round_trip<Mount>();
    round_trip<Enclosure>();
    round_trip<Bearing>();
    round_trip<ShaftPosition>();
    round_trip<Protection>();
    round_trip<VoltageSelection>();
    round_trip<PartKind>();
    round_trip<PartStatus>();
    round_trip<Relation>();
    round_trip<Cure>();
    round_trip<ControlSource>();
    round_trip<HeatKind>();
    round_trip<ReversingValve>();
    round_trip<DehumidifyLogic>();
    round_trip<Call>();
    round_trip<Symptom>();
    round_trip<Verdict>();
}

BOOST_AUTO_TEST_CASE(verdicts_are_ordered_worst_last) {
    BOOST_CHECK(Verdict::fits < Verdict::fits_with_changes);
    BOOST_CHECK(Verdict::fits_with_changes < Verdict::not_shown);
    BOOST_CHECK(Verdict::not_shown < Verdict::does_not_fit);
}

BOOST_AUTO_TEST_CASE(an_unwritten_an_open_and_a_known_reading_differ) {
    Reading<int> unwritten;
    Reading<int> open;
    open.raw = "1075 / 1140";
    open.question = "which speed does the plate name first?";
    BOOST_TEST(!unwritten);
    BOOST_TEST(!unwritten.is_open());
    BOOST_TEST(!open);
    BOOST_TEST(open.is_open());
    BOOST_TEST(*known(6) == 6);
    BOOST_TEST(!known(6).is_open());
}

BOOST_AUTO_TEST_CASE(only_electronic_families_are_electronic) {
    BOOST_TEST(!is_electronic(Family::shaded_pole));
    BOOST_TEST(!is_electronic(Family::capacitor_run));
    BOOST_TEST(!is_electronic(Family::three_phase));
    BOOST_TEST(is_electronic(Family::constant_torque));
    BOOST_TEST(is_electronic(Family::constant_airflow));
    BOOST_TEST(is_electronic(Family::communicating));
}
