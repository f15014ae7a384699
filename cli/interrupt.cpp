#include "cli/interrupt.hpp"

#include <signal.h>

#include <array>
#include <cstddef>

namespace endbell::cli {

namespace {

volatile sig_atomic_t caught = 0;

void catch_it(int signal) {
    caught = signal;
}

constexpr std::array heeded{SIGINT, SIGTERM, SIGHUP};
std::array<struct sigaction, heeded.size()> before;

}  // namespace

Heed::Heed() {
    caught = 0;
    for (std::size_t i = 0; i < heeded.size(); ++i) {
        sigaction(heeded[i], nullptr, &before[i]);
        if (before[i].sa_handler == SIG_IGN) continue;  // under nohup, and in the background of a script
        struct sigaction action {};
        action.sa_handler = catch_it;
        action.sa_flags = SA_RESTART;
        sigemptyset(&action.sa_mask);
        sigaction(heeded[i], &action, nullptr);
    }
}

Heed::~Heed() {
    for (std::size_t i = 0; i < heeded.size(); ++i) sigaction(heeded[i], &before[i], nullptr);
}

bool Heed::wanted() const {
    return caught != 0;
}

void Heed::look(const std::string& left) const {
    if (caught != 0) throw Interrupted{caught, left};
}

}  // namespace endbell::cli
