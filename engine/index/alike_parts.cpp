#include "engine/index/alike_parts.hpp"

#include <algorithm>

namespace endbell::inline index {

AlikeParts::AlikeParts(const std::vector<IndexColumn>& columns, std::size_t words,
                       std::vector<std::shared_ptr<const RuleFindings>> by_rule)
    : columns_(columns), words_(words), by_rule_(std::move(by_rule)) {
    for (std::size_t r = 0; r < by_rule_.size(); ++r) {
        const ClassChanges& of_rule = by_rule_[r]->changes;
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
    const auto look = [&](AskingRule& rule) {
        rule.asks = rule.changes->of(rule.column->class_at(position, words_));
    };
    bool adapters = false;
    for (AskingRule& rule : rules_) {  // these first: they tell most parts that nothing cures
        if (!rule.adapters) continue;
        look(rule);
        if (rule.asks == nullptr) continue;
        if (!all_curable(rule.asks->adapters)) return nullptr;
        adapters = adapters || !rule.asks->adapters.empty();
    }
    key_.changes.clear();
    for (AskingRule& rule : rules_) {
        if (!rule.adapters) look(rule);
        if (rule.asks != nullptr) key_.changes.push_back(rule.asks);
    }
    const IndexColumn& families = columns_[family_column];
    const IndexColumn& payloads = columns_[body_column];
    key_.family = families.class_at(position, words_);
    key_.body = adapters ? payloads.class_at(position, words_) : payloads.classes();
    std::shared_ptr<const Alike>& known = known_[key_];
    if (!known) {
        Part of_family, of_body;
        families.put(key_.family, of_family);
        if (adapters) payloads.put(key_.body, of_body);
        known = std::make_shared<const Alike>(alike(of_family, of_body));
    }
    return all_curable(known->adapters) ? known : nullptr;
}

Alike AlikeParts::alike(const Part& of_family, const Part& of_body) const {
    Alike made;
    made.kind = of_family.kind;
    if (of_family.motor) made.family = of_family.motor->family;
    for (const AskedChange* change : key_.changes) {
        for (const Remedy& remedy : change->adapters) add_remedy(made.adapters, remedy, of_body);
        for (const ShopTask task : change->tasks) add_task(made.tasks, task);
    }
    return made;
}

}  // namespace endbell::inline index
