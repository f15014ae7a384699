// Nodes, resistances between them and sources behind resistances: the volts of every node. Knows nothing of wiring.
#pragma once
#include <cstddef>
#include <vector>

namespace endbell::inline wiring {

/// Solved by taking nodes out one after another, each replaced by a mesh between its neighbours. Every number on the way is
/// a sum or product of positive ones but for the sources, so that a wire beside an open contact costs no digits.
class Network {
  public:
    /// Node `order[0]` is taken out first: nodes with few neighbours first is quick. A permutation of 0..n-1.
    explicit Network(const std::vector<int>& order);

    /// No resistance and no source is left; the nodes are.
    void clear();
    void join(int a, int b, double conductance);
    void to_ground(int a, double conductance);
    /// A source between two nodes, `plus` against `minus`, behind its own resistance.
    void source(int plus, int minus, double volts, double conductance);
    /// Against ground, of each node. REQUIRES: from each node resistances lead to ground. Leaves the network cleared.
    const std::vector<double>& solve();

  private:
    double& between(std::size_t early, std::size_t late) { return conductances_[early * count_ + late]; }
    std::size_t step(int node) const { return step_[static_cast<std::size_t>(node)]; }
    void take_out(std::size_t k);

    std::size_t count_;
    std::vector<std::size_t> step_;     // of each node: when it is taken out; all below stand in that order
    std::vector<double> conductances_;  // between two steps, the earlier first
    std::vector<double> ground_;
    std::vector<double> current_;  // that sources drive in
    std::vector<double> total_;    // of all that meets at a step when it is taken out
    std::vector<double> level_;    // volts, by step
    std::vector<std::size_t> neighbours_;
    std::vector<double> volts_;  // by node
};

}  // namespace endbell::inline wiring
