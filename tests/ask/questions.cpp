// The asking engine against an expert's fixed order, on generated jobs with six unknown fields.
#include <cstdlib>
#include <functional>
#include <iostream>

#include "engine/ask/ask.hpp"
#include "engine/ask/askable.hpp"
#include "tests/match/books.hpp"
#include "tests/match/pairs.hpp"

namespace endbell::match_tests {

namespace {

using namespace rule_tests;

/// What a person would find out: copies one field of the truth into the job.
using Tell = std::function<void(FailedUnit& job, const FailedUnit& truth)>;
const std::vector<std::pair<std::string, Tell>>& tellable() {
    static const std::vector<std::pair<std::string, Tell>> list{
        {"unit.load", [](FailedUnit& j, const FailedUnit& t) { j.unit.load = t.unit.load; }},
        {"plate.family", [](FailedUnit& j, const FailedUnit& t) { j.plate.family = t.plate.family; }},
        {"equipment.supply",
         [](FailedUnit& j, const FailedUnit& t) { j.equipment.supply = t.equipment.supply; }},
        {"plate.speed", [](FailedUnit& j, const FailedUnit& t) { j.plate.speed = t.plate.speed; }},
        {"plate.power", [](FailedUnit& j, const FailedUnit& t) { j.plate.power = t.plate.power; }},
        {"plate.body_diameter",
         [](FailedUnit& j, const FailedUnit& t) { j.plate.body_diameter = t.plate.body_diameter; }},
        {"plate.mount", [](FailedUnit& j, const FailedUnit& t) { j.plate.mount = t.plate.mount; }},
        {"plate.shaft_diameter",
         [](FailedUnit& j, const FailedUnit& t) { j.plate.shaft_diameter = t.plate.shaft_diameter; }},
        {"unit.shaft_points",
         [](FailedUnit& j, const FailedUnit& t) { j.unit.shaft_points = t.unit.shaft_points; }},
        {"plate.rotation", [](FailedUnit& j, const FailedUnit& t) { j.plate.rotation = t.plate.rotation; }},
    };
    return list;
}

// The fixed order of an expert with a bad plate: what it turns, kind, volts, rpm, amps and horsepower, tape
// (body, mount, shaft), position, rotation. It is the order of the table above.

/// Keys that come to the same answer as one of the table.
std::string same_as(const std::string& key) {
    if (key == "plate.volts" || key == "measured.line_volts") return "equipment.supply";
    if (key == "plate.poles") return "plate.speed";
    if (key == "measured.band_diameter") return "plate.body_diameter";
    if (key == "measured.bore") return "plate.shaft_diameter";
    if (key == "unit.outdoors") return "unit.load";
    return key;
}

Part some_motor(Dice& d, int number) {
    const bool fan = d.one_in(3);
    Part p = (fan ? condenser() : blower()).part;
    p.id = "p" + std::to_string(1000 + number);
    Motor& m = *p.motor;
    const bool small = d.one_in(4);
    m.poles = d.one_in(4) ? 8 : 6;
    m.ratings = {rating(d.of(std::vector<double>{0.25, 1.0 / 3, 0.5, 0.75}),
                        d.of(std::vector<PlateVolts>{plate_volts(115), plate_volts(208, 230),
                                                     plate_volts(208, 230), plate_volts(277)}),
                        5, *m.poles == 8 ? 825 : 1075)};
    m.rotation = d.of(std::vector<Rotation>{Rotation::reversible, Rotation::reversible,
                                            Rotation::cw_shaft_end, Rotation::ccw_shaft_end});
    m.body_diameter = inch(small ? 5.0 : 5.6);
    m.shaft_diameter = inch(d.one_in(5) ? 0.625 : 0.5);
    m.mount =
        fan ? Mount::studs : d.of(std::vector<Mount>{Mount::band, Mount::band, Mount::lugs, Mount::ring});
    if (fan && d.one_in(2)) m.positions = {ShaftPosition::down};
    if (d.one_in(6)) {
        m.family = Family::shaded_pole;
        m.capacitor.reset();
    }
    return p;
}

/// The job that `part` would serve exactly.
FailedUnit job_for(const Part& part, Dice& d) {
    FailedUnit job = blower().job;
    const Motor& m = *part.motor;
    job.unit.load = known(m.loads.front());
    job.unit.shaft_points =
        known(m.loads.front() == Load::outdoor_fan ? ShaftPosition::down : ShaftPosition::horizontal);
    job.plate.family = known(*m.family);
    job.plate.volts = {};
    job.equipment.supply = known(bare_supply(m.ratings.front().volts->high));
    job.plate.power = hp(m.ratings.front().power->in(horsepower));
    job.plate.speed = known(*m.ratings.front().speed);
    job.plate.rotation =
        known(*m.rotation == Rotation::reversible
                  ? d.of(std::vector<Rotation>{Rotation::cw_shaft_end, Rotation::ccw_shaft_end})
                  : *m.rotation);
    job.plate.body_diameter = known(*m.body_diameter);
    job.plate.shaft_diameter = known(*m.shaft_diameter);
    job.plate.mount = known(*m.mount);
    job.plate.bolt_circle = {};
    job.plate.ambient = known(*m.ambient);
    job.plate.capacitor = {};
    return job;
}

struct Game {
    const PlainCatalog& catalog;
    const FailedUnit& truth;
    FailedUnit job;
    std::vector<std::string> unknown;

