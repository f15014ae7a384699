#include "engine/ask/askable.hpp"

#include <algorithm>

#include "engine/fields/job_key.hpp"

namespace endbell::inline ask {

namespace {

Askable of_key(const JobKey& key, const std::string& id) {
    const AskedKey& asked = *key.asked;
    Askable a;
    a.key = id;
    a.seconds = asked.seconds;
    a.chance = asked.chance;
    a.tape_size = asked.tape;
    a.blank = [&asked](const Query& q) {
        return !asked.stated(q.job) && !(asked.settled != nullptr && asked.settled(q.facts));
    };
    a.answers = [&asked](const std::vector<const Part*>& parts) {
        std::vector<PossibleAnswer> list;
        for (KeyAnswer& answer : asked.answers(parts)) {
            list.push_back({answer.size, std::move(answer.label), answer.votes,
                            [give = std::move(answer.give)](Trial& trial) { give(trial.job); }});
        }
        return list;
    };
    return a;
}

/// A proof of the motor half: it passes, and the module alone is shown to have failed, or it does not.
Askable proof(std::string_view key, int seconds, double chance, bool (*blank)(const Query&)) {
    Askable a;
    a.key = key;
    a.seconds = seconds;
    a.chance = chance;
    a.blank = blank;
    a.answers = [](const std::vector<const Part*>&) {
        std::vector<PossibleAnswer> both(2);
        both[0] = {0, "fails", 1.0, [](Trial& t) { t.diagnosis.fault = Fault::motor_and_module; }};
        both[1] = {0, "passes", 1.0, [](Trial& t) {
                       t.diagnosis.fault = Fault::module;
                       t.diagnosis.motor_half_proven_good = true;
                   }};
        return both;
    };
    return a;
}

// Seconds and chances are common practice, like those of the keys.
std::vector<Askable> proofs() {
    return {
        proof("measured.spins_free", 60, 0.60, [](const Query& q) { return !q.job.measured.spins_free; }),
        proof("measured.winding_to_shell", 400, 0.40,
              [](const Query& q) { return !q.job.measured.winding_to_shell; }),
        proof("measured.windings", 420, 0.40, [](const Query& q) { return !q.job.measured.windings; }),
    };
}

/// In the order in which an expert without a catalog would ask; what proves the motor half comes last.
std::vector<Askable> all() {
    std::vector<const JobKey*> keys;
    for (const JobKey& key : job_keys()) {
        if (key.asked) keys.push_back(&key);
    }
    std::sort(keys.begin(), keys.end(),
              [](const JobKey* a, const JobKey* b) { return a->asked->order < b->asked->order; });
    std::vector<Askable> list;
    for (const JobKey* key : keys) list.push_back(of_key(*key, key->id()));
    for (Askable& proof : proofs()) list.push_back(std::move(proof));
    return list;
}

}  // namespace

const std::vector<Askable>& askables() {
    static const std::vector<Askable> list = all();
    return list;
}

const Askable* askable(std::string_view key) {
    for (const Askable& a : askables()) {
        if (a.key == key) return &a;
    }
    return nullptr;
}

}  // namespace endbell::inline ask
