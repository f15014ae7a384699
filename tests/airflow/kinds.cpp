// Every answer of this folder has one word, and the word leads back to it.
#include "engine/airflow/kinds.hpp"

#include <boost/test/unit_test.hpp>
#include <set>

using namespace endbell;

namespace {

/// REQUIRES: `last` is the last enumerator.
template <class E>
void each_has_one_word(E last) {
    std::set<std::string_view> words;
    for (int i = 0; i <= static_cast<int>(last); ++i) {
        const E value = static_cast<E>(i);
        BOOST_TEST_CONTEXT(word(value)) {
            BOOST_CHECK(from_word<E>(word(value)) == value);
            BOOST_TEST(words.insert(word(value)).second);
        }
    }
    BOOST_TEST(words.size() == Words<E>::table.size());
}

}  // namespace

BOOST_AUTO_TEST_CASE(answers_and_words_lead_to_each_other) {
    each_has_one_word(MotorLimit::torque);
    each_has_one_word(LoadCaution::overload);
    each_has_one_word(WindowBasis::circulation);
    each_has_one_word(UnmetReason::by_the_board);
    each_has_one_word(CallCaution::return_too_small);
    each_has_one_word(EfficiencySource::usual_slip);
    each_has_one_word(StaticCure::duct);
    each_has_one_word(AirflowSource::blower_table);
    each_has_one_word(TorqueSource::plate_power);
    each_has_one_word(AirMethod::no_motor);
    each_has_one_word(TableRefusal::belt_drive);
    each_has_one_word(Assumption::duct_curve);
}

BOOST_AUTO_TEST_CASE(what_is_not_said_has_no_word) {
    BOOST_TEST(word(std::optional<LoadCaution>{}) == "");
    BOOST_TEST(word(std::optional{LoadCaution::overload}) == "overload");
}
