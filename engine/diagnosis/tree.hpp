// The fault tree as data: for each complaint, and for each fault that is not yet named, a chain of tests. One file a chain in
// chains/; what each test is in itself (its reading, its danger, its time) stands once, in tree.cpp. What a reading decides and
// what follows is said in explain/next_test_words.cpp.
#pragma once
#include <optional>
#include <string_view>
#include <vector>

#include "engine/diagnosis/tests.hpp"

namespace endbell::inline diagnosis {

/// A test of the tree: one reading, by hand or by meter.
struct TreeTest {
    std::string_view job_key;
    Test test;  // what the reading is a test of
    Danger danger;
    int seconds;                       // on site, lockout and its wait apart; common practice
    bool (*taken)(const FailedUnit&);  // somebody said it; null: facts and evidence tell
    std::string_view source = "common-practice";
};

/// What must hold before a test of a chain is worth its time. What is not known does not hold.
enum class Condition {
    nothing,
    electronic,
    two_piece,
    capacitor,  // in circuit, or to start it
    three_phase,
    tapped,  // discrete 24 V or line taps
    duct,    // moves air through a duct
    thawed,  // moves air through a duct, and no ice holds it back
    inducer,
    burner,
    belt,  // said, or implied
    outdoors,
    shaft_tells,  // not a one-piece electronic motor: fed and called and still, that is dead whatever its shaft does
    stuck,          // the shaft drags
    hot_open,       // an open winding that may be its protector
    near_short,     // equal windings of next to nothing
    wet,            // the complaint
    burnt,          // a sign
    no_24v,         // R to C is dead, or was not read, and nothing behind it is live
    has_24v,        // R to C is live, or was not read
    no_call,        // the same, and no call is read at the motor
    no_line,        // no volts at all at the motor
    not_too_high,   // volts may be lost on the way
    supply_unknown  // nobody said what feeds the equipment
};

/// One test of a chain. `must_pass`: before what is left over (the motor, or its module) is at fault.
struct ChainRow {
    std::string_view job_key;
    Test test;
    Condition condition = Condition::nothing;
    bool must_pass = false;
};

/// Tests for the same complaint or fault, in the order in which a person would reason.
struct Chain {
    std::vector<Symptom> complaints;
    std::vector<Fault> faults;      // concluded, and its culprit not named
    std::vector<Culprit> culprits;  // named, and something still to be shown beside it
    bool any_complaint = false;     // whatever the motor does
    std::vector<ChainRow> rows;
};

namespace chain {
Chain any();
Chain dead();
Chain hums();
Chain slow();
Chain trips();
Chain weak_air();
Chain wrong_speed();
Chain runs_on();
Chain noisy();
Chain backwards();
Chain wet();
Chain supply();
Chain no_call();
Chain air();
Chain after();
}  // namespace chain

/// Every chain. Made once.
const std::vector<Chain>& fault_tree();

/// What a test of the tree is in itself; null: no test takes this reading.
const TreeTest* tree_test(std::string_view job_key);

/// What a chain is asked about.
struct TreeCase {
    const FailedUnit& job;
    const Facts& facts;
    const EvidenceRows& rows;
};
bool holds(Condition condition, const TreeCase& c);
/// The chain is one of what the motor is said to do; of a job that says nothing, of one that does not run.
bool opens_on_complaint(const Chain& chain, const FailedUnit& job);

/// At most five tests that no reading answers yet: first those that `missing` waits for.
std::vector<NextTest> next_tests(const TreeCase& c, Fault fault, std::optional<Culprit> culprit,
                                 const std::vector<MissingReading>& missing);

/// The safest class first; within it the quickest.
template <class Reading>
bool is_sooner(const Reading& a, const Reading& b) {
    return a.danger != b.danger ? a.danger < b.danger : a.seconds < b.seconds;
}

}  // namespace endbell::inline diagnosis
