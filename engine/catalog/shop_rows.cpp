#include "engine/catalog/shop_rows.hpp"

#include "engine/words/plain.hpp"

namespace endbell::inline catalog {

namespace {

/// "1.25" -> 1250.
int thousandths(const RowReader& row, const std::string& hours) {
    const std::size_t point = hours.find('.');
    std::string digits = hours.substr(0, point) + (point == std::string::npos ? "" : hours.substr(point + 1));
    const std::size_t places = point == std::string::npos ? 0 : hours.size() - point - 1;
    if (places > 3 || digits.empty() || digits.size() > 6 ||
        digits.find_first_not_of("0123456789") != std::string::npos) {
        row.damaged(hours);
    }
    digits.append(3 - places, '0');
    return std::stoi(digits);
}

/// Zero is no price: nobody sells a part for nothing.
std::optional<Money> amount_of(const RowReader& row, std::optional<std::string_view> text,
                               const Currency& money, bool zero_is_unknown) {
    if (!text) return std::nullopt;
    const std::optional<Money> amount = read_amount(*text, money);
    if (!amount) row.damaged(*text);
    if (zero_is_unknown && amount->minor() == 0) return std::nullopt;
    return amount;
}

struct Amounts {
    std::optional<Money> price, core_credit;
};

/// Price, currency and core credit.
Amounts read_amounts(RowReader& row) {
    const std::optional<std::string_view> price = row.maybe_text();
    const std::string_view code = row.maybe_text().value_or("");
    const std::optional<Currency> money = currency(code);
    if (!money) row.damaged(code);
    const std::optional<std::string_view> credit = row.maybe_text();
    return {amount_of(row, price, *money, true), amount_of(row, credit, *money, false)};
}

}  // namespace

std::optional<std::int64_t> read_asked(const PlainStatement& statement) {
    RowReader row(statement);
    row.go_to(1);  // behind the part's id
    const Amounts amounts = read_amounts(row);
    return asked_price(amounts.price, amounts.core_credit);
}

Offer read_offer(const PlainStatement& statement) {
    RowReader row(statement);
    Offer offer;
    offer.part_id = row.text();
    offer.branch = row.text();
    offer.seller = row.text();
    const Amounts amounts = read_amounts(row);
    offer.price = amounts.price;
    offer.core_credit = amounts.core_credit;
    row.take(offer.stock);
    row.take(offer.lead_days);
    offer.as_of = date_of_digits(row.text());
    return offer;
}

CrossReference read_reference(const PlainStatement& statement) {
    RowReader row(statement);
    CrossReference reference;
    reference.old_number = row.text();
    reference.part_id = row.text();
    row.take(reference.relation);
    reference.source = row.text();
    return reference;
}

LabourTask read_labour(const PlainStatement& statement) {
    RowReader row(statement);
    LabourTask task;
    task.id = row.text();
    task.thousandth_hours = thousandths(row, row.text());
    task.source = row.text();
    return task;
}

}  // namespace endbell::inline catalog
