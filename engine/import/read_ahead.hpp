// Reads the rows of a file on a thread of its own while another one stores those that were read before.
#pragma once
#include <array>
#include <atomic>
#include <cstddef>
#include <cstdint>
#include <exception>
#include <semaphore>
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
        std::exception_ptr failure;  // of reading; the rows mean nothing then
    };

    /// Nobody else reads `file.csv` until this is gone.
    explicit ReadAhead(TableFile& file);
    ~ReadAhead();
    ReadAhead(const ReadAhead&) = delete;
    ReadAhead& operator=(const ReadAhead&) = delete;

    /// Good until the next call. Throws what reading threw. REQUIRES: neither the end was given nor anything thrown.
    Batch& next();

  private:
    void read();
    void fill(Batch& batch);

    TableFile& file_;
    ReadCells cells_;
    std::string room_;
    static constexpr std::ptrdiff_t batches = 8;
    std::array<Batch, batches> ring_;
    // Batches that the reader may fill, one more when it is to stop; and those that the caller may take.
    std::counting_semaphore<> free_{batches};
    std::counting_semaphore<> filled_{0};
    std::size_t taken_ = 0;  // so far; the last of them is in the caller's hands
    std::atomic<bool> stopped_ = false;
    std::thread reader_;  // last: all else is there when it starts
};

}  // namespace endbell::inline import
