// What the engine itself does with a catalog of bench_generate, timed inside the process.
//
// usage: bench_measure WHAT CATALOG JOBS.csv
//   living   how many parts nothing ends, and the 20 cheapest of them: one line a job "count:ids", then times
//   tallies  how many parts fail each rule, and only it: one line a job, then times
//   select   the whole answer of `endbell match` without its text
//   agree    index against rules, every part: prints the pairs compared and the differences
// Times: median and 95th percentile over the jobs of the best of three rounds, in microseconds. `living` ends with the
// most memory that the process held, `tallies` with how fast memory can be read.
#include <fmt/format.h>

#include <algorithm>
#include <chrono>
#include <cstdint>
#include <cstdio>
#include <fstream>
#include <functional>
#include <map>
#include <numeric>
#include <string>
#include <vector>

#include "engine/base/text.hpp"
#include "engine/csv/csv_file.hpp"
#include "engine/index/indexed_catalog.hpp"
#include "engine/job/job.hpp"
#include "engine/select/select.hpp"

namespace {

using namespace endbell;

std::vector<FailedUnit> read_jobs(const std::string& path) {
    CsvFile csv{path};
    const std::vector<std::string> header = csv.header().cells();
    std::vector<FailedUnit> jobs;
    for (CsvRow row; csv.next(row);) {
        FailedUnit job;
        for (std::size_t c = 1; c < header.size(); ++c) {
            if (!row[c].empty()) set_key(job, header[c], row[c], {});
        }
        jobs.push_back(std::move(job));
    }
    return jobs;
}

struct Asked {
    Asked(const FailedUnit& job, const Limits& limits)
        : facts(facts_of(job, limits)),
          diagnosis(diagnose(job, facts, limits)),
          query{job, facts, diagnosis, limits} {}
    Facts facts;
    Diagnosis diagnosis;
    Query query;
};

/// Times one kind of work on the first half of the jobs, each once a round. Before every round `forget` is called and
/// the second half is answered: what is remembered comes from other jobs.
void time_jobs(const char* name, std::size_t jobs, const std::function<void()>& forget,
               const std::function<void(std::size_t)>& work) {
    const std::size_t half = jobs / 2;
    std::vector<double> best(half, 1e99);
    for (int round = 0; round < 3; ++round) {
        forget();
        for (std::size_t j = half; j < jobs; ++j) work(j);
        for (std::size_t j = 0; j < half; ++j) {
            const auto begin = std::chrono::steady_clock::now();
            work(j);
            const std::chrono::duration<double, std::micro> took = std::chrono::steady_clock::now() - begin;
            best[j] = std::min(best[j], took.count());
        }
    }
    std::sort(best.begin(), best.end());
    fmt::print("time {} {:.1f} {:.1f}\n", name, best[half / 2], best[half * 95 / 100]);
}

/// In bytes. Not ru_maxrss, which begins at what the parent held.
double peak_memory() {
    std::ifstream status("/proc/self/status");
    for (std::string line; std::getline(status, line);) {
        if (line.rfind("VmHWM:", 0) == 0) return std::stod(line.substr(6)) * 1024;
    }
    return 0;
}

/// Bytes a second of reading one by one what is too much for most caches: the best of five.
double read_bandwidth() {
    const std::vector<std::uint64_t> numbers(std::size_t{64} << 20 >> 3, 1);
    double best = 1e99;
    for (int round = 0; round < 5; ++round) {
        const auto begin = std::chrono::steady_clock::now();
        const std::uint64_t sum = std::accumulate(numbers.begin(), numbers.end(), std::uint64_t{0});
        const std::chrono::duration<double> took = std::chrono::steady_clock::now() - begin;
        if (sum == numbers.size()) best = std::min(best, took.count());
    }
    return static_cast<double>(numbers.size() * sizeof(numbers[0])) / best;
}

std::string said_of(const MatchReport& report) {
    std::string text =
        fmt::format("{} {} {} {}\n", report.parts_asked, report.fitting, report.changing, report.open);
    for (const auto* list : {&report.matches, &report.not_shown}) {
        for (const CandidateName& s : *list)
            text += fmt::format("{} {} {}\n", s.part_id, word(s.verdict), s.least_price.value_or(-1));
    }
    for (const Candidate& c : report.near_misses) text += c.part.id + "\n";
    for (const Tally& t : report.tallies)
        text += fmt::format("{} {} {} {} {}\n", t.rule, word(t.reason), t.parts, t.parts_only, t.would_fit);
    for (const auto& [key, parts] : report.open_keys) text += fmt::format("{} {}\n", key, parts);
    return text;
}

int agree(const Books& books, const char* file, const std::vector<FailedUnit>& jobs) {
    const StoredCatalog rules_only(file);
    std::int64_t pairs = 0;
    int differences = 0;
    for (const FailedUnit& job : jobs) {
        const Asked asked(job, books.limits);
        const std::string with = said_of(match_parts(asked.query, books).report);
        const std::string without =
            said_of(match_parts(asked.query, {rules_only, rules_only.limits()}).report);
        pairs += match_parts(asked.query, books).report.parts_asked;
        if (with == without) continue;
        if (++differences == 1) fmt::print("-- with index\n{}-- by rules\n{}", with, without);
    }
    fmt::print("pairs {}\ndifferences {}\n", pairs, differences);
    return differences == 0 ? 0 : 1;
}

}  // namespace

