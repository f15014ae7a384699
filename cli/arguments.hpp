// What was typed, as plain data: the one thing that main.cpp hands to a command.
#pragma once
#include <string>
#include <vector>

namespace endbell::cli {

struct Arguments {
    // for every command
    std::string catalog;
    std::string shop;  // the shop's own file
    bool json = false;
    int width = 80;
    // a job: a file, or a plate line and single fields
    std::string job;
    std::string plate;
    std::vector<std::string> set;  // "plate.rotation=CCWLE"
    std::string part;
    int top = 5;
    // sheet
    std::string reader = "technician";
    std::string html;
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
