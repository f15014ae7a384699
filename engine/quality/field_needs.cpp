#include "engine/quality/quality.hpp"

namespace endbell::inline quality {

namespace {

/// In SQL over motors; empty: all of them.
std::string_view condition_of(Concerns concerns) {
    switch (concerns) {
        case Concerns::everyone:
            return "";
        case Concerns::induction:
            return "family IN ('shaded pole', 'capacitor run', 'three phase')";
        case Concerns::capacitor_run:
            return "family = 'capacitor run'";
        case Concerns::constant_torque:
            return "family = 'constant torque'";
        case Concerns::constant_airflow:
            return "family = 'constant airflow'";
        case Concerns::two_piece:
            return "family IN ('constant airflow', 'communicating')";
        case Concerns::plugged:
            return "family IN ('constant torque', 'constant airflow', 'communicating')";
        case Concerns::inducers:
            return "loads LIKE '%draft inducer%'";
        case Concerns::outdoor_fans:
            return "loads LIKE '%outdoor fan%'";
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
