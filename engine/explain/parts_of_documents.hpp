// Sections that several documents share. Each appends to a document.
#pragma once
#include "engine/explain/compose.hpp"

namespace endbell::inline explain {

std::string outcome_sentence(const Selection& selection);
std::string part_name(const Part& part);
std::string price_text(const std::optional<Money>& money);
/// "shaft bushing 5/16 -> 1/2 in; set the voltage jumper", or "nothing added".
std::string kit_text(const KitChoice& kit);

/// Today's total; what is known of it where something is lacking.
std::string total_text(const CostOption& option);

/// The ledger's row of a part; null where it has none.
const CostOption* cost_of(const Ledger& ledger, const std::string& part_id);

void add_diagnosis(Document& to, const Diagnosis& diagnosis);
/// What is at fault outside the motor, where it is named, and the tests that come next, each with what it decides.
void add_next_tests(Document& to, const Diagnosis& diagnosis);
/// The fault with what it stands on, what killed the old part, and what to do about it; no other test.
void add_fault(Document& to, const Diagnosis& diagnosis, bool named_above = false);
/// Says that the plate is open, where it is.
void add_plate_doubt(Document& to, const Facts& facts);
/// Readings that cannot all be true, named together.
void add_contradictions(Document& to, const Diagnosis& diagnosis);
void add_questions(Document& to, const std::vector<std::string>& keys, const std::vector<OpenField>& open);
void add_findings(Document& to, const std::vector<Finding>& findings, Verdict at_least);
/// The remedies of a kit that a part or a piece of work gives: "run capacitor 7.5 MFD; mount band".
std::string remedies_text(const KitChoice& kit, const std::vector<int>& cures);
void add_kit(Document& to, const KitChoice& kit);
/// What each call needs and gets, what each tap was worked out to do, heat and rise, static over the plate.
void add_air(Document& to, const AirPlan& air);
/// What each choice of a tap costs, efficiency, fan energy, what each assumption would change.
void add_air_choices(Document& to, const AirPlan& air);
void add_wiring(Document& to, const WiringPlan& plan);
void add_checks(Document& to, const WiringPlan& plan);
/// The form to fill in when it runs: each reading with what the plan expects.
void add_start_up(Document& to, const FailedUnit& job, const Selection& selection, const Option& option);
/// What has changed since the unit was started, where a file keeps it.
void add_since_start_up(Document& to, const Diagnosis& diagnosis);
/// What losing the new part too is expected to cost a year; nothing where no cause stands.
void add_recurrence(Document& to, const CostOption& option);
void add_ledger(Document& to, const Ledger& ledger);
/// What each way has cost by the end of each year of its life.
void add_cost_chart(Document& to, const FailedUnit& job, const Ledger& ledger,
                    const std::vector<std::size_t>& ways);
/// Each call's airflow beside the window it needs.
void add_air_chart(Document& to, const AirPlan& air);
/// What the policy barred, what lacks a kit or a wiring, and what would rescue a job that nothing fits.
void add_ways_out(Document& to, const Selection& selection);
/// The capacitor, fuse, switch or relay that is bought in the motor's stead: price, terminals and test.
void add_repair_part(Document& to, const Selection& selection);
/// What to say and to ask where the equipment's maker has to be called.
void add_ask_the_maker(Document& to, const FailedUnit& job, const Facts& facts);
/// Title and basis of every source that the document named. Last.
void add_sources(Document& to);
/// The nearest misses and the tallies; at most `most` tallies, how many are left out is said.
void add_fallen(Document& to, const MatchReport& report, std::size_t most = 1000);

/// "A", "B": how an estimate calls its options.
std::string way_letter(std::size_t n);
/// What is checked at the unit: the plan's list where there is a plan, the same without its own. `option` may be null.
std::vector<SiteCheck> checks_owed(const FailedUnit& job, const Selection& selection, const Option* option);
/// A reading is missing that is taken with the power on.
bool asks_live(const Diagnosis& diagnosis);

// ---- the sheets: everything between the title and the sources

/// "Take", "Undecided", "Nothing fits" or "Do not replace it".
void add_decision(Document& to, const Selection& selection, const Option* option);
void add_counter_ticket(Document& to, const FailedUnit& job, const Selection& selection,
                        const Option& option);
void add_work_sheet(Document& to, const FailedUnit& job, const Selection& selection, const Option& option,
                    const std::vector<OpenField>& open);
void add_estimate(Document& to, const FailedUnit& job, const Selection& selection, const Option& option);

}  // namespace endbell::inline explain
