#include "engine/base/file_writer.hpp"

#include <signal.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

#include <boost/test/unit_test.hpp>
#include <cstdlib>
#include <fstream>
#include <iterator>
#include <string>
#include <thread>
#include <vector>

using namespace endbell;
namespace fs = std::filesystem;

namespace {

struct Room {
    Room() {
        std::string name = (fs::temp_directory_path() / "endbell-XXXXXX").string();
        path = mkdtemp(name.data());
    }
    ~Room() { fs::remove_all(path); }
    Room(const Room&) = delete;
    Room& operator=(const Room&) = delete;

    std::vector<std::string> names() const {
        std::vector<std::string> found;
        for (const auto& entry : fs::directory_iterator(path)) found.push_back(entry.path().filename());
        return found;
    }
    fs::path path;
};

std::string text_in(const fs::path& file) {
    std::ifstream in(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}
void put(const fs::path& file, const std::string& text) {
    std::ofstream(file, std::ios::binary) << text;
}
Problem complaint(const fs::path& file) {
    return {{file.string(), 0, 0}, "--out", "", "a file that can be written", "name another file"};
}
void write_all(const fs::path& file, const std::string& text) {
    FileWriter writer(file, complaint(file));
    writer.write(text);
    writer.finish();
    writer.take_place();
}

/// Files of this process stay below `bytes` while one lives; what goes beyond fails and kills nobody.
class SmallFiles {
  public:
    explicit SmallFiles(rlim_t bytes) {
        getrlimit(RLIMIT_FSIZE, &before_);
        handler_ = ::signal(SIGXFSZ, SIG_IGN);
        const rlimit small{bytes, before_.rlim_max};
        setrlimit(RLIMIT_FSIZE, &small);
    }
    ~SmallFiles() {
        setrlimit(RLIMIT_FSIZE, &before_);
        ::signal(SIGXFSZ, handler_);
    }
    SmallFiles(const SmallFiles&) = delete;
    SmallFiles& operator=(const SmallFiles&) = delete;

  private:
    rlimit before_{};
    void (*handler_)(int) = nullptr;
};

}  // namespace

BOOST_AUTO_TEST_CASE(nothing_is_there_before_the_file_takes_its_place) {
    const Room room;
    const fs::path file = room.path / "a.csv";
    put(file, "old");
    FileWriter writer(file, complaint(file));
    writer.write("new, ");
    writer.write("whole");
    BOOST_TEST(text_in(file) == "old");
    writer.finish();
    BOOST_TEST(text_in(file) == "old");
    writer.take_place();
    BOOST_TEST(text_in(file) == "new, whole");
    BOOST_TEST(room.names().size() == 1U);
}

BOOST_AUTO_TEST_CASE(what_never_takes_its_place_leaves_nothing) {
    const Room room;
    const fs::path file = room.path / "a.csv";
    {
        FileWriter begun(file, complaint(file));
        begun.write("half");
    }
    BOOST_TEST(room.names().empty());
    {
        FileWriter finished(file, complaint(file));
        finished.write("whole");
        finished.finish();
    }
    BOOST_TEST(room.names().empty());
}

BOOST_AUTO_TEST_CASE(bytes_are_written_over_those_that_were_written_before) {
    const Room room;
    const fs::path file = room.path / "a.bin";
    FileWriter writer(file, complaint(file));
    writer.write("....tail");
    writer.write_at(0, "head");
    writer.finish();
    writer.take_place();
    BOOST_TEST(text_in(file) == "headtail");
}

BOOST_AUTO_TEST_CASE(a_file_keeps_its_permissions_and_a_new_one_gets_the_usual) {
    const Room room;
    const fs::path file = room.path / "a.csv";
    put(file, "old");
    fs::permissions(file, fs::perms::owner_read | fs::perms::owner_write | fs::perms::group_read);
    write_all(file, "new");
    BOOST_TEST(static_cast<int>(fs::status(file).permissions()) == 0640);
    const mode_t mask = umask(027);
    write_all(room.path / "b.csv", "new");
    umask(mask);
    BOOST_TEST(static_cast<int>(fs::status(room.path / "b.csv").permissions()) == 0640);
}

BOOST_AUTO_TEST_CASE(a_link_stays_a_link) {
    const Room room;
    put(room.path / "real.csv", "old");
    fs::create_symlink("real.csv", room.path / "link.csv");
    write_all(room.path / "link.csv", "new");
    BOOST_TEST(fs::is_symlink(room.path / "link.csv"));
    BOOST_TEST(text_in(room.path / "real.csv") == "new");
    BOOST_TEST(room.names().size() == 2U);
}

BOOST_AUTO_TEST_CASE(a_pipe_gets_the_bytes_and_stays_a_pipe) {
    const Room room;
    const fs::path pipe = room.path / "pipe";
    BOOST_REQUIRE(mkfifo(pipe.c_str(), 0600) == 0);
    std::string got;
    std::thread reader([&] { got = text_in(pipe); });
    write_all(pipe, "through");
    reader.join();
    BOOST_TEST(got == "through");
    BOOST_TEST(fs::is_fifo(pipe));
}

BOOST_AUTO_TEST_CASE(a_full_disk_leaves_the_old_file_and_nothing_else) {
    const Room room;
    const fs::path file = room.path / "a.csv";
    put(file, "old");
    const SmallFiles limit(4096);
    BOOST_CHECK_THROW(write_all(file, std::string(100'000, 'x')), BadData);  // while it is written
    BOOST_CHECK_THROW(write_all(file, std::string(4097, 'x')), BadData);  // at the latest when it is finished
    BOOST_TEST(text_in(file) == "old");
    BOOST_TEST(room.names().size() == 1U);
}

BOOST_AUTO_TEST_CASE(a_full_device_is_said) {
    if (!fs::exists("/dev/full")) return;
    BOOST_CHECK_THROW(write_all("/dev/full", "x"), BadData);
    BOOST_TEST(fs::is_character_file("/dev/full"));
}

BOOST_AUTO_TEST_CASE(a_folder_that_is_missing_or_in_the_way_is_said_with_the_complaint_given) {
    const Room room;
    const fs::path missing = room.path / "none" / "a.csv";
    try {
        write_all(missing, "x");
        BOOST_ERROR("a folder that is missing was written to");
    } catch (const BadData& bad) {
        BOOST_REQUIRE(bad.problems().size() == 1U);
        BOOST_TEST(bad.problems()[0].subject == "--out");
        BOOST_TEST(bad.problems()[0].at.file == missing.string());
    }
    BOOST_CHECK_THROW(write_all(room.path, "x"), BadData);
    BOOST_TEST(room.names().empty());
}

BOOST_AUTO_TEST_CASE(one_that_was_killed_leaves_the_old_file_and_is_in_nobodys_way) {
    const Room room;
    const fs::path file = room.path / "a.csv";
    put(file, "old");
    const pid_t child = fork();
    BOOST_REQUIRE(child >= 0);
    if (child == 0) {
        FileWriter writer(file, complaint(file));
        writer.write("half");
        writer.finish();
        ::raise(SIGKILL);
    }
    int status = 0;
    BOOST_REQUIRE(waitpid(child, &status, 0) == child);
    BOOST_TEST(WIFSIGNALED(status));
    BOOST_TEST(text_in(file) == "old");
    // The same again, of a process with the same number.
    put(file.string() + "." + std::to_string(getpid()) + ".part", "left behind, and longer than what comes");
    write_all(file, "new");
    BOOST_TEST(text_in(file) == "new");
}
