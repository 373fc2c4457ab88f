// ClassWriter.h — a class as the TOML text that ClassFile.h reads back as the same class.
//
// Venue and recipes are named by file, as they were read (Venue::file, Recipe::file), relative to the class file.
// Comments of a file that a person wrote are not in the value and so are not written.
#pragma once

#include "document/DocumentWriter.h"
#include "document/WholeFile.h"
#include "plan/ClassFile.h"

namespace brinebell {

/// `plan.file` is where the class will lie. `offset` is that of the start's text from UTC, as a wall clock at the venue
/// shows it (whole minutes, less than a day); the moment is the same whatever it is. Error: Refused, where the venue or
/// a recipe lies outside the folder above the class file's own.
Result<WrittenFile> writeClass(const ClassPlan& plan, std::chrono::minutes offset = {});

/// The class with its faults, for whoever mends it; a dish whose recipe, batch or jar cannot be read is left out.
FileResult<Draft<ClassPlan>> draftOfClass(std::string_view toml, const std::string& name, const FileFetcher& fetch);

}  // namespace brinebell
