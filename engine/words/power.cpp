#include "engine/words/power.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

#include "engine/base/text.hpp"

namespace endbell::inline words {

namespace {

constexpr std::string_view expected = "horsepower, such as '1/2', '.5 HP' or '373 W'";
constexpr Unit<PowerDimension> plate_watt{745.69987 / 746.0};  // nameplates count 746 W a horsepower
constexpr Unit<PowerDimension> plate_kilowatt{745.69987 / 0.746};

/// How near two figures are, as a share of the standard one.
double off_by(double hp, double standard) {
    return std::abs(hp - standard) / standard;
}

double nearest_standard(double hp) {
    const auto& ladder = power_ladder();
    return *std::min_element(ladder.begin(), ladder.end(),
                             [&](double a, double b) { return off_by(hp, a) < off_by(hp, b); });
}

/// "half horse", "third", "three quarter hp": the spoken sizes.
std::optional<double> spoken(const Folded& words) {
    static constexpr std::array<std::pair<std::string_view, double>, 9> sizes{{{"half", 1.0 / 2},
                                                                               {"third", 1.0 / 3},
                                                                               {"quarter", 1.0 / 4},
                                                                               {"fifth", 1.0 / 5},
                                                                               {"sixth", 1.0 / 6},
                                                                               {"eighth", 1.0 / 8},
                                                                               {"tenth", 1.0 / 10},
                                                                               {"threequarter", 3.0 / 4},
                                                                               {"threequarters", 3.0 / 4}}};
    std::string key = spelling_key(words);
    for (std::string_view unit : {"horsepower", "horse", "hp"}) {
        if (key.ends_with(unit)) key.resize(key.size() - unit.size());
    }
    for (std::string_view article : {"one", "a"}) {
        if (key.starts_with(article)) key.erase(0, article.size());
    }
    for (const auto& [word, hp] : sizes) {
        if (key == word) return hp;
    }
    return std::nullopt;
}

/// "3/2", "5/4 hp": a figure over a smaller one, as one rating.
std::string without_improper_fraction(const std::string& text) {
    const std::size_t slash = text.find('/');
    if (slash != 1 || text.size() < 3) return text;
    const int top = text[0] - '0';
    const int bottom = text[2] - '0';
    const bool more_digits = text.size() > 3 && text.find_first_of("0123456789./", 3) == 3;
    if (more_digits || top > 9 || bottom < 2 || bottom > 4 || top <= bottom) return text;
    return shortest(static_cast<double>(top) / bottom) + text.substr(3);
}

/// Slashes join whole words of a plate too. What they join is one motor's ratings when each is a standard
/// one and the highest at most five times the lowest: in "2.5/1/4 hp" the 2.5 is amps. Common practice.
bool is_one_motor(const std::vector<Power>& high_to_low) {
    const bool standard = std::all_of(high_to_low.begin(), high_to_low.end(), [](Power power) {
        const double hp = power.in(horsepower);
        return off_by(hp, nearest_standard(hp)) < 1e-9;
    });
    return standard && high_to_low.front() <= high_to_low.back() * 5.01;
}

/// Watts as a standard rating, or a question.
Read<Power> from_watts(const Folded& words, Power shaft) {
    // A standard rating is within 2 % of its own watts (1/3 hp: 248.7 W, printed 250); other figures are as
    // likely input.
    const double hp = shaft.in(horsepower);
    const double standard = nearest_standard(hp);
    if (off_by(hp, standard) < 0.02) return read_as<Power>(words, horsepower(standard));
    return ask<Power>(
        words, "output watts at the shaft, or input watts from the line?",
        {"output: " + shortest(std::round(hp * 1000) / 1000) + " hp", "input: the horsepower is not known"});
}

}  // namespace

const std::vector<double>& power_ladder() {
    static const std::vector<double> hp{1.0 / 60, 1.0 / 50, 1.0 / 40, 1.0 / 30, 1.0 / 25, 1.0 / 20, 1.0 / 15,
                                        1.0 / 12, 1.0 / 10, 1.0 / 8,  1.0 / 7,  1.0 / 6,  1.0 / 5,  1.0 / 4,
                                        1.0 / 3,  2.0 / 5,  1.0 / 2,  3.0 / 4,  1.0,      1.5,      2.0,
                                        3.0,      5.0,      7.5,      10.0};
    return hp;
}

Power snapped(Power power) {
    const double hp = power.in(horsepower);
    const double standard = nearest_standard(hp);
    // Just inside 5 %: 0.15 lies exactly that far above 1/7 and stays 0.15.
    return off_by(hp, standard) < 0.0499 ? horsepower(standard) : power;
}

Read<Power> read_power(const Folded& words) {
    if (is_missing(words)) return not_written<Power>();
    if (is_spreadsheet_damage(words)) return ask_spreadsheet<Power>(words);
    std::string text = words.text();
    if (const auto hp = spoken(words)) return read_as<Power>(words, horsepower(*hp));
    for (std::string_view word : {"output", "shaft"}) {
        const std::size_t at = text.find(word);
        if (at != std::string::npos) text.erase(at, word.size());
    }
    text = without_improper_fraction(text);
    const auto m = measure(text);
    if (m && m->after.empty() && is_spreadsheet_day(m->number.value)) return ask_spreadsheet<Power>(words);
    if (m && m->number.dashed_mixed) {
        const double whole = std::floor(m->number.value);
        return ask<Power>(words, "one motor of this power, or a range of powers?",
                          {shortest(m->number.value) + " hp", "from " + shortest(whole) + " hp to " +
                                                                  shortest(m->number.value - whole) + " hp"});
    }
    static const Scale<PowerDimension> scale{expected,
                                             horsepower,
                                             {{"hp", horsepower},
                                              {"horsepower", horsepower},
                                              {"horse", horsepower},
                                              {"w", plate_watt},
                                              {"watt", plate_watt},
                                              {"watts", plate_watt},
                                              {"kw", plate_kilowatt}},
                                             {},
                                             20};
    Read<Power> read = read_quantity(words.left_with(text), scale);
    if (!read.reading) return read;
    if (m->after.find('w') != std::string::npos) return from_watts(words, *read.reading);
    read.reading.value = snapped(*read.reading);
    return read;
}

Read<std::vector<Power>> read_powers(const Folded& words) {
    using List = std::vector<Power>;
    if (is_missing(words)) return not_written<List>();
    std::string text = words.text();
    for (std::string_view word : {" thru ", " through ", " to "}) {
        const std::size_t at = text.find(word);
        if (at != std::string::npos) text.replace(at, word.size(), ";");
    }
    const Read<Power> one = read_power(words);
    if (one.reading && without_improper_fraction(text) != text) {
        return ask<List>(words, "one rating written as a fraction, or two ratings?",
                         {shortest(one.reading->in(horsepower)) + " hp",
                          text.substr(0, 1) + " hp and " + text.substr(2, 1) + " hp"});
    }
    if (!one.failed()) {
        if (!one.reading) return no_value<List>(one);
        return read_as<List>(words, List{*one.reading});
    }
    List list;
    for (const std::string& part : cut(text, "-;/,")) {
        const Read<Power> power = read_power(words.left_with(part));
        if (!power.reading) return unreadable<List>(words, expected);
        list.push_back(*power.reading);
    }
    // A whole number before a fraction is nearer to "one and a half" than to a list.
    std::sort(list.begin(), list.end(), [](Power a, Power b) { return b < a; });
    list.erase(std::unique(list.begin(), list.end()), list.end());
    const bool slashed = cut(text, "/").size() > 1;
    if (list.size() > 6 || (slashed && !is_one_motor(list))) return unreadable<List>(words, expected);
    return read_as<List>(words, list);
}

Read<Power> read_brake_power(const Folded& words) {
    return read_quantity(words, Scale<PowerDimension>{"brake horsepower, such as '0.376' or '0.45 hp'",
                                                      horsepower,
                                                      {{"hp", horsepower}, {"bhp", horsepower}},
                                                      {},
                                                      20});
}

Read<Power> read_watts(const Folded& words) {
    static const Scale<PowerDimension> scale = [] {
        Scale<PowerDimension> s{"watts of electrical input, such as '420 W'",
                                watt,
                                {{"w", watt}, {"watt", watt}, {"watts", watt}, {"kw", kilowatt}},
                                {},
                                50000,
                                Nought::a_value};
        s.thousands = true;
        return s;
    }();
    return read_quantity(words, scale);
}

Read<Power> read_electric_heat(const Folded& words) {
    const std::string key = spelling_key(words);
    const auto m = measure(words.text());
    if (m && (m->after == "banks" || m->after == "bank" || m->after == "strips" || m->after == "elements")) {
        return ask<Power>(words, "how many kW in all do the elements make?", {});
    }
    if (m && m->after.empty() && m->number.value > 100) {
        return ask<Power>(words, "watts or kilowatts?", {key + " W", key + " kW"});
    }
    return read_quantity(words, Scale<PowerDimension>{"electric heat, such as '10 kW'",
                                                      kilowatt,
                                                      {{"kw", kilowatt}, {"w", watt}, {"watts", watt}},
                                                      {"strip", "strips", "heat", "heater"},
                                                      200});
}

}  // namespace endbell::inline words
