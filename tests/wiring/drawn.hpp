// Random controls, supplies and parts, each with what is known of it because it was drawn so.
#pragma once
#include <string>

#include "tests/wiring/fixtures.hpp"
#include "tests/wiring/tables.hpp"

namespace fixture {

struct DrawnJob {
    FailedUnit job;
    Part part;
    AirPlan air;
    bool curable = true;    // complete, and there is a way to wire it
    bool run_line = false;  // the board's run signal runs the motor, whatever the thermostat calls
    bool leads = false;     // speed leads carry the motor's current
    bool board = false;     // the terminals are outputs of a board
    bool switched = false;  // by contactor or starter: no call of a blower
    // The line conductors that it must get; the third of three phases alone.
    std::string hot = "L1";
    std::string back = "L2";
    std::string third = {};
};

DrawnJob draw(Dice& dice);

}  // namespace fixture
