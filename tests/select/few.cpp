// The best few of many, worked out alone, are the first of all that are worked out in full.
#include <boost/test/unit_test.hpp>

#include "engine/select/select.hpp"
#include "tests/match/books.hpp"
#include "tests/match/pairs.hpp"

namespace endbell::select_tests {

namespace {

using namespace match_tests;

Offer offer_of(const std::string& part, std::int64_t dollars, Dice& dice) {
    Offer offer;
    offer.part_id = part;
    offer.seller = dice.below(2) == 0 ? "counter" : "depot";
    offer.branch = dice.below(2) == 0 ? "north" : "south";
    offer.price = Money(100 * dollars, Currency{});
    offer.stock = static_cast<int>(dice.below(3));
    if (dice.below(4) > 0) offer.lead_days = static_cast<int>(dice.below(5));
    offer.as_of = date_of(2026, 1, 10);
    return offer;
}

/// Motors and modules that are much alike, so that many fit one job and their prices decide.
PlainCatalog many_alike(const World& w, Dice& dice) {
    PlainCatalog catalog;
    for (int i = 0; i < 120; ++i) {
        World other = w;
        for (std::size_t n = dice.below(3); n > 0; --n) spoil_part(other, dice);
        other.part.id = "p" + std::to_string(1000 + i);
        for (std::size_t n = dice.below(4); n > 0; --n) {
            const auto dollars = static_cast<std::int64_t>(50 + dice.below(30));
            catalog.offer_list.push_back(offer_of(other.part.id, dollars, dice));
        }
        catalog.parts_list.push_back(other.part);
    }
    return catalog;
}

CureRow cure_of(const Remedy& r) {
    CureRow row{};
    row.cure = r.cure;
    row.from = r.from;
    row.to = r.to;
    row.capacitor = r.capacitor;
    row.capacitor_volts = r.capacitor_volts;
    row.mount = r.mount;
    row.coil = r.coil ? *r.coil : volt(24);
    row.poles = 2;
    row.power = r.power;
    row.connector_from = r.connector_from;
    row.connector_to = r.connector_to;
    return row;
}

/// Most of what the parts ask for can be bought, at some price or at none.
void add_accessories(PlainCatalog& catalog, const Query& q, Dice& dice) {
    std::vector<Remedy> asked;
    for (const CandidateName& s : match_parts(q, books_of(catalog)).report.matches) {
        for (const Remedy& r : remedies_of(candidate(q, catalog, s.part_id))) {
            if (std::find(asked.begin(), asked.end(), r) == asked.end()) asked.push_back(r);
        }
    }
    for (const Remedy& r : asked) {
        if (dice.below(5) == 0) continue;
        Part part;
        part.id = "x" + std::to_string(1000 + catalog.parts_list.size());
        part.kind = PartKind::accessory;
        part.accessory = Accessory{{cure_of(r)}, {}};
        const auto dollars = static_cast<std::int64_t>(1 + dice.below(40));
        if (dice.below(6) > 0) catalog.offer_list.push_back(offer_of(part.id, dollars, dice));
        catalog.parts_list.push_back(part);
    }
}

void add_hours(PlainCatalog& catalog, Dice& dice) {
    for (const char* task : {"motor swap", "module swap", "retrofit swap", "inducer swap", "capacitor swap",
                             "condenser motor swap", "bushing fit", "band fit", "adapter fit", "shaft cut",
                             "lead parking", "rotation selection", "airflow setup", "capacitor removal",
                             "relay fit", "harness fit", "voltage selection", "second visit"}) {
        if (dice.below(20) > 0)
            catalog.labour_list.push_back({task, static_cast<int>(1000 + 100 * dice.below(20)), "test"});
    }
}

void add_terms(FailedUnit& job, Dice& dice) {
    job.shop.as_of = known(date_of(2026, 1, 20));
    job.shop.labour_rate = known(Money(9000, Currency{}));
    if (dice.below(2) == 0) job.shop.branch = known(std::string("north"));
    if (dice.below(2) == 0) job.shop.markup = known(Share{400'000});
    if (dice.below(2) == 0) job.shop.parts_tax = known(Share{72'500});
    if (dice.below(3) == 0) job.shop.trip = known(Money(4500, Currency{}));
    if (dice.below(3) == 0) job.shop.emergency = known(Share{1'500'000});
}

std::string text(const Option& o) {
    return o.candidate.part.id + " " + std::string(word(o.standing)) + " " +
           (o.today ? o.today->amount() : "-") + " " + (o.so_far ? o.so_far->amount() : "-");
}

}  // namespace

BOOST_AUTO_TEST_CASE(the_best_few_are_the_first_of_all) {
    Dice dice(51);
    int priced = 0, passed_over = 0;
    for (int i = 0; i < 120; ++i) {
        World w = base_pair(dice);
        add_terms(w.job, dice);
        PlainCatalog catalog = many_alike(w, dice);
        add_accessories(catalog, Query{w.job, facts_of(w.job, w.limits), w.diagnosis, w.limits}, dice);
        add_hours(catalog, dice);
        const Policy policy = policy_of(w.job);
        const Selection all = select_part(w.job, books_of(catalog), policy, SelectionScope{1000, true});
        const Selection few = select_part(w.job, books_of(catalog), policy, SelectionScope{2, false});
        BOOST_TEST_CONTEXT("job " << i) {
            BOOST_TEST(word(few.outcome) == word(all.outcome));
            const std::size_t most = std::min<std::size_t>(2, all.options.size());
            BOOST_TEST_REQUIRE(few.options.size() >= most);
            for (std::size_t o = 0; o < most; ++o) BOOST_TEST(text(few.options[o]) == text(all.options[o]));
        }
        for (const Option& o : all.options) priced += o.today ? 1 : 0;
        passed_over += all.carried - few.carried;
    }
    BOOST_TEST(priced > 0);
    BOOST_TEST(passed_over > 0);
}

}  // namespace endbell::select_tests
