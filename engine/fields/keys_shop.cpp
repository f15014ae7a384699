#include "engine/fields/key_row.hpp"

namespace endbell::inline fields {

namespace {

Currency currency_of(const FailedUnit& job) {
    return *currency(job.shop.currency ? *job.shop.currency : "USD");
}

Read<Money> read_amount_of(const FailedUnit& job, const Folded& words) {
    return read_money(words, currency_of(job));
}

}  // namespace

JobKeys shop_keys() {
    const GroupOf<ShopReadings> shop{"shop", Origin::shop, &FailedUnit::shop};
    using F = ShopReadings;
    const auto money = [&](Reading<Money> F::*field, const Told& told) {
        return following("shop.currency", row(shop, field, told, Reader<Money>(read_amount_of)));
    };
    constexpr std::string_view unit = "shop.currency";
    return {
        row(shop, &F::branch, {"branch", "whose stock counts first", "", "north", "Which branch sells it?"},
            read_text),
        row(shop, &F::as_of,
            {"as_of", "today, as YYYY-MM-DD: prices are dated against it", "", "2025-06-30",
             "For which date is the price?"},
            read_date),
        row(shop, &F::currency, {"currency", "of every amount, ISO 4217", "", "USD"}, read_currency),
        money(&F::labour_rate,
              {"labour_rate", "an hour", unit, "135.00", "What does an hour of labour cost?"}),
        money(&F::trip, {"trip", "one trip", unit, "49"}),
        money(&F::diagnosis_fee, {"diagnosis_fee", "flat", unit, "95"}),
        row(shop, &F::markup, {"markup", "on cost", "%", "45 %"}, read_share),
        row(shop, &F::margin, {"margin", "of price", "%", "30 %"}, read_share),
        row(shop, &F::parts_tax, {"parts_tax", "on parts", "%", "8.25 %"}, read_share),
        row(shop, &F::labour_tax, {"labour_tax", "on labour", "%", "0"}, read_share),
        row(shop, &F::emergency, {"emergency", "labour factor of this call", "%", "150 %"}, read_factor),
        row(shop, &F::real_discount_rate, {"real_discount_rate", "a year, without inflation", "%", "3 %"},
            read_share),
        row(shop, &F::nominal_discount_rate, {"nominal_discount_rate", "a year, with inflation", "%", "5 %"},
            read_share),
        row(shop, &F::energy_escalation, {"energy_escalation", "a year", "%", "2 %"}, read_share),
        money(&F::electricity,
              {"electricity", "100 kWh", unit, "15.45", "What do 100 kWh of electricity cost?"}),
        row(shop, &F::prefer_makers,
            {"prefer_makers", "ranked first at equal standing", "", "Inventa; Quorble"}, read_texts),
        row(shop, &F::exclude_makers, {"exclude_makers", "never offered", "", "Nonesuch"}, read_texts),
        row(shop, &F::longest_lead_days, {"longest_lead_days", "the longest wait", "days", "3"}, read_count),
        row(shop, &F::in_stock_only, {"in_stock_only", "only what is on the shelf", "", "no"}, read_yes_no),
    };
}

}  // namespace endbell::inline fields
