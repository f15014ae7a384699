// One physical direction, whichever end it was viewed from.
#pragma once
#include "engine/model/kinds.hpp"

namespace endbell::inline model {

enum class Spin { cw, ccw };
enum class ViewedFrom { shaft_end, lead_end };

/// The lead end (also: opposite drive end, non-drive end) sees the mirror of what the shaft end sees.
/// Source: NEMA MG 1 2.24 views the end opposite the drive; IEC 60034-8 views the drive end; so MG 1's
/// standard CCW and IEC's clockwise are one physical direction. 60034-8 and the trade's letters were read in
/// third-party copies, MG 1 2.24 is from memory.
constexpr Rotation normalised(Spin spin, ViewedFrom end) {
    const bool cw = (spin == Spin::cw) == (end == ViewedFrom::shaft_end);
    return cw ? Rotation::cw_shaft_end : Rotation::ccw_shaft_end;
}

/// What the other end calls the same rotation. A reversible motor stays reversible.
constexpr Rotation seen_from_other_end(Rotation r) {
    if (r == Rotation::reversible) return r;
    return r == Rotation::cw_shaft_end ? Rotation::ccw_shaft_end : Rotation::cw_shaft_end;
}

}  // namespace endbell::inline model
