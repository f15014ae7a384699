// An invented catalog of any size, and jobs for it: part i and job j are functions of their number only, so a
// small catalog is a prefix of a large one. Invented for measuring; it says nothing about real parts.
//
// usage: bench_generate PARTS JOBS DEMO_TABLES OUT     writes OUT/tables/*.csv, OUT/jobs.csv and
//        OUT/many.csv: more of the same jobs, as `endbell batch` reads them
#include <fmt/format.h>

#include <array>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <initializer_list>
#include <iterator>
#include <set>
#include <string>
#include <vector>

namespace {

namespace fs = std::filesystem;
using Text = std::string;

/// A stream of numbers for one part (splitmix64: a published mixing function, public domain).
class Dice {
  public:
    explicit Dice(std::uint64_t seed) : state_(seed * 0x9E3779B97F4A7C15ull + 0x2545F4914F6CDD1Dull) {}
    std::uint64_t roll() {
        std::uint64_t z = (state_ += 0x9E3779B97F4A7C15ull);
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9ull;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EBull;
        return z ^ (z >> 31);
    }
    std::uint64_t below(std::uint64_t n) { return roll() % n; }
    bool percent(std::uint64_t p) { return below(100) < p; }
    template <std::size_t N>
    Text of(const std::array<const char*, N>& words) {
        return words[below(N)];
    }

