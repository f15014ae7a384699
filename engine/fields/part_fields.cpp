#include "engine/fields/part_fields.hpp"

#include <algorithm>
#include <array>
#include <deque>

#include "engine/base/ensure.hpp"
#include "engine/base/text.hpp"
#include "engine/facts/rating.hpp"
#include "engine/fields/bytes.hpp"
#include "engine/fields/part_columns.hpp"

namespace endbell::inline fields {

namespace {

using bytes::append;
using bytes::as_number;
using bytes::from_number;
using bytes::number_at;

/// Values that may be unknown, written one behind the other and added at once.
template <std::size_t most>
class Written {
  public:
    template <class T>
    void add(const std::optional<T>& value) {
        room_[size_++] = value ? '\1' : '\0';
        if (!value) return;
        const auto number = bytes::of(as_number(*value));
        std::copy(number.begin(), number.end(), room_.begin() + static_cast<std::ptrdiff_t>(size_));
        size_ += number.size();
    }
    void append_to(std::string& bytes) const { bytes.append(room_.data(), size_); }

  private:
    std::array<char, 9 * most> room_{};
    std::size_t size_ = 0;
};
template <class T>
std::optional<T> optional_at(std::string_view bytes, std::size_t& at) {
    ensure(at < bytes.size(), "a value says whether it is stated");
    if (bytes[at++] == '\0') return std::nullopt;
    at += 8;
    return from_number<T>(number_at(bytes, at - 8));
}

// -- ratings: one is in use whatever the job says; of several, the job decides by volts, power and speed.

void append(std::string& bytes, const Rating& r) {
    Written<6> all;
    all.add(r.volts ? std::optional(r.volts->low) : std::nullopt);
    all.add(r.volts ? std::optional(r.volts->high) : std::nullopt);
    all.add(r.power);
    all.add(r.speed);
    all.add(r.amps);
    all.add(std::optional(r.selection));
    all.append_to(bytes);
}

Rating rating_at(std::string_view bytes, std::size_t& at) {
    Rating r;
    const auto low = optional_at<Voltage>(bytes, at);
    const auto high = optional_at<Voltage>(bytes, at);
    if (low && high) r.volts = PlateVolts{*low, *high};
    r.power = optional_at<Power>(bytes, at);
    r.speed = optional_at<Speed>(bytes, at);
    r.amps = optional_at<Current>(bytes, at);
    r.selection = *optional_at<VoltageSelection>(bytes, at);
    return r;
}

/// `of_one` keeps what matters of a single rating. What the first one keeps goes in front, so that motors of one
/// and of several ratings that are alike in it sort together.
void take_ratings(const Part& p, std::string& bytes, Rating (*of_one)(const Rating&), bool amps) {
    if (!p.motor || p.motor->ratings.empty()) return;
    const std::vector<Rating>& all = p.motor->ratings;
    append(bytes, of_one(all.front()));
    for (const Rating& r : all) {
        Rating kept = all.size() == 1 ? of_one(r) : r;
        if (!amps) kept.amps.reset();
        append(bytes, kept);
    }
}

void put_ratings(std::string_view bytes, Part& p) {
    if (!p.motor || bytes.empty()) return;
    std::size_t at = 0;
    rating_at(bytes, at);  // only there for the order
    while (at < bytes.size()) p.motor->ratings.push_back(rating_at(bytes, at));
}

// Modules have one power and one voltage of their own.
void take_power(const Part& p, std::string& bytes) {
    if (p.module && p.module->power) append(bytes, as_number(*p.module->power));
    if (p.module) return;
    take_ratings(
        p, bytes,
        [](const Rating& r) {
            Rating k;
            k.power = r.power;
            return k;
        },
        false);
}
void put_power(std::string_view bytes, Part& p) {
    if (p.module && !bytes.empty()) p.module->power = from_number<Power>(number_at(bytes, 0));
    put_ratings(bytes, p);
}

void take_volts(const Part& p, std::string& bytes) {
    if (p.module && p.module->volts) {
        append(bytes, as_number(p.module->volts->low));
        append(bytes, as_number(p.module->volts->high));
    }
    if (p.module) return;
    take_ratings(
        p, bytes,
        [](const Rating& r) {
            Rating k;
            k.volts = r.volts;
            k.selection = r.selection;
            return k;
        },
        false);
}
void put_volts(std::string_view bytes, Part& p) {
    if (p.module && !bytes.empty())
        p.module->volts =
            PlateVolts{from_number<Voltage>(number_at(bytes, 0)), from_number<Voltage>(number_at(bytes, 8))};
    put_ratings(bytes, p);
}

void take_speed(const Part& p, std::string& bytes) {
    take_ratings(
        p, bytes,
        [](const Rating& r) {
            Rating k;
            k.speed = r.speed;
            return k;
        },
        false);
}
void take_amps(const Part& p, std::string& bytes) {
    take_ratings(
        p, bytes,
        [](const Rating& r) {
            Rating k;
            k.amps = r.amps;
            return k;
        },
        true);
}

// -- the rest, one by one

/// Of a family, only whether it is electronic: what several rules ask.
void take_electronic(const Part& p, std::string& bytes) {
    if (p.motor && p.motor->family) bytes = is_electronic(*p.motor->family) ? "\2" : "\1";
}
void put_electronic(std::string_view bytes, Part& p) {
    if (!bytes.empty())
        p.motor->family = bytes.front() == '\2' ? Family::constant_torque : Family::capacitor_run;
}

void take_kind(const Part& p, std::string& bytes) {
    bytes.push_back(static_cast<char>(p.kind));
}
void put_kind(std::string_view bytes, Part& p) {
    ensure(bytes.size() == 1, "a kind is one byte");
    p.kind = static_cast<PartKind>(bytes.front());
    if (p.kind == PartKind::motor) p.motor.emplace();
    if (p.kind == PartKind::module) p.module.emplace();
}

void take_signal(const Part& p, std::string& bytes) {
    const auto signal = p.motor ? p.motor->signal : p.module ? p.module->signal : std::nullopt;
    if (signal) bytes.push_back(static_cast<char>(*signal));
}
void put_signal(std::string_view bytes, Part& p) {
    if (bytes.empty()) return;
    const auto signal = static_cast<SignalClass>(bytes.front());
    if (p.motor) p.motor->signal = signal;
    if (p.module) p.module->signal = signal;
}

/// Programs are the same when their letters and digits are; one more byte tells an empty one from none.
void take_program(const Part& p, std::string& bytes) {
    const auto add = [&bytes](const std::optional<std::string>& program) {
        if (program) bytes = "\1" + number_key(*program);
    };
    if (p.motor) add(p.motor->program);
    if (p.module) add(p.module->program);
}
void put_program(std::string_view bytes, Part& p) {
    if (bytes.empty()) return;
    if (p.motor) p.motor->program = std::string(bytes.substr(1));
    if (p.module) p.module->program = std::string(bytes.substr(1));
}

/// Frames are the same when their numbers are; one more byte tells one without a number from none.
void take_frame(const Part& p, std::string& bytes) {
    if (!p.motor || !p.motor->frame) return;
    const std::optional<int> number = frame_number(*p.motor->frame);
    bytes = "\1" + (number ? std::to_string(*number) : std::string());
}
void put_frame(std::string_view bytes, Part& p) {
    if (!bytes.empty()) p.motor->frame = std::string(bytes.substr(1));
}

void take_connector(const Part& p, std::string& bytes) {
    if (p.motor && p.motor->connector) bytes = "\1" + *p.motor->connector;
}
void put_connector(std::string_view bytes, Part& p) {
    if (!bytes.empty()) p.motor->connector = std::string(bytes.substr(1));
}

/// Speeds as counted where they are not stated.
void take_speeds(const Part& p, std::string& bytes) {
    if (!p.motor) return;
    if (p.motor->speeds) append(bytes, as_number(*p.motor->speeds));
    if (!p.motor->speeds && !p.motor->taps.empty()) append(bytes, static_cast<double>(p.motor->taps.size()));
}
void put_speeds(std::string_view bytes, Part& p) {
    if (!bytes.empty()) p.motor->speeds = from_number<int>(number_at(bytes, 0));
}

void take_torque(const Part& p, std::string& bytes) {
    std::optional<Torque> most;
    if (p.motor) {
        for (const Tap& tap : p.motor->taps) most = std::max(most, tap.torque);
    }
    if (most) append(bytes, as_number(*most));
}
void put_torque(std::string_view bytes, Part& p) {
    if (bytes.empty()) return;
    Tap tap;
    tap.torque = from_number<Torque>(number_at(bytes, 0));
    p.motor->taps.push_back(tap);
}

void take_run_signal(const Part& p, std::string& bytes) {
    const bool has = p.motor && std::any_of(p.motor->terminals.begin(), p.motor->terminals.end(),
                                            [](const PartTerminal& t) { return t.function == "run signal"; });
    if (has) bytes = "\1";
}
void put_run_signal(std::string_view bytes, Part& p) {
    if (!bytes.empty()) p.motor->terminals.push_back({"", "run signal", ""});
}

/// What the index keeps otherwise than column by column: what modules have too, what is counted where it is not stated,
/// and rows of other tables. A field stands behind the column of its name, or at the end.
std::vector<PartField> kept_by_hand() {
    PartField rotation = kept_whole<&Motor::rotation>();
    rotation.column = "motors.rotation";
    return {rotation,
            {"motors.speeds", take_speeds, put_speeds},
            {"motors.signal", take_signal, put_signal},
            {"motors.program", take_program, put_program},
            {"motors.frame", take_frame, put_frame},
            {"motors.connector", take_connector, put_connector},
            {"motors.family electronic", take_electronic, put_electronic},
            {"motor_ratings.volts", take_volts, put_volts},
            {"motor_ratings.power_hp", take_power, put_power},
            {"motor_ratings.speed_rpm", take_speed, put_ratings},
            {"motor_ratings.amps", take_amps, put_ratings},
            {"taps.torque_ozft", take_torque, put_torque},
            {"terminals.function", take_run_signal, put_run_signal}};
}

std::vector<PartField> all_fields() {
    static std::deque<std::string> names;  // which the fields point to
    std::vector<PartField> fields{{"parts.kind", take_kind, put_kind}};
    std::vector<PartField> by_hand = kept_by_hand();
    for (const RowColumn<Motor>& column : motor_columns()) {
        const std::string name = "motors." + std::string(column.name);
        const auto own = std::find_if(by_hand.begin(), by_hand.end(),
                                      [&](const PartField& f) { return f.column == name; });
        if (own != by_hand.end()) {
            fields.push_back(*own);
            by_hand.erase(own);
        } else if (column.index) {
            fields.push_back(*column.index);
            fields.back().column = names.emplace_back(name);
        }
    }
    fields.insert(fields.end(), by_hand.begin(), by_hand.end());
    return fields;
}

}  // namespace

const std::vector<PartField>& part_fields() {
    static const std::vector<PartField> all = all_fields();
    return all;
}

int part_field(std::string_view column) {
    const auto& all = part_fields();
    const auto found =
        std::find_if(all.begin(), all.end(), [&](const PartField& f) { return f.column == column; });
    ensure(found != all.end(), "rules look only at fields of part_fields");
    return static_cast<int>(found - all.begin());
}

Part with_only(const std::vector<int>& fields, const Part& part) {
    Part kept;
    std::string bytes;
    for (const int f : fields) {
        const PartField& field = part_fields()[static_cast<std::size_t>(f)];
        bytes.clear();
        field.take(part, bytes);
        field.put(bytes, kept);
    }
    return kept;
}

}  // namespace endbell::inline fields
