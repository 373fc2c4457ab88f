// SoundSettings.h — what a person has set for sound, kept between classes.
#pragma once

#include <QString>

class QSettings;

namespace brinebell {

class CueSpeaker;

struct SoundSettings {
    double volume = 1.0;  ///< 0 to 1
    bool quiet = false;
    QString device;       ///< id of an output; empty: the default one
    QString deviceName;   ///< as it was called when it was chosen, to name it while it is not there
    bool speaks = false;  ///< names after cues
    bool operator==(const SoundSettings&) const = default;
};

/// What is missing or out of range is read as its default.
SoundSettings readSoundSettings(const QSettings& from);

/// False when they could not be written: they then hold until the program ends.
bool writeSoundSettings(const SoundSettings& settings, QSettings& to);

void apply(const SoundSettings& settings, CueSpeaker& speaker);

}  // namespace brinebell
