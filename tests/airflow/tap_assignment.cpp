// The tap assignment: its rules one by one, then against every possible assignment.
#include "engine/airflow/tap_assignment.hpp"

#include <boost/test/unit_test.hpp>
#include <cmath>
#include <random>

using namespace endbell;

namespace {

std::vector<TapFlow> flows(std::initializer_list<double> list, double plus_minus = 0) {
    std::vector<TapFlow> all;
    for (double one : list) all.push_back({cfm(one), cfm(plus_minus)});
    return all;
}

using Taps = std::vector<std::optional<int>>;

CallWindow window(Call call, double low, double target, double high, bool hard) {
    return {call, cfm(low), cfm(target), cfm(high), hard};
}

const CallWindow cool = window(Call::cool_high, 1050, 1200, 1350, false);
const CallWindow heat = window(Call::heat_high, 912, 1185, 1693, true);
const CallWindow fan = window(Call::circulate, 480, 600, 1200, false);

}  // namespace

BOOST_AUTO_TEST_CASE(several_calls_may_share_the_tap_nearest_their_targets) {
    const TapAssignment choice =
        assign_taps({fan, cool, heat}, flows({701.5, 905.7, 992.2, 1071.6, 1145.6, 1215.1}));
    BOOST_TEST((choice.tap == Taps{0, 5, 5}));
    BOOST_TEST(choice.score.hard_met == 1);
    BOOST_TEST(choice.score.soft_met == 2);
}

BOOST_AUTO_TEST_CASE(comfort_is_whole_at_the_target_and_nothing_at_the_edge) {
    BOOST_TEST(comfort_of(cool, cfm(1200)) == 1000);
    BOOST_TEST(comfort_of(cool, cfm(1125)) == 500);  // half way down, by hand
    BOOST_TEST(comfort_of(cool, cfm(1275)) == 500);
    BOOST_TEST(comfort_of(cool, cfm(1050)) == 0);
    BOOST_TEST(comfort_of(cool, cfm(900)) == 0);
    BOOST_TEST(comfort_of(window(Call::cool_high, 5, 5, 5, false), cfm(5)) == 1000);
}

BOOST_AUTO_TEST_CASE(two_calls_share_a_tap_only_where_none_is_nearer_for_either) {
    // Heat over its whole uncertainty is served by 1,195 alone, but 1,000 is nearer to its target: two leads, not one.
    const CallWindow warm = window(Call::heat_high, 900, 1000, 1400, true);
    const TapAssignment choice = assign_taps({cool, warm}, flows({1000, 1195}, 120));
    BOOST_TEST((choice.tap == Taps{1, 0}));
    BOOST_TEST(choice.score.apart == 0);
    // With one lead in reach of both there is nothing to keep apart.
    BOOST_TEST((assign_taps({cool, warm}, flows({1195}, 120)).tap == Taps{0, 0}));
}

BOOST_AUTO_TEST_CASE(where_each_call_has_a_lead_of_its_own_the_soft_one_goes_without) {
    BOOST_TEST(
        (assign_taps({cool, heat}, flows({1195}), Sharing::one_call_a_tap).tap == Taps{std::nullopt, 0}));
    BOOST_TEST((assign_taps({cool, heat}, flows({1100, 1195}), Sharing::one_call_a_tap).tap == Taps{1, 0}));
}

BOOST_AUTO_TEST_CASE(a_call_without_a_tap_in_its_window_is_unmet) {
    const TapAssignment choice = assign_taps({cool, heat}, flows({500, 1000}));
    BOOST_TEST((choice.tap == Taps{std::nullopt, 1}));
}

BOOST_AUTO_TEST_CASE(a_hard_call_prefers_the_tap_that_holds_over_its_whole_uncertainty) {
    // 955 lies nearer the target of 960 but may be 895, below 912; 1,100 may be 1,040.
    const CallWindow tight = window(Call::heat_high, 912, 960, 1693, true);
    BOOST_TEST((assign_taps({tight}, flows({955, 1100}, 60)).tap == Taps{1}));
    BOOST_TEST((assign_taps({tight}, flows({955, 1100}, 10)).tap == Taps{0}));
}

BOOST_AUTO_TEST_CASE(the_low_stage_never_moves_more_than_the_high_stage) {
    // The low stage alone would take 1,040 and the high stage 1,000; on one tap one of them would have a nearer one.
    const CallWindow low = window(Call::cool_low, 700, 1040, 1100, false),
                     high = window(Call::cool_high, 950, 1000, 1300, false);
    BOOST_TEST((assign_taps({low, high}, flows({1000, 1040})).tap == Taps{0, 1}));
    BOOST_TEST((assign_taps({low, high}, flows({1000})).tap == Taps{0, 0}));
    BOOST_TEST(must_not_exceed(Call::cool_low, Call::cool_high));
    BOOST_TEST(!must_not_exceed(Call::cool_high, Call::cool_low));
    BOOST_TEST(!must_not_exceed(Call::heat_high, Call::cool_high));
}

