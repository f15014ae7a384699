#include "engine/catalog/row_reader.hpp"

#include <charconv>

#include "engine/base/text.hpp"
#include "engine/model/rotation.hpp"
#include "engine/words/plain.hpp"

namespace endbell::inline catalog {

namespace {

constexpr int corrupt = 11;  // SQLITE_CORRUPT

double number_in(std::string_view text) {
    double value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error != std::errc() || end != text.data() + text.size()) RowReader::damaged(text);
    return value;
}

/// A rotation without its viewing end is not known: only a reversible motor needs none.
std::optional<Rotation> rotation_of(std::optional<std::string_view> turned,
                                    std::optional<std::string_view> viewed) {
    if (!turned) return std::nullopt;
    if (*turned == "reversible") return Rotation::reversible;
    if (*turned != "CW" && *turned != "CCW") RowReader::damaged(*turned);
    if (!viewed) return std::nullopt;
    if (*viewed != "shaft end" && *viewed != "lead end") RowReader::damaged(*viewed);
    return normalised(*turned == "CW" ? Spin::cw : Spin::ccw,
                      *viewed == "shaft end" ? ViewedFrom::shaft_end : ViewedFrom::lead_end);
}

/// "1.25" -> 1250.
int thousandths(const std::string& hours) {
    const std::size_t point = hours.find('.');
    std::string digits = hours.substr(0, point) + (point == std::string::npos ? "" : hours.substr(point + 1));
    const std::size_t places = point == std::string::npos ? 0 : hours.size() - point - 1;
    if (places > 3 || digits.empty() || digits.size() > 6 ||
        digits.find_first_not_of("0123456789") != std::string::npos) {
        RowReader::damaged(hours);
    }
    digits.append(3 - places, '0');
    return std::stoi(digits);
}

/// Zero is no price: nobody sells a part for nothing.
std::optional<Money> amount_of(std::optional<std::string_view> text, const Currency& money,
                               bool zero_is_unknown) {
    if (!text) return std::nullopt;
    const std::optional<Money> amount = read_amount(*text, money);
    if (!amount) RowReader::damaged(*text);
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
    if (!money) RowReader::damaged(code);
    const std::optional<std::string_view> credit = row.maybe_text();
    return {amount_of(price, *money, true), amount_of(credit, *money, false)};
}

}  // namespace

void RowReader::damaged(std::string_view value) {
    throw SQLite::Exception("a value that no import writes: '" + visible(value.substr(0, 40)) + "'", corrupt);
}

std::optional<bool> RowReader::yes_no() {
    const std::optional<std::string_view> written = maybe_text();
    if (!written) return std::nullopt;
    if (*written != "yes" && *written != "no") damaged(*written);
    return *written == "yes";
}

std::optional<PlateVolts> RowReader::volts() {
    const std::optional<std::string_view> written = maybe_text();
    if (!written) return std::nullopt;
    const std::size_t dash = written->find('-');
    const double low = number_in(written->substr(0, dash));
    return plate_volts(low, dash == std::string::npos ? low : number_in(written->substr(dash + 1)));
}

Part read_part(const PlainStatement& statement) {
    RowReader row(statement);
    Part part;
    part.id = row.text();
    const std::optional<PartKind> kind = row.word<PartKind>();
    if (!kind) RowReader::damaged("");
    part.kind = *kind;
    part.maker = row.text();
    part.number = row.text();
    part.status = row.word<PartStatus>().value_or(PartStatus::active);
    part.description = row.maybe_text().value_or("");
    if (part.kind == PartKind::motor) part.motor.emplace();
    if (part.kind == PartKind::module) part.module.emplace();
    if (part.kind == PartKind::accessory) part.accessory.emplace();
    return part;
}

