// VenueWriter.h — a venue as the TOML text that VenueFile.h reads back as the same venue.
//
// Also one with faults: the reader then finds them, and draftOfVenue() gives back what could be read. Comments of a
// file that a person wrote are not in the value and so are not written.
#pragma once

#include "document/DocumentWriter.h"
#include "document/WholeFile.h"
#include "kitchen/VenueFile.h"

namespace brinebell {

WrittenFile writeVenue(const Venue& venue);

/// The [[confirmed]] tables of a venue or a class.
void writeConfirmations(DocumentWriter& out, const std::vector<Confirmation>& confirmed);

/// The venue with its faults, for whoever mends it.
FileResult<Draft<Venue>> draftOfVenue(std::string_view toml, const std::string& name);

}  // namespace brinebell
