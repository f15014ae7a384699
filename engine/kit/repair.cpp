#include "engine/kit/repair.hpp"

#include <cmath>
#include <utility>

#include "engine/facts/control_power.hpp"
#include "engine/model/limit.hpp"

namespace endbell::inline kit {

namespace {

struct Wanted {
    Remedy remedy;
    std::vector<std::string> asks;
    RepairLanding landing = RepairLanding::as_it_was;
};

/// What is bought for each thing at fault; the rest is cleaned, set or repaired.
std::optional<Cure> bought_for(Culprit culprit) {
    switch (culprit) {
        case Culprit::run_capacitor:
            return Cure::run_capacitor;
        case Culprit::start_capacitor:
            return Cure::start_capacitor;
        case Culprit::line_fuse:
            return Cure::line_fuse;
        case Culprit::contactor:
            return Cure::contactor;
        case Culprit::control_fuse:
            return Cure::control_fuse;
        case Culprit::float_switch:
            return Cure::float_switch;
        case Culprit::door_switch:
            return Cure::door_switch;
        case Culprit::transformer:
            return Cure::transformer;
        case Culprit::board_relay:
            return Cure::board_relay;
        default:
            return std::nullopt;
    }
}

class Wants {
  public:
    Wants(const FailedUnit& job, const Facts& facts, Cure cure) : job_(job), facts_(facts) {
        wanted_.remedy.cure = cure;
    }

    Wanted of(const Limits& limits) {
        switch (wanted_.remedy.cure) {
            case Cure::run_capacitor:
            case Cure::start_capacitor:
                capacitor();
                break;
            case Cure::line_fuse:
                take(wanted_.remedy.amps, job_.equipment.maximum_overcurrent,
                     "equipment.maximum_overcurrent");
                break;
            case Cure::control_fuse:
                take(wanted_.remedy.amps, job_.controls.fuse, "controls.fuse");
                break;
            case Cure::contactor:
                take(wanted_.remedy.coil, job_.controls.coil, "controls.coil");
                take(wanted_.remedy.amps, job_.equipment.minimum_circuit_ampacity,
                     "equipment.minimum_circuit_ampacity");
                poles();
                break;
            case Cure::board_relay:
                take(wanted_.remedy.coil, job_.controls.coil, "controls.coil");
                take(wanted_.remedy.amps, job_.plate.current, "plate.current");
                break;
            case Cure::transformer:
                transformer(limits);
                break;
            default:
                break;
        }
        return std::move(wanted_);
    }

  private:
    template <class T>
    void take(std::optional<T>& to, const Reading<T>& from, const char* job_key) {
        to = from.said();
        if (!to) wanted_.asks.emplace_back(job_key);
    }

    /// A pole for each line. Outdoors it switches the compressor too, of whose phases the fan's say nothing.
    void poles() {
        const bool own = job_.unit.load.said() != Load::outdoor_fan && facts_.phase.is(1);
        if (has_three_lines(facts_)) {
            wanted_.remedy.poles = 3;
        } else if (own || facts_.supply.phases == 1) {
            wanted_.remedy.poles = 2;
        } else {
            wanted_.asks.emplace_back("equipment.supply");
        }
    }

    /// Of the motor's own plate; volts equal or higher.
    void capacitor() {
        wanted_.remedy.capacitor = facts_.capacitor.value;
        wanted_.remedy.capacitor_volts = facts_.capacitor_volts.value;
        if (!facts_.capacitor) wanted_.asks.emplace_back("plate.capacitor");
        if (!facts_.capacitor_volts) wanted_.asks.emplace_back("plate.capacitor_volts");
        wanted_.landing = RepairLanding::two_terminals;
    }

    /// What carries at least what the old one did.
    void transformer(const Limits& limits) {
        const auto load = job_.controls.transformer_load.said();
        const auto rating = job_.controls.transformer.said();
        if (!rating) wanted_.asks.emplace_back("controls.transformer");
        if (!facts_.supply.at_motor()) wanted_.asks.emplace_back("equipment.supply");
        if (!wanted_.asks.empty()) return;
        wanted_.remedy = transformer_for(load.value_or(ApparentPower()), facts_.supply, limits);
        if (!wanted_.remedy.power || *wanted_.remedy.power < *rating) wanted_.remedy.power = rating;
    }

    const FailedUnit& job_;
    const Facts& facts_;
    Wanted wanted_;
};

KitChoice bought(const Remedy& remedy, const KitShelf& shelf) {
    Candidate old;
    old.findings.emplace_back();
    old.findings.back().remedies.push_back(remedy);
    return choose_kit(old, shelf);
}

/// The compressor's side still is what its print says, within the part's own tolerance: then it may stay.
bool compressor_side_holds(const FailedUnit& job, const Limits& limits) {
    const auto printed = job.plate.compressor_capacitor.said();
    const auto read = job.measured.compressor_capacitor.said();
    if (!printed || !read || *printed <= Capacitance()) return false;
    return std::abs(*read / *printed - 1) <= limits.value(limit::capacitor_part) + 1e-9;
}

bool costs_less(const KitChoice& one, const KitChoice& other) {
    if (one.complete() != other.complete()) return one.complete();
    return one.parts_total && (!other.parts_total || *one.parts_total < *other.parts_total);
}

/// The whole dual one by equal values; or a single one for the fan, where the compressor's side is shown to hold.
void choose_of_a_dual(Repair& repair, const FailedUnit& job, const Remedy& single, const KitShelf& shelf,
                      const Limits& limits) {
    Remedy whole = single;
    whole.compressor_capacitor = job.plate.compressor_capacitor.said();
    const KitChoice of_the_fan = std::move(repair.kit);
    repair.kit = bought(whole, shelf);
    repair.landing = RepairLanding::whole_dual;
    if (!job.measured.compressor_capacitor.said()) repair.may_ask = "measured.compressor_capacitor";
    if (!compressor_side_holds(job, limits)) return;
    repair.other = of_the_fan;
    repair.other_landing = RepairLanding::single_beside_the_dual;
    if (!costs_less(of_the_fan, repair.kit)) return;
    std::swap(repair.kit, *repair.other);
    std::swap(repair.landing, *repair.other_landing);
}

}  // namespace

std::optional<Repair> repair_of(const FailedUnit& job, const Facts& facts, const Diagnosis& diagnosis,
                                const KitShelf& shelf, const Limits& limits) {
    if (!diagnosis.replace_nothing()) return std::nullopt;
    const std::optional<Cure> cure = diagnosis.culprit ? bought_for(*diagnosis.culprit) : std::nullopt;
    if (!cure) return std::nullopt;
    Wanted wanted = Wants(job, facts, *cure).of(limits);
    Repair repair;
    repair.cure = *cure;
    repair.asks = std::move(wanted.asks);
    repair.landing = wanted.landing;
    repair.kit = bought(wanted.remedy, shelf);
    if (*cure == Cure::run_capacitor && job.plate.compressor_capacitor.said())
        choose_of_a_dual(repair, job, wanted.remedy, shelf, limits);
    else if (*cure == Cure::run_capacitor && job.unit.load.said() == Load::outdoor_fan)
        repair.may_ask = "plate.compressor_capacitor";  // the old one may be a dual one
    return repair;
}

}  // namespace endbell::inline kit
