#include "sound/SoundLine.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <array>
#include <utility>

namespace brinebell {

namespace {

constexpr std::array<const char*, kAllCueSounds.size()> kSoundWords{"tick", "soon", "due", "end", "stop"};

constexpr std::array kKindWords{
    std::pair{SoundState::Kind::Ready, "ready"}, std::pair{SoundState::Kind::Elsewhere, "elsewhere"},
    std::pair{SoundState::Kind::NoDevice, "no-device"}, std::pair{SoundState::Kind::Fault, "fault"}};

QString wordOf(CueSound sound) {
    return QLatin1String(kSoundWords.at(static_cast<std::size_t>(sound)));
}

std::optional<CueSound> soundOf(const QJsonValue& word) {
    for (const CueSound sound : kAllCueSounds) {
        if (word.toString() == wordOf(sound)) {
            return sound;
        }
    }
    return std::nullopt;
}

QByteArray lineOf(const QJsonObject& object) {
    return QJsonDocument(object).toJson(QJsonDocument::Compact) + '\n';
}

QJsonObject objectOf(const SoundReport& report) {
    QJsonObject object;
    for (const auto& [kind, word] : kKindWords) {
        if (kind == report.kind) {
            object[QLatin1String("found")] = QLatin1String(word);
        }
    }
    QJsonArray devices;
    for (const SoundDevice& device : report.devices) {
        devices.append(QJsonObject{{QLatin1String("id"), device.id},
                                   {QLatin1String("name"), device.name},
                                   {QLatin1String("default"), device.isDefault}});
    }
    object[QLatin1String("devices")] = devices;
    return object;
}

std::optional<SoundReport> reportOf(const QJsonObject& object) {
    SoundReport report;
    const QString found = object[QLatin1String("found")].toString();
    bool isKnown = false;
    for (const auto& [kind, word] : kKindWords) {
        if (found == QLatin1String(word)) {
            report.kind = kind;
            isKnown = true;
        }
    }
    for (const QJsonValue& value : object[QLatin1String("devices")].toArray()) {
        report.devices.push_back({value[QLatin1String("id")].toString(), value[QLatin1String("name")].toString(),
                                  value[QLatin1String("default")].toBool()});
    }
    return isKnown ? std::optional(report) : std::nullopt;
}

}  // namespace

QByteArray toLine(const SoundOrder& order) {
    if (const auto* prefer = std::get_if<PreferDevice>(&order)) {
        return lineOf({{QLatin1String("device"), prefer->id}});
    }
    const CueRequest& request = std::get<CueRequest>(order);
    const std::chrono::nanoseconds asked = request.asked.time_since_epoch();
    return lineOf({{QLatin1String("play"), wordOf(request.sound)},
                   {QLatin1String("level"), request.level},
                   {QLatin1String("asked_ns"), static_cast<qint64>(asked.count())}});
}

QByteArray toLine(const SoundNews& news) {
    if (const auto* report = std::get_if<SoundReport>(&news)) {
        return lineOf(objectOf(*report));
    }
    const CueSounded& sounded = std::get<CueSounded>(news);
    return lineOf({{QLatin1String("sounded"), wordOf(sounded.sound)},
                   {QLatin1String("after_ns"), static_cast<qint64>(sounded.after.count())}});
}

std::optional<SoundOrder> orderFromLine(const QByteArray& line) {
    const QJsonObject object = QJsonDocument::fromJson(line).object();
    if (object.contains(QLatin1String("device"))) {
        return PreferDevice{object[QLatin1String("device")].toString()};
    }
    const std::optional<CueSound> sound = soundOf(object[QLatin1String("play")]);
    const double level = object[QLatin1String("level")].toDouble();
    if (!sound || level <= 0) {
        return std::nullopt;
    }
    const std::chrono::nanoseconds asked(object[QLatin1String("asked_ns")].toInteger());
    return CueRequest{.sound = *sound, .level = level, .asked = std::chrono::steady_clock::time_point(asked)};
}

std::optional<SoundNews> newsFromLine(const QByteArray& line) {
    const QJsonObject object = QJsonDocument::fromJson(line).object();
    if (object.contains(QLatin1String("found"))) {
        const std::optional<SoundReport> report = reportOf(object);
        return report ? std::optional<SoundNews>(*report) : std::nullopt;
    }
    const std::optional<CueSound> sound = soundOf(object[QLatin1String("sounded")]);
    if (!sound) {
        return std::nullopt;
    }
    return CueSounded{*sound, std::chrono::nanoseconds(object[QLatin1String("after_ns")].toInteger())};
}

}  // namespace brinebell
