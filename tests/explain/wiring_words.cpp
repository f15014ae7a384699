// Everything that a wiring plan can say has its English, once; and nothing has English that is never said.
#include "engine/explain/wiring_words.hpp"
#include "engine/explain/repair_words.hpp"
#include "engine/explain/site_words.hpp"
#include "tests/explain/english.hpp"

using namespace endbell;
using namespace english;

BOOST_AUTO_TEST_CASE(all_that_a_wiring_plan_can_say_has_its_english) {
    check_none(unsaid(values_of<WiringCaution>(), english_of_wiring_cautions()));
    check_none(unsaid(values_of<SiteCheck>(), english_of_site_checks()));
    check_none(unsaid(values_of<WiringRefusal>(), english_of_wiring_refusals()));
    check_none(unsaid(values_of<WiringRescue>(), english_of_wiring_rescues()));
}

BOOST_AUTO_TEST_CASE(all_that_is_bought_instead_of_a_motor_has_its_landing_and_its_test) {
    check_none(unsaid(values_of<RepairLanding>(), english_of_landings()));
    using enum Cure;
    check_none(unsaid(std::vector<Cure>{run_capacitor, start_capacitor, line_fuse, control_fuse, float_switch,
                                        door_switch, contactor, board_relay, transformer},
                      english_of_proofs()));
    for (const auto& warning : english_of_site_warnings()) BOOST_TEST(is_before_the_work(warning.key));
}

BOOST_AUTO_TEST_CASE(a_caution_or_refusal_without_a_sentence_is_caught) {
    std::vector<English<WiringCaution>> cautions = english_of_wiring_cautions();
    cautions.erase(cautions.begin() + 2);
    BOOST_TEST(
        (unsaid(values_of<WiringCaution>(), cautions) == Complaints{"a high leg is there has no English"}));
    std::vector<English<WiringRefusal>> refusals = english_of_wiring_refusals();
    refusals.back() = refusals.front();
    BOOST_TEST((unsaid(values_of<WiringRefusal>(), refusals) ==
                Complaints{"no motor has English twice", "electrical check disagrees has no English"}));
}

BOOST_AUTO_TEST_CASE(cautions_and_checks_are_whole_sentences_and_refusals_are_the_rest_of_one) {
    const auto whole = [](std::string_view text) { return text.back() == '.'; };
    for (const auto& each : english_of_wiring_cautions()) BOOST_TEST(whole(each.text));
    for (const auto& each : english_of_site_checks()) BOOST_TEST(whole(each.text));
    for (const auto& each : english_of_wiring_refusals()) BOOST_TEST(!whole(each.text));
    for (const auto& each : english_of_wiring_rescues()) BOOST_TEST(!whole(each.text));
}
