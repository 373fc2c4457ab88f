// RememberingSpeaker.h — a speaker that only remembers what it was asked.
#pragma once

#include <vector>

#include "sound/CueSpeaker.h"

namespace brinebell {

class RememberingSpeaker final : public CueSpeaker {
public:
    void play(CueSound sound) override { played.push_back(sound); }
    void setVolume(double share) override { volume = share; }
    void setQuiet(bool on) override { quiet = on; }
    void setDevice(const QString& id) override { device = id; }
    void lookAgain() override { ++looks; }
    SoundState state() const override { return told; }
    std::vector<SoundDevice> devices() const override { return there; }

    void tell(SoundState::Kind kind) {
        told = {kind, QStringLiteral("the device is gone")};
        emit stateChanged(told);
    }
    void plugIn(const std::vector<SoundDevice>& devices) {
        there = devices;
        emit devicesChanged();
    }

    std::vector<CueSound> played;
    double volume = -1;
    bool quiet = false;
    QString device;
    int looks = 0;
    std::vector<SoundDevice> there;
    SoundState told{SoundState::Kind::Ready, {}};
};

}  // namespace brinebell
