#include "engine/explain/drawing.hpp"

#include <algorithm>
#include <cmath>
#include <optional>

#include "engine/base/text.hpp"

namespace endbell::inline explain {

namespace {

constexpr double margin = 16;
constexpr double box_width = 76;
constexpr double gap = 30;          // of wire between two boxes
constexpr double row_height = 46;   // of a row that may end in a contact
constexpr double wire_height = 26;  // of a row that is one wire
constexpr double advance = 0.62;    // of the type size: a monospaced letter, a little wide

double letters_wide(std::size_t letters) {
    return static_cast<double>(letters) * 11 * advance;
}

/// A place's name as it is drawn: what cannot be seen is shown, and a name longer than any real one is cut.
std::string label(const std::string& name) {
    constexpr std::size_t longest = 32;
    const std::string shown = visible(name);
    return shown.size() <= longest ? shown : shortened(shown, 8);
}

/// Another end of the same pole.
NetPlace sibling(NetPlace pole_end, NetPlace::Kind other) {
    pole_end.kind = other;
    return pole_end;
}
NetPlace open_end(const NetPlace& pole_end) {
    return sibling(pole_end, NetPlace::Kind::pole_open);
}
NetPlace closed_end(const NetPlace& pole_end) {
    return sibling(pole_end, NetPlace::Kind::pole_closed);
}

/// The page ends where the last thing on it does.
void fit_page(Drawing& drawing, double bottom) {
    double right = 0;
    for (const DrawnText& t : drawing.texts) right = std::max(right, extent(t).x + extent(t).width);
    for (const DrawnBox& b : drawing.boxes) right = std::max(right, b.x + b.width);
    for (const DrawnLine& l : drawing.lines) right = std::max(right, l.x2);
    drawing.width = right + margin;
    drawing.height = bottom + margin;
}

class Ladder {
  public:
    explicit Ladder(const WiringPlan& plan) : plan_(plan) {}

    Drawing drawn() {
        out_.title = "after";
        y_ = margin;
        measure();
        coils();
        contacts();
        terminals();
        fit_page(out_, y_ - 4);
        return out_;
    }

  private:
    // ---- the netlist, looked at

    std::vector<NetPlace> fed_by(const NetPlace& from) const {
        std::vector<NetPlace> to;
        for (const Wire& w : plan_.wires) {
            if (!w.note && w.from == from) to.push_back(w.to);
        }
        return to;
    }
    std::optional<NetPlace> feeder(const NetPlace& to) const {
        for (const Wire& w : plan_.wires) {
            if (!w.note && w.to == to) return w.from;
        }
        return std::nullopt;
    }
    /// Does this contact bring sources together? Then its throws are fed, not its common.
    bool gathers(const NetPlace& end) const { return feeder(open_end(end)) || feeder(closed_end(end)); }
    int gather_depth(const std::optional<NetPlace>& place) const {
        if (!place || !place->is_pole()) return 0;
        return 1 + std::max(gather_depth(feeder(open_end(*place))), gather_depth(feeder(closed_end(*place))));
    }
    int spread_depth(const NetPlace& to) const {
        if (!to.is_pole()) return 0;
        int deepest = 0;
        for (const NetPlace& end : {open_end(to), closed_end(to)}) {
            for (const NetPlace& next : fed_by(end)) deepest = std::max(deepest, spread_depth(next));
        }
        return 1 + deepest;
    }

    /// A conductor worth a tree: from a source, or from the root of gathered sources, to a tap or a contact.
    struct Trunk {
        NetPlace from, to;
    };
    std::vector<Trunk> trunks() const {
        std::vector<Trunk> all;
        for (const Wire& w : plan_.wires) {
            if (w.note || w.to.is_coil() || w.from.is_coil()) continue;
            const bool source =
                !w.from.is_pole() || (w.from.kind == NetPlace::Kind::pole_common && gathers(w.from));
            const bool into_gathering = w.to.is_pole() && w.to.kind != NetPlace::Kind::pole_common;
            if (source && !into_gathering) all.push_back({w.from, w.to});
        }
        return all;
    }
    std::string name(const NetPlace& place) const { return text_of(plan_, place); }

