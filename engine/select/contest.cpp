#include "engine/select/contest.hpp"

#include <algorithm>
#include <set>
#include <tuple>
#include <utility>

namespace endbell::inline select {

namespace {

bool barred_by_policy(const Option& option, const Policy& policy, const Catalog& catalog) {
    if (is_excluded_maker(option.candidate.part.maker, policy)) return true;
    return !option.offer && !catalog.offers(option.candidate.part.id).empty();
}

/// What makes one option better than another, smallest first. Without a total, what is known of it counts.
auto rank_of(const Option& option, const Policy& policy) {
    const int lead = option.offer ? lead_of(*option.offer, policy).value_or(1'000'000) : 1'000'000;
    const bool priced = price_of(option.offer, policy).has_value();
    const std::optional<Money>& sum = option.today ? option.today : option.so_far;
    return std::make_tuple(option.standing, !option.today.has_value(), !priced, sum ? sum->minor() : 0,
                           std::max(lead, option.kit.longest_lead_days), option.kit.parts.size(),
                           option.candidate.part.id);
}

/// The parts that pass every rule, carried through the later stages until none that is left can come to less
/// than what is found. Names come as they are first, then cheapest: see MatchReport::matches.
class Contest {
  public:
    Contest(Selection& s, MoreNames& more, const Query& query, const Books& books, const KitShelf& shelf,
            const SelectionScope& scope)
        : s_(s),
          more_(more),
          query_(query),
          books_(books),
          policy_(shelf.policy()),
          shelf_(shelf),
          scope_(scope) {}

    void run() {
        if (scope_.reasons) {
            carry_all();
        } else {
            carry_few();
        }
        std::sort(s_.options.begin(), s_.options.end(), [this](const Option& a, const Option& b) {
            return rank_of(a, policy_) < rank_of(b, policy_);
        });
    }

  private:
    /// Every name until none can win; the report is left with those that were looked at.
    void carry_all() {
        std::size_t done = 0;
        while (carry_from(done)) {
            done = s_.report.matches.size();
            for (CandidateName& next : more_.next(7 * done)) s_.report.matches.push_back(std::move(next));
            if (s_.report.matches.size() == done) break;
        }
    }

    /// Nobody asks how many were carried or stopped: those that cannot win are passed over, too.
    void carry_few() {
        const auto curable = [this](const Remedy& remedy) { return may_be_cured(remedy, shelf_); };
        std::vector<CandidateName>& matches = s_.report.matches;
        for (std::size_t most = 4;; most *= 2) {
            const std::size_t first = matches.size();
            for (CandidateName& next : more_.next(most, curable)) matches.push_back(std::move(next));
            for (std::size_t i = first; i < matches.size(); ++i) {
                if (told_by_rank(matches[i]).value_or(false)) return;
                if (is_lost(matches[i]) || cannot_win_by_offer(matches[i])) continue;
                ++s_.carried;
                take(carried(matches[i]));
            }
            if (matches.size() < first + most || cannot_win_at_all(matches.back())) return;
        }
    }

    /// False: the rest need not be looked at.
    bool carry_from(std::size_t first) {
        const std::vector<CandidateName>& matches = s_.report.matches;
        std::size_t told = first;  // those before it are taken or stopped
        for (std::size_t i = first; i < matches.size(); ++i) {
            if (!may_be_cured(matches[i].alike->adapters, shelf_)) continue;
            if (!stop_between(told, i, cannot_win(matches[i]))) return false;
            ++s_.carried;
            take(carried(matches[i]));
            told = i + 1;
        }
        const bool lost = told < matches.size() && cannot_win(matches.back());
        return stop_between(told, matches.size(), lost) &&
               s_.carried < s_.report.fitting + s_.report.changing;
    }

    /// Stops those from `first` on that nothing cures, before `last` and before the first that cannot win anyway. Names
    /// come as they rank: where one cannot win, none that follows can. `lost`: one of them, or `last`, cannot. Gives
    /// whether the rest is to be looked at.
    bool stop_between(std::size_t first, std::size_t last, bool lost) {
        const auto begin = s_.report.matches.begin();
        const auto from = begin + static_cast<std::ptrdiff_t>(first);
        auto to = begin + static_cast<std::ptrdiff_t>(last);
        if (lost)
            to = std::partition_point(from, to, [this](const CandidateName& s) { return !cannot_win(s); });
        for (auto next = from; next != to; ++next) {
            ++s_.carried;
            stop([&] { return carried(*next); });
        }
        return !lost;
    }

    Option carried(const CandidateName& name) const {
        return carry(query_, candidate(query_, books_.catalog, name.part_id), shelf_, books_);
    }

    /// Of those that nothing completes only so many are worked out as somebody looks at.
    template <class Make>
    void stop(Make option) {
        ++s_.stopped_in_all;
        if (s_.stopped.size() < scope_.stopped()) s_.stopped.push_back(option());
    }

