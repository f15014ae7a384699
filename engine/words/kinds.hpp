// The trade's spellings of the enumerations. Every value's own word (engine/model/kinds.hpp) reads back too.
#pragma once
#include <string_view>
#include <vector>

#include "engine/model/kinds.hpp"
#include "engine/words/read.hpp"

namespace endbell::inline words {

/// One word of an enumeration. "ECM" for a family, "ID fan" for a load and their like are questions.
template <class E>
Read<E> read_kind(std::string_view raw);

/// Several, separated by ';' or ','. One open or unreadable word decides for the whole list.
template <class E>
Read<std::vector<E>> read_kinds(std::string_view raw);

extern template Read<Load> read_kind<Load>(std::string_view);
extern template Read<Family> read_kind<Family>(std::string_view);
extern template Read<SignalClass> read_kind<SignalClass>(std::string_view);
extern template Read<TapRule> read_kind<TapRule>(std::string_view);
extern template Read<Mount> read_kind<Mount>(std::string_view);
extern template Read<Enclosure> read_kind<Enclosure>(std::string_view);
extern template Read<Bearing> read_kind<Bearing>(std::string_view);
extern template Read<ShaftPosition> read_kind<ShaftPosition>(std::string_view);
extern template Read<Protection> read_kind<Protection>(std::string_view);
extern template Read<VoltageSelection> read_kind<VoltageSelection>(std::string_view);
extern template Read<PartKind> read_kind<PartKind>(std::string_view);
extern template Read<PartStatus> read_kind<PartStatus>(std::string_view);
extern template Read<Relation> read_kind<Relation>(std::string_view);
extern template Read<Cure> read_kind<Cure>(std::string_view);
extern template Read<ControlSource> read_kind<ControlSource>(std::string_view);
extern template Read<HeatKind> read_kind<HeatKind>(std::string_view);
extern template Read<ReversingValve> read_kind<ReversingValve>(std::string_view);
extern template Read<DehumidifyLogic> read_kind<DehumidifyLogic>(std::string_view);
extern template Read<Call> read_kind<Call>(std::string_view);
extern template Read<Symptom> read_kind<Symptom>(std::string_view);

extern template Read<std::vector<Load>> read_kinds<Load>(std::string_view);
extern template Read<std::vector<Family>> read_kinds<Family>(std::string_view);
extern template Read<std::vector<ShaftPosition>> read_kinds<ShaftPosition>(std::string_view);
extern template Read<std::vector<Symptom>> read_kinds<Symptom>(std::string_view);

}  // namespace endbell::inline words
