// What is said, as a tree: made here, rendered in sheet/. Text is plain; a renderer escapes it.
#pragma once
#include <string>
#include <utility>
#include <variant>
#include <vector>

#include "engine/wiring/drawing.hpp"

namespace endbell {

struct Heading {
    std::string text;
};

struct Paragraph {
    std::string text;
};

struct Bullets {
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

using Block = std::variant<Heading, Paragraph, Bullets, Pairs, Grid, Warning, Plain, Figure>;

struct Document {
    std::string title;
    std::vector<Block> blocks;
    std::string stamp;  // program, rules, catalog generation, input: the last line of every rendering

    std::vector<std::string> source_ids =
        {};  // named in the blocks; listed with title and basis before the stamp

    void add(Block block) { blocks.push_back(std::move(block)); }
};

}  // namespace endbell
