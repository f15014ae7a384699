#include "engine/quality/quality.hpp"
#include "engine/rules/trade.hpp"

namespace endbell::inline quality {

namespace {

/// "('split phase', ...)": the words of which `wanted` holds.
template <class E>
std::string listed(bool (*wanted)(E)) {
    std::string list;
    for (const Word<E>& word : Words<E>::table) {
        if (wanted(word.value)) list += (list.empty() ? "'" : ", '") + std::string(word.text) + "'";
    }
    return "(" + list + ")";
}

/// In SQL over motors; empty: all of them.
std::string condition_of(Concerns concerns) {
    switch (concerns) {
        case Concerns::everyone:
            return "";
        case Concerns::induction:
            return "family IN " + listed(is_induction);
        case Concerns::capacitor_run:
            return "family = 'capacitor run'";
        case Concerns::constant_torque:
            return "family = 'constant torque'";
        case Concerns::constant_airflow:
            return "family = 'constant airflow'";
        case Concerns::two_piece:
            return "family IN " + listed(is_two_piece);
        case Concerns::made_for_belts_too:
            return "family IN " + listed(is_made_for_belts_too) + " AND coalesce(enclosure, '') NOT IN " +
                   listed(is_air_over);
        case Concerns::plugged:
            return "family IN " + listed(is_electronic);
        case Concerns::inducers:
            return "loads LIKE '%draft inducer%'";
        case Concerns::outdoor_fans:
            return "loads LIKE '%outdoor fan%'";
        case Concerns::held_by_frame:
            return "mount IN " + listed(held_by_its_frame);
        case Concerns::bolted:
            return "mount IN ('studs', 'face')";
        case Concerns::nobody:
            return "FALSE";
    }
    return "";
}

}  // namespace

const std::vector<FieldNeed>& field_needs() {
    static const std::vector<FieldNeed> all = [] {
        std::vector<FieldNeed> needs;
        for (const Rule& rule : all_rules()) {
            for (const NeededColumn& needed : rule.needs) {
                const std::size_t dot = needed.column.find('.');
                needs.push_back({rule.id, needed.column.substr(0, dot), needed.column.substr(dot + 1),
                                 needed.of, condition_of(needed.of)});
            }
        }
        return needs;
    }();
    return all;
}

}  // namespace endbell::inline quality
