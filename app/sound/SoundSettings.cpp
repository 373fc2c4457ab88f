#include "sound/SoundSettings.h"

#include <QSettings>
#include <cmath>

#include "sound/CueSpeaker.h"

namespace brinebell {

namespace {

const QString kVolume = QStringLiteral("sound/volume_percent");
const QString kQuiet = QStringLiteral("sound/quiet");
const QString kDevice = QStringLiteral("sound/output");
const QString kDeviceName = QStringLiteral("sound/output_name");
const QString kSpeaks = QStringLiteral("sound/speak_names");

constexpr int kWhole = 100;  // percent

}  // namespace

SoundSettings readSoundSettings(const QSettings& from) {
    SoundSettings settings;
    bool isNumber = false;
    const int percent = from.value(kVolume, kWhole).toInt(&isNumber);
    if (isNumber && percent >= 0 && percent <= kWhole) {
        settings.volume = static_cast<double>(percent) / kWhole;
    }
    settings.quiet = from.value(kQuiet, settings.quiet).toBool();
    settings.device = from.value(kDevice).toString();
    settings.deviceName = from.value(kDeviceName).toString();
    settings.speaks = from.value(kSpeaks, settings.speaks).toBool();
    return settings;
}

bool writeSoundSettings(const SoundSettings& settings, QSettings& to) {
    to.setValue(kVolume, static_cast<int>(std::lround(settings.volume * kWhole)));
    to.setValue(kQuiet, settings.quiet);
    to.setValue(kDevice, settings.device);
    to.setValue(kDeviceName, settings.deviceName);
    to.setValue(kSpeaks, settings.speaks);
    to.sync();
    return to.status() == QSettings::NoError;
}

void apply(const SoundSettings& settings, CueSpeaker& speaker) {
    speaker.setVolume(settings.volume);
    speaker.setQuiet(settings.quiet);
    speaker.setDevice(settings.device);
}

}  // namespace brinebell
