#include "review/AfterWords.h"

#include <QCoreApplication>

namespace brinebell {

namespace {

QString afterWord(const char* text) {
    return QCoreApplication::translate("AfterWords", text);
}

}  // namespace

QString placeName(JarsPlace place) {
    switch (place) {
        case JarsPlace::Refrigerated:
            return afterWord(QT_TRANSLATE_NOOP("AfterWords", "put into the refrigerator"));
        case JarsPlace::Frozen:
            return afterWord(QT_TRANSLATE_NOOP("AfterWords", "frozen"));
        case JarsPlace::Reprocessed:
            return afterWord(QT_TRANSLATE_NOOP("AfterWords", "processed again within 24 hours, full time, new lid"));
        case JarsPlace::Discarded:
            return afterWord(QT_TRANSLATE_NOOP("AfterWords", "thrown away"));
        case JarsPlace::Shown:
            return afterWord(QT_TRANSLATE_NOOP("AfterWords", "kept to be shown"));
        case JarsPlace::Eaten:
            return afterWord(QT_TRANSLATE_NOOP("AfterWords", "eaten"));
        case JarsPlace::TakenHome:
            return afterWord(QT_TRANSLATE_NOOP("AfterWords", "taken home"));
        case JarsPlace::TakenHomeUnchecked:
            return afterWord(QT_TRANSLATE_NOOP("AfterWords", "taken home before the seals were tested"));
    }
    return {};
}

QString figureName(ReportFigure figure) {
    switch (figure) {
        case ReportFigure::Attending:
            return afterWord(QT_TRANSLATE_NOOP("AfterWords", "People attending"));
        case ReportFigure::Newcomers:
            return afterWord(QT_TRANSLATE_NOOP("AfterWords", "Of them, new to canning"));
        case ReportFigure::TeacherMinutes:
            return afterWord(QT_TRANSLATE_NOOP("AfterWords", "Teacher's hours, with getting ready and clearing up"));
        case ReportFigure::VolunteerMinutes:
            return afterWord(QT_TRANSLATE_NOOP("AfterWords", "Volunteers' hours, all together"));
        case ReportFigure::Accidents:
            return afterWord(QT_TRANSLATE_NOOP("AfterWords", "Accidents"));
    }
    return {};
}

}  // namespace brinebell
