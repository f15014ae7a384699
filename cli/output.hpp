// What leaves the program: text on stdout in the width and look that suit it, and files that are whole or not there.
#pragma once
#include <string>
#include <utility>
#include <vector>

#include "cli/arguments.hpp"
#include "engine/explain/document.hpp"

namespace endbell::cli {

/// stdout took no more. Caught once, in main.
struct OutputFailed {
    int error = 0;  // errno
};

/// Throws OutputFailed.
void print(const std::string& text);
void print(const Document& document, const Arguments& typed);

/// Characters a line where none were asked for: a terminal's own width within what reads well, else 80.
int usual_width();

/// Progress on the last line of a terminal; silent in a pipe or a file.
class ProgressLine {
  public:
    ProgressLine();
    ~ProgressLine();  // wipes the line
    ProgressLine(const ProgressLine&) = delete;
    ProgressLine& operator=(const ProgressLine&) = delete;
    void show(const std::string& text);

  private:
    bool shown_ = false;
    const bool on_terminal_;
};

struct WholeFile {
    std::string path;
    std::string text;
    std::string option;  // that named it, for the complaint
};
/// Writes each file beside its place, and renames only when all are written: nobody sees half a file. A signal
/// waits meanwhile. A file that exists keeps its permissions, a link stays a link, a device is written as it is.
/// Throws BadData.
void write_whole(const std::vector<WholeFile>& files);

}  // namespace endbell::cli
