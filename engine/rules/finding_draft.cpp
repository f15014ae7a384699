#include "engine/rules/finding_draft.hpp"

namespace endbell::inline rules {

Remedy remedy(Cure cure) {
    Remedy r;
    r.cure = cure;
    return r;
}

FindingDraft::FindingDraft(std::string_view rule, std::string_view source, Datum wanted, Datum offered) {
    finding_.rule = rule;
    finding_.source = source;
    finding_.wanted = std::move(wanted);
    finding_.offered = std::move(offered);
}

FindingDraft& FindingDraft::limit(const Limits& limits, const LimitId& id, Value worked_out) {
    const Limit& row = limits.row(id);
    finding_.limit = {std::move(worked_out), row.set_by.empty() ? Origin::catalog : Origin::shop};
    finding_.limit_id = row.id;
    finding_.source = row.source;
    return *this;
}

FindingDraft& FindingDraft::own_limit(Value bound) {
    finding_.limit = {std::move(bound), Origin::catalog};
    return *this;
}

FindingDraft& FindingDraft::computed(Value value) {
    finding_.computed = {std::move(value), Origin::catalog};
    return *this;
}

FindingDraft& FindingDraft::from(std::string_view source) {
    finding_.source = source;
    return *this;
}

Finding FindingDraft::fits(Reason reason) {
    Finding f = std::move(finding_);
    f.verdict = Verdict::fits;
    f.reason = reason;
    return f;
}

Finding FindingDraft::caution(Reason reason) {
    Finding f = fits(reason);
    f.caution = true;
    return f;
}

Finding FindingDraft::changes(Reason reason, std::vector<Remedy> remedies, bool caution) {
    Finding f = std::move(finding_);
    f.verdict = Verdict::fits_with_changes;
    f.reason = reason;
    f.remedies = std::move(remedies);
    f.caution = caution;
    return f;
}

Finding FindingDraft::ask(Reason reason, std::vector<std::string> asks) {
    Finding f = std::move(finding_);
    f.verdict = Verdict::not_shown;
    f.reason = reason;
    f.asks = std::move(asks);
    return f;
}

Finding FindingDraft::fails(Reason reason) {
    Finding f = std::move(finding_);
    f.verdict = Verdict::does_not_fit;
    f.reason = reason;
    return f;
}

Finding FindingDraft::not_stated(std::string job_key) {
    Finding f = caution(Reason::not_stated);
    f.asks.push_back(std::move(job_key));
    return f;
}

Finding not_concerned(std::string_view rule) {
    Finding f;  // made where it goes: a third of all findings are of this kind
    f.rule = rule;
    f.reason = Reason::not_concerned;
    return f;
}

}  // namespace endbell::inline rules
