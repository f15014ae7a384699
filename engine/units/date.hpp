// A day of the calendar.
#pragma once
#include <chrono>

namespace endbell::inline units {

/// It may be one that no calendar has, 30 February, as somebody wrote it: ok() tells.
using Date = std::chrono::year_month_day;

constexpr Date date_of(int year, unsigned month, unsigned day) {
    return {std::chrono::year(year), std::chrono::month(month), std::chrono::day(day)};
}

}  // namespace endbell::inline units