BOOST_AUTO_TEST_CASE(a_soft_call_gives_way_before_a_hard_one) {
    // A hard low heat that only 1,000 serves, and a soft high heat that only 900 would: one must go.
    const CallWindow low = window(Call::heat_low, 950, 1000, 1050, true),
                     high = window(Call::heat_high, 850, 900, 940, false);
    const TapAssignment choice = assign_taps({low, high}, flows({900, 1000}));
    BOOST_TEST((choice.tap == Taps{1, std::nullopt}));
}

BOOST_AUTO_TEST_CASE(equal_taps_are_told_apart_by_their_order) {
    BOOST_TEST((assign_taps({cool}, flows({1190, 1190, 1210})).tap == Taps{0}));
}

BOOST_AUTO_TEST_CASE(nothing_to_choose_is_an_empty_choice) {
    BOOST_TEST(assign_taps({}, flows({900})).tap.empty());
    BOOST_TEST((assign_taps({cool}, {}).tap == Taps{std::nullopt}));
}

namespace {

double gap(Airflow a, Airflow b) {
    return std::abs((a - b).in(cfm));
}

/// Every assignment in order, judged from the header's words alone.
TapAssignment brute_force(const std::vector<CallWindow>& windows, const std::vector<TapFlow>& taps,
                          bool sharing) {
    TapAssignment best;
    best.score.hard_met = -1;
    const std::size_t choices = taps.size() + 1;
    std::size_t all = 1;
    for (std::size_t i = 0; i < windows.size(); ++i) all *= choices;
    for (std::size_t code = 0; code < all; ++code) {
        Taps tap(windows.size());
        std::size_t rest = code;
        for (std::size_t i = windows.size(); i-- > 0; rest /= choices) {
            if (rest % choices < taps.size()) tap[i] = static_cast<int>(rest % choices);
        }
        TapScore score;
        bool allowed = true;
        for (std::size_t i = 0; i < windows.size() && allowed; ++i) {
            if (!tap[i]) continue;
            const TapFlow& flow = taps[static_cast<std::size_t>(*tap[i])];
            allowed = flow.airflow >= windows[i].low && flow.airflow <= windows[i].high;
            for (std::size_t j = 0; j < windows.size(); ++j) {
                if (!tap[j] || !must_not_exceed(windows[i].call, windows[j].call)) continue;
                if (flow.airflow > taps[static_cast<std::size_t>(*tap[j])].airflow) allowed = false;
            }
            const bool sure = flow.airflow - flow.plus_minus >= windows[i].low &&
                              flow.airflow + flow.plus_minus <= windows[i].high;
            score.hard_met += windows[i].hard;
            score.hard_assured += windows[i].hard && sure;
            score.soft_met += !windows[i].hard;
            score.comfort += comfort_of(windows[i], flow.airflow);
            for (std::size_t j = 0; j < i; ++j) {
                if (tap[j] != tap[i]) continue;
                allowed = allowed && sharing;
                bool nearer = false;
                for (const TapFlow& other : taps) {
                    for (const CallWindow& w : {windows[i], windows[j]}) {
                        nearer = nearer || (other.airflow >= w.low && other.airflow <= w.high &&
                                            gap(other.airflow, w.target) < gap(flow.airflow, w.target));
                    }
                }
                score.apart -= nearer ? 1 : 0;
            }
        }
        if (allowed && score > best.score) best = {tap, score};
    }
    return best;
}

}  // namespace

BOOST_AUTO_TEST_CASE(the_search_agrees_with_every_assignment_tried) {
    std::mt19937 random(7);
    auto between = [&](int a, int b) {
        return a + static_cast<int>(random() % static_cast<unsigned>(b - a + 1));
    };
    const Call calls[] = {Call::circulate, Call::cool_low,      Call::cool_high, Call::heat_low,
                          Call::heat_high, Call::electric_heat, Call::dehumidify};
    for (int i = 0; i < 500; ++i) {
        std::vector<CallWindow> windows;
        for (Call call : calls) {
            if (between(0, 2) == 0) continue;
            const int low = between(300, 1200), target = low + between(0, 250),
                      high = target + between(0, 400);
            windows.push_back(window(call, low, target, high, between(0, 2) == 0));
        }
        std::vector<TapFlow> taps;
        for (int t = between(1, 5); t > 0; --t)
            taps.push_back({cfm(between(300, 1700)), cfm(between(0, 150))});
        const bool sharing = between(0, 2) != 0;
        const TapAssignment fast = assign_taps(windows, taps,
                                               sharing ? Sharing::allowed : Sharing::one_call_a_tap),
                            slow = brute_force(windows, taps, sharing);
        BOOST_TEST_CONTEXT("instance " << i) {
            BOOST_TEST((fast.tap == slow.tap));
            BOOST_TEST((fast.score == slow.score));
        }
    }
}
