// engine/wiring: from thermostat or board terminals to the part's taps, proven over every signal state.
//
// This is the map of the folder. A state goes one way, and each file hands a value to the next (plan.cpp is the road):
//     feed          how this job can feed this part: voltages, conductors, tap rule; no state yet
//     signals       what can be live at the motor's terminals, and what each terminal stands for
//     states        the sets of signals that occur, each with the call it stands for (Demand)
//     objections    what speaks against these controls: here a job is refused, not later
//     tap_choice    the call becomes a tap by the air plan (ControlState)
//     table         all 2^n sets of signals, the wanted tap where one occurs: the first witness, what is wanted
//     tree, circuit, one_conductor, highest_wins, synthesis
//                   the fewest relays for the table; circuit says which taps it means to be live: the second, what is meant
//     netlist       the circuit as relays and wires between places (net_place)
//     landing, line_side, plugs
//                   the part's own terminals: taps, run signal, power, earth, capacitor; pins of a programmed part
//     settings      what is set, fitted or taken out before power, whether or not there is a plan
//     simulate      what the wires do, by relay logic alone: the third, it knows no table and no circuit
//     motion        what contacts may join while relays move: a way that ties calls gives way to one that does not
//     proof         the three side by side, state by state; then fault by fault
//     network, nodal, nodal_states
//                   the wires as resistances, solved for volts: the fourth, which a plan passes before anybody wires by it
//     transformer, remarks
//                   what a plan adds to the transformer, what must be said of it, what is checked
//     commissioning what any unit owes before and after, by load, heat, motor and drive; it needs no plan
// A stage that cannot go on says so as NoWiring (no_wiring), and verdict tells what that means for the part.
// kinds has every word of an answer. Nothing here reads a kit or a match.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "engine/airflow/air_plan.hpp"
#include "engine/wiring/kinds.hpp"
#include "engine/wiring/net_place.hpp"
#include "engine/wiring/site_check.hpp"

