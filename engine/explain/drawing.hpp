// The plan as a ladder: coils first, then the contacts as trees that grow from left to right, then the
// motor's own terminals. Every line is horizontal and every tree keeps its own rows, so no two lines cross.
// Black on white only.
#pragma once
#include <string>
#include <vector>

#include "engine/wiring/wiring.hpp"

namespace endbell::inline explain {

enum class Anchor { start, middle, end };

/// Units of a drawing are CSS pixels, y downwards. Text is set in a monospaced face, so its width is known.
struct DrawnBox {
    double x = 0, y = 0, width = 0, height = 0;
};
struct DrawnLine {
    double x1 = 0, y1 = 0, x2 = 0, y2 = 0;
};
struct DrawnText {
    double x = 0, y = 0;  // of the baseline
    std::string text;
    Anchor anchor = Anchor::start;
    double size = 11;
    bool bold = false;
};
/// Where a text lies on the page.
DrawnBox extent(const DrawnText& text);

struct Drawing {
    std::string title;
    double width = 0, height = 0;
    std::vector<DrawnBox> boxes;
    std::vector<DrawnLine> lines;
    std::vector<DrawnText> texts;
};

/// Words on it are places of the netlist and a few fixed ones ("coil", "open", "motor").
Drawing draw(const WiringPlan& plan);

/// What the job says was there before: each terminal and the call it gave the old motor.
Drawing draw_before(const FailedUnit& job, const Facts& facts);

}  // namespace endbell::inline explain