    // ---- the page

    void measure() {
        std::size_t longest = 6;
        for (const Wire& w : plan_.wires) {
            if (!w.from.is_pole()) longest = std::max(longest, label(name(w.from)).size());
        }
        left_ = margin + letters_wide(longest) + 8;
        int left = 0, right = 0;
        for (const Trunk& t : trunks()) {
            left = std::max(left, gather_depth(t.from));
            right = std::max(right, spread_depth(t.to));
        }
        conductor_ = left_ + (left > 0 ? gap : 0) + left * (box_width + gap);
        tap_x_ = conductor_ + gap + right * (box_width + gap);
    }

    void line(double x1, double x2, double y) {
        if (x2 > x1) out_.lines.push_back({x1, y, x2, y});
    }
    void text(double x, double y, const std::string& words, Anchor anchor, bool bold = false) {
        out_.texts.push_back({x, y, label(words), anchor, 11, bold});
    }
    /// A source's name at the left edge; its line starts after it.
    void source(const std::optional<NetPlace>& place, double y) {
        text(left_ - 8, y + 4, place ? name(*place) : "", Anchor::end, true);
    }

    void contact(const NetPlace& end, double x, double top, double bottom, double common, bool common_left) {
        out_.boxes.push_back({x, top - 27, box_width, bottom - top + 27 + 11});
        const Relay& relay = plan_.relays[static_cast<std::size_t>(end.number)];
        text(x + box_width / 2, top - 15,
             relay.name + (relay.contacts > 1 ? " pole " + std::to_string(end.pole) : ""), Anchor::middle,
             true);
        const double throws = common_left ? x + box_width - 4 : x + 4;
        const Anchor outward = common_left ? Anchor::end : Anchor::start;
        text(throws, top + 4, "NO", outward);
        text(throws, bottom + 4, "NC", outward);
        text(common_left ? x + 4 : x + box_width - 4, common + 4, "COM",
             common_left ? Anchor::start : Anchor::end);
    }

    double next_row() {
        const double row = y_ + 27;
        y_ += row_height;
        return row;
    }
    double next_wire() {
        const double row = y_ + 14;
        y_ += wire_height;
        return row;
    }

    /// Draws everything that feeds `place`, whose line ends at `x`; returns the line's row.
    double gathered(const std::optional<NetPlace>& place, double x) {
        if (!place || !place->is_pole()) {
            const double row = next_row();
            source(place, row);
            line(left_, x, row);
            return row;
        }
        const double left = x - gap - box_width;
        const double top = gathered(feeder(open_end(*place)), left);
        const double bottom = gathered(feeder(closed_end(*place)), left);
        const double common = (top + bottom) / 2;
        contact(*place, left, top, bottom, common, false);
        line(left + box_width, x, common);
        return common;
    }

    /// Draws everything that `to` leads on to; the line arrives at `x`. Returns the row where it must arrive.
    double spread(const NetPlace& to, double x) {
        if (!to.is_pole()) {
            const double row = next_row();
            line(x, tap_x_, row);
            text(tap_x_ + 8, row + 4, name(to), Anchor::start, true);
            return row;
        }
        const double right = x + box_width;
        const double top = throw_row(open_end(to), right);
        const double bottom = throw_row(closed_end(to), right);
        const double common = (top + bottom) / 2;
        contact(to, x, top, bottom, common, true);
        return common;
    }
    double throw_row(const NetPlace& from, double right) {
        const std::vector<NetPlace> onward = fed_by(from);
        if (onward.empty()) {
            const double row = next_row();
            text(right + 8, row + 4, "open", Anchor::start);
            return row;
        }
        const double row = spread(onward.front(), right + gap);
        line(right, right + gap, row);
        return row;
    }

