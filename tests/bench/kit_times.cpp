// How long a kit takes to choose, inside the process, from a shelf that stands ready.
//
// usage: bench_kits      instances on stdin, as tests/outside/kits.py writes them; an answer a line, then
//                        "time kits MEDIAN P95" in microseconds: the best of three rounds over all instances
#include <algorithm>
#include <chrono>
#include <iostream>

#include "tests/outside/probes/kit_instances.hpp"

int main() {
    std::vector<kits::Instance> instances;
    while (auto instance = kits::next_instance(std::cin)) instances.push_back(std::move(*instance));
    if (instances.empty()) return 64;
    std::vector<double> best(instances.size(), 1e99);
    for (int round = 0; round < 3; ++round) {
        for (std::size_t i = 0; i < instances.size(); ++i) {
            const auto& [catalog, candidate] = instances[i];
            // Anew each time: what a shelf might remember of a candidate must not be the answer.
            const endbell::KitShelf shelf(books_of(catalog), kits::policy());
            const auto begin = std::chrono::steady_clock::now();
            const endbell::KitChoice kit = choose_kit(candidate, shelf);
            const std::chrono::duration<double, std::micro> took = std::chrono::steady_clock::now() - begin;
            best[i] = std::min(best[i], took.count());
            if (round == 0) fmt::print("{}", kits::answer(kit));
        }
    }
    std::sort(best.begin(), best.end());
    fmt::print("time kits {:.1f} {:.1f}\n", best[best.size() / 2], best[best.size() * 95 / 100]);
}
