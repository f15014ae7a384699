#include "engine/job/shop_policy.hpp"

#include <fstream>
#include <sstream>

#include "engine/base/hash.hpp"
#include "engine/base/text.hpp"
#include "engine/job/job.hpp"
#include "engine/job/toml_text.hpp"
#include "engine/words/plain.hpp"
#include "engine/words/write.hpp"

namespace endbell::inline job {

namespace {

/// One limit; `id` quoted, or dotted so that TOML made a table of it: static = {repair_first = 0.6}.
void read_limit(ShopPolicy& shop, const std::string& id, std::string_view text, const Place& at,
                std::vector<Problem>& problems) {
    const Read<double> value = read_number(fold(text));
    if (value.reading) {
        shop.limits.push_back({id, *value.reading, at});
        return;
    }
    problems.push_back({at, "limits." + id, std::string(text), "a number",
                        "see endbell rules for the rows and their units"});
}

/// A limit's id has a dot: TOML takes `shaft.bore_clearance = 0.001` for a table `shaft`, and several of it for one.
void read_limits(ShopPolicy& shop, const job::TomlEntry& entry, std::vector<Problem>& problems) {
    if (entry.value.find(" = ") == std::string::npos) {
        read_limit(shop, entry.name, entry.value, entry.value_at, problems);
        return;
    }
    for (const std::string& pair : split(entry.value, ';')) {
        const std::size_t equals = pair.find('=');
        if (equals == std::string::npos) continue;
        read_limit(shop, entry.name + "." + std::string(trimmed(pair.substr(0, equals))),
                   trimmed(pair.substr(equals + 1)), entry.value_at, problems);
    }
}

}  // namespace

ShopPolicy read_shop_policy(std::string_view text, const std::string& filename) {
    const job::TomlDocument document = job::parse_toml(text, filename);
    std::vector<Problem> problems = document.problems;
    ShopPolicy shop;
    shop.file = filename;
    shop.defaults.digest = fingerprint(text);
    for (const job::TomlEntry& entry : document.entries) {
        if (entry.name.empty()) continue;
        if (entry.group == "limits") {
            read_limits(shop, entry, problems);
        } else if (entry.group != "shop") {
            problems.push_back({entry.key_at, entry.group.empty() ? entry.name : "[" + entry.group + "]",
                                entry.value, "[shop] or [limits]",
                                "what belongs to one job stands in its job file"});
        } else if (auto problem = set_key(shop.defaults, "shop." + entry.name, entry.value, entry.value_at)) {
            problems.push_back(std::move(*problem));
        }
    }
    if (!problems.empty()) throw BadData(std::move(problems));
    return shop;
}

ShopPolicy read_shop_policy_file(const std::filesystem::path& path) {
    std::ifstream file(path, std::ios::binary);
    std::ostringstream text;
    if (std::filesystem::is_directory(path) || !file || !(text << file.rdbuf())) {
        throw BadData(
            Problem{{path.string(), 0, 0}, "the shop's file", "", "a readable text file", "check the path"});
    }
    return read_shop_policy(text.str(), path.string());
}

void add_shop(FailedUnit& job, const ShopPolicy& shop) {
    for (const JobKey& key : job_keys()) {
        if (key.group == "shop" && key.text(job).empty()) key.merge(job, shop.defaults);
    }
    // Another policy is another input: the digest on the sheet says so.
    job.digest = fingerprint(job.digest + shop.defaults.digest);
}

/// All that is wrong with a policy is told at once, so that it is mended at once.
void tighten(Limits& limits, const ShopPolicy& shop) {
    std::vector<Problem> problems;
    for (const ShopPolicy::Wish& wish : shop.limits) {
        switch (limits.tighten(wish.limit, wish.value, shop.file)) {
            case Limits::Tightening::accepted:
                break;
            case Limits::Tightening::unknown_row: {
                std::vector<std::string> known;
                for (const Limit& row : limits.rows()) known.emplace_back(row.id);
                const std::string near = nearest(wish.limit, known);
                problems.push_back({wish.at, "limits." + wish.limit, "", "the id of a limit",
                                    near.empty() ? "see endbell rules" : "did you mean '" + near + "'?"});
                break;
            }
            case Limits::Tightening::looser:
                problems.push_back({wish.at, "limits." + wish.limit, write(wish.value),
                                    "a stricter value than " + write(limits.find(wish.limit)->value),
                                    "a shop may tighten a limit, never loosen it"});
        }
    }
    if (!problems.empty()) throw BadData(std::move(problems));
}

}  // namespace endbell::inline job