    void coils() {
        for (int r = 0; r < static_cast<int>(plan_.relays.size()); ++r) {
            const double row = next_row();
            source(feeder(NetPlace::coil_feed(r)), row);
            line(left_, left_ + gap, row);
            const double x = left_ + gap;
            out_.boxes.push_back({x, row - 13, 2 * box_width, 26});
            text(x + 4, row + 4, "A1", Anchor::start);
            text(x + box_width, row + 4, plan_.relays[static_cast<std::size_t>(r)].name + " coil",
                 Anchor::middle, true);
            text(x + 2 * box_width - 4, row + 4, "A2", Anchor::end);
            line(x + 2 * box_width, x + 2 * box_width + gap, row);
            const std::vector<NetPlace> returns = fed_by(NetPlace::coil_return(r));
            text(x + 2 * box_width + gap + 8, row + 4, returns.empty() ? "?" : name(returns.front()),
                 Anchor::start, true);
        }
    }

    /// A lone source stands level with its tree. Of two trees that differ in height the conductor steps at
    /// its middle, clear of every other line.
    void contacts() {
        y_ += 8;
        for (const Trunk& trunk : trunks()) {
            if (!trunk.from.is_pole() && !trunk.to.is_pole()) {
                const double row = next_wire();
                source(trunk.from, row);
                line(left_, tap_x_, row);
                text(tap_x_ + 8, row + 4, name(trunk.to), Anchor::start, true);
                continue;
            }
            const double start = y_;
            const double right = spread(trunk.to, conductor_ + gap);
            if (!trunk.from.is_pole()) {
                source(trunk.from, right);
                line(left_, conductor_ + gap, right);
                continue;
            }
            const double end = y_;
            y_ = start;
            const double left = gathered(trunk.from, conductor_);
            y_ = std::max(y_, end);
            const double middle = conductor_ + gap / 2;
            line(conductor_, middle, left);
            if (std::abs(left - right) > 0.5) out_.lines.push_back({middle, left, middle, right});
            line(middle, conductor_ + gap, right);
        }
    }

    void terminals() {
        const double notes = left_ + 2 * gap + 8 + letters_wide(longest_terminal() + 3);
        for (const Wire& w : plan_.wires) {
            if (!w.note) continue;
            const double row = next_wire();
            source(w.from, row);
            line(left_, left_ + 2 * gap, row);
            text(left_ + 2 * gap + 8, row + 4, name(w.to), Anchor::start, true);
            text(notes, row + 4, std::string(word(w.note)), Anchor::start);
        }
    }
    std::size_t longest_terminal() const {
        std::size_t longest = 0;
        for (const Wire& w : plan_.wires) {
            if (w.note) longest = std::max(longest, label(name(w.to)).size());
        }
        return longest;
    }

    const WiringPlan& plan_;
    Drawing out_;
    double left_ = 0;       // where lines begin, clear of the names of the sources
    double y_ = 0;          // the next free row's top
    double conductor_ = 0;  // where gathering ends and spreading begins
    double tap_x_ = 0;
};

}  // namespace

DrawnBox extent(const DrawnText& t) {
    const double width = static_cast<double>(t.text.size()) * t.size * advance;
    const double left = t.anchor == Anchor::start ? t.x
                        : t.anchor == Anchor::end ? t.x - width
                                                  : t.x - width / 2;
    return {left, t.y - t.size * 0.8, width, t.size};
}

Drawing draw(const WiringPlan& plan) {
    return Ladder(plan).drawn();
}

Drawing draw_before(const FailedUnit& job, const Facts& facts) {
    Drawing out;
    out.title = "before";
    const std::vector<Terminal> none;
    const std::vector<Terminal>& terminals = job.controls.terminals ? *job.controls.terminals : none;
    std::size_t longest = 6;
    for (const Terminal& t : terminals) longest = std::max(longest, label(t.name).size());
    const double left = margin + letters_wide(longest) + 8;
    const std::string motor = facts.family ? std::string(word(*facts.family)) : "motor";
    double row = margin + 14;
    for (const Terminal& t : terminals) {
        out.texts.push_back({left - 8, row + 4, label(t.name), Anchor::end, 11, true});
        out.lines.push_back({left, row, left + 2 * gap, row});
        out.texts.push_back({left + 2 * gap + 8, row + 4,
                             motor + ": " + (t.call ? std::string(word(*t.call)) : "not known"),
                             Anchor::start, 11, false});
        row += wire_height;
    }
    fit_page(out, terminals.empty() ? row : row - wire_height + 8);
    return out;
}

}  // namespace endbell::inline explain
