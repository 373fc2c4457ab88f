// PublishedText.h — resources/process-times.toml as it was when the program was built (see EmbedText.cmake).
#pragma once

#include <string>

namespace brinebell {

std::string publishedProcessTimes();

}  // namespace brinebell
