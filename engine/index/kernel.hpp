// A kernel: the loops of a scan over the words of one block, compiled for one kind of processor.
#pragma once
#include <string_view>
#include <vector>

namespace endbell::inline index {

struct BlockScan;

struct Kernel {
    std::string_view name;  // the instructions that the processor must have
    void (*run)(BlockScan& block);
};

/// Those that this processor can run, the fastest first. All come to the same.
const std::vector<Kernel>& kernels();

}  // namespace endbell::inline index
