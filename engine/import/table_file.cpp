#include "engine/import/table_file.hpp"

#include <algorithm>

#include "engine/base/text.hpp"

namespace endbell::inline import {

namespace fs = std::filesystem;

namespace {

std::string stem_of(const fs::path& path) {
    const std::string name = path.filename().string();
    return lower(name.substr(0, name.find('.')));
}

std::vector<std::string> table_names() {
    std::vector<std::string> names;
    for (const Table& table : tables()) names.emplace_back(table.name);
    return names;
}

std::vector<fs::path> csv_files(const std::vector<fs::path>& paths) {
    std::vector<fs::path> files;
    for (const fs::path& path : paths) {
        if (!fs::is_directory(path)) {
            files.push_back(path);
            continue;
        }
        std::vector<fs::path> inside;
        for (const fs::directory_entry& entry : fs::directory_iterator(path)) {
            if (lower(entry.path().extension().string()) == ".csv") inside.push_back(entry.path());
        }
        std::sort(inside.begin(), inside.end());
        if (inside.empty()) {
            throw BadData(Problem{
                {path.string(), 0, 0}, "folder", "", "CSV files", "give the folder that holds the tables"});
        }
        files.insert(files.end(), inside.begin(), inside.end());
    }
    return files;
}

std::vector<std::string> header_names(const CsvFile& csv) {
    std::vector<std::string> names;
    for (const std::string& cell : csv.header().cells()) names.push_back(lower(cleaned(cell)));
    return names;
}

bool has_all_sources(const TableMap& map, const std::vector<std::string>& header) {
    bool any = false;
    for (const auto& [column, source] : map.columns) {
        if (source.from.empty()) continue;
        any = true;
        if (std::find(header.begin(), header.end(), source.from) == header.end()) return false;
    }
    return any;
}

/// The map's entry for a file: by the file's name, by its table's name, else the only one whose headers are
/// all there.
const TableMap* entry_for(const ColumnMap& map, const fs::path& path,
                          const std::vector<std::string>& header) {
    for (const TableMap& entry : map.tables) {
        if (!entry.file.empty() && entry.file == path.filename().string()) return &entry;
    }
    for (const TableMap& entry : map.tables) {
        if (entry.file.empty() && entry.table == stem_of(path)) return &entry;
    }
    const TableMap* found = nullptr;
    for (const TableMap& entry : map.tables) {
        if (!has_all_sources(entry, header)) continue;
        if (found != nullptr) return nullptr;
        found = &entry;
    }
    return found;
}

/// Settles the feeds of one file against its header.
class HeaderReader {
  public:
    HeaderReader(TableFile& file, const TableMap* map, std::vector<Problem>& problems)
        : file_(file),
          map_(map),
          problems_(problems),
          header_(header_names(file.csv)),
          used_(header_.size()) {}

    void settle() {
        file_.feeds.resize(file_.table->columns.size());
        for (std::size_t i = 0; i < file_.feeds.size(); ++i)
            settle_column(file_.table->columns[i], file_.feeds[i]);
        for (std::size_t i = 0; i < header_.size(); ++i) {
            if (!used_[i]) unknown_header(i);
        }
    }

  private:
    void complain(std::size_t cell, std::string_view subject, std::string expected, std::string todo) {
        problems_.push_back({{file_.path.string(), file_.csv.header().line, static_cast<int>(cell)},
                             std::string(subject),
                             "",
                             std::move(expected),
                             std::move(todo)});
    }

    void settle_column(const Column& column, Feed& feed) {
        if (map_ != nullptr) {
            const auto mapped = map_->columns.find(std::string(column.name));
            if (mapped != map_->columns.end()) feed.source = mapped->second;
        }
        if (!feed.source.value.empty()) {
            feed.present = true;
            feed.header = column.name;
            return;
        }
        const bool mapped = !feed.source.from.empty();
        if (!mapped) feed.source.from = column.name;
        for (std::size_t i = 0; i < header_.size(); ++i) {
            if (header_[i] != feed.source.from) continue;
            if (feed.present)
                complain(i + 1, header_[i], "each column once", "remove or rename one of the two");
            feed.cell = i;
            feed.header = file_.csv.header()[i];
            feed.present = true;
            used_[i] = true;
        }
        if (!feed.present && mapped)
            complain(0, feed.source.from, "this header, which the column map names", "correct the map");
        else if (!feed.present && column.need == Need::required) {
            complain(0, column.name, "this column: no row can be read without it",
                     "add it, or name their header in a column map");
        }
    }

