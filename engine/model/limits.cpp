#include "engine/model/limits.hpp"

#include <array>
#include <cmath>
#include <optional>

#include "engine/base/check.hpp"

namespace endbell {

namespace {

constexpr auto lower = Stricter::lower;
constexpr auto higher = Stricter::higher;

// A row a line: id, value, unit, which way is stricter, source, meaning. Keep each block in order of use.
const std::vector<Limit>& own_rows() {
    static const std::vector<Limit> rows{
        // supply
        {"voltage.band", 0.10, "of plate volts", lower, "mg1-12.44",
         "running voltage may differ this much from the plate", ""},
        {"voltage.guard", 0.0, "V", lower, "common-practice",
         "how far outside the band a reading still passes", ""},
        {"voltage.caution", 0.05, "of plate volts", lower, "common-practice",
         "a nominal supply further off is said: 230-only on 208", ""},
        {"voltage.live", 92.0, "V", higher, "common-practice",
         "a lower reading is no supply to judge a motor by: 20 % under 115", ""},
        {"voltage.absent", 10.0, "V", lower, "common-practice", "a conductor below this counts as dead", ""},
        {"voltage.range_a_208", 197.0, "V", higher, "c84.1",
         "service edge of range A at 208 V; a reading at the motor below it is said", ""},
        {"voltage.unbalance", 0.01, "of mean", lower, "mg1-14.36",
         "three-phase voltage unbalance without derating", ""},
        {"voltage.frequency", 0.05, "of plate hertz", lower, "mg1-12.44",
         "frequency may differ this much from the plate", ""},
        {"voltage.combined", 0.10, "of plate", lower, "mg1-12.44",
         "voltage and frequency deviations together", ""},
        // size and speed
        {"power.low", 0.98, "of old power", higher, "common-practice",
         "less is a smaller motor; 2 % covers 745.7 against 746 W", ""},
        {"power.step_up", 1.0, "standard steps", lower, "common-practice",
         "how many standard sizes up a capacitor-run motor may go", ""},
        {"speed.match", 0.05, "of old rpm", lower, "common-practice",
         "rated speed may differ this much within one pole count", ""},
        {"shaft.bore_clearance", 0.002, "in", lower, "common-practice",
         "equal diameters are a slip fit within this", ""},
        {"shaft.length_slack", 0.25, "in", lower, "common-practice",
         "a shaft this much longer needs no cutting", ""},
        {"body.band", 0.0625, "in", lower, "common-practice",
         "a band takes a body this much off its own diameter", ""},
        {"bolt_circle.match", 0.0625, "in", lower, "common-practice", "two bolt circles are one within this",
         ""},
        {"ambient.short", 0.0, "C degrees", lower, "common-practice",
         "how far the new ambient rating may lie below the old", ""},
        {"ambient.outdoor", 60.0, "C", higher, "common-practice",
         "usual rating of an outdoor fan motor, where the old plate says none", ""},
        // current
        {"current.over_plate", 1.0, "of fan amps on the equipment plate", lower, "nec-430.6-ex",
         "new full-load amps over the equipment plate's", ""},
        {"current.circuit", 1.25, "of largest motor", higher, "plate-ampacity",
         "minimum circuit ampacity takes the largest motor at this", ""},
        {"current.plate_rounding", 0.05, "A", lower, "common-practice",
         "equipment plates print ampacity to a tenth", ""},
        // capacitor
        {"capacitor.part", 0.06, "of plate microfarad", lower, "capacitor-practice",
         "good: within the part's own tolerance", ""},
        {"capacitor.replace", 0.10, "of plate microfarad", lower, "capacitor-practice",
         "beyond this the capacitor is replaced", ""},
        // electronic motors
        {"winding.balance", 0.10, "of mean", lower, "winding-10",
         "largest deviation of three winding readings", ""},
        {"winding.spread", 1.0, "ohm", lower, "winding-1-ohm", "the three winding readings agree within this",
         ""},
        {"winding.most", 20.0, "ohm", lower, "winding-20-ohm", "each winding reads below this", ""},
        {"winding.ground", 100000.0, "ohm", higher, "winding-ground",
         "winding to shell reads above this; exactly this is not shown", ""},
        {"tap.low", 12.0, "V", higher, "tap-window", "lowest tap voltage that enables", ""},
        {"tap.high", 33.0, "V", lower, "tap-window", "highest tap voltage", ""},
        {"serial.low", 3.0, "V", higher, "serial-window", "lowest idle voltage of a serial command pair", ""},
        {"serial.high", 15.0, "V", lower, "serial-window", "highest idle voltage of a serial command pair",
         ""},
        {"pulse.low", 9.0, "V", higher, "pulse-window", "lowest start voltage of a pulse-commanded motor",
         ""},
        {"pulse.high", 23.0, "V", lower, "pulse-window", "highest start voltage of a pulse-commanded motor",
         ""},
        {"tap.current", 0.020, "A", higher, "tap-current", "what one tap is planned to draw", ""},
        {"tap.volts", 24.0, "V", higher, "common-practice",
         "nominal tap voltage, for the load on a transformer", ""},
        // air
        {"static.repair_first", 0.80, "in. w.c.", lower, "static-0.8",
         "above this the duct is the fault to correct first", ""},
        {"static.plate_default", 0.50, "in. w.c.", lower, "static-plate",
         "where the equipment plate gives no maximum", ""},
        {"filter.drop", 0.30, "in. w.c.", lower, "common-practice", "a filter above this is replaced", ""},
        {"static.agree", 0.05, "in. w.c.", lower, "common-practice",
         "a stated total and the sum of both sides agree within this", ""},
        {"airflow.match", 0.10, "of target cfm", lower, "common-practice",
         "a tap passes within this of its target", ""},
        {"airflow.warn", 0.15, "of target cfm", lower, "acca-5",
         "beyond this a tap is far off its target, though inside the window", ""},
        {"load.full", 1.0, "of rated power", lower, "common-practice",
         "shaft load at the operating point, service factor apart", ""},
        {"load.warn", 0.95, "of rated power", lower, "common-practice", "shaft load above this is said", ""},
        {"cooling.least", 300.0, "cfm per ton", higher, "common-practice", "less freezes the coil", ""},
        {"cooling.low", 350.0, "cfm per ton", higher, "common-practice", "lower edge of the cooling window",
         ""},
        {"cooling.high", 450.0, "cfm per ton", lower, "common-practice", "upper edge of the cooling window",
         ""},
        {"cooling.humid_low", 325.0, "cfm per ton", higher, "cfm-per-ton",
         "lower edge of the cooling window in a humid climate", ""},
        {"cooling.dry_high", 500.0, "cfm per ton", lower, "cfm-per-ton",
         "upper edge of the cooling window in a dry climate", ""},
        {"fan.efficacy", 0.58, "W per cfm", lower, "fan-efficacy",
         "a blower that draws more for its air is said", ""},
        {"rise.margin", 3.0, "F degrees", higher, "common-practice",
         "a rise nearer to the plate's greatest than this is said", ""},
        {"element.rise", 50.0, "F degrees", lower, "common-practice",
         "electric elements, where their plate gives no minimum airflow", ""},
        // control power
        {"transformer.plan", 0.80, "of rated VA", lower, "va-budget", "planned load of a control transformer",
         ""},
        {"relay.coil", 6.0, "VA", higher, "common-practice",
         "what one isolation relay's coil draws, sealed: 4 to 6", ""},
        {"relay.poles", 4.0, "poles", lower, "common-practice",
         "change-over contacts of one plug-in relay; more take a second", ""},
        {"wire.control", 6.385, "ohm per 1000 ft", higher, "wire-18", "18 AWG copper, one conductor", ""},
        {"class2.power", 100.0, "VA", lower, "nec-725", "largest class 2 source", ""},
        {"class2.volts", 30.0, "V", lower, "nec-725", "largest class 2 voltage", ""},
        // recurrence
        {"recurrence.cured", 0.05, "a year", higher, "common-practice",
         "chance of losing the new part, its killer cured", ""},
        {"recurrence.uncured", 0.12, "a year", higher, "common-practice",
         "chance of losing the new part, its killer left", ""},
        // money
        {"price.age", 30.0, "days", lower, "common-practice",
         "an older price is stale: the total becomes a question", ""},
    };
    return rows;
}

}  // namespace

std::string_view word(Basis basis) {
    switch (basis) {
        case Basis::read:
            return "read in a third-party copy";
        case Basis::calculated:
            return "calculated";
        case Basis::from_memory:
            return "from memory";
        case Basis::common_practice:
            return "common practice";
    }
    return "?";
}

// `read` means: seen in an excerpt of a public third-party copy of the document, never the
// paper code books: check the adopted edition before relying on a value.
const std::vector<Source>& sources() {
    static const std::vector<Source> list{
        {"common-practice", "no published source: what careful shops do", Basis::common_practice},
        {"physics", "definition or conservation law", Basis::calculated},
        {"fan-laws", "fan affinity laws: flow with n, pressure with n^2, shaft power with n^3", Basis::read},
        {"slip-line", "linear-slip motor against a cube-law fan: a teaching model", Basis::calculated},
        {"mg1-2.24", "NEMA MG 1 2.24: direction of rotation, facing the end opposite the drive",
         Basis::from_memory},
        {"iec-60034-8", "IEC 60034-8: direction of rotation, facing the drive end", Basis::read},
        {"rotation-words", "two trade explanations of nameplate rotation letters", Basis::read},
        {"mg1-10.32", "NEMA MG 1 10.32: standard ratings and full-load speeds of small motors",
         Basis::from_memory},
        {"mg1-12.44", "NEMA MG 1 12.44.1: voltage within 10 %, frequency within 5 %", Basis::read},
        {"mg1-14.36", "NEMA MG 1 14.36: derating above 1 % voltage unbalance", Basis::read},
        {"c84.1", "ANSI C84.1 range A, 208Y/120 service", Basis::from_memory},
        {"nec-430.6", "NEC 430.6(A)(1): fan motors below 1200 rpm or multi-speed use plate amps",
         Basis::read},
        {"nec-430.6-ex",
         "NEC 430.6(A)(1), exception for a shaded-pole or capacitor-run fan motor: the equipment plate's "
         "amps",
         Basis::from_memory},
        {"nec-430.32", "NEC 430.32(B): automatically started motors of 1 hp or less are protected",
         Basis::from_memory},
        {"nec-430.248", "NEC Table 430.248: single-phase full-load currents", Basis::read},
        {"nec-430.250", "NEC Table 430.250: three-phase full-load currents", Basis::read},
        {"plate-ampacity",
         "two equipment manuals: minimum circuit ampacity is 1.25 of the largest motor plus the rest",
         Basis::read},
        {"nec-725", "NEC Article 725: class 2 sources, 30 V and 100 VA", Basis::read},
        {"capacitor-practice",
         "trade articles on run-capacitor testing: 6 % on the part, 10 % as working rule", Basis::read},
        {"capacitor-formula", "C = I / (2 pi f V), volts across the capacitor", Basis::calculated},
        {"winding-10", "a variable-speed service guide: winding readings within 10 %", Basis::read},
        {"winding-1-ohm", "a gas-furnace service manual: winding readings within an ohm", Basis::read},
        {"winding-20-ohm", "gas-furnace service manuals: each winding below 20 ohm", Basis::read},
        {"winding-ground", "gas-furnace service manuals: winding to shell above 100 kilohm", Basis::read},
        {"tap-window", "two equipment manuals: 12 to 33 V ac between tap and C", Basis::read},
        {"serial-window",
         "a variable-speed air-handler service manual: 3 to 15 V dc across an idle command pair",
         Basis::read},
        {"pulse-window", "an ECM training book: 9 to 23 V dc starts a pulse-commanded motor", Basis::read},
        {"held-rotor",
         "a trade thread: ohms of a permanent-magnet motor swing, even below zero, while it turns",
         Basis::read},
        {"thermal-limit", "a furnace service manual: an open winding is tested again cold", Basis::read},
        {"free-shaft", "gas-furnace service manuals: the shaft spins freely, without play or scraping",
         Basis::read},
        {"line-always", "an ECM training book: line voltage is present at the motor with and without a call",
         Basis::read},
        {"ecm-sequence",
         "a manual, a training book, a service guide: line and signal good and no run is the motor; with a "
         "separable module, good windings and a free shaft it is the module",
         Basis::read},
        {"rocking", "air-handler service pages: slight rocking before the start is normal", Basis::read},
        {"off-delay", "an air-handler manual: taps run on up to 45 s after the call", Basis::read},
        {"dead-capacitor", "a trade thread: without its capacitor a motor may start either way", Basis::read},
        {"tap-current", "an equipment manual: under 20 mA a tap", Basis::read},
        {"tap-rule", "only the part's own sheet says what two live taps do", Basis::common_practice},
        {"two-piece", "equipment manuals: only the constant-airflow kind has a separable module",
         Basis::read},
        {"program",
         "equipment manuals: a module of another program behaves differently and ends the warranty",
         Basis::read},
        {"static-0.8", "an ECM training book: above 0.8 in. w.c. the duct is corrected first", Basis::read},
        {"static-plate", "trade article on nameplate static ratings: 0.50 in. w.c. is the usual maximum",
         Basis::read},
        {"cfm-per-ton",
         "trade articles on airflow per ton: 400, 350 and down to 325 in humid, 450 to 500 in dry places",
         Basis::read},
        {"fan-efficacy", "a contractor's page on a state energy code: 0.58 W per cfm where no gas furnace is",
         Basis::read},
        {"acca-5", "ANSI/ACCA 5 QI: airflow within 15 % of design", Basis::from_memory},
        {"wire-18", "resistance of 18 AWG copper at 20 C from its cross section", Basis::calculated},
        {"va-budget", "a control-power budget page: plan at or below 80 % of rated VA", Basis::read},
        {"inducer", "a draft inducer is part of a certified combustion system: the specified assembly only",
         Basis::common_practice},
        {"retrofit-wiring",
         "a universal retrofit's wiring guide: line run signal from the board, 24 V speed leads",
         Basis::read},
        {"nist-135", "NIST Handbook 135: discounting conventions", Basis::from_memory},
        {"10-cfr-436.14", "10 CFR 436.14(a)(2): real discount rate, never below 3 %", Basis::read},
        {"life-table", "an equipment service-life table, reproduced by an engineering reference site",
         Basis::read},
        {"life-capacitor", "consumer cost guides: a run capacitor lasts 5 to 10 years", Basis::read},
        {"appendix-aa", "10 CFR 430 Subpart B Appendix AA: fan energy rating and operating hours",
         Basis::from_memory},
    };
    return list;
}

const Source& source(std::string_view id) {
    for (const Source& s : sources()) {
        if (s.id == id) return s;
    }
    throw OurBug("no such source: " + std::string(id));
}

Limits::Limits() : rows_(own_rows()) {}

namespace {

/// Where each row stands: every Limits has the program's own rows, in their order. Rules ask for rows by the
/// million, so a row is found by a few of its letters.
class Places {
  public:
    Places() : own_(own_rows()) {
        for (std::size_t i = 0; i < own_.size(); ++i) drawers_[drawer(own_[i].id)].push_back(i);
    }
    std::optional<std::size_t> of(std::string_view id) const {
        for (const std::size_t place : drawers_[drawer(id)]) {
            if (own_[place].id == id) return place;
        }
        return std::nullopt;
    }

