// The trade's spellings of the enumerations. Every value's own word (engine/model/kinds.hpp) reads back too.
#pragma once
#include <string_view>
#include <vector>

#include "engine/model/kinds.hpp"
#include "engine/words/read.hpp"

namespace endbell::inline words {

/// One word of an enumeration. "ECM" for a family, "ID fan" for a load and their like are questions.
template <class E>
Read<E> read_kind(const Folded& words);

/// Several, separated by ';' or ','. One open or unreadable word decides for the whole list.
template <class E>
Read<std::vector<E>> read_kinds(const Folded& words);

extern template Read<Load> read_kind<Load>(const Folded&);
extern template Read<Family> read_kind<Family>(const Folded&);
extern template Read<SignalClass> read_kind<SignalClass>(const Folded&);
extern template Read<TapRule> read_kind<TapRule>(const Folded&);
extern template Read<Mount> read_kind<Mount>(const Folded&);
extern template Read<Drive> read_kind<Drive>(const Folded&);
extern template Read<Enclosure> read_kind<Enclosure>(const Folded&);
extern template Read<Bearing> read_kind<Bearing>(const Folded&);
extern template Read<ShaftPosition> read_kind<ShaftPosition>(const Folded&);
extern template Read<Protection> read_kind<Protection>(const Folded&);
extern template Read<VoltageSelection> read_kind<VoltageSelection>(const Folded&);
extern template Read<PartKind> read_kind<PartKind>(const Folded&);
extern template Read<PartStatus> read_kind<PartStatus>(const Folded&);
extern template Read<Relation> read_kind<Relation>(const Folded&);
extern template Read<Cure> read_kind<Cure>(const Folded&);
extern template Read<ControlSource> read_kind<ControlSource>(const Folded&);
extern template Read<HeatKind> read_kind<HeatKind>(const Folded&);
extern template Read<RiseHeat> read_kind<RiseHeat>(const Folded&);
extern template Read<ReversingValve> read_kind<ReversingValve>(const Folded&);
extern template Read<DehumidifyLogic> read_kind<DehumidifyLogic>(const Folded&);
extern template Read<SpeedLead> read_kind<SpeedLead>(const Folded&);
extern template Read<FanCommand> read_kind<FanCommand>(const Folded&);
extern template Read<Call> read_kind<Call>(const Folded&);
extern template Read<Symptom> read_kind<Symptom>(const Folded&);
extern template Read<ControlVoltsKind> read_kind<ControlVoltsKind>(const Folded&);
extern template Read<BeltState> read_kind<BeltState>(const Folded&);
extern template Read<Cleanness> read_kind<Cleanness>(const Folded&);
extern template Read<Sign> read_kind<Sign>(const Folded&);
extern template Read<ChangedPart> read_kind<ChangedPart>(const Folded&);

extern template Read<std::vector<Load>> read_kinds<Load>(const Folded&);
extern template Read<std::vector<Family>> read_kinds<Family>(const Folded&);
extern template Read<std::vector<ShaftPosition>> read_kinds<ShaftPosition>(const Folded&);
extern template Read<std::vector<Symptom>> read_kinds<Symptom>(const Folded&);
extern template Read<std::vector<Sign>> read_kinds<Sign>(const Folded&);
extern template Read<std::vector<ChangedPart>> read_kinds<ChangedPart>(const Folded&);

}  // namespace endbell::inline words
