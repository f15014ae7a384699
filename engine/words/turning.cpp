#include "engine/words/turning.hpp"

#include <algorithm>
#include <array>
#include <map>

#include "engine/base/text.hpp"

namespace endbell::inline words {

namespace {

constexpr std::string_view expected_speed = "a speed, such as '1075' or '1075 rpm'";

Scale<SpeedDimension> speed_scale(Nought nought) {
    Scale<SpeedDimension> scale{
        expected_speed,
        rpm,
        {{"rpm", rpm}, {"r/min", rpm}, {"rev/min", rpm}, {"1/min", rpm}, {"min-1", rpm}},
        {"speed", "n"},
        5000,
        nought};
    scale.thousands = true;
    return scale;
}

Read<Speed> one_speed(const Folded& words) {
    Read<Speed> read = read_quantity(words, speed_scale(Nought::missing));
    if (read.reading && *read.reading < rpm(100)) return unreadable<Speed>(words, expected_speed);
    return read;
}

Read<Speed> ask_variable(const Folded& words) {
    return ask<Speed>(
        words,
        "a constant-airflow motor, or a speed control in front of a capacitor-run one? Look for a capacitor",
        {"constant airflow", "speed control"});
}

Read<int> ask_five(const Folded& words) {
    return ask<int>(words,
                    "five 24 V taps, or five line-voltage leads? Look for a capacitor with two brown leads",
                    {"24 V taps of an electronic motor", "five leads of a capacitor-run motor"});
}

/// Figures behind a speed that are the supply: "1075/230" is no motor of two speeds.
bool is_supply_figure(Speed speed) {
    static constexpr std::array figures{110, 115, 120, 200, 208, 220, 230, 240, 265, 277, 440, 460, 480, 575};
    return std::any_of(figures.begin(), figures.end(), [&](int figure) { return speed == rpm(figure); });
}

/// "1075/1000/900" or "1050-900-750", falling: one speed a lead.
Read<std::vector<Speed>> falling_list(const Folded& words) {
    std::string text = words.text();
    if (text.ends_with("rpm")) text = std::string(trimmed(std::string_view(text).substr(0, text.size() - 3)));
    std::replace(text.begin(), text.end(), '/', '-');
    std::vector<Speed> list;
    for (const std::string& part : split(text, '-')) {
        const Read<Speed> speed = one_speed(words.left_with(part));
        if (!speed.reading) return unreadable<std::vector<Speed>>(words, expected_speed);
        if (!list.empty() && (*speed.reading >= list.back() || is_supply_figure(*speed.reading)))
            return unreadable<std::vector<Speed>>(words, expected_speed);
        list.push_back(*speed.reading);
    }
    return read_as<std::vector<Speed>>(words, list);
}

}  // namespace

Read<Speed> read_measured_speed(const Folded& words) {
    return read_quantity(words, speed_scale(Nought::a_value));
}

SpeedText read_speed_text(const Folded& words) {
    SpeedText out;
    if (is_missing(words)) return out;
    const std::string& text = words.text();
    const std::string key = spelling_key(words);
    for (std::string_view word : {"variable", "variablespeed", "varspd", "vs", "varspeed"}) {
        if (key != word) continue;
        out.speed = ask_variable(words);
        return out;
    }
    out.speed = one_speed(words);
    if (!out.speed.failed()) return out;
    const auto list = falling_list(words);
    if (list.reading && list.reading->size() > 1) {
        out.speed = read_as<Speed>(words, list.reading->front());
        out.speeds = read_as<int>(words, static_cast<int>(list.reading->size()));
        return out;
    }
    // A rising pair is a span: "300-1300".
    const std::vector<std::string> ends = split(text, '-');
    if (ends.size() == 2 && one_speed(words.left_with(ends[0])).reading &&
        one_speed(words.left_with(ends[1])).reading) {
        out.speed = ask_variable(words);
        return out;
    }
    const std::size_t joint = text.find_first_of("/ ");
    if (joint == std::string::npos) return out;
    const std::string behind(trimmed(std::string_view(text).substr(joint + 1)));
    const Read<Speed> speed = one_speed(words.left_with(text.substr(0, joint)));
    const Read<int> speeds = read_speeds(words.left_with(behind));
    const bool bare = behind.find_first_not_of("0123456789") == std::string::npos;
    if (bare && text[joint] == ' ') return out;
    if (!speed.reading || speeds.failed()) return out;
    out.speed = read_as<Speed>(words, *speed.reading);
    out.speeds = speeds;
    if (bare && (!speeds.reading || *speeds.reading > 3)) {
        out.speeds = ask<int>(words, "speeds, or poles?", {behind + " speeds", behind + " poles"});
    }
    return out;
}

Read<Speed> read_speed(const Folded& words) {
    return read_speed_text(words).speed;
}

Read<int> read_poles(const Folded& words) {
    constexpr std::string_view expected = "the poles: '2', '4', '6', '8', '10' or '12'";
    if (is_missing(words) || words.text() == "0") return not_written<int>();
    std::string key = spelling_key(words);
    for (std::string_view word : {"poles", "pole", "p"}) {
        if (!key.ends_with(word)) continue;
        key.resize(key.size() - word.size());
        break;
    }
    static const std::map<std::string, int, std::less<>> known{
        {"2", 2},   {"4", 4},   {"6", 6},    {"8", 8},   {"10", 10},
        {"12", 12}, {"two", 2}, {"four", 4}, {"six", 6}, {"eight", 8}};
    const auto found = known.find(key);
    return found == known.end() ? unreadable<int>(words, expected) : read_as<int>(words, found->second);
}

Read<int> read_speeds(const Folded& words) {
    constexpr std::string_view expected = "how many speeds are used, such as '3' or '3SPD'";
    if (is_missing(words) || words.text() == "0") return not_written<int>();
    const std::string key = spelling_key(words);
    if (key == "himedlo" || key == "hml" || key == "highmediumlow" || key == "himedlow" || key == "lomedhi")
        return read_as<int>(words, 3);
    if (key == "hilo" || key == "highlow") return read_as<int>(words, 2);
    if (key == "tap1-5" || key == "taps1-5") return ask_five(words);
    static const std::map<std::string, int, std::less<>> counts{
        {"single", 1}, {"one", 1}, {"two", 2}, {"three", 3}, {"four", 4}, {"five", 5},
        {"1", 1},      {"2", 2},   {"3", 3},   {"4", 4},     {"5", 5},    {"6", 6}};
    std::string count = key;
    bool worded = false;
    for (std::string_view word : {"speeds", "speed", "spd", "sp", "taps", "tap", "t", "s"}) {
        if (!count.ends_with(word) || count.size() == word.size()) continue;
        if (counts.find(count.substr(0, count.size() - word.size())) == counts.end()) continue;
        count.resize(count.size() - word.size());
        worded = true;
        break;
    }
    const auto found = counts.find(count);
    if (found == counts.end()) return unreadable<int>(words, expected);
    if (found->second == 5 && worded) return ask_five(words);
    return read_as<int>(words, found->second);
}

Read<Torque> read_torque(const Folded& words) {
    return read_quantity(words, Scale<TorqueDimension>{"a torque, such as '26 oz-ft'",
                                                       ounce_foot,
                                                       {{"oz-ft", ounce_foot},
                                                        {"ozft", ounce_foot},
                                                        {"ft-oz", ounce_foot},
                                                        {"oz-in", Unit<TorqueDimension>{1.0 / 192}},
                                                        {"ozin", Unit<TorqueDimension>{1.0 / 192}},
                                                        {"lb-ft", pound_foot},
                                                        {"lbft", pound_foot},
                                                        {"ft-lb", pound_foot},
                                                        {"ftlb", pound_foot},
                                                        {"nm", newton_metre},
                                                        {"n-m", newton_metre}},
                                                       {},
                                                       2000,
                                                       Nought::a_value});
}

}  // namespace endbell::inline words
