// A value that follows from what was read, with by whose word it stands.
#pragma once
#include <optional>
#include <string_view>
#include <utility>

#include "engine/model/reading.hpp"
#include "engine/model/word.hpp"

namespace endbell::inline facts {

/// What an implied value follows from. Each is a definition or the trade's own rule, named to its source.
enum class Because {
    run_capacitor,  // 1 to 100 uF at 370 V or more: only a permanent-split motor keeps one in circuit (common practice)
    any_capacitor,  // a start capacitor or a two-value motor: single phase, and no more (physics)
    family,         // how the motor makes its torque fixes its phases and what its leads carry (physics)
    speed,  // 120 f / P lies 2 to 20 % above the rated speed of one pole count (physics; slips: common practice)
    voltage_class,    // volts that only 60 Hz systems have (ANSI C84.1, from memory)
    supply_system,    // the supply's own name says it
    control_source,   // what gives a tapped motor its calls says what its taps take (common practice)
    load,             // an outdoor fan stands outdoors; its blade and an inducer's wheel sit on the shaft
    belt_seen,        // a belt that was looked at is there
    air_over,         // cooled by what its own wheel or blade moves (common practice)
    fuel_input,       // a fuel input or output on the equipment's plate: something burns
    element_power,    // a power of electric elements on the equipment's plate
    heat_kind,        // what the job says that heats
    power_and_speed,  // torque is power over speed (physics)
    live_reading,     // the class of nominal volts nearest to a live reading
    written_unit      // the unit beside a figure: 24 Vdc is dc
};
constexpr auto words_of(Because) {
    return std::array{Word<Because>{Because::run_capacitor, "run capacitor"},
                      Word<Because>{Because::any_capacitor, "capacitor"},
                      Word<Because>{Because::family, "family"},
                      Word<Because>{Because::speed, "rated speed"},
                      Word<Because>{Because::voltage_class, "voltage class"},
                      Word<Because>{Because::supply_system, "supply system"},
                      Word<Because>{Because::control_source, "control source"},
                      Word<Because>{Because::load, "load"},
                      Word<Because>{Because::belt_seen, "belt as looked at"},
                      Word<Because>{Because::air_over, "air over"},
                      Word<Because>{Because::fuel_input, "fuel input"},
                      Word<Because>{Because::element_power, "element power"},
                      Word<Because>{Because::heat_kind, "heat kind"},
                      Word<Because>{Because::power_and_speed, "power and speed"},
                      Word<Because>{Because::live_reading, "live reading"},
                      Word<Because>{Because::written_unit, "written unit"}};
}

/// Three origins: read (`origin` says where, no `because`), implied (Origin::implied: decides, with its reason), or
/// nothing. What was guessed or assumed never gets here.
template <class T>
struct DerivedFact {
    std::optional<T> value;
    Origin origin = Origin::job;
    std::optional<Because> because;
    bool disagree = false;  // what was read contradicts itself, and so says nothing

    explicit operator bool() const { return value.has_value(); }
    const T& operator*() const { return *value; }
    const T* operator->() const { return &*value; }
    bool is(const T& wanted) const { return value && *value == wanted; }
    friend bool operator==(const DerivedFact&, const DerivedFact&) = default;
};

template <class T>
DerivedFact<T> read_from(const Reading<T>& reading) {
    if (!reading) return {};
    return {*reading, reading.origin, std::nullopt, false};
}

template <class T>
DerivedFact<T> implied(T value, Because because) {
    return {std::move(value), Origin::implied, because, false};
}

template <class T>
DerivedFact<T> contradicted() {
    return {std::nullopt, Origin::job, std::nullopt, true};
}

}  // namespace endbell::inline facts
