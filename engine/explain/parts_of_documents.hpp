// Sections that several documents share. Each appends to a document.
#pragma once
#include "engine/explain/compose.hpp"

namespace endbell {

std::string outcome_sentence(const Selection& selection);
std::string part_name(const Part& part);
std::string price_text(const std::optional<Money>& money);
/// "shaft bushing 5/16 -> 1/2 in; set the voltage jumper", or "nothing added".
std::string kit_text(const KitChoice& kit);

/// Today's total; what is known of it where something is lacking.
std::string total_text(const CostOption& option);

void add_diagnosis(Document& to, const Diagnosis& diagnosis);
void add_questions(Document& to, const std::vector<std::string>& keys, const std::vector<OpenField>& open);
void add_findings(Document& to, const std::vector<Finding>& findings, Verdict at_least);
void add_kit(Document& to, const KitChoice& kit);
void add_air(Document& to, const AirPlan& air);
void add_wiring(Document& to, const WiringPlan& plan);
/// The form to fill in when it runs: each reading with what the plan expects.
void add_start_up(Document& to, const FailedUnit& job, const Option& option);
/// What losing the new part too is expected to cost a year; nothing where no cause stands.
void add_recurrence(Document& to, const CostOption& option);
void add_ledger(Document& to, const Ledger& ledger);
/// What the policy barred, what lacks a kit or a wiring, and what would rescue a job that nothing fits.
void add_ways_out(Document& to, const Selection& selection);
/// Title and basis of every source that the document named. Last.
void add_sources(Document& to);
void add_fallen(Document& to, const MatchReport& report);

}  // namespace endbell
