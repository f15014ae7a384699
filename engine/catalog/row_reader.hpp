// Stored rows to the structs of engine/model. Columns are taken in the order of columns.cpp.
#pragma once
#include <algorithm>
#include <optional>
#include <string>
#include <string_view>

#include "engine/catalog/plain_statement.hpp"
#include "engine/model/catalog.hpp"
#include "engine/model/part.hpp"
#include "engine/model/word.hpp"

namespace endbell::inline catalog {

/// Takes the columns of the present row one after the other. Throws SQLite::Exception (as damage) on a value
/// that no import can have written.
class RowReader {
  public:
    explicit RowReader(const PlainStatement& statement) : statement_(statement) {}

    void skip() { ++next_; }
    std::string text() { return std::string(statement_.text(next_++)); }
    /// Good until the statement moves.
    std::optional<std::string_view> maybe_text() {
        const std::string_view written = statement_.text(next_++);
        if (written.data() == nullptr) return std::nullopt;
        return written;
    }
    std::optional<std::string> kept_text() {
        const std::optional<std::string_view> written = maybe_text();
        if (!written) return std::nullopt;
        return std::string(*written);
    }
    int whole() { return static_cast<int>(statement_.whole(next_++)); }
    std::optional<int> maybe_whole() {
        if (!is_known()) return std::nullopt;
        return whole();
    }
    std::optional<double> number() {
        if (!is_known()) return std::nullopt;
        return statement_.real(next_++);
    }
    template <class D>
    std::optional<Quantity<D>> quantity(Unit<D> unit) {
        const std::optional<double> value = number();
        if (!value) return std::nullopt;
        return unit(*value);
    }
    template <class E>
    std::optional<E> word() {
        const std::optional<std::string_view> written = maybe_text();
        if (!written) return std::nullopt;
        return known_word<E>(*written);
    }
    template <class E>
    std::vector<E> words() {
        std::vector<E> list;
        std::string_view left = maybe_text().value_or("");
        while (!left.empty()) {
            const std::size_t end = std::min(left.find(';'), left.size());
            list.push_back(known_word<E>(left.substr(0, end)));
            left.remove_prefix(std::min(end + 1, left.size()));
        }
        return list;
    }
    std::optional<bool> yes_no();
    std::optional<PlateVolts> volts();

    [[noreturn]] static void damaged(std::string_view value);

  private:
    /// Otherwise the column is passed over.
    bool is_known() {
        const bool known = statement_.type(next_) != SQLITE_NULL;
        if (!known) ++next_;
        return known;
    }
    template <class E>
    static E known_word(std::string_view written) {
        const std::optional<E> value = from_word<E>(written);
        if (!value) damaged(written);
        return *value;
    }
    const PlainStatement& statement_;
    int next_ = 0;
};

Part read_part(const PlainStatement& row);
void read_motor(const PlainStatement& row, Motor& motor);
Rating read_rating(const PlainStatement& row);
Tap read_tap(const PlainStatement& row);
PartTerminal read_terminal(const PlainStatement& row);
void read_module(const PlainStatement& row, Module& module);
CureRow read_cure(const PlainStatement& row);
/// Of (part_id, price, currency, core_credit): asked_price() of them.
std::optional<std::int64_t> read_asked(const PlainStatement& row);
Offer read_offer(const PlainStatement& row);
CrossReference read_reference(const PlainStatement& row);
LabourTask read_labour(const PlainStatement& row);

}  // namespace endbell::inline catalog
