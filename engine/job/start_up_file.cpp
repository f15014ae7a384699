#include "engine/job/start_up_file.hpp"

#include <algorithm>
#include <cmath>
#include <fstream>
#include <sstream>

#include "engine/base/hash.hpp"
#include "engine/base/text.hpp"
#include "engine/job/job_text.hpp"
#include "engine/job/toml_text.hpp"
#include "engine/words/air.hpp"
#include "engine/words/electrical.hpp"
#include "engine/words/turning.hpp"

namespace endbell::inline job {

namespace {

constexpr std::string_view format = "1";
constexpr std::string_view whole_unit = "running";
constexpr std::size_t most_readings = 3;

std::string underscored(std::string_view word) {
    std::string text(word);
    std::replace(text.begin(), text.end(), ' ', '_');
    return text;
}

std::string group_of(const std::optional<Call>& call) {
    return call ? underscored(word(*call)) : std::string(whole_unit);
}

std::string key_of(StartUpQuantity what, int leg) {
    return underscored(word(what)) + (leg > 0 ? "_" + std::to_string(leg) : "");
}

// ---- reading

template <class Q, class Unit>
std::optional<double> in(const Read<Q>& read, const Unit& unit) {
    if (read.failed() || !read.reading) return std::nullopt;
    const double value = read.reading->in(unit);
    return std::isfinite(value) ? std::optional(value) : std::nullopt;
}

std::optional<double> number_of(StartUpQuantity what, const Folded& words) {
    switch (what) {
        case StartUpQuantity::line_volts:
            return in(read_voltage(words), volt);
        case StartUpQuantity::amps:
            return in(read_current(words), ampere);
        case StartUpQuantity::static_total:
            return in(read_pressure(words), inch_water);
        case StartUpQuantity::speed:
            return in(read_measured_speed(words), rpm);
        case StartUpQuantity::airflow:
            return in(read_airflow(words), cfm);
        case StartUpQuantity::rise:
            return in(read_rise(words), fahrenheit_degree);
    }
    return std::nullopt;
}

std::string expected_of(StartUpQuantity what) {
    switch (what) {
        case StartUpQuantity::line_volts:
            return "up to three readings in V, such as \"231; 232\"";
        case StartUpQuantity::amps:
            return "up to three readings in A, such as \"3.1; 3.2\"";
        case StartUpQuantity::static_total:
            return "up to three readings in in. w.c., such as \"0.52; 0.53\"";
        case StartUpQuantity::speed:
            return "up to three readings in rpm, such as \"1060\"";
        case StartUpQuantity::airflow:
            return "up to three readings in cfm, such as \"1180; 1190\"";
        case StartUpQuantity::rise:
            return "up to three readings in F degrees, such as \"55; 56\"";
    }
    return "";
}

struct RecordLine {
    std::optional<Call> call;
    StartUpQuantity what;
    int leg;
};

/// What group and key stand for; nothing for any other.
std::optional<RecordLine> line_of(const TomlEntry& entry) {
    std::optional<Call> call;
    if (entry.group != whole_unit) {
        for (const Word<Call>& one : Words<Call>::table) {
            if (underscored(one.text) == entry.group) call = one.value;
        }
        if (!call) return std::nullopt;
    }
    for (const Word<StartUpQuantity>& one : Words<StartUpQuantity>::table) {
        for (int leg = 0; leg <= 3; ++leg) {
            if (key_of(one.value, leg) == entry.name) return RecordLine{call, one.value, leg};
        }
    }
    return std::nullopt;
}

class RecordReader {
  public:
    explicit RecordReader(const std::string& filename) { record_.file = filename; }

    StartUpRecord run(std::string_view text) {
        const TomlDocument document = parse_toml(text, record_.file);
        problems_ = document.problems;
        for (const TomlEntry& entry : document.entries) take(entry);
        if (!versioned_ && problems_.empty())
            problems_.push_back({{record_.file, 0, 0},
                                 "record.format",
                                 "",
                                 std::string(format),
                                 "begin one with endbell start-up JOB --record FILE"});
        if (!problems_.empty()) throw BadData(problems_);
        return std::move(record_);
    }

  private:
    void take(const TomlEntry& entry) {
        if (entry.name.empty()) return;
        if (entry.group == "record") return take_head(entry);
        if (entry.group == whole_unit && entry.name == "rotation") return;  // words, of which no number comes
        const std::optional<RecordLine> line = line_of(entry);
        if (!line) {
            problems_.push_back({entry.key_at, entry.group + "." + entry.name, entry.value,
                                 "a reading of a start-up, such as cool.static_total",
                                 "remove it, or write it as the form has it"});
            return;
        }
        take_readings(entry, *line);
    }

