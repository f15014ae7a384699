// What one rule found about one part: data first. English is made of it in explain/.
#pragma once
#include <compare>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "engine/model/kinds.hpp"
#include "engine/model/reading.hpp"
#include "engine/model/reason_words.hpp"
#include "engine/model/supply.hpp"
#include "engine/units/units.hpp"

namespace endbell::inline model {

/// Ordered, worst last: a part's verdict is the worst of its findings.
enum class Verdict { fits, fits_with_changes, not_shown, does_not_fit };
constexpr auto words_of(Verdict) {
    return std::array{Word<Verdict>{Verdict::fits, "fits"},
                      Word<Verdict>{Verdict::fits_with_changes, "fits with changes"},
                      Word<Verdict>{Verdict::not_shown, "not shown to fit"},
                      Word<Verdict>{Verdict::does_not_fit, "does not fit"}};
}

/// A typed value of a finding. std::string holds words (family, mount, program); double a bare ratio or
/// count.
using Value = std::variant<std::monostate, bool, double, std::string, Power, PlateVolts, Voltage, Current,
                           Frequency, Speed, Torque, Length, Capacitance, ApparentPower, Airflow, Pressure,
                           Resistance, Temperature, TemperatureRise, Rotation>;

struct Datum {
    Value value;
    Origin origin = Origin::job;
    bool known() const { return !std::holds_alternative<std::monostate>(value); }
};

/// What would put a curable finding right.
struct Remedy {
    Cure cure;
    std::optional<Length> from;
    std::optional<Length> to;
    std::optional<Capacitance> capacitor;
    std::optional<Capacitance> compressor_capacitor;  // the other side of a dual run capacitor
    std::optional<Voltage> capacitor_volts;
    std::optional<Mount> mount;   // the mount that the equipment has
    std::optional<Current> amps;  // of a fuse: this very rating; of contacts: at least this
    std::optional<std::string> connector_from;
    std::optional<std::string> connector_to;
    int count = 1;                       // how many of it: the relays of a wiring plan
    int poles = 1;                       // of a relay: change-over contacts on its one coil
    std::optional<Voltage> coil;         // what drives a relay's coil: a line relay must state it
    std::optional<ApparentPower> power;  // what a transformer must carry
    std::optional<Voltage> primary;      // what it hangs on
    std::optional<std::string> program;  // that a module must carry

    friend bool operator==(const Remedy&, const Remedy&) = default;
};

/// One rule's answer.
struct Finding {
    std::string_view rule;  // one of rule_ids.hpp
    Verdict verdict = Verdict::fits;
    Reason reason = Reason::not_concerned;
    Datum wanted;
    Datum offered;
    Datum limit;
    std::string_view limit_id;     // row of limits, where one decided
    std::string_view source;       // id of a Source
    std::vector<Remedy> remedies;  // all of them are needed
    std::vector<std::string>
        asks;  // job keys ("measured.bore") or part columns ("motors.rotation") that would settle it
    bool caution = false;  // fits, but must be said: 230-only on 208 and the like
    Datum computed;        // a number worked out on the way: a cube-law overload, a recomputed ampacity
};

}  // namespace endbell::inline model
