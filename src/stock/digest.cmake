# Writes the digest of all files below ROOT/src as a C++ source.
file(GLOB_RECURSE files RELATIVE ${ROOT} ${ROOT}/src/*.cpp ${ROOT}/src/*.hpp)
list(SORT files)
set(all "${VERSION}")
foreach(name ${files})
  file(SHA256 ${ROOT}/${name} one)
  string(APPEND all "\n${name} ${one}")
endforeach()
string(SHA256 digest "${all}")
file(CONFIGURE OUTPUT ${OUT} CONTENT [[
#include "stock/shelf.hpp"

namespace stock {
std::string_view program_digest() { return "@digest@"; }
} // namespace stock
]] @ONLY)
