#include "engine/fields/row_reader.hpp"

#include <charconv>

#include "engine/words/plain.hpp"

namespace endbell::inline fields {

namespace {

std::optional<double> number_in(std::string_view text) {
    double value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error != std::errc() || end != text.data() + text.size()) return std::nullopt;
    return value;
}

}  // namespace

bool RowReader::yes_no() {
    const std::string_view written = row_.text(next_++);
    if (written != "yes" && written != "no") damaged(written);
    return written == "yes";
}

PlateVolts RowReader::volts() {
    const std::string_view written = row_.text(next_++);
    const std::size_t dash = written.find('-');
    const std::optional<double> low = number_in(written.substr(0, dash));
    const std::optional<double> high =
        dash == std::string_view::npos ? low : number_in(written.substr(dash + 1));
    if (!low || !high) damaged(written);
    return plate_volts(*low, *high);
}

}  // namespace endbell::inline fields
