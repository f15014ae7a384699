#include "engine/explain/cautions.hpp"

#include "engine/explain/site_words.hpp"

namespace endbell::inline explain {

void add_safety(Document& to, const std::vector<SiteCheck>& owed, bool live_tests) {
    to.add(Heading{"Before you open anything"});
    for (const SiteCheck check : owed) {
        if (const auto warning = warning_of(check)) to.add(Warning{"WARNING", *warning});
    }
    to.add(Warning{"WARNING",
                   "The wheel or blade can start by itself: thermostat, off-delay, or a protector that "
                   "resets. Block it before reaching in."});
    if (live_tests) {
        to.add(
            Warning{"WARNING",
                    "A test with the power on is live work for a qualified person: eye protection, no "
                    "jewellery, gloves rated for it where parts above 50 V are bare, a meter rated for the "
                    "circuit, one hand, clear of the wheel (NFPA 70E, from memory). 24 V is no reason to "
                    "forget the line parts beside it."});
    }
}

void add_deference(Document& to) {
    to.add(Warning{"NOTICE",
                   "The equipment's own instructions, local code and licensed practice come first. Where "
                   "they differ from this sheet, follow them."});
}

void add_proving(Document& to, const std::vector<SiteCheck>& owed) {
    to.add(Heading{"When it runs again"});
    Bullets list;
    for (const SiteCheck check : owed) {
        if (!is_before_the_work(check)) list.items.push_back(say(check));
    }
    to.add(list);
}

}  // namespace endbell::inline explain
