#include "engine/wiring/commissioning.hpp"

#include <algorithm>
#include <array>

namespace endbell::inline wiring {

namespace {

// The columns of the table. What a job does not say is none of these, but where a column has a word for it.
enum class Turns { anything, blower, inducer, outdoor_fan, blower_or_inducer };
enum class Heats { anyhow, burner, perhaps_a_burner, elements, compressor_or_cooling };
enum class OfMotor { any, whole, electronic, has_capacitor, no_charge_of_its_own, not_known, three_phase };
enum class Beside { anything, compressor };

struct CheckRow {
    SiteCheck check;
    Turns turns = Turns::anything;
    Heats heats = Heats::anyhow;
    OfMotor motor = OfMotor::any;
    bool on_a_belt = false;
    Beside beside = Beside::anything;
    std::string_view source = "common-practice";
};

/// In the order of SiteCheck. A check may have several rows: one that holds is enough. Those of no row are a plan's.
constexpr auto table = [] {
    using enum SiteCheck;
    return std::to_array<CheckRow>({
        {.check = lock_out, .source = "osha-lockout"},
        {.check = absence_of_voltage, .source = "nfpa-70e"},
        {.check = fuel_off, .turns = Turns::blower_or_inducer, .heats = Heats::burner},
        {.check = fuel_off_if_it_burns, .turns = Turns::blower_or_inducer, .heats = Heats::perhaps_a_burner},
        {.check = wait_five_minutes, .motor = OfMotor::electronic, .source = "ecm-wait"},
        {.check = discharge_the_capacitor, .motor = OfMotor::has_capacitor, .source = "osha-lockout"},
        {.check = charge_not_known, .motor = OfMotor::not_known, .source = "osha-lockout"},
        {.check = charge_of_the_compressor,
         .motor = OfMotor::no_charge_of_its_own,
         .beside = Beside::compressor,
         .source = "osha-lockout"},
        {.check = charge_of_the_blower, .turns = Turns::inducer, .source = "osha-lockout"},
        {.check = charge_of_the_inducer,
         .turns = Turns::blower,
         .heats = Heats::burner,
         .motor = OfMotor::no_charge_of_its_own,
         .source = "osha-lockout"},

        {.check = wheel_free_and_clean},
        {.check = set_screw_on_the_flat, .motor = OfMotor::whole},
        {.check = specified_assembly, .turns = Turns::inducer, .source = "inducer"},
        {.check = wheel_side_gasket, .turns = Turns::inducer},
        {.check = drain_and_trap, .turns = Turns::inducer},
        {.check = vent_drain_and_gasket, .turns = Turns::blower_or_inducer, .heats = Heats::burner},
        {.check = blade_height, .turns = Turns::outdoor_fan},
        {.check = rain_shield_above, .turns = Turns::outdoor_fan},
        {.check = lead_loop_down, .turns = Turns::outdoor_fan},
        {.check = drain_holes, .turns = Turns::outdoor_fan},
        {.check = sheaves_in_line, .on_a_belt = true},
        {.check = belt_tension, .on_a_belt = true},
        {.check = same_sheave_pitch, .on_a_belt = true},
        {.check = bearings_free, .on_a_belt = true},
        {.check = guard_back, .on_a_belt = true},
        {.check = coil_and_pan_clean, .turns = Turns::blower, .heats = Heats::compressor_or_cooling},
        {.check = earth_continuous},
        {.check = dual_voltage_connection, .motor = OfMotor::three_phase},
        {.check = overload_set, .motor = OfMotor::three_phase, .source = "nec-430.32"},
        {.check = plugs_in_before_power},

        {.check = rotation},
        {.check = rotation_by_two_leads, .motor = OfMotor::three_phase},
        {.check = line_without_a_call, .motor = OfMotor::electronic, .source = "line-always"},
        {.check = amps_at_or_below_plate},
        {.check = amps_after_fifteen_minutes, .on_a_belt = true},
        {.check = amps_of_each_leg, .motor = OfMotor::three_phase, .source = "mg1-14.36"},
        {.check = air_up_and_out, .turns = Turns::outdoor_fan},
        {.check = head_pressure_steady, .turns = Turns::outdoor_fan},
        {.check = static_and_airflow, .turns = Turns::blower},
        {.check = cooling_air_at_its_call, .turns = Turns::blower, .heats = Heats::compressor_or_cooling},
        {.check = charge_after_the_air, .turns = Turns::blower, .heats = Heats::compressor_or_cooling},
        {.check = air_before_elements, .turns = Turns::blower, .heats = Heats::elements},
        {.check = element_amps, .turns = Turns::blower, .heats = Heats::elements},
        {.check = element_limit, .turns = Turns::blower, .heats = Heats::elements},
        {.check = pressure_at_the_switch, .turns = Turns::inducer},
        {.check = pressure_switch_proves, .turns = Turns::blower_or_inducer, .heats = Heats::burner},
        {.check = limit_and_rollout, .turns = Turns::blower_or_inducer, .heats = Heats::burner},
        {.check = burner_lights_smoothly, .turns = Turns::inducer},
        {.check = no_spillage, .turns = Turns::inducer},
        {.check = temperature_rise, .turns = Turns::blower_or_inducer, .heats = Heats::burner},
        {.check = temperature_rise, .turns = Turns::blower, .heats = Heats::elements},
        {.check = combustion_analysis, .turns = Turns::blower_or_inducer, .heats = Heats::burner},
        {.check = room_carbon_monoxide, .turns = Turns::blower_or_inducer, .heats = Heats::burner},
        {.check = combustion_if_it_burns,
         .turns = Turns::blower_or_inducer,
         .heats = Heats::perhaps_a_burner},
        {.check = record},
    });
}();

/// What the rows are compared with.
struct Site {
    std::optional<Load> load;
    const Facts& facts;
    const Part* part;
    bool cooled = false;  // a cooling capacity stands on the equipment
    bool plates_a_compressor = false;
    std::optional<bool> in_the_weather;

