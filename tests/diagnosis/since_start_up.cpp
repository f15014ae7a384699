#include <boost/test/unit_test.hpp>

#include "tests/diagnosis/jobs.hpp"

using namespace endbell;
using namespace endbell::jobs;

namespace {

FailedUnit kept(std::vector<StartUpFound> readings) {
    FailedUnit job;
    job.start_up = StartUpRecord{};
    job.start_up->readings = std::move(readings);
    return job;
}

}  // namespace

BOOST_AUTO_TEST_CASE(a_reading_more_than_a_tenth_apart_has_changed_and_the_middle_one_of_three_stands) {
    FailedUnit job = kept({{Call::cool_high, StartUpQuantity::static_total, 0, {0.90, 0.52, 0.50}}});
    job.measured.static_total = known(inch_water(0.81));
    const auto since = since_start_up(job, limits);
    BOOST_REQUIRE(since.size() == 1);
    BOOST_TEST(since[0].then == 0.52);
    BOOST_TEST((since[0].change == StartUpChange::higher));
    job.measured.static_total = known(inch_water(0.572));  // 0.52 and a tenth of it
    BOOST_TEST((since_start_up(job, limits)[0].change == StartUpChange::as_then));
    job.measured.static_total = known(inch_water(0.573));
    BOOST_TEST((since_start_up(job, limits)[0].change == StartUpChange::higher));
    job.measured.static_total = known(inch_water(0.467));
    BOOST_TEST((since_start_up(job, limits)[0].change == StartUpChange::lower));
}

BOOST_AUTO_TEST_CASE(of_two_calls_a_change_is_one_only_beside_both) {
    FailedUnit job = kept({{Call::cool_high, StartUpQuantity::static_total, 0, {0.60}},
                           {Call::heat_high, StartUpQuantity::static_total, 0, {0.40}}});
    job.measured.static_total = known(inch_water(0.50));  // lower than in cooling, higher than in heat
    for (const SinceStartUp& s : since_start_up(job, limits))
        BOOST_TEST((s.change == StartUpChange::as_then));
    job.measured.static_total = known(inch_water(0.70));
    for (const SinceStartUp& s : since_start_up(job, limits)) BOOST_TEST((s.change == StartUpChange::higher));
}

BOOST_AUTO_TEST_CASE(the_halves_of_the_static_are_added_and_legs_go_by_their_own) {
    FailedUnit job = kept({{std::nullopt, StartUpQuantity::static_total, 0, {0.5}},
                           {std::nullopt, StartUpQuantity::amps, 1, {3.0}},
                           {std::nullopt, StartUpQuantity::amps, 2, {3.0}},
                           {std::nullopt, StartUpQuantity::amps, 3, {3.0}}});
    job.measured.static_supply = known(inch_water(0.30));
    job.measured.static_return = known(inch_water(-0.21));
    job.measured.amps = known(LineAmps(ampere(3.0), ampere(4.0), ampere(3.1)));
    const auto since = since_start_up(job, limits);
    BOOST_REQUIRE(since.size() == 4);
    const auto amps =
        std::find_if(since.begin(), since.end(), [](const SinceStartUp& s) { return s.leg == 2; });
    BOOST_TEST(amps->now == 4.0);
    const auto total = std::find_if(since.begin(), since.end(), [](const SinceStartUp& s) {
        return s.what == StartUpQuantity::static_total;
    });
    BOOST_TEST(std::abs(total->now - 0.51) < 1e-9);
}

BOOST_AUTO_TEST_CASE(without_a_record_or_without_a_reading_nothing_is_said) {
    FailedUnit job;
    job.measured.static_total = known(inch_water(0.81));
    BOOST_TEST(since_start_up(job, limits).empty());
    BOOST_TEST(since_start_up(kept({{std::nullopt, StartUpQuantity::rise, 0, {50}}}), limits).empty());
}
