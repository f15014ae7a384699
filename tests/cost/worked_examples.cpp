// Worked examples, computed by hand with a general financial library and a table of the Weibull distribution;
// the amounts are US dollars. Each names its inputs beside the expected figures.
#include <boost/test/unit_test.hpp>

#include "engine/cost/discount.hpp"
#include "engine/cost/energy.hpp"
#include "engine/cost/lives.hpp"
#include "engine/cost/yearly.hpp"
#include "tests/cost/cost_world.hpp"

using namespace endbell;

namespace {

const RealRate three(.03);
const auto within = boost::test_tools::tolerance(.001);
using endbell::cost_world::cents;
using endbell::cost_world::dollars;

CostOption option(std::int64_t today, double years, std::int64_t energy) {
    CostOption o;
    o.way = WayOut::motor;
    o.today = cents(today);
    o.life = calendar_year(years);
    o.energy_cost = cents(energy);
    return o;
}

}  // namespace

BOOST_AUTO_TEST_CASE(a_dearer_motor_that_saves_35_dollars_a_year_never_quite_pays) {
    // 500 W against 351 W over 1,470 h at 0.16 a kWh; 460 more today; 15 years at 3 % real.
    EnergyLine old_line;
    old_line.draws = watt(500);
    old_line.runs = hour(1470);
    BOOST_TEST(energy_of({old_line}).in(kilowatt_hour) == 735, within);
    const double saving = 219 * .16;  // 735 - 516 kWh
    BOOST_TEST(saving == 35.04, within);
    BOOST_TEST(simple_payback(460, saving)->in(calendar_year) == 13.13, within);
    BOOST_TEST(discounted_payback(three, RealRate(0), 460, saving)->in(calendar_year) == 16.94, within);
    Flows<Real> flows{{-460}};
    for (int year = 1; year <= 15; ++year) flows.amounts.push_back(saving);
    BOOST_TEST(net_present_value(three, flows) == -41.6948, within);
    BOOST_TEST(internal_rate(flows)->value() == .0171466, within);
    BOOST_TEST(modified_internal_rate(flows, three, three)->value() == .0234963, within);
    const double ratio = saving * uniform_present_value(three, calendar_year(15)) / 460;
    BOOST_TEST(ratio == .9094, within);
    BOOST_TEST(adjusted_return(three, ratio, calendar_year(15)) == .02350, within);
}

BOOST_AUTO_TEST_CASE(electricity_that_grows_one_percent_a_year_nearly_pays) {
    const double worth = 35.04 * uniform_present_value(three, RealRate(.01), calendar_year(15));
    BOOST_TEST(worth / 460 == .9802, within);
    BOOST_TEST(worth - 460 == -9.09, boost::test_tools::tolerance(.002));
    BOOST_TEST(adjusted_return(three, worth / 460, calendar_year(15)) == .02863, within);
}

