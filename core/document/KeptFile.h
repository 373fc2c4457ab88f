// KeptFile.h — files of a person's own work: written whole, readable by the owner only, with the old file kept beside.
#pragma once

#include <string>
#include <string_view>

#include "base/Result.h"

namespace brinebell {

enum class OldFile {
    Keep,  ///< as it stood, under keptName(path)
    Drop,
};

/// Where the old file goes: "salsa.toml" as "salsa.toml~", as text editors name it.
std::string keptName(const std::string& path);

/// Writes `text` as writeFileWhole() does (new file, flushed, renamed over the old one, folder flushed), for the owner
/// only. With Keep the old file is kept first, by a name of its own for the same bytes, so that there is no moment
/// without either. A symbolic link is refused: what it points at may be outside the folder. Errors: Io, Refused.
Result<void> writeKept(const std::string& path, std::string_view text, OldFile old);

/// `folder`/`id`.toml. Error: InvalidInput, for an `id` that is no id (readIdentifier()); so no id leads out of the
/// folder.
Result<std::string> fileOfId(const std::string& folder, std::string_view id);

}  // namespace brinebell
