// What lines of text find in a catalog, for tests/outside/find.py. usage: probe_find CATALOG < LINES
// Writes a line for each: MICROSECONDS NUMBERS_FOUND NARROWING PART_ID..., and before them one: NAMES MILLISECONDS.
#include <chrono>
#include <iostream>

#include "engine/find/find.hpp"

int main(int, char** words) {
    using namespace endbell;
    using Clock = std::chrono::steady_clock;
    const StoredCatalog catalog(words[1]);
    const auto before = Clock::now();
    const NameIndex names(words[1], catalog);
    std::cout << "NAMES "
              << std::chrono::duration_cast<std::chrono::milliseconds>(Clock::now() - before).count() << '\n';
    for (std::string line; std::getline(std::cin, line);) {
        const auto start = Clock::now();
        const FindAnswer answer = find_parts(line, names, catalog);
        const auto time = std::chrono::duration_cast<std::chrono::microseconds>(Clock::now() - start).count();
        std::cout << time << ' ' << answer.numbers << ' ' << word(answer.narrowing);
        for (const FoundPart& found : answer.parts) std::cout << ' ' << found.part_id;
        std::cout << '\n';
    }
}
