// Directions of rotation. The end a person looked from is never assumed.
#include <algorithm>
#include <array>
#include <optional>
#include <utility>

#include "engine/words/turning.hpp"

namespace endbell::inline words {

namespace {

enum class End { shaft, lead, unclear, none };

template <class T>
using Spelling = std::pair<std::string_view, T>;

// Longest first, because one spelling may start with another.
constexpr std::array spins{Spelling<Spin>{"counterclockwise", Spin::ccw},
                           Spelling<Spin>{"anticlockwise", Spin::ccw},
                           Spelling<Spin>{"clockwise", Spin::cw},
                           Spelling<Spin>{"counter", Spin::ccw},
                           Spelling<Spin>{"ccw", Spin::ccw},
                           Spelling<Spin>{"acw", Spin::ccw},
                           Spelling<Spin>{"cw", Spin::cw},
                           Spelling<Spin>{"right", Spin::cw},
                           Spelling<Spin>{"left", Spin::ccw}};

// Opposite of the shaft end is the lead end, and the reverse. "OE" is output end to some and opposite end to
// others.
constexpr std::array ends{Spelling<End>{"se", End::shaft},
                          Spelling<End>{"shaftend", End::shaft},
                          Spelling<End>{"shaft", End::shaft},
                          Spelling<End>{"de", End::shaft},
                          Spelling<End>{"driveend", End::shaft},
                          Spelling<End>{"pe", End::shaft},
                          Spelling<End>{"pulleyend", End::shaft},
                          Spelling<End>{"outputend", End::shaft},
                          Spelling<End>{"ole", End::shaft},
                          Spelling<End>{"opplead", End::shaft},
                          Spelling<End>{"oppleadend", End::shaft},
                          Spelling<End>{"oppositeleadend", End::shaft},
                          Spelling<End>{"le", End::lead},
                          Spelling<End>{"leadend", End::lead},
                          Spelling<End>{"lead", End::lead},
                          Spelling<End>{"leads", End::lead},
                          Spelling<End>{"ose", End::lead},
                          Spelling<End>{"oppshaft", End::lead},
                          Spelling<End>{"oppshaftend", End::lead},
                          Spelling<End>{"oppositeshaft", End::lead},
                          Spelling<End>{"oppositeshaftend", End::lead},
                          Spelling<End>{"ode", End::lead},
                          Spelling<End>{"nde", End::lead},
                          Spelling<End>{"ope", End::lead},
                          Spelling<End>{"nondriveend", End::lead},
                          Spelling<End>{"oppdriveend", End::lead},
                          Spelling<End>{"oppositedriveend", End::lead},
                          Spelling<End>{"backend", End::lead},
                          Spelling<End>{"oe", End::unclear},
                          Spelling<End>{"oppend", End::unclear},
                          Spelling<End>{"oppositeend", End::unclear},
                          Spelling<End>{"end", End::unclear}};

constexpr std::array<std::string_view, 18> reversible{
    "rev",    "reversible", "rvs", "reverse", "cwccw", "ccwcw",      "cworccw", "bi",     "bidirectional",
    "either", "eitherway",  "ecw", "eccw",    "both",  "reversable", "revers",  "cw&ccw", "reversing"};

constexpr std::array<std::string_view, 8> double_shafts{"doubleshaft", "dualshaft", "dblshaft", "thrushaft",
                                                        "2shaft",      "double",    "dbl",      "ds"};

/// Takes `word` off either end of `key`.
bool take(std::string& key, std::string_view word) {
    if (key.starts_with(word)) return key.erase(0, word.size()), true;
    if (key.ends_with(word)) return key.resize(key.size() - word.size()), true;
    return false;
}

Read<Rotation> ask_end(const Folded& words, Spin spin) {
    const bool cw = spin == Spin::cw;
    return ask<Rotation>(words, "seen from which end: the shaft end, or the lead end?",
                         {cw ? "CWSE" : "CCWSE", cw ? "CWLE" : "CCWLE"});
}

std::optional<End> end_of(std::string_view key) {
    for (const auto& [word, end] : ends) {
        if (key == word) return end;
    }
    return std::nullopt;
}

std::optional<std::pair<Spin, End>> spin_and_end(std::string key) {
    std::optional<Spin> spin;
    for (std::string_view label : {"rotation", "rot"}) {
        if (key.starts_with(label)) key.erase(0, label.size());
    }
    for (const auto& [word, value] : spins) {
        if (!key.starts_with(word)) continue;
        spin = value;
        key.erase(0, word.size());
        break;
    }
    if (!spin) return std::nullopt;
    for (std::string_view filler : {"rotation", "facing", "viewedfrom", "viewed", "seenfrom", "from",
                                    "looking at", "lookingat", "at", "the"}) {
        while (key.starts_with(filler)) key.erase(0, filler.size());
    }
    if (key.empty()) return std::pair{*spin, End::none};
    if (const std::optional<End> end = end_of(key)) return std::pair{*spin, *end};
    return std::nullopt;
}

std::string key_of(const Folded& words) {
    std::string key;
    for (char c : spelling_key(words)) {
        if (c != '(' && c != ')' && c != '\'' && c != '"') key += c;
    }
    return key;
}

}  // namespace

Read<Spin> read_spin(const Folded& words) {
    if (is_missing(words)) return not_written<Spin>();
    const auto found = spin_and_end(key_of(words));
    if (!found || found->second != End::none) return unreadable<Spin>(words, "a direction: CW or CCW");
    return read_as<Spin>(words, found->first);
}

Read<ViewedFrom> read_viewing_end(const Folded& words) {
    if (is_missing(words)) return not_written<ViewedFrom>();
    const std::optional<End> end = end_of(key_of(words));
    if (!end) return unreadable<ViewedFrom>(words, "the viewing end: shaft end or lead end");
    if (*end == End::unclear)
        return ask<ViewedFrom>(words, "OE: the output end, or the opposite end?", {"shaft end", "lead end"});
    return read_as<ViewedFrom>(words, *end == End::shaft ? ViewedFrom::shaft_end : ViewedFrom::lead_end);
}

RotationText read_rotation_text(const Folded& words) {
    constexpr std::string_view expected =
        "a direction with its viewing end, such as 'CWLE', 'CCWSE' or 'reversible'";
    RotationText out;
    if (is_missing(words)) return out;
    std::string key = key_of(words);
    // "CW/CCW" is either way; "CW CCW" with only a blank may be two words that contradict each other.
    const bool both_bare =
        (key == "cwccw" || key == "ccwcw") && words.raw().find_first_of("/&,+-") == std::string_view::npos;
    if (both_bare) {
        out.rotation = ask<Rotation>(words, "either way, or one of the two?", {"reversible", "CW", "CCW"});
        return out;
    }
    if (std::find(reversible.begin(), reversible.end(), key) != reversible.end()) {
        out.rotation = read_as<Rotation>(words, Rotation::reversible);
        return out;
    }
    if (key.find("arrow") != std::string::npos) {
        out.rotation =
            ask<Rotation>(words, "an arrow on the shell names no end: photograph it with the shaft in view",
                          {"CWSE", "CCWSE"});
        return out;
    }
    for (std::string_view word : double_shafts) {
        if (key.size() > word.size() && !out.double_shaft) out.double_shaft = take(key, word);
    }
    const auto found = spin_and_end(key);
    if (!found) {
        out.rotation = unreadable<Rotation>(words, expected);
    } else if (found->second == End::none) {
        out.rotation = ask_end(words, found->first);
    } else if (found->second == End::unclear) {
        out.rotation = ask<Rotation>(
            words, "OE: the output end, or the opposite end?",
            {found->first == Spin::cw ? "CWSE" : "CCWSE", found->first == Spin::cw ? "CWLE" : "CCWLE"});
    } else if (out.double_shaft && found->second == End::shaft) {
        out.rotation =
            ask<Rotation>(words, "both ends have a shaft: which way does it turn seen from the lead end?",
                          {"CWLE", "CCWLE"});
    } else {
        const ViewedFrom from = found->second == End::shaft ? ViewedFrom::shaft_end : ViewedFrom::lead_end;
        out.rotation = read_as<Rotation>(words, normalised(found->first, from));
    }
    return out;
}

Read<Rotation> read_rotation(const Folded& words) {
    return read_rotation_text(words).rotation;
}

}  // namespace endbell::inline words
