#pragma once
#include "engine/explain/document.hpp"
#include "engine/select/select.hpp"

namespace endbell::inline explain {

/// What the catalog's cross references say of the equipment's model, of an inducer whose assembly is still to be found.
void add_named_for_model(Document& to, const Selection& selection);

}  // namespace endbell::inline explain
