// pick CATALOG JOB: prints the part that the engine would take for a job, and what must be changed for it.
#include <engine/base/problem.hpp>
#include <engine/catalog/stored_catalog.hpp>
#include <engine/job/job.hpp>
#include <engine/select/select.hpp>
#include <iostream>

int main(int argc, char** argv) {
    if (argc != 3) {
        std::cerr << "usage: pick CATALOG JOB\n";
        return 64;
    }
    try {
        const endbell::StoredCatalog catalog(argv[1]);
        const endbell::FailedUnit job = endbell::read_job_file(argv[2]);
        const endbell::Selection answer =
            endbell::select_part(job, {catalog, catalog.limits()}, endbell::policy_of(job));
        std::cout << endbell::word(answer.outcome) << '\n';
        if (answer.pick) {
            const endbell::Option& option = answer.options[static_cast<std::size_t>(*answer.pick)];
            std::cout << option.candidate.part.id << ": " << endbell::word(option.standing) << '\n';
            for (const endbell::Remedy& remedy : option.kit.remedies)
                std::cout << "  " << endbell::word(remedy.cure) << '\n';
        }
        return static_cast<int>(answer.outcome);
    } catch (const endbell::BadData& wrong) {
        std::cerr << wrong.what() << '\n';
        return 65;
    }
}
