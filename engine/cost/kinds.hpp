// The named values of a ledger. Each word is the spelling in JSON and on sheets.
#pragma once
#include "engine/model/word.hpp"

namespace endbell::inline cost {

/// One way out of a failed motor: ways.hpp says which is which.
enum class WayOut {
    keep_and_cure,
    capacitor,
    control_repair,
    module,
    same_motor,
    motor,
    universal,
    retrofit,
    equipment
};
constexpr auto words_of(WayOut) {
    return std::array{Word<WayOut>{WayOut::keep_and_cure, "keep and cure"},
                      Word<WayOut>{WayOut::capacitor, "capacitor"},
                      Word<WayOut>{WayOut::control_repair, "control repair"},
                      Word<WayOut>{WayOut::module, "module"},
                      Word<WayOut>{WayOut::same_motor, "same motor"},
                      Word<WayOut>{WayOut::motor, "motor"},
                      Word<WayOut>{WayOut::universal, "universal"},
                      Word<WayOut>{WayOut::retrofit, "retrofit"},
                      Word<WayOut>{WayOut::equipment, "equipment"}};
}

/// What a line of a quote is for.
enum class LineKind {
    part,
    kit_part,
    labour,
    emergency,
    trip,
    diagnosis,
    second_visit,
    tax,
    core_credit,
    equipment
};
constexpr auto words_of(LineKind) {
    return std::array{Word<LineKind>{LineKind::part, "part"},
                      Word<LineKind>{LineKind::kit_part, "kit part"},
                      Word<LineKind>{LineKind::labour, "labour"},
                      Word<LineKind>{LineKind::emergency, "emergency"},
                      Word<LineKind>{LineKind::trip, "trip"},
                      Word<LineKind>{LineKind::diagnosis, "diagnosis"},
                      Word<LineKind>{LineKind::second_visit, "second visit"},
                      Word<LineKind>{LineKind::tax, "tax"},
                      Word<LineKind>{LineKind::core_credit, "core credit"},
                      Word<LineKind>{LineKind::equipment, "equipment"}};
}
constexpr bool is_part(LineKind kind) {
    return kind == LineKind::part || kind == LineKind::kit_part;
}

/// How a part's price came of what the shop pays.
enum class PricedBy {
    cost,    // sold for what it costs
    markup,  // on cost
    margin   // of price
};
constexpr auto words_of(PricedBy) {
    return std::array{Word<PricedBy>{PricedBy::cost, "cost"}, Word<PricedBy>{PricedBy::markup, "markup"},
                      Word<PricedBy>{PricedBy::margin, "margin"}};
}

/// What the old unit had and a way out does not give; last, what a way out leaves wrong.
enum class Loss {
    constant_airflow,
    humidity_control,
    communicating_control,
    efficiency,
    speeds,
    ball_bearing,
    closed_enclosure,
    warranty,
    new_motor_half,
    cause_stays
};
constexpr auto words_of(Loss) {
    return std::array{Word<Loss>{Loss::constant_airflow, "constant airflow"},
                      Word<Loss>{Loss::humidity_control, "humidity control"},
                      Word<Loss>{Loss::communicating_control, "communicating control"},
                      Word<Loss>{Loss::efficiency, "efficiency"},
                      Word<Loss>{Loss::speeds, "speeds"},
                      Word<Loss>{Loss::ball_bearing, "ball bearing"},
                      Word<Loss>{Loss::closed_enclosure, "closed enclosure"},
                      Word<Loss>{Loss::warranty, "warranty"},
                      Word<Loss>{Loss::new_motor_half, "new motor half"},
                      Word<Loss>{Loss::cause_stays, "cause stays"}};
}

/// What somebody will pay, or nobody stated, and no line holds.
enum class NotCounted {
    markup,
    trip,
    diagnosis,
    lead_time,
    waiting,
    tax,
    control_parts,
    unpriced_cause,
    materials,
    energy
};
constexpr auto words_of(NotCounted) {
    return std::array{Word<NotCounted>{NotCounted::markup, "markup"},
                      Word<NotCounted>{NotCounted::trip, "trip"},
                      Word<NotCounted>{NotCounted::diagnosis, "diagnosis"},
                      Word<NotCounted>{NotCounted::lead_time, "lead time"},
                      Word<NotCounted>{NotCounted::waiting, "waiting for the part"},
                      Word<NotCounted>{NotCounted::tax, "tax"},
                      Word<NotCounted>{NotCounted::control_parts, "control parts"},
                      Word<NotCounted>{NotCounted::unpriced_cause, "a cause without a price"},
                      Word<NotCounted>{NotCounted::materials, "materials of the repair"},
                      Word<NotCounted>{NotCounted::energy, "energy"}};
}

/// Of a rate, and of the money that it discounts: inflation taken out, or left in.
enum class RateKind { real, nominal };
constexpr auto words_of(RateKind) {
    return std::array{Word<RateKind>{RateKind::real, "real"}, Word<RateKind>{RateKind::nominal, "nominal"}};
}

}  // namespace endbell::inline cost
