// What was read when a unit was started, as its file keeps it: a later job is read against it.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "engine/model/kinds.hpp"

namespace endbell::inline model {

/// What is read at start-up, by call or for the unit as a whole.
enum class StartUpQuantity { line_volts, amps, static_total, speed, airflow, rise };
constexpr auto words_of(StartUpQuantity) {
    return std::array{Word<StartUpQuantity>{StartUpQuantity::line_volts, "line volts"},
                      Word<StartUpQuantity>{StartUpQuantity::amps, "amps"},
                      Word<StartUpQuantity>{StartUpQuantity::static_total, "static total"},
                      Word<StartUpQuantity>{StartUpQuantity::speed, "speed"},
                      Word<StartUpQuantity>{StartUpQuantity::airflow, "airflow"},
                      Word<StartUpQuantity>{StartUpQuantity::rise, "rise"}};
}

/// Up to three readings of one quantity, in its unit: V, A, in. w.c., rpm, cfm, F degrees.
struct StartUpFound {
    std::optional<Call> call;  // none: of the unit, whatever it is called for
    StartUpQuantity what = StartUpQuantity::amps;
    int leg = 0;  // 1 to 3: of one leg, or of one pair of lines; 0: there is one
    std::vector<double> found;
    friend bool operator==(const StartUpFound&, const StartUpFound&) = default;
};

struct StartUpRecord {
    std::string file;
    std::string name, equipment_model, equipment_serial, part, program;
    std::vector<StartUpFound> readings;  // those that were filled in
    friend bool operator==(const StartUpRecord&, const StartUpRecord&) = default;
};

}  // namespace endbell::inline model
