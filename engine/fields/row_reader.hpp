// A stored row to the structs of engine/model, column after column.
#pragma once
#include <algorithm>
#include <cstdint>
#include <cstdlib>
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>
#include <vector>

#include "engine/model/part.hpp"
#include "engine/model/word.hpp"

namespace endbell::inline fields {

/// The present row of a table, as the store has it.
class StoredRow {
  public:
    virtual bool is_null(int column) const = 0;
    virtual std::int64_t whole(int column) const = 0;
    virtual double real(int column) const = 0;
    /// Good until the row moves; without data where it is NULL.
    virtual std::string_view text(int column) const = 0;
    /// Throws what the store throws of a damaged file.
    [[noreturn]] virtual void damaged(std::string_view value) const = 0;

  protected:
    ~StoredRow() = default;
};

/// The unit in which the store keeps a quantity.
template <class D>
inline constexpr int stored_unit = 0;
template <>
inline constexpr auto stored_unit<PowerDimension> = horsepower;
template <>
inline constexpr auto stored_unit<VoltageDimension> = volt;
template <>
inline constexpr auto stored_unit<CurrentDimension> = ampere;
template <>
inline constexpr auto stored_unit<ApparentPowerDimension> = volt_ampere;
template <>
inline constexpr auto stored_unit<CapacitanceDimension> = microfarad;
template <>
inline constexpr auto stored_unit<FrequencyDimension> = hertz;
template <>
inline constexpr auto stored_unit<SpeedDimension> = rpm;
template <>
inline constexpr auto stored_unit<TorqueDimension> = ounce_foot;
template <>
inline constexpr auto stored_unit<LengthDimension> = inch;
template <>
inline constexpr auto stored_unit<DurationDimension> = second;

/// Takes the columns of the present row one after the other. A value that no import can have written is damage.
class RowReader {
  public:
    explicit RowReader(const StoredRow& row) : row_(row) {}

    void go_to(int column) { next_ = column; }

    void take(std::string& into) { into = std::string(maybe_text().value_or("")); }
    void take(int& into) { into = static_cast<int>(row_.whole(next_++)); }
    /// A word that the row may not lack.
    template <class E>
    requires std::is_enum_v<E>
    void take(E& into) {
        const std::optional<std::string_view> written = maybe_text();
        if (!written) row_.damaged("");
        into = known_word<E>(*written);
    }
    template <class T>
    void take(std::optional<T>& into) {
        if (is_known()) into = value<T>();
    }
    template <class E>
    void take(std::vector<E>& into) {
        std::string_view left = maybe_text().value_or("");
        while (!left.empty()) {
            const std::size_t end = std::min(left.find(';'), left.size());
            into.push_back(known_word<E>(left.substr(0, end)));
            left.remove_prefix(std::min(end + 1, left.size()));
        }
    }

    std::string text() { return std::string(row_.text(next_++)); }
    /// Good until the row moves.
    std::optional<std::string_view> maybe_text() {
        const std::string_view written = row_.text(next_++);
        if (written.data() == nullptr) return std::nullopt;
        return written;
    }
    [[noreturn]] void damaged(std::string_view value) const {
        row_.damaged(value);
        std::abort();  // never reached: the compiler does not see that through a virtual call
    }

  private:
    /// Otherwise the column is passed over.
    bool is_known() {
        const bool known = !row_.is_null(next_);
        if (!known) ++next_;
        return known;
    }
    template <class T>
    T value() {
        if constexpr (std::is_same_v<T, bool>) {
            return yes_no();
        } else if constexpr (std::is_enum_v<T>) {
            return known_word<T>(row_.text(next_++));
        } else if constexpr (std::is_same_v<T, int>) {
            return static_cast<int>(row_.whole(next_++));
        } else if constexpr (std::is_same_v<T, double>) {
            return row_.real(next_++);
        } else if constexpr (std::is_same_v<T, std::string>) {
            return std::string(row_.text(next_++));
        } else if constexpr (std::is_same_v<T, Temperature>) {
            return Temperature::celsius(row_.real(next_++));
        } else if constexpr (std::is_same_v<T, PlateVolts>) {
            return volts();
        } else {
            return quantity(static_cast<T*>(nullptr));
        }
    }
    template <class D>
    Quantity<D> quantity(Quantity<D>*) {
        return stored_unit<D>(row_.real(next_++));
    }
    bool yes_no();
    PlateVolts volts();
    template <class E>
    E known_word(std::string_view written) const {
        const std::optional<E> value = from_word<E>(written);
        if (!value) damaged(written);
        return *value;
    }

    const StoredRow& row_;
    int next_ = 0;
};

}  // namespace endbell::inline fields
