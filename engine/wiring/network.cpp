#include "engine/wiring/network.hpp"

#include <algorithm>

namespace endbell::inline wiring {

Network::Network(const std::vector<int>& order)
    : count_(order.size()),
      step_(count_),
      conductances_(count_ * count_),
      ground_(count_),
      current_(count_),
      total_(count_),
      level_(count_),
      volts_(count_) {
    for (std::size_t k = 0; k < count_; ++k) step_[static_cast<std::size_t>(order[k])] = k;
}

void Network::clear() {
    std::fill(conductances_.begin(), conductances_.end(), 0.0);
    std::fill(ground_.begin(), ground_.end(), 0.0);
    std::fill(current_.begin(), current_.end(), 0.0);
}

void Network::join(int a, int b, double conductance) {
    if (a == b) return;
    between(std::min(step(a), step(b)), std::max(step(a), step(b))) += conductance;
}

void Network::to_ground(int a, double conductance) {
    ground_[step(a)] += conductance;
}

void Network::source(int plus, int minus, double volts, double conductance) {
    join(plus, minus, conductance);
    current_[step(plus)] += volts * conductance;
    current_[step(minus)] -= volts * conductance;
}

void Network::take_out(std::size_t k) {
    neighbours_.clear();
    double total = ground_[k];
    for (std::size_t j = k + 1; j < count_; ++j) {
        if (between(k, j) == 0.0) continue;
        neighbours_.push_back(j);
        total += between(k, j);
    }
    total_[k] = total;
    for (std::size_t a = 0; a < neighbours_.size(); ++a) {
        const std::size_t i = neighbours_[a];
        const double share = between(k, i) / total;
        ground_[i] += share * ground_[k];
        current_[i] += share * current_[k];
        for (std::size_t b = a + 1; b < neighbours_.size(); ++b)
            between(i, neighbours_[b]) += share * between(k, neighbours_[b]);
    }
}

const std::vector<double>& Network::solve() {
    for (std::size_t k = 0; k < count_; ++k) take_out(k);
    for (std::size_t k = count_; k-- > 0;) {
        double driven = current_[k];
        for (std::size_t j = k + 1; j < count_; ++j) driven += between(k, j) * level_[j];
        level_[k] = driven / total_[k];
    }
    for (std::size_t node = 0; node < count_; ++node) volts_[node] = level_[step_[node]];
    clear();
    return volts_;
}

}  // namespace endbell::inline wiring
