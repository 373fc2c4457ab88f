#include "fuzz/Harness.h"
#include "kitchen/VenueFile.h"

void brinebell::fuzz::tryInput(std::string_view bytes) {
    const auto venue = readVenue(bytes, "folder/input.toml");
    mustHold(venue || !venue.error().empty(), "a venue is read or refused with a reason");
}
