#include <boost/test/unit_test.hpp>

int main(int count, char** words) {
    const auto name_it = [] {
        boost::unit_test::framework::master_test_suite().p_name.value = "endbell";
        return true;
    };
    return boost::unit_test::unit_test_main(name_it, count, words);
}
