// What a run leaves for the next one.
#pragma once

namespace cli {

/// From now on finished hand drawings are kept in the user's cache folder and taken from there.
void keep_drawings();

} // namespace cli
