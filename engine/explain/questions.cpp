#include "engine/explain/questions.hpp"

#include "engine/fields/job_key.hpp"

namespace endbell::inline explain {

std::string question_for(std::string_view id) {
    const JobKey* key = job_key(id);
    if (key != nullptr && !key->asked_as.empty()) return std::string(key->asked_as);
    return "What is " + std::string(id) + "?";
}

std::vector<std::string> keys_with_questions() {
    std::vector<std::string> keys;
    for (const JobKey& key : job_keys()) {
        if (!key.asked_as.empty()) keys.push_back(key.id());
    }
    return keys;
}

}  // namespace endbell::inline explain
