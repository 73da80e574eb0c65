#include "output/finish_pdf.hpp"

#include "output/xmp.hpp"

#define POINTERHOLDER_TRANSITION 4 // none of the deprecated holders
#include <qpdf/Buffer.hh>
#include <qpdf/QPDF.hh>
#include <qpdf/QPDFWriter.hh>

#include <memory>

namespace output {

namespace {

void describe(QPDF& file, const page::Book& book) {
    auto root = file.getRoot();
    if (!book.language.empty())
        root.replaceKey("/Lang", QPDFObjectHandle::newUnicodeString(book.language));
    auto preferences = QPDFObjectHandle::newDictionary();
    preferences.replaceKey("/DisplayDocTitle", QPDFObjectHandle::newBool(true));
    root.replaceKey("/ViewerPreferences", preferences);
    auto metadata = QPDFObjectHandle::newStream(&file, xmp(book));
    metadata.getDict().replaceKey("/Type", QPDFObjectHandle::newName("/Metadata"));
    metadata.getDict().replaceKey("/Subtype", QPDFObjectHandle::newName("/XML"));
    root.replaceKey("/Metadata", metadata);
}

} // namespace

std::string finish_pdf(const std::string& drawn, const page::Book& book) {
    QPDF file;
    file.processMemoryFile("drawn.pdf", drawn.data(), drawn.size());
    describe(file, book);
    QPDFWriter writer(file);
    writer.setOutputMemory();
    writer.setDeterministicID(true);
    writer.setMinimumPDFVersion("1.7");
    writer.setDecodeLevel(qpdf_dl_none);
    writer.setObjectStreamMode(qpdf_o_generate);
    writer.write();
    const std::unique_ptr<Buffer> buffer(writer.getBuffer());
    return {reinterpret_cast<const char*>(buffer->getBuffer()), buffer->getSize()};
}

} // namespace output
