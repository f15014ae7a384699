// Asserts that stay on in every build: a failed one is our bug, never the user's.
#pragma once
#include <stdexcept>
#include <string>

namespace endbell::inline base {

/// Caught once, in main: exit 70.
class OurBug : public std::logic_error {
  public:
    using std::logic_error::logic_error;
};

inline void ensure(bool holds, const char* invariant) {
    if (!holds) throw OurBug(std::string("this should always hold: ") + invariant);
}

}  // namespace endbell::inline base
