#include "engine/catalog/generations.hpp"

#include <algorithm>

#include "engine/catalog/database.hpp"
#include "engine/catalog/digest.hpp"
#include "engine/catalog/replacement.hpp"

namespace endbell::inline catalog {

namespace fs = std::filesystem;

namespace {

Generation opened(const fs::path& file) {
    SQLite::Database db = open_finished(file);
    const GenerationRow row = guarded(file, [&] { return read_generation(db); });
    return {row.number, row.digest, file, false};
}

}  // namespace

std::vector<Generation> generations(const fs::path& catalog) {
    std::vector<Generation> list{opened(catalog)};
    for (const int number : kept_numbers(catalog)) {
        if (number == list.front().number) continue;  // an import was killed between keeping and swapping
        try {
            list.push_back(opened(kept_file(catalog, number)));
        } catch (const BadData&) {
            list.push_back({number, "", kept_file(catalog, number), true});
        }
    }
    return list;
}

Generation restore(const fs::path& catalog, int number) {
    Replacement next(catalog);
    const std::vector<int> kept = kept_numbers(catalog);
    if (std::find(kept.begin(), kept.end(), number) == kept.end()) {
        throw BadData(Problem{{catalog.string(), 0, 0},
                              "generation",
                              std::to_string(number),
                              "a generation that is kept",
                              "list them with 'endbell catalog generations'"});
    }
    int current = 0;
    try {
        current = opened(catalog).number;
    } catch (const BadData&) {
        current = 0;  // damaged or gone: nothing worth keeping
    }
    const int next_number = std::max(current, kept.front()) + 1;
    next.copy_from(kept_file(catalog, number));
    const std::string digest = guarded(next.file(), [&] {
        SQLite::Database db = open_private(next.file());
        const RowSums sums = computed_sums(db);
        if (!are_written(sums, db)) {
            throw BadData(Problem{{kept_file(catalog, number).string(), 0, 0},
                                  "generation",
                                  std::to_string(number),
                                  "an undamaged generation",
                                  "restore another one"});
        }
        return write_digest(db, next_number, sums);
    });
    next.swap_in(current);
    return {next_number, digest, catalog, false};
}

}  // namespace endbell::inline catalog
