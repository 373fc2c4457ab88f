// Schema.h — what the logbook's file looks like, version by version, and how an older one is brought up.
//
// A version is a step: SQL that turns the file of the version before into its own. The number of steps is the
// newest version; it stands in the file's user_version, and kApplicationId in its application_id. Never
// change a step that has been released, only add one.
#pragma once

#include <cstdint>
#include <span>
#include <string>

#include "base/Result.h"

namespace SQLite {
class Database;
}

namespace brinebell {

inline constexpr std::int32_t kApplicationId = 0x4272'626C;  ///< "Brbl"

using SchemaStep = const char*;

/// Every step there is, oldest first.
std::span<const SchemaStep> schemaSteps();

/// The version of an open file: 0 for a new, empty one. Changes nothing. Errors: InvalidInput (another
/// program's database), OutOfRange (newer than `newest`). Throws SQLite::Exception.
Result<int> schemaVersion(SQLite::Database& database, int newest);

/// Takes the steps that the file lacks, all in one transaction. An older file is first copied beside
/// itself, as "<path>.version-<n>" ("….version-<n>.2" and on when that name is taken); the copy goes again
/// when a step fails. Errors: those of schemaVersion, Io (the copy), Conflict (a live session runs in the
/// file). Throws SQLite::Exception, with the file as it was.
Result<void> bringUpToDate(SQLite::Database& database, const std::string& path, std::span<const SchemaStep> steps);

}  // namespace brinebell
