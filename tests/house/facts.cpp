// A fact is derived in one place: the fields that engine/facts/ derives from are read there and in job/, and nowhere else.
#include <boost/test/unit_test.hpp>

#include "tests/house/repository.hpp"

using namespace house;

namespace {

/// Fields of a job from which a fact follows, by the group that they stand in. A stage that reads one of them decides
/// again what facts/ has decided, and may decide otherwise.
const std::vector<std::string> raw_fields{
    R"(\b(plate(?:\.|->)(?:family|volts|phase|frequency|poles|power|speed|signal|capacitor|capacitor_volts)\b))",
    R"(\b(equipment(?:\.|->)(?:supply|electric_heat|heat_input|heat_output)\b))",
    R"(\b(controls(?:\.|->)heat\b))",
    R"(\b(unit(?:\.|->)(?:outdoors|plate_trusted)\b))",
    R"(((?:\.|->)(?:line_volts|electric_heat|heat_input)\b))",
    R"(\b(PlateReadings ?&))"};

/// What holds the fields, reads them from text, or derives from them.
const std::vector<std::string> rooms{"engine/model/", "engine/words/", "engine/fields/keys_", "engine/job/",
                                     "engine/facts/"};

/// Files that name the fields for another end than deciding by them.
const std::vector<std::string> exceptions{
    "engine/explain/compose_sheet.cpp",     // prints what the old plate says, as it says it
    "engine/explain/ask_the_maker.cpp",     // the same, to be read out
    "engine/diagnosis/since_start_up.cpp",  // each leg beside the same leg at start-up
};

/// Code only: texts name fields by their keys, comments by their names.
std::string without_texts_and_comments(const std::string& text) {
    static const std::regex left_out(R"re(//[^\n]*|"(?:[^"\\\n]|\\.)*")re");
    return std::regex_replace(text, left_out, " ");
}

bool stands_in(const std::string& path, const std::vector<std::string>& folders) {
    return std::any_of(folders.begin(), folders.end(),
                       [&](const std::string& folder) { return path.rfind(folder, 0) == 0; });
}

Complaints raw_reads(const std::vector<File>& sources) {
    Complaints complaints;
    for (const File& file : sources) {
        if (stands_in(file.path, rooms) || contains(exceptions, file.path)) continue;
        const std::string code = without_texts_and_comments(file.text);
        for (const std::string& pattern : raw_fields) {
            for (const std::string& field : captures(code, pattern))
                complaints.push_back(file.path + " reads " + field + ": take the fact");
        }
    }
    return complaints;
}

/// A reading that was only guessed never decides: whoever takes its value past that says so by name.
Complaints unguarded_values(const std::vector<File>& sources) {
    Complaints complaints;
    for (const File& file : sources) {
        if (stands_in(file.path, rooms) || file.path.rfind("engine/", 0) != 0) continue;
        if (stands_in(file.path, {"engine/explain/", "engine/sheet/"}))
            continue;  // they show what was guessed
        const std::string code = without_texts_and_comments(file.text);
        for (const std::string& read :
             captures(code, R"(\b((?:unit|plate|measured|equipment|controls)\.\w+\.value\b))"))
            complaints.push_back(file.path + " takes " + read + ": a guess may stand there");
    }
    return complaints;
}

/// Words between stages are enumerations: who compares a text compares what another stage may spell otherwise. What a
/// part's terminal does is a word of the catalog.
Complaints compared_texts(const std::vector<File>& sources) {
    const std::vector<std::string> stages{"engine/facts/",  "engine/airflow/", "engine/diagnosis/",
                                          "engine/rules/",  "engine/match/",   "engine/ask/",
                                          "engine/kit/",    "engine/wiring/",  "engine/cost/",
                                          "engine/select/", "engine/explain/"};
    Complaints complaints;
    for (const File& file : sources) {
        if (!stands_in(file.path, stages)) continue;
        for (const std::string& line : captures(file.text, R"re(([^\n]*[=!]= "[a-z][^\n]*))re")) {
            const bool of_a_terminal = line.find("t.function ==") != std::string::npos;
            const bool of_columns = line.find("column.substr") != std::string::npos;
            if (!of_a_terminal && !of_columns) complaints.push_back(file.path + " compares a text:" + line);
        }
    }
    return complaints;
}

}  // namespace

BOOST_AUTO_TEST_CASE(only_job_and_facts_read_what_facts_are_derived_from) {
    CHECK_NO_COMPLAINTS(raw_reads(sources()));
}

BOOST_AUTO_TEST_CASE(a_stage_that_reads_a_raw_field_is_caught) {
    const auto caught = [](const std::string& code) {
        return raw_reads({{"engine/wiring/feed.cpp", code}}).size();
    };
    BOOST_TEST(caught("if (job.equipment.supply) volts = *job.equipment.supply;\n") == 2U);
    BOOST_TEST(caught("const Reading<Voltage>& v = job.measured.line_volts;\n") == 1U);
    BOOST_TEST(caught("bool gas(const PlateReadings& p) { return p.family; }\n") == 1U);
    BOOST_TEST(caught("heat = job.controls.heat;\nold = q.job.plate.capacitor_volts;\n") == 2U);
    BOOST_TEST(caught("lacking.push_back(\"equipment.supply\");  // job.plate.volts\n") == 0U);
    BOOST_TEST(caught("volts = facts.supply.at_motor(); f = facts.family;\n") == 0U);
    BOOST_TEST(raw_reads({{"engine/facts/facts.cpp", "job.plate.volts"}}).empty());
}

BOOST_AUTO_TEST_CASE(no_stage_decides_by_a_guess) {
    CHECK_NO_COMPLAINTS(unguarded_values(sources()));
}

BOOST_AUTO_TEST_CASE(a_stage_that_takes_a_guess_is_caught) {
    BOOST_TEST(unguarded_values({{"engine/cost/ways.cpp", "x = job.plate.bearing.value;\n"}}).size() == 1U);
    BOOST_TEST(unguarded_values({{"engine/cost/ways.cpp", "x = job.plate.bearing.said();\n"}}).empty());
}

BOOST_AUTO_TEST_CASE(no_stage_compares_the_literals_of_another) {
    CHECK_NO_COMPLAINTS(compared_texts(sources()));
}

BOOST_AUTO_TEST_CASE(a_compared_literal_is_caught) {
    const std::string code = "if (plan.refusal == " + std::string("\"serial control\") return;\n");
    BOOST_TEST(compared_texts({{"engine/select/select.cpp", code}}).size() == 1U);
    BOOST_TEST(compared_texts({{"engine/words/kinds.cpp", code}}).empty());
    BOOST_TEST(
        compared_texts({{"engine/select/select.cpp", "if (plan.refusal == Refusal::serial_control)\n"}})
            .empty());
}
