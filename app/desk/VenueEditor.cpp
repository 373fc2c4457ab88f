#include "desk/VenueEditor.h"

#include <QDate>
#include <QLocale>
#include <algorithm>

#include "Choices.h"
#include "desk/DeskWords.h"
#include "kitchen/VenueWriter.h"
#include "quantity/ExactText.h"
#include "quantity/ReadQuantity.h"
#include "safety/BoilingPoint.h"
#include "safety/ProcessTables.h"

namespace brinebell {

namespace {

enum VenueSection { kKitchen, kStations, kCanners, kConfirmed };

// Ids of things inside one venue: canners and stations share them.
std::string freeIdIn(const Venue& venue, const std::string& stem) {
    for (int number = 1;; ++number) {
        const std::string id = stem + "-" + std::to_string(number);
        const auto isIt = [&](const auto& thing) { return thing.id == id; };
        if (std::none_of(venue.stations.begin(), venue.stations.end(), isIt) &&
            std::none_of(venue.canners.begin(), venue.canners.end(), isIt)) {
            return id;
        }
    }
}

template <class Thing>
void moveIn(std::vector<Thing>& things, int from, int to) {
    std::swap(things[static_cast<std::size_t>(from)], things[static_cast<std::size_t>(to)]);
}

template <class Thing>
void removeFrom(std::vector<Thing>& things, int at) {
    things.erase(things.begin() + at);
}

int jarsOf(const Canner& canner, JarSize size) {
    return capacityFor(canner, size);
}

void setJars(Canner& canner, JarSize size, int jars) {
    std::erase_if(canner.capacity, [&](const JarCapacity& row) { return row.jar == size; });
    if (jars > 0) {
        canner.capacity.push_back({size, jars});
        std::sort(canner.capacity.begin(), canner.capacity.end(),
                  [](const JarCapacity& a, const JarCapacity& b) { return a.jar < b.jar; });
    }
}

LineField::Check litresCheck() {
    return checkOf(readVolume, true);
}

}  // namespace

VenueEditor::VenueEditor(Library& library, QWidget* parent)
    : DocumentPageOf<Venue>(library, Library::Kind::Venue, tr("Kitchens"), parent, writeVenue) {
    begin();
}

bool VenueEditor::load(const std::string& id, QString& why) {
    auto draft = library().openVenue(id);
    if (!draft) {
        why = toQt(describe(draft.error().front()));
        return false;
    }
    m_history.open(std::move(draft->value));
    return true;
}

std::string VenueEditor::keep(Venue venue) {
    const auto saved = library().save(venue, OldFile::Keep);
    if (!saved) {
        tell(toQt(describe(saved.error())));
        return {};
    }
    return venue.id;
}

std::string VenueEditor::makeNew() {
    Venue venue;
    venue.name = tr("New kitchen").toStdString();
    venue.id = library().freeId(Library::Kind::Venue, venue.name);
    venue.readingDistance = readChoices().distance;
    venue.stations = {{"burner-1", tr("Burner").toStdString(), StationKind::Burner, HeatKind::None, std::nullopt}};
    return keep(std::move(venue));
}

std::string VenueEditor::makeCopy() {
    Venue venue = value();
    venue.name = tr("%1 (copy)").arg(toQt(venue.name)).toStdString();
    venue.id = library().freeId(Library::Kind::Venue, venue.name);
    return keep(std::move(venue));
}

std::vector<Error> VenueEditor::read(const WrittenFile& file) const {
    auto draft = draftOfVenue(file.toml, value().file);
    return draft ? std::move(draft->faults) : std::move(draft.error());
}

// What the altitude means, said in what everybody knows: where water boils, and one published time.
QString VenueEditor::standing() const {
    if (!value().altitude) {
        return tr("▲ Without an altitude no class can run here: every process time depends on it.");
    }
    const Length height = value().altitude->height;
    const auto boils = boilingPointAt(height);
    QString words = boils ? tr("Water boils at about %L1 °F (%L2 °C) here.")
                                .arg(boils->fahrenheit(), 0, 'f', 0)
                                .arg(boils->celsius(), 0, 'f', 1)
                          : QString();
    ProcessQuery query;
    query.product = "chile-salsa";
    query.altitude = height;
    if (const auto answer = ProcessTables::published().find(query)) {
        words += QLatin1Char(' ') + tr("Band of the tables: %1; pints of chile salsa, for one, are boiled %L2 min.")
                                        .arg(toQt(bandText(*answer)))
                                        .arg(timeToUse(*answer).count());
    } else {
        words += QStringLiteral(" ▲ ") + toQt(answer.error().message);
    }
    return words;
}

QStringList VenueEditor::sections() const {
    return {tr("Kitchen"), tr("Stations"), tr("Canners"), tr("Confirmed")};
}

bool VenueEditor::hasItems(int section) const {
    return section != kKitchen;
}

QString VenueEditor::keyOf(int section) const {
    static constexpr const char* kKeys[] = {"venue", "station", "canner", "confirmed"};
    return QLatin1String(kKeys[section]);
}

QStringList VenueEditor::itemsOf(int section) const {
    QStringList items;
    if (section == kStations) {
        for (const Station& station : value().stations) {
            items << toQt(station.name);
        }
    } else if (section == kCanners) {
        for (const Canner& canner : value().canners) {
            items << toQt(canner.name);
        }
    } else {
        for (const Confirmation& entry : value().confirmed) {
            items << toQt(entry.entry);
        }
    }
    return items;
}

void VenueEditor::addItem(int section) {
    edit(tr("Add"), {}, [&](Venue& venue) {
        if (section == kStations) {
            venue.stations.push_back({freeIdIn(venue, "station"),
                                      tr("New station").toStdString(),
                                      StationKind::Counter,
                                      HeatKind::None,
                                      {}});
        } else if (section == kCanners) {
            Canner canner;
            canner.id = freeIdIn(venue, "canner");
            canner.name = tr("New canner").toStdString();
            const auto burner = std::find_if(venue.stations.begin(), venue.stations.end(),
                                             [](const Station& s) { return s.kind == StationKind::Burner; });
            canner.burner = burner == venue.stations.end() ? std::string() : burner->id;
            canner.capacity = {{JarSize::Pint, 7}};
            venue.canners.push_back(std::move(canner));
        } else {
            venue.confirmed.push_back({{}, {}, QDate::currentDate().toString(Qt::ISODate).toStdString()});
        }
    });
}

void VenueEditor::removeItem(int section, int item) {
    edit(tr("Remove"), {}, [&](Venue& venue) {
        section == kStations  ? removeFrom(venue.stations, item)
        : section == kCanners ? removeFrom(venue.canners, item)
                              : removeFrom(venue.confirmed, item);
    });
}

void VenueEditor::moveItem(int section, int from, int to) {
    edit(tr("Move"), {}, [&](Venue& venue) {
        section == kStations  ? moveIn(venue.stations, from, to)
        : section == kCanners ? moveIn(venue.canners, from, to)
                              : moveIn(venue.confirmed, from, to);
    });
}

void VenueEditor::buildForm(int section, int item) {
    switch (section) {
        case kStations:
            return buildStation(item);
        case kCanners:
            return buildCanner(item);
        case kConfirmed:
            return buildConfirmed(item);
        default:
            return buildKitchen();
    }
}

void VenueEditor::buildKitchen() {
    const auto text = [this](const QString& label, const QString& path, std::string Venue::*member) {
        addLine(
            label, path, [this, member] { return toQt(value().*member); },
            setter(label, path, [member](Venue& v, const QString& t) { v.*member = t.toStdString(); }));
    };
    text(tr("Name of the kitchen"), QStringLiteral("venue.name"), &Venue::name);
    const QString altitude = QStringLiteral("venue.altitude");
    addLine(
        tr("Altitude"), altitude,
        [this] { return value().altitude ? toQt(exactText(value().altitude->height)) : QString(); },
        setter(tr("Altitude"), altitude,
               [](Venue& v, const QString& t) {
                   if (t.trimmed().isEmpty()) {
                       v.altitude.reset();
                   } else {
                       v.altitude = Altitude{readLength(t.toStdString()).value(),
                                             v.altitude ? v.altitude->howKnown : std::string()};
                   }
               }),
        checkOf(readLength, true))
        ->setHint(tr("With its unit: 4,200 ft or 1280 m."));
    const QString from = QStringLiteral("venue.altitude_from");
    addLine(
        tr("How the altitude is known"), from,
        [this] { return value().altitude ? toQt(value().altitude->howKnown) : QString(); },
        setter(tr("How the altitude is known"), from,
               [](Venue& v, const QString& t) {
                   if (v.altitude) {
                       v.altitude->howKnown = t.toStdString();
                   }
               }),
        [this](const QString& t) {
            return value().altitude || t.isEmpty() ? QString() : tr("the altitude comes first");
        })
        ->setHint(tr("A survey map, the county extension office. A guess sets a wrong process time."));
    const QString distance = QStringLiteral("venue.reading_distance");
    addLine(
        tr("Reading distance, from the counter to the screen"), distance,
        [this] { return toQt(exactText(value().readingDistance)); },
        setter(tr("Reading distance"), distance,
               [](Venue& v, const QString& t) { v.readingDistance = readLength(t.toStdString()).value(); }),
        checkOf(readLength))
        ->setHint(
            tr("It sets how large the board's letters are: 2.5 m or 8 ft. How large this screen is, is measured on "
               "the Prepare page."));
    const QString room = QStringLiteral("venue.room");
    addLine(
        tr("Room temperature"), room, [this] { return toQt(exactText(value().room)); },
        setter(tr("Room temperature"), room,
               [](Venue& v, const QString& t) { v.room = readTemperature(t.toStdString()).value(); }),
        checkOf(readTemperature))
        ->setHint(tr("For heating times that are worked out: 68 °F or 20 °C."));
}

void VenueEditor::buildStation(int item) {
    const auto at = static_cast<std::size_t>(item);
    const auto path = [item](const char* key) {
        return QStringLiteral("station[%1].%2").arg(item).arg(QLatin1String(key));
    };
    const auto station = [this, at]() -> Station {
        return at < value().stations.size() ? value().stations[at] : Station{};
    };
    const auto set = [this, at](const QString& label, const QString& where, auto change) {
        return setter(label, where, [at, change](Venue& v, const QString& t) { change(v.stations[at], t); });
    };
    addLine(
        tr("Name"), path("name"), [station] { return toQt(station().name); },
        set(tr("Name"), path("name"), [](Station& s, const QString& t) { s.name = t.toStdString(); }));
    addChoice(
        tr("What it is"), path("kind"), {tr("Burner"), tr("Oven"), tr("Sink"), tr("Board"), tr("Counter")},
        {QStringLiteral("burner"), QStringLiteral("oven"), QStringLiteral("sink"), QStringLiteral("board"),
         QStringLiteral("counter")},
        [station] { return toQt(toText(station().kind)); },
        set(tr("What it is"), path("kind"),
            [](Station& s, const QString& t) { s.kind = stationKindFromText(t.toStdString()).value(); }));
    addChoice(
        tr("Heat"), path("heat"), {tr("None, or not known"), tr("Gas"), tr("Electric"), tr("Induction")},
        {QStringLiteral("none"), QStringLiteral("gas"), QStringLiteral("electric"), QStringLiteral("induction")},
        [station] { return toQt(toText(station().heat)); },
        set(tr("Heat"), path("heat"),
            [](Station& s, const QString& t) { s.heat = heatKindFromText(t.toStdString()).value(); }));
    addLine(
        tr("Power"), path("power"),
        [station] { return station().power ? toQt(exactText(*station().power)) : QString(); },
        set(tr("Power"), path("power"),
            [](Station& s, const QString& t) {
                s.power = t.trimmed().isEmpty() ? std::nullopt : std::optional(readPower(t.toStdString()).value());
            }),
        checkOf(readPower, true))
        ->setHint(tr("15,000 Btu/h or 2500 W, from the plate of the range; empty where it is not known."));
}

void VenueEditor::buildCanner(int item) {
    const auto at = static_cast<std::size_t>(item);
    const auto path = [item](const char* key) {
        return QStringLiteral("canner[%1].%2").arg(item).arg(QLatin1String(key));
    };
    const auto canner = [this, at]() -> Canner { return at < value().canners.size() ? value().canners[at] : Canner{}; };
    const auto set = [this, at](const QString& label, const QString& where, auto change) {
        return setter(label, where, [at, change](Venue& v, const QString& t) { change(v.canners[at], t); });
    };
    addLine(
        tr("Name"), path("name"), [canner] { return toQt(canner().name); },
        set(tr("Name"), path("name"), [](Canner& c, const QString& t) { c.name = t.toStdString(); }));
    addChoice(
        tr("Method"), path("method"),
        {tr("Boiling water"), tr("Atmospheric steam"), tr("Pressure, dial gauge"), tr("Pressure, weighted gauge")},
        {QStringLiteral("boiling-water"), QStringLiteral("atmospheric-steam"), QStringLiteral("pressure-dial"),
         QStringLiteral("pressure-weighted")},
        [canner] { return toQt(toText(canner().method)); },
        set(tr("Method"), path("method"),
            [](Canner& c, const QString& t) { c.method = methodFromText(t.toStdString()).value(); }));
    QStringList names;
    QStringList ids;
    for (const Station& station : value().stations) {
        if (station.kind == StationKind::Burner) {
            names << plainText(toQt(station.name), false);
            ids << toQt(station.id);
        }
    }
    addChoice(
        tr("Burner that it stands on"), path("burner"), names, ids, [canner] { return toQt(canner().burner); },
        set(tr("Burner"), path("burner"), [](Canner& c, const QString& t) { c.burner = t.toStdString(); }));
    addLine(
        tr("Water in it before the jars go in"), path("water"),
        [canner] {
            return canner().water ? toQt(exactText(Volume::fromMillilitres(canner().water->water.grams()))) : QString();
        },
        set(tr("Water"), path("water"),
            [](Canner& c, const QString& t) {
                if (t.trimmed().isEmpty()) {
                    c.water.reset();
                    return;
                }
                CannerWater water = c.water.value_or(CannerWater{});
                water.water = Mass::fromGrams(readVolume(t.toStdString()).value().millilitres());
                c.water = water;
            }),
        litresCheck())
        ->setHint(tr("12 L or 3 gal. Heating times that are left empty are worked out from it."));
    addCheck(
        tr("The &lid is on while it heats"), path("lid"),
        [canner] { return canner().water ? canner().water->lid : true; },
        [this, at](bool on) {
            edit(tr("Lid"), {}, [&](Venue& v) {
                if (v.canners[at].water) {
                    v.canners[at].water->lid = on;
                }
            });
        });
    const auto heating = [&](const QString& label, const char* key, std::optional<ThreePoint> Canner::*member) {
        addLine(
            label, path(key),
            [canner, member] { return canner().*member ? DeskWords::guess(*(canner().*member)) : QString(); },
            set(label, path(key),
                [member](Canner& c, const QString& t) {
                    c.*member = t.trimmed().isEmpty() ? std::nullopt
                                                      : std::optional(DeskWords::readGuess(t.toStdString()).value());
                }),
            DeskWords::guessCheck(true))
            ->setHint(tr("Short, likely, long: 17 min, 21 min, 27 min; or empty."));
    };
    heating(tr("Heating to the preheat temperature"), "heat_to_preheat", &Canner::heatToPreheat);
    heating(tr("Heating to the boil, loaded"), "heat_to_boil", &Canner::heatToBoil);
    buildCapacity(item);
}

void VenueEditor::buildCapacity(int item) {
    const auto at = static_cast<std::size_t>(item);
    addHeading(tr("Jars in one load, on the rack"));
    const QStringList keys = DeskWords::jarKeys();
    constexpr int kMostJars = 40;
    for (const QString& key : keys) {
        const JarSize size = jarSizeFromText(key.toStdString()).value();
        // The reader's fault of the whole list is shown at the first of its fields.
        const QString path = key == keys.front() ? QStringLiteral("canner[%1].capacity").arg(item)
                                                 : QStringLiteral("canner[%1].jars.%2").arg(item).arg(key);
        addLine(
            DeskWords::jar(size), path,
            [this, at, size] {
                const int jars = at < value().canners.size() ? jarsOf(value().canners[at], size) : 0;
                return jars == 0 ? QString() : QString::number(jars);
            },
            setter(tr("Jars in one load"), path,
                   [at, size](Venue& v, const QString& t) { setJars(v.canners[at], size, t.trimmed().toInt()); }),
            DeskWords::numberCheck(1, kMostJars, true));
    }
}

void VenueEditor::buildConfirmed(int item) {
    const auto at = static_cast<std::size_t>(item);
    const auto path = [item](const char* key) {
        return QStringLiteral("confirmed[%1].%2").arg(item).arg(QLatin1String(key));
    };
    const auto text = [&](const QString& label, const char* key, std::string Confirmation::*member) {
        return addLine(
            label, path(key),
            [this, at, member] {
                return at < value().confirmed.size() ? toQt(value().confirmed[at].*member) : QString();
            },
            setter(label, path(key),
                   [at, member](Venue& v, const QString& t) { v.confirmed[at].*member = t.toStdString(); }));
    };
    QStringList words;
    QStringList keys;
    for (const ProcessTables::Entry& entry : ProcessTables::published().entries()) {
        if (entry.confidence == Confidence::Memory && entry.status == ProcessTables::Status::Current) {
            words << toQt(entry.title) + QStringLiteral(" (") + toQt(entry.id) + QLatin1Char(')');
            keys << toQt(entry.id);
        }
    }
    addChoice(
        tr("Entry of the tables that rests on memory"), path("entry"), words, keys,
        [this, at] { return at < value().confirmed.size() ? toQt(value().confirmed[at].entry) : QString(); },
        setter(tr("Entry"), path("entry"),
               [at](Venue& v, const QString& t) { v.confirmed[at].entry = t.toStdString(); }));
    text(tr("Who held it against the printed page"), "by", &Confirmation::by);
    text(tr("On which day"), "on", &Confirmation::on)->setHint(tr("Year, month, day: 2026-08-01."));
}

}  // namespace brinebell