BOOST_AUTO_TEST_CASE(options_of_unequal_lives_compare_by_the_year) {
    // 520 for 12 years and 735 kWh against 980 for 15 years and 516 kWh, 0.16 a kWh, 3 %: 169.84 against
    // 164.65.
    const YearTerms<Real> terms{three, RealRate(0), cents(1600)};
    const CostOption a = option(52'000, 12, 11'760);
    const CostOption b = option(98'000, 15, 8'256);
    BOOST_TEST(cost_per_year(a, terms)->minor() == 16'984);
    BOOST_TEST(cost_per_year(b, terms)->minor() == 16'465);
    // The common multiple of the lives, 60 years: 4,700.43 and 4,556.82.
    BOOST_TEST(169.8404 * uniform_present_value(three, calendar_year(60)) == 4700.43, within);
    BOOST_TEST(164.6513 * uniform_present_value(three, calendar_year(60)) == 4556.82, within);
}

BOOST_AUTO_TEST_CASE(the_order_of_two_options_flips_where_their_yearly_costs_meet) {
    // By hand: (980 x .083767 - 520 x .100462) / (735 - 516) kWh = (82.0917 - 52.2402)/219 = 0.13631 a kWh.
    const YearTerms<Real> terms{three, RealRate(0), cents(1600)};
    const CostOption a = option(52'000, 12, 11'760);
    const CostOption b = option(98'000, 15, 8'256);
    const Comparison c = *compare(a, b, terms);
    BOOST_TEST(c.over.in(calendar_year) == 12);
    BOOST_TEST(c.extra_first_cost == 46'000);
    BOOST_TEST(c.saving_per_year == 3'504);
    BOOST_TEST(c.flips_at_electricity->minor() == 1363);  // per 100 kWh
    BOOST_TEST(*c.flips_at_hours == .8519, within);
    // 169.84 - 82.56 = 87.28 a year for 980: CRF .089061, so n = -ln(1 - .03/.089061)/ln 1.03 = 13.896 years.
    BOOST_TEST(c.flips_at_life->in(calendar_year) == 13.896, within);
    BOOST_TEST(c.simple_payback->in(calendar_year) == 13.13, within);
    BOOST_TEST(*c.savings_to_investment == 35.04 * 9.9540 / 460, within);
    CostOption same = a;
    BOOST_TEST(!compare(a, same, terms)->simple_payback);
    same.energy_cost.reset();
    BOOST_TEST(!compare(a, same, terms));
}

BOOST_AUTO_TEST_CASE(losing_it_again_is_worth_537_dollars_less_with_the_cause_cured) {
    // 900 a time, 5 % a year cured and 12 % uncured, 10 years at 3 %.
    const double factor = uniform_present_value(three, calendar_year(10));
    BOOST_TEST(900 * .05 * factor == 383.86, within);
    BOOST_TEST(900 * .12 * factor == 921.26, within);
    BOOST_TEST(900 * .07 * factor == 537.40, within);
}

BOOST_AUTO_TEST_CASE(a_loaded_filter_costs_a_constant_airflow_motor_twelve_dollars_a_year) {
    // 350.74 W to 400.39 W over 1,470 h at 0.16 a kWh.
    EnergyLine more;
    more.draws = watt(400.39 - 350.74);
    more.runs = hour(1470);
    BOOST_TEST(energy_of({more}).in(kilowatt_hour) == 72.98, within);
    BOOST_TEST(energy_cost(energy_of({more}), cents(1600)).minor() == 1168);
}

BOOST_AUTO_TEST_CASE(a_motor_of_sixteen_years_with_a_median_of_eighteen) {
    const Weibull w = weibull_with_median(calendar_year(18), 2);
    BOOST_TEST(w.scale.in(calendar_year) == 21.620, within);
    BOOST_TEST(chance_of_failure(w, calendar_year(16), calendar_year(20)) == .2651, within);
    BOOST_TEST(mean_remaining(w, calendar_year(16)).in(calendar_year) == 9.79, within);
    // For a mean of 15 and shape 2: cdf(10) = .294653, median 14.0916 (a statistics package).
    BOOST_TEST(1 - survival(weibull_with_median(calendar_year(14.0916), 2), calendar_year(10)) == .294653,
               within);
}

BOOST_AUTO_TEST_CASE(a_first_cost_that_comes_back_at_once_has_no_payback_and_flows_of_one_sign_no_rate) {
    BOOST_TEST(!simple_payback(100, 0));
    BOOST_TEST(!discounted_payback(three, RealRate(0), 1000, 30));  // interest alone eats the saving
    BOOST_TEST(!internal_rate(Flows<Real>{{1, 2, 3}}));
}

BOOST_AUTO_TEST_CASE(every_life_names_a_source_that_exists) {
    for (const Word<Load>& load : Words<Load>::table) {
        for (const Word<Family>& family : Words<Family>::table) {
            const Life& life = motor_life(load.value, family.value);
            BOOST_TEST(!source(life.source).title.empty());
            BOOST_TEST((life.low > Period() && life.low <= life.high));
        }
    }
    for (const Life* life :
         {&module_life(), &capacitor_life(), &equipment_life(HeatKind::gas), &equipment_life(std::nullopt)}) {
        BOOST_TEST(!source(life->source).title.empty());
    }
}
