// How the trade writes what feeds a building: "230", "120/240", "208Y/120", "240 high leg", "460-3-60".
#include <cmath>
#include <regex>

#include "engine/base/text.hpp"
#include "engine/words/electrical.hpp"
#include "engine/words/write.hpp"

namespace endbell::inline words {

namespace {

using System = Read<SupplySystem>;

constexpr std::string_view supply_expected =
    "a supply such as '230', '120/240', '208Y/120', '480Y/277', '240 high leg' or '460-3-60'";

Voltage nominal(const std::string& figure) {
    return volt(nominal_volts(std::stod(figure)));
}

/// Line to line over line to neutral, by the figures as written: 1.732 of a wye; 120 and 240 are one winding's middle.
bool is_wye_pair(double line, double neutral) {
    return std::abs(line / neutral - std::sqrt(3.0)) < 0.03;
}

System wye(const Folded& words, const std::string& line, const std::string& neutral) {
    if (!is_wye_pair(std::stod(line), std::stod(neutral)))
        return unreadable<SupplySystem>(words, supply_expected);
    return read_as<SupplySystem>(words, {SupplyKind::wye, nominal(line), nominal(neutral), std::nullopt});
}

System phases(const Folded& words, const std::string& figure, bool three, const std::string& hertz_written) {
    SupplySystem system{three ? SupplyKind::three_phase : SupplyKind::single_phase, nominal(figure),
                        std::nullopt, std::nullopt};
    if (!hertz_written.empty()) system.frequency = hertz(std::stod(hertz_written));
    const VoltageClass* known_class = class_of(std::stod(figure));
    if (three && known_class != nullptr && known_class->to_neutral)
        return unreadable<SupplySystem>(words, supply_expected);
    return read_as<SupplySystem>(words, system);
}

/// A name of a system, beyond a bare figure; nothing where the text is none.
std::optional<System> named_system(const Folded& words, const std::string& text) {
    static const std::regex high_leg(
        R"(^(220|230|240) ?v?(olts?)? ?(delta)? ?(,|w/|with)? ?a? ?(high|hi|wild|stinger)[ -]?(leg)?( delta)?$)");
    static const std::regex delta(R"(^(220|230|240) ?v? ?delta$)");
    static const std::regex wye_first(R"(^(\d{3}) ?y ?/ ?(\d{3}) ?v?$)");
    static const std::regex wye_last(R"(^(\d{3}) ?/ ?(\d{3}) ?(y|wye) ?v?$)");
    static const std::regex pair(R"(^(\d{3}) ?v? ?/ ?(\d{3}) ?v?( ?(wye|1 ?ph|single phase))?$)");
    static const std::regex triple(R"(^(\d{3}) ?v? ?[-/ ] ?(1|3) ?(ph|phase)? ?[-/ ] ?(50|60) ?(hz)?$)");
    static const std::regex figure_phase(R"(^(\d{3}) ?v? ?[-/, ]? ?(1|3) ?-?(ph|phase|~)$)");
    static const std::regex phase_figure(R"(^(single|three|1|3)[ -]?(ph|phase),? ?(\d{3}) ?v?$)");
    std::smatch m;
    if (std::regex_match(text, m, high_leg))
        return read_as<SupplySystem>(words, {SupplyKind::high_leg, volt(230), volt(115), std::nullopt});
    if (std::regex_match(text, m, delta))
        return ask<SupplySystem>(words, "has one leg of the delta 208 V to ground (a high leg)?",
                                 {"240 high leg", "240-3-60"});
    if (std::regex_match(text, m, wye_first)) return wye(words, m[1], m[2]);
    if (std::regex_match(text, m, wye_last)) {
        const bool line_first = std::stod(m[1]) > std::stod(m[2]);
        return wye(words, line_first ? m[1] : m[2], line_first ? m[2] : m[1]);
    }
    if (std::regex_match(text, m, pair)) {
        const double low = std::min(std::stod(m[1]), std::stod(m[2])),
                     high = std::max(std::stod(m[1]), std::stod(m[2]));
        if (low == 120 && high == 240)
            return read_as<SupplySystem>(words, {SupplyKind::split, volt(230), volt(115), std::nullopt});
        if (is_wye_pair(high, low)) return wye(words, shortest(high), shortest(low));
        return std::nullopt;
    }
    if (std::regex_match(text, m, triple)) return phases(words, m[1], m[2] == "3", m[4]);
    if (std::regex_match(text, m, figure_phase)) return phases(words, m[1], m[2] == "3", "");
    if (std::regex_match(text, m, phase_figure))
        return phases(words, m[3], m[1] == "3" || m[1] == "three", "");
    return std::nullopt;
}

/// As a building's supply is called: 120 and 240, not a motor plate's 115 and 230.
std::string called(Voltage v) {
    const double volts = v.in(volt);
    for (const auto& [plate, building] :
         {std::pair(115.0, 120.0), {230.0, 240.0}, {460.0, 480.0}, {575.0, 600.0}}) {
        if (volts == plate) return shortest(building);
    }
    return shortest(volts);
}

}  // namespace

System read_supply(const Folded& words) {
    if (is_missing(words) || words.text() == "0") return not_written<SupplySystem>();
    const std::string& text = words.text();
    const bool bare = text.find_first_not_of("0123456789 v") == std::string::npos;
    if (!bare) {
        if (auto named = named_system(words, text)) return *named;
    }
    const Read<std::vector<PlateVolts>> plate = read_plate_volts(words);
    if (spelling_key(words) == "440" || spelling_key(words) == "440v")
        return read_as<SupplySystem>(words, bare_supply(volt(460)));
    if (plate.failed()) return unreadable<SupplySystem>(words, supply_expected);
    if (!plate.reading) return no_value<SupplySystem>(plate);
    const PlateVolts& only = plate.reading->front();
    if (plate.reading->size() == 1 && only.low == only.high)
        return read_as<SupplySystem>(words, bare_supply(only.low));
    std::vector<std::string> readings;
    for (const PlateVolts& v : *plate.reading) {
        readings.push_back(shortest(v.low.in(volt)));
        if (v.high != v.low) readings.push_back(shortest(v.high.in(volt)));
    }
    return ask<SupplySystem>(words, "which of these does the building really have? Measure it under load",
                             readings);
}

std::string write(const SupplySystem& system) {
    std::string line = called(system.line);
    const std::string hertz_written = system.frequency ? "-" + shortest(system.frequency->in(hertz)) : "";
    switch (system.kind) {
        case SupplyKind::bare:
            return write(system.line);
        case SupplyKind::split:
            return called(*system.neutral) + "/" + line;
        case SupplyKind::wye:
            return line + "Y/" + called(*system.neutral);
        case SupplyKind::high_leg:
            return line + " high leg";
        case SupplyKind::single_phase:
            return shortest(system.line.in(volt)) + (hertz_written.empty() ? " 1ph" : "-1" + hertz_written);
        case SupplyKind::three_phase:
            return shortest(system.line.in(volt)) + (hertz_written.empty() ? " 3ph" : "-3" + hertz_written);
    }
    return line;
}

}  // namespace endbell::inline words
