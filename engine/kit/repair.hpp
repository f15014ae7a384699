// What is bought instead of a motor: the capacitor, fuse, switch, contactor or relay that is at fault.
#pragma once
#include <array>
#include <optional>
#include <string>
#include <vector>

#include "engine/diagnosis/diagnosis.hpp"
#include "engine/kit/kit.hpp"

namespace endbell::inline kit {

/// Where the wires of such a part go: by terminals, never by colours.
enum class RepairLanding {
    as_it_was,              // each wire where it was, one at a time
    two_terminals,          // a single run capacitor
    whole_dual,             // common, compressor and fan, each to its own
    single_beside_the_dual  // the fan's own; the old one stays for the compressor
};
constexpr auto words_of(RepairLanding) {
    return std::array{
        Word<RepairLanding>{RepairLanding::as_it_was, "as it was"},
        Word<RepairLanding>{RepairLanding::two_terminals, "two terminals"},
        Word<RepairLanding>{RepairLanding::whole_dual, "whole dual capacitor"},
        Word<RepairLanding>{RepairLanding::single_beside_the_dual, "single beside the dual capacitor"}};
}

struct Repair {
    Cure cure = Cure::run_capacitor;
    KitChoice kit;                  // of the one remedy
    std::vector<std::string> asks;  // job keys without which nobody knows which one
    RepairLanding landing = RepairLanding::as_it_was;
    std::string may_ask;             // the job key that would let another way in; empty: none
    std::optional<KitChoice> other;  // of a dual capacitor: the other way to put it right
    std::optional<RepairLanding> other_landing;
    bool complete() const { return asks.empty() && kit.complete() && !kit.parts.empty(); }
};

/// None where no part cures what is at fault, or nothing outside the motor is shown to be.
std::optional<Repair> repair_of(const FailedUnit& job, const Facts& facts, const Diagnosis& diagnosis,
                                const KitShelf& shelf, const Limits& limits);

}  // namespace endbell::inline kit
