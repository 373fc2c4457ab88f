#include "quantity/Quantities.h"

#include <cmath>

namespace brinebell {

Length Length::fromMetres(double metres) {
    return Length(std::llround(metres * 1e9));
}

}  // namespace brinebell
