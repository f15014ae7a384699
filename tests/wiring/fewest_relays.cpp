// The relay count against exhaustion: for every set of coils, every way of leading every source to a tap in
// every position. Nothing is reasoned away; the enumeration knows only what a contact is.
#include <boost/test/unit_test.hpp>

#include <bit>
#include <optional>

#include "engine/wiring/synthesis.hpp"
#include "tests/wiring/tables.hpp"

using namespace endbell;
using fixture::Dice;

namespace {

/// Which of all (taps + 1)^(signals + 1) ways serve one state, as bits.
using Serving = std::vector<std::uint64_t>;

/// The highest live tap, or nothing where the way joins two sources or, under `one_tap`, makes two taps live.
std::optional<int> obeyed(const std::vector<int>& way, SignalSet state, bool one_tap) {
    int highest = 0, live = 0;
    for (std::size_t s = 0; s < way.size(); ++s) {
        for (std::size_t t = 0; t < s; ++t) {
            if (way[s] != 0 && way[s] == way[t]) return std::nullopt;
        }
        const bool is_live = s + 1 == way.size() || (state >> s & 1u);
        if (!is_live || way[s] == 0) continue;
        ++live;
        highest = std::max(highest, way[s]);
    }
    if (one_tap && live > 1) return std::nullopt;
    return highest;
}

bool serves_state(const TapTable& table, const std::vector<int>& way, SignalSet state, bool one_tap) {
    const std::optional<int> tap = obeyed(way, state, one_tap);
    if (!tap) return false;
    const std::optional<int> wanted = table.wanted[state];
    if (wanted) return *tap == *wanted;
    return *tap != 0 || (state & table.must_run) == 0;
}

std::vector<Serving> serving_ways(const TapTable& table, bool one_tap) {
    const int sources = table.signals + 1;
    std::size_t count = 1;
    for (int s = 0; s < sources; ++s) count *= static_cast<std::size_t>(table.highest_tap) + 1;
    std::vector<Serving> all(table.wanted.size(), Serving(count / 64 + 1, 0));
    std::vector<int> way(static_cast<std::size_t>(sources), 0);
    for (std::size_t w = 0; w < count; ++w) {
        for (SignalSet state = 0; state < table.wanted.size(); ++state) {
            if (serves_state(table, way, state, one_tap)) all[state][w / 64] |= std::uint64_t{1} << w % 64;
        }
        for (std::size_t s = 0; s < way.size() && ++way[s] > table.highest_tap; ++s) way[s] = 0;
    }
    return all;
}

bool coils_suffice(const TapTable& table, const std::vector<Serving>& serving, SignalSet coils) {
    for (SignalSet live = 0; live < table.wanted.size(); ++live) {
        if ((live & ~coils) != 0) continue;
        Serving common(serving.front().size(), ~std::uint64_t{0});
        for (SignalSet state = 0; state < table.wanted.size(); ++state) {
            if ((state & coils) != live) continue;
            for (std::size_t i = 0; i < common.size(); ++i) common[i] &= serving[state][i];
        }
        if (std::all_of(common.begin(), common.end(), [](std::uint64_t word) { return word == 0; }))
            return false;
    }
    return true;
}

/// -1: no set of coils does it.
int fewest_by_exhaustion(const TapTable& table, bool one_tap) {
    const std::vector<Serving> serving = serving_ways(table, one_tap);
    int fewest = -1;
    for (SignalSet coils = 0; coils < table.wanted.size(); ++coils) {
        const int size = std::popcount(coils);
        if ((fewest < 0 || size < fewest) && coils_suffice(table, serving, coils)) fewest = size;
    }
    return fewest;
}

int coils_of(const std::optional<Circuit>& circuit) {
    return circuit ? static_cast<int>(circuit->coils.size()) : -1;
}

void compare(Dice& dice, int tables, int signals, int taps) {
    for (int i = 0; i < tables; ++i) {
        const TapTable table = fixture::random_table(dice, signals, taps);
        BOOST_TEST(coils_of(one_conductor(table, {true, true})) == fewest_by_exhaustion(table, true));
        BOOST_TEST(coils_of(highest_wins(table, {true, true})) == fewest_by_exhaustion(table, false));
    }
}

}  // namespace

BOOST_AUTO_TEST_CASE(no_smaller_set_of_coils_would_do_for_any_of_190_tables) {
    Dice dice(1);
    compare(dice, 60, 2, 3);
    compare(dice, 60, 3, 4);
    compare(dice, 40, 4, 4);
    compare(dice, 20, 5, 3);
    compare(dice, 10, 6, 2);
}

BOOST_AUTO_TEST_CASE(every_circuit_serves_its_own_table) {
    Dice dice(2);
    for (int i = 0; i < 200; ++i) {
        const int signals = 2 + dice.below(5);
        const TapTable table = fixture::random_table(dice, signals, 1 + dice.below(5));
        const auto strict = one_conductor(table, {true, true});
        BOOST_REQUIRE(strict);
        for (SignalSet state = 0; state < table.wanted.size(); ++state) {
            const std::vector<int> live = strict->taps_in(state, signals);
            BOOST_TEST(live.size() <= 1u);
            const int tap = live.empty() ? 0 : live.front();
            if (table.wanted[state]) {
                BOOST_TEST(tap == *table.wanted[state]);
            } else if (state & table.must_run) {
                BOOST_TEST(tap != 0);
            }
        }
    }
}

BOOST_AUTO_TEST_CASE(coils_on_line_voltage_leave_the_supply_as_the_only_source) {
    // Two outputs, one tap each: with the supply alone each output must be a coil; as sources of their own,
    // one.
    TapTable table;
    table.signals = 2;
    table.highest_tap = 2;
    table.wanted = {0, 1, 2, std::nullopt};
    BOOST_TEST(coils_of(one_conductor(table, {true, false})) == 2);
    BOOST_TEST(coils_of(one_conductor(table, {true, true})) == 1);
}
