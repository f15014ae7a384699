// Stored rows to the structs of engine/model. Columns are taken in the order of columns.cpp.
#pragma once
#include <SQLiteCpp/SQLiteCpp.h>

#include <optional>
#include <string>

#include "engine/base/text.hpp"
#include "engine/model/catalog.hpp"
#include "engine/model/part.hpp"
#include "engine/model/word.hpp"

namespace endbell {

/// Takes the columns of the present row one after the other. Throws SQLite::Exception (as damage) on a value
/// that no import can have written.
class RowReader {
  public:
    explicit RowReader(SQLite::Statement& statement) : statement_(statement) {}

    void skip() { ++next_; }
    std::string text() { return take().getString(); }
    std::optional<std::string> maybe_text() {
        const SQLite::Column column = take();
        if (column.isNull()) return std::nullopt;
        return column.getString();
    }
    int whole() { return take().getInt(); }
    std::optional<int> maybe_whole() {
        const SQLite::Column column = take();
        if (column.isNull()) return std::nullopt;
        return column.getInt();
    }
    std::optional<double> number() {
        const SQLite::Column column = take();
        if (column.isNull()) return std::nullopt;
        return column.getDouble();
    }
    template <class D>
    std::optional<Quantity<D>> quantity(Unit<D> unit) {
        const std::optional<double> value = number();
        if (!value) return std::nullopt;
        return unit(*value);
    }
    template <class E>
    std::optional<E> word() {
        const std::optional<std::string> written = maybe_text();
        if (!written) return std::nullopt;
        return known_word<E>(*written);
    }
    template <class E>
    std::vector<E> words() {
        std::vector<E> list;
        const std::optional<std::string> written = maybe_text();
        if (!written) return list;
        for (const std::string& item : split(*written, ';')) list.push_back(known_word<E>(item));
        return list;
    }
    std::optional<bool> yes_no();
    std::optional<PlateVolts> volts();

    [[noreturn]] static void damaged(const std::string& value);

  private:
    SQLite::Column take() { return statement_.getColumn(next_++); }
    template <class E>
    static E known_word(const std::string& written) {
        const std::optional<E> value = from_word<E>(written);
        if (!value) damaged(written);
        return *value;
    }
    SQLite::Statement& statement_;
    int next_ = 0;
};

Part read_part(SQLite::Statement& row);
void read_motor(SQLite::Statement& row, Motor& motor);
Rating read_rating(SQLite::Statement& row);
Tap read_tap(SQLite::Statement& row);
PartTerminal read_terminal(SQLite::Statement& row);
void read_module(SQLite::Statement& row, Module& module);
CureRow read_cure(SQLite::Statement& row);
Offer read_offer(SQLite::Statement& row);
CrossReference read_reference(SQLite::Statement& row);
LabourTask read_labour(SQLite::Statement& row);

}  // namespace endbell
