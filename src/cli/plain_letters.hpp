// Letters of the alphabet for those with marks on them: names that mean the same, however typed.
#pragma once

#include <string>
#include <string_view>

namespace cli {

/// "Fruehling" of "Frühling", however the mark is stored: as one sign or after its letter (NFC and
/// NFD). What is not known stays.
std::string plain_letters(std::string_view text);

} // namespace cli
