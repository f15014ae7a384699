// Chooses kits for tests/outside/kits.py: instances on stdin, an answer a line.
#include <iostream>

#include "tests/outside/probes/kit_instances.hpp"

int main() {
    while (const auto instance = kits::next_instance(std::cin)) {
        fmt::print(
            "{}", kits::answer(choose_kit(instance->candidate, books_of(instance->catalog), kits::policy())));
    }
}
