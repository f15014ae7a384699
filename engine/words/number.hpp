// A number as the trade writes it: 1075, 1,075, .5, 0,5, 1/2, 1 1/2, 5-5/8. Never looks at the locale.
#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace endbell::inline words {

struct NumberText {
    double value = 0;
    std::size_t length = 0;  // how much of the text it took
    bool comma_unclear =
        false;                  // "1,075": a thousands mark or a decimal comma? `value` takes it as thousands
    bool dashed_mixed = false;  // "1-1/2": one and a half, or from 1 to 1/2? `value` takes it as mixed
    bool fraction = false;      // written with a slash
    bool leading_zero = false;  // "036": copied out of a longer number
};

/// The longest number at the front of `text` (folded), without a sign.
std::optional<NumberText> number_at(std::string_view text);

/// The whole of `text` is one number, without a sign.
std::optional<NumberText> whole_number(std::string_view text);

/// [words] [sign] number [words]: "fla 3.6", "-.25 in wc". Words come without blanks and dots.
struct Measure {
    std::string before;
    NumberText number;
    bool negative = false;
    std::string after;
};
std::optional<Measure> measure(std::string_view text);

/// The shortest decimal text that reads back to the same double: "0.5", "1075".
std::string shortest(double value);

/// Cuts folded text at every one of `separators` outside fractions: "1/2-1/6" at '-' gives two.
std::vector<std::string> cut(std::string_view text, std::string_view separators);

}  // namespace endbell::inline words
