// Capacitor texts: a value, a value and its volts, or the two values of a dual can.
#include <algorithm>

#include "engine/base/text.hpp"
#include "engine/words/electrical.hpp"

namespace endbell::inline words {

namespace {

constexpr std::string_view expected = "microfarads, such as '5 MFD', '7.5/370' or '45/5 MFD 440V'";

Scale<CapacitanceDimension> farad_scale(Nought nought) {
    // In this trade MF and mF mean microfarad.
    return {expected,
            microfarad,
            {{"mfd", microfarad},
             {"uf", microfarad},
             {"mf", microfarad},
             {"ufd", microfarad},
             {"mike", microfarad},
             {"mikes", microfarad},
             {"microfarad", microfarad},
             {"microfarads", microfarad},
             {"u", microfarad}},
            {"cap", "capacitor", "runcap", "runcapacitor"},
            200,
            nought};
}

bool is_capacitor_voltage(double v) {
    return v == 250 || v == 330 || v == 370 || v == 440 || v == 450 || v == 480;
}

/// Takes a voltage off the end of the text: "5 mfd 370v", "7.5/370", "7.5x440", "45/5 440".
std::optional<Voltage> take_volts(std::string& text) {
    std::string body = text;
    for (std::string_view unit : {"vac", "volts", "volt", "v"}) {
        if (!body.ends_with(unit)) continue;
        body.resize(body.size() - unit.size());
        break;
    }
    body = std::string(trimmed(body));
    std::size_t start = body.size();
    while (start > 0 && body[start - 1] >= '0' && body[start - 1] <= '9') --start;
    if (body.size() - start != 3 || start == 0) return std::nullopt;
    const auto number = whole_number(std::string_view(body).substr(start));
    if (!number || !is_capacitor_voltage(number->value)) return std::nullopt;
    const std::string front(trimmed(std::string_view(body).substr(0, start)));
    const char joint = body[start - 1];
    if (joint != '/' && joint != 'x' && joint != ' ' && joint != '@' && joint != '-') return std::nullopt;
    text = front;
    while (!text.empty() && std::string_view("/x@- ").find(text.back()) != std::string_view::npos)
        text.pop_back();
    return volt(number->value);
}

enum class DualSide { fan, compressor };

/// "45/5 mfd": the smaller is the fan's. Without a unit nobody knows what the pair is.
std::optional<Read<Capacitance>> dual(const Folded& words, const std::string& text,
                                      DualSide side = DualSide::fan) {
    const auto m = measure(text);
    if (!m || !m->before.empty() || m->number.fraction) return std::nullopt;
    const std::string_view rest = std::string_view(text).substr(m->number.length);
    if (rest.empty() || std::string_view("/+-").find(rest.front()) == std::string_view::npos)
        return std::nullopt;
    const auto second = measure(rest.substr(1));
    if (!second || !second->before.empty() || second->number.value >= m->number.value) return std::nullopt;
    const auto scale = farad_scale(Nought::missing);
    if (second->after.empty()) {
        return ask<Capacitance>(words, "a dual capacitor, compressor and fan? Write the fan's side in MFD",
                                {shortest(second->number.value) + " MFD for the fan"});
    }
    const auto* unit = words_detail::unit_named(scale, second->after);
    if (!unit) return std::nullopt;
    return read_as<Capacitance>(words,
                                (*unit)(side == DualSide::fan ? second->number.value : m->number.value));
}

}  // namespace

CapacitorText read_capacitor(const Folded& words) {
    CapacitorText out{not_written<Capacitance>(), not_written<Voltage>()};
    if (is_missing(words)) return out;
    std::string text = words.text();
    if (const auto volts = take_volts(text)) out.volts = read_as<Voltage>(words, *volts);
    if (auto pair = dual(words, text)) {
        out.farads = *pair;
        return out;
    }
    out.farads = read_quantity(words.left_with(text), farad_scale(Nought::missing));
    return out;
}

Read<Capacitance> read_capacitance(const Folded& words) {
    return read_capacitor(words).farads;
}

Read<Capacitance> compressor_side(const Folded& words) {
    if (is_missing(words)) return not_written<Capacitance>();
    std::string text = words.text();
    take_volts(text);
    const auto pair = dual(words, text, DualSide::compressor);
    return pair && pair->reading ? *pair : not_written<Capacitance>();
}

Read<Capacitance> read_compressor_capacitance(const Folded& words) {
    Read<Capacitance> pair = compressor_side(words);
    return pair.reading.raw.empty() ? read_capacitance(words) : pair;
}

Read<Capacitance> read_metered_capacitance(const Folded& words) {
    return read_quantity(words, farad_scale(Nought::a_value));
}

}  // namespace endbell::inline words
