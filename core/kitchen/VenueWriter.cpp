#include "kitchen/VenueWriter.h"

#include <fmt/format.h>

#include "quantity/ExactText.h"

namespace brinebell {
namespace {

void writeStation(DocumentWriter& out, const Station& station) {
    out.element("station");
    out.text("id", station.id);
    out.text("name", station.name);
    out.text("kind", toText(station.kind));
    if (station.heat != HeatKind::None) {
        out.text("heat", toText(station.heat));
    }
    if (station.power) {
        out.text("power", exactText(*station.power));
    }
}

void writeCanner(DocumentWriter& out, const Canner& canner) {
    out.element("canner");
    out.text("id", canner.id);
    out.text("name", canner.name);
    out.text("method", toText(canner.method));
    out.text("burner", canner.burner);
    if (canner.heatToPreheat) {
        out.guess("heat_to_preheat", *canner.heatToPreheat);
    }
    if (canner.heatToBoil) {
        out.guess("heat_to_boil", *canner.heatToBoil);
    }
    if (canner.water) {
        // The reader takes a litre of water for a kilogram.
        out.text("water", exactText(Volume::fromMillilitres(canner.water->water.grams())));
        if (canner.water->start != CannerWater{}.start) {
            out.text("water_start", exactText(canner.water->start));
        }
        out.booleanUnless("lid", canner.water->lid, CannerWater{}.lid);
    }
    std::vector<InlineRow> rows;
    for (const JarCapacity& row : canner.capacity) {
        rows.push_back({{"jar", tomlText(toText(row.jar))}, {"jars", fmt::format("{}", row.jars)}});
    }
    out.rows("capacity", rows);
}

}  // namespace

void writeConfirmations(DocumentWriter& out, const std::vector<Confirmation>& confirmed) {
    for (const Confirmation& entry : confirmed) {
        out.element("confirmed");
        out.text("entry", entry.entry);
        out.text("by", entry.by);
        out.text("on", entry.on);
    }
}

WrittenFile writeVenue(const Venue& venue) {
    DocumentWriter out("A kitchen, written by Brinebell. Every key: DEVELOPERS.md, Files people write.");
    out.table("venue");
    out.text("id", venue.id);
    out.text("name", venue.name);
    if (venue.altitude) {
        out.text("altitude", exactText(venue.altitude->height));
        out.text("altitude_from", venue.altitude->howKnown);
    }
    out.text("reading_distance", exactText(venue.readingDistance));
    if (venue.room != Venue{}.room) {
        out.text("room", exactText(venue.room));
    }
    writeConfirmations(out, venue.confirmed);
    for (const Station& station : venue.stations) {
        writeStation(out, station);
    }
    for (const Canner& canner : venue.canners) {
        writeCanner(out, canner);
    }
    return std::move(out).take();
}

}  // namespace brinebell
