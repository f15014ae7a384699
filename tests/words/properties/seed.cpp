#include <boost/test/unit_test.hpp>
#include <cstdlib>

namespace {

// RapidCheck takes its seed from here; without one it takes a new one every run.
struct FixedSeed {
    FixedSeed() { setenv("RC_PARAMS", "seed=20250601 max_success=200", 0); }
};

}  // namespace

BOOST_TEST_GLOBAL_FIXTURE(FixedSeed);
