// A block while it is scanned: the finding sets that have parts in it, and where its results go. What the directory and the
// headers of column blocks tell is settled here; what is left is the kernel's.
#pragma once
#include <vector>

#include "engine/index/scan.hpp"

namespace endbell::inline index {

struct BlockScan {
    /// `count`: null where the four sets are all that is wanted.
    BlockScan(const std::vector<FindingSet>& all_sets, const Count* count, ScanResult& results);

    /// Before the kernel: which sets have parts in this block. Sets `skipped` where nothing is left to do.
    void prepare(const PartBlock& at);

    /// A finding set that has parts in the block.
    struct SetHere {
        std::size_t index = 0;  // into the list
        Verdict verdict = Verdict::fits;
        SetInBlock set;
    };

    const std::vector<FindingSet>& list;
    const std::vector<std::vector<std::size_t>>* keys;  // null: nothing is counted
    ScanResult& out;

    PartBlock block;
    /// All that the block adds to the results was added, and none of its parts lives.
    bool skipped = false;
    std::vector<SetHere> here;
    std::vector<const Word64*> partial;  // that the sets of `here` are made of
    /// Bits of the sets of `here`, made by the kernel; the first alone, for one after the other, where nothing is counted.
    std::vector<BlockBits> bits;
    /// Of each of the list, its bits; null: not here. Only where keys are counted.
    std::vector<const Word64*> bits_of;

    // What the kernel gives beside the results.
    bool occupied = false;  // some part lives
    /// How many findings of a part are open, or ask for changes. Valid of parts that one finding ends, where it counts.
    BitSlices open_count, change_count;
    BlockBits fails_once{};  // the parts that one finding ends

  private:
    bool all_fail() const;
    bool count_from_headers();
    void load_payloads();

    const Payloads* payloads_ = nullptr;  // null where no set of the list is of a column
    Scratch scratch_;
    std::vector<PayloadWords> wanted_;
    PayloadBuffer buffer_;
};

}  // namespace endbell::inline index
