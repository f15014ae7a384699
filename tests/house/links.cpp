// A reader who follows a link arrives: links between the documents, and files named in documents and comments.
#include <boost/test/unit_test.hpp>

#include "tests/house/repository.hpp"

using namespace house;

namespace {

using Exists = bool (*)(const std::string& path);

bool only_a_and_its_title(const std::string& path) {
    return path == "docs/a.md" || path == "docs";
}

/// The name by which a heading is linked to: lower case, dashes for blanks, other marks left out.
std::string anchor_of(const std::string& heading) {
    std::string anchor;
    for (const char c : heading) {
        if (std::isalnum(static_cast<unsigned char>(c)) != 0 || c == '-' || c == '_')
            anchor += static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
        else if (c == ' ')
            anchor += '-';
    }
    return anchor;
}

std::vector<std::string> anchors_of(const std::string& text) {
    std::vector<std::string> anchors;
    for (const std::string& heading : captures("\n" + text, "\n#+ ([^\n]*)")) {
        anchors.push_back(anchor_of(heading));
    }
    return anchors;
}

/// `read_text` gives the text of a page that is linked to by a heading.
Complaints dead_links(const std::vector<File>& pages, Exists exists,
                      std::string (*read_text)(const std::string& path)) {
    Complaints complaints;
    for (const File& page : pages) {
        for (const std::string& target : captures(page.text, R"(\]\(([^)\s]+)\))")) {
            if (target.find("://") != std::string::npos) continue;
            const std::size_t hash = target.find('#');
            const std::filesystem::path folder = std::filesystem::path(page.path).parent_path();
            const std::string path =
                hash == 0 ? page.path : (folder / target.substr(0, hash)).lexically_normal().generic_string();
            const bool there = exists(path);
            const bool heading_there =
                hash == std::string::npos ||
                (there && contains(anchors_of(read_text(path)), target.substr(hash + 1)));
            if (!there || !heading_there) complaints.push_back(page.path + " links to " + target);
        }
    }
    return complaints;
}

/// Paths from the root, as comments and documents name them. A star or capitals (ID.cpp) stand for many files.
Complaints missing_files(const std::vector<File>& files, Exists exists) {
    const std::string folders =
        "(?:^|[^A-Za-z0-9_./-])((?:docs|catalog-schema|demo-catalog|engine|tests|cli)";
    Complaints complaints;
    for (const File& file : files) {
        for (const std::string& path :
             captures(file.text, folders + R"(/[a-z0-9_./-]+\.(?:md|hpp|cpp|py|json|toml|sql))(?![a-z*]))")) {
            if (!exists(path)) complaints.push_back(file.path + " names " + path);
        }
    }
    return complaints;
}

std::string read_here(const std::string& path) {
    return read(root() / path);
}
std::string one_title(const std::string&) {
    return "# The Title, again\n";
}

}  // namespace

BOOST_AUTO_TEST_CASE(every_link_between_documents_leads_somewhere) {
    CHECK_NO_COMPLAINTS(dead_links(files("", {".md"}), exists_here, read_here));
}

BOOST_AUTO_TEST_CASE(a_dead_link_is_caught) {
    const auto complaints = [](const std::string& target) {
        return dead_links({{"docs/b.md", "see [it](" + target + ")"}}, only_a_and_its_title, one_title)
            .size();
    };
    BOOST_TEST(complaints("a.md") == 0U);
    BOOST_TEST(complaints("../docs/a.md#the-title-again") == 0U);
    BOOST_TEST(complaints("a.md#the-end") == 1U);
    BOOST_TEST(complaints("rules/a.md") == 1U);
}

BOOST_AUTO_TEST_CASE(every_file_that_a_document_or_a_comment_names_is_there) {
    std::vector<File> all = files("", {".md"});
    for (File& file : sources()) all.push_back(std::move(file));
    for (File& file : files("tests", {".hpp", ".py"})) all.push_back(std::move(file));
    CHECK_NO_COMPLAINTS(missing_files(all, exists_here));
}

BOOST_AUTO_TEST_CASE(a_file_that_is_named_and_not_there_is_caught) {
    BOOST_TEST(missing_files({{"a.cpp", "// see docs/c.md."}}, only_a_and_its_title).size() == 1U);
    BOOST_TEST(
        missing_files({{"a.cpp", "// see docs/a.md and docs/rules/*.md"}}, only_a_and_its_title).empty());
}