  private:
    std::uint64_t state_;
};

struct Sizes {
    const char* hp;
    double value;
};
constexpr std::array sizes{Sizes{"1/15", 1.0 / 15}, Sizes{"1/12", 1.0 / 12}, Sizes{"1/10", 1.0 / 10},
                           Sizes{"1/8", 1.0 / 8},   Sizes{"1/6", 1.0 / 6},   Sizes{"1/5", 1.0 / 5},
                           Sizes{"1/4", 1.0 / 4},   Sizes{"1/3", 1.0 / 3},   Sizes{"1/2", 1.0 / 2},
                           Sizes{"3/4", 3.0 / 4},   Sizes{"1", 1.0}};

/// One part in the words of the tables; an empty text is unknown.
struct Drawn {
    Text id, kind = "motor", maker, family, loads, retrofit, phase = "1", frequency = "60", poles, rotation,
             view, double_shaft, diameter, length, cuttable, body, body_length, mount, circle, enclosure,
             bearing, positions, ambient, factor, protection, uf, uf_volts, speeds, signal, tap_rule, program,
             assembly, connector, efficiency, warranty;
    Text hp, volts, amps, rpm, selection = "none";
    Text second_volts;  // of a second rating
    int taps = 0;
    double torque = 0;
    std::uint64_t cents = 0;
};

void forget_some(Drawn& p, Dice& dice) {
    for (Text* field : {&p.poles, &p.double_shaft, &p.diameter, &p.length, &p.cuttable, &p.body,
                        &p.body_length, &p.mount, &p.circle, &p.enclosure, &p.bearing, &p.positions,
                        &p.ambient, &p.factor, &p.protection, &p.connector, &p.rotation}) {
        if (dice.percent(4)) field->clear();
    }
    if (p.rotation.empty() || p.rotation == "reversible") p.view.clear();
}

Drawn draw(std::uint64_t number) {
    Dice dice(number);
    Drawn p;
    p.id = fmt::format("P{:07}", number);
    p.maker = dice.of(std::array{"Quillby", "Hexmallow", "Ostrava Bend", "Tarnwick", "Umberlode"});
    const std::uint64_t sort = dice.below(100);
    const Sizes& size = sizes[sort < 45 ? 4 + dice.below(7) : dice.below(sizes.size())];
    p.hp = size.hp;
    p.volts = dice.of(std::array{"115", "115", "208-230", "208-230", "208-230", "277", "460"});
    p.rotation = dice.of(std::array{"CW", "CCW", "reversible", "reversible"});
    p.view = dice.of(std::array{"shaft end", "lead end"});
    p.double_shaft = dice.percent(12) ? "yes" : "no";
    p.diameter = dice.of(std::array{"1/2", "1/2", "1/2", "1/2", "5/8", "5/16", "3/8"});
    p.length = fmt::format("{}", 3.0 + 0.25 * static_cast<double>(dice.below(21)));
    p.cuttable = dice.percent(70) ? "yes" : "no";
    p.body = dice.of(std::array{"5.6", "5.6", "5.5", "6.3", "3.3", "4.4"});
    p.body_length = fmt::format("{:.2f}", 3.2 + 0.25 * static_cast<double>(dice.below(14)));
    p.mount = dice.of(std::array{"band", "band", "band", "studs", "lugs", "ring"});
    if (p.mount == "studs" || p.mount == "lugs") p.circle = dice.of(std::array{"5.44", "6.25", "7.5"});
    p.enclosure = dice.of(std::array{"OPAO", "OPAO", "TEAO", "TENV", "ODP"});
    p.bearing = dice.percent(60) ? "sleeve" : "ball";
    p.positions = dice.of(std::array{"all", "all", "horizontal", "up;down", "horizontal;down"});
    p.ambient = dice.of(std::array{"40", "40", "60", "70"});
    p.factor = dice.of(std::array{"1.0", "1.0", "1.15"});
    p.protection = dice.of(std::array{"thermal automatic", "thermal automatic", "thermal automatic",
                                      "impedance", "thermal manual"});
    p.connector = dice.of(std::array{"leads", "leads", "plug-4", "plug-5", "plug-16"});
    p.warranty = dice.of(std::array{"12", "24", "60"});
    p.rpm = dice.of(std::array{"1075", "1075", "1075", "825", "1625", "1140"});
    p.amps = fmt::format("{:.1f}", 0.3 + size.value * (8 + static_cast<double>(dice.below(50)) / 10));
    p.efficiency = fmt::format("{:.2f}", 0.45 + 0.01 * static_cast<double>(dice.below(40)));
    p.loads = "indoor blower";
    if (sort < 70) {  // capacitor run: two thirds for blowers, one third for condensers
        p.family = "capacitor run";
        if (sort >= 45) {
            p.loads = "outdoor fan";
            p.enclosure = dice.percent(85) ? "TEAO" : "OPAO";
        }
        p.signal = "switched line";
        p.speeds = fmt::format("{}", 1 + dice.below(4));
        p.uf = dice.of(std::array{"4", "5", "7.5", "10", "12.5", "15", "20"});
        p.uf_volts = dice.percent(70) ? "370" : "440";
        if (p.volts == "115" && dice.percent(15)) p.second_volts = "208-230";
    } else if (sort < 84) {
        p.family = "constant torque";
        p.signal = dice.percent(75) ? "24 V" : "line signal";
        p.tap_rule = dice.of(std::array{"one tap only", "highest tap wins", "not stated", ""});
        p.retrofit = dice.percent(50) ? "capacitor run" : "";
        p.taps = 5;
        p.speeds = "5";
        p.connector = "plug-16";
        if (p.volts == "115" && dice.percent(30)) p.second_volts = "208-230";
    } else if (sort < 90) {
        p.family = "constant airflow";
        p.signal = "24 V";
        p.program = fmt::format("G-{:04}", dice.below(400));
    } else if (sort < 93) {
        p.kind = "module";
        p.signal = "24 V";
        p.program = fmt::format("G-{:04}", dice.below(400));
    } else if (sort < 95) {
        p.family = "three phase";
        p.phase = "3";
        p.volts = dice.of(std::array{"208-230", "460", "575"});
        p.signal = "switched line";
    } else if (sort < 98) {
        p.family = "shaded pole";
        p.signal = "switched line";
        p.speeds = "1";
    } else {
        p.family = "capacitor run";
        p.loads = "draft inducer";
        p.signal = "switched line";
        p.assembly = fmt::format("D-{:05}", dice.below(5000));
        p.uf = "5";
        p.uf_volts = "370";
        p.speeds = "1";
    }
    if (p.family == "capacitor run" || p.family == "shaded pole" || p.family == "three phase") {
        p.poles = p.rpm == "1625" ? "4" : p.rpm == "825" ? "8" : "6";
    }
    p.torque =
        size.value * 84000 / std::strtod(p.rpm.c_str(), nullptr);  // oz-ft: 16 x 5252 hp / rpm, rounded
    const double base = 38 + 150 * size.value +
                        (p.family == "constant torque"    ? 110
                         : p.family == "constant airflow" ? 260
                                                          : 0);
    p.cents = static_cast<std::uint64_t>(base * (60 + static_cast<double>(dice.below(8000)) / 100));
    forget_some(p, dice);
    return p;
}

class Tables {
  public:
    explicit Tables(const fs::path& folder) : folder_(folder) {
        fs::create_directories(folder);
        open(parts_, "parts", "part_id,kind,maker,part_number,status,description");
        open(motors_, "motors",
             "part_id,family,loads,retrofit_for,phase,frequency_hz,poles,rotation,rotation_viewed_from,"
             "double_shaft,shaft_diameter_in,"
             "shaft_length_in,shaft_cuttable,body_diameter_in,body_length_in,mount,bolt_circle_in,enclosure,"
             "bearing,positions,ambient_c,"
             "service_factor,protection,capacitor_uf,capacitor_v,speeds,signal,tap_rule,program,assembly,"
             "connector,efficiency,"
             "warranty_months");
        open(ratings_, "motor_ratings", "part_id,rating,power_hp,volts,amps,speed_rpm,selection");
        open(taps_, "taps", "part_id,tap,label,torque_ozft,speed_rpm,signal,off_delay_s");
        open(terminals_, "terminals", "part_id,label,function,connector");
        open(modules_, "modules", "part_id,program,volts,signal,power_hp,warranty_months");
        open(offers_, "offers", "part_id,seller,branch,price,currency,core_credit,stock,lead_days,as_of");
    }
    ~Tables() {
        for (std::FILE* file : {parts_, motors_, ratings_, taps_, terminals_, modules_, offers_})
            std::fclose(file);
    }
    Tables(const Tables&) = delete;
    Tables& operator=(const Tables&) = delete;

