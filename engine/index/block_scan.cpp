#include "engine/index/block_scan.hpp"

#include <algorithm>
#include <bit>

namespace endbell::inline index {

namespace {

/// As many slices as the greatest count has bits.
std::size_t slices_for(const std::vector<FindingSet>& list, Verdict verdict) {
    const auto most =
        std::count_if(list.begin(), list.end(), [&](const FindingSet& s) { return s.verdict == verdict; });
    return static_cast<std::size_t>(std::bit_width(static_cast<std::size_t>(most)));
}

}  // namespace

BlockScan::BlockScan(const std::vector<FindingSet>& all_sets, const Count* count, ScanResult& results)
    : list(all_sets), keys(count != nullptr ? &count->keys : nullptr), out(results) {
    const auto some =
        std::find_if(list.begin(), list.end(), [](const FindingSet& s) { return s.runs.column != nullptr; });
    if (some != list.end()) payloads_ = &some->runs.column->payloads();
    bits.resize(keys != nullptr ? list.size() : 1);
    if (keys == nullptr) return;
    open_count.resize(slices_for(list, Verdict::not_shown));
    change_count.resize(slices_for(list, Verdict::fits_with_changes));
}

void BlockScan::prepare(const PartBlock& at) {
    block = at;
    here.clear();
    partial.clear();
    scratch_.clear();
    if (payloads_ != nullptr) block.payloads = payloads_->of(block.number());
    skipped = all_fail() && count_from_headers();
    if (skipped) return;
    load_payloads();
    if (keys != nullptr) bits_of.assign(list.size(), nullptr);
    for (std::size_t s = 0; s < list.size(); ++s) {
        const SetInBlock set = set_in_block(list[s].runs, block, partial, scratch_);
        if (!set.whole && set.partial == 0) continue;
        if (keys != nullptr) bits_of[s] = bits[here.size()].data();
        here.push_back({s, list[s].verdict, set});
    }
}

/// No part of the block lives; and where reasons are counted, none of it fails by one finding alone.
bool BlockScan::all_fail() const {
    std::size_t left = keys != nullptr ? 2 : 1;  // finding sets that end all
    for (const FindingSet& set : list) {
        if (set.verdict == Verdict::does_not_fit && covers(set.runs, block) && --left == 0) return true;
    }
    return false;
}

/// All that is left to know of the block is how many parts each finding ends, and headers tell that. False where they do
/// not: some parts stand apart.
bool BlockScan::count_from_headers() {
    if (keys == nullptr) return true;
    if (std::any_of(list.begin(), list.end(), [](const FindingSet& s) { return !s.runs.apart.empty(); }))
        return false;
    const std::size_t all = block.parts();
    for (std::size_t s = 0; s < list.size(); ++s) {
        if (list[s].verdict == Verdict::does_not_fit)
            out.fails[s].parts += static_cast<std::int64_t>(count_in(list[s].runs, block, all));
    }
    return true;
}

void BlockScan::load_payloads() {
    if (payloads_ == nullptr) return;
    wanted_.clear();
    if (payloads_->never_loaded(block.number())) {
        for (const FindingSet& set : list) {
            if (needs_payload(set.runs, block.number()))
                wanted_.push_back(set.runs.column->payload(block.number()));
        }
    }
    block.payloads = payloads_->load(block.number(), wanted_, buffer_);
}

}  // namespace endbell::inline index
