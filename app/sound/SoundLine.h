// SoundLine.h — what the window and the sound process say to each other: one JSON object in a line each.
//
// To the sound process, on its standard input:
//   {"device":"ID"}                                       the output to prefer; empty: the default one
//   {"play":"due","level":0.7,"asked_ns":123}             asked_ns: steady clock, which both processes share
// From it, on its standard output:
//   {"found":"ready","devices":[{"id":…,"name":…,"default":true}]}   at least once a second
//   {"sounded":"due","after_ns":123}                      the first samples of a cue have been handed over
// A line that cannot be read is passed over: the two programs are built together.
#pragma once

#include <QByteArray>
#include <QString>
#include <chrono>
#include <optional>
#include <variant>
#include <vector>

#include "sound/CueMailbox.h"
#include "sound/CueSpeaker.h"

namespace brinebell {

struct PreferDevice {
    QString id;
    bool operator==(const PreferDevice&) const = default;
};

using SoundOrder = std::variant<PreferDevice, CueRequest>;

/// What the sound process found. Words are made from it by the window's side.
struct SoundReport {
    SoundState::Kind kind = SoundState::Kind::NoDevice;
    std::vector<SoundDevice> devices;
    bool operator==(const SoundReport&) const = default;
};

struct CueSounded {
    CueSound sound = CueSound::Tick;
    std::chrono::nanoseconds after{};  ///< from the request to the first samples handed to the sound server
    bool operator==(const CueSounded&) const = default;
};

using SoundNews = std::variant<SoundReport, CueSounded>;

/// Each ends with the end of the line.
QByteArray toLine(const SoundOrder& order);
QByteArray toLine(const SoundNews& news);

std::optional<SoundOrder> orderFromLine(const QByteArray& line);
std::optional<SoundNews> newsFromLine(const QByteArray& line);

}  // namespace brinebell
