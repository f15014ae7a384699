// Today's invoice for one way out, line by line.
#pragma once
#include <chrono>
#include <optional>
#include <string>
#include <vector>

#include "engine/cost/ledger.hpp"

namespace endbell::inline cost {

/// Collects the lines of one option. What a line needs and nobody stated goes into `lacking`; an optional
/// line that the shop does not state goes into `not_counted`.
class Bill {
  public:
    Bill(const FailedUnit& job, const Books& books, const Policy& policy);

    /// REQUIRES: is_part(kind). No offer, no price, an old price or one in another currency: lacking.
    void add_part(LineKind kind, const std::string& part_id, const std::optional<Offer>& offer,
                  int count = 1);
    /// Hours from the shop's table, `count` times.
    void add_labour(ShopTask task, int count = 1);
    /// Everything of a chosen kit, its work included.
    void add_kit(const KitChoice& kit);
    /// Emergency rate on the labour so far, trip, diagnosis; a second visit when the parts are not there
    /// today.
    void add_visit(std::optional<int> lead_days);
    /// A price for the whole that the user gives: taxes and work are in it.
    void add_quote(const Money& price, const std::string& job_key);
    void lacks(std::string what);
    /// Of the shop's table: "labour TASK".
    void lacks_hours(ShopTask task);
    void leaves_out(NotCounted what);

    /// Tax and core credits, then the total. Ends the bill.
    void close(CostOption& option);

    const std::vector<CostLine>& lines() const { return lines_; }
    const std::vector<std::string>& lacking() const { return lacking_; }

  private:
    Money zero() const { return Money(0, policy_.currency); }
    Money sum(bool of_parts) const;
    bool usable(const Reading<Money>& amount, const char* job_key);
    void add_markup(CostLine& line);
    void add_second_visit();
    void add_tax();

    const FailedUnit& job_;
    const Books books_;
    const Policy& policy_;
    std::vector<CostLine> lines_;
    std::vector<CostLine> credits_;
    std::vector<std::string> lacking_;
    std::vector<NotCounted> not_counted_;
    std::optional<std::chrono::sys_days> oldest_price_;
    bool undated_ = false;  // some price has no date that can be read
};

/// Older than limit price.age on the policy's date, or of no date that can be read.
bool is_stale(const Offer& offer, const Policy& policy, const Limits& limits);

}  // namespace endbell::inline cost
