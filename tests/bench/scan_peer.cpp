// A plain scan of an array, as a careful programmer writes it: the same questions as to the other peers, answered by one
// loop over structs of 64 bytes, a cache line each.
//
// usage: bench_scan WHAT FOLDER      reads FOLDER/flat.csv and FOLDER/questions.json of questions.py
//   living   one line a job "count id id ...": how many parts nothing ends, and the 20 cheapest of them
//   tallies  one line a job "rule=parts/only ...": how many parts fail each rule, and only it
// Then "time scan MEDIAN P95" or "time scan-tallies MEDIAN P95", in microseconds: over the first half of the jobs, the
// best of three rounds.
#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <bit>
#include <chrono>
#include <cstdint>
#include <cstdlib>
#include <cstring>
#include <fstream>
#include <limits>
#include <map>
#include <nlohmann/json.hpp>
#include <string>
#include <vector>

#include "engine/base/text.hpp"

namespace {

using Word = std::int8_t;  // a text of flat.csv by its number, a small whole number, or a truth
constexpr Word unknown = -1;
constexpr Word never = -2;  // equal to no field: what a job does not ask
constexpr float not_a_number =
    std::numeric_limits<float>::quiet_NaN();  // beside it every comparison is false
constexpr std::uint32_t no_price = std::numeric_limits<std::uint32_t>::max();

/// What is asked first stands first.
struct Part {
    float low, high, low2, high2, rpm, torque, diameter, body, ambient;
    std::uint32_t cents;
    std::array<char, 8> id;
    Word size, load, poles, family, module, retrofit, phase, rotation, double_shaft, mount, enclosed;
    std::array<Word, 4> stands;  // in any position, shaft up, down, horizontal
};
static_assert(sizeof(Part) == 64);

class Words {
  public:
    Words() {
        for (const char* word : {"capacitor run", "constant torque", "constant airflow", "shaded pole",
                                 "three phase", "module", "no", "lugs"})
            number(word);
    }
    Word number(const std::string& word) {
        if (word.empty()) return unknown;
        return numbers_.emplace(word, static_cast<Word>(numbers_.size())).first->second;
    }

