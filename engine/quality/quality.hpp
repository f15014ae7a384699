// engine/quality: what a catalog cannot say, and where it contradicts itself. Data only: words for people are made
// elsewhere.
#pragma once
#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/fields/cell.hpp"
#include "engine/rules/rule.hpp"
#include "engine/units/date.hpp"

namespace endbell::inline quality {

/// A column that is empty where a rule needs it: these parts can never be shown to fit as far as that rule
/// goes.
struct MissingField {
    std::string table;
    std::string column;
    std::string rule;  // id of a matching rule
    std::int64_t missing = 0;
    std::int64_t of = 0;  // parts that the rule concerns
};

/// The kinds are stable words, for tests and for whoever makes sentences of them:
/// - "power": torque times speed against rated power, more than 15 % off
/// - "current": amps more than twice, or less than a third of, the NEC table's for that power and voltage
/// - "frame": the shaft diameter is not the frame's
/// - "capacitor": an electronic motor with a capacitor
/// - "tap torque": a tap with more torque than the motor's rating allows
/// - "rotation": CW or CCW without the end it is viewed from
/// - "zero price": an offer for nothing
/// - "phase": a capacitor beside three phases
/// - "shaft flat": a flat longer than its shaft
/// - "speed and poles": rated speed at or above synchronous speed
/// - "duplicate": two parts of one maker with one number
/// - "dead link": a cross reference, module fit or exclusion that leads to no part
/// - "cycle": supersession that comes back to its start
/// - "stale price": older than limits row price.age on the given day
/// - "no own row": a part without its row in motors, modules or accessories
/// - "no offer": an active part that nobody offers
struct Contradiction {
    std::string kind;
    std::string part_id;
    std::string table;
    std::string column;
    Stored found;
    Stored expected;  // what the other side says, where that is one value
};

struct KindCount {
    std::string kind;
    std::int64_t count = 0;
};

struct QualityOptions {
    std::optional<Date> as_of;         // none: the age of prices is not judged
    std::size_t most_of_a_kind = 100;  // how many are told one by one; all are counted
};

struct QualityReport {
    int generation = 0;
    std::string digest;
    bool whole = true;  // the rows have the digest that was written with them, and SQLite finds no damage
    /// False: the digest is of an older hash, and only the numbers of rows were held against it.
    bool digest_checked = true;
    std::string damage;  // what was found when not
    std::int64_t parts = 0;
    std::vector<MissingField> missing;          // in the order of rules
    std::vector<KindCount> counts;              // kinds that occur, in the order above
    std::vector<Contradiction> contradictions;  // ascending by (kind in the order above, part)
};

/// Throws BadData when the file is no catalog.
QualityReport quality_of(const std::filesystem::path& catalog, const QualityOptions& options = {});

/// What the rules need of a catalog, in their order, column by column.
struct FieldNeed {
    std::string_view rule;
    std::string_view table;
    std::string_view column;
    Concerns of;
    std::string condition;  // the same in SQL over motors; empty: all
};
const std::vector<FieldNeed>& field_needs();

}  // namespace endbell::inline quality
