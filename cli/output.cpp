#include "cli/output.hpp"

#include <signal.h>
#include <sys/ioctl.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <cstdio>
#include <cstdlib>
#include <memory>

#include "engine/base/file_writer.hpp"
#include "engine/base/problem.hpp"
#include "engine/base/text.hpp"
#include "engine/sheet/text.hpp"

namespace endbell::cli {

namespace {

std::string environment(const char* name) {
    const char* value = std::getenv(name);
    return value == nullptr ? "" : value;
}

/// Bold helps the eye and carries no meaning. Not in a pipe, and not where the user or the terminal has none.
bool bold_wanted() {
    const std::string terminal = environment("TERM");
    return isatty(STDOUT_FILENO) != 0 && environment("NO_COLOR").empty() && !terminal.empty() &&
           terminal != "dumb";
}

bool underlines(const std::string& line) {
    return !line.empty() && (line.find_first_not_of('=') == std::string::npos ||
                             line.find_first_not_of("- ") == std::string::npos);
}

/// Headings and the heads of tables are the lines above a line of dashes.
std::string with_bold_heads(const std::string& text) {
    const std::vector<std::string> lines = split(text, '\n');
    std::string out;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const bool head = i + 1 < lines.size() && !lines[i].empty() && underlines(lines[i + 1]);
        out += (i > 0 ? "\n" : "") + (head ? "\x1b[1m" + lines[i] + "\x1b[0m" : lines[i]);
    }
    return out;
}

/// No signal ends the program while one lives.
class SignalsWait {
  public:
    SignalsWait() {
        sigset_t all;
        sigfillset(&all);
        pthread_sigmask(SIG_SETMASK, &all, &before_);
    }
    ~SignalsWait() { pthread_sigmask(SIG_SETMASK, &before_, nullptr); }
    SignalsWait(const SignalsWait&) = delete;
    SignalsWait& operator=(const SignalsWait&) = delete;

  private:
    sigset_t before_{};
};

}  // namespace

void print(const std::string& text) {
    if (std::fwrite(text.data(), 1, text.size(), stdout) < text.size() || std::fflush(stdout) != 0)
        throw OutputFailed{errno};
}

void print(const Document& document, const Arguments& typed) {
    const std::string text = render_text(document, typed.width);
    print(bold_wanted() ? with_bold_heads(text) : text);
}

int usual_width() {
    constexpr int in_a_file = 80;
    constexpr int reads_well = 120;  // longer lines are hard to read: --width asks for them
    if (isatty(STDOUT_FILENO) == 0) return in_a_file;
    int columns = std::atoi(environment("COLUMNS").c_str());
    winsize size{};
    if (columns <= 0 && ioctl(STDOUT_FILENO, TIOCGWINSZ, &size) == 0) columns = size.ws_col;
    return columns <= 0 ? in_a_file : std::clamp(columns, narrowest_line, reads_well);
}

ProgressLine::ProgressLine() : on_terminal_(isatty(STDERR_FILENO) != 0) {}

ProgressLine::~ProgressLine() {
    if (shown_) std::fputs("\r\x1b[K", stderr);
}

void ProgressLine::show(const std::string& text) {
    if (!on_terminal_) return;
    std::fprintf(stderr, "\r%s\x1b[K", visible(text).c_str());
    shown_ = true;
}

void write_whole(const std::vector<WholeFile>& files) {
    const SignalsWait wait;
    std::vector<std::unique_ptr<FileWriter>> written;
    for (const WholeFile& file : files) {
        written.push_back(
            std::make_unique<FileWriter>(file.path, Problem{{file.path, 0, 0},
                                                            file.option,
                                                            "",
                                                            "a file that can be written",
                                                            "name another file or free some space"}));
        written.back()->write(file.text);
        written.back()->finish();
    }
    for (const auto& file : written) file->take_place();
}

}  // namespace endbell::cli
