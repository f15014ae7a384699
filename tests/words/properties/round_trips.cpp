// What is written reads back to the same value.
#include <boost/test/unit_test.hpp>
#include <cmath>

#include "engine/job/job.hpp"
#include "engine/words/words.hpp"
#include "tests/words/properties/random_text.hpp"

using namespace endbell;
using namespace endbell::test;

namespace {

/// A figure with up to four decimals, as plates and meters print it.
double figure_up_to(int most) {
    return *rc::gen::inRange(1, most * 1000) / 1000.0;
}

/// Equal but for the last bits of a conversion between units.
template <class D>
bool same(Quantity<D> a, Quantity<D> b, Unit<D> unit) {
    return std::abs(a.in(unit)-b.in(unit)) <= 1e-10 * std::abs(a.in(unit));
}

template <class D, class Reader>
void returns(Quantity<D> value, Unit<D> unit, Reader reader) {
    const auto read = reader(fold(write(value)));
    RC_ASSERT(read.reading.value.has_value());
    RC_ASSERT(same(*read.reading, value, unit));
}

}  // namespace

BOOST_AUTO_TEST_SUITE(round_trips)

RC_BOOST_PROP(of_a_power_as_it_was_read, ()) {
    const Power power = snapped(horsepower(figure_up_to(10)));
    returns(power, horsepower, read_power);
}

RC_BOOST_PROP(of_electrical_quantities, ()) {
    returns(volt(figure_up_to(600)), volt, read_voltage);
    returns(ampere(figure_up_to(200)), ampere, read_current);
    returns(ampere(figure_up_to(200)), ampere, read_plate_amps);
    returns(ohm(figure_up_to(100000)), ohm, read_resistance);
    returns(microfarad(figure_up_to(100)), microfarad, read_capacitance);
    returns(volt_ampere(figure_up_to(100)), volt_ampere, read_apparent_power);
    returns(hertz(20 + figure_up_to(100)), hertz, read_frequency);
    returns(ounce_foot(figure_up_to(100)), ounce_foot, read_torque);
    const auto watts = read_watts(fold(write_watts(watt(figure_up_to(2000)))));
    RC_ASSERT(watts.reading.value.has_value());
}

RC_BOOST_PROP(of_sizes_in_inches_and_millimetres, ()) {
    returns(inch(figure_up_to(60)), inch, read_length);
    returns(inch(*rc::gen::inRange(1, 640) / 32.0), inch, read_length);
    returns(millimetre(figure_up_to(300)), inch, read_length);
}

RC_BOOST_PROP(of_speeds_air_and_heat, ()) {
    returns(rpm(100 + figure_up_to(3500)), rpm, read_speed);
    returns(cfm(figure_up_to(3000)), cfm, read_airflow);
    returns(litre_per_second(figure_up_to(2000)), cfm, read_airflow);
    const double sign = *rc::gen::element(1.0, -1.0);
    returns(inch_water(sign * figure_up_to(2)), inch_water, read_pressure);
    returns(btu_per_hour(figure_up_to(120000)), btu_per_hour, read_cooling);
    returns(fahrenheit_degree(figure_up_to(100)), fahrenheit_degree, read_rise);
    returns(second(figure_up_to(900)), second, read_duration);
}

RC_BOOST_PROP(of_temperatures, ()) {
    const double celsius = *rc::gen::inRange(-400, 1000) / 10.0;
    const Temperature t = Temperature::celsius(celsius);
    const auto back = read_temperature(fold(write(t)), Degrees::fahrenheit);
    const auto again = read_temperature(fold(write_fahrenheit(t)), Degrees::celsius);
    RC_ASSERT(back.reading.value && again.reading.value);
    RC_ASSERT(std::abs(back.reading->in_celsius() - celsius) < 1e-9);
    RC_ASSERT(std::abs(again.reading->in_celsius() - celsius) < 1e-9);
}

RC_BOOST_PROP(of_plate_volts, ()) {
    const auto one = rc::gen::element(plate_volts(115), plate_volts(208), plate_volts(230), plate_volts(277),
                                      plate_volts(460), plate_volts(575), plate_volts(208, 230),
                                      plate_volts(115, 230), plate_volts(380, 415));
    const auto list = *rc::gen::unique<std::vector<PlateVolts>>(*rc::gen::inRange<std::size_t>(1, 4), one);
    const auto read = read_plate_volts(fold(write(list)));
    RC_ASSERT(read.reading.value == list);
}

RC_BOOST_PROP(of_lists_of_powers_high_to_low, ()) {
    std::vector<Power> list;
    for (double hp : *rc::gen::unique<std::vector<double>>(*rc::gen::inRange<std::size_t>(1, 6),
                                                           rc::gen::elementOf(power_ladder()))) {
        list.push_back(horsepower(hp));
    }
    std::sort(list.begin(), list.end(), [](Power a, Power b) { return b < a; });
    RC_ASSERT(read_powers(fold(write(list))).reading.value == list);
}

RC_BOOST_PROP(of_money_and_shares, ()) {
    const Money money(*rc::gen::inRange(0, 10'000'000), Currency{});
    RC_ASSERT(read_money(fold(write(money)), Currency{}).reading.value == money);
    const Share share{*rc::gen::inRange(0, 3'000'000)};
    RC_ASSERT(read_share(fold(write(share))).reading.value == share);
    RC_ASSERT(read_factor(fold(write(share))).reading.value == share);
}

RC_BOOST_PROP(of_every_key_that_a_random_text_gives_a_value, ()) {
    const JobKey& key = job_keys()[*rc::gen::inRange<std::size_t>(0, job_keys().size())];
    FailedUnit job;
    const bool set = !set_key(job, key.id(), *any_text());
    RC_PRE(set && !key.text(job).empty() && !key.open(job));
    const std::string text = key.text(job);
    FailedUnit again;
    RC_ASSERT(!set_key(again, key.id(), text));
    RC_ASSERT(!key.open(again));
    RC_ASSERT(key.text(again) == text);
}

BOOST_AUTO_TEST_SUITE_END()
