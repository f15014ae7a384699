// What every command about a job does first: read the job, open the catalog, settle the policy.
#pragma once
#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "cli/arguments.hpp"
#include "engine/explain/compose.hpp"
#include "engine/index/indexed_catalog.hpp"
#include "engine/model/failed_unit.hpp"
#include "engine/select/select.hpp"

namespace endbell::cli {

struct Session {
    FailedUnit job;
    std::vector<OpenField> open;
    std::unique_ptr<IndexedCatalog> catalog;
    Limits limits;  // the catalog's, as the shop tightens them
    Policy policy;

    Books books() const { return {*catalog, limits, catalog->index()}; }
};

/// Throws BadUsage when there is no job or no catalog to read, BadData when one of them is broken.
Session open_session(const Arguments& typed);

/// Where the catalog is. Throws BadUsage when nothing says it.
std::string catalog_file(const Arguments& typed);

std::unique_ptr<IndexedCatalog> open_catalog(const Arguments& typed);

/// The limits of a catalog, or the program's own, as the shop's file tightens them.
Limits limits_in_force(const Arguments& typed, const StoredCatalog* catalog);

/// The part whose id or number was typed; several numbers alike or none: BadData with a near one named.
Part part_named(const StoredCatalog& catalog, const std::string& typed);

/// The option for the part typed, carried through every stage whatever its verdict; without one typed, the
/// pick; null when there is none. Its wiring is annotated.
const Option* chosen_option(const Arguments& typed, const Session& session, Selection& selection);

/// `top` options and those that are stopped, whole: their wiring is annotated first.
std::string selection_json(std::string_view command, Selection& selection, const Session& session, int top);

}  // namespace endbell::cli
