#include <algorithm>
#include <cmath>
#include <utility>

#include "engine/diagnosis/tests.hpp"

namespace endbell::inline diagnosis {

namespace {
constexpr double decimal_slack = 1e-9;  // relative; far below the last digit of any meter
}

Evidence open_row(Test test, std::string job_key, std::string source) {
    Evidence row;
    row.test = test;
    row.asks = job_key;
    row.job_key = std::move(job_key);
    row.reason = TestReason::not_measured;
    row.source = std::move(source);
    return row;
}

bool at_most(double value, double limit) {
    return value <= limit + decimal_slack * std::abs(limit);
}
bool at_least(double value, double limit) {
    return value >= limit - decimal_slack * std::abs(limit);
}

bool has_symptom(const FailedUnit& job, Symptom symptom) {
    const auto& stated = job.measured.symptoms;
    return stated && std::count(stated->begin(), stated->end(), symptom) > 0;
}

bool moves_duct_air(const FailedUnit& job) {
    return !job.unit.load || *job.unit.load == Load::indoor_blower;
}

}  // namespace endbell::inline diagnosis
