// Spellings beside each value's own word, and the words that are questions. Data only; kinds.cpp looks them
// up. Letter case, blanks, dots, dashes and slashes do not tell spellings apart.
#pragma once
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "engine/model/kinds.hpp"

namespace endbell {

struct OpenSpelling {
    std::string_view text;
    std::string question;
    std::vector<std::string> readings;
};

template <class E>
using SpellingList = std::vector<std::pair<std::string_view, E>>;

template <class E>
inline SpellingList<E> spellings() {
    return {};
}
template <class E>
inline const std::vector<OpenSpelling>& open_spellings() {
    static const std::vector<OpenSpelling> none;
    return none;
}

template <>
inline SpellingList<Load> spellings<Load>() {
    using enum Load;
    return {{"blower", indoor_blower},
            {"IFM", indoor_blower},
            {"indoor", indoor_blower},
            {"indoor fan", indoor_blower},
            {"supply fan", indoor_blower},
            {"squirrel cage", indoor_blower},
            {"furnace blower", indoor_blower},
            {"blower motor", indoor_blower},
            {"indoor blower motor", indoor_blower},
            {"air handler", indoor_blower},
            {"OFM", outdoor_fan},
            {"OD fan", outdoor_fan},
            {"outdoor", outdoor_fan},
            {"condenser fan", outdoor_fan},
            {"cond fan", outdoor_fan},
            {"condenser", outdoor_fan},
            {"condenser fan motor", outdoor_fan},

            {"outdoor fan motor", outdoor_fan},
            {"inducer", draft_inducer},
            {"IDM", draft_inducer},
            {"draft motor", draft_inducer},
            {"ventor", draft_inducer},
            {"combustion blower", draft_inducer},
            {"purge fan", draft_inducer},
            {"draft", draft_inducer},
            {"inducer motor", draft_inducer},
            {"induced draft", draft_inducer}};
}
template <>
inline const std::vector<OpenSpelling>& open_spellings<Load>() {
    static const std::vector<OpenSpelling> list{
        {"ID fan", "ID: indoor, or induced draft?", {"indoor blower", "draft inducer"}},
        {"ID fan motor", "ID: indoor, or induced draft?", {"indoor blower", "draft inducer"}},
        {"ID", "ID: indoor, or induced draft?", {"indoor blower", "draft inducer"}},
        {"ID motor", "ID: indoor, or induced draft?", {"indoor blower", "draft inducer"}},
        {"fan",
         "which fan: indoors, outdoors, or the draft inducer?",
         {"indoor blower", "outdoor fan", "draft inducer"}}};
    return list;
}

template <>
inline SpellingList<Family> spellings<Family>() {
    using enum Family;
    return {{"PSC", capacitor_run},
            {"perm split", capacitor_run},
            {"cap run", capacitor_run},
            {"permanent split", capacitor_run},
            {"permanent split capacitor", capacitor_run},
            {"SP", shaded_pole},
            {"shaded", shaded_pole},
            {"shaded-pole", shaded_pole},
            {"3 phase", three_phase},
            {"polyphase", three_phase},
            {"3PH", three_phase},
            {"CT", constant_torque},
            {"standard ECM", constant_torque},
            {"5-tap ECM", constant_torque},
            {"constant torque ECM", constant_torque},
            {"constant CFM", constant_airflow},
            {"variable speed", constant_airflow},
            {"16 pin", constant_airflow},
            {"16-wire", constant_airflow},
            {"constant volume", constant_airflow},
            {"variable speed ECM", constant_airflow},
            {"comm", communicating},
            {"serial", communicating},
            {"communicating ECM", communicating}};
}
template <>
inline const std::vector<OpenSpelling>& open_spellings<Family>() {
    static const std::string which = "which electronic kind? Count the pins of its plug and the wires on it";
    static const std::vector<std::string> kinds{"constant torque", "constant airflow", "communicating"};
    static const std::vector<OpenSpelling> list{
        {"ECM", which, kinds},
        {"EC", which, kinds},
        {"DC motor", which, kinds},
        {"brushless", which, kinds},
        {"hi-eff", which, kinds},
        {"high efficiency", which, kinds},
        {"electronic", which, kinds},
        {"BLDC", which, kinds},
        {"EC motor", which, kinds},
        {"ECM motor", which, kinds},
        {"DC", which, kinds},
        {"induction",
         "which: with a capacitor, shaded pole or three phase?",
         {"capacitor run", "shaded pole", "three phase"}},
        {"4 wire",
         "four thin wires of a communicating motor, or the leads of a condenser motor?",
         {"communicating", "capacitor run"}}};
    return list;
}

template <>
inline SpellingList<SignalClass> spellings<SignalClass>() {
    using enum SignalClass;
    return {{"24", control_24v},
            {"24V", control_24v},
            {"24VAC", control_24v},
            {"low volt", control_24v},
            {"low voltage", control_24v},
            {"control", control_24v},
            {"24 V ac", control_24v},
            {"line taps", line_signal},
            {"line voltage signal", line_signal},
            {"speed leads", switched_line},
            {"line leads", switched_line},
            {"PWM", pulse},
            {"communicating", serial},
            {"comm", serial}};
}
template <>
inline const std::vector<OpenSpelling>& open_spellings<SignalClass>() {
    static const std::vector<OpenSpelling> list{
        {"line",
         "do the speed leads carry the motor's own current, or is there constant power beside them?",
         {"switched line", "line signal"}},
        {"line voltage",
         "do the speed leads carry the motor's own current, or is there constant power beside them?",
         {"switched line", "line signal"}},
        {"115",
         "do the speed leads carry the motor's own current, or is there constant power beside them?",
         {"switched line", "line signal"}},
        {"230",
         "do the speed leads carry the motor's own current, or is there constant power beside them?",
         {"switched line", "line signal"}}};
    return list;
}

template <>
inline SpellingList<TapRule> spellings<TapRule>() {
    using enum TapRule;
    return {{"one", one_tap_only},
            {"single tap", one_tap_only},
            {"one tap at a time", one_tap_only},
            {"highest", highest_tap_wins},
            {"high tap wins", highest_tap_wins},
            {"highest wins", highest_tap_wins}};
}

template <>
inline SpellingList<Mount> spellings<Mount>() {
    return {{"belly band", Mount::band},
            {"band mount", Mount::band},
            {"BB", Mount::band},
            {"bellyband", Mount::band},
            {"lug", Mount::lugs},
            {"ears", Mount::lugs},
            {"legs", Mount::lugs},
            {"3 arm", Mount::lugs},
            {"welded wings", Mount::lugs},
            {"torsion mount", Mount::lugs},
            {"flex mount", Mount::lugs},
            {"torsion flex", Mount::lugs},
            {"stud", Mount::studs},
            {"through bolts", Mount::studs},
            {"through bolt", Mount::studs},
            {"thru-bolt", Mount::studs},
            {"thru bolts", Mount::studs},
            {"ext. studs", Mount::studs},
            {"extended studs", Mount::studs},
            {"stud mount", Mount::studs},
            {"4 bolt", Mount::studs},
            {"face mount", Mount::face},
            {"rubber rings", Mount::ring},
            {"rubber ring", Mount::ring},
            {"rings", Mount::ring},
            {"resilient", Mount::ring},
            {"resilient ring", Mount::ring},
            {"cradle", Mount::ring},
            {"rigid base", Mount::base},
            {"rigid", Mount::base},
            {"base mount", Mount::base}};
}

template <>
inline SpellingList<Enclosure> spellings<Enclosure>() {
    using enum Enclosure;
    return {{"OAO", open_air_over},
            {"open air over", open_air_over},
            {"DP", open_drip_proof},
            {"drip proof", open_drip_proof},
            {"open drip proof", open_drip_proof},
            {"totally enclosed air over", enclosed_air_over},
            {"enclosed air over", enclosed_air_over},
            {"totally enclosed non-ventilated", enclosed_non_ventilated},
            {"totally enclosed fan cooled", enclosed_fan_cooled},
            {"enclosed fan cooled", enclosed_fan_cooled}};
}
template <>
inline const std::vector<OpenSpelling>& open_spellings<Enclosure>() {
    static const std::vector<OpenSpelling> list{
        {"open", "open: drip-proof with its own fan, or cooled by the air it moves?", {"ODP", "OPAO"}},
        {"closed",
         "closed: in the air stream, without a fan, or with its own fan?",
         {"TEAO", "TENV", "TEFC"}},
        {"enclosed",
         "closed: in the air stream, without a fan, or with its own fan?",
         {"TEAO", "TENV", "TEFC"}},
        {"totally enclosed",
         "closed: in the air stream, without a fan, or with its own fan?",
         {"TEAO", "TENV", "TEFC"}},
        {"TE", "closed: in the air stream, without a fan, or with its own fan?", {"TEAO", "TENV", "TEFC"}}};
    return list;
}

template <>
inline SpellingList<Bearing> spellings<Bearing>() {
    return {{"SLV", Bearing::sleeve},         {"BRG ball", Bearing::ball},
            {"ball brg", Bearing::ball},      {"ball bearing", Bearing::ball},
            {"ball bearings", Bearing::ball}, {"sleeve bearing", Bearing::sleeve},
            {"sleeve brg", Bearing::sleeve},  {"BB", Bearing::ball},
            {"SB", Bearing::sleeve}};
}

template <>
inline SpellingList<ShaftPosition> spellings<ShaftPosition>() {
    using enum ShaftPosition;
    return {{"SU", up},
            {"up", up},
            {"shaft-up", up},
            {"SD", down},
            {"down", down},
            {"vertical up", up},
            {"vertical down", down},
            {"horiz", horizontal},
            {"HOR", horizontal},
            {"shaft horizontal", horizontal},
            {"all", all},
            {"all pos", all},
            {"any", all},
            {"all position", all},
            {"any position", all},
            {"all angle", all}};
}
template <>
inline const std::vector<OpenSpelling>& open_spellings<ShaftPosition>() {
    static const std::vector<OpenSpelling> list{
        {"vertical", "which way does the shaft point?", {"shaft up", "shaft down"}},
        {"vert", "which way does the shaft point?", {"shaft up", "shaft down"}}};
    return list;
}

template <>
inline SpellingList<Protection> spellings<Protection>() {
    return {{"auto", Protection::automatic},
            {"automatic", Protection::automatic},
            {"thermal auto", Protection::automatic},
            {"auto overload", Protection::automatic},
            {"therm prot auto", Protection::automatic},
            {"thermally protected automatic", Protection::automatic},
            {"TP auto", Protection::automatic},
            {"auto reset", Protection::automatic},
            {"manual", Protection::manual},
            {"man", Protection::manual},
            {"manual reset", Protection::manual},
            {"manual overload", Protection::manual},
            {"imp", Protection::impedance},
            {"ZP", Protection::impedance},
            {"impedance protected", Protection::impedance},
            {"no overload", Protection::none},
            {"unprotected", Protection::none},
            {"not protected", Protection::none}};
}
template <>
inline const std::vector<OpenSpelling>& open_spellings<Protection>() {
    static const std::vector<OpenSpelling> list{
        {"thermal",
         "does the protector reset by itself, or by hand?",
         {"thermal automatic", "thermal manual"}},
        {"thermally protected",
         "does the protector reset by itself, or by hand?",
         {"thermal automatic", "thermal manual"}},
        {"TP", "does the protector reset by itself, or by hand?", {"thermal automatic", "thermal manual"}}};
    return list;
}

template <>
inline SpellingList<VoltageSelection> spellings<VoltageSelection>() {
    using enum VoltageSelection;
    return {{"jumpers", jumper},
            {"voltage plug", plug},
            {"lead", leads},
            {"reconnect leads", leads},
            {"fixed", none}};
}

template <>
inline SpellingList<PartKind> spellings<PartKind>() {
    using enum PartKind;
    return {{"brain", module},           {"control", module},     {"end bell", module},
            {"endbell", module},         {"power head", module},  {"control module", module},
            {"the electronics", module}, {"electronics", module}, {"module half", module},
            {"motors", motor},           {"modules", module},     {"accessories", accessory},
            {"acc", accessory}};
}

template <>
inline SpellingList<PartStatus> spellings<PartStatus>() {
    using enum PartStatus;
    return {{"current", active},
            {"NLA", discontinued},
            {"disc", discontinued},
            {"obsolete", discontinued},
            {"no longer available", discontinued},
            {"repl", superseded},
            {"replaced", superseded}};
}

template <>
inline SpellingList<Relation> spellings<Relation>() {
    using enum Relation;
    return {{"repl", replaces},     {"replace", replaces},       {"supersede", supersedes},
            {"supers", supersedes}, {"supsd by", superseded_by}, {"replaced by", superseded_by},
            {"use", superseded_by}, {"same as", equivalent},     {"equal", equivalent},
            {"equiv", equivalent},  {"xref", equivalent}};
}
template <>
inline const std::vector<OpenSpelling>& open_spellings<Relation>() {
    static const std::vector<OpenSpelling> list{
        {"sub", "a substitute for the old number, or substituted by another?", {"replaces", "superseded by"}},
        {"superseded", "which of the two is the newer?", {"supersedes", "superseded by"}}};
    return list;
}

template <>
inline SpellingList<Cure> spellings<Cure>() {
    using enum Cure;
    return {{"bushing", shaft_bushing}, {"belly band", mount_band},   {"band", mount_band},
            {"adapter", mount_adapter}, {"capacitor", run_capacitor}, {"relay", isolation_relay},
            {"plug adapter", harness},  {"slinger", rain_shield},     {"rain slinger", rain_shield}};
}

template <>
inline SpellingList<ControlSource> spellings<ControlSource>() {
    using enum ControlSource;
    return {{"stat", thermostat},
            {"t-stat", thermostat},
            {"board 24V", board_24v},
            {"24V board", board_24v},
            {"24 V control board", board_24v},
            {"line board", board_line},
            {"board line", board_line},
            {"line voltage board", board_line},
            {"115 V board", board_line},
            {"230 V board", board_line},
            {"serial", pulse_or_serial},
            {"pulse", pulse_or_serial},
            {"PWM", pulse_or_serial},
            {"communicating", pulse_or_serial}};
}
template <>
inline const std::vector<OpenSpelling>& open_spellings<ControlSource>() {
    static const std::vector<OpenSpelling> list{
        {"board",
         "are the board's blower outputs line voltage or 24 V? Measure to common",
         {"24 V board", "line-voltage board"}},
        {"furnace board",
         "are the board's blower outputs line voltage or 24 V? Measure to common",
         {"24 V board", "line-voltage board"}},
        {"IFC",
         "are the board's blower outputs line voltage or 24 V? Measure to common",
         {"24 V board", "line-voltage board"}}};
    return list;
}

template <>
inline SpellingList<HeatKind> spellings<HeatKind>() {
    using enum HeatKind;
    return {{"gas", gas},
            {"furnace gas", gas},
            {"natural gas", gas},
            {"propane", gas},
            {"oil", oil},
            {"electric", electric},
            {"strip", electric},
            {"strip heat", electric},
            {"electric strip", electric},
            {"HP", heat_pump},
            {"heatpump", heat_pump},
            {"hybrid", dual_fuel},
            {"no heat", none},
            {"cooling only", none}};
}
template <>
inline const std::vector<OpenSpelling>& open_spellings<HeatKind>() {
    static const std::vector<OpenSpelling> list{
        {"furnace", "a furnace of which fuel?", {"gas furnace", "oil furnace", "electric heat"}}};
    return list;
}

template <>
inline SpellingList<ReversingValve> spellings<ReversingValve>() {
    using enum ReversingValve;
    return {{"in cooling", in_cooling},
            {"cooling", in_cooling},
            {"in heating", in_heating},
            {"heating", in_heating}};
}
template <>
inline const std::vector<OpenSpelling>& open_spellings<ReversingValve>() {
    static const std::vector<OpenSpelling> list{
        {"O/B", "set to which: live in cooling (O), or live in heating (B)?", {"O", "B"}}};
    return list;
}

template <>
inline SpellingList<DehumidifyLogic> spellings<DehumidifyLogic>() {
    using enum DehumidifyLogic;
    return {{"none", not_used},
            {"no", not_used},
            {"unused", not_used},
            {"live normal", live_is_normal},
            {"live dehumidify", live_is_dehumidify}};
}
template <>
inline const std::vector<OpenSpelling>& open_spellings<DehumidifyLogic>() {
    static const std::string which =
        "is the dehumidify terminal live normally, or live when it wants less air? Both are sold";
    static const std::vector<std::string> both{"live is normal", "live is dehumidify"};
    static const std::vector<OpenSpelling> list{
        {"DH", which, both}, {"DEHUM", which, both}, {"BK", which, both}, {"yes", which, both}};
    return list;
}

template <>
inline SpellingList<Call> spellings<Call>() {
    using enum Call;
    return {{"circ", circulate},           {"fan", circulate},
            {"continuous fan", circulate}, {"fan only", circulate},
            {"constant fan", circulate},   {"cool high", cool_high},
            {"cooling", cool_high},        {"high cool", cool_high},
            {"cool 2", cool_high},         {"low cool", cool_low},
            {"cool 1", cool_low},          {"heat high", heat_high},
            {"heating", heat_high},        {"high heat", heat_high},
            {"hi heat", heat_high},        {"heat 2", heat_high},
            {"low heat", heat_low},        {"lo heat", heat_low},
            {"heat 1", heat_low},          {"strip heat", electric_heat},
            {"aux heat", electric_heat},   {"electric", electric_heat},
            {"dehum", dehumidify},         {"DH", dehumidify}};
}

template <>
inline SpellingList<Symptom> spellings<Symptom>() {
    using enum Symptom;
    return {{"dead", no_run},
            {"does not run", no_run},
            {"won't run", no_run},
            {"not running", no_run},
            {"no start", no_run},
            {"humming", hums},
            {"hum", hums},
            {"rocks then runs", rocks_then_starts},
            {"rocks", rocks_never_starts},
            {"slow", runs_slow},
            {"runs on", runs_on_after_call},
            {"won't stop", runs_on_after_call},
            {"trips", trips_hot},
            {"overheats", trips_hot},
            {"trips on overload", trips_hot},
            {"noise", noisy},
            {"squeals", noisy},
            {"backwards", runs_backwards},
            {"wrong way", runs_backwards},
            {"low air", weak_air},
            {"low airflow", weak_air},
            {"weak airflow", weak_air}};
}

}  // namespace endbell
