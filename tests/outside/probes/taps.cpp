// Tap assignments for tests/outside/tap_assignment.py. Reads instances of whole numbers from standard input:
//   CALLS TAPS SHARING (0: one call a tap), then CALLS lines "CALL LOW TARGET HIGH HARD" (CALL as its index in model/kinds.hpp), then
//   TAPS lines "AIRFLOW PLUS_MINUS". Writes a line an instance: the tap of each call (0 first, -1 unmet),
//   then the score's fields.
#include <iostream>

#include "engine/airflow/tap_assignment.hpp"

int main() {
    using namespace endbell;
    std::size_t calls = 0, taps = 0;
    bool sharing = true;
    while (std::cin >> calls >> taps >> sharing) {
        std::vector<CallWindow> windows(calls);
        for (CallWindow& window : windows) {
            int call = 0;
            double low = 0, target = 0, high = 0;
            std::cin >> call >> low >> target >> high >> window.hard;
            window = {static_cast<Call>(call), cfm(low), cfm(target), cfm(high), window.hard};
        }
        std::vector<TapFlow> flows(taps);
        for (TapFlow& flow : flows) {
            double airflow = 0, plus_minus = 0;
            std::cin >> airflow >> plus_minus;
            flow = {cfm(airflow), cfm(plus_minus)};
        }
        const TapAssignment choice =
            assign_taps(windows, flows, sharing ? Sharing::allowed : Sharing::one_call_a_tap);
        for (const auto& tap : choice.tap) std::cout << (tap ? *tap : -1) << ' ';
        const TapScore& score = choice.score;
        std::cout << score.hard_met << ' ' << score.soft_met << ' ' << -score.apart << ' '
                  << score.hard_assured << ' ' << score.comfort << '\n';
    }
}
