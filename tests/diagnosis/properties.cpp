// What holds for every job, tried on a few thousand made from a fixed seed.
#include <boost/test/unit_test.hpp>
#include <random>

#include "tests/diagnosis/jobs.hpp"

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

class Maker {
  public:
    explicit Maker(unsigned seed) : random_(seed) {}

    FailedUnit job() {
        FailedUnit job;
        if (often()) job.plate.family = known(pick(Words<Family>::table).value);
        if (often()) job.plate.volts = known(std::vector{plate_volts(208, 230)});
        if (often()) job.plate.signal = known(pick(Words<SignalClass>::table).value);
        if (seldom()) job.plate.capacitor = known(microfarad(7.5));
        if (often()) job.unit.load = known(pick(Words<Load>::table).value);
        if (often()) job.measured.symptoms = known(std::vector{pick(Words<Symptom>::table).value});
        if (often()) job.measured.line_volts = known(volt(pick(std::array{0.0, 190.0, 236.0, 260.0})));
        if (often()) job.measured.control_volts = known(volt(pick(std::array{0.0, 8.0, 13.0, 25.0, 40.0})));
        if (often()) job.measured.spins_free = known(often());
        if (seldom()) job.measured.shaft_play = known(seldom());
        if (often())
            job.measured.winding_to_shell = known(ohm(pick(std::array{50e3, 100e3, 2e6, open_line})));
        if (often())
            set_windings(job, pick(std::array<std::vector<double>, 5>{
                                  {{5, 5, 5}, {4, 5, 5}, {5, open_line, 5}, {-2, 5, 9}, {5, 5}}}));
        if (seldom()) job.measured.rotor_held = known(often());
        if (seldom()) job.measured.capacitor = known(microfarad(pick(std::array{0.0, 5.0, 7.0, 7.5})));
        if (seldom()) job.measured.static_total = known(inch_water(pick(std::array{0.3, 0.7, 0.9})));
        if (seldom()) job.measured.static_supply = known(inch_water(0.4));
        if (seldom()) job.measured.filter_drop = known(inch_water(pick(std::array{0.1, 0.4})));
        if (seldom()) job.measured.amps = known(ampere(2.2));
        if (seldom()) job.plate.current = known(ampere(2.0));
        return job;
    }

  private:
    bool often() { return random_() % 10 < 7; }
    bool seldom() { return random_() % 10 < 3; }
    template <class List>
    typename List::value_type pick(const List& list) {
        return list[random_() % list.size()];
    }
    std::mt19937 random_;
};

}  // namespace

BOOST_AUTO_TEST_CASE(every_diagnosis_is_either_carried_or_lacks_something) {
    Maker maker(20240);
    for (int i = 0; i < 5000; ++i) {
        const FailedUnit job = maker.job();
        const Diagnosis d = diagnose(job, limits);
        BOOST_TEST_CONTEXT("job " << i << ": " << told(d)) {
            if (d.fault == Fault::not_shown) {
                BOOST_TEST(!d.missing.empty());
                // Nobody unlocks the power again for a reading that could have been taken before.
                BOOST_TEST(std::is_partitioned(d.missing.begin(), d.missing.end(),
                                               [](const MissingReading& m) { return !m.power_off; }));
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
        if (!diagnose(job, limits).contradictions.empty()) continue;
        for (int round = 0; round < 6 && diagnose(job, limits).fault == Fault::not_shown; ++round) {
            for (const MissingReading& m : diagnose(job, limits).missing) {
                if (m.job_key == "plate.family") job.plate.family = known(Family::constant_airflow);
                if (m.job_key == "plate.volts") job.plate.volts = known(std::vector{plate_volts(230)});
                if (m.job_key == "plate.signal") job.plate.signal = known(SignalClass::control_24v);
                if (m.job_key == "plate.capacitor") job.plate.capacitor = known(microfarad(7.5));
                if (m.job_key == "plate.current") job.plate.current = known(ampere(3));
                if (m.job_key == "measured.symptoms")
                    job.measured.symptoms = known(std::vector{Symptom::no_run});
                if (m.job_key == "measured.line_volts") job.measured.line_volts = known(volt(230));
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
                if (m.job_key == "measured.amps") job.measured.amps = known(ampere(1.5));
            }
        }
        const Diagnosis d = diagnose(job, limits);
        BOOST_TEST_CONTEXT("job " << i << ": " << told(d)) {
            BOOST_TEST((d.fault != Fault::not_shown || !d.contradictions.empty()));
        }
    }
}