    void take_head(const TomlEntry& entry) {
        const auto is = [&](std::string_view name) { return entry.name == name; };
        if (is("format")) {
            versioned_ = true;
            if (entry.value != format)
                problems_.push_back({entry.value_at, "record.format", entry.value, std::string(format),
                                     "read it with the version of endbell that wrote it"});
            return;
        }
        std::string* to = is("unit")               ? &record_.name
                          : is("equipment_model")  ? &record_.equipment_model
                          : is("equipment_serial") ? &record_.equipment_serial
                          : is("part")             ? &record_.part
                          : is("program")          ? &record_.program
                                                   : nullptr;
        if (to == nullptr) {
            problems_.push_back({entry.key_at, "record." + entry.name, entry.value,
                                 "format, unit, equipment_model, equipment_serial, part or program",
                                 "remove it"});
        } else if (entry.number) {
            problems_.push_back({entry.value_at, "record." + entry.name, entry.value, "a text in quotes",
                                 "a bare number loses its zeros: write \"...\""});
        } else {
            *to = entry.value;
        }
    }

    /// What is left empty was not read.
    void take_readings(const TomlEntry& entry, const RecordLine& line) {
        StartUpFound found{line.call, line.what, line.leg, {}};
        for (const std::string& piece : split(entry.value, ';')) {
            const std::string_view text = trimmed(piece);
            if (text.empty()) continue;
            const std::optional<double> number = number_of(line.what, fold(text));
            if (!number || *number < 0 || found.found.size() == most_readings) {
                problems_.push_back({entry.value_at, entry.group + "." + entry.name, entry.value,
                                     expected_of(line.what), "correct it, or leave it empty"});
                return;
            }
            found.found.push_back(*number);
        }
        if (!found.found.empty()) record_.readings.push_back(std::move(found));
    }

    StartUpRecord record_;
    std::vector<Problem> problems_;
    bool versioned_ = false;
};

/// What was written with and without blanks and dashes is one number.
void hold_to_the_unit(const FailedUnit& job, const StartUpRecord& record) {
    const Reading<std::string>& serial = job.unit.equipment_serial;
    const Place at{record.file, 0, 0};
    if (!serial || trimmed(*serial).empty())
        throw BadData(Problem{job.unit.baseline.at, "unit.equipment_serial", "",
                              "the serial number of the unit that " + record.file + " was kept of",
                              "write it into the job: without it nobody knows whose readings they are"});
    if (record.equipment_serial.empty())
        throw BadData(Problem{at, "record.equipment_serial", "", "the serial number of the unit",
                              "write it into the file, from the unit's own plate"});
    if (number_key(record.equipment_serial) != number_key(*serial))
        throw BadData(Problem{at, "record.equipment_serial", record.equipment_serial,
                              "the serial number of this job's unit, " + *serial,
                              "name the file of this unit in unit.baseline"});
    if (record.readings.empty())
        throw BadData(Problem{at, "the start-up record", "", "one reading at least",
                              "fill in what was found, or leave unit.baseline out"});
}

}  // namespace

std::string write_start_up(const StartUpRecord& head, const std::vector<StartUpLine>& lines) {
    std::string out =
        "# What was found when the unit was started. Between the quotes of each line stand up to three "
        "readings, as in\n"
        "# \"0.52; 0.53; 0.51\"; a line that was not read stays empty. A later job of this unit names this "
        "file:\n"
        "#     [unit]\n"
        "#     baseline = \"THIS FILE\"\n"
        "[record]\n";
    out += "format = " + in_quotes(format) + "\n";
    out += "program = " + in_quotes(head.program) + "\n";
    out += "unit = " + in_quotes(head.name) + "\n";
    out += "equipment_model = " + in_quotes(head.equipment_model) + "\n";
    out += "equipment_serial = " + in_quotes(head.equipment_serial) +
           (head.equipment_serial.empty() ? "  # from the unit's own plate: without it nothing is compared"
                                          : "") +
           "\n";
    out += "part = " + in_quotes(head.part) + "\n";
    std::string group;
    for (const StartUpLine& line : lines) {
        if (group_of(line.call) != group) {
            group = group_of(line.call);
            out += "\n[" + group + "]\n";
            if (!line.call) out += "rotation = \"\"\n";
        }
        out += key_of(line.what, line.leg) + " = \"\"  # expected: " + visible(line.expected) + "\n";
    }
    return out;
}

StartUpRecord read_start_up(std::string_view text, const std::string& filename) {
    return RecordReader(filename).run(text);
}

void attach_start_up(FailedUnit& job, const std::filesystem::path& folder) {
    job.start_up.reset();
    const Reading<std::string>& named = job.unit.baseline;
    if (!named || trimmed(*named).empty()) return;
    const std::filesystem::path path = folder / std::filesystem::path(*named);
    std::ifstream file(path, std::ios::binary);
    std::ostringstream text;
    const bool readable = file && !std::filesystem::is_directory(path);
    if (readable && file.peek() != std::ifstream::traits_type::eof()) text << file.rdbuf();
    if (!readable || !file)
        throw BadData(Problem{named.at, "unit.baseline", *named,
                              "a start-up record that can be read, at " + path.string(),
                              "check the path: it is taken from the job file's own folder"});
    StartUpRecord record = read_start_up(text.str(), path.string());
    hold_to_the_unit(job, record);
    job.start_up = std::move(record);
    job.digest = fingerprint(job.digest + "\n" + text.str());  // an answer rests on it too
}

}  // namespace endbell::inline job
