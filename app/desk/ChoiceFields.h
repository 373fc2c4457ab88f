// ChoiceFields.h — the fields of what a person chooses for the whole window: at the first start and in the settings.
#pragma once

#include <QCoreApplication>

#include "desk/Fields.h"
#include "quantity/Quantities.h"

namespace brinebell {

/// Each with its choices in it; the key of a choice is its word in Choices.h, and what is empty follows the desktop.
struct ChoiceFields {
    Q_DECLARE_TR_FUNCTIONS(ChoiceFields)

public:
    static ChoiceField* language();
    static ChoiceField* units();
    static ChoiceField* clock();
    static ChoiceField* decimal();
    /// Read by distanceIn(), with its fault at the field.
    static LineField* distance();
    static Result<Length> distanceIn(const QString& text);
};

}  // namespace brinebell
