#include <fmt/format.h>

#include <nlohmann/json.hpp>

#include "console/FaultJson.h"
#include "console/Verbs.h"
#include "logbook/TextSheet.h"
#include "quantity/ReadQuantity.h"
#include "safety/ProcessTables.h"

namespace brinebell {

namespace {

using Json = nlohmann::ordered_json;

constexpr double kKilopascalsPerPsi = 6.894757293168;  // NIST Special Publication 811 (2008), B.8

// Every value that cannot be read is a fault of its own, so that one try shows all of them.
template <class Value>
void take(Result<Value> read, const char* option, Value& into, std::vector<Error>& faults) {
    if (read) {
        into = *read;
    } else {
        Error fault = read.error();
        fault.message = fmt::format("{}: {}", option, fault.message);
        faults.push_back(std::move(fault));
    }
}

FileResult<ProcessQuery> readQuery(const ProcessTimeOptions& options) {
    ProcessQuery query;
    std::vector<Error> faults;
    query.product = options.product;
    query.confirmedBy = options.confirmedBy;
    take(packFromText(options.pack), "--pack", query.pack, faults);
    take(jarSizeFromText(options.jar), "--jar", query.jar, faults);
    take(readLength(options.altitude), "--altitude", query.altitude, faults);
    take(methodFromText(options.method), "--method", query.method, faults);
    if (!faults.empty()) {
        return tl::unexpected(std::move(faults));
    }
    return query;
}

template <class Value>
Json orNull(const std::optional<Value>& value) {
    return value ? Json(*value) : Json(nullptr);
}

Json choiceJson(const ProcessAnswer& answer) {
    Json choice{{"process_min", timeToUse(answer).count()}, {"table_process_min", answer.time.count()}};
    if (answer.gaugePsi) {
        choice["gauge_psi"] = *answer.gaugePsi;
        choice["gauge_pressure_kpa"] = *answer.gaugePsi * kKilopascalsPerPsi;
    }
    return choice;
}

Json answerJson(const ProcessQuery& query, const std::vector<ProcessAnswer>& choices) {
    const ProcessAnswer& answer = choices.front();
    Json document = choiceJson(answer);
    document.update({{"product", query.product},
                     {"product_title", answer.productTitle},
                     {"pack", toText(query.pack)},
                     {"jar", toText(query.jar)},
                     {"method", toText(query.method)},
                     {"altitude_m", query.altitude.metres()},
                     {"altitude_ft", query.altitude.feet()},
                     {"band", {{"from_ft", answer.bandFromFeet}, {"to_ft", orNull(answer.bandToFeet)}}},
                     {"entry", answer.entryId},
                     {"source", answer.source},
                     {"note", answer.note},
                     {"confidence", answer.confidence == Confidence::Seen ? "seen" : "memory"},
                     {"confirmed_by", query.confirmedBy.empty() ? Json(nullptr) : Json(query.confirmedBy)},
                     {"sterile_jars_required", answer.sterileJarsRequired},
                     {"headspace", printInches(answer.headspace)},
                     {"headspace_m", answer.headspace.metres()},
                     {"headspace_note", answer.headspaceNote},
                     {"acidify", answer.acidify},
                     {"cautions", answer.cautions}});
    document["longer_published_min"] = answer.longerPublished ? Json(answer.longerPublished->count()) : Json(nullptr);
    Json list = Json::array();
    for (const ProcessAnswer& choice : choices) {
        list.push_back(choiceJson(choice));
    }
    document["choices"] = std::move(list);
    return document;
}

std::string timeText(const ProcessAnswer& answer) {
    const auto minutes = timeToUse(answer).count();
    return answer.gaugePsi ? fmt::format("{} min at {} psi gauge", minutes, *answer.gaugePsi)
                           : fmt::format("{} min at a full rolling boil", minutes);
}

std::string answerText(const ProcessQuery& query, const std::vector<ProcessAnswer>& choices) {
    const ProcessAnswer& answer = choices.front();
    TextSheet sheet(14);
    sheet.line("process time", timeText(answer));
    for (std::size_t i = 1; i < choices.size(); ++i) {
        sheet.line("or", timeText(choices[i]));
    }
    if (answer.longerPublished) {
        sheet.line("table", fmt::format("{} min in the table itself; above 8,000 ft {} min is published as well, and a "
                                        "class uses the longer of the two",
                                        answer.time.count(), answer.longerPublished->count()));
    }
    sheet.line("product", fmt::format("{}, {} pack, {} jars, {}", answer.productTitle, toText(query.pack),
                                      toText(query.jar), toText(query.method)));
    sheet.line("altitude", fmt::format("{}, in the band {}", printFeet(query.altitude), bandText(answer)));
    sheet.line("headspace",
               printInches(answer.headspace) + (answer.headspaceNote.empty() ? "" : "; " + answer.headspaceNote));
    if (!answer.acidify.empty()) {
        sheet.line("acid", answer.acidify);
    }
    if (answer.sterileJarsRequired) {
        sheet.line("jars", "must be sterile before they are filled");
    }
    for (const std::string& caution : answer.cautions) {
        sheet.line("caution", caution);
    }
    if (!answer.note.empty()) {
        sheet.line("note", answer.note);
    }
    sheet.line("source", answer.source);
    sheet.line("entry", answer.confidence == Confidence::Seen
                            ? answer.entryId
                            : fmt::format("{}, from memory, confirmed by {}", answer.entryId, query.confirmedBy));
    return sheet.text();
}

}  // namespace

Reply processTime(const ProcessTimeOptions& options) {
    const FileResult<ProcessQuery> query = readQuery(options);
    if (!query) {
        return failure(query.error());
    }
    const ProcessTables& tables = ProcessTables::published();
    const Result<ProcessAnswer> answer = tables.find(*query);
    if (!answer) {
        return failure({answer.error()});
    }
    // The answer comes first, then whatever other pressures the table allows.
    std::vector<ProcessAnswer> choices{*answer};
    for (ProcessAnswer& other : tables.findAll(*query).value_or(std::vector<ProcessAnswer>{})) {
        if (other.gaugePsi != answer->gaugePsi || other.time != answer->time) {
            choices.push_back(std::move(other));
        }
    }
    Reply reply;
    reply.text = answerText(*query, choices);
    reply.json = dump(answerJson(*query, choices));
    return reply;
}

}  // namespace brinebell
