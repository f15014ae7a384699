#include "engine/explain/findings.hpp"

#include <cctype>

#include "engine/explain/reasons.hpp"
#include "engine/explain/values.hpp"

namespace endbell::inline explain {

namespace {

std::string part_of(const char* name, const Datum& fact) {
    return fact.known() ? std::string(name) + " " + say(fact) : std::string();
}

}  // namespace

std::string sentence(const Finding& finding) {
    std::string text(sentence_for(finding.rule, finding.reason));
    std::string facts;
    for (const std::string& piece :
         {part_of("wanted", finding.wanted), part_of("offered", finding.offered),
          part_of("limit", finding.limit), part_of("comes to", finding.computed)}) {
        if (!piece.empty()) facts += (facts.empty() ? "" : ", ") + piece;
    }
    if (!facts.empty()) {
        facts.front() = static_cast<char>(std::toupper(static_cast<unsigned char>(facts.front())));
        text += " " + facts + ".";
    }
    for (const Remedy& remedy : finding.remedies) text += " Cure: " + say(remedy) + ".";
    return text;
}

std::string say(const Remedy& remedy) {
    std::string text(word(remedy.cure));
    if (remedy.count > 1) text = std::to_string(remedy.count) + " x " + text;
    if (remedy.power) text += " of " + say(Value(*remedy.power)) + " or more";
    if (remedy.primary) text += ", primary " + say(Value(*remedy.primary));
    if (remedy.coil) text += ", coil " + say(Value(*remedy.coil));
    if (remedy.poles > 1) text += " with " + std::to_string(remedy.poles) + " poles";
    if (remedy.from) text += " from " + say(Value(*remedy.from));
    if (remedy.to) text += " to " + say(Value(*remedy.to));
    if (remedy.capacitor && remedy.compressor_capacitor) {
        text += ", dual: compressor " + say(Value(*remedy.compressor_capacitor)) + ", fan " +
                say(Value(*remedy.capacitor)) + ",";
    } else if (remedy.capacitor) {
        text += " " + say(Value(*remedy.capacitor));
    }
    if (remedy.amps) text += " " + say(Value(*remedy.amps)) + (remedy.coil ? " or more" : "");
    if (remedy.capacitor_volts) text += " " + say(Value(*remedy.capacitor_volts)) + " or more";
    if (remedy.mount) text += " to " + std::string(word(*remedy.mount));
    if (remedy.connector_from && remedy.connector_to)
        text += " " + *remedy.connector_from + " to " + *remedy.connector_to;
    if (remedy.program) text += " of program " + *remedy.program;
    return text;
}

}  // namespace endbell::inline explain
