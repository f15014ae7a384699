// Which class of a column each part belongs to, while an index is made.
#pragma once
#include <cstddef>
#include <cstdint>
#include <memory>
#include <span>
#include <string>
#include <unordered_map>
#include <utility>
#include <vector>

namespace endbell::inline index {

using Number = std::uint32_t;

/// Texts numbered as they come; `ranks` gives their places in order.
class Numbered {
  public:
    Number number_of(const std::string& text) {
        if (last_ != nullptr && last_->first == text) return last_->second;  // neighbours are often alike
        last_ = &*numbers_.try_emplace(text, static_cast<Number>(numbers_.size())).first;
        return last_->second;
    }
    /// By the other's numbers.
    std::vector<Number> numbers_of(const Numbered& other);
    std::vector<std::string> in_order() const;
    std::vector<Number> ranks() const;

  private:
    std::unordered_map<std::string, Number> numbers_;
    const std::pair<const std::string, Number>* last_ = nullptr;
};

/// Numbers by the million that stay where they are while more come.
class Growing {
  public:
    void push_back(std::uint16_t number, std::size_t times = 1) {
        if (times == 1 && size_ % block != 0)
            blocks_.back()[size_++ % block] = number;
        else
            push_many(number, times);
    }
    std::uint16_t& operator[](std::size_t i) { return blocks_[i / block][i % block]; }
    std::uint16_t operator[](std::size_t i) const { return blocks_[i / block][i % block]; }
    std::size_t size() const { return size_; }

  private:
    void push_many(std::uint16_t number, std::size_t times);

    static constexpr std::size_t block = 128 * 1024;
    std::vector<std::unique_ptr<std::uint16_t[]>> blocks_;
    std::size_t size_ = 0;
};

/// The class of each part: nearly always one of few, so the upper half is kept from the first that needs it.
class ClassNumbers {
  public:
    void push_back(Number number, std::size_t times = 1) {
        if (number > low) high_.push_back(0, low_.size() - high_.size());
        if (number > low || high_.size() > 0)
            high_.push_back(static_cast<std::uint16_t>(number >> 16), times);
        low_.push_back(static_cast<std::uint16_t>(number & low), times);
    }
    Number operator[](std::size_t i) const {
        return low_[i] | (high_.size() > 0 ? Number{high_[i]} << 16 : 0);
    }
    /// Of some parts, in their order.
    void copy(std::span<const Number> parts, std::vector<Number>& to) const;
    /// REQUIRES: none greater than the greatest that was pushed.
    void set(std::size_t i, Number number) {
        low_[i] = static_cast<std::uint16_t>(number & low);
        if (high_.size() > 0) high_[i] = static_cast<std::uint16_t>(number >> 16);
    }
    std::size_t size() const { return low_.size(); }

  private:
    static constexpr Number low = 0xFFFF;
    Growing low_, high_;
};

/// The classes of one column as they come: tuples of field numbers.
class Classes {
  public:
    explicit Classes(const std::vector<int>& fields) : fields_(&fields) {
        for (const int f : fields) own_ |= bit(static_cast<std::size_t>(f));
    }
    static std::uint64_t bit(std::size_t field) { return std::uint64_t{1} << field; }

    /// `changed`: the fields in which the part differs from the one before; all, for the first.
    void take(const std::vector<Number>& numbers, std::uint64_t changed) {
        if ((changed & own_) != 0) take_other(numbers);
        ++alike_;
    }
    /// Those of the parts that come after these. `ours`: by field, of the other's numbers.
    void append(Classes& later, const std::vector<std::vector<Number>>& ours);
    /// All parts have come.
    void settle();
    /// The same, and renumbers in the order of values: `ranks` are the fields' own. Once.
    void put_in_order(const std::vector<std::vector<Number>>& ranks);

    const std::vector<std::u32string>& tuples() const { return tuples_; }
    /// By the order in which parts came, when all have.
    const ClassNumbers& of_part() const { return of_part_; }

  private:
    struct Hash {
        std::size_t operator()(const std::u32string& key) const {
            std::uint64_t h = 1469598103934665603ull;  // FNV-1a, a public hash
            for (const char32_t c : key) h = (h ^ c) * 1099511628211ull;
            return h;
        }
    };
    void take_other(const std::vector<Number>& numbers);
    Number class_of(const std::u32string& tuple);

    const std::vector<int>* fields_;
    std::uint64_t own_ = 0;  // the bits of `fields_`
    std::u32string key_;
    std::unordered_map<std::u32string, Number, Hash> classes_;
    std::vector<std::u32string> tuples_;
    ClassNumbers of_part_;
    Number now_ = 0;         // the class of the last parts,
    std::size_t alike_ = 0;  // so many of them, which are not in `of_part_` yet
};

}  // namespace endbell::inline index
