#include "engine/words/air.hpp"

#include <algorithm>

#include "engine/base/text.hpp"

namespace endbell::inline words {

namespace {

constexpr std::string_view expected_rise = "a temperature rise, such as '40', '40-70' or '22 C'";
constexpr Unit<HeatDimension> thousand_btu{1000.0};

std::string text_of(double value, std::string_view unit) {
    return shortest(value) + " " + std::string(unit);
}

}  // namespace

Read<Airflow> read_airflow(const Folded& words) {
    const std::string& text = words.text();
    const std::size_t slash = text.find("/ton");
    const std::size_t per = slash == std::string::npos ? text.find(" per ton") : slash;
    if (per != std::string::npos && measure(text.substr(0, per))) {
        return ask<Airflow>(words, "airflow for a ton of cooling: how much is it in all?", {});
    }
    static const Scale<AirflowDimension> scale = [] {
        Scale<AirflowDimension> s{"an airflow, such as '1200 CFM' or '566 l/s'",
                                  cfm,
                                  {{"cfm", cfm},
                                   {"ft3/min", cfm},
                                   {"l/s", litre_per_second},
                                   {"lps", litre_per_second},
                                   {"m3/h", Unit<AirflowDimension>{2.1188800 / 3.6}},
                                   {"m3/hr", Unit<AirflowDimension>{2.1188800 / 3.6}}},
                                  {},
                                  100000,
                                  Nought::a_value};
        s.thousands = true;
        return s;
    }();
    return read_quantity(words, scale);
}

Read<Pressure> read_pressure(const Folded& words) {
    Scale<PressureDimension> scale{
        "a static pressure, such as '.5', '-0.22 in wc' or '125 Pa'",
        inch_water,
        {{"\"", inch_water},
         {"in", inch_water},
         {"wc", inch_water},
         {"\"wc", inch_water},
         {"inwc", inch_water},
         {"inwg", inch_water},
         {"iwc", inch_water},
         {"iwg", inch_water},
         {"\"wg", inch_water},
         {"wg", inch_water},
         {"inh2o", inch_water},
         {"\"h2o", inch_water},
         {"pa", pascal},
         {"kpa", Unit<PressureDimension>{1000.0 / 249.08891}}},
        {"tesp", "esp", "totalstatic", "extstatic", "externalstatic", "static", "sp"},
        10,
        Nought::a_value};
    scale.may_be_negative = true;
    return read_quantity(words, scale);
}

Read<HeatRate> read_cooling(const Folded& words) {
    Scale<HeatDimension> scale{"a cooling capacity, such as '3 ton', '36k' or '36000 Btu/h'",
                               btu_per_hour,
                               {{"t", ton_cooling},
                                {"ton", ton_cooling},
                                {"tons", ton_cooling},
                                {"k", thousand_btu},
                                {"kbtu", thousand_btu},
                                {"kbtu/h", thousand_btu},
                                {"kbtuh", thousand_btu},
                                {"mbh", thousand_btu},
                                {"mbtuh", thousand_btu},
                                {"btu", btu_per_hour},
                                {"btuh", btu_per_hour},
                                {"btu/h", btu_per_hour},
                                {"btu/hr", btu_per_hour},
                                {"kw", kilowatt_heat}},
                               {"cooling"},
                               1e6};
    scale.thousands = true;
    Read<HeatRate> read = read_quantity(words, scale);
    const auto m = measure(words.text());
    if (!m || m->negative || !m->before.empty() || !m->after.empty() || !read.reading) return read;
    const double number = m->number.value;
    if (m->number.leading_zero && words.text().size() == 3) {
        read.reading.value = thousand_btu(number);
        read.reading.origin = Origin::guessed;
        return read;
    }
    if (number <= 25) return read_as<HeatRate>(words, ton_cooling(number));
    if (number >= 6000) return read;
    return ask<HeatRate>(words, "thousands of Btu/h, or something else?",
                         {text_of(number, "kBtu/h") + " (" + text_of(number / 12, "ton") + ")"});
}

Read<HeatRate> read_heat(const Folded& words, HeatSide side) {
    constexpr std::string_view expected = "a heat rate, such as '80 MBH', '80K' or '80000 Btu/h'";
    if (is_missing(words)) return not_written<HeatRate>();
    std::string text = words.text();
    HeatSide said = HeatSide::not_said;
    for (const auto& [word, meaning] :
         {std::pair{" input", HeatSide::input}, std::pair{" output", HeatSide::output},
          std::pair{" in", HeatSide::input}, std::pair{" out", HeatSide::output}}) {
        if (said != HeatSide::not_said || !text.ends_with(word)) continue;
        said = meaning;
        text.resize(text.size() - std::string_view(word).size());
    }
    Scale<HeatDimension> scale{expected,
                               btu_per_hour,
                               {{"k", thousand_btu},
                                {"mbh", thousand_btu},
                                {"mbtuh", thousand_btu},
                                {"mbtu/h", thousand_btu},
                                {"kbtu", thousand_btu},
                                {"kbtuh", thousand_btu},
                                {"kbtu/h", thousand_btu},
                                {"btu", btu_per_hour},
                                {"btuh", btu_per_hour},
                                {"btu/h", btu_per_hour},
                                {"btu/hr", btu_per_hour},
                                {"kw", kilowatt_heat}},
                               {},
                               2e6};
    scale.thousands = true;
    Read<HeatRate> read = read_quantity(words.left_with(text), scale);
    if (!read.reading) return read;
    if (side != HeatSide::not_said && said != HeatSide::not_said && said != side) {
        return ask<HeatRate>(words,
                             "the field says one side of the furnace and the text the other: which is it?",
                             {"input", "output"});
    }
    if (side == HeatSide::not_said && said == HeatSide::not_said) {
        return ask<HeatRate>(words, "input or output?", {"input", "output"});
    }
    const auto m = measure(text);
    if (m->after.empty() && m->number.value < 5000) {
        if (said != HeatSide::not_said && m->number.value <= 500)
            return read_as<HeatRate>(words, thousand_btu(m->number.value));
        return ask<HeatRate>(words, "thousands of Btu/h?", {text_of(m->number.value, "MBH")});
    }
    return read;
}

Read<Temperature> read_temperature(const Folded& words, Degrees bare) {
    constexpr std::string_view expected = "a temperature, such as '60 C' or '140 F'";
    if (is_missing(words)) return not_written<Temperature>();
    const auto m = measure(words.text());
    const auto is_word = [](const std::string& word) {
        return word.empty() || word == "amb" || word == "ambient" || word == "max" || word == "maxamb";
    };
    if (!m || !is_word(m->before)) return unreadable<Temperature>(words, expected);
    std::string unit = m->after;
    for (std::string_view word : {"amb", "ambient", "max"}) {
        if (unit.ends_with(word)) unit.resize(unit.size() - word.size());
    }
    const double number = m->negative ? -m->number.value : m->number.value;
    if (m->number.comma_unclear || m->number.value > 400) return unreadable<Temperature>(words, expected);
    const bool celsius = unit == "c" || unit == "degc" || unit == "celsius" ||
                         (bare == Degrees::celsius && (unit.empty() || unit == "deg"));
    const bool fahrenheit = unit == "f" || unit == "degf" || unit == "fahrenheit" ||
                            (bare == Degrees::fahrenheit && (unit.empty() || unit == "deg"));
    if (celsius) return read_as<Temperature>(words, Temperature::celsius(number));
    if (fahrenheit) return read_as<Temperature>(words, Temperature::fahrenheit(number));
    return unreadable<Temperature>(words, expected);
}

Read<TemperatureRise> read_rise(const Folded& words) {
    return read_quantity(words, Scale<RiseDimension>{expected_rise,
                                                     fahrenheit_degree,
                                                     {{"f", fahrenheit_degree},
                                                      {"degf", fahrenheit_degree},
                                                      {"deg", fahrenheit_degree},
                                                      {"fdegrees", fahrenheit_degree},
                                                      {"cdegrees", celsius_degree},
                                                      {"c", celsius_degree},
                                                      {"degc", celsius_degree},
                                                      {"k", celsius_degree}},
                                                     {"rise", "temprise", "deltat", "dt"},
                                                     200,
                                                     Nought::a_value});
}

RiseRange read_rise_range(const Folded& words) {
    std::string text = words.text();
    if (text.ends_with("rise"))
        text = std::string(trimmed(std::string_view(text).substr(0, text.size() - 4)));
    const std::size_t to = text.find(" to ");
    if (to != std::string::npos) text.replace(to, 4, "-");
    std::replace(text.begin(), text.end(), '/', '-');
    const std::vector<std::string> ends = split(text, '-');
    if (ends.size() != 2)
        return {unreadable<TemperatureRise>(words, expected_rise),
                unreadable<TemperatureRise>(words, expected_rise)};
    const auto high = read_rise(words.left_with(ends[1]));
    // The unit stands behind the second figure and holds for both.
    const auto m = measure(trimmed(ends[1]));
    const auto low = read_rise(words.left_with(std::string(trimmed(ends[0])) + (m ? m->after : "")));
    if (!low.reading || !high.reading || *low.reading > *high.reading) {
        return {unreadable<TemperatureRise>(words, expected_rise),
                unreadable<TemperatureRise>(words, expected_rise)};
    }
    return {read_as<TemperatureRise>(words, *low.reading), read_as<TemperatureRise>(words, *high.reading)};
}

Read<Duration> read_duration(const Folded& words) {
    const Unit<DurationDimension> minute{1.0 / 60};
    return read_quantity(words, Scale<DurationDimension>{"a time, such as '90 s' or '2 min'",
                                                         second,
                                                         {{"s", second},
                                                          {"sec", second},
                                                          {"secs", second},
                                                          {"seconds", second},
                                                          {"second", second},
                                                          {"min", minute},
                                                          {"mins", minute},
                                                          {"minutes", minute},
                                                          {"minute", minute},
                                                          {"h", hour},
                                                          {"hr", hour},
                                                          {"hours", hour},
                                                          {"hour", hour}},
                                                         {},
                                                         1e7,
                                                         Nought::a_value});
}

}  // namespace endbell::inline words
