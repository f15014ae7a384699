// Reads the rows of a file on a thread of its own while another one stores those that were read before.
#pragma once
#include <array>
#include <condition_variable>
#include <cstdint>
#include <exception>
#include <mutex>
#include <thread>
#include <vector>

#include "engine/import/row_values.hpp"

namespace endbell::inline import {

struct ReadRow {
    CsvRow row;
    std::vector<Stored> values;  // mean nothing when the row is damaged or has problems
    std::vector<Problem> problems;
    std::uint64_t fingerprint = 0;  // of the values
};

/// Rows in the order of the file. Batches keep their memory and are few: bounded by the longest row allowed.
class ReadAhead {
  public:
    struct Batch {
        std::vector<ReadRow> rows;  // the first `count` of them
        std::size_t count = 0;      // 0: the file is at its end
        std::uint64_t bytes_read = 0;
    };

    /// Nobody else reads `file.csv` until this is gone.
    explicit ReadAhead(TableFile& file);
    ~ReadAhead();
    ReadAhead(const ReadAhead&) = delete;
    ReadAhead& operator=(const ReadAhead&) = delete;

    /// Good until the next call. Throws what reading threw.
    Batch& next();

  private:
    /// Who had to wait goes on when it can for some time: to be woken for each batch costs more than it saves.
    bool may_take() const { return filled_ >= taken_ + ring_.size() / 2 || at_end_ || failure_; }
    bool may_fill() const { return filled_ + ring_.size() / 2 < taken_ + ring_.size() || stopped_; }
    void read();
    void fill(Batch& batch);

    TableFile& file_;
    ReadCells cells_;
    std::string room_;
    std::array<Batch, 8> ring_;
    std::size_t filled_ = 0;  // batches since the beginning: the next to fill is filled_ % ring_.size()
    std::size_t taken_ = 0;   // the last of them is in the caller's hands
    bool at_end_ = false;
    bool stopped_ = false;
    std::exception_ptr failure_;
    std::mutex mutex_;
    std::condition_variable moved_;
    std::thread reader_;  // last: all else is there when it starts
};

}  // namespace endbell::inline import