  private:
    static std::size_t drawer(std::string_view id) {
        if (id.empty()) return 0;
        const auto letter = [&](std::size_t at) {
            return static_cast<std::size_t>(static_cast<unsigned char>(id[at]));
        };
        return (id.size() * 7 + letter(0) + 3 * letter(id.size() / 2) + 5 * letter(id.size() - 1)) % 256;
    }
    std::vector<Limit> own_;
    std::array<std::vector<std::size_t>, 256> drawers_;
};

const Places& places() {
    static const Places all;
    return all;
}

}  // namespace

bool Limits::has(std::string_view id) const {
    return places().of(id).has_value();
}

const Limit& Limits::row(std::string_view id) const {
    const std::optional<std::size_t> place = places().of(id);
    if (!place) throw OurBug("no such limit: " + std::string(id));
    return rows_[*place];
}

Limits::Tightening Limits::tighten(std::string_view id, double value, std::string set_by) {
    const std::optional<std::size_t> place = places().of(id);
    if (!place) return Tightening::unknown_row;
    Limit& row = rows_[*place];
    const bool tighter = row.stricter == Stricter::lower ? value <= row.value : value >= row.value;
    if (!tighter || !std::isfinite(value)) return Tightening::looser;
    row.value = value;
    row.set_by = std::move(set_by);
    return Tightening::accepted;
}

}  // namespace endbell
