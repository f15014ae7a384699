// A few invented accessories and remedies for the tests of the kit.
#pragma once
#include <string>
#include <utility>
#include <vector>

#include "engine/kit/kit.hpp"
#include "tests/match/books.hpp"

namespace endbell::kit_world {

inline Currency dollars() {
    return *currency("USD");
}
inline Money money(std::int64_t cents) {
    return Money(cents, dollars());
}

inline Part accessory(std::string id, std::vector<CureRow> rows, std::vector<std::string> excludes = {}) {
    Part part;
    part.id = std::move(id);
    part.kind = PartKind::accessory;
    part.maker = "Ferncroft";
    part.accessory = Accessory{std::move(rows), std::move(excludes)};
    return part;
}

inline Offer offer(std::string part, std::int64_t cents, int stock = 5, int lead = 0) {
    Offer o;
    o.part_id = std::move(part);
    o.seller = "counter";
    o.branch = "north";
    o.price = money(cents);
    o.stock = stock;
    o.lead_days = lead;
    o.as_of = date_of(2026, 1, 10);
    return o;
}

inline CureRow bushing(double from, double to) {
    CureRow row{};
    row.cure = Cure::shaft_bushing;
    row.from = inch(from);
    row.to = inch(to);
    return row;
}

inline CureRow capacitor(double uf, double volts) {
    CureRow row{};
    row.cure = Cure::run_capacitor;
    row.capacitor = microfarad(uf);
    row.capacitor_volts = volt(volts);
    return row;
}

inline Remedy needs_bushing(double from, double to) {
    Remedy r{};
    r.cure = Cure::shaft_bushing;
    r.from = inch(from);
    r.to = inch(to);
    return r;
}

inline Remedy needs_capacitor(double uf, double volts) {
    Remedy r{};
    r.cure = Cure::run_capacitor;
    r.capacitor = microfarad(uf);
    r.capacitor_volts = volt(volts);
    return r;
}

inline Remedy work(Cure cure) {
    Remedy r{};
    r.cure = cure;
    return r;
}

inline Candidate candidate(std::vector<Remedy> remedies) {
    Candidate c;
    c.part.id = "M-1";
    c.verdict = Verdict::fits_with_changes;
    for (Remedy& r : remedies) {
        Finding f;
        f.verdict = Verdict::fits_with_changes;
        f.remedies.push_back(std::move(r));
        c.findings.push_back(std::move(f));
    }
    return c;
}

inline Policy policy() {
    Policy p;
    p.branch = "north";
    p.as_of = date_of(2026, 1, 15);
    p.currency = dollars();
    p.labour_rate = money(12'500);
    return p;
}

inline std::vector<std::string> ids(const KitChoice& kit) {
    std::vector<std::string> found;
    for (const KitPart& part : kit.parts) found.push_back(part.part_id);
    return found;
}

}  // namespace endbell::kit_world
