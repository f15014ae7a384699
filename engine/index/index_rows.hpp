// The rows of an index while it is made: each motor and module of the catalog, in the order of their ids, by its classes.
#pragma once
#include <cstdint>
#include <functional>
#include <map>
#include <string>
#include <vector>

#include "engine/base/ids.hpp"
#include "engine/index/column_classes.hpp"
#include "engine/index/value_dictionary.hpp"
#include "engine/model/catalog.hpp"

namespace endbell::inline index {

/// The fields by which parts are put beside each other: nearly every job tells these, and most parts fall by them.
const std::vector<int>& cluster_key();

class IndexRows {
  public:
    /// Reads every motor and module of the range once. `look` is called for each; what it throws ends it.
    IndexRows(const Catalog& catalog, const IdRange& range, const std::function<void()>& look);
    /// Takes the rows of another one, whose ids are all greater.
    void append(IndexRows& later);
    /// All rows have come: numbers classes in the order of their values. Once, before all that follows.
    void finish();

    std::size_t size() const { return ids_.size(); }
    const Ids& ids() const { return ids_; }
    /// By field.
    const std::vector<ValueDictionary>& dictionaries() const { return dictionaries_; }
    /// By rule_columns().
    const std::vector<ColumnClasses>& columns() const { return columns_; }
    /// Assembly numbers of draft inducers, as number_key() writes them, each with its rows.
    const std::map<std::string, std::vector<Code>>& assemblies() const { return assemblies_; }
    /// Of each row, the place of its cluster among all, by the values of cluster_key().
    std::vector<Code> cluster_places() const;

  private:
    void read(const Catalog& catalog, const IdRange& range, const std::function<void()>& look);

    std::vector<ValueDictionary> dictionaries_;
    std::vector<ColumnClasses> columns_;
    ColumnClasses clusters_;  // parts that agree in cluster_key()
    std::vector<std::vector<Code>>
        ranks_;  // of each field, of its codes: their places among the sorted values
    Ids ids_;
    std::map<std::string, std::vector<Code>> assemblies_;
};

}  // namespace endbell::inline index