    void unknown_header(std::size_t i) {
        if (header_[i].empty() && column_is_named_nowhere(i)) return;
        if (map_ != nullptr &&
            std::find(map_->ignore.begin(), map_->ignore.end(), header_[i]) != map_->ignore.end())
            return;
        std::vector<std::string> known;
        for (const Column& column : file_.table->columns) known.emplace_back(column.name);
        const std::string near = nearest(header_[i], known);
        complain(i + 1, file_.csv.header()[i], "a column of " + std::string(file_.table->name),
                 near.empty() ? "name it in a column map, under columns or ignore"
                              : "did you mean '" + near + "'?");
    }
    /// Spreadsheets leave nameless columns behind the last one.
    bool column_is_named_nowhere(std::size_t i) const {
        return std::all_of(header_.begin() + static_cast<std::ptrdiff_t>(i), header_.end(),
                           [](const std::string& name) { return name.empty(); });
    }

    TableFile& file_;
    const TableMap* map_;
    std::vector<Problem>& problems_;
    std::vector<std::string> header_;
    std::vector<bool> used_;
};

void settle_fed(TableFile& file) {
    for (std::size_t i = 0; i < file.feeds.size(); ++i) {
        const Column& column = file.table->columns[i];
        // A rotation may bring its viewing end: see RowSettler.
        const bool fed = file.feeds[i].present || column.when_empty || column.name == "rotation_viewed_from";
        if (fed) file.fed.push_back(i);
    }
}

/// Which map a file is read with: the one given, the one remembered for its header, or none.
struct MapChoice {
    std::optional<ColumnMap> recalled;  // owns what `entry` points into
    const TableMap* entry = nullptr;
    std::string columns = "neutral";
};

MapChoice choose(const fs::path& path, const CsvFile& csv, const std::optional<ColumnMap>& given,
                 const Recall& recall) {
    MapChoice choice;
    if (given) {
        choice.entry = entry_for(*given, path, header_names(csv));
        if (choice.entry != nullptr) choice.columns = "mapped";
        if (choice.entry != nullptr) return choice;
    }
    const std::optional<RememberedMap> remembered =
        recall ? recall(header_print(csv.header().cells())) : std::nullopt;
    if (!remembered) return choice;
    choice.recalled = parse_column_map(remembered->toml, "the remembered column map");
    // A sheet saved once for each table has the same header in all of them: the file's own name says which.
    for (const std::string& table : {remembered->table, stem_of(path)}) {
        for (const TableMap& entry : choice.recalled->tables) {
            if (entry.table == table) choice.entry = &entry;
        }
    }
    if (choice.entry != nullptr) choice.columns = "remembered";
    return choice;
}

}  // namespace

std::vector<TableFile> open_tables(const std::vector<fs::path>& paths, const std::optional<ColumnMap>& map,
                                   const Recall& recall) {
    std::vector<TableFile> files;
    std::vector<Problem> problems;
    for (const fs::path& path : csv_files(paths)) {
        try {
            CsvFile csv(path);
            const MapChoice choice = choose(path, csv, map, recall);
            const Table* table = find_table(choice.entry != nullptr ? choice.entry->table : stem_of(path));
            if (table == nullptr) {
                const std::string near = nearest(stem_of(path), table_names());
                problems.push_back({{path.string(), 0, 0},
                                    "table",
                                    stem_of(path),
                                    "one of: " + joined(table_names(), ", "),
                                    near.empty() ? "name the file after its table, or name it in a column map"
                                                 : "did you mean '" + near + "'?"});
                continue;
            }
            const bool hinted =
                choice.entry != nullptr && (choice.entry->hints.encoding || choice.entry->hints.delimiter);
            if (hinted) csv = CsvFile(path, choice.entry->hints);
            const HeaderPrint print = header_print(csv.header().cells());
            files.push_back(TableFile{path, table, std::move(csv), {}, {}, choice.columns, print});
            HeaderReader(files.back(), choice.entry, problems).settle();
            settle_fed(files.back());
        } catch (const BadData& bad) {
            problems.insert(problems.end(), bad.problems().begin(), bad.problems().end());
        }
    }
    if (!problems.empty()) throw BadData(std::move(problems));
    std::stable_sort(files.begin(), files.end(),
                     [](const TableFile& a, const TableFile& b) { return a.table < b.table; });
    return files;
}

}  // namespace endbell::inline import
