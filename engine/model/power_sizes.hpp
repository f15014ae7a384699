// The standard ratings of motors.
#pragma once
#include <array>

namespace endbell::inline model {

/// In horsepower, ascending. NEMA MG 1 10.32 ratings of small motors with the extra fan-motor ratings 1/15, 1/10 and 1/5 (from
/// memory), then the usual integral ones. Odd plates (2/5, 1/7) lie between two of them.
inline constexpr std::array standard_powers{1.0 / 40, 1.0 / 20, 1.0 / 15, 1.0 / 12, 1.0 / 10, 1.0 / 8,
                                            1.0 / 6,  1.0 / 5,  1.0 / 4,  1.0 / 3,  1.0 / 2,  3.0 / 4,
                                            1.0,      1.5,      2.0,      3.0,      5.0};

}  // namespace endbell::inline model
