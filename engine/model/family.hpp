// The kinds of motor by how they make their torque, and what a kind has by construction.
#pragma once
#include "engine/model/word.hpp"

namespace endbell::inline model {

/// How the motor makes its torque, which decides what may replace it.
enum class Family {
    shaded_pole,
    capacitor_run,    // permanent split capacitor (PSC)
    split_phase,      // start winding and switch, no capacitor
    capacitor_start,  // start capacitor and switch
    capacitor_start_and_run,
    three_phase,       // induction, no capacitor
    constant_torque,   // electronic, one piece, discrete taps
    constant_airflow,  // electronic, two pieces, programmed module
    communicating      // electronic, serial or pulse commands from the equipment's board
};
constexpr auto words_of(Family) {
    return std::array{Word<Family>{Family::shaded_pole, "shaded pole"},
                      Word<Family>{Family::capacitor_run, "capacitor run"},
                      Word<Family>{Family::split_phase, "split phase"},
                      Word<Family>{Family::capacitor_start, "capacitor start"},
                      Word<Family>{Family::capacitor_start_and_run, "capacitor start and run"},
                      Word<Family>{Family::three_phase, "three phase"},
                      Word<Family>{Family::constant_torque, "constant torque"},
                      Word<Family>{Family::constant_airflow, "constant airflow"},
                      Word<Family>{Family::communicating, "communicating"}};
}
constexpr bool is_electronic(Family f) {
    return f == Family::constant_torque || f == Family::constant_airflow || f == Family::communicating;
}
/// A module that comes off. READ in equipment manuals for the constant-airflow kind and its serial and pulse kin.
constexpr bool is_two_piece(Family family) {
    return family == Family::constant_airflow || family == Family::communicating;
}

/// A run or start capacitor in its circuit.
constexpr bool has_capacitor(Family f) {
    return f == Family::capacitor_run || f == Family::capacitor_start || f == Family::capacitor_start_and_run;
}

/// What an induction motor of one phase has to start its load with, least first: a shaded pole and a permanent-split motor
/// little, a start winding with its switch more, a start capacitor most (common practice).
constexpr int starting_torque_class(Family f) {
    switch (f) {
        case Family::shaded_pole:
            return 1;
        case Family::capacitor_run:
            return 2;
        case Family::split_phase:
            return 3;
        case Family::capacitor_start:
        case Family::capacitor_start_and_run:
            return 4;
        default:
            return 0;
    }
}

/// A switch takes its start winding out at speed: made to start a load that pulls, such as a belt.
constexpr bool has_start_switch(Family f) {
    return starting_torque_class(f) >= 3;
}

/// Of these both kinds are made, for a belt and for a wheel on the shaft; the others are made for their own shaft, but where
/// their maker says otherwise (common practice).
constexpr bool is_made_for_belts_too(Family f) {
    return has_start_switch(f) || f == Family::three_phase;
}

/// Induction motors take their speed from the line.
constexpr bool is_induction(Family f) {
    return !is_electronic(f);
}

}  // namespace endbell::inline model
