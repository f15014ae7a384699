#define BOOST_TEST_MODULE endbell
#include <boost/test/unit_test.hpp>