    Query query() const {
        return Query{job, facts_of(job, books_of(catalog).limits), diagnosis, books_of(catalog).limits};
    }
    bool decided() const {
        return ask_state(query(), match_parts(query(), books_of(catalog)).report, catalog) != AskState::ask;
    }
    void tell(const std::string& key) {
        for (const auto& [name, how] : tellable()) {
            if (name == key) how(job, truth);
        }
        unknown.erase(std::remove(unknown.begin(), unknown.end(), key), unknown.end());
    }
    Diagnosis diagnosis;
};

int questions_by_expert(Game game) {
    int asked = 0;
    for (const auto& entry : tellable()) {
        if (game.decided()) return asked;
        if (std::find(game.unknown.begin(), game.unknown.end(), entry.first) == game.unknown.end()) continue;
        game.tell(entry.first);
        ++asked;
    }
    return asked;
}

int questions_by_engine(Game game) {
    int asked = 0;
    while (!game.decided() && !game.unknown.empty()) {
        std::string key;
        for (const AskedReading& a : what_to_ask(game.query(), books_of(game.catalog))) {
            const std::string same = same_as(a.job_key);
            if (std::find(game.unknown.begin(), game.unknown.end(), same) == game.unknown.end()) continue;
            key = same;
            break;
        }
        if (key.empty()) key = game.unknown.front();
        game.tell(key);
        ++asked;
    }
    return asked;
}

}  // namespace

BOOST_AUTO_TEST_CASE(the_engine_needs_fewer_questions_than_a_fixed_order) {
    const char* wanted = std::getenv("ENDBELL_QUESTION_JOBS");  // tests/run --full plays more
    const int jobs = wanted != nullptr ? std::atoi(wanted) : 150 / ENDBELL_SAMPLE;
    Dice dice(77);
    int by_expert = 0;
    int by_engine = 0;
    for (int n = 0; n < jobs; ++n) {
        PlainCatalog catalog;
        for (int i = 0; i < 25; ++i) catalog.parts_list.push_back(some_motor(dice, i));
        const FailedUnit truth = job_for(dice.of(catalog.parts_list), dice);
        Game game{catalog, truth, truth, {}, {}};
        std::vector<std::string> keys;
        for (const auto& entry : tellable()) keys.push_back(entry.first);
        for (int blanked = 0; blanked < 6; ++blanked) {
            const std::size_t k = dice.below(keys.size());
            for (const auto& [name, how] : tellable()) {
                if (name == keys[k]) how(game.job, FailedUnit{});
            }
            game.unknown.push_back(keys[k]);
            keys.erase(keys.begin() + static_cast<std::ptrdiff_t>(k));
        }
        by_expert += questions_by_expert(game);
        by_engine += questions_by_engine(game);
    }
    std::cout << "questions to a decision, " << jobs << " jobs with six unknown fields: fixed order "
              << static_cast<double>(by_expert) / jobs << ", engine " << static_cast<double>(by_engine) / jobs
              << '\n';
    BOOST_TEST(by_engine < by_expert);
}

}  // namespace endbell::match_tests
