// AfterWords.h — words for what is told after a class: where jars went, the figures of the report.
#pragma once

#include <QString>

#include "session/AfterClass.h"

namespace brinebell {

QString placeName(JarsPlace place);       ///< "put into the refrigerator"
QString figureName(ReportFigure figure);  ///< "People attending"

}  // namespace brinebell
