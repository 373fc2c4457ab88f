#include "desk/ChoiceFields.h"

#include "Languages.h"
#include "kitchen/VenueWriter.h"
#include "quantity/ReadQuantity.h"

namespace brinebell {

ChoiceField* ChoiceFields::language() {
    auto* field = new ChoiceField(tr("&Language"), QStringLiteral("choice.language"));
    QStringList names{tr("As the desktop has it")};
    for (const QString& code : languageCodes()) {
        names << nativeName(code);
    }
    field->setChoices(names, QStringList{QString()} + languageCodes());
    return field;
}

ChoiceField* ChoiceFields::units() {
    auto* field = new ChoiceField(tr("&Units"), QStringLiteral("choice.units"));
    field->setChoices({tr("As the desktop has it"), tr("Pounds, cups, feet, °F"), tr("Grams, litres, metres, °C")},
                      {QString(), QStringLiteral("us"), QStringLiteral("metric")});
    return field;
}

ChoiceField* ChoiceFields::clock() {
    auto* field = new ChoiceField(tr("&Clock"), QStringLiteral("choice.clock"));
    field->setChoices({tr("As the desktop has it"), tr("7:12 pm"), tr("19:12")},
                      {QString(), QStringLiteral("12"), QStringLiteral("24")});
    return field;
}

ChoiceField* ChoiceFields::decimal() {
    auto* field = new ChoiceField(tr("&Decimals"), QStringLiteral("choice.decimal"));
    field->setChoices({tr("As the language has it"), QStringLiteral("2.5"), QStringLiteral("2,5")},
                      {QString(), QStringLiteral("point"), QStringLiteral("comma")});
    return field;
}

LineField* ChoiceFields::distance() {
    auto* field =
        new LineField(tr("&Reading distance, from the counter to the screen"), QStringLiteral("choice.distance"));
    field->setCheck([](const QString& text) {
        const auto read = distanceIn(text);
        return read ? QString() : toQt(read.error().message);
    });
    field->setHint(tr("With its unit: 8 ft or 2.5 m. It sets how large the board's letters are."));
    return field;
}

// The reader of venues has the say about what a distance may be; there is no second rule here.
Result<Length> ChoiceFields::distanceIn(const QString& text) {
    const auto length = readLength(text.toStdString());
    if (!length) {
        return length;
    }
    Venue venue;
    venue.id = venue.name = "any";
    venue.readingDistance = *length;
    const WrittenFile written = writeVenue(venue);
    const auto draft = draftOfVenue(written.toml, "any");
    const std::vector<Error>& faults = draft ? draft->faults : draft.error();
    for (const Error& fault : faults) {
        if (written.fieldAt(fault.where.line) == "venue.reading_distance") {
            const std::size_t key = fault.message.find(": ");  // the file's word for the field
            return fail(fault.code, key == std::string::npos ? fault.message : fault.message.substr(key + 2));
        }
    }
    return length;
}

}  // namespace brinebell
