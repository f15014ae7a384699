// What a plan's contacts may join while its relays move. A pole breaks before it makes, so on the way it is on one throw, on
// the other or on neither, and poles of one relay lead or lag each other. Knows the wires and which signal works which relay.
//
// A passage along the wires that uses no pole on both of its throws is one that some moment of a move can make: all of them
// are found once, then asked of each change from one reachable state to another.
#pragma once
#include "engine/wiring/wiring.hpp"

namespace endbell::inline wiring {

struct Motion {
    bool ties_calls = false;     // a live source reaches the wire of a call that is idle
    bool two_taps_live = false;  // on a part that does not obey the higher of two
    bool steady() const { return !ties_calls && !two_taps_live; }
};

/// Of a plan too large to be searched, both: nothing shows that it is steady.
Motion motion_of(const WiringPlan& plan);

}  // namespace endbell::inline wiring
