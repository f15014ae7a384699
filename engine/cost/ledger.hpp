// Each way out as cash flows: today's total to the cent, and its cost a year over its own life.
#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/airflow/air_plan.hpp"
#include "engine/kit/kit.hpp"

namespace endbell {

/// One line of a quote.
struct CostLine {
    std::string_view kind;  // "part", "kit part", "labour", "trip", "diagnosis", "tax", "core credit"
    std::string subject;    // part id or task
    Money amount;
    std::string source;     // "offer BRANCH SELLER 2026-01-10", "shop.labour_rate", ...
    bool stale = false;
};

struct CostOption {
    std::string_view way;   // "keep and cure", "module", "motor", "retrofit", "capacitor", "equipment"
    std::string part_id;    // empty where no part is bought
    std::vector<CostLine> lines;
    std::optional<Money> today;             // absent when `lacking` is not empty
    std::optional<Energy> energy_per_year;
    std::optional<Money> energy_cost;       // a year
    double life_years = 0;
    std::optional<Money> per_year;          // equivalent annual cost over its own life
    std::vector<std::string> lacking;       // job keys or "offers PART": the questions
    std::vector<std::string_view> loses;    // stable words: "constant airflow", "efficiency"
    std::vector<std::string_view> not_counted;
};

struct Ledger {
    std::vector<CostOption> options;  // in the order of the ranking that was asked for
    std::optional<int> cheapest_today;  // index into options; absent when no total is known
    std::optional<int> cheapest_per_year;
};

}  // namespace endbell
