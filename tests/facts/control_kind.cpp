// Of what kind the volts on a tap are: as said, else by the unit beside the figure.
#include <boost/test/unit_test.hpp>

#include "engine/facts/facts.hpp"

using namespace endbell;

namespace {

DerivedFact<ControlVoltsKind> kind_of(const std::string& written, std::optional<ControlVoltsKind> said = {}) {
    FailedUnit job;
    job.measured.control_volts = known(volt(24), Origin::measured);
    job.measured.control_volts.raw = written;
    if (said) job.measured.control_kind = known(*said, Origin::measured);
    return facts_of(job, Limits()).control_kind;
}

}  // namespace

BOOST_AUTO_TEST_CASE(the_unit_beside_control_volts_says_their_kind) {
    BOOST_TEST((kind_of("24 Vdc").is(ControlVoltsKind::dc)));
    BOOST_TEST((kind_of("24VDC").because == Because::written_unit));
    BOOST_TEST((kind_of("25.4 V ac").is(ControlVoltsKind::ac)));
    BOOST_TEST(!kind_of("24 V"));
    BOOST_TEST((kind_of("24 V", ControlVoltsKind::pulsing).is(ControlVoltsKind::pulsing)));
    BOOST_TEST(!kind_of("24 V", ControlVoltsKind::pulsing).because);
}

BOOST_AUTO_TEST_CASE(a_unit_and_a_word_that_differ_say_nothing) {
    BOOST_TEST(!kind_of("24 Vdc", ControlVoltsKind::ac));
    BOOST_TEST(kind_of("24 Vdc", ControlVoltsKind::ac).disagree);
    BOOST_TEST((kind_of("24 Vac", ControlVoltsKind::ac).is(ControlVoltsKind::ac)));
}
