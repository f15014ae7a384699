// One end of a motor's shaft against the wheel that sits on it. A motor has one such end, or two.
#pragma once
#include <optional>
#include <string_view>

#include "engine/rules/finding_draft.hpp"

namespace endbell::inline rules {

/// Both sides of one end, with the names of what would settle it.
struct ShaftEnd {
    const Reading<Length>& bore;
    const Reading<Length>& old_diameter;
    const Reading<Length>& needed;  // motor face to the far end of the hub
    const Reading<Length>& old_length;
    const Reading<Length>& room;  // the longest shaft that clears
    std::optional<Length> diameter;
    std::optional<Length> length;
    std::optional<bool> cuttable;
    std::string_view bore_key, old_diameter_key, needed_key, room_key;
    std::string_view diameter_column, length_column;

    /// The measured bore decides; else the old shaft stands for it.
    const Reading<Length>& bore_or_shaft() const { return bore.said() ? bore : old_diameter; }
    const Reading<Length>& needed_or_old() const { return needed.said() ? needed : old_length; }
};

/// The end that every motor has. REQUIRES: the part is a motor.
ShaftEnd shaft_end(const FailedUnit& job, const Motor& motor);

/// Does the shaft go into the bore, as it is or through a bushing? `say` knows both sides.
Finding judge_diameter(const ShaftEnd& end, const Limits& limits, FindingDraft say);
/// Does it reach through the hub and clear what is behind? Where the job says nothing of it, `say` goes on to that.
Finding judge_length(const ShaftEnd& end, const Limits& limits, FindingDraft say);

}  // namespace endbell::inline rules
