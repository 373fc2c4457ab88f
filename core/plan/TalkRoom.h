// TalkRoom.h — whether the free talk of a class found a wait to be said in.
#pragma once

#include "plan/RunSheet.h"

namespace brinebell {

/// Whether the sheet has a place for talk `talk`: a wait, or the activity that it belongs to.
bool hasRoom(const Network& network, const RunSheet& sheet, std::size_t talk);

/// How many points that must be said have none.
int mustSayWithoutRoom(const Network& network, const RunSheet& sheet);

}  // namespace brinebell
