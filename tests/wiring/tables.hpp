// State tables made by a small counting generator: the same tables in every run, on every machine.
#pragma once
#include <cstdint>

#include "engine/wiring/synthesis.hpp"

namespace fixture {

/// A linear congruential generator (the constants of Knuth's MMIX).
class Dice {
  public:
    explicit Dice(std::uint64_t seed) : state_(seed * 2654435761u + 1) {}
    int below(int n) {
        state_ = state_ * 6364136223846793005u + 1442695040888963407u;
        return static_cast<int>((state_ >> 33) % static_cast<std::uint64_t>(n));
    }
    bool one_in(int n) { return below(n) == 0; }

  private:
    std::uint64_t state_;
};

/// Random wishes for some of the states; nothing live wants no tap. Every third table is a priority list, as
/// real controls are: the highest live signal decides.
inline endbell::TapTable random_table(Dice& dice, int signals, int taps) {
    endbell::TapTable table;
    table.signals = signals;
    table.highest_tap = taps;
    table.wanted.resize(std::size_t{1} << signals);
    const bool priority = dice.one_in(3);
    std::vector<int> own;
    for (int s = 0; s < signals; ++s) own.push_back(dice.below(taps + 1));
    for (endbell::SignalSet state = 1; state < table.wanted.size(); ++state) {
        if (!dice.one_in(priority ? 2 : 3)) continue;
        int top = 0;
        for (int s = 0; s < signals; ++s) top = (state >> s & 1u) ? s : top;
        table.wanted[state] = priority ? own[static_cast<std::size_t>(top)] : dice.below(taps + 1);
    }
    table.wanted[0] = 0;
    if (dice.one_in(3)) table.must_run = 1u << dice.below(signals);
    return table;
}

}  // namespace fixture
