#include "engine/import/read_ahead.hpp"

#include "engine/catalog/digest.hpp"

namespace endbell::inline import {

namespace {

constexpr std::size_t rows_a_batch = 250;
constexpr std::size_t bytes_a_batch = 128 * 1024;

}  // namespace

ReadAhead::ReadAhead(TableFile& file) : file_(file), cells_(*file.table), reader_([this] { read(); }) {}

ReadAhead::~ReadAhead() {
    stopped_ = true;
    free_.release();  // the reader may wait for one
    reader_.join();
}

ReadAhead::Batch& ReadAhead::next() {
    if (taken_ > 0) free_.release();  // the one before is given back
    filled_.acquire();
    Batch& batch = ring_[taken_++ % ring_.size()];
    if (batch.failure) std::rethrow_exception(batch.failure);
    return batch;
}

void ReadAhead::read() {
    for (std::size_t i = 0;; ++i) {
        free_.acquire();
        if (stopped_) return;
        Batch& batch = ring_[i % ring_.size()];
        try {
            fill(batch);
        } catch (...) {
            batch.failure = std::current_exception();
        }
        const bool last = batch.failure || batch.count == 0;
        filled_.release();
        if (last) return;
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