namespace endbell::inline wiring {

/// A set of signals as bits; signal i is WiringPlan::signals[i].
using SignalSet = unsigned;

/// One reachable state of the controls and the tap that should be live in it. 0: motor off.
struct ControlState {
    std::string name;  // "cool 1", "defrost", "fan on"
    SignalSet live = 0;
    int wanted_tap = 0;
    StateMaker maker = StateMaker::thermostat;
    bool overlap = false;  // several outputs of a board live together
    std::optional<LeadBasis> provisional =
        std::nullopt;         // that tap is a lead that no airflow shows to be right
    bool by_default = false;  // the part runs at that tap with no tap live: none is to be
};

/// A state in which air is wanted, and that no row of the truth table stands for: what sees to its air, or keeps it away.
struct KeptAway {
    std::string state;
    StateMaker maker = StateMaker::thermostat;
    Interlock by = Interlock::no_such_call;
    bool shown = true;  // false: nothing shows the interlock, and the plan holds on that condition
};

/// A listed terminal that commands nothing here.
struct IdleTerminal {
    std::string name;
    IdleReason why = IdleReason::supply_24v;
};

/// The signals that run each source of heat: never live without a live tap.
struct HeatSignals {
    SignalSet elements = 0;
    SignalSet burner = 0;
    SignalSet compressor = 0;
    SignalSet all() const { return elements | burner | compressor; }
};

/// An isolation relay: coil from one signal to C; its contacts stand in the netlist, each break before make.
struct Relay {
    std::string name;  // "K1"
    int coil_signal = 0;
    int contacts = 0;            // change-over poles used
    int bodies = 1;              // relays with their coils side by side, when one has too few poles
    bool line_coil = false;      // the coil sees line voltage
    bool line_contacts = false;  // the contacts carry line voltage
};

/// One conductor from a place to a place.
struct Wire {
    NetPlace from;
    NetPlace to;
    std::optional<WireNote> note = std::nullopt;  // absent: a control wire
};

/// What one state of the signals does: every live tap, and the tap the motor obeys. A state that nothing brings about says
/// what keeps it away; it holds where at most the one tap is obeyed and no heat is without air all the same.
struct TruthRow {
    SignalSet live = 0;
    std::vector<int> live_taps;
    std::optional<int> effective_tap;  // absent: two live and the tap rule does not say
    int wanted_tap = 0;                // 0 where not reachable
    bool reachable = false;
    std::string state;                        // names where reachable
    std::vector<StateMaker> makers{};         // of those states, each once
    std::optional<Interlock> kept_away_by{};  // where not reachable
    bool as_meant = false;                    // the wires do what the circuit means them to do
    bool holds = false;
};

/// Where one tap of the part lands, and in which states it runs.
struct TapRow {
    int tap = 0;
    std::string terminal;             // as printed on the part; empty: not in the catalog
    std::vector<NetPlace> from;       // places wired to it; empty: left open or parked
    std::vector<std::string> states;  // names of the states it serves
    bool parked = false;              // a speed lead that must be capped and insulated on its own
    std::optional<LeadBasis> provisional;
};

/// One thing broken, and every signal state that it changes.
enum class FaultKind { coil_open, welded_open_side, welded_closed_side, wire_off, lost_common };
constexpr auto words_of(FaultKind) {
    return std::array{Word<FaultKind>{FaultKind::coil_open, "coil open"},
                      Word<FaultKind>{FaultKind::welded_open_side, "contact welded to NO"},
                      Word<FaultKind>{FaultKind::welded_closed_side, "contact stuck on NC"},
                      Word<FaultKind>{FaultKind::wire_off, "wire off"},
                      Word<FaultKind>{FaultKind::lost_common, "lost common"}};
}
struct FaultEffect {
    SignalSet live = 0;
    std::string state;  // reachable states only
    int wanted_tap = 0;
    std::vector<int> live_taps;
};
struct FaultRow {
    FaultKind kind = FaultKind::coil_open;
    std::string where;                 // "K1", "K1 pole 2", "Y1 to K1.A1"
    std::vector<FaultEffect> effects;  // reachable states whose live taps change; empty: nothing is seen
    bool two_taps = false;             // in some state two taps are live
    bool back_feed = false;  // in some state one thermostat wire feeds another, or the load of an idle call
    std::vector<HeatSource> without_air{};  // called in some state in which no tap is live
    bool heat_without_air() const { return !without_air.empty(); }
};

/// The transformer that a kit puts in the place of one that is too small.
struct FittedTransformer {
    ApparentPower rating;
    double share = 0;  // of rating, with everything added
    Current rated;     // full-load, of its 24 V side
    Current fuse;      // of its 24 V side
};

/// What the relays and taps add to the control transformer.
struct ControlPower {
    std::optional<ApparentPower> rating;
    std::optional<ApparentPower> before;
    ApparentPower added;
    std::optional<double> share;              // of rating, with everything added; 0.8 is 80 %
    std::optional<PowerJudgement> judgement;  // absent: nothing is added
    std::optional<bool> class2;               // the transformer can be a class 2 source
    std::optional<Current> rated;             // full-load, of its 24 V side
    std::optional<Current> fuse;              // what protects that side
    std::optional<FittedTransformer> fitted;  // by the kit, where the rating is too small
    Voltage drop_50_ft;                       // lost by what is added, over 50 ft of 18 AWG each way
};

/// Something to set, fit or take out before power. Figures stand where the kind has them.
struct Setting {
    SettingKind what = SettingKind::capacitor;
    SettingDone done = SettingDone::ask;
    std::optional<PlateVolts> volts = std::nullopt;  // that it is set for
    std::optional<Power> power = std::nullopt;
    std::optional<Current> amps = std::nullopt;
    std::optional<Capacitance> capacitor = std::nullopt;
    std::optional<Voltage> capacitor_volts = std::nullopt;
    std::string lead = {};  // as printed on the part
};

struct WiringPlan {
    bool possible = false;
    std::optional<WiringRefusal> refusal;  // why it is not
    std::vector<WiringRescue> rescues;     // what would make a refused plan possible
    std::vector<std::string> lacking;      // job keys or part columns
    std::vector<Call> refused_calls;       // those the refusal is about
    std::vector<std::string> refused_terminals;
    std::vector<std::string> assumed;  // job keys that were assumed
    std::optional<WiringMethod> method;
    std::optional<WiringCondition> condition;  // it holds only while that is true
    TapRule tap_rule = TapRule::not_stated;
    std::optional<LoadSwitch> load_switch;  // the motor hangs on its load side
    bool line_signals = false;              // the signals are line voltage
    bool line_taps = false;                 // the taps are line-voltage leads
    std::optional<int> default_tap;         // that it obeys with its run signal live and no tap live
    std::vector<std::string> signals;       // names, bit order
    HeatSignals heats;                      // none of them is live without a live tap
    std::vector<IdleTerminal> idle;         // listed, and no signal here
    std::vector<ControlState> states;
    std::vector<KeptAway> kept_away;
    std::vector<std::optional<Interlock>> interlocks;  // of each of the 2^n states that nothing brings about
    std::vector<Call>
        short_of_air;  // more static than the limit, on the least open zone, for their least air
    std::vector<std::vector<int>> intended;  // taps the synthesis means to be live in each of the 2^n states
    std::vector<Relay> relays;
    std::vector<Wire> wires;        // control wires, then line wires
    std::vector<TapRow> taps;       // ascending
    std::vector<Setting> settings;  // in order; also of a refused plan: the part is supplied all the same
    std::vector<TruthRow> truth;    // all 2^n
    bool proven = false;            // the simulator agreed with the intended table on every row
    bool fewest_relays = false;     // no plan of this method needs fewer coils: all smaller sets were tried
    std::vector<FaultRow> faults;
    ControlPower power;
    std::vector<WiringCaution> cautions;
    std::vector<SiteCheck> checks;         // all that the unit owes, in order
    std::vector<WiringPlan> alternatives;  // at most one: the same job wired the other way
};

/// A place in a reader's words: a signal's name, "R" (24 V hot), "C", "L1", "L2", "L3", "N", "contactor T2" (load side),
/// "earth", "K1.A1" and "K1.A2" (coil ends), "K1.COM1", "K1.NO1", "K1.NC1" (pole 1), "tap 4", "motor " and the label printed
/// on the part, a connector and its pin, "capacitor", "capacitor common", "board " and a terminal, "cap and insulate".
std::string text_of(const WiringPlan& plan, const NetPlace& place);

/// What is wired: a motor, or a motor half by the pins of the module that goes with it.
struct WiredPart {
    WiredPart(const Part& part, const Part* module = nullptr) : itself(part), module_beside(module) {}
    const Part& itself;
    const Part* module_beside;
    const Part& pins() const { return module_beside != nullptr ? *module_beside : itself; }
};

/// The plan with its proof, before it is annotated: all that decides whether a part can be wired, and with what.
/// `air` names the wanted tap of each call.
WiringPlan lay_wiring(const FailedUnit& job, const Facts& facts, const WiredPart& part, const AirPlan& air,
                      const Limits& limits);

/// What the wiring comes to for the part: what its refusal does, and `fits` without one.
Verdict verdict_of(const WiringPlan& plan);

/// The transformer that is there does not carry everything within its planned share; false where its rating or load is
/// not known.
bool is_over(const ControlPower& power);

/// States what a transformer of `rating` comes to in the place of one that is too small.
void fit_transformer(ControlPower& power, ApparentPower rating, const Limits& limits);

/// Adds what only somebody who wires by the plan looks at: single faults, the load on the transformer, cautions and
/// checks, also to its alternative. Before that the plan is solved for its volts; one that does not agree with its own
/// table there is refused (electrical_check_disagrees).
void annotate(WiringPlan& plan, const FailedUnit& job, const Facts& facts, const WiredPart& part,
              const Limits& limits);

/// Both.
WiringPlan plan_wiring(const FailedUnit& job, const Facts& facts, const WiredPart& part, const AirPlan& air,
                       const Limits& limits);

/// The plan's netlist, evaluated by relay logic alone: which taps are live when `live` signals are.
/// Shares no code with the synthesis.
std::vector<int> live_taps(const WiringPlan& plan, SignalSet live);

}  // namespace endbell::inline wiring
