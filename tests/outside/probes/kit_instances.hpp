// Instances of kits as text, which tests/outside/kits.py writes: for the probe that answers them, and for the time of it.
// An instance is a line "NEEDS ITEMS", then a line an item:
//     CURES PRICE LEAD STOCK EXCLUDES
// CURES and EXCLUDES are numbers joined by commas, or "-". An answer is a line:
//     UNCURED PRICE LEAD PARTS ITEMS
#pragma once
#include <fmt/format.h>

#include <istream>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "engine/base/text.hpp"
#include "engine/kit/kit.hpp"
#include "tests/match/books.hpp"

namespace kits {

using namespace endbell;

inline std::vector<int> numbers(const std::string& text) {
    std::vector<int> found;
    if (text == "-") return found;
    for (const std::string& one : split(text, ',')) found.push_back(std::stoi(one));
    return found;
}

inline std::string id(int item) {
    return fmt::format("X-{:04}", item);
}

/// Need n is a run capacitor of n + 1 microfarads: any cure would do.
inline Capacitance size_of(int need) {
    return microfarad(need + 1.0);
}

inline void read_item(std::istream& in, int item, PlainCatalog& catalog) {
    std::string cures, excludes;
    int price = 0, lead = 0, stock = 0;
    in >> cures >> price >> lead >> stock >> excludes;
    Part part;
    part.id = id(item);
    part.kind = PartKind::accessory;
    part.accessory = Accessory{};
    for (int need : numbers(cures)) {
        CureRow row{};
        row.cure = Cure::run_capacitor;
        row.capacitor = size_of(need);
        row.capacitor_volts = volt(440);
        part.accessory->cures.push_back(row);
    }
    for (int other : numbers(excludes)) part.accessory->excludes.push_back(id(other));
    catalog.parts_list.push_back(std::move(part));
    Offer offer;
    offer.part_id = id(item);
    offer.branch = "north";
    offer.price = Money(price, Currency{});
    offer.stock = stock;
    offer.lead_days = lead;
    catalog.offer_list.push_back(std::move(offer));
}

inline Candidate candidate(int needs) {
    Candidate made;
    for (int need = 0; need < needs; ++need) {
        Finding finding;
        Remedy remedy{};
        remedy.cure = Cure::run_capacitor;
        remedy.capacitor = size_of(need);
        remedy.capacitor_volts = volt(370);
        finding.remedies.push_back(remedy);
        made.findings.push_back(std::move(finding));
    }
    return made;
}

struct Instance {
    PlainCatalog catalog;
    Candidate candidate;
};

inline std::optional<Instance> next_instance(std::istream& in) {
    int needs = 0, items = 0;
    if (!(in >> needs >> items)) return std::nullopt;
    Instance read;
    for (int item = 0; item < items; ++item) read_item(in, item, read.catalog);
    read.candidate = candidate(needs);
    return read;
}

/// Own stock would hide the lead: the shop is at another branch, and takes what anybody has within 99 days.
inline Policy policy() {
    Policy made;
    made.branch = "south";
    made.longest_lead_days = 99;
    return made;
}

inline std::string answer(const KitChoice& kit) {
    std::string chosen;
    for (const KitPart& part : kit.parts) chosen += " " + part.part_id.substr(2);
    return fmt::format("{} {} {} {}{}\n", kit.uncured.size(), kit.parts_total ? kit.parts_total->minor() : -1,
                       kit.longest_lead_days, kit.parts.size(), chosen);
}

}  // namespace kits
