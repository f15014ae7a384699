// What is said, as a tree: made here, rendered in sheet/. Text is plain; a renderer escapes it.
#pragma once
#include <string>
#include <utility>
#include <variant>
#include <vector>

#include "engine/explain/drawing.hpp"

namespace endbell::inline explain {

/// What to do, before anything else is said: "Take" beside the part, and what that rests on.
struct Decision {
    std::string word;
    std::string what;
    std::vector<std::string> because;
};

struct Heading {
    std::string text;
};

struct Paragraph {
    std::string text;
};

struct Bullets {
    std::vector<std::string> items;
};

/// Things to do in this order: numbered.
struct Steps {
    std::vector<std::string> items;
};

/// Name beside value: "Line voltage    231 V at the motor".
struct Pairs {
    std::vector<std::pair<std::string, std::string>> rows;
};

struct Grid {
    std::vector<std::string> header;
    std::vector<std::vector<std::string>> rows;  // each as long as the header
    std::string caption;
    std::vector<std::size_t> amounts = {};  // columns of numbers to be compared: flush right on a page
};

/// WARNING, CAUTION or NOTICE: the open signal words.
struct Warning {
    std::string signal_word;
    std::string text;
};

/// Lines whose spacing carries meaning: a drawing in characters.
struct Plain {
    std::vector<std::string> lines;
};

/// A drawing, and what a reader who cannot see it is told. Text renderings leave it out: a table says the
/// same.
struct Figure {
    Drawing drawing;
    std::string description;
};

/// One way through the years: what it has cost by the end of year 0, 1, 2 ...
struct YearLine {
    std::string name;  // of one letter, as in the table of ways
    std::string last;  // the last value, as it is said
    std::vector<double> values;
};
struct YearLines {
    std::string unit;
    std::vector<YearLine> lines;
};

/// What one call needs, low to high, and what it gets. Low and high both 0: not known.
struct WindowBar {
    std::string name, said;
    double low = 0, high = 0, value = 0, plus_minus = 0;
};
struct WindowBars {
    std::string unit;
    std::vector<WindowBar> bars;
};

/// A chart as numbers. `numbers` says the same as a table, for a rendering without drawings and for a reader who
/// cannot see them.
struct Chart {
    std::string title;
    std::string description;  // the drawing in words
    std::string note;         // how to read it, and what is not on it
    std::variant<YearLines, WindowBars> drawn;
    Grid numbers;
};

using Block =
    std::variant<Decision, Heading, Paragraph, Bullets, Steps, Pairs, Grid, Warning, Plain, Figure, Chart>;

struct Document {
    std::string title;
    std::vector<Block> blocks;
    std::string stamp;  // program, rules, catalog generation, input: the last line of every rendering

    std::vector<std::string> source_ids =
        {};  // named in the blocks; listed with title and basis before the stamp

    void add(Block block) { blocks.push_back(std::move(block)); }
};

}  // namespace endbell::inline explain
