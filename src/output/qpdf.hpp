// qpdf without its deprecated holders. Internal to output.
#pragma once

#define POINTERHOLDER_TRANSITION 4
#include <qpdf/JSON.hh> // whole, before others keep vectors of it: clang

#include <qpdf/Buffer.hh>
#include <qpdf/QPDF.hh>
#include <qpdf/QPDFEmbeddedFileDocumentHelper.hh>
#include <qpdf/QPDFPageDocumentHelper.hh>
#include <qpdf/QPDFWriter.hh>

namespace output {

/// Where a book's note lies: a page-piece dictionary of the catalogue (ISO 32000-1, 14.5), which
/// readers keep and never show.
inline constexpr const char* note_key = "/Lessonleaf";

} // namespace output
