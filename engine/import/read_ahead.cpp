#include "engine/import/read_ahead.hpp"

#include "engine/catalog/digest.hpp"

namespace endbell::inline import {

namespace {

constexpr std::size_t rows_a_batch = 250;
constexpr std::size_t bytes_a_batch = 128 * 1024;

}  // namespace

ReadAhead::ReadAhead(TableFile& file) : file_(file), cells_(*file.table), reader_([this] { read(); }) {}

ReadAhead::~ReadAhead() {
    {
        const std::lock_guard lock(mutex_);
        stopped_ = true;
    }
    moved_.notify_all();
    reader_.join();
}

ReadAhead::Batch& ReadAhead::next() {
    std::unique_lock lock(mutex_);
    ++taken_;  // the one before is given back
    if (may_fill()) moved_.notify_all();
    if (filled_ < taken_) moved_.wait(lock, [this] { return may_take(); });
    if (filled_ < taken_) std::rethrow_exception(failure_);
    return ring_[(taken_ - 1) % ring_.size()];
}

void ReadAhead::read() {
    try {
        for (bool at_end = false; !at_end;) {
            Batch& batch = ring_[filled_ % ring_.size()];
            {
                std::unique_lock lock(mutex_);
                if (filled_ + 1 >= taken_ + ring_.size()) moved_.wait(lock, [this] { return may_fill(); });
                if (stopped_) return;
            }
            fill(batch);
            at_end = batch.count == 0;
            const std::lock_guard lock(mutex_);
            ++filled_;
            at_end_ = at_end;
            if (may_take()) moved_.notify_all();
        }
    } catch (...) {
        const std::lock_guard lock(mutex_);
        failure_ = std::current_exception();
        moved_.notify_all();
    }
}

void ReadAhead::fill(Batch& batch) {
    batch.rows.resize(rows_a_batch);
    batch.count = 0;
    const std::uint64_t began = file_.csv.bytes_read();
    while (batch.count < rows_a_batch && file_.csv.bytes_read() - began < bytes_a_batch) {
        ReadRow& read = batch.rows[batch.count];
        if (!file_.csv.next(read.row)) break;
        read.problems.clear();
        if (read.row.damage.empty()) read_values(file_, read.row, cells_, read.values, read.problems);
        if (read.row.damage.empty() && read.problems.empty())
            read.fingerprint = row_fingerprint(read.values, room_);
        ++batch.count;
    }
    batch.bytes_read = file_.csv.bytes_read();
}

}  // namespace endbell::inline import