  private:
    std::map<std::string, Word> numbers_;
};
constexpr Word capacitor_run = 0, constant_torque = 1, no = 6, lugs = 7;  // in the order given above

/// The conditions of one job.
struct Ask {
    float volts, under, over, speed, off_speed;
    float least_torque = not_a_number, most_diameter = not_a_number, most_body = not_a_number,
          least_ambient = not_a_number;
    Word least_size = unknown, most_size = 126;
    Word load, poles;
    Word wrong_rotation = never, wrong_ends = never, wrong_mount = never, wrong_enclosed = never,
         wrong_stand = never;
    std::size_t point = 0;
};

// One function a rule: true of the parts that fail it. Unknown never fails.
bool voltage(const Part& p, const Ask& a) {
    return !((p.low * a.under <= a.volts && p.high * a.over >= a.volts) ||
             (p.low2 * a.under <= a.volts && p.high2 * a.over >= a.volts));
}
bool power(const Part& p, const Ask& a) {
    if (p.size < a.least_size) return true;
    if (p.family == constant_torque) return p.torque < a.least_torque;
    return p.size > a.most_size + (p.module == 1 ? 0 : 1);
}
bool speed(const Part& p, const Ask& a) {
    return p.poles != unknown && std::abs(p.rpm - a.speed) > a.off_speed;
}
bool load(const Part& p, const Ask& a) {
    return p.load != unknown && p.load != a.load;
}
bool poles(const Part& p, const Ask& a) {
    return p.poles != unknown && p.poles != a.poles;
}
bool body(const Part& p, const Ask& a) {
    return p.body > a.most_body;
}
bool diameter(const Part& p, const Ask& a) {
    return p.diameter > a.most_diameter;
}
bool family(const Part& p, const Ask&) {
    return !(p.family == capacitor_run || (p.family == constant_torque && p.retrofit == 1));
}
bool ambient(const Part& p, const Ask& a) {
    return p.ambient < a.least_ambient;
}
bool position(const Part& p, const Ask& a) {
    return p.stands[0] == a.wrong_stand && p.stands[a.point] == a.wrong_stand;
}
bool enclosure(const Part& p, const Ask& a) {
    return p.enclosed == a.wrong_enclosed;
}
bool rotation(const Part& p, const Ask& a) {
    return p.rotation == a.wrong_rotation;
}
bool double_shaft(const Part& p, const Ask& a) {
    return p.double_shaft == a.wrong_ends;
}
bool mount(const Part& p, const Ask& a) {
    return p.mount == a.wrong_mount;
}
bool module_part(const Part& p, const Ask&) {
    return p.module == 1;
}
bool phase(const Part& p, const Ask&) {
    return p.phase != unknown && p.phase != 1;
}

constexpr std::array rule_names{"supply-voltage", "power",          "speed",        "load",    "poles",
                                "body-diameter",  "shaft-diameter", "family",       "ambient", "position",
                                "enclosure",      "rotation",       "double-shaft", "mount",   "signal-class",
                                "wanted-part",    "phase"};

/// The rules in the order in which they fail most often in the invented catalog: the first that fails ends a part.
bool lives(const Part& p, const Ask& a) {
    return !(voltage(p, a) || power(p, a) || speed(p, a) || load(p, a) || poles(p, a) || body(p, a) ||
             diameter(p, a) || family(p, a) || ambient(p, a) || position(p, a) || enclosure(p, a) ||
             rotation(p, a) || double_shaft(p, a) || mount(p, a) || module_part(p, a) || phase(p, a));
}

/// Bit i: it fails rule_names[i].
std::uint32_t failed(const Part& p, const Ask& a) {
    const bool no_motor = module_part(p, a);
    const std::array fails{voltage(p, a),   power(p, a),    speed(p, a),        load(p, a),    poles(p, a),
                           body(p, a),      diameter(p, a), family(p, a),       ambient(p, a), position(p, a),
                           enclosure(p, a), rotation(p, a), double_shaft(p, a), mount(p, a),   no_motor,
                           no_motor,        phase(p, a)};
    static_assert(fails.size() == rule_names.size());
    std::uint32_t bits = 0;
    for (std::size_t i = 0; i < fails.size(); ++i) bits |= static_cast<std::uint32_t>(fails[i]) << i;
    return bits;
}

struct Living {
    std::int64_t count = 0;
    std::vector<const Part*> cheapest;
};

bool cheaper(const Part* a, const Part* b) {
    return a->cents != b->cents ? a->cents < b->cents : a->id < b->id;
}

Living living(const std::vector<Part>& parts, const Ask& ask) {
    constexpr std::size_t most = 20;
    Living found;
    std::vector<const Part*>& best = found.cheapest;
    best.reserve(most + 1);
    for (const Part& p : parts) {
        if (!lives(p, ask)) continue;
        ++found.count;
        if (best.size() == most && !cheaper(&p, best.back())) continue;
        best.insert(std::upper_bound(best.begin(), best.end(), &p, cheaper), &p);
        if (best.size() > most) best.pop_back();
    }
    return found;
}

struct Tallies {
    std::array<std::uint32_t, rule_names.size()> parts{}, only{};
};

Tallies tallies(const std::vector<Part>& parts, const Ask& ask) {
    Tallies found;
    for (const Part& p : parts) {
        const std::uint32_t bits = failed(p, ask);
        for (std::size_t i = 0; i < rule_names.size(); ++i) found.parts[i] += bits >> i & 1U;
        if (std::has_single_bit(bits)) ++found.only[static_cast<std::size_t>(std::countr_zero(bits))];
    }
    return found;
}

std::vector<Part> read_parts(const std::string& path, Words& words) {
    std::ifstream file(path);
    std::string line;
    std::getline(file, line);
    std::map<std::string, std::size_t> column;
    for (const std::string& name : endbell::split(line, ',')) column.emplace(name, column.size());
    std::vector<Part> parts;
    while (std::getline(file, line)) {
        const std::vector<std::string> cells = endbell::split(line, ',');
        const auto cell = [&](const char* name) -> const std::string& { return cells[column.at(name)]; };
        const auto number = [&](const char* name) {
            return cell(name).empty() ? not_a_number : std::strtof(cell(name).c_str(), nullptr);
        };
        const auto small = [&](const char* name) {
            return cell(name).empty() ? unknown : static_cast<Word>(std::atoi(cell(name).c_str()));
        };
        const auto word = [&](const char* name) { return words.number(cell(name)); };
        Part p{};
        p.low = number("low"), p.high = number("high"), p.low2 = number("low2"), p.high2 = number("high2");
        p.rpm = number("rpm"), p.torque = number("torque"), p.diameter = number("diameter");
        p.body = number("body"), p.ambient = number("ambient");
        p.cents = cell("price").empty() ? no_price : static_cast<std::uint32_t>(std::stoul(cell("price")));
        std::memcpy(p.id.data(), cell("id").data(), std::min(p.id.size(), cell("id").size()));
        p.size = small("size"), p.load = word("load"), p.poles = small("poles"), p.family = word("family");
        p.module = small("module"), p.retrofit = small("retrofit"), p.phase = small("phase");
        p.rotation = word("rotation"), p.double_shaft = word("double_shaft"), p.mount = word("mount");
        p.enclosed = small("enclosed");
        p.stands = {small("any_position"), small("up"), small("down"), small("horizontal")};
        parts.push_back(p);
    }
    return parts;
}

Ask read_ask(const nlohmann::json& job, Words& words) {
    const auto has = [&](const char* name) { return !job[name].is_null() && job[name] != false; };
    const auto number = [&](const char* name) { return has(name) ? job[name].get<float>() : not_a_number; };
    const auto word = [&](const char* name) { return words.number(job[name].get<std::string>()); };
    Ask ask{};
    const float band = number("band");
    ask.volts = number("volts"), ask.under = 1 - band, ask.over = 1 + band;
    ask.speed = number("speed"), ask.off_speed = number("off_speed");
    ask.least_torque = number("least_torque"), ask.most_diameter = number("most_diameter");
    ask.most_body = number("most_body"), ask.least_ambient = number("least_ambient");
    if (has("size")) ask.least_size = ask.most_size = job["size"].get<Word>();
    ask.load = word("load"), ask.poles = job["poles"].get<Word>();
    if (has("wrong_rotation")) ask.wrong_rotation = word("wrong_rotation");
    if (has("two_ends")) ask.wrong_ends = no;
    if (has("no_lugs")) ask.wrong_mount = lugs;
    if (has("outdoors")) ask.wrong_enclosed = 0;
    if (has("point")) {
        const std::string point = job["point"];
        ask.point = point == "up" ? 1 : point == "down" ? 2 : 3;
        ask.wrong_stand = 0;
    }
    return ask;
}

std::string said(const Living& found) {
    std::string line = std::to_string(found.count);
    for (const Part* p : found.cheapest) line.append(" ").append(p->id.data(), p->id.size());
    return line;
}

std::string said(const Tallies& found) {
    std::map<std::string, std::string> by_name;
    for (std::size_t i = 0; i < rule_names.size(); ++i) {
        if (found.parts[i] > 0)
            by_name[rule_names[i]] = fmt::format("{}={}/{} ", rule_names[i], found.parts[i], found.only[i]);
    }
    std::string line;
    for (const auto& [name, text] : by_name) line += text;
    return line;
}

template <typename FindingDraft>
void answer(const char* name, const std::vector<Ask>& asks, const FindingDraft& work) {
    for (const Ask& ask : asks) fmt::print("{}\n", said(work(ask)));
    std::vector<double> times(asks.size() / 2, 1e99);
    for (int round = 0; round < 3; ++round) {
        for (std::size_t j = 0; j < times.size(); ++j) {
            const auto begin = std::chrono::steady_clock::now();
            const auto found = work(asks[j]);
            asm volatile("" : : "r"(&found) : "memory");  // else nobody wants it, and nothing is done
            const std::chrono::duration<double, std::micro> took = std::chrono::steady_clock::now() - begin;
            times[j] = std::min(times[j], took.count());
        }
    }
    std::sort(times.begin(), times.end());
    fmt::print("time {} {:.1f} {:.1f}\n", name, times[times.size() / 2], times[times.size() * 95 / 100]);
}

}  // namespace

int main(int argc, char** argv) {
    if (argc != 3) return 64;
    const std::string what = argv[1], folder = argv[2];
    Words words;
    const std::vector<Part> parts = read_parts(folder + "/flat.csv", words);
    std::ifstream file(folder + "/questions.json");
    std::vector<Ask> asks;
    const nlohmann::json asked = nlohmann::json::parse(file);
    for (const nlohmann::json& job : asked["parameters"]) asks.push_back(read_ask(job, words));
    if (what == "living") answer("scan", asks, [&](const Ask& ask) { return living(parts, ask); });
    if (what == "tallies") answer("scan-tallies", asks, [&](const Ask& ask) { return tallies(parts, ask); });
    return 0;
}
