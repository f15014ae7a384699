#include "engine/model/limits.hpp"

#include <algorithm>
#include <cmath>

#include "engine/base/ensure.hpp"
#include "engine/model/limit_rows.hpp"

namespace endbell::inline model {

// `read` means: seen in an excerpt of a public third-party copy of the document, never the
// paper code books: check the adopted edition before relying on a value.
const std::vector<Source>& sources() {
    static const std::vector<Source> list{
        {"osha-lockout", "29 CFR 1910.147 and 1910.333: energy locked out, stored charge let out",
         Basis::read},
        {"nfpa-70e",
         "NFPA 70E 120: absence of voltage, the tester tried before and after; protection by risk",
         Basis::from_memory},
        {"ecm-wait", "electronic motor manuals: five minutes after power is off", Basis::read},
        {"ecm-plug", "equipment manuals: the power plug is never mated or parted live", Basis::read},
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
        {"return-face", "a filter-sizing page: at most 2 cfm for each square inch of filter", Basis::read},
        {"fuel-gas-altitude",
         "the fuel-gas code: 4 % less input for each 1,000 ft above the sea, above 2,000 ft, where plate and "
         "instructions are silent",
         Basis::from_memory},
        {"motor-altitude",
         "a motor catalogue: 97, 94.5, 92 and 89 % of the rating at 1,500, 2,000, 2,500 and 3,000 m",
         Basis::read},
        {"acca-5", "ANSI/ACCA 5 QI: airflow within 15 % of design", Basis::from_memory},
        {"wire-18", "resistance of 18 AWG copper at 20 C from its cross section", Basis::calculated},
        {"control-loads", "a parts dealer's course on 24 V loads: a relay coil 0.05 to 0.1 A", Basis::read},
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

Limits::Limits() {
    rows_.reserve(limit_rows.size());
    for (const LimitRow& row : limit_rows) rows_.push_back({row, ""});
}

const Limit* Limits::find(std::string_view id) const {
    const auto found =
        std::find_if(rows_.begin(), rows_.end(), [&](const Limit& row) { return row.id == id; });
    return found == rows_.end() ? nullptr : &*found;
}

Limits::Tightening Limits::tighten(std::string_view id, double value, std::string set_by) {
    const Limit* found = find(id);
    if (found == nullptr) return Tightening::unknown_row;
    Limit& row = rows_[static_cast<std::size_t>(found - rows_.data())];
    const bool tighter = row.stricter == Stricter::lower ? value <= row.value : value >= row.value;
    if (!tighter || !std::isfinite(value)) return Tightening::looser;
    row.value = value;
    row.set_by = std::move(set_by);
    return Tightening::accepted;
}

}  // namespace endbell::inline model
