// Rows of offers, cross references and labour tasks, whose columns are read together: an amount needs its currency.
#pragma once
#include <cstdint>
#include <optional>

#include "engine/catalog/plain_statement.hpp"
#include "engine/model/catalog.hpp"

namespace endbell::inline catalog {

/// Of (part_id, price, currency, core_credit): asked_price() of them.
std::optional<std::int64_t> read_asked(const PlainStatement& row);
Offer read_offer(const PlainStatement& row);
CrossReference read_reference(const PlainStatement& row);
LabourTask read_labour(const PlainStatement& row);

}  // namespace endbell::inline catalog
