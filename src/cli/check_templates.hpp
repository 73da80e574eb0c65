// A folder of templates that replaces less than its owner thinks.
#pragma once

#include "diag/finding.hpp"

#include <filesystem>

namespace cli {

/// Reports a folder that is not there or holds nothing that is read, and warns of files in it that
/// are called almost like a template.
void check_templates(const std::filesystem::path& folder, diag::Findings& findings);

} // namespace cli