    std::optional<Family> new_family() const {
        return part != nullptr && part->motor ? part->motor->family : std::nullopt;
    }
    bool is_module() const { return part != nullptr && part->kind == PartKind::module; }
    /// A blower where nobody said what it turns: most are, and the checks of a blower harm no other.
    bool is_blower() const { return !load || load == Load::indoor_blower; }
    bool is_inducer() const { return load == Load::draft_inducer; }
    /// There is no draft inducer without a fire.
    bool burns() const { return facts.heat.burner.is(true) || is_inducer(); }

    bool is_electronic() const {
        if (is_module() || (facts.family && endbell::is_electronic(*facts.family))) return true;
        return new_family() && endbell::is_electronic(*new_family());
    }
    bool has_capacitor() const {
        if (facts.had_capacitor || (facts.family && endbell::has_capacitor(*facts.family))) return true;
        return new_family() && endbell::has_capacitor(*new_family());
    }
    bool turns(Turns what) const {
        switch (what) {
            case Turns::anything:
                return true;
            case Turns::blower:
                return is_blower();
            case Turns::inducer:
                return is_inducer();
            case Turns::outdoor_fan:
                return load == Load::outdoor_fan;
            case Turns::blower_or_inducer:
                return is_blower() || is_inducer();
        }
        return false;
    }
    bool heats(Heats how) const {
        switch (how) {
            case Heats::anyhow:
                return true;
            case Heats::burner:
                return burns();
            case Heats::perhaps_a_burner:
                return !burns() && !facts.heat.burner;
            case Heats::elements:
                return facts.heat.elements.is(true);
            case Heats::compressor_or_cooling:
                return facts.heat.compressor.is(true) || cooled;
        }
        return false;
    }
    bool is(OfMotor what) const {
        switch (what) {
            case OfMotor::any:
                return true;
            case OfMotor::whole:
                return !is_module();
            case OfMotor::electronic:
                return is_electronic();
            case OfMotor::has_capacitor:
                return has_capacitor();
            case OfMotor::no_charge_of_its_own:
                return facts.family && !has_capacitor();
            case OfMotor::not_known:
                return !facts.family && !has_capacitor();
            case OfMotor::three_phase:
                return has_three_legs(facts, part);
        }
        return false;
    }
    /// The compressor stands in a condenser's cabinet; beside the blower of a unit outdoors, or of one whose own plate lists it.
    bool stands_beside(Beside what) const {
        if (what == Beside::anything) return true;
        if (is_inducer()) return false;
        if (load == Load::outdoor_fan || plates_a_compressor) return true;
        return in_the_weather != false && heats(Heats::compressor_or_cooling);
    }
    bool owes(const CheckRow& row) const {
        return turns(row.turns) && heats(row.heats) && is(row.motor) &&
               (!row.on_a_belt || facts.belt.is(true)) && stands_beside(row.beside);
    }
};

}  // namespace

bool has_three_legs(const Facts& facts, const Part* part) {
    if (facts.phase.is(3) || facts.family.is(Family::three_phase)) return true;
    return part != nullptr && part->motor && part->motor->family == Family::three_phase;
}

std::vector<SiteCheck> checks_of(const FailedUnit& job, const Facts& facts, const Part* part,
                                 const std::vector<SiteCheck>& of_the_plan) {
    const bool cooled = (job.equipment.cooling && *job.equipment.cooling > HeatRate()) ||
                        (job.equipment.cooling_stages && *job.equipment.cooling_stages > 0);
    const Site site{job.unit.load.said(),
                    facts,
                    part,
                    cooled,
                    job.equipment.compressor_amps && *job.equipment.compressor_amps > Current(),
                    facts.outdoors.value};
    std::vector<SiteCheck> owed = of_the_plan;
    for (const CheckRow& row : table) {
        if (site.owes(row)) owed.push_back(row.check);
    }
    std::sort(owed.begin(), owed.end());
    owed.erase(std::unique(owed.begin(), owed.end()), owed.end());
    return owed;
}

std::string_view source_of(SiteCheck check) {
    const auto row =
        std::find_if(table.begin(), table.end(), [check](const CheckRow& r) { return r.check == check; });
    return row != table.end() ? row->source : "common-practice";
}

}  // namespace endbell::inline wiring
