// Random text that looks like a plate, a cell or rubbish, and a fixed seed: a failure is the same on every
// run.
#pragma once
#include <rapidcheck.h>
#include <rapidcheck/boost_test.h>

#include <string>
#include <vector>

namespace endbell::test {

inline const std::vector<std::string>& plate_words() {
    static const std::vector<std::string> words{
        "1/2",   "hp",        "1/3hp",    "½",    ".5",      "0,5",   "208-230", "115",  "115/230",
        "V",     "24V",       "460-3-60", "1075", "rpm",     "825",   "1075/3",  "3spd", "5tap",
        "4T",    "speed",     "CW",       "CCW",  "CCWLE",   "SE",    "LE",      "DS",   "rev",
        "1/2x5", "x",         "6",        "flat", "5.6",     "48Y",   "56",      "FLA",  "3.6",
        "3.6A",  "1.4-1.4",   "5",        "MFD",  "7.5/370", "440",   "45/5",    "psc",  "ECM",
        "SP",    "shaded",    "TEAO",     "open", "ball",    "BB",    "belly",   "band", "studs",
        "1ph",   "3PH",       "60Hz",     "6P",   "AMB",     "60C",   "SF",      "1.0",  "INS",
        "B",     "condenser", "fan",      "ID",   "shaft",   "up",    "auto",    "p/n",  "00-17A",
        "-",     "N/A",       "/",        ",",    "zonk",    "2-Jan", "45293",   "µ",    "Ø",
        "1-1/2", "thru",      "or"};
    return words;
}

inline rc::Gen<std::string> plate_word() {
    return rc::gen::oneOf(rc::gen::elementOf(plate_words()), rc::gen::elementOf(plate_words()),
                          rc::gen::elementOf(plate_words()),
                          rc::gen::nonEmpty(rc::gen::container<std::string>(rc::gen::inRange('!', '~'))));
}

/// A few plate words in a row, or any bytes.
inline rc::Gen<std::string> any_text() {
    const auto line = rc::gen::map(rc::gen::container<std::vector<std::string>>(plate_word()),
                                   [](const std::vector<std::string>& words) {
                                       std::string text;
                                       for (const std::string& word : words)
                                           text += (text.empty() ? "" : " ") + word;
                                       return text;
                                   });
    return rc::gen::resize(20, rc::gen::oneOf(line, line, rc::gen::arbitrary<std::string>()));
}

}  // namespace endbell::test
