// 120 plates as they are typed at a counter, each with what a person reads from it: plate_lines.tsv, a third of it written by
// somebody who had not read the reader. line TAB read (key=value; ...) TAB asked (key; ...) TAB understood, and no value.
#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <fstream>
#include <iostream>
#include <map>
#include <set>
#include <sstream>

#include "engine/base/text.hpp"
#include "engine/fields/job_key.hpp"
#include "engine/job/job.hpp"
#include "engine/words/plate_text.hpp"

using namespace endbell;

namespace {

/// None is read wrong; of a hundred words at most two are not understood.
constexpr double most_lost = 0.02;

struct PlateLine {
    std::string text;
    std::map<std::string, std::string> read;  // by the key's name
    std::set<std::string> asked;
};

std::vector<std::string> pieces(const std::string& text, char at) {
    std::vector<std::string> out;
    std::istringstream in(text);
    for (std::string piece; std::getline(in, piece, at);) {
        const std::string kept(trimmed(piece));
        if (!kept.empty()) out.push_back(kept);
    }
    return out;
}

std::vector<PlateLine> plate_lines() {
    std::ifstream in(ENDBELL_ROOT "/tests/job/plate_lines.tsv");
    std::vector<PlateLine> lines;
    std::string row;
    std::getline(in, row);  // the header
    while (std::getline(in, row)) {
        std::vector<std::string> cells(4);
        std::istringstream cut(row);
        for (std::string& cell : cells) std::getline(cut, cell, '\t');
        if (cells[0].empty()) continue;
        PlateLine line{cells[0], {}, {}};
        for (const std::string& pair : pieces(cells[1], ';'))
            line.read.emplace(pair.substr(0, pair.find('=')), pair.substr(pair.find('=') + 1));
        for (const std::string& key : pieces(cells[2], ';')) line.asked.insert(key);
        lines.push_back(line);
    }
    return lines;
}

/// "power" is a key of the plate or of the unit.
const JobKey& key_named(const std::string& name) {
    for (const char* group : {"plate.", "unit."}) {
        if (const JobKey* key = job_key(group + name)) return *key;
    }
    BOOST_FAIL("no such key: " << name);
    throw 0;
}

int words_in(const std::string& text) {
    std::istringstream in(text);
    return static_cast<int>(std::distance(std::istream_iterator<std::string>(in), {}));
}

struct Tally {
    int wrong = 0, unread = 0, not_asked = 0, words = 0, lost = 0;
};

void compare(const PlateLine& line, Tally& tally) {
    const PlateText plate = read_plate(line.text);
    FailedUnit found;
    found.unit = plate.unit;
    found.plate = plate.plate;
    tally.words += words_in(line.text);
    std::string told;
    for (const std::string& word : plate.not_understood) {
        tally.lost += words_in(word);
        told += " lost " + word;
    }
    for (const JobKey& key : job_keys()) {
        if (key.group != "plate" && key.group != "unit") continue;
        const std::string name(key.name);
        const auto expected = line.read.find(name);
        const bool open = key.open(found).has_value();
        const std::string value = open ? "" : key.text(found);
        FailedUnit wanted;
        if (expected != line.read.end() && set_key(wanted, key.id(), expected->second))
            BOOST_ERROR("the list's own value is not read: " << name << " = " << expected->second);
        const std::string right = expected != line.read.end() ? key.text(wanted) : "";
        if (!value.empty() && value != right) {
            ++tally.wrong;
            told += " WRONG " + name + "=" + value;
        } else if (value.empty() && !right.empty()) {
            ++tally.unread;
            told += " unread " + name;
        }
        if (line.asked.count(name) > 0 && value.empty() && !open) {
            ++tally.not_asked;
            told += " not asked " + name;
        }
    }
    if (!told.empty()) std::cout << line.text << " |" << told << '\n';
}

}  // namespace

BOOST_AUTO_TEST_CASE(plate_lines_are_read_as_a_person_reads_them) {
    const std::vector<PlateLine> lines = plate_lines();
    BOOST_TEST(lines.size() == 120U);
    for (const PlateLine& line : lines) {
        for (const auto& [name, value] : line.read) key_named(name);
    }
    Tally tally;
    for (const PlateLine& line : lines) compare(line, tally);
    const double share_lost = static_cast<double>(tally.lost) / tally.words;
    std::cout << "plate lines: " << tally.wrong << " values wrong, " << tally.unread << " not read, "
              << tally.not_asked << " not asked, " << tally.lost << " of " << tally.words
              << " words not understood\n";
    BOOST_TEST(tally.wrong == 0);
    BOOST_TEST(tally.unread == 0);
    BOOST_TEST(tally.not_asked == 0);
    BOOST_TEST(share_lost <= most_lost);
}
