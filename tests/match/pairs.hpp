// Generated (job, part) pairs: an agreeing pair of tests/rules/world.hpp with a few fields spoiled. The same
// seed gives the same pairs on every machine: only the raw output of the engine is used, no library
// distribution.
#pragma once
#include <random>

#include "tests/rules/world.hpp"

namespace endbell::match_tests {

using rule_tests::World;

class Dice {
  public:
    explicit Dice(unsigned seed) : engine_(seed) {}
    std::size_t below(std::size_t n) { return static_cast<std::size_t>(engine_() % n); }
    bool one_in(std::size_t n) { return below(n) == 0; }
    template <class T>
    T of(const std::vector<T>& list) {
        return list[below(list.size())];
    }

  private:
    std::mt19937 engine_;
};

/// A pair of any kind, not yet spoiled.
World base_pair(Dice& dice);

void spoil_job(World& w, Dice& dice);
void spoil_part(World& w, Dice& dice);

/// A pair with none to five fields spoiled.
World pair(Dice& dice);

/// Empties one field of the part; false when it was empty already.
bool blank_part_field(World& w, Dice& dice);

}  // namespace endbell::match_tests
