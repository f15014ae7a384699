// Discount factors against the columns that the standard tables print (NIST Handbook 135 conventions,
// end-of-year flows). The printed figures were recomputed with another program from the definitions; the 3 %
// columns agree with the familiar 0.744, 8.53, 11.94, 14.88 and 17.41.
#include <boost/test/unit_test.hpp>
#include <cmath>
#include <type_traits>

#include "engine/cost/discount.hpp"

using namespace endbell;

namespace {

struct Row {
    int years;
    double spv[4];       // 3, 5, 7, 10 %
    double upv[4];       // 3, 5, 7, 10 %
    double growing[4];   // discount 3 %, escalation -1, +1, +2, +3 %
    double recovery[2];  // 3, 7 %
};

const Row table[] = {
    {1,
     {.9709, .9524, .9346, .9091},
     {.9709, .9524, .9346, .9091},
     {.9612, .9806, .9903, 1.0000},
     {1.03000, 1.07000}},
    {5,
     {.8626, .7835, .7130, .6209},
     {4.5797, 4.3295, 4.1002, 3.7908},
     {4.4468, 4.7162, 4.8562, 5},
     {.21835, .24389}},
    {8,
     {.7894, .6768, .5820, .4665},
     {7.0197, 6.4632, 5.9713, 5.3349},
     {6.7215, 7.3317, 7.6583, 8},
     {.14246, .16747}},
    {10,
     {.7441, .6139, .5083, .3855},
     {8.5302, 7.7217, 7.0236, 6.1446},
     {8.0946, 8.9919, 9.4813, 10},
     {.11723, .14238}},
    {12,
     {.7014, .5568, .4440, .3186},
     {9.9540, 8.8633, 7.9427, 6.8137},
     {9.3631, 10.5882, 11.2690, 12},
     {.10046, .12590}},
    {15,
     {.6419, .4810, .3624, .2394},
     {11.9379, 10.3797, 9.1079, 7.6061},
     {11.0870, 12.8683, 13.8861, 15},
     {.08377, .10979}},
    {18,
     {.5874, .4155, .2959, .1799},
     {13.7535, 11.6896, 10.0591, 8.2014},
     {12.6178, 15.0182, 16.4277, 18},
     {.07271, .09941}},
    {20,
     {.5537, .3769, .2584, .1486},
     {14.8775, 12.4622, 10.5940, 8.5136},
     {13.5418, 16.3827, 18.0812, 20},
     {.06722, .09439}},
    {25,
     {.4776, .2953, .1842, .0923},
     {17.4131, 14.0939, 11.6536, 9.0770},
     {15.5556, 19.5689, 22.0766, 25},
     {.05743, .08581}},
};
const double rates[] = {.03, .05, .07, .10};
const double escalations[] = {-.01, .01, .02, .03};

/// Equal to the last decimal that is printed.
bool printed(double value, double shown, int decimals) {
    return std::abs(value - shown) <= 0.5001 * std::pow(10, -decimals);
}

// Mixing the two kinds of rate does not compile.
template <class D, class E>
concept CanGrow = requires(D d, E e) {
    uniform_present_value(d, e, calendar_year(10));
};
static_assert(CanGrow<RealRate, RealRate> && CanGrow<NominalRate, NominalRate>);
static_assert(!CanGrow<RealRate, NominalRate> && !CanGrow<NominalRate, RealRate>);
template <class D, class F>
concept CanDiscount = requires(D d, F f) {
    net_present_value(d, f);
};
static_assert(CanDiscount<RealRate, Flows<Real>> && !CanDiscount<RealRate, Flows<Nominal>>);
static_assert(!std::is_convertible_v<double, RealRate> && !std::is_convertible_v<RealRate, NominalRate>);

}  // namespace

BOOST_AUTO_TEST_CASE(single_and_uniform_factors_equal_the_printed_tables) {
    for (const Row& row : table) {
        for (int i = 0; i < 4; ++i) {
            BOOST_TEST(
                printed(single_present_value(RealRate(rates[i]), calendar_year(row.years)), row.spv[i], 4));
            BOOST_TEST(
                printed(uniform_present_value(RealRate(rates[i]), calendar_year(row.years)), row.upv[i], 4));
        }
    }
}

BOOST_AUTO_TEST_CASE(growing_factors_equal_the_printed_tables) {
    for (const Row& row : table) {
        for (int i = 0; i < 4; ++i) {
            BOOST_TEST(printed(
                uniform_present_value(RealRate(.03), RealRate(escalations[i]), calendar_year(row.years)),
                row.growing[i], 4));
        }
    }
}

BOOST_AUTO_TEST_CASE(recovery_factors_equal_the_printed_tables) {
    for (const Row& row : table) {
        BOOST_TEST(printed(capital_recovery(RealRate(.03), calendar_year(row.years)), row.recovery[0], 5));
        BOOST_TEST(printed(capital_recovery(RealRate(.07), calendar_year(row.years)), row.recovery[1], 5));
    }
}

BOOST_AUTO_TEST_CASE(a_zero_rate_counts_the_years) {
    BOOST_TEST(uniform_present_value(RealRate(0), calendar_year(12)) == 12);
    BOOST_TEST(capital_recovery(NominalRate(0), calendar_year(8)) == .125);
}

BOOST_AUTO_TEST_CASE(a_nominal_rate_comes_from_a_real_one_only_through_inflation) {
    // A federal notice of 2010: 3.0 % real, 0.9 % inflation, 4.0 % nominal (rounded); 1.04/1.009 - 1 = 3.07
    // %.
    BOOST_TEST(nominal(RealRate(.03), Inflation{.009}).value() == .03927, boost::test_tools::tolerance(1e-9));
    BOOST_TEST(real(NominalRate(.04), Inflation{.009}).value() == .0307235,
               boost::test_tools::tolerance(1e-5));
}

BOOST_AUTO_TEST_CASE(a_life_is_the_inverse_of_the_recovery_factor) {
    BOOST_TEST(
        life_for(RealRate(.03), capital_recovery(RealRate(.03), calendar_year(13.5)))->in(calendar_year) ==
            13.5,
        boost::test_tools::tolerance(1e-9));
    BOOST_TEST(!life_for(RealRate(.03), .03));  // interest alone: never paid back
}
