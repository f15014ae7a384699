// Ctrl-C during long work: the work is asked to stop at a place where nothing is half done.
#pragma once
#include <string>

namespace endbell::cli {

/// Caught once, in main: exit 128 + the signal, as a shell says it.
struct Interrupted {
    int signal = 0;
    std::string left;  // what was done, and what stayed as it was
};

/// While one lives, SIGINT, SIGTERM and SIGHUP do not end the program: they wait until the work looks.
class Heed {
  public:
    Heed();
    ~Heed();
    Heed(const Heed&) = delete;
    Heed& operator=(const Heed&) = delete;

    bool wanted() const;
    /// Throws Interrupted when a signal came.
    void look(const std::string& left) const;
};

}  // namespace endbell::cli
