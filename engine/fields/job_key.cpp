#include "engine/fields/job_key.hpp"

#include "engine/fields/key_row.hpp"

namespace endbell::inline fields {

bool JobKey::is_named(std::string_view id) const {
    const std::size_t dot = group.size();
    return id.size() == dot + 1 + name.size() && id[dot] == '.' && id.substr(dot + 1) == name &&
           id.substr(0, dot) == group;
}

const std::vector<JobKey>& job_keys() {
    static const std::vector<JobKey> keys = [] {
        std::vector<JobKey> all;
        for (auto rows : {unit_keys, plate_keys, measured_keys, equipment_keys, controls_keys, shop_keys}) {
            for (JobKey& key : rows()) all.push_back(std::move(key));
        }
        return all;
    }();
    return keys;
}

const JobKey* job_key(std::string_view id) {
    for (const JobKey& key : job_keys()) {
        if (key.is_named(id)) return &key;
    }
    return nullptr;
}

}  // namespace endbell::inline fields
