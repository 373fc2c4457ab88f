// The listening test's ears and voice; `listen` starts it beside a private sound server.
//
//   cue-listen-helper cues [FOLDER]   plays every cue and measures what a recorder on standard input hears;
//                                     with FOLDER the recordings are left there as WAV files
//   cue-listen-helper unplug          expects the device to go as a cue sounds, and to come back
//   cue-listen-helper late            expects the server only when the script has read "start the server now"
//   cue-listen-helper chosen          chooses the output "hall", which is recorded, and expects it to go and come
//   cue-listen-helper levels          measures the volume, the floor of stop and quiet mode
//   cue-listen-helper words           hears a spoken name begin and be cut off, where this machine has a voice
//   cue-listen-helper frozen PID      stops and continues the server with that process id; ends with it
//   stopped
//
// Facts go to standard output, one per line; the exit status is the number of those that are wrong.
#include <fmt/format.h>
#include <signal.h>
#include <unistd.h>

#include <QCoreApplication>
#include <QEventLoop>
#include <QTimer>
#include <algorithm>
#include <cmath>
#include <functional>
#include <memory>
#include <string_view>

#include "app/sound/Capture.h"
#include "app/sound/ExpectedCues.h"
#include "app/sound/ToneMeasure.h"
#include "sound/CuePlayer.h"
#include "sound/SpokenNames.h"

