#include "engine/diagnosis/tree.hpp"

#include <algorithm>

#include "engine/diagnosis/conclude.hpp"

namespace endbell::inline diagnosis {

namespace {

using M = MeasuredReadings;
using enum Danger;

/// In the order of the service manuals' test sequence, which decides between two of the same danger and time.
constexpr TreeTest tests[] = {
    // asked, or read from a plate
    {"plate.family", Test::family, look, 60, nullptr},
    {"measured.symptoms", Test::symptom, look, 30, is_read<&M::symptoms>},
    {"measured.under_water", Test::under_water, look, 30, is_read<&M::under_water>},
    {"equipment.supply", Test::supply_system, look, 60, nullptr},
    {"plate.volts", Test::plate_figure, look, 30, nullptr},
    {"plate.current", Test::plate_figure, look, 30, nullptr},
    {"plate.frequency", Test::plate_figure, look, 30, nullptr},
    {"plate.signal", Test::plate_figure, look, 60, nullptr},
    {"plate.program", Test::plate_figure, look, 60, nullptr},
    {"plate.tap_rule", Test::plate_figure, look, 60, nullptr},
    {"unit.changed_before", Test::changed_before, look, 60,
     [](const FailedUnit& job) { return static_cast<bool>(job.unit.changed_before); }},
    // power off, locked out
    {"measured.spins_free", Test::spins_free, power_off, 30, is_read<&M::spins_free>, "free-shaft"},
    {"measured.shaft_play", Test::shaft_play, power_off, 30, is_read<&M::shaft_play>, "free-shaft"},
    {"measured.rotor_held", Test::winding_balance, power_off, 30, is_read<&M::rotor_held>, "held-rotor"},
    {"plate.capacitor", Test::plate_figure, power_off, 30, nullptr},
    {"measured.float_switch_closed", Test::float_switch, power_off, 60, is_read<&M::float_switch_closed>},
    {"measured.door_switch_closed", Test::door_switch, power_off, 60, is_read<&M::door_switch_closed>},
    {"measured.control_fuse_good", Test::control_fuse, power_off, 60, is_read<&M::control_fuse_good>},
    {"measured.filter", Test::filter_drop, power_off, 60, is_read<&M::filter>},
    {"measured.iced", Test::iced, power_off, 60, is_read<&M::iced>},
    {"measured.signs", Test::signs, power_off, 60, is_read<&M::signs>},
    {"measured.winding_to_shell", Test::winding_to_shell, power_off, 90, is_read<&M::winding_to_shell>,
     "winding-ground"},
    {"measured.belt", Test::belt, power_off, 60, is_read<&M::belt>},
    {"measured.wheel", Test::wheel, power_off, 120, is_read<&M::wheel>},
    {"measured.capacitor", Test::capacitor, power_off, 120, is_read<&M::capacitor>, "capacitor-practice"},
    {"measured.windings", Test::winding_balance, power_off, 180, is_read<&M::windings>, "winding-10"},
    {"measured.free_with_wheel_loose", Test::wheel_loose, power_off, 600, is_read<&M::free_with_wheel_loose>},
    // 24 V
    {"measured.control_volts", Test::control_volts, control_24v, 60, is_read<&M::control_volts>,
     "tap-window"},
    {"measured.control_kind", Test::control_volts, control_24v, 60, is_read<&M::control_kind>},
    {"measured.transformer_volts", Test::transformer, control_24v, 60, is_read<&M::transformer_volts>},
    {"measured.live_taps", Test::live_taps, control_24v, 90, is_read<&M::live_taps>, "tap-rule"},
    {"measured.board_volts", Test::board_output, control_24v, 90, is_read<&M::board_volts>},
    {"measured.thermostat_calls", Test::thermostat, control_24v, 120, is_read<&M::thermostat_calls>},
    // live, or running
    {"measured.line_volts", Test::line_volts, live, 60, is_read<&M::line_volts>, "line-always"},
    {"measured.amps", Test::amps, live, 60, is_read<&M::amps>},
    {"measured.fuse_drop", Test::fuse_drop, live, 90, is_read<&M::fuse_drop>},
    {"measured.contactor_drop", Test::contactor_drop, live, 90, is_read<&M::contactor_drop>},
    {"measured.primary_volts", Test::primary, live, 90, is_read<&M::primary_volts>},
    {"measured.capacitor_volts", Test::capacitor, live, 90, is_read<&M::capacitor_volts>,
     "capacitor-formula"},
    {"measured.capacitor_amps", Test::capacitor, live, 90, is_read<&M::capacitor_amps>, "capacitor-formula"},
    {"measured.filter_drop", Test::filter_drop, live, 120, is_read<&M::filter_drop>},
    {"measured.coil_drop", Test::coil_drop, live, 120, is_read<&M::coil_drop>},
    {"measured.static_supply", Test::static_total, live, 180, is_read<&M::static_supply>, "static-0.8"},
    {"measured.static_return", Test::static_total, live, 180, is_read<&M::static_return>, "static-0.8"},
    {"measured.static_total", Test::static_total, live, 300, is_read<&M::static_total>, "static-0.8"},
    {"measured.burner_input", Test::burner_input, live, 300, is_read<&M::burner_input>},
    {"measured.rise", Test::rise, live, 600, is_read<&M::rise>},
};

bool settled_by(const EvidenceRows& rows, Test test) {
    return passed(rows, test) || failed(rows, test);
}

/// A row still waits for this reading, taken or not.
bool waited_for(const EvidenceRows& rows, std::string_view key) {
    return std::any_of(rows.begin(), rows.end(), [&](const Evidence& row) {
        return row.verdict == Verdict::not_shown && row.asks == key;
    });
}

/// Nothing is asked that the readings answer: by this reading, or by another of the same test. A test that waits for
/// another reading (the other side of a static) is finished by that one.
bool answered(const TreeCase& c, const TreeTest& test) {
    if (waited_for(c.rows, test.job_key)) return false;
    for (const Evidence& row : c.rows) {
        const bool open = row.test == test.test && row.verdict == Verdict::not_shown;
        if (open && row.reason != TestReason::not_measured && row.asks != test.job_key) return true;
    }
    if (test.taken != nullptr && test.taken(c.job)) return true;
    return settled_by(c.rows, test.test);
}

/// 24 V reach the motor or its relay, rightly or not.
bool has_call(const EvidenceRows& rows) {
    return passed(rows, Test::control_volts) || passed(rows, Test::live_taps) ||
           says(rows, Test::live_taps, TestReason::two_taps_live);
}

/// In the service manuals' order; what no chain tests comes last.
std::ptrdiff_t place_of(std::string_view job_key) {
    return std::find_if(std::begin(tests), std::end(tests),
                        [&](const TreeTest& test) { return test.job_key == job_key; }) -
           std::begin(tests);
}

bool has(const auto& list, const auto& value) {
    return std::find(list.begin(), list.end(), value) != list.end();
}

bool opens(const Chain& chain, const TreeCase& c, Fault fault, std::optional<Culprit> culprit) {
    if (culprit) return has(chain.culprits, *culprit);
    if (has(chain.faults, fault)) return true;
    if (fault != Fault::not_shown && fault != Fault::none) return false;
    return opens_on_complaint(chain, c.job);
}

}  // namespace

const TreeTest* tree_test(std::string_view job_key) {
    const TreeTest* found = std::begin(tests) + place_of(job_key);
    return found == std::end(tests) ? nullptr : found;
}

const std::vector<Chain>& fault_tree() {
    using namespace chain;
    static const std::vector<Chain> tree{any(),      dead(),        hums(),    slow(),  trips(),
                                         weak_air(), wrong_speed(), runs_on(), noisy(), backwards(),
                                         wet(),      supply(),      no_call(), air(),   after()};
    return tree;
}

bool opens_on_complaint(const Chain& chain, const FailedUnit& job) {
    const auto& stated = job.measured.symptoms;
    if (chain.any_complaint) return true;
    if (!stated || stated->empty()) return has(chain.complaints, Symptom::no_run);  // the usual one
    // What a motor did before it stood still is another day's complaint.
    const bool stands = behaviour_of(job) == Behaviour::does_not_start;
    // A wheel that turns the wrong way moves little air: that is put right before anything in the duct is read.
    const bool backwards = has_symptom(job, Symptom::runs_backwards);
    return std::any_of(stated->begin(), stated->end(), [&](Symptom symptom) {
        if (backwards && symptom == Symptom::weak_air) return false;
        return has(chain.complaints, symptom) &&
               (!stands || keeps_it_standing(symptom) || symptom == Symptom::wet);
    });
}

bool holds(Condition condition, const TreeCase& c) {
    const DerivedFact<Family>& family = c.facts.family;
    switch (condition) {
        case Condition::nothing:
            return true;
        case Condition::electronic:
            return family && is_electronic(*family);
        case Condition::two_piece:
            return family && is_two_piece(*family);
        case Condition::capacitor:
            return family && has_capacitor(*family);
        case Condition::belt:
            return c.facts.belt.is(true);
        case Condition::three_phase:
            return family.is(Family::three_phase) || c.facts.phase.is(3);
        case Condition::tapped:
            return family.is(Family::constant_torque);
        case Condition::duct:
            return moves_duct_air(c.job);
        case Condition::thawed:
            return moves_duct_air(c.job) && !(c.job.measured.iced && *c.job.measured.iced);
        case Condition::inducer:
            return c.job.unit.load.said() == Load::draft_inducer;
        case Condition::burner:
            return c.facts.heat.burner.is(true);
        case Condition::outdoors:
            return c.job.unit.load.said() == Load::outdoor_fan;
        case Condition::shaft_tells:
            return !family.is(Family::constant_torque);
        case Condition::stuck:
            return failed(c.rows, Test::spins_free);
        case Condition::hot_open:
            return says(c.rows, Test::winding_open, TestReason::test_again_cold);
        case Condition::near_short:
            return says(c.rows, Test::winding_balance, TestReason::near_short);
        case Condition::wet:
            return has_symptom(c.job, Symptom::wet);
        case Condition::burnt:
            return has_sign(c.job, Sign::burnt);
        case Condition::no_24v:
            return !passed(c.rows, Test::transformer) && !has_call(c.rows);
        case Condition::has_24v:
            return !failed(c.rows, Test::transformer);
        case Condition::no_call:
            return !failed(c.rows, Test::transformer) && !passed(c.rows, Test::control_volts);
        case Condition::no_line:
            return says(c.rows, Test::line_volts, TestReason::no_voltage);
        case Condition::not_too_high:
            return !says(c.rows, Test::line_volts, TestReason::too_high);
        case Condition::supply_unknown:
            return !c.facts.supply.stated;
    }
    return false;
}

std::vector<NextTest> next_tests(const TreeCase& c, Fault fault, std::optional<Culprit> culprit,
                                 const std::vector<MissingReading>& missing) {
    constexpr std::size_t most = 5;
    std::vector<NextTest> next;
    const auto add = [&](std::string_view key) {
        const TreeTest* test = tree_test(key);
        const bool known =
            std::any_of(next.begin(), next.end(), [&](const NextTest& n) { return n.job_key == key; });
        if (test == nullptr || known || next.size() == most) return;
        next.push_back(
            {std::string(key), test->test, test->danger, test->seconds, std::string(test->source)});
    };
    for (const MissingReading& reading : missing) {
        if (tree_test(reading.job_key) != nullptr) {
            add(reading.job_key);
        } else if (next.size() < most) {  // a contradiction may take in what no chain tests
            next.push_back(
                {reading.job_key, reading.test, reading.danger, reading.seconds, "common-practice"});
        }
    }
    std::vector<const TreeTest*> more;
    for (const Chain& chain : fault_tree()) {
        if (!opens(chain, c, fault, culprit)) continue;
        for (const ChainRow& row : chain.rows) {
            const TreeTest* test = tree_test(row.job_key);
            if (holds(row.condition, c) && !answered(c, *test)) more.push_back(test);
        }
    }
    std::stable_sort(more.begin(), more.end(),
                     [](const TreeTest* a, const TreeTest* b) { return is_sooner(*a, *b); });
    for (const TreeTest* test : more) add(test->job_key);
    std::stable_sort(next.begin(), next.end(), [](const NextTest& a, const NextTest& b) {
        const bool tie = a.danger == b.danger && a.seconds == b.seconds;
        return tie ? place_of(a.job_key) < place_of(b.job_key) : is_sooner(a, b);
    });
    return next;
}

}  // namespace endbell::inline diagnosis
