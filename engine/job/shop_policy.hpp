// A shop's own file, beside the jobs: [shop] keys that every job of the shop shares, and [limits] rows that
// the shop tightens. What a job says itself comes first.
//     [shop]
//     branch = "Elmford"
//     exclude_makers = ["Quillby"]
//     [limits]
//     "static.repair_first" = 0.6
#pragma once
#include <filesystem>
#include <string_view>

#include "engine/model/failed_unit.hpp"
#include "engine/model/limits.hpp"

namespace endbell::inline job {

struct ShopPolicy {
    FailedUnit defaults;  // only its [shop] group
    std::string file;

    struct Wish {
        std::string limit;
        double value = 0;
        Place at;
    };
    std::vector<Wish> limits;
};

/// Throws BadData with every problem, ascending by line.
ShopPolicy read_shop_policy(std::string_view text, const std::string& filename);
ShopPolicy read_shop_policy_file(const std::filesystem::path& path);

/// Fills what the job leaves out of its [shop] group.
void add_shop(FailedUnit& job, const ShopPolicy& shop);

/// Throws BadData for an unknown row, with a near one, and for a looser value.
void tighten(Limits& limits, const ShopPolicy& shop);

}  // namespace endbell::inline job
