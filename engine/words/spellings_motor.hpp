// How the trade spells what a motor is: its load, family, signal, mount, enclosure, bearing, protection.
#pragma once
#include "engine/model/kinds.hpp"
#include "engine/words/spelling_list.hpp"

namespace endbell::inline words {

template <>
inline SpellingList<Load> spellings<Load>() {
    using enum Load;
    return {{"blower", indoor_blower},
            {"blwr", indoor_blower},
            {"fan coil", indoor_blower},
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
            {"split ph", split_phase},
            {"SPH", split_phase},
            {"split-phase", split_phase},
            {"cap start", capacitor_start},
            {"capacitor start induction run", capacitor_start},
            {"CSIR", capacitor_start},
            {"cap start cap run", capacitor_start_and_run},
            {"capacitor start capacitor run", capacitor_start_and_run},
            {"cap start/cap run", capacitor_start_and_run},
            {"CSCR", capacitor_start_and_run},
            {"3 phase", three_phase},
            {"polyphase", three_phase},
            {"3PH", three_phase},
            {"CT", constant_torque},
            {"standard ECM", constant_torque},
            {"5-tap ECM", constant_torque},
            {"constant torque ECM", constant_torque},
            {"const torque", constant_torque},
            {"ECM const torque", constant_torque},
            {"constant CFM", constant_airflow},
            {"variable speed", constant_airflow},
            {"16 pin", constant_airflow},
            {"16-wire", constant_airflow},
            {"constant volume", constant_airflow},
            {"variable speed ECM", constant_airflow},
            {"const airflow", constant_airflow},
            {"const CFM", constant_airflow},
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
         "which: with a run capacitor, shaded pole, split phase, capacitor start or three phase?",
         {"capacitor run", "shaded pole", "split phase", "capacitor start", "three phase"}},
        {"capacitor",
         "which: a run capacitor always in circuit, or a start capacitor that a switch takes out?",
         {"capacitor run", "capacitor start", "capacitor start and run"}},
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
            {"welded lugs", Mount::lugs},
            {"lugs x4", Mount::lugs},
            {"lugs x3", Mount::lugs},
            {"4 lugs", Mount::lugs},
            {"3 lugs", Mount::lugs},
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
            {"resilient base", Mount::ring},
            {"resilient ring", Mount::ring},
            {"cradle", Mount::ring},
            {"rigid base", Mount::base},
            {"rigid", Mount::base},
            {"base mount", Mount::base}};
}

template <>
inline SpellingList<Drive> spellings<Drive>() {
    using enum Drive;
    return {{"direct drive", direct}, {"DD", direct},   {"belt drive", belt},
            {"belt driven", belt},    {"both", either}, {"belt or direct", either}};
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
        {"AO", "air over: an open shell, or a closed one?", {"OPAO", "TEAO"}},
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

}  // namespace endbell::inline words
