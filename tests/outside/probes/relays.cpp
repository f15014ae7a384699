// Reads state tables, prints the number of coils the synthesis needs. One table a line:
// one_tap(0|1) supply(0|1) signals_feed(0|1) signals highest_tap must_run wanted[0] ... wanted[2^signals -
// 1], -1: does not occur. One number a line; -1: no circuit.
#include <iostream>

#include "engine/wiring/synthesis.hpp"

int main() {
    int one_tap, supply, feed;
    endbell::TapTable table;
    while (std::cin >> one_tap >> supply >> feed >> table.signals >> table.highest_tap >> table.must_run) {
        table.wanted.assign(std::size_t{1} << table.signals, std::nullopt);
        for (std::optional<int>& wanted : table.wanted) {
            int tap = 0;
            std::cin >> tap;
            if (tap >= 0) wanted = tap;
        }
        const endbell::Sources sources{supply != 0, feed != 0};
        const auto circuit =
            one_tap != 0 ? endbell::one_conductor(table, sources) : endbell::highest_wins(table, sources);
        std::cout << (circuit ? static_cast<int>(circuit->coils.size()) : -1) << "\n";
    }
}
