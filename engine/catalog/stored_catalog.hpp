// engine/catalog: the store: a catalog's file, its generations and their digests, and what changed between two. Here: a
// catalog file behind the Catalog interface. Reads rows when they are asked for and holds none.
#pragma once
#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "engine/fields/cell.hpp"
#include "engine/model/catalog.hpp"
#include "engine/model/limits.hpp"

namespace endbell::inline catalog {

/// A number as the catalog has it, and a part that it names.
struct NumberedPart {
    std::string number;
    std::string part_id;
};

/// One step from an old part to what took its place.
struct SuccessionStep {
    std::string from;
    std::string to;
    std::string source;
};

struct Succession {
    std::vector<SuccessionStep> steps;  // in the order in which they are reached
    std::vector<std::string> ends;  // the newest numbers, each once; parts of this catalog by their part_id
    bool cycle = false;             // some step comes back to a number that was passed
};

/// All rows of one table that belong to a part, as they are stored.
struct TableRows {
    std::string table;
    std::vector<std::string> columns;
    std::vector<std::vector<Stored>> rows;
};

/// One user at a time. Every member throws BadData when the file turns out to be damaged.
class StoredCatalog : public Catalog {
  public:
    /// Throws BadData when `file` is no catalog of this schema version.
    explicit StoredCatalog(const std::filesystem::path& file);
    ~StoredCatalog() override;

    /// One pass over each table; part rows come from parallel readers, so a million parts are no million
    /// look-ups.
    void each_part(const std::function<void(const Part&)>& visit) const override;
    void each_part_to_match(const IdRange& range,
                            const std::function<void(const Part&)>& visit) const override;
    void each_accessory(const std::function<void(const Part&)>& visit) const override;
    std::vector<Part> modules_of(std::string_view program) const override;
    void each_least_price(const std::function<void(std::string_view, std::int64_t)>& visit) const override;
    std::optional<Part> part(std::string_view id) const override;
    std::vector<Offer> offers(std::string_view part_id) const override;
    std::vector<CrossReference> references(std::string_view old_number) const override;
    std::optional<LabourTask> labour(std::string_view task) const override;
    std::string stamp() const override;

    /// The program's own, as the files that were imported tighten them.
    const Limits& limits() const;

    /// For who looks up or reads much of the file: its first 128 MB are mapped, and rows in them need no reading.
    void map_pages() const;

    /// Parts whose id or number has these letters and digits, ascending by id.
    std::vector<std::string> parts_numbered(std::string_view number) const;
    /// Every number that a part is known by, with its sight_key() and the part's id, ascending by key; all three are good
    /// until the visit ends.
    void each_number(const std::function<void(std::string_view key, std::string_view number,
                                              std::string_view part_id)>& visit) const;
    /// The description of each part that has one, ascending by id.
    void each_description(
        const std::function<void(std::string_view part_id, std::string_view description)>& visit) const;
    /// For a number that nothing in the catalog has: those that look like it when characters are misread for each other
    /// (0/O, 1/I, 5/S, 8/B); ascending by (number, part_id).
    std::vector<NumberedPart> misread_numbers(std::string_view number) const;
    /// Follows "supersedes" and "superseded by" from an old number or part id to what is sold today.
    Succession succession(std::string_view number) const;
    /// Everything the catalog knows of a part: its rows in every table that has any. Empty when there is no
    /// such part.
    std::vector<TableRows> rows_of(std::string_view part_id) const;

    /// As many parts have smaller ids as have greater ones; empty when there are no parts.
    std::string middle_id() const;
    int generation() const;
    std::string digest() const;
    /// A fingerprint of the rows of some tables.
    std::string digest_of(const std::vector<std::string_view>& tables) const;

  private:
    struct State;
    std::unique_ptr<State> state_;
};

}  // namespace endbell::inline catalog
