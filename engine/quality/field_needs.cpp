#include "engine/quality/quality.hpp"

namespace endbell::inline quality {

namespace {

/// "family IN ('split phase', ...)": the families of which `wanted` holds.
std::string families_that(bool (*wanted)(Family)) {
    std::string list;
    for (const Word<Family>& family : Words<Family>::table) {
        if (wanted(family.value)) list += (list.empty() ? "'" : ", '") + std::string(family.text) + "'";
    }
    return "family IN (" + list + ")";
}

/// In SQL over motors; empty: all of them.
std::string condition_of(Concerns concerns) {
    switch (concerns) {
        case Concerns::everyone:
            return "";
        case Concerns::induction:
            return families_that(is_induction);
        case Concerns::capacitor_run:
            return "family = 'capacitor run'";
        case Concerns::constant_torque:
            return "family = 'constant torque'";
        case Concerns::constant_airflow:
            return "family = 'constant airflow'";
        case Concerns::two_piece:
            return families_that(is_two_piece);
        case Concerns::made_for_belts_too:
            return families_that(is_made_for_belts_too) +
                   " AND coalesce(enclosure, '') NOT IN ('OPAO', 'TEAO')";
        case Concerns::plugged:
            return families_that(is_electronic);
        case Concerns::inducers:
            return "loads LIKE '%draft inducer%'";
        case Concerns::outdoor_fans:
            return "loads LIKE '%outdoor fan%'";
        case Concerns::held_by_frame:
            return "mount IN ('base', 'ring')";
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
