// The rules against a separately written, literal matcher, on generated pairs.
#include "tests/match/naive.hpp"

#include <iostream>
#include <set>

#include "tests/match/pairs.hpp"

namespace endbell::match_tests {

namespace {

// Every verdict that each rule can give, from its page: f fits, c with changes, n not shown, x does not fit.
const std::map<std::string, std::string>& pages() {
    static const std::map<std::string, std::string> list{{"wanted-part", "fcnx"},
                                                         {"load", "fnx"},
                                                         {"inducer-assembly", "fnx"},
                                                         {"family", "fcnx"},
                                                         {"drive", "fnx"},
                                                         {"program", "fnx"},
                                                         {"supply-voltage", "fcnx"},
                                                         {"phase", "fnx"},
                                                         {"frequency", "fnx"},
                                                         {"poles", "fnx"},
                                                         {"speed", "fnx"},
                                                         {"power", "fcnx"},
                                                         {"service-factor", "f"},
                                                         {"full-load-current", "fnx"},
                                                         {"circuit-ampacity", "fnx"},
                                                         {"signal-class", "fcnx"},
                                                         {"control-power", "fcnx"},
                                                         {"tap-rule", "fcn"},
                                                         {"tap-count", "fcn"},
                                                         {"rotation", "fcnx"},
                                                         {"double-shaft", "fcnx"},
                                                         {"shaft-diameter", "fcnx"},
                                                         {"shaft-length", "fcnx"},
                                                         {"shaft-flat", "fnx"},
                                                         {"body-diameter", "fcnx"},
                                                         {"body-length", "fnx"},
                                                         {"mount", "fcnx"},
                                                         {"frame", "fnx"},
                                                         {"bolt-circle", "fcnx"},
                                                         {"enclosure", "fnx"},
                                                         {"position", "fcnx"},
                                                         {"bearing", "f"},
                                                         {"ambient", "fnx"},
                                                         {"protection", "fnx"},
                                                         {"capacitor", "fcn"},
                                                         {"connector", "fcn"},
                                                         {"part-status", "f"}};
    return list;
}

char letter(Verdict v) {
    return "fcnx"[static_cast<std::size_t>(v)];
}

}  // namespace

BOOST_AUTO_TEST_CASE(a_naive_matcher_agrees_on_a_hundred_thousand_pairs) {
    constexpr int pairs = 120'000 / ENDBELL_SAMPLE;
    Dice dice(20240611);
    int disagreements = 0;
    std::map<Verdict, int> whole;
    std::map<std::string, std::set<char>> seen;
    std::set<std::string> undeclared;
    for (int i = 0; i < pairs; ++i) {
        const World w = pair(dice);
        const Candidate engine =
            examine(Query{w.job, facts_of(w.job, w.limits), w.diagnosis, w.limits}, w.part);
        const naive::Opinion second = naive::judge(w.job, w.diagnosis, w.part);
        Verdict worst = Verdict::fits;
        for (const auto& [rule, verdict] : second) worst = std::max(worst, verdict);
        bool same = worst == engine.verdict && second.size() == engine.findings.size();
        for (const Finding& f : engine.findings) {
            const std::string rule(f.rule);
            seen[rule].insert(letter(f.verdict));
            if (!rule_tests::is_declared(f)) undeclared.insert(rule + ": " + std::string(word(f.reason)));
            if (second.at(rule) == f.verdict) continue;
            same = false;
            if (disagreements < 10) {
                BOOST_TEST_MESSAGE("pair " << i << ": " << rule << ": engine " << word(f.verdict) << " ("
                                           << word(f.reason) << "), naive " << word(second.at(rule)));
            }
        }
        ++whole[engine.verdict];
        if (!same) ++disagreements;
    }
    std::cout << "naive matcher: " << pairs << " pairs, " << disagreements << " disagreements;";
    for (const auto& [verdict, count] : whole) std::cout << ' ' << word(verdict) << ' ' << count << ';';
    std::cout << '\n';
    BOOST_TEST(disagreements == 0);
    BOOST_TEST(whole.size() == 4u);
    BOOST_TEST(undeclared == std::set<std::string>{}, boost::test_tools::per_element());
    int verdicts = 0;
    for (const auto& [rule, letters] : pages()) {
        BOOST_TEST_CONTEXT(rule) {
            BOOST_TEST(seen[rule].size() == letters.size());
            for (const char c : letters) BOOST_TEST(seen[rule].count(c) == 1u);
        }
        verdicts += static_cast<int>(letters.size());
    }
    BOOST_TEST(pages().size() == all_rules().size());
    std::cout << "naive matcher: " << verdicts << " verdicts of " << pages().size() << " rules, all seen\n";
}

// The comparison can fail: one limit of the engine's copy made stricter is noticed.
BOOST_AUTO_TEST_CASE(one_changed_limit_makes_them_disagree) {
    for (const auto& [limit, value] :
         {std::pair{"speed.match", 0.01}, {"voltage.band", 0.05}, {"body.band", 0.0}}) {
        Dice dice(5);
        int disagreements = 0;
        for (int i = 0; i < 4000; ++i) {
            World w = pair(dice);
            w.limits.tighten(limit, value, "this test");
            const naive::Opinion second = naive::judge(w.job, w.diagnosis, w.part);
            for (const Finding& f :
                 examine(Query{w.job, facts_of(w.job, w.limits), w.diagnosis, w.limits}, w.part).findings) {
                disagreements += second.at(std::string(f.rule)) == f.verdict ? 0 : 1;
            }
        }
        BOOST_TEST_CONTEXT(limit) {
            BOOST_TEST(disagreements > 0);
        }
    }
}

}  // namespace endbell::match_tests