    void write(const Drawn& p, std::uint64_t number) {
        fmt::print(parts_, "{},{},{},N {},{},{}\n", p.id, p.kind, p.maker, number,
                   number % 40 == 0 ? "superseded" : "active", p.hp + " hp");
        if (p.kind == "module") {
            fmt::print(modules_, "{},{},{},{},{},24\n", p.id, p.program, p.volts, p.signal, p.hp);
        } else {
            write_motor(p);
        }
        write_offers(p, number);
    }

    /// The accessories, hours and limits of the demo catalog, whose parts bring their own ids.
    void take_from_demo(const fs::path& demo) {
        std::set<Text> accessories;
        for (const Text& line : lines_of(demo / "parts.csv")) {
            const Text id = line.substr(0, line.find(','));
            if (line.compare(id.size(), 11, ",accessory,") != 0) continue;
            accessories.insert(id);
            fmt::print(parts_, "{}\n", line);
        }
        for (const Text& line : lines_of(demo / "offers.csv")) {
            if (accessories.count(line.substr(0, line.find(',')))) fmt::print(offers_, "{}\n", line);
        }
        for (const char* name : {"accessories.csv", "accessory_excludes.csv", "labour_tasks.csv"})
            fs::copy_file(demo / name, folder_ / name, fs::copy_options::overwrite_existing);
    }

