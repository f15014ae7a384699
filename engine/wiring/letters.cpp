#include "engine/wiring/letters.hpp"

#include <algorithm>
#include <string>

#include "engine/base/text.hpp"

namespace endbell::inline wiring {

namespace {

struct Letter {
    std::string_view text;
    Role role;
};
constexpr Letter letters[] = {
    {"g", Role::fan},          {"y", Role::compressor1},    {"y1", Role::compressor1},
    {"y2", Role::compressor2}, {"w", Role::heat1},          {"w1", Role::heat1},
    {"w2", Role::heat2},       {"aux", Role::heat2},        {"w3", Role::heat3},
    {"e", Role::emergency},    {"em", Role::emergency},     {"d", Role::dehumidify},
    {"dh", Role::dehumidify},  {"dehum", Role::dehumidify}, {"dhum", Role::dehumidify},
    {"bk", Role::dehumidify},
};

struct IdleLetter {
    std::string_view text;
    IdleReason why;
};
constexpr IdleLetter idle_letters[] = {
    {"r", IdleReason::supply_24v},        {"rh", IdleReason::supply_24v},
    {"rc", IdleReason::supply_24v},       {"c", IdleReason::common_24v},
    {"o", IdleReason::reversing_valve},   {"b", IdleReason::reversing_valve},
    {"o/b", IdleReason::reversing_valve}, {"l", IdleReason::fault_lamp},
    {"x", IdleReason::common_or_lamp},    {"h", IdleReason::humidifier},
    {"hum", IdleReason::humidifier},
};

}  // namespace

std::optional<Role> role_of(std::string_view letter) {
    const std::string key = lower(trimmed(letter));
    const auto found =
        std::find_if(std::begin(letters), std::end(letters), [&](const Letter& l) { return l.text == key; });
    return found == std::end(letters) ? std::nullopt : std::optional(found->role);
}

std::optional<IdleReason> idle_reason_of(std::string_view letter) {
    const std::string key = lower(trimmed(letter));
    const auto found = std::find_if(std::begin(idle_letters), std::end(idle_letters),
                                    [&](const IdleLetter& l) { return l.text == key; });
    return found == std::end(idle_letters) ? std::nullopt : std::optional(found->why);
}

bool is_thermostat_letter(std::string_view label) {
    return role_of(label) || idle_reason_of(label);
}

}  // namespace endbell::inline wiring
