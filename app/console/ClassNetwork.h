// ClassNetwork.h — from a class file to its network, with every fault on the way.
#pragma once

#include <string>

#include "base/Result.h"
#include "plan/Network.h"

namespace brinebell {

FileResult<Network> readNetwork(const std::string& classFile);

/// `fault`, with the file it is about where it names none.
Error inFile(Error fault, const std::string& file);

}  // namespace brinebell
