#include "engine/base/text.hpp"
#include "engine/fields/key_row.hpp"

namespace endbell::inline fields {

namespace {

Read<HeatRate> read_input(const Folded& words) {
    return read_heat(words, HeatSide::input);
}
Read<HeatRate> read_output(const Folded& words) {
    return read_heat(words, HeatSide::output);
}
Read<Temperature> read_air(const Folded& words) {
    return read_temperature(words, Degrees::fahrenheit);
}
Read<int> read_stages(const Folded& words) {
    Read<int> read = read_count(words);
    if (read.reading && *read.reading > 4) return unreadable<int>(words, "stages from 0 to 4");
    return read;
}

Read<Money> read_quote(const FailedUnit& job, const Folded& words) {
    return read_price(words, *currency(job.shop.currency ? *job.shop.currency : "USD"));
}

/// Puts one figure of a row into `value`; what was expected, when it is none or must be above nought and is
/// not.
template <class D>
std::string take_figure(const Read<Quantity<D>>& read, bool above_nought, std::string_view expected,
                        Quantity<D>& value) {
    if (read.failed()) return read.expected;
    if (!read.reading) return std::string(expected);
    value = *read.reading;
    const Quantity<D> nought{};
    return value < nought || (above_nought && value == nought) ? std::string(expected) : "";
}

/// What was expected of a row of four texts, or nothing.
std::string take_row(const std::vector<std::string>& entries, BlowerRow& row) {
    if (entries.size() != 4) return "four entries: cfm, static, rpm, brake hp";
    std::string expected =
        take_figure(read_airflow(fold(entries[0])), true, "an airflow above 0", row.airflow);
    if (expected.empty())
        expected =
            take_figure(read_pressure(fold(entries[1])), false, "a static of 0 or more", row.static_total);
    if (expected.empty())
        expected = take_figure(read_speed(fold(entries[2])), true, "one speed above 0", row.speed);
    if (expected.empty())
        expected =
            take_figure(read_brake_power(fold(entries[3])), true, "a brake horsepower above 0", row.shaft);
    return expected;
}

/// "1200 | 0.50 | 989 | 0.376; ...": rows of cfm, static, rpm and brake horsepower.
Read<std::vector<BlowerRow>> read_blower_table(const Folded& words) {
    using List = std::vector<BlowerRow>;
    if (is_missing(words)) return not_written<List>();
    List list;
    for (const std::string& text : split(words.raw(), ';')) {
        BlowerRow row;
        const std::string expected = take_row(split(text, '|'), row);
        if (!expected.empty())
            return unreadable<List>(words, "in row " + std::to_string(list.size() + 1) + " " + expected);
        list.push_back(row);
    }
    return read_as<List>(words, list);
}

/// "5 kW; 5 kW; 10 kW": the stages in the order in which they come on.
Read<std::vector<Power>> read_electric_stages(const Folded& words) {
    using List = std::vector<Power>;
    constexpr std::string_view expected = "the kilowatts of each stage, such as '5 kW; 5 kW'";
    if (is_missing(words)) return not_written<List>();
    List list;
    for (const std::string& text : split(words.raw(), ';')) {
        const Read<Power> stage = read_electric_heat(fold(text));
        if (!stage.reading || *stage.reading <= watt(0)) return unreadable<List>(words, expected);
        list.push_back(*stage.reading);
    }
    if (list.size() > 6) return unreadable<List>(words, expected);
    return read_as<List>(words, list);
}
// NOLINTNEXTLINE(performance-unnecessary-value-param): the writers of shown() take values
std::string write_electric_stages(std::vector<Power> stages) {
    std::string text;
    for (const Power stage : stages) text += (text.empty() ? "" : "; ") + write(stage.in(kilowatt)) + " kW";
    return text;
}

/// "20x25" in inches, or square inches.
Read<double> read_face(const Folded& words) {
    if (is_missing(words)) return not_written<double>();
    double face = 1;
    const std::vector<std::string> sides = split(lower(words.raw()), 'x');
    for (const std::string& side : sides) {
        const Read<double> length = read_number(fold(side));
        if (!length.reading || *length.reading <= 0)
            return unreadable<double>(words, "inches by inches, such as '20x25', or square inches");
        face *= *length.reading;
    }
    if (sides.size() > 2 || face > 20000)
        return unreadable<double>(words, "inches by inches, such as '20x25', or square inches");
    return read_as<double>(words, face);
}

/// The two keys of a range.
struct RangeOfRise {
    Reading<TemperatureRise> EquipmentReadings::*low;
    Reading<TemperatureRise> EquipmentReadings::*high;
};

/// One end of a range that may be written whole: "40-70" in either key gives both.
JobKey rise_key(JobKey key, const RangeOfRise& ends, bool low) {
    const auto read = key.read;
    key.read = [read, ends, low](FailedUnit& job, const Folded& words, const Place& at) -> std::string {
        RiseRange range = read_rise_range(words);
        if (!range.low.reading) return read(job, words, at);
        Reading<TemperatureRise>& mine = job.equipment.*(low ? ends.low : ends.high);
        Reading<TemperatureRise>& other = job.equipment.*(low ? ends.high : ends.low);
        store(mine, low ? range.low : range.high, Origin::equipment, at);
        if (!other) store(other, low ? range.high : range.low, Origin::equipment, at);
        return "";
    };
    return key;
}

}  // namespace

JobKeys equipment_keys() {
    const GroupOf<EquipmentReadings> plate{"equipment", Origin::equipment, &FailedUnit::equipment};
    using F = EquipmentReadings;
    return {
        row(plate, &F::minimum_circuit_ampacity,
            {"minimum_circuit_ampacity", "MCA on the equipment plate", "A", "23.8",
             "Which minimum circuit ampacity does the equipment's plate say?"},
            read_current),
        row(plate, &F::maximum_overcurrent,
            {"maximum_overcurrent", "MOP on the equipment plate", "A", "40",
             "Which maximum fuse or breaker does the equipment's plate say?"},
            read_current),
        row(plate, &F::fan_amps,
            {"fan_amps", "the fan's full-load amps on the equipment plate", "A", "1.4",
             "Which fan amps does the equipment's plate say?"},
            read_plate_amps),
        row(plate, &F::circuit_amps,
            {"circuit_amps", "what the least of breaker, wire and relay of this motor's circuit carries", "A",
             "15",
             "What do breaker, wire and relay of this motor's circuit carry? Give the least of the three."},
            read_current),
        row(plate, &F::compressor_amps,
            {"compressor_amps", "the compressor's rated-load amps", "A", "17.9",
             "Which compressor amps (RLA) does the equipment's plate say?"},
            read_current),
        row(plate, &F::supply,
            {"supply",
             "what feeds it: a nominal (115, 208, 230, 277, 460, 575) or a system (120/240, 208Y/120, "
             "480Y/277, 240 high leg, 460-3-60)",
             "V", "208Y/120", "Which supply serves the equipment: 115, 208, 230, 277, 460?"},
            read_supply, {40, 20, 0.80, supplies, volts_on_the_plate}),
        row(plate, &F::cooling,
            {"cooling", "total cooling capacity", "tons up to 25, Btu/h from 6000", "3 ton",
             "How many tons of cooling does it serve?"},
            read_cooling),
        row(plate, &F::low_cooling,
            {"low_cooling", "total cooling capacity of the low stage", "tons up to 25, Btu/h from 6000",
             "2 ton", "How many tons does its low stage of cooling give?"},
            read_cooling),
        row(plate, &F::cooling_stages, {"cooling_stages", "0 to 4", "stages", "1"}, read_stages),
        row(plate, &F::heating_stages, {"heating_stages", "0 to 4", "stages", "1"}, read_stages),
        row(plate, &F::heat_input,
            {"heat_input", "of a fuel furnace", "Btu/h", "80 MBH", "Heat input, in Btu/h?"}, read_input),
        row(plate, &F::altitude_input,
            {"altitude_input", "of a fuel furnace, that plate or label gives for this altitude", "Btu/h",
             "64 MBH", "Which heat input does the plate or its label give for this altitude, in Btu/h?"},
            read_input),
        row(plate, &F::heat_output,
            {"heat_output", "of a fuel furnace", "Btu/h", "64000", "Heat output, in Btu/h?"}, read_output),
        row(plate, &F::low_heat_output,
            {"low_heat_output", "of a fuel furnace in its low stage", "Btu/h", "41600",
             "Heat output of the low stage, in Btu/h?"},
            read_output),
        row(plate, &F::efficiency,
            {"efficiency", "heat output over input", "of one; percent above 1", "80 %",
             "Heating efficiency?"},
            read_efficiency),
        rise_key(row(plate, &F::rise_low,
                     {"rise_low", "lowest permitted rise; '40-70' gives both", "F", "40",
                      "Lowest temperature rise on the plate?"},
                     read_rise),
                 {&F::rise_low, &F::rise_high}, true),
        rise_key(
            row(plate, &F::rise_high,
                {"rise_high", "highest permitted rise", "F", "70", "Highest temperature rise on the plate?"},
                read_rise),
            {&F::rise_low, &F::rise_high}, false),
        rise_key(row(plate, &F::low_rise_low,
                     {"low_rise_low", "lowest permitted rise of the low stage; '30-60' gives both", "F", "30",
                      "Lowest temperature rise of the low stage on the plate?"},
                     read_rise),
                 {&F::low_rise_low, &F::low_rise_high}, true),
        rise_key(row(plate, &F::low_rise_high,
                     {"low_rise_high", "highest permitted rise of the low stage", "F", "60",
                      "Highest temperature rise of the low stage on the plate?"},
                     read_rise),
                 {&F::low_rise_low, &F::low_rise_high}, false),
        shown(plate, &F::electric_heat, write_watts,
              row(plate, &F::electric_heat,
                  {"electric_heat", "all elements together", "kW", "10 kW",
                   "How many kilowatts of electric heat?"},
                  read_electric_heat)),
        row(plate, &F::electric_heat_volts,
            {"electric_heat_volts", "volts that the elements' kilowatts are rated at", "V", "240",
             "At which volts are the elements' kilowatts rated: 208 or 240?"},
            read_voltage),
        shown(
            plate, &F::electric_stages, write_electric_stages,
            row(plate, &F::electric_stages,
                {"electric_stages", "each stage of the elements, as they come on", "kW", "5 kW; 5 kW; 10 kW",
                 "How many kilowatts has each stage of the elements, in the order in which they come on?"},
                read_electric_stages)),
        row(plate, &F::heat_least_air,
            {"heat_least_air", "least airflow in heat, as the plate says it for standard air", "CFM",
             "1000 CFM", "Least airflow in heat on the plate?"},
            read_airflow),
        row(plate, &F::static_limit,
            {"static_limit", "maximum external static on the plate", "in wc", "0.5",
             "Highest external static on the plate?"},
            read_pressure),
        row(plate, &F::coil_limit,
            {"coil_limit", "highest static that the coil or the heat exchanger takes", "in wc", "0.6",
             "Highest static that the coil or the heat exchanger takes, by its sheet?"},
            read_pressure),
        row(plate, &F::return_size,
            {"return_size", "face of the return's grille or filter, all together", "square inches", "20x25",
             "How large is the face of the return's grille or filter, in inches?"},
            read_face),
        row(plate, &F::altitude, {"altitude", "above sea level", "ft", "5000 ft", "Altitude above the sea?"},
            read_altitude),
        shown(
            plate, &F::return_air, write_fahrenheit,
            row(plate, &F::return_air, {"return_air", "temperature of the return air", "F", "70"}, read_air)),
        row(plate, &F::remaining_years, {"remaining_years", "how long the equipment will stay", "years", "8"},
            read_number),
        row(plate, &F::blower_table,
            {"blower_table", "rows of this blower's own sheet: cfm, static, rpm, brake hp",
             "cfm, in wc, rpm, hp", "1200 | 0.50 | 989 | 0.376; 1400 | 0.30 | 1010 | 0.45"},
            read_blower_table),
        row(plate, &F::climate, {"climate", "humid, normal or dry: sets cfm a ton", "", "normal"},
            read_climate),
        following("shop.currency",
                  row(plate, &F::replacement_price,
                      {"replacement_price", "a quote for new equipment", "shop.currency", "6400"},
                      Reader<Money>(read_quote))),
    };
}

}  // namespace endbell::inline fields
