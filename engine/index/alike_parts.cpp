#include "engine/index/alike_parts.hpp"

#include <algorithm>

namespace endbell::inline index {

AlikeParts::AlikeParts(const std::vector<IndexColumn>& columns, std::size_t words,
                       std::vector<std::shared_ptr<const Sayings>> known)
    : columns_(columns), words_(words), sayings_(std::move(known)) {
    for (std::size_t r = 0; r < sayings_.size(); ++r) {
        const ClassChanges& of_rule = sayings_[r]->changes;
        if (of_rule.classes.empty()) continue;
        const bool adapters = std::any_of(of_rule.changes.begin(), of_rule.changes.end(),
                                          [](const AskedChange& c) { return !c.adapters.empty(); });
        rules_.push_back({&of_rule, &columns[rule_columns().of_rule[r]], adapters, nullptr});
    }
}

std::shared_ptr<const Alike> AlikeParts::of(std::uint32_t position, const MoreNames::Curable& curable) {
    static const std::size_t body_column = column_with("motors.body_diameter_in");
    static const std::size_t family_column = column_with("motors.family");
    const auto all_curable = [&](const std::vector<Remedy>& adapters) {
        return MoreNames::all_curable(adapters, curable);
    };
    const auto look = [&](Asking& rule) {
        rule.asks = rule.changes->of(rule.column->class_at(position, words_));
    };
    bool adapters = false;
    for (Asking& rule : rules_) {  // these first: most that nothing cures are told by them
        if (!rule.adapters) continue;
        look(rule);
        if (rule.asks == nullptr) continue;
        if (!all_curable(rule.asks->adapters)) return nullptr;
        adapters = adapters || !rule.asks->adapters.empty();
    }
    asked_.changes.clear();
    for (Asking& rule : rules_) {
        if (!rule.adapters) look(rule);
        if (rule.asks != nullptr) asked_.changes.push_back(rule.asks);
    }
    const IndexColumn& families = columns_[family_column];
    const IndexColumn& bodies = columns_[body_column];
    asked_.family = families.class_at(position, words_);
    // Only adapters are made for a body.
    asked_.body = adapters ? bodies.class_at(position, words_) : bodies.classes();
    std::shared_ptr<const Alike>& known = known_[asked_];
    if (!known) {
        Part of_family, of_body;
        families.put(asked_.family, of_family);
        if (adapters) bodies.put(asked_.body, of_body);
        known = std::make_shared<const Alike>(alike(of_family, of_body));
    }
    return all_curable(known->adapters) ? known : nullptr;
}

Alike AlikeParts::alike(const Part& of_family, const Part& of_body) const {
    Alike made;
    made.kind = of_family.kind;
    if (of_family.motor) made.family = of_family.motor->family;
    for (const AskedChange* change : asked_.changes) {
        for (const Remedy& remedy : change->adapters) add_remedy(made.adapters, remedy, of_body);
        for (const ShopTask task : change->tasks) add_task(made.tasks, task);
    }
    return made;
}

}  // namespace endbell::inline index
