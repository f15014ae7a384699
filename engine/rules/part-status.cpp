#include "engine/rules/registry.hpp"

namespace endbell::inline rules::rule {

namespace {

constexpr std::string_view claim = "the part is still made, or what is left of it is said";
constexpr std::string_view id = rule_id::part_status;

// A part that is no longer made may be the right one today, where one is left; its next failure will need another.
Finding judge(const Query&, const Part& part) {
    FindingDraft say(id, "common-practice", {}, {std::string(word(part.status)), Origin::catalog});
    switch (part.status) {
        case PartStatus::active:
            return say.fits(Reason::active);
        case PartStatus::superseded:
            return say.caution(Reason::superseded);
        case PartStatus::discontinued:
            return say.caution(Reason::discontinued);
    }
    return say.fits(Reason::active);
}

}  // namespace

Rule part_status() {
    return {id,
            claim,
            Weight::preference,
            {Reason::active, Reason::superseded, Reason::discontinued},
            {"common-practice"},
            {},
            {},
            {},
            {{"parts.status", Concerns::nobody}},
            judge};
}

}  // namespace endbell::inline rules::rule
