// ClassFile.h — reads a class from its TOML file, and the venue and recipes it names. Format: DEVELOPERS.md.
//
// Venue and recipes are named by file, relative to the class file and without leaving the folder above the class
// file's own: a class lies in recipes/classes/, names "../venues/x.toml" and "../y.toml". Faults in those files are
// reported under their own names. Refused with the reason: a venue without altitude; a jar larger than the recipe or
// table lists; more jars than the batch yields (the high end); a jar size the canner does not take; a helper count
// over 3; a from-memory process time that no [[confirmed]] of venue or class covers; an altitude outside the table; one
// recipe as two dishes; a stage made ahead that follows a step which is not; an opening and closing that fill the
// slot; a point that must be said and may be dropped. Limits: 12 dishes, 60 talk points, a slot of 5 minutes to 12
// hours.
#pragma once

#include <string>
#include <string_view>

#include "base/Result.h"
#include "plan/ClassPlan.h"
#include "recipe/RecipeFile.h"

namespace brinebell {

FileResult<ClassPlan> readClass(std::string_view toml, const std::string& name, const FileFetcher& fetch);
FileResult<ClassPlan> readClassFile(const std::string& path);

}  // namespace brinebell
