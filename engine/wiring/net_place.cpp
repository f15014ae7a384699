#include "engine/wiring/net_place.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "engine/wiring/wiring.hpp"

namespace endbell::inline wiring {

namespace {

using Kind = NetPlace::Kind;

constexpr std::string_view tap_stem = "tap ";
constexpr std::string_view motor_stem = "motor ";

/// Places of which there is one.
constexpr std::array single_places{Word<Kind>{Kind::supply_24v, "R"}, Word<Kind>{Kind::common_24v, "C"},
                                   Word<Kind>{Kind::line_1, "L1"},    Word<Kind>{Kind::line_2, "L2"},
                                   Word<Kind>{Kind::line_3, "L3"},    Word<Kind>{Kind::neutral, "N"},
                                   Word<Kind>{Kind::earth, "earth"}};

std::string single(Kind kind) {
    const auto found = std::find_if(single_places.begin(), single_places.end(),
                                    [&](const Word<Kind>& w) { return w.value == kind; });
    return std::string(found->text);
}

}  // namespace

std::string text_of(const WiringPlan& plan, const NetPlace& place) {
    const auto relay = [&]() -> const std::string& {
        return plan.relays.at(static_cast<std::size_t>(place.number)).name;
    };
    switch (place.kind) {
        case Kind::signal:
            return plan.signals.at(static_cast<std::size_t>(place.number));
        case Kind::supply_24v:
        case Kind::common_24v:
        case Kind::line_1:
        case Kind::line_2:
        case Kind::line_3:
        case Kind::neutral:
        case Kind::earth:
            return single(place.kind);
        case Kind::load_2:
            return fmt::format("{} T2", word(plan.load_switch));
        case Kind::load_3:
            return fmt::format("{} T3", word(plan.load_switch));
        case Kind::coil_feed:
            return relay() + ".A1";
        case Kind::coil_return:
            return relay() + ".A2";
        case Kind::pole_common:
            return fmt::format("{}.COM{}", relay(), place.pole);
        case Kind::pole_open:
            return fmt::format("{}.NO{}", relay(), place.pole);
        case Kind::pole_closed:
            return fmt::format("{}.NC{}", relay(), place.pole);
        case Kind::tap:
            return fmt::format("{}{}", tap_stem, place.number);
        case Kind::motor:
            return fmt::format("{}{}", motor_stem, place.label);
        case Kind::pin:
            return place.label;
        case Kind::motor_half:
            return "motor half " + place.label;
        case Kind::old_plug:
            return "same pin of the old plug";
        case Kind::capacitor:
            return "capacitor";
        case Kind::capacitor_common:
            return "capacitor common";
        case Kind::board_output:
            return "board " + place.label;
        case Kind::board_outputs:
            return "board blower outputs";
        case Kind::cap:
            return "cap and insulate";
    }
    return "?";
}

bool reads_like_a_place(std::string_view label) {
    const bool own = std::any_of(single_places.begin(), single_places.end(),
                                 [&](const Word<Kind>& w) { return w.text == label; });
    const bool load = std::any_of(Words<LoadSwitch>::table.begin(), Words<LoadSwitch>::table.end(),
                                  [&](const Word<LoadSwitch>& w) {
                                      const std::string name(w.text);
                                      return label == name + " T2" || label == name + " T3";
                                  });
    const bool relay = label.size() > 1 && label[0] == 'K' && label.find('.') != std::string_view::npos;
    return own || load || relay || label.rfind(tap_stem, 0) == 0 || label.rfind(motor_stem, 0) == 0;
}

}  // namespace endbell::inline wiring
