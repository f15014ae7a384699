// Whatever the text: no reader throws, and each gives exactly one of its outcomes.
#include <algorithm>
#include <boost/test/unit_test.hpp>

#include "engine/base/problem.hpp"
#include "engine/base/text.hpp"
#include "engine/job/job.hpp"
#include "engine/words/folded_line.hpp"
#include "engine/words/plate_text.hpp"
#include "engine/words/spoken.hpp"
#include "engine/words/words.hpp"
#include "tests/words/properties/random_text.hpp"

using namespace endbell;
using namespace endbell::test;

namespace {

template <class T>
void one_outcome(const Read<T>& read, const std::string& raw) {
    const bool value = read.reading.value.has_value();
    const bool open = !read.reading.question.empty();
    const bool missing = read.reading.raw.empty() && !value && !open && !read.failed();
    RC_ASSERT(int(value) + int(open) + int(read.failed()) + int(missing) == 1);
    RC_ASSERT(missing || read.reading.raw == raw);
}

}  // namespace

BOOST_AUTO_TEST_SUITE(readers)

RC_BOOST_PROP(every_reader_gives_exactly_one_outcome_and_keeps_the_text, ()) {
    const std::string raw = *any_text();
    one_outcome(read_power(fold(raw)), raw);
    one_outcome(read_powers(fold(raw)), raw);
    one_outcome(read_watts(fold(raw)), raw);
    one_outcome(read_electric_heat(fold(raw)), raw);
    one_outcome(read_plate_volts(fold(raw)), raw);
    one_outcome(read_plate_volts(fold(raw), Family::constant_torque), raw);
    one_outcome(read_rating_volts(fold(raw)), raw);
    one_outcome(read_voltage(fold(raw)), raw);
    one_outcome(read_supply(fold(raw)), raw);
    one_outcome(read_plate_amps(fold(raw)), raw);
    one_outcome(read_resistance(fold(raw)), raw);
    one_outcome(read_windings(fold(raw)), raw);
    one_outcome(read_frequency(fold(raw)), raw);
    one_outcome(read_phase(fold(raw)), raw);
    one_outcome(read_capacitor(fold(raw)).farads, raw);
    one_outcome(read_capacitor(fold(raw)).volts, raw);
    one_outcome(read_shaft(fold(raw)).diameter, raw);
    one_outcome(read_shaft(fold(raw)).length, raw);
    one_outcome(read_shaft_diameter(fold(raw)), raw);
    one_outcome(read_body_diameter(fold(raw)), raw);
    one_outcome(read_shaft_flat(fold(raw)), raw);
    one_outcome(read_speed_text(fold(raw)).speed, raw);
    one_outcome(read_speed_text(fold(raw)).speeds, raw);
    one_outcome(read_speeds(fold(raw)), raw);
    one_outcome(read_poles(fold(raw)), raw);
    one_outcome(read_rotation(fold(raw)), raw);
    one_outcome(read_torque(fold(raw)), raw);
    one_outcome(read_airflow(fold(raw)), raw);
    one_outcome(read_pressure(fold(raw)), raw);
    one_outcome(read_cooling(fold(raw)), raw);
    one_outcome(read_heat(fold(raw), HeatSide::not_said), raw);
    one_outcome(read_temperature(fold(raw), Degrees::celsius), raw);
    one_outcome(read_rise_range(fold(raw)).low, raw);
    one_outcome(read_duration(fold(raw)), raw);
    one_outcome(read_kind<Family>(fold(raw)), raw);
    one_outcome(read_kinds<Symptom>(fold(raw)), raw);
    one_outcome(read_terminal(fold(raw)), raw);
    one_outcome(read_share(fold(raw)), raw);
    one_outcome(read_factor(fold(raw)), raw);
    one_outcome(read_money(fold(raw), Currency{}), raw);
    one_outcome(read_date(fold(raw)), raw);
    one_outcome(read_counts(fold(raw)), raw);
    one_outcome(read_efficiency(fold(raw)), raw);
    one_outcome(read_part_number(fold(raw)), raw);
}

RC_BOOST_PROP(folding_twice_is_folding_once, ()) {
    const std::string raw = *any_text();
    const Folded once = fold(raw);
    RC_ASSERT(fold(once.text()).text() == once.text());
}

RC_BOOST_PROP(a_piece_of_a_line_folds_to_what_it_folds_to_by_itself, ()) {
    const auto words = *rc::gen::resize(12, rc::gen::container<std::vector<std::string>>(plate_word()));
    const char joint = *rc::gen::element(' ', '/');
    std::string text;
    std::vector<Piece> pieces;
    std::string alone;
    for (const std::string& word : words) {
        text += *rc::gen::element(" ", "\u00a0 ", "\t", "; ") + word;
        if (*rc::gen::arbitrary<bool>()) continue;
        alone += (pieces.empty() ? "" : std::string(1, joint)) + word;
        pieces.push_back({text.size() - word.size(), text.size(), joint});
    }
    const Folded cut = FoldedLine(text).of(pieces);
    RC_ASSERT(cut.raw() == alone);
    RC_ASSERT(cut.text() == fold(alone).text());
}

RC_BOOST_PROP(every_word_of_a_plate_is_understood_or_handed_back, ()) {
    const auto words = *rc::gen::resize(25, rc::gen::container<std::vector<std::string>>(plate_word()));
    std::string text;
    for (const std::string& word : words) text += (text.empty() ? "" : " ") + word;
    const PlateText read = read_plate(text);
    // Separators are no words: of every other sign each one is told or handed back, and none twice.
    std::string told;
    for (const UnderstoodWords& u : read.understood) told += u.text;
    for (const std::string& left : read.not_understood) told += left;
    const auto signs_of = [](std::string from) {
        const auto separates = [](char c) {
            return std::string(" \t\n\v\f\r;|,:=-/").find(c) != std::string::npos;
        };
        from.erase(std::remove_if(from.begin(), from.end(), separates), from.end());
        std::sort(from.begin(), from.end());
        return from;
    };
    RC_ASSERT(signs_of(told) == signs_of(spoken_in_figures(text)));
}

RC_BOOST_PROP(no_plate_text_gives_a_direction_without_a_viewing_end, ()) {
    // Words of direction only: a value needs an end among them, or the word reversible.
    const auto word = rc::gen::element<std::string>("CW", "CCW", "clockwise", "counter", "right", "DS", "fan",
                                                    "1/2", "hp", "1075");
    const auto words = *rc::gen::container<std::vector<std::string>>(word);
    std::string text;
    for (const std::string& w : words) text += w + " ";
    RC_ASSERT(!read_plate(text).plate.rotation);
}

RC_BOOST_PROP(a_job_of_random_text_is_read_or_refused_as_bad_data, ()) {
    const std::string text = *any_text();
    try {
        read_job(text, "job.toml");
    } catch (const BadData& bad) {
        RC_ASSERT(!bad.problems().empty());
    }
}

RC_BOOST_PROP(a_key_of_random_text_is_set_or_refused_and_then_unchanged, ()) {
    const JobKey& key = job_keys()[*rc::gen::inRange<std::size_t>(0, job_keys().size())];
    const std::string value = *any_text();
    FailedUnit job;
    const auto problem = set_key(job, key.id(), value);
    if (problem) RC_ASSERT(key.text(job).empty() && !problem->expected.empty());
}

RC_BOOST_PROP(adding_random_plate_text_never_throws, ()) {
    FailedUnit job;
    add_plate(job, *any_text());
    add_plate(job, *any_text());
    open_fields(job);
}

BOOST_AUTO_TEST_SUITE_END()
