// "Nothing more to ask" against every answer of a list of its own: where it is said, no open key changes what is done. And no
// reading that is in order makes an answer worse.
#include "engine/select/still_open.hpp"

#include <unistd.h>

#include <boost/test/unit_test.hpp>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <map>
#include <regex>
#include <set>

#include "engine/import/import.hpp"
#include "engine/index/indexed_catalog.hpp"
#include "engine/job/job.hpp"
#include "engine/words/fold.hpp"
#include "engine/words/write.hpp"
#include "tests/match/pairs.hpp"

namespace endbell::select_tests {

namespace {

namespace fs = std::filesystem;
using match_tests::Dice;

using Texts = std::vector<std::string>;

const Texts yes_no{"yes", "no"};
const Texts volts{"0",     "5",     "9.9",   "10.1", "11.9", "12",    "17.9",  "18.1", "24",    "29.9",
                  "30.1",  "60",    "91.9",  "92.1", "103",  "103.6", "115",   "120",  "126.4", "126.6",
                  "150",   "186.9", "187.3", "195",  "199",  "206.9", "207.1", "218",  "230",   "240",
                  "252.9", "253.1", "265",   "277",  "304",  "306",   "413",   "415",  "460",   "507"};
const Texts amps{"0.2", "1", "1.3", "1.45", "2",    "3",  "4",  "5.9",
                 "6.1", "7", "8",   "9.9",  "10.1", "12", "20", "40"};
const Texts inches{"0.3",   "0.49", "0.497", "0.499", "0.5", "0.501", "0.55", "0.624",
                   "0.626", "0.75", "1",     "2",     "3",   "3.9",   "4.1",  "5",
                   "5.5",   "5.6",  "5.7",   "6.4",   "7",   "9",     "12"};
const Texts pressures{"-0.9", "-0.5", "-0.2", "0",    "0.05", "0.2", "0.29",
                      "0.31", "0.49", "0.51", "0.79", "0.81", "1.2"};
const Texts rises{"10", "25", "29", "31", "39", "41", "50", "59", "61", "69", "71", "90"};
const Texts heats{"20000", "36000", "60000", "80000", "100000", "140000"};

template <class E>
Texts words() {
    Texts texts;
    for (const Word<E>& w : Words<E>::table) texts.emplace_back(w.text);
    return texts;
}

/// Written by hand beside docs/reference/job-keys.md, and by no list of the engine: words are those of the model.
const std::map<std::string, Texts>& answers() {
    static const std::map<std::string, Texts> table{
        {"unit.load", words<Load>()},
        {"unit.belt_drive", yes_no},
        {"unit.shaft_points", words<ShaftPosition>()},
        {"unit.outdoors", yes_no},
        {"unit.assembly_number", {"ASM-77", "other"}},
        {"unit.plate_trusted", yes_no},
        {"unit.changed_before", words<ChangedPart>()},
        {"plate.family", words<Family>()},
        {"plate.power", {"1/20", "1/6", "1/4", "1/3", "1/2", "3/4", "1", "2"}},
        {"plate.volts", {"115", "208-230", "230", "277", "460"}},
        {"plate.phase", {"1", "3"}},
        {"plate.frequency", {"50", "60"}},
        {"plate.speed", {"800", "825", "1050", "1075", "1140", "1550", "1725"}},
        {"plate.poles", {"2", "4", "6", "8"}},
        {"plate.current", amps},
        {"plate.service_factor", {"1", "1.15", "1.35"}},
        {"plate.rotation", words<Rotation>()},
        {"plate.double_shaft", yes_no},
        {"plate.shaft_diameter", inches},
        {"plate.shaft_length", inches},
        {"plate.shaft_flat", inches},
        {"plate.second_shaft_diameter", inches},
        {"plate.second_shaft_length", inches},
        {"plate.body_diameter", inches},
        {"plate.mount", words<Mount>()},
        {"plate.frame", {"42", "48Y", "56", "143T"}},
        {"plate.bolt_circle", inches},
        {"plate.enclosure", words<Enclosure>()},
        {"plate.bearing", words<Bearing>()},
        {"plate.ambient", {"25 C", "40 C", "59 C", "60 C", "70 C"}},
        {"plate.protection", words<Protection>()},
        {"plate.capacitor", {"4", "5", "7.5", "10", "45"}},
        {"plate.capacitor_volts", {"165", "370", "440"}},
        {"plate.speeds", {"1", "2", "3", "4", "5"}},
        {"plate.signal", words<SignalClass>()},
        {"plate.tap_rule", words<TapRule>()},
        {"plate.program", {"PR-1", "PR-9"}},
        {"measured.line_volts", volts},
        {"measured.fuse_drop", volts},
        {"measured.contactor_drop", volts},
        {"measured.control_volts", volts},
        {"measured.control_kind", words<ControlVoltsKind>()},
        {"measured.transformer_volts", volts},
        {"measured.board_volts", volts},
        {"measured.primary_volts", volts},
        {"measured.thermostat_calls", yes_no},
        {"measured.float_switch_closed", yes_no},
        {"measured.door_switch_closed", yes_no},
        {"measured.control_fuse_good", yes_no},
        {"measured.live_taps", {"none", "1", "2", "1; 2"}},
        {"measured.windings",
         {"OL; 5; 5", "5; 5; 5", "0; 0; 0", "0.2; 0.2; 0.2", "5; 5; 5.6", "5; 5; 7", "21; 21; 21"}},
        {"measured.rotor_held", yes_no},
        {"measured.windings_hot", yes_no},
        {"measured.winding_to_shell", {"0", "50000", "99000", "101000", "OL"}},
        {"measured.spins_free", yes_no},
        {"measured.free_with_wheel_loose", yes_no},
        {"measured.shaft_play", yes_no},
        {"measured.module_good", yes_no},
        {"measured.capacitor", {"0", "3", "4.4", "4.6", "5", "6.7", "6.9", "7.5", "9", "10"}},
        {"plate.compressor_capacitor", {"5", "35", "45"}},
        {"measured.compressor_capacitor", {"0", "31", "35", "45"}},
        {"measured.capacitor_volts", {"0", "200", "370", "400"}},
        {"measured.capacitor_amps", {"0", "0.7", "1.1", "2"}},
        {"measured.capacitor_bulged", yes_no},
        {"measured.amps", amps},
        {"measured.speed", {"500", "800", "1060", "1150", "1700"}},
        {"measured.watts", {"50", "200", "400", "700", "1200"}},
        {"measured.airflow", {"300", "700", "1000", "1200", "1400", "2000"}},
        {"measured.static_supply", pressures},
        {"measured.static_return", pressures},
        {"measured.static_total", pressures},
        {"measured.filter_drop", pressures},
        {"measured.filter", words<Cleanness>()},
        {"measured.wheel", words<Cleanness>()},
        {"measured.belt", words<BeltState>()},
        {"measured.iced", yes_no},
        {"measured.coil_drop", pressures},
        {"measured.rise", rises},
        {"measured.rise_heat", words<RiseHeat>()},
        {"measured.burner_input", heats},
        {"measured.bore", inches},
        {"measured.shaft_needed", inches},
        {"measured.shaft_room", inches},
        {"measured.second_bore", inches},
        {"measured.second_shaft_needed", inches},
        {"measured.second_shaft_room", inches},
        {"measured.band_diameter", inches},
        {"measured.body_room", inches},
        {"measured.symptoms", words<Symptom>()},
        {"measured.signs", words<Sign>()},
        {"measured.under_water", yes_no},
        {"measured.earlier_replacements", {"0", "1", "2", "4"}},
        {"equipment.minimum_circuit_ampacity", amps},
        {"equipment.maximum_overcurrent", {"15", "30"}},
        {"equipment.fan_amps", amps},
        {"equipment.circuit_amps", amps},
        {"equipment.compressor_amps", amps},
        {"equipment.supply",
         {"115", "208", "230", "240", "277", "460", "120/240", "208Y/120", "230-1-60", "460-3-60"}},
        {"equipment.cooling", {"1.5 ton", "2 ton", "3 ton", "5 ton"}},
        {"equipment.low_cooling", {"1.5 ton", "2 ton"}},
        {"equipment.cooling_stages", {"0", "1", "2"}},
        {"equipment.heating_stages", {"0", "1", "2"}},
        {"equipment.heat_input", heats},
        {"equipment.altitude_input", heats},
        {"equipment.heat_output", heats},
        {"equipment.low_heat_output", heats},
        {"equipment.efficiency", {"0.7", "0.8", "0.95"}},
        {"equipment.rise_low", rises},
        {"equipment.rise_high", rises},
        {"equipment.low_rise_low", rises},
        {"equipment.low_rise_high", rises},
        {"equipment.electric_heat", {"5 kW", "10 kW", "20 kW"}},
        {"equipment.electric_heat_volts", {"208", "240"}},
        {"equipment.heat_least_air", {"400", "900", "1500"}},
        {"equipment.static_limit", {"0.2", "0.49", "0.51", "0.8"}},
        {"equipment.coil_limit", {"0.2", "0.6"}},
        {"equipment.return_size", {"100", "400"}},
        {"equipment.altitude", {"0", "1900", "2100", "3200", "3400", "7000"}},
        {"equipment.return_air", {"55", "70", "85"}},
        {"equipment.remaining_years", {"1", "15"}},
        {"equipment.climate", words<Climate>()},
        {"controls.source", words<ControlSource>()},
        {"controls.heat", words<HeatKind>()},
        {"controls.reversing_valve", words<ReversingValve>()},
        {"controls.dehumidify", words<DehumidifyLogic>()},
        {"controls.fan_with_heat", yes_no},
        {"controls.fan_command", words<FanCommand>()},
        {"controls.fan_interlock", yes_no},
        {"controls.zone_panel", yes_no},
        {"controls.transformer", {"20", "40", "75"}},
        {"controls.fuse", {"3", "5"}},
        {"controls.coil", {"24", "115", "230"}},
        {"controls.transformer_load", {"5", "20", "31", "33", "39"}},
        {"controls.output_volts", {"24", "115", "230"}},
        {"controls.common_present", yes_no},
        {"controls.run_signal_available", yes_no},
        {"controls.cool_hours", {"0", "2000"}},
    };
    return table;
}

/// What a person finds who goes and looks, where a job does not say it: usual values, and nothing that is out of order.
const std::map<std::string, std::string>& found_on_site() {
    static const std::map<std::string, std::string> table{
        {"unit.plate_trusted", "yes"},
        {"unit.belt_drive", "no"},
        {"unit.outdoors", "no"},
        {"unit.shaft_points", "horizontal"},
        {"plate.service_factor", "1"},
        {"plate.double_shaft", "no"},
        {"plate.protection", "thermal automatic"},
        {"plate.bearing", "sleeve"},
        {"plate.frequency", "60"},
        {"plate.phase", "1"},
        {"plate.current", "5"},
        {"plate.shaft_flat", "4"},
        {"plate.capacitor_volts", "370"},
        {"measured.winding_to_shell", "OL"},
        {"measured.bore", "1/2"},
        {"measured.shaft_needed", "4"},
        {"measured.shaft_room", "6"},
        {"measured.body_room", "9"},
        {"measured.band_diameter", "5.6"},
        {"measured.spins_free", "yes"},
        {"measured.shaft_play", "no"},
        {"measured.symptoms", "no run"},
        {"measured.under_water", "no"},
        {"measured.signs", "burnt"},
        {"measured.fuse_drop", "0"},
        {"measured.contactor_drop", "0"},
        {"measured.control_kind", "ac"},
        {"measured.thermostat_calls", "yes"},
        {"measured.float_switch_closed", "yes"},
        {"measured.door_switch_closed", "yes"},
        {"measured.control_fuse_good", "yes"},
        {"measured.transformer_volts", "26"},
        {"measured.primary_volts", "118"},
        {"measured.free_with_wheel_loose", "yes"},
        {"measured.amps", "0"},
        {"measured.iced", "no"},
        {"measured.filter", "clean"},
        {"measured.wheel", "clean"},
        {"measured.airflow", "1100"},
        {"measured.board_volts", "25"},
        {"measured.windings", "5; 5; 5"},
        {"measured.rotor_held", "yes"},
        {"equipment.heat_least_air", "800"},
        {"equipment.return_air", "70 F"},
        {"equipment.electric_heat_volts", "240"},
        {"measured.module_good", "no"},
        {"equipment.circuit_amps", "15"},
        {"equipment.fan_amps", "6"},
        {"equipment.supply", "115"},
        {"equipment.static_limit", "0.5"},
        {"equipment.minimum_circuit_ampacity", "20"},
        {"equipment.compressor_amps", "9.9"},
        {"equipment.altitude", "0"},
        {"equipment.cooling_stages", "1"},
        {"controls.source", "line-voltage board"},
        {"controls.heat", "gas furnace"},
        {"controls.transformer", "40"},
        {"controls.transformer_load", "10"},
        {"controls.zone_panel", "no"},
        {"controls.dehumidify", "not used"},
        {"controls.output_volts", "115"},
        {"controls.common_present", "yes"},
        {"controls.run_signal_available", "yes"},
        {"controls.fan_with_heat", "no"},
        {"controls.fan_interlock", "no"},
        {"controls.fan_command", "contactor"},
    };
    return table;
}

/// The shelf of the scenarios, imported and indexed as users have theirs.
struct Shop {
    fs::path folder = fs::temp_directory_path() / ("endbell-still-open-" + std::to_string(::getpid()));
    std::unique_ptr<IndexedCatalog> catalog;
    Limits limits;
    std::vector<FailedUnit> jobs;

