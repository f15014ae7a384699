#include <boost/test/unit_test.hpp>
#include <filesystem>
#include <fstream>

#include "engine/job/job.hpp"
#include "engine/job/start_up_file.hpp"

using namespace endbell;

namespace {

StartUpRecord head() {
    StartUpRecord record;
    record.name = "Attic \"east\"";
    record.equipment_model = "FX080-4";
    record.equipment_serial = "0612345";
    record.part = "T-050-230";
    record.program = "endbell 0.0";
    return record;
}

std::string filled(const std::string& readings) {
    return "[record]\nformat = \"1\"\nequipment_serial = \"0612345\"\n" + readings;
}

/// Key and line of the first problem.
std::pair<std::string, int> problem_of(const std::string& text) {
    try {
        read_start_up(text, "start.toml");
    } catch (const BadData& bad) {
        return {bad.problems().front().subject, bad.problems().front().at.line};
    }
    return {"none", 0};
}

}  // namespace

BOOST_AUTO_TEST_CASE(an_empty_form_reads_back_as_what_it_is_about_and_without_a_reading) {
    const std::string form =
        write_start_up(head(), {{std::nullopt, StartUpQuantity::amps, 1, "at most 3 A"},
                                {Call::cool_high, StartUpQuantity::static_total, 0, "0.5"}});
    BOOST_TEST(form.find("[cool]") != std::string::npos);
    BOOST_TEST(form.find("amps_1 = \"\"  # expected: at most 3 A") != std::string::npos);
    const StartUpRecord back = read_start_up(form, "start.toml");
    BOOST_TEST(back.name == "Attic \"east\"");
    BOOST_TEST(back.equipment_serial == "0612345");
    BOOST_TEST(back.part == "T-050-230");
    BOOST_TEST(back.program == "endbell 0.0");
    BOOST_TEST(back.readings.empty());
}

BOOST_AUTO_TEST_CASE(up_to_three_readings_are_read_as_the_trade_writes_them) {
    const StartUpRecord r = read_start_up(filled("[heat_low]\nstatic_total = \"0.52; 0.53 in wc; "
                                                 "0.51\"\n[running]\namps_2 = 3.1\nrotation = \"right\"\n"
                                                 "line_volts = [231, 232]\nspeed = \"\"\n"),
                                          "start.toml");
    BOOST_REQUIRE(r.readings.size() == 3);
    BOOST_TEST((r.readings[0].call == Call::heat_low));
    BOOST_TEST(r.readings[0].found == (std::vector<double>{0.52, 0.53, 0.51}),
               boost::test_tools::per_element());
    BOOST_TEST(r.readings[1].leg == 2);
    BOOST_TEST((r.readings[2].what == StartUpQuantity::line_volts));
    BOOST_TEST(r.readings[2].found.size() == 2);
}

BOOST_AUTO_TEST_CASE(what_cannot_be_read_is_told_with_its_key_and_line) {
    BOOST_TEST(problem_of(filled("[cool]\nstatic_total = \"much\"\n")).first == "cool.static_total");
    BOOST_TEST(problem_of(filled("[cool]\nstatic_total = \"much\"\n")).second == 5);
    BOOST_TEST(problem_of(filled("[cool]\nstatic_total = \"0.1; 0.2; 0.3; 0.4\"\n")).first ==
               "cool.static_total");
    BOOST_TEST(problem_of(filled("[cool]\namps = \"-3\"\n")).first == "cool.amps");
    BOOST_TEST(problem_of(filled("[warm]\namps = \"3\"\n")).first == "warm.amps");
    BOOST_TEST(problem_of(filled("[cool]\nwatts = \"3\"\n")).first == "cool.watts");
    BOOST_TEST(problem_of("[record]\nformat = \"2\"\n").first == "record.format");
    BOOST_TEST(problem_of("[cool]\namps = \"3\"\n").first == "record.format");
    BOOST_TEST(problem_of("[record]\nformat = \"1\"\nequipment_serial = 123\n").first ==
               "record.equipment_serial");
    BOOST_TEST(problem_of("[record\n").first == "this line");
}

BOOST_AUTO_TEST_CASE(a_job_takes_the_record_of_its_own_unit_and_of_no_other) {
    const auto folder = std::filesystem::temp_directory_path() / "endbell-start-up-file";
    std::filesystem::create_directories(folder);
    std::ofstream(folder / "kept.toml") << filled("[cool]\nstatic_total = \"0.52\"\n");
    const auto with = [&](const std::string& serial, const std::string& file) {
        FailedUnit job =
            read_job("[unit]\nequipment_serial = \"" + serial + "\"\nbaseline = \"" + file + "\"\n", "j");
        attach_start_up(job, folder);
        return job;
    };
    BOOST_TEST(with("06-12345", "kept.toml").start_up->readings.size() == 1);  // written with a dash
    BOOST_TEST((with("0612345", "kept.toml").digest != read_job("[unit]\n", "j").digest));
    BOOST_CHECK_THROW(with("0612346", "kept.toml"), BadData);
    BOOST_CHECK_THROW(with("0612345", "none.toml"), BadData);
    BOOST_CHECK_THROW(with("0612345", "."), BadData);
    FailedUnit no_serial = read_job("[unit]\nbaseline = \"kept.toml\"\n", "j");
    BOOST_CHECK_THROW(attach_start_up(no_serial, folder), BadData);
    std::ofstream(folder / "empty.toml") << filled("[cool]\nstatic_total = \"\"\n");
    BOOST_CHECK_THROW(with("0612345", "empty.toml"), BadData);
    FailedUnit none = read_job("[unit]\n", "j");
    attach_start_up(none, folder);
    BOOST_TEST(!none.start_up);
    std::filesystem::remove_all(folder);
}
