// The pieces of work that a shop's table of hours may name, and which of them a cure takes.
#pragma once
#include "engine/model/kinds.hpp"

namespace endbell::inline model {

/// The table's own spelling: a task in other words would never be found.
enum class ShopTask {
    motor_swap,
    module_swap,
    module_fit,
    retrofit_swap,
    capacitor_swap,
    inducer_swap,
    condenser_motor_swap,
    shaft_cut,
    bushing_fit,
    band_fit,
    adapter_fit,
    relay_fit,
    transformer_fit,
    harness_fit,
    voltage_selection,
    rotation_selection,
    lead_parking,
    airflow_setup,
    capacitor_removal,
    rain_shield_fit,
    filter_change,
    duct_repair,
    control_repair,
    supply_repair,
    diagnosis,
    second_visit
};
constexpr auto words_of(ShopTask) {
    return std::array{Word<ShopTask>{ShopTask::motor_swap, "motor swap"},
                      Word<ShopTask>{ShopTask::module_swap, "module swap"},
                      Word<ShopTask>{ShopTask::module_fit, "module fit"},
                      Word<ShopTask>{ShopTask::retrofit_swap, "retrofit swap"},
                      Word<ShopTask>{ShopTask::capacitor_swap, "capacitor swap"},
                      Word<ShopTask>{ShopTask::inducer_swap, "inducer swap"},
                      Word<ShopTask>{ShopTask::condenser_motor_swap, "condenser motor swap"},
                      Word<ShopTask>{ShopTask::shaft_cut, "shaft cut"},
                      Word<ShopTask>{ShopTask::bushing_fit, "bushing fit"},
                      Word<ShopTask>{ShopTask::band_fit, "band fit"},
                      Word<ShopTask>{ShopTask::adapter_fit, "adapter fit"},
                      Word<ShopTask>{ShopTask::relay_fit, "relay fit"},
                      Word<ShopTask>{ShopTask::transformer_fit, "transformer fit"},
                      Word<ShopTask>{ShopTask::harness_fit, "harness fit"},
                      Word<ShopTask>{ShopTask::voltage_selection, "voltage selection"},
                      Word<ShopTask>{ShopTask::rotation_selection, "rotation selection"},
                      Word<ShopTask>{ShopTask::lead_parking, "lead parking"},
                      Word<ShopTask>{ShopTask::airflow_setup, "airflow setup"},
                      Word<ShopTask>{ShopTask::capacitor_removal, "capacitor removal"},
                      Word<ShopTask>{ShopTask::rain_shield_fit, "rain shield fit"},
                      Word<ShopTask>{ShopTask::filter_change, "filter change"},
                      Word<ShopTask>{ShopTask::duct_repair, "duct repair"},
                      Word<ShopTask>{ShopTask::control_repair, "control repair"},
                      Word<ShopTask>{ShopTask::supply_repair, "supply repair"},
                      Word<ShopTask>{ShopTask::diagnosis, "diagnosis"},
                      Word<ShopTask>{ShopTask::second_visit, "second visit"}};
}

/// The work of putting this right.
constexpr ShopTask task_of(Cure cure) {
    switch (cure) {
        case Cure::shaft_bushing:
            return ShopTask::bushing_fit;
        case Cure::shaft_cut:
            return ShopTask::shaft_cut;
        case Cure::mount_band:
        case Cure::body_ring:
            return ShopTask::band_fit;
        case Cure::mount_adapter:
            return ShopTask::adapter_fit;
        case Cure::run_capacitor:
        case Cure::start_capacitor:
            return ShopTask::capacitor_swap;
        case Cure::capacitor_removal:
            return ShopTask::capacitor_removal;
        case Cure::isolation_relay:
        case Cure::line_relay:
            return ShopTask::relay_fit;
        case Cure::harness:
            return ShopTask::harness_fit;
        case Cure::transformer:
            return ShopTask::transformer_fit;
        case Cure::voltage_selection:
            return ShopTask::voltage_selection;
        case Cure::rotation_selection:
            return ShopTask::rotation_selection;
        case Cure::rain_shield:
            return ShopTask::rain_shield_fit;
        case Cure::lead_parking:
            return ShopTask::lead_parking;
        case Cure::control_module:
            return ShopTask::module_fit;
        case Cure::line_fuse:
        case Cure::contactor:
            return ShopTask::supply_repair;
        case Cure::control_fuse:
        case Cure::float_switch:
        case Cure::door_switch:
        case Cure::board_relay:
            return ShopTask::control_repair;
        case Cure::airflow_setup:
            break;
    }
    return ShopTask::airflow_setup;
}

}  // namespace endbell::inline model
