// What this folder answers with a word. Each word is the spelling in JSON and on sheets.
#pragma once
#include "engine/model/word.hpp"

namespace endbell::inline airflow {

/// The limit of a motor that kept it from its set value.
enum class MotorLimit { speed, power, torque };
constexpr auto words_of(MotorLimit) {
    return std::array{Word<MotorLimit>{MotorLimit::speed, "speed"},
                      Word<MotorLimit>{MotorLimit::power, "power"},
                      Word<MotorLimit>{MotorLimit::torque, "torque"}};
}

/// What a tap's shaft power is beside rated power, service factor or not: a blower runs for hours, and what the
/// factor holds in reserve is not spent on it. An overloaded tap serves no call.
enum class LoadCaution { near_full_load, overload };
constexpr auto words_of(LoadCaution) {
    return std::array{Word<LoadCaution>{LoadCaution::near_full_load, "near full load"},
                      Word<LoadCaution>{LoadCaution::overload, "overload"}};
}

/// What a call's window comes from.
enum class WindowBasis { cfm_per_ton, temperature_rise, electric_elements, circulation };
constexpr auto words_of(WindowBasis) {
    return std::array{Word<WindowBasis>{WindowBasis::cfm_per_ton, "cfm per ton"},
                      Word<WindowBasis>{WindowBasis::temperature_rise, "temperature rise"},
                      Word<WindowBasis>{WindowBasis::electric_elements, "electric elements"},
                      Word<WindowBasis>{WindowBasis::circulation, "circulation"}};
}

/// Why a call has no tap that serves it.
enum class UnmetReason {
    no_tap_in_window,
    not_measured,
    window_not_known,
    outranked,    // a tap would serve it, and a call that counts for more stands in the way
    overload,     // the only taps in its window overload the motor
    limit_binds,  // a programmed airflow that a limit of the motor keeps out of the window
    by_the_board  // the equipment's board commands the airflow
};
constexpr auto words_of(UnmetReason) {
    return std::array{Word<UnmetReason>{UnmetReason::no_tap_in_window, "no tap in window"},
                      Word<UnmetReason>{UnmetReason::not_measured, "not measured"},
                      Word<UnmetReason>{UnmetReason::window_not_known, "window not known"},
                      Word<UnmetReason>{UnmetReason::outranked, "outranked"},
                      Word<UnmetReason>{UnmetReason::overload, "overload"},
                      Word<UnmetReason>{UnmetReason::limit_binds, "limit binds"},
                      Word<UnmetReason>{UnmetReason::by_the_board, "by the board"}};
}

/// What a speed lead was chosen by, where no airflow shows that it is right.
enum class LeadBasis {
    in_use,      // it has the place of the lead that ran in this call
    nearest,     // of the leads that are free, none is nearer to the call's target
    usual_order  // common practice: high for cooling, the next lower for heating
};
constexpr auto words_of(LeadBasis) {
    return std::array{Word<LeadBasis>{LeadBasis::in_use, "lead in use"},
                      Word<LeadBasis>{LeadBasis::nearest, "nearest lead"},
                      Word<LeadBasis>{LeadBasis::usual_order, "usual order"}};
}

/// What is to be said of a call that is met.
enum class CallCaution {
    off_target,         // limit airflow.match
    far_off_target,     // limit airflow.warn
    static_over_plate,  // the plate's greatest static, else limit static.plate_default
    rise_near_limit,    // limit rise.margin
    watts_per_cfm,      // limit fan.efficacy
    zone_static,  // with the least open zone alone: over the coil's or the exchanger's limit, else the plate's
    return_too_small  // limit return.face
};
constexpr auto words_of(CallCaution) {
    return std::array{Word<CallCaution>{CallCaution::off_target, "off target"},
                      Word<CallCaution>{CallCaution::far_off_target, "far off target"},
                      Word<CallCaution>{CallCaution::static_over_plate, "static over plate"},
                      Word<CallCaution>{CallCaution::rise_near_limit, "rise near limit"},
                      Word<CallCaution>{CallCaution::watts_per_cfm, "watts per cfm"},
                      Word<CallCaution>{CallCaution::zone_static, "static on the least open zone"},
                      Word<CallCaution>{CallCaution::return_too_small, "return too small"}};
}

/// What a motor's efficiency at its load was taken from.
enum class EfficiencySource {
    printed_electronic,  // the catalog's, scaled to the load by the usual curve of electronic motors
    usual_electronic,    // that curve alone (common practice)
    printed_slip,  // the catalog's, scaled by slip: rotor losses are slip times what the rotor gets (physics)
    usual_slip     // slip and the family's usual losses (common practice)
};
constexpr auto words_of(EfficiencySource) {
    return std::array{
        Word<EfficiencySource>{EfficiencySource::printed_electronic, "catalog and the usual curve"},
        Word<EfficiencySource>{EfficiencySource::usual_electronic, "usual curve of electronic motors"},
        Word<EfficiencySource>{EfficiencySource::printed_slip, "catalog and slip"},
        Word<EfficiencySource>{EfficiencySource::usual_slip, "slip and usual losses"}};
}

/// What brings static down, in the order in which to look.
enum class StaticCure { filter, coil, return_face, lower_tap, duct };
constexpr auto words_of(StaticCure) {
    return std::array{
        Word<StaticCure>{StaticCure::filter, "filter"}, Word<StaticCure>{StaticCure::coil, "coil"},
        Word<StaticCure>{StaticCure::return_face, "larger return"},
        Word<StaticCure>{StaticCure::lower_tap, "lower tap"}, Word<StaticCure>{StaticCure::duct, "duct"}};
}

/// Where the old motor's airflow was found.
enum class AirflowSource { reading, temperature_rise, blower_table };
constexpr auto words_of(AirflowSource) {
    return std::array{Word<AirflowSource>{AirflowSource::reading, "reading"},
                      Word<AirflowSource>{AirflowSource::temperature_rise, "temperature rise"},
                      Word<AirflowSource>{AirflowSource::blower_table, "blower table"}};
}

/// Where the old motor's shaft torque was found, best first.
enum class TorqueSource { blower_table, watts, slip_line, amps, plate_power };
constexpr auto words_of(TorqueSource) {
    return std::array{Word<TorqueSource>{TorqueSource::blower_table, "blower table"},
                      Word<TorqueSource>{TorqueSource::watts, "watts"},
                      Word<TorqueSource>{TorqueSource::slip_line, "slip line"},
                      Word<TorqueSource>{TorqueSource::amps, "amps"},
                      Word<TorqueSource>{TorqueSource::plate_power, "plate power"}};
}

/// How a plan's airflows were worked out, or why there is nothing to work out.
enum class AirMethod {
    torque_ratio,
    blower_table,
    slip_line,
    fan_laws,
    programmed_airflow,
    by_the_board,  // serial commands: the board's program decides
    no_calls,      // no indoor blower
    no_motor       // an accessory
};
constexpr auto words_of(AirMethod) {
    return std::array{Word<AirMethod>{AirMethod::torque_ratio, "torque ratio"},
                      Word<AirMethod>{AirMethod::blower_table, "blower table"},
                      Word<AirMethod>{AirMethod::slip_line, "slip line"},
                      Word<AirMethod>{AirMethod::fan_laws, "fan laws"},
                      Word<AirMethod>{AirMethod::programmed_airflow, "programmed airflow"},
                      Word<AirMethod>{AirMethod::by_the_board, "by the board"},
                      Word<AirMethod>{AirMethod::no_calls, "no calls"},
                      Word<AirMethod>{AirMethod::no_motor, "no motor"}};
}

/// Why a published blower table is not used.
enum class TableRefusal {
    too_few_rows,
    rows_do_not_decide,  // its rows lie on one line of the fan laws
    fit_too_loose,
    not_a_blower,  // its torque or flow falls as the wheel turns faster
    belt_drive     // its rpm is the wheel's, not the motor's
};
constexpr auto words_of(TableRefusal) {
    return std::array{Word<TableRefusal>{TableRefusal::too_few_rows, "too few rows"},
                      Word<TableRefusal>{TableRefusal::rows_do_not_decide, "rows do not decide"},
                      Word<TableRefusal>{TableRefusal::fit_too_loose, "fit too loose"},
                      Word<TableRefusal>{TableRefusal::not_a_blower, "not a blower"},
                      Word<TableRefusal>{TableRefusal::belt_drive, "belt drive"}};
}

/// What an answer may rest on that no job key and no catalog column would replace.
enum class Assumption {
    power_factor,  // the family's usual one
    duct_curve     // that the duct is as it was measured
};
constexpr auto words_of(Assumption) {
    return std::array{Word<Assumption>{Assumption::power_factor, "power factor"},
                      Word<Assumption>{Assumption::duct_curve, "duct curve"}};
}

}  // namespace endbell::inline airflow
