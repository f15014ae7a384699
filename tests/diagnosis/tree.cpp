// The fault tree is whole: what a chain names exists, what is put next is open, safest first, and never more than five.
#include <boost/test/unit_test.hpp>
#include <map>
#include <set>

#include "engine/diagnosis/tree.hpp"
#include "tests/diagnosis/random_jobs.hpp"

using namespace endbell;
using namespace endbell::jobs;

namespace {

std::string next(const Diagnosis& d) {
    std::string text;
    for (const NextTest& n : d.next) text += (text.empty() ? "" : " ") + n.job_key;
    return text;
}

Diagnosis diagnosed(const FailedUnit& job) {
    return diagnose(job, facts_of(job, limits), limits);
}

}  // namespace

BOOST_AUTO_TEST_CASE(each_row_of_a_chain_names_a_test_with_danger_time_and_source) {
    for (const Chain& chain : fault_tree()) {
        const bool opened = chain.any_complaint || !chain.complaints.empty() || !chain.faults.empty() ||
                            !chain.culprits.empty();
        BOOST_TEST(opened);
        BOOST_TEST(!chain.rows.empty());
        for (const ChainRow& row : chain.rows) {
            const TreeTest* test = tree_test(row.job_key);
            BOOST_REQUIRE_MESSAGE(test != nullptr, row.job_key << " has no test");
            BOOST_TEST(test->seconds > 0);
            BOOST_CHECK_NO_THROW(source(test->source));
        }
    }
}

BOOST_AUTO_TEST_CASE(each_complaint_opens_a_chain_but_one_that_is_normal) {
    std::set<Symptom> opened;
    for (const Chain& chain : fault_tree()) opened.insert(chain.complaints.begin(), chain.complaints.end());
    for (const Word<Symptom>& symptom : Words<Symptom>::table) {
        const bool normal = symptom.value == Symptom::rocks_then_starts;
        BOOST_TEST((opened.count(symptom.value) == 1) == !normal, symptom.text);
    }
}

// The classes of electrical.md 9: what is behind the lockout, what is below 50 V, what is at line voltage.
BOOST_AUTO_TEST_CASE(danger_is_that_of_the_place_where_a_reading_is_taken) {
    const std::map<std::string, Danger> known{{"measured.symptoms", Danger::look},
                                              {"equipment.supply", Danger::look},
                                              {"measured.spins_free", Danger::power_off},
                                              {"measured.windings", Danger::power_off},
                                              {"measured.capacitor", Danger::power_off},
                                              {"measured.control_fuse_good", Danger::power_off},
                                              {"measured.control_volts", Danger::control_24v},
                                              {"measured.transformer_volts", Danger::control_24v},
                                              {"measured.line_volts", Danger::live},
                                              {"measured.fuse_drop", Danger::live},
                                              {"measured.contactor_drop", Danger::live},
                                              {"measured.primary_volts", Danger::live},
                                              {"measured.amps", Danger::live},
                                              {"measured.static_total", Danger::live}};
    for (const auto& [key, danger] : known) BOOST_TEST((tree_test(key)->danger == danger), key);
}

BOOST_AUTO_TEST_CASE(what_comes_next_is_open_and_the_safest_first) {
    Maker maker(77);
    for (int i = 0; i < 5000; ++i) {
        const FailedUnit job = maker.any_job();
        const Diagnosis d = diagnosed(job);
        BOOST_TEST_CONTEXT("job " << i << ": " << next(d)) {
            BOOST_TEST(d.next.size() <= 5U);
            std::set<std::string> keys;
            for (const NextTest& n : d.next) BOOST_TEST(keys.insert(n.job_key).second);
            for (std::size_t n = 1; n < d.next.size(); ++n) BOOST_TEST(!is_sooner(d.next[n], d.next[n - 1]));
            // What the conclusion waits for is never pushed out by what is only worth its time.
            const std::size_t wanted = std::min<std::size_t>(5, d.missing.size());
            std::size_t found = 0;
            for (const MissingReading& m : d.missing) found += keys.count(m.job_key);
            BOOST_TEST(found >= wanted);
            if (d.fault == Fault::motor || d.fault == Fault::module || d.fault == Fault::motor_and_module)
                BOOST_TEST(d.next.empty());
        }
    }
}

BOOST_AUTO_TEST_CASE(a_reading_that_was_taken_is_not_put_next) {
    FailedUnit job = of(Family::capacitor_run, {Symptom::hums});
    BOOST_TEST(next(diagnosed(job)) ==
               "measured.spins_free measured.shaft_play measured.winding_to_shell measured.capacitor "
               "measured.line_volts");
    job.measured.spins_free = known(true);
    job.measured.capacitor = known(microfarad(7.4));
    BOOST_TEST(next(diagnosed(job)) == "measured.shaft_play measured.winding_to_shell measured.line_volts");
    job.measured.line_volts = known<LineVolts>(volt(236));
    BOOST_TEST((diagnosed(job).fault == Fault::motor));
    BOOST_TEST(next(diagnosed(job)).empty());
}

BOOST_AUTO_TEST_CASE(a_dead_24_volt_circuit_is_walked_from_what_opens_it_to_the_primary) {
    FailedUnit job = of(Family::constant_torque, {Symptom::no_run});
    feed(job, 236, 0);
    job.measured.transformer_volts = known(volt(0));
    BOOST_TEST(next(diagnosed(job)) ==
               "measured.float_switch_closed measured.door_switch_closed measured.control_fuse_good "
               "measured.primary_volts");
    BOOST_TEST(!diagnosed(job).culprit);
    job.measured.float_switch_closed = known(true);
    job.measured.door_switch_closed = known(true);
    job.measured.control_fuse_good = known(true);
    job.measured.primary_volts = known(volt(231));
    BOOST_TEST((diagnosed(job).culprit == Culprit::transformer));
    BOOST_TEST(next(diagnosed(job)).empty());
}
