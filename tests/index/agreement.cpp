// The rules are the truth: asked part by part they say what the index says, on generated catalogs and jobs.
#include <unistd.h>

#include <filesystem>
#include <fstream>
#include <iterator>
#include <sstream>

#include "engine/fields/part_fields.hpp"
#include "engine/index/index_draft.hpp"
#include "engine/index/part_index.hpp"
#include "engine/rules/finding_draft.hpp"
#include "engine/rules/job_fields.hpp"
#include "tests/match/pairs.hpp"
#include "tests/match/shelf.hpp"

namespace endbell::index_tests {

namespace {

namespace fs = std::filesystem;
using namespace match_tests;

Query ask(const World& w) {
    return Query{w.job, facts_of(w.job, w.limits), w.diagnosis, w.limits};
}

/// A folder that goes with its test.
struct Home {
    fs::path folder = fs::temp_directory_path() / ("endbell-index-" + std::to_string(::getpid()));
    Home() { fs::create_directories(folder); }
    ~Home() { fs::remove_all(folder); }
};

/// A plain catalog and the same behind an index.
struct Both {
    PlainCatalog plain;
    std::unique_ptr<PartIndex> index;

    void build(const fs::path& folder) {
        const std::string middle = plain.parts_list[plain.parts_list.size() / 2].id;
        IndexDraft draft(plain, {"", middle});
        draft.append(IndexDraft(plain, {middle, ""}));
        draft.put_in_order(PricesById(plain));
        draft.write(folder / "index", "a").put_in_place();
        index = PartIndex::open(folder / "index", "a");
        BOOST_REQUIRE(index != nullptr);
        PriceColumn::write(index->in_place(PricesById(plain)), folder / "prices", "b").put_in_place();
        BOOST_REQUIRE(index->open_prices(folder / "prices", "b"));
    }
    Books with() const { return {plain, books_of(plain).limits, index.get()}; }
    Books without() const { return books_of(plain); }
};

std::string text(const CandidateName& s) {
    std::ostringstream out;
    out << s.part_id << ' ' << word(s.verdict) << ' ' << s.least_price.value_or(-1) << ' ' << word(s.at_best);
    if (!s.alike) return out.str();
    out << ' ' << word(s.alike->kind) << ' ' << (s.alike->family ? word(*s.alike->family) : "");
    for (const Remedy& a : s.alike->adapters) {
        out << ' ' << word(a.cure) << ' ' << a.from.value_or(inch(0)).in(inch) << ' '
            << a.to.value_or(inch(0)).in(inch) << (a.mount ? word(*a.mount) : "");
    }
    for (const ShopTask task : s.alike->tasks) out << ' ' << word(task);
    return out.str();
}

/// Takes the names that the report left out.
std::string text(const Matched& matched) {
    const MatchReport& r = matched.report;
    std::ostringstream out;
    out << r.parts_asked << ' ' << r.fitting << ' ' << r.changing << ' ' << r.open << '\n';
    for (const auto* list : {&r.matches, &r.not_shown}) {
        for (const CandidateName& s : *list) out << text(s) << '\n';
        out << "--\n";
    }
    const auto curable = [](const Remedy& a) { return a.cure != Cure::shaft_bushing; };
    for (const std::size_t most : {1U, 5U, 40U}) {
        for (const CandidateName& s : matched.more->next(most, curable)) out << "curable " << text(s) << '\n';
    }
    for (const std::size_t most : {5U, 1000U}) {
        for (const CandidateName& s : matched.more->next(most)) out << "more " << text(s) << '\n';
    }
    for (const Candidate& c : r.near_misses) {
        out << "near " << c.part.id;
        for (const Finding& f : c.findings) out << ' ' << word(f.reason);
        out << '\n';
    }
    for (const Tally& t : r.tallies)
        out << t.rule << ' ' << word(t.reason) << ' ' << t.parts << ' ' << t.parts_only << ' ' << t.would_fit
            << '\n';
    for (const auto& [key, parts] : r.open_keys) out << key << ' ' << parts << '\n';
    return out.str();
}

/// Motors and modules of every kind; prices, several, none, and equal ones.
PlainCatalog catalog_of(Dice& dice, int parts) {
    PlainCatalog catalog;
    for (int i = 0; i < parts; ++i) {
        World w = base_pair(dice);
        for (std::size_t n = dice.below(4); n > 0; --n) spoil_part(w, dice);
        w.part.id = "p" + std::to_string(100000 + i);
        for (std::size_t n = dice.below(3); n > 0; --n) {
            Offer offer;
            offer.part_id = w.part.id;
            offer.seller = "S" + std::to_string(n);
            offer.price = Money(static_cast<std::int64_t>(1000 * dice.below(40)), Currency{});
            catalog.offer_list.push_back(offer);
        }
        catalog.parts_list.push_back(w.part);
    }
    return catalog;
}

/// A generated catalog behind its index, in a folder of its own.
struct Built {
    Home home;
    Dice dice;
    Both both;
    Built(unsigned seed, int parts) : dice(seed) {
        both.plain = catalog_of(dice, parts);
        both.build(home.folder);
    }
};

/// What of a finding an index keeps.
std::string kept_of(const Finding& f) {
    std::string all(word(f.verdict));
    if (f.verdict == Verdict::does_not_fit) all += " " + std::string(word(f.reason));
    if (f.verdict == Verdict::not_shown) {
        for (const std::string& key : f.asks) all += " " + key;
    }
    return all;
}

}  // namespace

BOOST_AUTO_TEST_CASE(index_and_rules_give_the_same_report) {
    const Home home;
    Dice dice(31);
    int verdicts[4] = {};
    for (int round = 0; round < 5; ++round) {
        Both both;
        both.plain = catalog_of(dice, 150 + 40 * round);
        both.build(home.folder);
        for (int j = 0; j < 60; j += ENDBELL_SAMPLE) {
            World w = base_pair(dice);
            for (std::size_t n = dice.below(5); n > 0; --n) spoil_job(w, dice);
            const Keep keep{1 + dice.below(200), 1 + dice.below(50), 10};
            Matched with = match_parts(ask(w), both.with(), keep);
            BOOST_TEST_CONTEXT("round " << round << " job " << j) {
                BOOST_TEST(text(with) == text(match_parts(ask(w), both.without(), keep)));
            }
            verdicts[0] += with.report.fitting;
            verdicts[1] += with.report.changing;
            verdicts[2] += with.report.open;
            verdicts[3] += static_cast<int>(with.report.tallies.size());
        }
    }
    for (const int seen : verdicts) BOOST_TEST(seen > 0);
}

// More parts than one block holds, and more kinds of amps than a column block keeps sets for.
BOOST_AUTO_TEST_CASE(index_and_rules_agree_over_several_stretches) {
    Built built(40, static_cast<int>(block_parts) + 800);
    auto& [home, dice, both] = built;
    for (Part& part : both.plain.parts_list) {
        if (!part.motor) continue;
        for (Rating& rating : part.motor->ratings)
            rating.amps = ampere(0.5 + 0.01 * static_cast<double>(dice.below(900)));
    }
    both.build(home.folder);
    int fallen = 0;
    for (int j = 0; j < 4; j += ENDBELL_SAMPLE) {
        World w = base_pair(dice);
        if (j > 0) spoil_job(w, dice);
        Matched with = match_parts(ask(w), both.with());
        BOOST_TEST(text(with) == text(match_parts(ask(w), both.without())));
        fallen += with.report.parts_asked - with.report.fitting - with.report.changing - with.report.open;
        BOOST_TEST(text(match_parts(ask(w), both.with(), Keep{20, 20, 0, false})) ==
                   text(match_parts(ask(w), both.without(), Keep{20, 20, 0, false})));
    }
    BOOST_TEST(fallen > 0);
}

// What is left out of a class may not matter to its rule.
BOOST_AUTO_TEST_CASE(a_rule_looks_at_no_more_of_a_part_than_it_names) {
    Dice dice(32);
    for (int i = 0; i < 4'000; ++i) {
        const World w = pair(dice);
        if (w.job.unit.assembly_number.said()) continue;  // specified inducers are asked whole
        for (const Rule& rule : all_rules()) {
            std::vector<int> fields{part_field("parts.kind")};
            for (const std::string_view column : rule.part_columns) fields.push_back(part_field(column));
            const std::string whole = kept_of(rule.judge(ask(w), w.part));
            const std::string kept = kept_of(rule.judge(ask(w), with_only(fields, w.part)));
            if (whole != kept) BOOST_TEST_CONTEXT(rule.id << ' ' << i) {
                    BOOST_TEST(whole == kept);
                }
        }
    }
}

// What is remembered for one job is said of another only where both are alike to the rule.
BOOST_AUTO_TEST_CASE(a_rule_looks_at_no_more_of_a_job_than_it_names) {
    Dice dice(33);
    std::int64_t alike = 0;
    for (int i = 0; i < 4'000; ++i) {
        const World one = pair(dice);
        World other = one;
        for (std::size_t n = 1 + dice.below(4); n > 0; --n) spoil_job(other, dice);
        other.part = one.part;
        for (const Rule& rule : all_rules()) {
            std::string a, b;
            for (const int f : job_fields_of(rule)) {
                job_fields()[static_cast<std::size_t>(f)].take(ask(one), a);
                job_fields()[static_cast<std::size_t>(f)].take(ask(other), b);
            }
            if (a != b) continue;
            const bool specified =
                one.job.unit.assembly_number.said() || other.job.unit.assembly_number.said();
            if (specified) continue;
            ++alike;
            const std::string here = kept_of(rule.judge(ask(one), one.part));
            const std::string there = kept_of(rule.judge(ask(other), other.part));
            if (here != there) BOOST_TEST_CONTEXT(rule.id << ' ' << i) {
                    BOOST_TEST(here == there);
                }
        }
    }
    BOOST_TEST(alike > 20'000);
}

BOOST_AUTO_TEST_CASE(a_rule_that_does_not_decide_lets_every_part_pass) {
    Dice dice(34);
    for (int i = 0; i < 4'000; ++i) {
        const World w = pair(dice);
        for (const Rule& rule : all_rules()) {
            if (rule.decides && !rule.decides(w.job))
                BOOST_TEST(word(rule.judge(ask(w), w.part).verdict) == "fits");
        }
    }
}

// A draft inducer that the job names is judged by its own row, not by its class.
BOOST_AUTO_TEST_CASE(specified_inducers_are_set_apart) {
    const Home home;
    Dice dice(35);
    Both both;
    both.plain = catalog_of(dice, 200);
    for (std::size_t i = 0; i < both.plain.parts_list.size(); i += 5) {
        Part& part = both.plain.parts_list[i];
        if (part.motor) part.motor->assembly = i % 2 == 0 ? "AS 7-1" : "AS-72";
    }
    both.build(home.folder);
    int specified = 0;
    for (int j = 0; j < 60; ++j) {
        World w = base_pair(dice);
        spoil_job(w, dice);
        w.job.unit.load = known(Load::draft_inducer);
        w.job.unit.assembly_number = known(std::string("AS-71"));
        Matched with = match_parts(ask(w), both.with());
        BOOST_TEST(text(with) == text(match_parts(ask(w), both.without())));
        specified += with.report.fitting + with.report.changing + with.report.open;
    }
    BOOST_TEST(specified > 0);
}

BOOST_AUTO_TEST_CASE(living_counts_all_that_nothing_ends) {
    Built built(36, 400);
    auto& [home, dice, both] = built;
    for (int j = 0; j < 40; ++j) {
        World w = base_pair(dice);
        w.job.unit.assembly_number = {};
        const MatchReport report = match_parts(ask(w), both.without(), Keep{1000, 1000}).report;
        const PartIndex::Living lives = both.index->living(ask(w), 5);
        BOOST_TEST(lives.count == report.fitting + report.changing + report.open);
        BOOST_TEST(lives.cheapest.size() == std::min<std::size_t>(5, static_cast<std::size_t>(lives.count)));
    }
}

BOOST_AUTO_TEST_CASE(a_side_file_of_another_state_or_cut_short_is_none) {
    Built built(37, 50);
    auto& [home, dice, both] = built;
    const fs::path file = home.folder / "index";
    BOOST_TEST(PartIndex::open(file, "b") == nullptr);
    BOOST_TEST(PartIndex::open(home.folder / "none", "a") == nullptr);
    BOOST_TEST(!both.index->open_prices(home.folder / "prices", "c"));
    fs::resize_file(file, fs::file_size(file) - 8);
    BOOST_TEST(PartIndex::open(file, "a") == nullptr);
    fs::resize_file(file, 10);
    BOOST_TEST(PartIndex::open(file, "a") == nullptr);
}

// Whatever a side file holds, it is refused, found out, or answered from: nothing is read beyond its end.
BOOST_AUTO_TEST_CASE(a_damaged_side_file_is_never_read_beyond_its_end) {
    Built built(39, 60);
    auto& [home, dice, both] = built;
    std::ifstream in(home.folder / "index", std::ios::binary);
    const std::string whole((std::istreambuf_iterator<char>(in)), {});
    int refused = 0;
    for (int i = 0; i < 300; ++i) {
        std::string spoiled = whole;
        for (int n = 0; n < 4; ++n) spoiled[dice.below(spoiled.size())] = static_cast<char>(dice.below(256));
        const fs::path file = home.folder / ("spoiled" + std::to_string(i));
        std::ofstream(file, std::ios::binary) << spoiled;
        World w = base_pair(dice);
        try {
            both.index = PartIndex::open(file, "a");
            if (both.index && both.index->open_prices(home.folder / "prices", "b")) {
                match_parts(ask(w), both.with());
            } else {
                ++refused;
            }
        } catch (const OurBug&) {
            ++refused;
        }
    }
    BOOST_TEST(refused > 0);
}

BOOST_AUTO_TEST_CASE(parts_read_in_two_halves_give_the_same_index) {
    const Built built(38, 300);
    IndexDraft whole(built.both.plain, {});
    whole.put_in_order(PricesById(built.both.plain));
    whole.write(built.home.folder / "whole", "a").put_in_place();
    const auto bytes = [](const fs::path& file) {
        std::ifstream in(file, std::ios::binary);
        return std::string(std::istreambuf_iterator<char>(in), {});
    };
    const std::string halves = bytes(built.home.folder / "index");
    BOOST_TEST(halves.size() > 1000U);
    BOOST_TEST((bytes(built.home.folder / "whole") == halves));
}

// Prices move every night, and the parts stay where they are.
BOOST_AUTO_TEST_CASE(new_prices_need_no_new_index) {
    Built built(38, 300);
    auto& [home, dice, both] = built;
    for (Offer& offer : both.plain.offer_list)
        offer.price = Money(static_cast<std::int64_t>(100 * dice.below(900)), Currency{});
    PriceColumn::write(both.index->in_place(PricesById(both.plain)), home.folder / "prices", "new")
        .put_in_place();
    BOOST_REQUIRE(both.index->open_prices(home.folder / "prices", "new"));
    for (int j = 0; j < 30; ++j) {
        const World w = base_pair(dice);
        BOOST_TEST(text(match_parts(ask(w), both.with(), Keep{7, 7})) ==
                   text(match_parts(ask(w), both.without(), Keep{7, 7})));
    }
}

}  // namespace endbell::index_tests
