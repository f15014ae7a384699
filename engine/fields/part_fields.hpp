// What a rule may look at of a part, field by field, as bytes: parts that agree in the fields of a rule get the
// same verdict from it, so the rule need be asked only once for all of them. A field holds as little as decides:
// of a capacitor only that it is stated, of taps only the strongest torque.
#pragma once
#include <string>
#include <string_view>
#include <vector>

#include "engine/fields/index_field.hpp"
#include "engine/model/part.hpp"

namespace endbell::inline fields {

/// All of them. The first is the kind, which every rule looks at.
const std::vector<PartField>& part_fields();

/// Index into part_fields(). Throws OurBug when there is none: rules name only fields that exist (tested).
int part_field(std::string_view column);

/// A part with only these fields, kind first. `fields` are indices into part_fields().
Part with_only(const std::vector<int>& fields, const Part& part);

}  // namespace endbell::inline fields