    Shop() {
        fs::create_directories(folder);
        const fs::path root(ENDBELL_ROOT);
        import_catalog({root / "tests/scenarios/shelf"}, folder / "shelf.db", {});
        catalog = std::make_unique<IndexedCatalog>(folder / "shelf.db");
        std::vector<fs::path> places;
        for (const auto& entry : fs::directory_iterator(root / "tests/scenarios")) {
            if (fs::exists(entry.path() / "job.toml")) places.push_back(entry.path() / "job.toml");
        }
        std::sort(places.begin(), places.end());
        for (const fs::path& place : places) jobs.push_back(read_job_file(place));
    }
    ~Shop() { fs::remove_all(folder); }
    Books books() const { return {*catalog, limits, catalog->index()}; }
};

int contradicted(const FailedUnit& job, const Limits& limits) {
    const Facts f = facts_of(job, limits);
    int count = 0;
    const auto add = [&](const auto&... facts) { ((count += facts.disagree ? 1 : 0), ...); };
    add(f.family, f.phase, f.frequency, f.speed, f.poles, f.power, f.torque, f.signal, f.volts, f.capacitor,
        f.capacitor_volts, f.outdoors, f.output, f.heat.burner, f.heat.elements, f.heat.compressor);
    return count;
}

struct Asked {
    const Shop& shop;
    KitShelf shelf;
    explicit Asked(const Shop& of, const FailedUnit& job) : shop(of), shelf(of.books(), policy_of(job)) {}