namespace brinebell {

using namespace std::chrono_literals;
using std::chrono::milliseconds;
using std::chrono::steady_clock;

namespace {

constexpr std::size_t kMillisecond = 48;
constexpr double kHeard = 0.01;                  // share of full scale; the edge of a cue is past it within 2 ms
constexpr milliseconds kLongestLatency = 500ms;  // 12–30 ms is usual; a loaded machine that builds may take longer

int faults = 0;

/// A line on standard output, where the script waits for it.
void tell(const std::string& line) {
    fmt::print("{}\n", line);
    std::fflush(stdout);
}

void check(bool good, const std::string& fact) {
    tell((good ? "ok    " : "WRONG ") + fact);
    faults += good ? 0 : 1;
}

milliseconds since(steady_clock::time_point start) {
    return std::chrono::duration_cast<milliseconds>(steady_clock::now() - start);
}

/// Runs the event loop until `condition` holds; false if it never did.
bool waitUntil(const std::function<bool()>& condition, milliseconds limit) {
    const auto start = steady_clock::now();
    while (!condition()) {
        if (since(start) > limit) {
            return false;
        }
        QCoreApplication::processEvents(QEventLoop::AllEvents | QEventLoop::WaitForMoreEvents);
    }
    return true;
}

bool waitFor(const CuePlayer& player, SoundState::Kind kind, milliseconds limit) {
    return waitUntil([&] { return player.state().kind == kind; }, limit);
}

struct Heard {
    std::vector<std::int16_t> samples;
    std::vector<measure::Pulse> pulses;
    milliseconds latency{};
};

/// Asks for the cue, records for its length and the longest latency more.
Heard listenTo(CuePlayer& player, CueSound sound) {
    Capture& capture = Capture::fromStandardInput();
    const auto asked = steady_clock::now();
    player.play(sound);
    const std::size_t first = capture.indexAt(asked);
    const auto length = static_cast<std::size_t>((cueLength(sound) + kLongestLatency).count()) * kMillisecond;
    waitUntil([&] { return capture.count() >= first + length; }, cueLength(sound) + 10s);
    Heard heard{.samples = capture.slice(first, length), .pulses = {}, .latency = {}};
    heard.pulses = measure::findPulses(heard.samples, kHeard, 40 * kMillisecond);
    if (!heard.pulses.empty()) {
        const auto onset = capture.timeOf(first + heard.pulses[0].first);
        heard.latency = std::chrono::duration_cast<milliseconds>(onset - asked);
    }
    return heard;
}

void judgeRhythm(const ExpectedCue& cue, const Heard& heard) {
    double worst = 0;
    for (std::size_t i = 0; i < std::min(heard.pulses.size(), cue.pulseStarts.size()); ++i) {
        const auto start = static_cast<double>(heard.pulses[i].first - heard.pulses[0].first);
        worst = std::max(worst, std::abs(start - static_cast<double>(cue.pulseStarts[i])) / kMillisecond);
    }
    check(heard.pulses.size() == cue.pulseStarts.size() && worst <= 5,
          fmt::format("{}: {} of {} pulses, none more than {:.1f} ms off its beat", cue.name, heard.pulses.size(),
                      cue.pulseStarts.size(), worst));
}

void judgeTone(const ExpectedCue& cue, const Heard& heard) {
    // The middle of the first pulse, clear of both edges.
    const std::size_t steady = cue.pulseSamples - 2 * cue.edgeSamples;
    const measure::Samples middle =
        measure::Samples(heard.samples)
            .subspan(heard.pulses[0].first + cue.edgeSamples, steady / cue.wholePeriods * cue.wholePeriods);
    const double pitch = measure::strongestPitch(middle, 200, 4500);
    check(std::abs(pitch / cue.hertz - 1) < 0.005,
          fmt::format("{}: pitch {:.1f} Hz ({:.0f})", cue.name, pitch, cue.hertz));
    std::string partials;
    double worst = 0;
    for (int partial = 2; partial <= 4; ++partial) {
        const double ratio =
            measure::amplitudeAt(middle, partial * cue.hertz) / measure::amplitudeAt(middle, cue.hertz);
        worst = std::max(worst, std::abs(20 * std::log10(ratio) + 3.0 * (partial - 1)));
        partials += fmt::format(" {:.2f}", 20 * std::log10(ratio));
    }
    check(worst < 0.5, fmt::format("{}: partials 2 to 4 at{} dB", cue.name, partials));
    const double peak = measure::peakOf(heard.samples);
    check(peak > 0.6 && peak <= 0.71, fmt::format("{}: peak {:.3f} of full scale", cue.name, peak));
}

void listenToEveryCue(CuePlayer& player, const char* folder) {
    for (const ExpectedCue& cue : expectedCues()) {
        const Heard heard = listenTo(player, cue.sound);
        if (folder) {
            const std::string path = fmt::format("{}/{}.wav", folder, cue.name);
            check(writeWave(path, heard.samples), "written: " + path);
        }
        judgeRhythm(cue, heard);
        if (heard.pulses.empty()) {
            continue;
        }
        judgeTone(cue, heard);
        check(heard.latency <= kLongestLatency,
              fmt::format("{}: heard {} ms after it was asked for", cue.name, heard.latency.count()));
    }
}

void listenToQuietMode(CuePlayer& player) {
    player.setQuiet(true);
    const double due = measure::peakOf(listenTo(player, CueSound::Due).samples);
    check(due == 0, fmt::format("quiet: peak of due {:.3f}", due));
    const double stop = measure::peakOf(listenTo(player, CueSound::Stop).samples);
    check(stop > 0.05 && stop < 0.35, fmt::format("quiet: peak of stop {:.3f}", stop));
    player.setQuiet(false);
}

/// Were end not cut off, its pulses would cover some of stop's.
/// 0.7 of full scale is the peak at full volume; the floor of stop is a tenth, in quiet mode a quarter.
void hearLevels() {
    CuePlayer player;
    check(waitFor(player, SoundState::Kind::Ready, 10s), "the sound output is found");
    check(waitUntil([] { return Capture::fromStandardInput().isSteady(); }, 10s), "the recorder runs");
    struct Setting {
        double volume;
        bool quiet;
        CueSound sound;
        const char* words;
        double peak;
    };
    for (const Setting& set : {Setting{0.5, false, CueSound::Due, "half volume: peak of due", 0.35},
                               Setting{0.0, false, CueSound::Due, "no volume: peak of due", 0.0},
                               Setting{0.0, false, CueSound::Stop, "no volume: peak of stop", 0.07},
                               Setting{1.0, true, CueSound::End, "quiet: peak of end", 0.0},
                               Setting{1.0, true, CueSound::Stop, "quiet: peak of stop", 0.175}}) {
        player.setVolume(set.volume);
        player.setQuiet(set.quiet);
        const double peak = measure::peakOf(listenTo(player, set.sound).samples);
        check(std::abs(peak - set.peak) < 0.005, fmt::format("{} {:.3f} ({:.3f})", set.words, peak, set.peak));
    }
}

/// How many of the recorded milliseconds since `first` hold sound.
int soundingMilliseconds(std::size_t first) {
    const std::vector<std::int16_t> samples =
        Capture::fromStandardInput().slice(first, Capture::fromStandardInput().count() - first);
    int sounding = 0;
    for (std::size_t at = 0; at + kMillisecond <= samples.size(); at += kMillisecond) {
        sounding += measure::peakOf(measure::Samples(samples).subspan(at, kMillisecond)) > kHeard ? 1 : 0;
    }
    return sounding;
}

void hearWords() {
    const std::unique_ptr<SpokenNames> voice = makeSpokenNames();
    const QString whyNot = voice->whyNot();
    if (!whyNot.isEmpty()) {
        check(true, "no words here, and the program says so: " + whyNot.toStdString());
        return;
    }
    check(waitUntil([] { return Capture::fromStandardInput().isSteady(); }, 10s), "the recorder runs");
    std::size_t first = Capture::fromStandardInput().count();
    const auto asked = steady_clock::now();
    voice->say(QStringLiteral("Rest is over. Lift the jars of load one."), 1.0);
    const bool heard = waitUntil([&] { return soundingMilliseconds(first) > 20; }, 5s);
    check(heard, fmt::format("words begin {} ms after they were asked for", since(asked).count()));
    check(waitUntil([&] { return soundingMilliseconds(first) > 800; }, 6s), "they go on for the length of a sentence");
    waitUntil([] { return false; }, 4s);  // to the end of it
    first = Capture::fromStandardInput().count();
    voice->say(QStringLiteral("Rest is over. Lift the jars of load one."), 1.0);
    waitUntil([&] { return soundingMilliseconds(first) > 20; }, 5s);
    voice->beSilent();
    waitUntil([] { return false; }, 700ms);  // what the server holds already
    first = Capture::fromStandardInput().count();
    waitUntil([] { return false; }, 1s);
    check(soundingMilliseconds(first) < 20, "they can be cut off");
}

/// Only "hall" is recorded: what is heard was played there.
void followTheChosenOutput() {
    CuePlayer player;
    check(waitFor(player, SoundState::Kind::Ready, 10s), "the sound output is found");
    check(player.devices().size() == 2, fmt::format("{} outputs are listed", player.devices().size()));
    check(waitUntil([] { return Capture::fromStandardInput().isSteady(); }, 10s), "the recorder runs");
    check(listenTo(player, CueSound::Due).pulses.empty(), "nothing is heard on the output that is not chosen");
    player.setDevice(QStringLiteral("hall"));
    check(listenTo(player, CueSound::Due).pulses.size() == 3, "all of due is heard on the chosen output");
    tell("unplug now");
    const bool lossTold = waitFor(player, SoundState::Kind::Elsewhere, 10s);
    check(lossTold, "told: " + player.state().reason.toStdString());
    bool hasSounded = false;
    QObject::connect(&player, &CuePlayer::sounded, [&] { hasSounded = true; });
    player.play(CueSound::Due);
    check(waitUntil([&] { return hasSounded; }, 5s), "cues go on on the default output");
    tell("plug in now");
    check(waitFor(player, SoundState::Kind::Ready, 10s), "its return is told");
}

/// The program was there before the sound server.
void findALateServer() {
    CuePlayer player;
    const bool tooSoon = waitFor(player, SoundState::Kind::Ready, 2s);
    check(!tooSoon, "no output yet: " + player.state().reason.toStdString());
    tell("start the server now");
    const auto started = steady_clock::now();
    const bool isFound = waitFor(player, SoundState::Kind::Ready, 20s);
    check(isFound, fmt::format("the server is found {} ms after it was asked for", since(started).count()));
    bool hasSounded = false;
    QObject::connect(&player, &CuePlayer::sounded, [&] { hasSounded = true; });
    player.play(CueSound::Due);
    check(waitUntil([&] { return hasSounded; }, 5s), "a cue is handed over to it");
    tell("end the server now");
    check(waitFor(player, SoundState::Kind::NoDevice, 10s), "its end is told");
    tell("start the server now again");
    check(waitFor(player, SoundState::Kind::Ready, 20s), "its return is told");
    check(player.devices().size() == 1, fmt::format("{} output is listed", player.devices().size()));
}

void listenToAnInterruption(CuePlayer& player) {
    Capture& capture = Capture::fromStandardInput();
    const std::size_t before = capture.count();
    player.play(CueSound::End);
    waitUntil([&] { return measure::peakOf(capture.slice(before, capture.count())) > kHeard; }, 5s);
    const std::vector<measure::Pulse> pulses = listenTo(player, CueSound::Stop).pulses;
    // The first pulse may run into what was left of end; the nine after it stand alone.
    const std::vector<std::size_t>& expected = expectedCues().back().pulseStarts;
    bool onBeat = pulses.size() >= expected.size();
    for (std::size_t fromEnd = 1; onBeat && fromEnd < expected.size() - 1; ++fromEnd) {
        const std::size_t heard = pulses.back().first - pulses[pulses.size() - 1 - fromEnd].first;
        onBeat = heard == expected.back() - expected[expected.size() - 1 - fromEnd];
    }
    check(onBeat && pulses.size() <= expected.size() + 1,
          fmt::format("stop cuts off end: {} pulses, {}", pulses.size(), onBeat ? "on the beat" : "off the beat"));
}

void hearCues(const char* folder) {
    CuePlayer player;
    check(waitFor(player, SoundState::Kind::Ready, 10s), "the sound output is found");
    check(waitUntil([] { return Capture::fromStandardInput().isSteady(); }, 10s), "the recorder runs");
    if (faults == 0) {
        listenToEveryCue(player, folder);
        listenToQuietMode(player);
        listenToAnInterruption(player);
        check(player.state().kind == SoundState::Kind::Ready, "the sound output is still well");
    }
}

void surviveUnplugging() {
    CuePlayer player;
    check(waitFor(player, SoundState::Kind::Ready, 10s), "the sound output is found");
    player.play(CueSound::End);
    tell("unplug now");
    const bool lossTold = waitFor(player, SoundState::Kind::NoDevice, 10s);
    check(lossTold, "its loss is told: " + player.state().reason.toStdString());
    tell("plug in now");
    check(waitFor(player, SoundState::Kind::Ready, 10s), "its return is told");
    player.play(CueSound::Due);
    tell("listen now");
    check(!waitFor(player, SoundState::Kind::Fault, cueLength(CueSound::Due) + 1s), "nothing is wrong after that");
}

/// With the server stopped: play must return, the window's thread must run on, and the player must own up.
void surviveFreezing(pid_t server) {
    auto player = std::make_unique<CuePlayer>();
    check(waitFor(*player, SoundState::Kind::Ready, 10s), "the sound output is found");
    milliseconds worstGap{};
    auto lastBeat = steady_clock::now();
    QTimer beat;
    QObject::connect(&beat, &QTimer::timeout, [&] {
        worstGap = std::max(worstGap, since(lastBeat));
        lastBeat = steady_clock::now();
    });
    beat.start(10ms);
    ::kill(server, SIGSTOP);
    const auto asked = steady_clock::now();
    player->play(CueSound::Tick);
    check(since(asked) < 100ms, fmt::format("play returned after {} ms", since(asked).count()));
    const bool told = waitFor(*player, SoundState::Kind::Fault, 10s);
    check(told, fmt::format("told after {} ms: {}", since(asked).count(), player->state().reason.toStdString()));
    check(worstGap < 500ms, fmt::format("longest gap in this thread {} ms", worstGap.count()));
    ::kill(server, SIGCONT);
    player->play(CueSound::Due);
    check(waitFor(*player, SoundState::Kind::Ready, 10s), "all is well once the server has taken another cue");

    ::kill(server, SIGSTOP);
    player->play(CueSound::Stop);
    waitUntil([&, start = steady_clock::now()] { return since(start) > 200ms; }, 1s);
    const auto closing = steady_clock::now();
    player.reset();
    check(since(closing) < kCueShutdownWait + 500ms, fmt::format("closed after {} ms", since(closing).count()));
}

}  // namespace

}  // namespace brinebell

int main(int argc, char** argv) {
    using namespace brinebell;
    QCoreApplication application(argc, argv);
    QTimer wake;  // so that waiting for more events always ends
    wake.start(5ms);
    const std::string_view scene = argc > 1 ? argv[1] : "";
    if (scene == "cues") {
        hearCues(argc > 2 ? argv[2] : nullptr);
    } else if (scene == "unplug") {
        surviveUnplugging();
    } else if (scene == "late") {
        findALateServer();
    } else if (scene == "chosen") {
        followTheChosenOutput();
    } else if (scene == "levels") {
        hearLevels();
    } else if (scene == "words") {
        hearWords();
    } else if (scene == "frozen" && argc > 2) {
        surviveFreezing(static_cast<pid_t>(std::stol(argv[2])));
    } else {
        check(false, "usage: cue-listen-helper cues [FOLDER] | unplug | late | chosen | levels | words | frozen PID");
    }
    return faults;
}
