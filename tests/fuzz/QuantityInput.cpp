// Every reader of a quantity in turn; what is read is printed, and what is printed is read again.
#include "fuzz/Harness.h"
#include "quantity/Amount.h"
#include "quantity/ReadQuantity.h"

void brinebell::fuzz::tryInput(std::string_view bytes) {
    if (const auto length = readLength(bytes)) {
        // Rounded up, a length at the limit of 100 km is past it.
        const auto again = readLength(printFeet(*length));
        mustHold(again ? *again >= *length : again.error().code == ErrorCode::OutOfRange,
                 "an altitude is never printed lower than it was read");
        printMetres(*length);
        printInches(*length);
    }
    if (const auto duration = readDuration(bytes)) {
        const auto again = readDuration(printDuration(*duration));
        mustHold(again && *again == *duration, "a duration is read back as it was printed");
    }
    if (const auto amount = readAmount(bytes)) {
        mustHold(!print(*amount).empty(), "an amount is printed");
        amount->mass();
        amount->volume();
        for (const int factor : {0, 1, 2, 3, 1000}) {
            (void)scaled(*amount, Fraction(factor, 1));
        }
    }
    (void)readMass(bytes);
    (void)readVolume(bytes);
    (void)readTemperature(bytes);
    (void)readPressure(bytes);
    (void)readPower(bytes);
}