    Selection answer(const FailedUnit& job) const {
        return select_part(job, shop.books(), shelf, {1, false});
    }
    /// The job with one more answer; none where it cannot be given, or contradicts what the job says.
    std::optional<FailedUnit> with(const FailedUnit& job, const std::string& key, const std::string& text,
                                   std::size_t contradictions) const {
        FailedUnit then = job;
        if (set_key(then, key, text) || job_key(key)->open(then) || job_key(key)->text(then).empty())
            return std::nullopt;
        const Diagnosis d = diagnose(then, facts_of(then, shop.limits), shop.limits);
        if (d.contradictions.size() > contradictions) return std::nullopt;
        if (contradicted(then, shop.limits) > contradicted(job, shop.limits)) return std::nullopt;
        return then;
    }
};

/// A job of the scenarios with up to three keys as another has them, and what a person would find on the site.
FailedUnit complete_job(const Shop& shop, Dice& dice) {
    FailedUnit job = dice.of(shop.jobs);
    for (std::size_t n = dice.below(4); n > 0; --n) {
        const JobKey& key = dice.of(job_keys());
        const std::string text = key.text(dice.of(shop.jobs));
        if (key.group != "shop" && key.group != "controls" && !text.empty()) set_key(job, key.id(), text);
    }
    const auto usual = [&](const std::string& key) {
        const auto found = found_on_site().find(key);
        FailedUnit then = job;
        if (found == found_on_site().end() || !job_key(key)->text(job).empty() ||
            set_key(then, key, found->second))
            return;
        const Diagnosis d = diagnose(then, facts_of(then, shop.limits), shop.limits);
        if (d.contradictions.empty() && contradicted(then, shop.limits) == 0) job = then;
    };
    if (job.equipment.supply.said() && job_key("measured.line_volts")->text(job).empty())
        set_key(job, "measured.line_volts", words::write(job.equipment.supply->line));
    // Half of them have a dead winding, and half are in order as far as anybody reads.
    if (dice.one_in(2)) set_key(job, "measured.winding_to_shell", "0");
    for (const auto& entry : found_on_site()) {
        usual(entry.first);
    }
    return job;
}

int wanted(const char* name, int usual) {
    const char* text = std::getenv(name);  // tests/run --full asks for more
    return text != nullptr ? std::atoi(text) : usual / ENDBELL_SAMPLE;
}

/// Keys that a person is asked for, that this job leaves open.
Texts open_keys(const FailedUnit& job, bool asked_only) {
    Texts keys;
    for (const auto& [key, texts] : answers()) {
        if (!job_key(key)->text(job).empty()) continue;
        if (!asked_only || !job_key(key)->asked_as.empty()) keys.push_back(key);
    }
    return keys;
}

}  // namespace

BOOST_AUTO_TEST_CASE(the_list_of_answers_names_every_key_of_a_job) {
    // Names, serials and drawings are no readings of a list; nor are lists in a person's own words.
    for (const JobKey& key : job_keys()) {
        if (key.group == "shop" || answers().count(key.id()) > 0) continue;
        BOOST_TEST_INFO(key.id());
        BOOST_TEST((std::set<std::string>{
                        "unit.name", "unit.old_part_number", "unit.old_module_number", "unit.equipment_model",
                        "unit.equipment_serial", "unit.changed_by", "unit.baseline", "plate.connector",
                        "equipment.electric_stages", "equipment.blower_table", "equipment.replacement_price",
                        "controls.least_zone", "controls.terminals", "controls.leads", "controls.states",
                        "controls.heat_hours", "controls.circulate_hours"}
                        .count(key.id()) > 0));
    }
}

// A stage behind the match that reads a key of the job itself: an answer that changes no fact may still reach it.
BOOST_AUTO_TEST_CASE(what_later_stages_read_of_a_job_is_known) {
    const std::regex raw(R"(\b(unit|plate|measured|equipment|controls)\.([a-z_]+))");
    for (const char* room : {"airflow", "wiring", "kit", "cost", "select"}) {
        for (const auto& file : fs::directory_iterator(fs::path(ENDBELL_ROOT) / "engine" / room)) {
            if (file.path().extension() != ".cpp" || file.path().stem() == "still_open" ||
                file.path().stem() == "steps_of")
                continue;
            std::ifstream in(file.path());
            const std::string text{std::istreambuf_iterator<char>(in), {}};
            for (std::sregex_iterator at(text.begin(), text.end(), raw), end; at != end; ++at) {
                const std::string key = at->str();
                if (job_key(key) == nullptr || key == "unit.plate_trusted") continue;
                BOOST_TEST_INFO(room << " reads " << key);
                BOOST_TEST(later_stages_read(key));
            }
        }
    }
}

BOOST_AUTO_TEST_CASE(nothing_more_to_ask_is_true) {
    const Shop shop;
    Dice dice(2101);
    const int jobs = wanted("ENDBELL_STILL_OPEN_JOBS", 200);
    const int paired = wanted("ENDBELL_STILL_OPEN_PAIRS", 20);
    int complete = 0, said = 0, tried = 0, pairs = 0;
    for (int n = 0; n < jobs; ++n) {
        const FailedUnit job = complete_job(shop, dice);
        const Asked asked(shop, job);
        if (asked.answer(job).outcome == Outcome::undecided) continue;
        ++complete;
        Patience patience;
        patience.whether = true;
        if (!still_open(job, shop.books(), asked.shelf, patience).nothing_more()) continue;
        ++said;
        const Selection now = asked.answer(job);
        const std::size_t contradictions = now.diagnosis.contradictions.size();
        const auto stands = [&](const FailedUnit& then) {
            const Selection s = asked.answer(then);
            return s.outcome == now.outcome && s.diagnosis.fault == now.diagnosis.fault &&
                   upshot_of(s).pick == upshot_of(now).pick;
        };
        for (const std::string& key : open_keys(job, false)) {
            for (const std::string& text : answers().at(key)) {
                const auto then = asked.with(job, key, text, contradictions);
                if (!then) continue;
                ++tried;
                BOOST_TEST_INFO("job " << n << ' ' << (job.unit.name ? *job.unit.name : "") << ": " << key
                                       << " = " << text);
                BOOST_TEST(stands(*then));
            }
        }
        if (said > paired) continue;
        const Texts keys = open_keys(job, true);
        for (std::size_t i = 0; i < keys.size(); ++i) {
            for (std::size_t k = i + 1; k < keys.size(); ++k) {
                const std::string& one = dice.of(answers().at(keys[i]));
                const std::string& other = dice.of(answers().at(keys[k]));
                const auto first = asked.with(job, keys[i], one, contradictions);
                if (!first) continue;
                const auto both = asked.with(*first, keys[k], other, contradictions);
                if (!both) continue;
                ++pairs;
                BOOST_TEST_INFO("job " << n << ' ' << (job.unit.name ? *job.unit.name : "") << ": " << keys[i]
                                       << " = " << one << " and " << keys[k] << " = " << other);
                BOOST_TEST(stands(*both));
            }
        }
    }
    std::cout << "nothing more to ask: said of " << said << " of " << complete << " complete jobs, " << tried
              << " answers and " << pairs << " pairs of answers tried\n";
    BOOST_TEST(complete > jobs / 2);
    BOOST_TEST(2 * said >= complete);
}

namespace {

/// Readings that are in order for this job, by the figures of its own plate.
std::map<std::string, std::string> readings_in_order(const FailedUnit& job, const Limits& limits) {
    std::map<std::string, std::string> good{{"measured.spins_free", "yes"},
                                            {"measured.shaft_play", "no"},
                                            {"measured.winding_to_shell", "OL"},
                                            {"measured.capacitor_bulged", "no"},
                                            {"measured.rotor_held", "yes"},
                                            {"measured.windings_hot", "no"},
                                            {"measured.fuse_drop", "0"},
                                            {"measured.contactor_drop", "0"},
                                            {"measured.thermostat_calls", "yes"},
                                            {"measured.float_switch_closed", "yes"},
                                            {"measured.door_switch_closed", "yes"},
                                            {"measured.control_fuse_good", "yes"},
                                            {"measured.free_with_wheel_loose", "yes"},
                                            {"measured.under_water", "no"},
                                            {"measured.iced", "no"},
                                            {"measured.filter", "clean"},
                                            {"measured.wheel", "clean"},
                                            {"measured.filter_drop", "0.1"},
                                            {"measured.transformer_volts", "26"},
                                            {"measured.windings", "5; 5; 5"}};
    const Facts facts = facts_of(job, limits);
    if (facts.capacitor && facts.family.is(Family::capacitor_run))
        good["measured.capacitor"] = words::write(*facts.capacitor);
    if (facts.signal.is(SignalClass::control_24v)) good["measured.control_volts"] = "25";
    if (facts.volts && facts.volts->size() == 1 && facts.supply.nominal.size() == 1)
        good["measured.line_volts"] = words::write(facts.supply.nominal.front());
    return good;
}

}  // namespace

// A free shaft, good windings, good volts or a capacitor within tolerance never turns an answer from fits to undecided: it
// fits, or nothing is wrong.
BOOST_AUTO_TEST_CASE(no_reading_that_is_in_order_makes_an_answer_worse) {
    const Shop shop;
    Dice dice(2102);
    int fitted = 0, read = 0;
    const int jobs = wanted("ENDBELL_STILL_OPEN_JOBS", 400);
    for (int n = 0; n < jobs; ++n) {
        FailedUnit job = dice.of(shop.jobs);
        for (const JobKey& key : job_keys()) {  // little was measured, and of that some is left out
            if (key.group == "measured" && dice.one_in(2)) key.read(job, fold(""), {});
        }
        const Asked asked(shop, job);
        const Selection now = asked.answer(job);
        if (now.outcome != Outcome::something_fits) continue;
        ++fitted;
        for (const auto& [key, text] : readings_in_order(job, shop.limits)) {
            if (!job_key(key)->text(job).empty()) continue;
            const auto then = asked.with(job, key, text, now.diagnosis.contradictions.size());
            if (!then) continue;
            ++read;
            const Selection s = asked.answer(*then);
            const bool nothing_wrong =
                s.outcome == Outcome::do_not_replace && s.diagnosis.fault == Fault::none;
            BOOST_TEST_INFO((job.unit.name ? *job.unit.name : "")
                            << ": " << key << " = " << text << " gives " << word(s.outcome));
            BOOST_TEST((s.outcome == Outcome::something_fits || nothing_wrong));
        }
    }
    std::cout << "readings in order: " << read << " of " << fitted << " jobs that something fits\n";
    BOOST_TEST(fitted > 0);
}

}  // namespace endbell::select_tests
