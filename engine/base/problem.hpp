// What a user can get wrong, as data: where, which value, what was expected, what to do.
#pragma once
#include <stdexcept>
#include <string>
#include <vector>

#include "engine/base/place.hpp"

namespace endbell::inline base {

struct Problem {
    Place at;
    std::string subject;   // the key, column or flag, in the user's spelling
    std::string value;     // the text that was found
    std::string expected;  // what would have been read
    std::string todo;      // one thing to do next
};

/// One line for a terminal: "FILE:LINE:COL: SUBJECT = 'VALUE': expected EXPECTED; TODO".
std::string to_text(const Problem& problem);

/// A broken file, cell or value. Thrown when a command can only end; caught once, in main: exit 65.
class BadData : public std::runtime_error {
  public:
    explicit BadData(std::vector<Problem> problems);
    explicit BadData(Problem problem) : BadData(std::vector<Problem>{std::move(problem)}) {}
    const std::vector<Problem>& problems() const { return problems_; }

  private:
    std::vector<Problem> problems_;
};

/// A command that cannot be carried out as typed. Caught once, in main: exit 64.
class BadUsage : public std::runtime_error {
  public:
    explicit BadUsage(Problem problem);
    const Problem& problem() const { return problem_; }

  private:
    Problem problem_;
};

}  // namespace endbell::inline base
