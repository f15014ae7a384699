// How shops and price lists spell what a part is to them: its kind, its status, what replaces it, what it
// cures.
#pragma once
#include "engine/model/kinds.hpp"
#include "engine/words/spelling_list.hpp"

namespace endbell::inline words {

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
    return {{"bushing", shaft_bushing},     {"belly band", mount_band},   {"band", mount_band},
            {"adapter", mount_adapter},     {"capacitor", run_capacitor}, {"relay", isolation_relay},
            {"start cap", start_capacitor}, {"plug adapter", harness},    {"slinger", rain_shield},
            {"rain slinger", rain_shield}};
}

}  // namespace endbell::inline words