    /// Priced here, once it is known to be whole: its total decides which of the others are still looked at.
    void take(Option option) {
        if (barred_by_policy(option, policy_, books_.catalog)) {
            s_.barred.push_back(option.candidate.part.id);
        } else if (option.standing == Verdict::does_not_fit) {
            stop([&] { return std::move(option); });
        } else {
            const CostOption cost = price_today(query_.job, query_.facts, option.candidate, option.kit,
                                                option.offer, books_, policy_);
            option.today = cost.today;
            option.so_far = cost.so_far;
            best_.push_back({option.standing, !option.today, option.today ? *option.today : option.so_far,
                             price_of(option.offer, policy_).has_value()});
            std::sort(best_.begin(), best_.end());
            if (best_.size() > scope_.options) best_.pop_back();
            s_.options.push_back(std::move(option));
        }
    }

    /// The part alone, with the lightest work, already ranks behind as many options as are wanted.
    bool cannot_win(const CandidateName& next) const {
        if (const std::optional<bool> told = told_by_rank(next)) return *told;
        return is_dearer(
            least_today(query_.job, Money(*next.least_price, policy_.currency), books_, policy_));
    }

    /// The same of the kinds of parts that there are, for the job's own load: nothing that follows can win.
    bool cannot_win_at_all(const CandidateName& next) const {
        if (const std::optional<bool> told = told_by_rank(next)) return *told;
        const auto loses = [&](PartKind kind, std::optional<Family> family) {
            return comes_to_more(Alike{kind, family, {}, {}}, price_alone(next));
        };
        if (s_.report.modules && !loses(PartKind::module, std::nullopt)) return false;
        const std::optional<Family> old = query_.facts.family.value;
        if (!loses(PartKind::motor, old)) return false;
        if (!old) return true;
        const Family other = *old == Family::shaded_pole ? Family::capacitor_run : Family::shaded_pole;
        return loses(PartKind::motor, other);
    }

    /// Whether it cannot win, where that does not depend on its price.
    std::optional<bool> told_by_rank(const CandidateName& next) const {
        if (best_.size() < scope_.options) return false;
        const Found& last = best_.back();
        if (next.verdict != last.standing) return next.verdict > last.standing;
        if (!next.least_price) return last.has_price;
        return std::nullopt;
    }

    /// It ranks behind with the work that it asks for. Names with one price come as they rank: once one of those that
    /// are alike is lost, all that follow are.
    bool is_lost(const CandidateName& next) {
        if (told_by_rank(next)) return false;
        if (lost_.count(next.alike.get()) > 0) return true;
        const bool lost = comes_to_more(*next.alike, price_alone(next));
        if (lost) lost_.insert(next.alike.get());
        return lost;
    }

    /// So it does by the offer that would be taken.
    bool cannot_win_by_offer(const CandidateName& next) const {
        if (told_by_rank(next)) return false;
        const std::optional<Offer> offer = best_offer(books_.catalog.offers(next.part_id), policy_);
        return offer && comes_to_more(*next.alike, *offer);
    }

    bool comes_to_more(const Alike& alike, const Offer& offer) const {
        return is_dearer(least_today(query_.job, query_.facts, offer, alike, books_, policy_));
    }

    Offer price_alone(const CandidateName& name) const {
        return offer_at(Money(*name.least_price, policy_.currency), policy_);
    }

    /// One that comes to this at the least ranks behind the options wanted.
    bool is_dearer(const CostOption& least) const {
        const Found& last = best_.back();
        if (last.without_total != !least.today) return false;
        const std::optional<Money>& sum = least.today ? least.today : least.so_far;
        return last.has_price && sum && last.sum && *sum > *last.sum;
    }

    /// What the stop rule must know of an option.
    struct Found {
        Verdict standing;
        bool without_total;
        std::optional<Money> sum;
        bool has_price;
        friend bool operator<(const Found& a, const Found& b) {
            const auto rank = [](const Found& f) {
                return std::tuple(f.standing, f.without_total, !f.has_price, f.sum ? f.sum->minor() : 0);
            };
            return rank(a) < rank(b);
        }
    };

    Selection& s_;
    MoreNames& more_;
    const Query& query_;
    const Books books_;
    const Policy& policy_;
    const KitShelf& shelf_;
    const SelectionScope& scope_;
    std::vector<Found> best_;  // ascending, `wanted_` at most
    std::set<const Alike*> lost_;
};

}  // namespace

void carry_the_best(Selection& s, std::unique_ptr<MoreNames> more, const Query& query, const Books& books,
                    const KitShelf& shelf, const SelectionScope& scope) {
    Contest(s, *more, query, books, shelf, scope).run();
}

}  // namespace endbell::inline select
