// What Cairo 1.16 cannot write: language, alternative text, XMP, artifacts. Internal to output.
#pragma once

#include "output/pdf.hpp"

#include <string>

namespace output {

/// Completes the PDF that Cairo drew from `book`.
std::string finish_pdf(const std::string& drawn, const page::Book& book, const PdfWishes& wishes);

} // namespace output
