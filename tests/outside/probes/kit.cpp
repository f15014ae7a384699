// Chooses kits for tests/outside/kits.py. An instance on stdin is a line "NEEDS ITEMS", then a line an item:
//     CURES PRICE LEAD STOCK EXCLUDES
// CURES and EXCLUDES are numbers joined by commas, or "-". Answers one line an instance:
//     UNCURED PRICE LEAD PARTS ITEMS
#include <fmt/format.h>

#include <iostream>

#include "engine/base/text.hpp"
#include "engine/kit/kit.hpp"

using namespace endbell;

namespace {

std::vector<int> numbers(const std::string& text) {
    std::vector<int> found;
    if (text == "-") return found;
    for (const std::string& one : split(text, ',')) found.push_back(std::stoi(one));
    return found;
}

std::string id(int item) {
    return fmt::format("X-{:04}", item);
}

/// Need n is a run capacitor of n + 1 microfarads: any cure would do.
Capacitance size_of(int need) {
    return microfarad(need + 1.0);
}

void read_item(int item, PlainCatalog& catalog) {
    std::string cures, excludes;
    int price = 0, lead = 0, stock = 0;
    std::cin >> cures >> price >> lead >> stock >> excludes;
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

Candidate candidate(int needs) {
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

}  // namespace

int main() {
    int needs = 0, items = 0;
    while (std::cin >> needs >> items) {
        PlainCatalog catalog;
        for (int item = 0; item < items; ++item) read_item(item, catalog);
        // Own stock would hide the lead: the shop is at another branch, and takes what anybody has within 99
        // days.
        Policy policy;
        policy.branch = "south";
        policy.longest_lead_days = 99;
        const KitChoice kit = choose_kit(candidate(needs), catalog, policy);
        std::string chosen;
        for (const KitPart& part : kit.parts) chosen += " " + part.part_id.substr(2);
        fmt::print("{} {} {} {}{}\n", kit.uncured.size(), kit.parts_total ? kit.parts_total->minor() : -1,
                   kit.longest_lead_days, kit.parts.size(), chosen);
    }
}