  private:
    void open(std::FILE*& file, const char* name, const char* header) {
        file = std::fopen((folder_ / (Text(name) + ".csv")).c_str(), "w");
        if (file == nullptr) std::exit(65);
        fmt::print(file, "{}\n", header);
    }
    static std::vector<Text> lines_of(const fs::path& path) {
        std::ifstream file(path);
        std::vector<Text> lines;
        for (Text line; std::getline(file, line);) lines.push_back(line);
        return lines;
    }
    void write_motor(const Drawn& p) {
        fmt::print(motors_,
                   "{},{},{},{},{},{},{},{},{},{},{},{},{},{},{},{},{},{},{},{},{},{},{},{},{},{},{},{},{},{}"
                   ",{},{},{}\n",
                   p.id, p.family, p.loads, p.retrofit, p.phase, p.frequency, p.poles, p.rotation, p.view,
                   p.double_shaft, p.diameter, p.length, p.cuttable, p.body, p.body_length, p.mount, p.circle,
                   p.enclosure, p.bearing, p.positions, p.ambient, p.factor, p.protection, p.uf, p.uf_volts,
                   p.speeds, p.signal, p.tap_rule, p.program, p.assembly, p.connector, p.efficiency,
                   p.warranty);
        const char* set_by = p.second_volts.empty() ? "none" : "jumper";
        fmt::print(ratings_, "{},1,{},{},{},{},{}\n", p.id, p.hp, p.volts, p.amps, p.rpm, set_by);
        if (!p.second_volts.empty())
            fmt::print(ratings_, "{},2,{},{},{},{},{}\n", p.id, p.hp, p.second_volts, p.amps, p.rpm, set_by);
        for (int tap = 1; tap <= p.taps; ++tap)
            fmt::print(taps_, "{},{},{},{:.1f},,{},\n", p.id, tap, tap, p.torque * (0.5 + 0.125 * tap),
                       p.signal);
        if (p.family == "constant torque") {
            for (int tap = 1; tap <= p.taps; ++tap)
                fmt::print(terminals_, "{},{},tap {},plug-16\n", p.id, tap, tap);
            write_terminals(
                p, {"L,line,plug-16", "N,second line,plug-16", "G,earth,plug-16", "C,common,plug-16"});
        } else if (p.signal == "switched line" && p.phase == "1") {
            write_leads(p);
        }
    }
    void write_terminals(const Drawn& p, std::initializer_list<const char*> rows) {
        for (const char* row : rows) fmt::print(terminals_, "{},{}\n", p.id, row);
    }
    /// A lead for each speed, the slower ones first; one of a single speed is its line.
    void write_leads(const Drawn& p) {
        static constexpr std::array names{"LO", "MED LO", "MED HI", "HI"};
        const int speeds = std::atoi(p.speeds.c_str());
        const double rpm = std::strtod(p.rpm.c_str(), nullptr);
        for (int tap = 1; speeds > 1 && tap <= speeds; ++tap) {
            const char* name = names[static_cast<std::size_t>(tap == speeds ? 3 : tap - 1)];
            fmt::print(taps_, "{},{},{},,{:.0f},switched line,\n", p.id, tap, name,
                       rpm - 95 * (speeds - tap));
            fmt::print(terminals_, "{},{},tap {},leads\n", p.id, name, tap);
        }
        if (speeds <= 1) write_terminals(p, {"L1,line,leads"});
        write_terminals(p, {"COM,second line,leads", "GND,earth,leads"});
        if (!p.uf.empty()) write_terminals(p, {"CAP A,capacitor,leads", "CAP B,capacitor,leads"});
    }
    void write_offers(const Drawn& p, std::uint64_t number) {
        Dice dice(number ^ 0xFFFF0000FFFFull);
        if (dice.percent(6)) return;
        const int offers = dice.percent(30) ? 2 : 1;
        static constexpr std::array branches{"Elmford", "Ashwater", "Cray Hollow"};
        const std::uint64_t first = dice.below(3);
        for (int i = 0; i < offers; ++i) {
            const std::uint64_t cents = p.cents + dice.below(400);
            fmt::print(offers_, "{},Larkspan Supply,{},{}.{:02},USD,,{},{},2026-01-{:02}\n", p.id,
                       branches[(first + static_cast<std::uint64_t>(i)) % 3], cents / 100, cents % 100,
                       dice.below(6), dice.below(8), 1 + dice.below(19));
        }
    }

