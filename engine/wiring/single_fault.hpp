// One broken thing, as every witness that tries it is told.
#pragma once
#include "engine/wiring/wiring.hpp"

namespace endbell::inline wiring {

/// `relay`, `pole` (from 1) and `wire` are read where the kind asks for them. A lost common is one wire off, or, with a wire
/// of -1, the panel's own return: `place` with all that is landed on it.
struct SingleFault {
    bool present = false;
    FaultKind kind = FaultKind::coil_open;
    int relay = 0;
    int pole = 0;
    int wire = 0;
    NetPlace::Kind place = NetPlace::Kind::common_24v;
    bool is(FaultKind asked) const { return present && kind == asked; }
};

}  // namespace endbell::inline wiring