void read_motor(const PlainStatement& statement, Motor& motor) {
    RowReader row(statement);
    row.skip();
    motor.family = row.word<Family>();
    motor.loads = row.words<Load>();
    motor.retrofit_for = row.words<Family>();
    motor.phase = row.maybe_whole();
    motor.frequency = row.quantity(hertz);
    motor.poles = row.maybe_whole();
    const std::optional<std::string_view> turned = row.maybe_text();
    motor.rotation = rotation_of(turned, row.maybe_text());
    motor.double_shaft = row.yes_no();
    motor.shaft_diameter = row.quantity(inch);
    motor.shaft_length = row.quantity(inch);
    motor.shaft_flat = row.quantity(inch);
    motor.shaft_cuttable = row.yes_no();
    motor.body_diameter = row.quantity(inch);
    motor.body_length = row.quantity(inch);
    motor.frame = row.kept_text();
    motor.mount = row.word<Mount>();
    motor.bolt_circle = row.quantity(inch);
    motor.enclosure = row.word<Enclosure>();
    motor.bearing = row.word<Bearing>();
    motor.positions = row.words<ShaftPosition>();
    if (const std::optional<double> ambient = row.number()) motor.ambient = Temperature::celsius(*ambient);
    motor.service_factor = row.number();
    motor.protection = row.word<Protection>();
    motor.capacitor = row.quantity(microfarad);
    motor.capacitor_volts = row.quantity(volt);
    motor.speeds = row.maybe_whole();
    motor.signal = row.word<SignalClass>();
    motor.tap_rule = row.word<TapRule>();
    motor.speed_limit = row.quantity(rpm);
    motor.program = row.kept_text();
    motor.assembly = row.kept_text();
    motor.connector = row.kept_text();
    motor.efficiency = row.number();
    motor.warranty_months = row.maybe_whole();
}

Rating read_rating(const PlainStatement& statement) {
    RowReader row(statement);
    row.skip();
    row.skip();
    Rating rating;
    rating.power = row.quantity(horsepower);
    rating.volts = row.volts();
    rating.amps = row.quantity(ampere);
    rating.speed = row.quantity(rpm);
    rating.selection = row.word<VoltageSelection>().value_or(VoltageSelection::none);
    return rating;
}

Tap read_tap(const PlainStatement& statement) {
    RowReader row(statement);
    row.skip();
    Tap tap;
    tap.number = row.whole();
    tap.label = row.maybe_text().value_or("");
    tap.torque = row.quantity(ounce_foot);
    tap.speed = row.quantity(rpm);
    tap.signal = row.word<SignalClass>();
    tap.off_delay = row.quantity(second);
    return tap;
}

PartTerminal read_terminal(const PlainStatement& statement) {
    RowReader row(statement);
    row.skip();
    PartTerminal terminal;
    terminal.connector = row.text();
    terminal.label = row.text();
    terminal.function = row.text();
    return terminal;
}

void read_module(const PlainStatement& statement, Module& module) {
    RowReader row(statement);
    row.skip();
    module.program = row.kept_text();
    module.volts = row.volts();
    module.signal = row.word<SignalClass>();
    module.power = row.quantity(horsepower);
    module.warranty_months = row.maybe_whole();
}

CureRow read_cure(const PlainStatement& statement) {
    RowReader row(statement);
    row.skip();
    row.skip();
    const std::optional<Cure> what = row.word<Cure>();
    if (!what) RowReader::damaged("");
    CureRow cure;
    cure.cure = *what;
    cure.from = row.quantity(inch);
    cure.to = row.quantity(inch);
    cure.capacitor = row.quantity(microfarad);
    cure.capacitor_volts = row.quantity(volt);
    cure.mount = row.word<Mount>();
    cure.coil = row.quantity(volt);
    cure.power = row.quantity(volt_ampere);
    cure.poles = row.maybe_whole();
    cure.connector_from = row.kept_text();
    cure.connector_to = row.kept_text();
    return cure;
}

std::optional<std::int64_t> read_asked(const PlainStatement& statement) {
    RowReader row(statement);
    row.skip();
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
    offer.stock = row.maybe_whole();
    offer.lead_days = row.maybe_whole();
    offer.as_of = date_of_digits(row.text());
    return offer;
}

CrossReference read_reference(const PlainStatement& statement) {
    RowReader row(statement);
    CrossReference reference;
    reference.old_number = row.text();
    reference.part_id = row.text();
    const std::optional<Relation> relation = row.word<Relation>();
    if (!relation) RowReader::damaged("");
    reference.relation = *relation;
    reference.source = row.text();
    return reference;
}

LabourTask read_labour(const PlainStatement& statement) {
    RowReader row(statement);
    LabourTask task;
    task.id = row.text();
    task.thousandth_hours = thousandths(row.text());
    task.source = row.text();
    return task;
}

}  // namespace endbell::inline catalog
