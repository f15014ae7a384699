// Many jobs from one CSV: one row a job, columns named GROUP.FIELD, and "plate", "tag". A row that fails says
// why in its own result row and stops nothing.
#include <algorithm>
#include <atomic>
#include <exception>
#include <filesystem>
#include <functional>
#include <map>
#include <memory>
#include <mutex>
#include <thread>

#include "cli/commands/commands.hpp"
#include "cli/exit_codes.hpp"
#include "cli/interrupt.hpp"
#include "cli/memory.hpp"
#include "cli/output.hpp"
#include "cli/session.hpp"
#include "engine/base/hash.hpp"
#include "engine/base/problem.hpp"
#include "engine/base/text.hpp"
#include "engine/cost/orders.hpp"
#include "engine/csv/csv_file.hpp"
#include "engine/csv/csv_write.hpp"
#include "engine/explain/parts_of_documents.hpp"
#include "engine/job/job.hpp"
#include "engine/job/shop_policy.hpp"
#include "engine/job/start_up_file.hpp"
#include "engine/sheet/json.hpp"

namespace endbell::cli {

namespace {

struct ResultRow {
    std::string job, tag, outcome, pick, number, verdict, changes, today, per_year, currency, second,
        second_today, problem;
    int exit_code = 0;
    std::optional<Money> total;
    std::vector<Purchase> purchases;
};

/// A column of the jobs: a key of theirs, "plate" or "tag".
struct JobColumn {
    std::string name;
    const JobKey* key;  // null for plate and tag
};
using JobColumns = std::vector<JobColumn>;

FailedUnit job_of(const JobColumns& header, const CsvRow& row, const std::string& file, std::string& tag) {
    if (!row.damage.empty())
        throw BadData(Problem{{file, row.line, 0}, "row", "", "cells that can be told apart", row.damage});
    FailedUnit job;
    std::string digest_text;
    std::vector<KeyValue> values;
    values.reserve(header.size());
    for (std::size_t c = 0; c < header.size() && c < row.size(); ++c) {
        const std::string_view text = trimmed(row[c]);
        digest_text += header[c].name;
        digest_text += '=';
        digest_text += text;
        digest_text += '\n';
        if (text.empty()) continue;
        if (header[c].key != nullptr) {
            values.push_back({header[c].key, text, {file, row.line, static_cast<int>(c) + 1}});
        } else if (header[c].name == "tag") {
            tag = text;
        } else {  // what stands before a plate's text, it does not override
            set_keys(job, std::exchange(values, {}));
            add_plate(job, text);
        }
    }
    set_keys(job, values);
    job.digest = fingerprint(digest_text);
    attach_start_up(job, std::filesystem::path(file).parent_path());
    return job;
}

const CostOption* cost_of(const Ledger& ledger, const Option& option) {
    for (const CostOption& o : ledger.options) {
        if (o.part_id == option.candidate.part.id) return &o;
    }
    return nullptr;
}

/// Cells of what is not known stay empty: a spreadsheet adds up a zero.
void fill(ResultRow& row, const Selection& s) {
    row.outcome = std::string(word(s.outcome));
    row.exit_code = static_cast<int>(s.outcome);
    if (!s.pick || s.outcome != Outcome::something_fits) return;
    const Option& pick = s.options[static_cast<std::size_t>(*s.pick)];
    row.pick = pick.candidate.part.id;
    row.number = pick.candidate.part.number;
    row.verdict = std::string(word(pick.standing));
    row.changes = kit_text(pick.kit);
    if (const CostOption* cost = cost_of(s.ledger, pick)) {
        row.total = cost->today;
        if (cost->today) {
            row.today = cost->today->amount();
            row.currency = cost->today->currency().code;
        }
        if (cost->per_year) row.per_year = cost->per_year->amount();
        if (!cost->lacking.empty()) row.problem = "no total without " + joined(cost->lacking, ", ");
    }
    row.purchases = purchases_of(row.job, row.pick, pick.offer, pick.kit);
    if (s.options.size() < 2) return;
    const Option& second = s.options[1];
    row.second = second.candidate.part.id;
    const CostOption* cost = cost_of(s.ledger, second);
    if (cost != nullptr && cost->today) row.second_today = cost->today->amount();
}

/// What one thread answers its rows from.
class Counter {
  public:
    Counter(const IndexedCatalog& stored, const Limits& limits, const std::optional<ShopPolicy>& policy)
        : own_(stored), books_{own_, limits, own_.index()}, shop_(policy) {}

