#include "engine/match/rules/rules.hpp"

namespace endbell::rule {

namespace of_part_status {

constexpr std::string_view id = "part-status";

Finding judge(const Question&, const Part& part) {
    Answer say(id, "common-practice", {}, {std::string(word(part.status)), Origin::catalog});
    switch (part.status) {
        case PartStatus::active:
            return say.fits("active");
        case PartStatus::superseded:
            return say.caution("superseded");
        case PartStatus::discontinued:
            return say.caution("discontinued");
    }
    return say.fits("active");
}

}  // namespace of_part_status

Rule part_status() {
    using namespace of_part_status;
    return {id,
            "the part is still made, or what is left of it is said",
            Weight::preference,
            {"common-practice"},
            {},
            {},
            {},
            judge};
}

}  // namespace endbell::rule
