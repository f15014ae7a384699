// What must be good before the motor is at fault, and which readings that lacks: both come from the fault tree.
#include <algorithm>

#include "engine/diagnosis/conclude.hpp"
#include "engine/diagnosis/tree.hpp"

namespace endbell::inline diagnosis {

namespace {

MissingReading missing_reading(std::string_view key, Test wanted_for) {
    constexpr int usual = 60;  // of a running motor or from a plate: nothing is opened
    const TreeTest* test = tree_test(key);
    const bool at_the_unit = key.rfind("measured.", 0) == 0;
    if (test == nullptr)
        return {std::string(key), wanted_for, usual, at_the_unit ? Danger::live : Danger::look};
    return {std::string(key), wanted_for, test->seconds, test->danger};
}

/// What a test that must pass still waits for.
std::vector<std::string> keys_asked_for(const EvidenceRows& rows, Test test) {
    std::vector<std::string> keys;
    for (const Evidence& row : rows) {
        if (row.test == test && row.verdict == Verdict::not_shown) keys.push_back(row.asks);
    }
    return keys;
}

}  // namespace

std::vector<Test> needed_tests(const FailedUnit& job, const Facts& facts, const EvidenceRows& rows) {
    std::vector<Test> needed;
    const TreeCase c{job, facts, rows};
    const bool normal = behaviour_of(job) == Behaviour::normal;
    for (const Chain& chain : fault_tree()) {
        if (normal ? !chain.any_complaint : !opens_on_complaint(chain, job)) continue;
        for (const ChainRow& row : chain.rows) {
            const bool known = std::find(needed.begin(), needed.end(), row.test) != needed.end();
            if (row.must_pass && !known && holds(row.condition, c)) needed.push_back(row.test);
        }
    }
    return needed;
}

MissingReading read_again(const std::string& job_key) {
    return missing_reading(job_key, Test::read_again);
}

std::vector<MissingReading> missing_readings(const FailedUnit& job, const Facts& facts,
                                             const EvidenceRows& rows) {
    std::vector<MissingReading> missing;
    const auto add = [&](std::string_view key, Test wanted_for) {
        const bool known = std::any_of(missing.begin(), missing.end(),
                                       [&](const MissingReading& m) { return m.job_key == key; });
        if (!known) missing.push_back(missing_reading(key, wanted_for));
    };
    // Loosening the wheel decides between wheel and motor, whatever else would read.
    if (failed(rows, Test::spins_free) && !passed(rows, Test::wheel_loose)) {
        add("measured.free_with_wheel_loose", Test::wheel_loose);
        return missing;
    }
    if (!facts.family) add("plate.family", Test::family);
    if (behaviour_of(job) == Behaviour::not_stated) add("measured.symptoms", Test::symptom);
    for (const Test test : needed_tests(job, facts, rows)) {
        for (const std::string& key : keys_asked_for(rows, test)) add(key, test);
    }
    std::stable_sort(missing.begin(), missing.end(), is_sooner<MissingReading>);
    return missing;
}

}  // namespace endbell::inline diagnosis