    /// The first thread that it serves takes the memory that its answers will.
    void settle_in() {
        constexpr std::size_t many_answers = 24'000'000;  // bytes, measured at a hundred thousand parts
        if (!memory_) memory_.emplace(many_answers, many_answers);
    }

    Selection answer(FailedUnit& job) {
        if (shop_) add_shop(job, *shop_);
        Policy policy = policy_of(job);
        if (!shelf_ || shelf_->policy() != policy) shelf_.emplace(books_, std::move(policy));
        return select_part(job, books_, *shelf_, {2, false});
    }

  private:
    std::optional<ExpectedMemory> memory_;
    IndexedCatalog own_;  // a connection serves one thread
    const Books books_;
    const std::optional<ShopPolicy>& shop_;
    std::optional<KitShelf> shelf_;  // of the last row's policy: most rows have one
};

ResultRow answer(const JobColumns& header, const CsvRow& csv, const std::string& file, Counter& counter) {
    ResultRow row;
    row.job = file + ":" + std::to_string(csv.line);
    try {
        FailedUnit job = job_of(header, csv, file, row.tag);
        if (job.unit.name) row.job = *job.unit.name;
        fill(row, counter.answer(job));
    } catch (const BadData& wrong) {
        row.outcome = "bad data";
        row.exit_code = bad_data;
        row.problem = joined(split(wrong.what(), '\n'), " | ");
    }
    return row;
}

std::string results_csv(const std::vector<ResultRow>& rows) {
    std::string out =
        csv_line({"job", "tag", "outcome", "exit_code", "part_id", "part_number", "verdict", "changes",
                  "today", "per_year", "currency", "second_part_id", "second_today", "problem"});
    for (const ResultRow& r : rows) {
        out += csv_line({r.job, r.tag, r.outcome, std::to_string(r.exit_code), r.pick, r.number, r.verdict,
                         r.changes, r.today, r.per_year, r.currency, r.second, r.second_today, r.problem});
    }
    return out;
}

std::string orders_csv(const OrderList& list) {
    std::string out =
        csv_line({"seller", "branch", "part_id", "count", "each", "total", "currency", "short_of", "jobs"});
    for (const OrderLine& l : list.lines) {
        out +=
            csv_line({l.seller, l.branch, l.part_id, std::to_string(l.count), l.each ? l.each->amount() : "",
                      l.total ? l.total->amount() : "", std::string(l.total ? l.total->currency().code : ""),
                      l.short_of ? std::to_string(*l.short_of) : "", joined(l.jobs, "; ")});
    }
    return out;
}

struct TagSum {
    int jobs = 0, picked = 0, failed = 0, unpriced = 0;
    std::map<std::string_view, Money> totals;  // by currency
};

/// By tag, as whoever wrote the jobs sorts them; each currency by itself, since no rate is known.
Document summary(const std::vector<ResultRow>& rows, const std::string& results, const std::string& orders) {
    std::map<std::string, TagSum> tags;
    for (const ResultRow& r : rows) {
        TagSum& sum = tags[r.tag];
        ++sum.jobs;
        if (r.exit_code == bad_data) ++sum.failed;
        if (r.pick.empty()) continue;
        ++sum.picked;
        if (!r.total) {
            ++sum.unpriced;
            continue;
        }
        const auto found = sum.totals.find(r.total->currency().code);
        if (found == sum.totals.end()) {
            sum.totals.emplace(r.total->currency().code, *r.total);
        } else {
            found->second = found->second + *r.total;
        }
    }
    Document d{"Batch", {}, ""};
    Grid grid{{"tag", "jobs", "with a part", "without a price", "failed", "today"}, {}, ""};
    for (const auto& tag : tags) {
        std::string totals;
        for (const auto& total : tag.second.totals)
            totals += (totals.empty() ? "" : " + ") + to_text(total.second);
        grid.rows.push_back({tag.first.empty() ? "(none)" : tag.first, std::to_string(tag.second.jobs),
                             std::to_string(tag.second.picked), std::to_string(tag.second.unpriced),
                             std::to_string(tag.second.failed), totals.empty() ? "-" : totals});
    }
    d.add(grid);
    d.add(Paragraph{"Results: " + results + ". What to order: " + orders + "."});
    return d;
}

std::string orders_beside(const std::string& results) {
    const std::filesystem::path path(results);
    return (path.parent_path() / (path.stem().string() + ".orders.csv")).string();
}

/// Rows that are answered together; Ctrl-C waits for so many.
constexpr std::size_t rows_at_once = 512;

using Counters = std::vector<std::unique_ptr<Counter>>;

/// Each row's answer in the place of its row, by as many threads as there are counters.
std::vector<ResultRow> answers(const JobColumns& header, const std::vector<CsvRow>& rows,
                               const std::string& file, const Counters& counters) {
    std::vector<ResultRow> results(rows.size());
    std::atomic<std::size_t> next = 0;
    std::mutex mutex;
    std::exception_ptr bug;
    const auto work = [&](Counter& counter) {
        try {
            counter.settle_in();
            for (std::size_t i = next++; i < rows.size(); i = next++)
                results[i] = answer(header, rows[i], file, counter);
        } catch (...) {
            const std::lock_guard lock(mutex);
            bug = std::current_exception();
            next = rows.size();
        }
    };
    std::vector<std::thread> others;
    for (std::size_t t = 1; t < counters.size(); ++t) others.emplace_back(work, std::ref(*counters[t]));
    work(*counters.front());
    for (std::thread& other : others) other.join();
    if (bug) std::rethrow_exception(bug);
    return results;
}

/// Ctrl-C ends it between two lots of jobs, and writes nothing.
std::vector<ResultRow> heeded_answers(const JobColumns& header, CsvFile& csv, const Arguments& typed,
                                      const Counters& counters) {
    const Heed heed;
    ProgressLine line;
    std::vector<ResultRow> all;
    std::vector<CsvRow> rows;
    for (bool more = true; more;) {
        heed.look("the batch after " + std::to_string(all.size()) + " jobs; nothing was written to " +
                  typed.results);
        rows.clear();
        for (CsvRow row; rows.size() < rows_at_once && (more = csv.next(row));) rows.push_back(row);
        for (ResultRow& row : answers(header, rows, typed.job, counters)) all.push_back(std::move(row));
        const std::uint64_t percent = 100 * csv.bytes_read() / std::max<std::uint64_t>(1, csv.size());
        line.show(std::to_string(percent) + " %  " + std::to_string(all.size()) + " jobs");
    }
    return all;
}

/// A column that nobody reads would be a job half read: the first one ends the batch before any row.
JobColumns columns_of(const CsvRow& header, const std::string& file) {
    JobColumns columns;
    for (const std::string& cell : header.cells()) {
        const std::string name(trimmed(cell));
        columns.push_back({name, job_key(name)});
        if (name == "tag" || name == "plate" || columns.back().key != nullptr) continue;
        std::vector<std::string> known{"tag", "plate"};
        for (const JobKey& key : job_keys()) known.push_back(key.id());
        const std::string near = nearest(name, known);
        throw BadData(Problem{{file, header.line, static_cast<int>(columns.size())},
                              "column",
                              name,
                              "GROUP.FIELD, plate or tag",
                              near.empty() ? "see the keys of a job file" : "did you mean " + near + "?"});
    }
    return columns;
}

/// Results are never written over the jobs.
void keep_apart(const std::string& jobs, const std::vector<std::string>& written) {
    for (const std::string& file : written) {
        std::error_code none;
        if (!std::filesystem::equivalent(jobs, file, none)) continue;
        throw BadUsage(
            Problem{{}, "--out", file, "another file than the jobs", "name a file for the results"});
    }
}

}  // namespace

int run_batch(const Arguments& typed) {
    const std::string orders = orders_beside(typed.results);
    keep_apart(typed.job, {typed.results, orders});
    const std::unique_ptr<IndexedCatalog> stored = open_catalog(typed);
    const Limits limits = limits_in_force(typed, stored.get());
    std::optional<ShopPolicy> shop;
    if (!typed.shop.empty()) shop = read_shop_policy_file(typed.shop);
    CsvFile csv{typed.job};
    const JobColumns header = columns_of(csv.header(), typed.job);
    Counters counters;
    for (unsigned t = 0; t < std::max(1u, std::thread::hardware_concurrency()); ++t)
        counters.push_back(std::make_unique<Counter>(*stored, limits, shop));
    const std::vector<ResultRow> rows = heeded_answers(header, csv, typed, counters);
    std::vector<Purchase> purchases;
    for (const ResultRow& r : rows) purchases.insert(purchases.end(), r.purchases.begin(), r.purchases.end());
    write_whole(
        {{typed.results, results_csv(rows), "--out"}, {orders, orders_csv(order_list(purchases)), "--out"}});
    const bool any_failed =
        std::any_of(rows.begin(), rows.end(), [](const ResultRow& r) { return r.exit_code == bad_data; });
    const int code = any_failed ? bad_data : done;
    const Document said = summary(rows, typed.results, orders);
    if (typed.json) {
        print(json_document("batch", said, code));
    } else {
        print(said, typed);
    }
    return code;
}

}  // namespace endbell::cli
