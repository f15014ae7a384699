// What was typed, as plain data: the one thing that main.cpp hands to a command.
#pragma once
#include <string>
#include <vector>

namespace endbell::cli {

/// Characters a line that may be asked for.
inline constexpr int narrowest_line = 40;
inline constexpr int widest_line = 400;

struct Arguments {
    // for every command
    std::string catalog;
    std::string shop;  // the shop's own file
    bool json = false;
    int width = 0;  // 0: neither typed nor settled yet
    bool no_config = false;
    // a job: a file, or a plate line and single fields
    std::string job;
    std::string plate;
    std::vector<std::string> set;  // "plate.rotation=CCWLE"
    std::string part;
    int top = 5;
    bool answer = false;  // ask: the questions are put one by one
    // sheet
    std::string reader = "technician";
    std::string html;
    // start-up
    std::string record;
    // rules
    std::string rule;
    // catalog import, check, show, changes
    std::vector<std::string> inputs;
    std::string database;
    std::string columns;
    std::string mode = "whole";
    std::string set_aside;
    bool dry_run = false;
    bool strict = false;
    int generation = 0;
    std::string as_of;
    // batch
    std::string results;
};

}  // namespace endbell::cli
