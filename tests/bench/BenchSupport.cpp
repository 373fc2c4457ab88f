#include "BenchSupport.h"

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <iostream>

#include "base/Result.h"
#include "plan/ClassFile.h"
#include "plan/Unfold.h"
#include "session/Rehearsal.h"
#include "session/Session.h"

namespace brinebell::bench {

namespace {

const std::string kRecipes = BRINEBELL_RECIPES;

class Forgetful final : public EventStore {
public:
    Result<void> append(std::span<const Event>) override { return {}; }
};

[[noreturn]] void stop(const Error& fault) {
    std::cerr << "brinebell-bench: " << describe(fault) << '\n';
    std::exit(1);
}

Network readDemo() {
    const FileResult<ClassPlan> plan = readClassFile(kRecipes + "/classes/tamarack-salsa-and-beans.toml");
    if (!plan) {
        stop(plan.error().front());
    }
    Result<Network> network = unfold(*plan);
    if (!network) {
        stop(network.error());
    }
    return std::move(*network);
}

std::vector<Event> rehearseDemo() {
    Forgetful store;
    const RehearsalOptions options;
    Result<std::vector<Event>> events = rehearse(demoNetwork(), store, options);
    if (!events) {
        stop(events.error());
    }
    return std::move(*events);
}

}  // namespace

std::vector<std::string> shippedFiles(const std::string& folder) {
    std::vector<std::string> files;
    for (const auto& entry : std::filesystem::directory_iterator(kRecipes + "/" + folder)) {
        if (entry.path().extension() == ".toml") {
            files.push_back(entry.path().string());
        }
    }
    std::sort(files.begin(), files.end());
    return files;
}

const Network& demoNetwork() {
    static const Network network = readDemo();
    return network;
}

const std::vector<Event>& demoEvents() {
    static const std::vector<Event> events = rehearseDemo();
    return events;
}

std::vector<Event> longSession(std::size_t count) {
    const Network& network = demoNetwork();
    std::vector<Event> events = demoEvents();
    const auto looked =
        std::find_if(events.begin(), events.end(), [](const Event& e) { return e.kind == EventKind::PulseDone; });
    if (looked == events.end()) {
        stop({ErrorCode::NotFound, "the demonstration class has no tray to look at", {}});
    }
    events.erase(looked + 1, events.end());
    State state = *replay(network, events);
    Command look, note;
    look.kind = CommandKind::Pulse;
    look.activity = events.back().activity;
    note.kind = CommandKind::AddNote;
    note.text = "the second tray browns faster than the first";
    Stamp now = events.back().at;
    while (events.size() < count) {
        now.utc += Seconds(1);
        now.boot += Seconds(1);
        const Decision decision = decide(network, state, events.size() % 2 == 0 ? look : note, now, Cause::Rehearsal);
        if (const auto* refused = std::get_if<Refusal>(&decision)) {
            stop({ErrorCode::Refused, describe(*refused, network), {}});
        }
        for (const Event& event : std::get<std::vector<Event>>(decision)) {
            state = *apply(network, std::move(state), event);
            events.push_back(event);
        }
    }
    return events;
}

}  // namespace brinebell::bench
