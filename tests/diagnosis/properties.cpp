// What holds for every job, tried on a few thousand made from a fixed seed.
#include <boost/test/unit_test.hpp>

#include "tests/diagnosis/random_jobs.hpp"

using namespace endbell;
using namespace endbell::jobs;

namespace {

/// What a failing job said, for whoever reads the failure.
std::string told(const Diagnosis& d) {
    std::string text;
    for (const Evidence& e : d.evidence) {
        text += std::string(word(e.test)) + ": " + std::string(word(e.verdict)) + ", " +
                std::string(word(e.reason)) + "; ";
    }
    return text;
}

}  // namespace

BOOST_AUTO_TEST_CASE(every_diagnosis_is_either_carried_or_lacks_something) {
    Maker maker(20240);
    for (int i = 0; i < 5000; ++i) {
        const FailedUnit job = maker.job();
        const Diagnosis d = diagnose(job, facts_of(job, limits), limits);
        BOOST_TEST_CONTEXT("job " << i << ": " << told(d)) {
            if (d.fault == Fault::not_shown) {
                BOOST_TEST(!d.missing.empty());
                // The safest first: nobody locks out again for a reading that could have been taken before.
                BOOST_TEST(std::is_sorted(
                    d.missing.begin(), d.missing.end(),
                    [](const MissingReading& a, const MissingReading& b) { return a.danger < b.danger; }));
                BOOST_TEST(carried_by(d).empty());
                BOOST_TEST(d.source.empty());
            } else {
                BOOST_TEST(d.missing.empty());
                BOOST_TEST(!carried_by(d).empty());
                BOOST_CHECK_NO_THROW(source(d.source));
            }
            if (d.fault == Fault::module) BOOST_TEST(d.motor_half_proven_good);
            if (d.fault == Fault::motor_and_module) BOOST_TEST(!d.motor_half_proven_good);
        }
    }
}

BOOST_AUTO_TEST_CASE(answering_every_missing_reading_ends_in_a_conclusion) {
    // A missing reading must be one that, once given, is not asked for again.
    Maker maker(7);
    for (int i = 0; i < 2000; ++i) {
        FailedUnit job = maker.job();
        if (!diagnose(job, facts_of(job, limits), limits).contradictions.empty()) continue;
        for (int round = 0;
             round < 6 && diagnose(job, facts_of(job, limits), limits).fault == Fault::not_shown; ++round) {
            for (const MissingReading& m : diagnose(job, facts_of(job, limits), limits).missing) {
                if (m.job_key == "plate.family") job.plate.family = known(Family::constant_airflow);
                if (m.job_key == "plate.volts") job.plate.volts = known(std::vector{plate_volts(230)});
                if (m.job_key == "plate.signal") job.plate.signal = known(SignalClass::control_24v);
                if (m.job_key == "plate.capacitor") job.plate.capacitor = known(microfarad(7.5));
                if (m.job_key == "plate.current") job.plate.current = known(ampere(3));
                if (m.job_key == "measured.symptoms")
                    job.measured.symptoms = known(std::vector{Symptom::no_run});
                if (m.job_key == "measured.line_volts")
                    job.measured.line_volts = known(LineVolts(volt(230), volt(231), volt(229)));
                if (m.job_key == "equipment.supply") job.equipment.supply = known(bare_supply(volt(230)));
                if (m.job_key == "measured.under_water") job.measured.under_water = known(false);
                if (m.job_key == "measured.wheel") job.measured.wheel = known(Cleanness::clean);
                if (m.job_key == "measured.belt") job.measured.belt = known(BeltState::sound);
                if (m.job_key == "measured.free_with_wheel_loose")
                    job.measured.free_with_wheel_loose = known(true);
                if (m.job_key == "measured.control_kind")
                    job.measured.control_kind = known(ControlVoltsKind::dc);
                if (m.job_key == "plate.program") job.plate.program = known(std::string("P-1"));
                if (m.job_key == "measured.control_volts") job.measured.control_volts = known(volt(24));
                if (m.job_key == "measured.spins_free") job.measured.spins_free = known(true);
                if (m.job_key == "measured.shaft_play") job.measured.shaft_play = known(false);
                if (m.job_key == "measured.winding_to_shell")
                    job.measured.winding_to_shell = known(ohm(open_line));
                if (m.job_key == "measured.rotor_held") job.measured.rotor_held = known(true);
                if (m.job_key == "measured.windings") set_windings(job, {5, 5, 5});
                if (m.job_key == "measured.capacitor") job.measured.capacitor = known(microfarad(7.5));
                if (m.job_key == "measured.static_total") job.measured.static_total = known(inch_water(0.4));
                if (m.job_key == "measured.static_return")
                    job.measured.static_return = known(inch_water(-0.1));
                if (m.job_key == "measured.filter_drop") job.measured.filter_drop = known(inch_water(0.1));
                if (m.job_key == "measured.amps") job.measured.amps = known<LineAmps>(ampere(1.5));
            }
        }
        const Diagnosis d = diagnose(job, facts_of(job, limits), limits);
        BOOST_TEST_CONTEXT("job " << i << ": " << told(d)) {
            BOOST_TEST((d.fault != Fault::not_shown || !d.contradictions.empty()));
        }
    }
}