int main(int argc, char** argv) {
    if (argc != 4) return 64;
    const std::string what = argv[1];
    const auto begin = std::chrono::steady_clock::now();
    const IndexedCatalog catalog(argv[2]);
    const std::chrono::duration<double> opened = std::chrono::steady_clock::now() - begin;
    fmt::print(stderr, "opened in {:.4f} s\n", opened.count());
    const std::vector<FailedUnit> jobs = read_jobs(argv[3]);
    if (catalog.index() == nullptr) return 65;
    const PartIndex& index = *catalog.index();
    const Books books{catalog, catalog.limits(), &index};
    if (what == "agree") return agree(books, argv[2], jobs);
    std::vector<Asked> asked;
    asked.reserve(jobs.size());
    for (const FailedUnit& job : jobs) asked.emplace_back(job, books.limits);
    const auto forget = [&] { index.forget(); };
    if (what == "living") {
        for (const Asked& a : asked) {
            const PartIndex::Living lives = index.living(a.query, 20);
            std::string ids;
            for (const CandidateName& s : lives.cheapest) ids += " " + s.part_id;
            fmt::print("{}{}\n", lives.count, ids);
        }
        time_jobs("living", jobs.size(), forget, [&](std::size_t j) { index.living(asked[j].query, 20); });
        time_jobs("first", jobs.size(), forget, [&](std::size_t j) {
            index.forget();
            index.living(asked[j].query, 20);
        });
        fmt::print("figure memory {:.0f}\n", peak_memory());
    } else if (what == "tallies") {
        for (const Asked& a : asked) {
            std::map<std::string_view, std::pair<int, int>> by_rule;
            for (const Tally& t : match_parts(a.query, books, {0, 0, 0, true}).report.tallies) {
                by_rule[t.rule].first += t.parts;
                by_rule[t.rule].second += t.parts_only;
            }
            std::string line;
            for (const auto& [rule, counts] : by_rule)
                line += fmt::format("{}={}/{} ", rule, counts.first, counts.second);
            fmt::print("{}\n", line);
        }
        time_jobs("tallies", jobs.size(), forget, [&](std::size_t j) {
            match_parts(asked[j].query, books, {0, 0, 0, true});
        });
        fmt::print("figure bandwidth {:.0f}\n", read_bandwidth());
    } else if (what == "select") {
        std::vector<Policy> policies;
        for (const FailedUnit& job : jobs) policies.push_back(policy_of(job));
        std::int64_t carried = 0;
        for (std::size_t j = 0; j < jobs.size(); ++j)
            carried += select_part(jobs[j], books, policies[j]).carried;
        fmt::print("carried {:.1f} a job\n", static_cast<double>(carried) / static_cast<double>(jobs.size()));
        time_jobs("select", jobs.size(), forget,
                  [&](std::size_t j) { select_part(jobs[j], books, policies[j]); });
        time_jobs("picks", jobs.size(), forget, [&](std::size_t j) {
            select_part(jobs[j], books, policies[j], {2, false});
        });
    }
    return 0;
}
