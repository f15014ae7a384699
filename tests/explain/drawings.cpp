// The ladder of a plan, looked at as geometry: nothing overlaps, nothing crosses, everything is on the page.
#include <boost/test/unit_test.hpp>

#include "engine/explain/drawing.hpp"
#include "tests/wiring/generated.hpp"

using namespace fixture;

namespace {

bool overlap(const DrawnBox& a, const DrawnBox& b) {
    return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
}

/// Two lines that meet inside both: corners and ends that touch are joints, not crossings.
bool cross(const DrawnLine& a, const DrawnLine& b) {
    const bool a_level = a.y1 == a.y2, b_level = b.y1 == b.y2;
    if (a_level == b_level) {
        if (a_level) return a.y1 == b.y1 && std::max(a.x1, b.x1) < std::min(a.x2, b.x2);
        return a.x1 == b.x1 && std::max(std::min(a.y1, a.y2), std::min(b.y1, b.y2)) <
                                   std::min(std::max(a.y1, a.y2), std::max(b.y1, b.y2));
    }
    const DrawnLine& level = a_level ? a : b;
    const DrawnLine& upright = a_level ? b : a;
    return level.x1 < upright.x1 && upright.x1 < level.x2 && std::min(upright.y1, upright.y2) < level.y1 &&
           level.y1 < std::max(upright.y1, upright.y2);
}

DrawnBox along(const DrawnLine& l) {
    return {std::min(l.x1, l.x2), std::min(l.y1, l.y2), std::abs(l.x2 - l.x1), std::abs(l.y2 - l.y1)};
}

bool on_page(const DrawnBox& b, const Drawing& d) {
    return b.x >= 0 && b.y >= 0 && b.x + b.width <= d.width && b.y + b.height <= d.height;
}

void is_legible(const Drawing& d) {
    for (std::size_t i = 0; i < d.texts.size(); ++i) {
        const DrawnBox here = extent(d.texts[i]);
        BOOST_TEST(on_page(here, d));
        for (std::size_t j = 0; j < i; ++j) BOOST_TEST(!overlap(here, extent(d.texts[j])));
        for (const DrawnLine& l : d.lines) BOOST_TEST(!overlap(here, along(l)));
    }
    for (std::size_t i = 0; i < d.boxes.size(); ++i) {
        BOOST_TEST(on_page(d.boxes[i], d));
        for (std::size_t j = 0; j < i; ++j) BOOST_TEST(!overlap(d.boxes[i], d.boxes[j]));
        for (const DrawnLine& l : d.lines) BOOST_TEST(!overlap(d.boxes[i], along(l)));
    }
    for (std::size_t i = 0; i < d.lines.size(); ++i) {
        for (std::size_t j = 0; j < i; ++j) BOOST_TEST(!cross(d.lines[i], d.lines[j]));
    }
}

bool says(const Drawing& d, const std::string& text) {
    for (const DrawnText& t : d.texts) {
        if (t.text == text) return true;
    }
    return false;
}

}  // namespace

BOOST_AUTO_TEST_CASE(no_drawing_of_150_plans_has_overlapping_text_or_crossing_lines) {
    Dice dice(11);
    int drawn = 0;
    while (drawn < 150) {
        const Case c =
            any_case(dice, Words<ControlSource>::table[static_cast<std::size_t>(dice.below(3))].value);
        const WiringPlan plan = plan_wiring(c.job, c.part, c.air, limits);
        if (!plan.possible) continue;
        ++drawn;
        is_legible(draw(plan));
        is_legible(draw_before(c.job, facts_of(c.job, limits)));
    }
}

BOOST_AUTO_TEST_CASE(every_place_of_the_netlist_stands_in_the_drawing) {
    FailedUnit job = thermostat_job(HeatKind::heat_pump, {"G", "Y1", "Y2", "W1", "E"});
    const AirPlan taps =
        air({{Call::circulate, 1}, {Call::cool_low, 3}, {Call::cool_high, 4}, {Call::electric_heat, 5}});
    const WiringPlan plan = plan_wiring(job, five_tap_motor(TapRule::one_tap_only), taps, limits);
    const Drawing d = draw(plan);
    for (const Wire& w : plan.wires) {
        for (const NetPlace& place : {w.from, w.to}) {
            if (!place.is_coil() && !place.is_pole()) BOOST_TEST(says(d, text_of(plan, place)));
        }
    }
    std::size_t poles = 0;
    for (const Relay& r : plan.relays) {
        poles += static_cast<std::size_t>(r.contacts);
        BOOST_TEST(says(d, r.name + " coil"));
    }
    BOOST_TEST(d.boxes.size() == poles + plan.relays.size());
}

BOOST_AUTO_TEST_CASE(the_drawing_of_before_shows_each_terminal_with_its_call) {
    FailedUnit job = blower_job(ControlSource::board_line, HeatKind::gas);
    job.controls.terminals = known(terminals({{"COOL", Call::cool_high}, {"HEAT", Call::heat_high}}));
    job.plate.family = known(Family::capacitor_run);
    const Drawing d = draw_before(job, facts_of(job, limits));
    BOOST_TEST(says(d, "COOL"));
    BOOST_TEST(says(d, "capacitor run: heat"));
}
