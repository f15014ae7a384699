// A catalog part as the rules see it. Every optional field may be unknown: unknown is never a pass.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "engine/model/kinds.hpp"
#include "engine/model/supply.hpp"
#include "engine/units/date.hpp"
#include "engine/units/money.hpp"
#include "engine/units/units.hpp"

namespace endbell::inline model {

/// One power or voltage rating; a wide-range or two-voltage motor has several.
struct Rating {
    std::optional<Power> power;
    std::optional<PlateVolts> volts;
    std::optional<Current> amps;
    std::optional<Speed> speed;
    VoltageSelection selection = VoltageSelection::none;  // how the motor is set to this rating
};

struct Tap {
    int number = 0;  // as printed on the part: 1 to 5; for speed leads, 1 is the lowest
    std::string label;
    std::optional<Torque> torque;
    std::optional<Speed> speed;
    std::optional<SignalClass> signal;
    std::optional<Duration> off_delay;
};

/// A wire landing on the part: which function, printed how, where it sits.
struct PartTerminal {
    std::string label;  // as printed: "L", "G", "N", "C", "1"
    std::string
        function;  // line, second line, third line, earth, common, tap 1.., run signal, capacitor, ...
    std::string connector;
};

struct Motor {
    std::optional<Family> family;
    std::vector<Load> loads;           // empty: not stated
    std::vector<Family> retrofit_for;  // families its own sheet says it replaces
    std::optional<int> phase;
    std::optional<Frequency> frequency;
    std::optional<int> poles;  // induction only
    std::optional<Rotation> rotation;
    std::optional<bool> double_shaft;
    std::optional<Length> shaft_diameter;
    std::optional<Length> shaft_length;
    std::optional<Length> shaft_flat;
    std::optional<Length> second_shaft_diameter;  // at the lead end, of a double shaft
    std::optional<Length> second_shaft_length;
    std::optional<bool> shaft_cuttable;
    std::optional<Length> body_diameter;
    std::optional<Length> body_length;
    std::optional<std::string> frame;
    std::optional<Mount> mount;
    std::optional<Length> bolt_circle;
    std::optional<Drive> drive;
    std::optional<Enclosure> enclosure;
    std::optional<Bearing> bearing;
    std::vector<ShaftPosition> positions;  // empty: not stated
    std::optional<Temperature> ambient;
    std::optional<double> service_factor;
    std::optional<Protection> protection;
    std::optional<Capacitance> capacitor;  // the one this motor needs; none for electronic motors
    std::optional<Voltage> capacitor_volts;
    std::optional<int> speeds;
    std::optional<SignalClass> signal;
    std::optional<TapRule> tap_rule;
    std::optional<Speed> speed_limit;
    std::optional<int> default_tap;       // runs at it with line power and no tap live; 0: it stops then
    std::optional<bool> includes_module;  // false: a motor half, sold without its module
    std::optional<std::string> program;   // the program its module must carry
    std::optional<std::string> assembly;  // the equipment assembly it is specified for (inducers)
    std::optional<std::string> connector;
    std::optional<double> efficiency;  // shaft over electrical input at rated load, 0 to 1
    std::optional<int> warranty_months;
    std::vector<Rating> ratings;
    std::vector<Tap> taps;
    std::vector<PartTerminal> terminals;
};

struct Module {
    std::optional<std::string> program;
    std::optional<PlateVolts> volts;
    std::optional<SignalClass> signal;
    std::optional<Power> power;
    std::optional<int> warranty_months;
    std::vector<std::string> fits;  // part ids or old numbers of motors it serves, from module_fits
    std::vector<PartTerminal> terminals;
};

/// What an accessory cures. Sizes in the cure's own sense: a bushing goes from shaft to bore.
struct CureRow {
    Cure cure;
    std::optional<Length> from;
    std::optional<Length> to;
    std::optional<Capacitance> capacitor;
    std::optional<Capacitance> compressor_capacitor;  // of a dual one: the side of the compressor
    std::optional<Voltage> capacitor_volts;
    std::optional<Current> amps;         // of a fuse, or that contacts carry
    std::optional<Mount> mount;          // the mount that the equipment has
    std::optional<Voltage> coil;         // a relay's coil
    std::optional<ApparentPower> power;  // a transformer's rating, or a relay coil's draw
    std::optional<PlateVolts> primary;   // a transformer's: a primary with several taps is several rows
    std::optional<int> poles;            // contact poles of a relay
    std::optional<std::string> connector_from;
    std::optional<std::string> connector_to;
};

struct Accessory {
    std::vector<CureRow> cures;
    std::vector<std::string> excludes;  // part ids it cannot be used together with
};

/// A price with seller, branch and date. Cost to the shop, before markup.
struct Offer {
    std::string part_id;
    std::string seller;
    std::string branch;
    std::optional<Money> price;
    std::optional<Money> core_credit;
    std::optional<int> stock;
    std::optional<int> lead_days;
    std::optional<Date> as_of;  // none: not written as a date
};

struct CrossReference {
    std::string old_number;
    std::string part_id;
    Relation relation = Relation::replaces;
    std::string source;
};

struct Part {
    std::string id;
    PartKind kind = PartKind::motor;
    std::string maker;
    std::string number;  // text for ever: leading zeros, dashes and spaces kept
    PartStatus status = PartStatus::active;
    std::string description;
    std::optional<Motor> motor;  // exactly the one that `kind` names is present
    std::optional<Module> module;
    std::optional<Accessory> accessory;
};

}  // namespace endbell::inline model