    fs::path folder_;
    std::FILE* parts_ = nullptr;
    std::FILE* motors_ = nullptr;
    std::FILE* ratings_ = nullptr;
    std::FILE* taps_ = nullptr;
    std::FILE* terminals_ = nullptr;
    std::FILE* modules_ = nullptr;
    std::FILE* offers_ = nullptr;
};

constexpr std::uint64_t batch = 10000;  // jobs of a night

/// A job whose old motor is a part of the catalog's first ten thousand; job j knows all but j % 5 of the fields that may be unknown.
void write_jobs(const fs::path& path, const char* name, std::uint64_t jobs, std::uint64_t parts) {
    std::FILE* file = std::fopen(path.c_str(), "w");
    if (file == nullptr) std::exit(65);
    fmt::print(file,
               "{},unit.load,unit.outdoors,unit.shaft_points,plate.family,plate.power,plate.volts,plate."
               "phase,plate.frequency,plate.speed,"
               "plate.current,plate.rotation,plate.double_shaft,plate.shaft_diameter,plate.shaft_length,"
               "plate.body_diameter,plate.mount,"
               "plate.bolt_circle,plate.enclosure,plate.ambient,plate.protection,plate.capacitor,plate."
               "capacitor_volts,plate.speeds,"
               "plate.signal,plate.connector,equipment.supply,controls.source,controls.heat,controls.common_"
               "present,shop.branch,shop.as_of,"
               "shop.currency,shop.labour_rate,shop.trip,shop.diagnosis_fee,shop.markup\n",
               name);
    std::uint64_t written = 0;
    std::set<Text> known;
    for (std::uint64_t seed = 0; written < jobs; ++seed) {
        Dice dice(seed ^ 0xABCDEF0123456789ull);
        Drawn p = draw(dice.below(std::min<std::uint64_t>(parts, 10000)));
        if (p.family != "capacitor run" || p.loads == "draft inducer" || p.rotation.empty() ||
            p.diameter.empty() || p.mount.empty() || p.enclosure.empty() || p.body.empty()) {
            continue;
        }
        if (p.rotation == "reversible") p.rotation = dice.percent(50) ? "CW" : "CCW", p.view = "shaft end";
        const bool outdoors = p.loads == "outdoor fan";
        Text points = p.positions == "up;down"           ? "up"
                      : p.positions == "horizontal;down" ? "down"
                      : outdoors                         ? "up"
                                                         : "horizontal";
        std::vector<Text*> open{&p.rotation, &p.diameter, &p.mount,        &p.speeds,
                                &points,     &p.hp,       &p.double_shaft, &p.ambient};
        for (std::uint64_t unknown = written % 5; unknown > 0; --unknown) {
            const std::uint64_t which = dice.below(open.size());
            open[which]->clear();
            open.erase(open.begin() + static_cast<std::ptrdiff_t>(which));
        }
        const Text rotation = p.rotation.empty() ? "" : p.rotation + (p.view == "lead end" ? " LE" : " SE");
        const Text supply = p.volts == "208-230" ? "230" : p.volts;
        const Text job = fmt::format(
            "{},{},{},PSC,{},{},1,60,{},{},{},{},{},{},{},{},{},{},{},{},{},{},{},switched "
            "line,{},{},{},{},yes,Elmford,2026-01-20,USD,125,95,89,100 %\n",
            p.loads, outdoors ? "yes" : "no", points, p.hp, p.volts, p.rpm, p.amps, rotation, p.double_shaft,
            p.diameter, p.length, p.body, p.mount, p.circle, p.enclosure,
            p.ambient.empty() ? "" : p.ambient + " C", p.protection, p.uf, p.uf_volts, p.speeds, p.connector,
            supply, outdoors ? "" : "thermostat", outdoors ? "" : "heat pump");
        // No two alike, unless the catalog is too small for so many.
        if (!known.insert(job).second && seed < 50 * jobs) continue;
        fmt::print(file, "J{:05},{}", written, job);
        ++written;
    }
    std::fclose(file);
}

}  // namespace

int main(int argc, char** argv) {
    if (argc != 5) {
        std::fputs("usage: bench_generate PARTS JOBS DEMO_TABLES OUT\n", stderr);
        return 64;
    }
    const std::uint64_t parts = std::strtoull(argv[1], nullptr, 10);
    const fs::path out = argv[4];
    Tables tables(out / "tables");
    for (std::uint64_t number = 0; number < parts; ++number) tables.write(draw(number), number);
    tables.take_from_demo(argv[3]);
    write_jobs(out / "jobs.csv", "job", std::strtoull(argv[2], nullptr, 10), parts);
    write_jobs(out / "many.csv", "tag", batch, parts);
    return 0;
}
