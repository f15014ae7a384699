// Present values and returns for tests/outside/finance.py. A line on stdin is one of
//     npv RATE FLOW ...   irr FLOW ...   mirr FINANCE REINVEST FLOW ...   upv RATE YEARS   crf RATE YEARS
// and the answer one number a line, or "none".
#include <fmt/format.h>

#include <iostream>
#include <sstream>

#include "engine/cost/discount.hpp"

using namespace endbell;

namespace {

std::optional<double> answer(const std::string& what, const std::vector<double>& n) {
    const auto flows = [&](std::ptrdiff_t from) { return Flows<Real>{{n.begin() + from, n.end()}}; };
    if (what == "npv") return net_present_value(RealRate(n.at(0)), flows(1));
    if (what == "upv") return uniform_present_value(RealRate(n.at(0)), calendar_year(n.at(1)));
    if (what == "crf") return capital_recovery(RealRate(n.at(0)), calendar_year(n.at(1)));
    const auto rate = what == "irr" ? internal_rate(flows(0))
                                    : modified_internal_rate(flows(2), RealRate(n.at(0)), RealRate(n.at(1)));
    return rate ? std::optional<double>(rate->value()) : std::nullopt;
}

}  // namespace

int main() {
    std::string line;
    while (std::getline(std::cin, line)) {
        std::istringstream in(line);
        std::string what;
        in >> what;
        std::vector<double> numbers;
        for (double number = 0; in >> number;) numbers.push_back(number);
        const std::optional<double> found = answer(what, numbers);
        fmt::print("{}\n", found ? fmt::format("{:.17g}", *found) : "none");
    }
}
