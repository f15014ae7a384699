// What a rule may look at of a part, field by field, as bytes: parts that agree in the fields of a rule get the
// same verdict from it, so the rule need be asked only once for all of them. A field holds as little as decides:
// of a capacitor only that it is stated, of taps only the strongest torque.
#pragma once
#include <string>
#include <string_view>
#include <vector>

#include "engine/model/part.hpp"

namespace endbell::inline fields {

struct PartField {
    std::string_view column;  // "motors.rotation": also how a rule names it
    /// The field of a motor or module, into empty bytes. Sorts as its values do; unknown sorts first. Nothing but the
    /// field decides.
    void (*take)(const Part&, std::string& bytes);
    /// Writes what `take` gave into a part of the same kind that has none of it.
    void (*put)(std::string_view, Part&);
};

/// All of them. The first is the kind, which every rule looks at.
const std::vector<PartField>& part_fields();

/// Index into part_fields(). Throws OurBug when there is none: rules name only fields that exist (tested).
int part_field(std::string_view column);

/// A part with only these fields, kind first. `fields` are indices into part_fields().
Part with_only(const std::vector<int>& fields, const Part& part);

}  // namespace endbell::inline fields
