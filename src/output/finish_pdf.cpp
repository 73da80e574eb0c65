#include "output/finish_pdf.hpp"

#include "output/pack.hpp"
#include "output/path_form.hpp"
#include "output/pdf.hpp"
#include "output/qpdf.hpp"
#include "output/tag_tree.hpp"
#include "output/xmp.hpp"

#include <cairo.h>
#include <libdeflate.h>
#include <zlib.h>

#include <memory>

namespace output {

namespace {

/// "2026-05-14" as PDF writes it (ISO 32000-1, 7.9.4); Cairo 1.16 leaves the "D:" out.
std::string date(const std::string& iso) {
    std::string out = "D:";
    for (const char c : iso.substr(0, 10))
        if (c >= '0' && c <= '9') out += c;
    return out.size() == 10 ? out : "D:19700101";
}

void describe(QPDF& file, const page::Book& book, const std::string& note) {
    auto root = file.getRoot();
    if (!book.language.empty())
        root.replaceKey("/Lang", QPDFObjectHandle::newUnicodeString(book.language));
    auto preferences = QPDFObjectHandle::newDictionary();
    preferences.replaceKey("/DisplayDocTitle", QPDFObjectHandle::newBool(true));
    root.replaceKey("/ViewerPreferences", preferences);
    auto info = file.getTrailer().getKey("/Info");
    info.replaceKey("/Producer", QPDFObjectHandle::newString(producer));
    info.replaceKey("/CreationDate", QPDFObjectHandle::newString(date(book.created)));
    auto metadata = QPDFObjectHandle::newStream(&file, xmp(book));
    metadata.getDict().replaceKey("/Type", QPDFObjectHandle::newName("/Metadata"));
    metadata.getDict().replaceKey("/Subtype", QPDFObjectHandle::newName("/XML"));
    root.replaceKey("/Metadata", metadata);
    if (note.empty()) return;
    auto ours = QPDFObjectHandle::newDictionary();
    ours.replaceKey("/LastModified", QPDFObjectHandle::newString(date(book.created)));
    ours.replaceKey("/Private", QPDFObjectHandle::newString(note));
    auto piece = QPDFObjectHandle::newDictionary();
    piece.replaceKey(note_key, ours);
    root.replaceKey("/PieceInfo", piece);
}

/// What Cairo has stored is packed; a stream of any other kind (a photograph) stays as it is.
void pack_streams(QPDF& file) {
    for (auto& object : file.getAllObjects()) {
        if (!object.isStream()) continue;
        auto about = object.getDict();
        auto filter = about.getKey("/Filter");
        if (!filter.isNull() && !filter.isNameAndEquals("/FlateDecode")) continue;
        if (about.hasKey("/DecodeParms") || about.getKey("/Type").isNameAndEquals("/Metadata"))
            continue;
        const auto data = object.getStreamData(qpdf_dl_generalized);
        object.replaceStreamData(
            packed({reinterpret_cast<const char*>(data->getBuffer()), data->getSize()}),
            QPDFObjectHandle::newName("/FlateDecode"), QPDFObjectHandle::newNull());
    }
}

/// The file's data and its relation to the pages: what they were made from (ISO 32000-2, 7.11.3).
void attach(QPDF& file, const Attachment& attachment) {
    auto stream = QPDFEFStreamObjectHelper::createEFStream(file, attachment.bytes);
    stream.setSubtype(attachment.type);
    auto spec = QPDFFileSpecObjectHelper::createFileSpec(file, attachment.name, stream);
    spec.getObjectHandle().replaceKey("/AFRelationship", QPDFObjectHandle::newName("/Source"));
    QPDFEmbeddedFileDocumentHelper(file).replaceEmbeddedFile(attachment.name, spec);
    auto root = file.getRoot();
    if (!root.hasKey("/AF")) root.replaceKey("/AF", QPDFObjectHandle::newArray());
    root.getKey("/AF").appendItem(spec.getObjectHandle());
}

/// AES-256 (ISO 32000-2, 7.6.4.4). Who has the password may read, print and let it be read out.
void lock(QPDFWriter& writer, const std::string& password) {
    writer.setR6EncryptionParameters(password.c_str(), password.c_str(), true, true, true, true,
                                     true, true, qpdf_r3p_full, true);
}

} // namespace

std::string finish_pdf(const std::string& drawn, const page::Book& book, const PdfWishes& wishes) {
    QPDF file;
    file.processMemoryFile("drawn.pdf", drawn.data(), drawn.size());
    describe(file, book, wishes.note);
    complete_tags(file, book);
    for (const auto& attachment : wishes.attachments)
        attach(file, attachment);
    open_forms(file);
    pack_streams(file);
    QPDFWriter writer(file);
    writer.setOutputMemory();
    if (wishes.password.empty())
        writer.setStaticID(true); // a blank that is filled in when all is written, see seal.hpp
    else
        lock(writer, wishes.password);
    writer.setMinimumPDFVersion("1.7");
    writer.setDecodeLevel(qpdf_dl_none);
    writer.setObjectStreamMode(qpdf_o_generate);
    writer.write();
    const std::unique_ptr<Buffer> buffer(writer.getBuffer());
    return {reinterpret_cast<const char*>(buffer->getBuffer()), buffer->getSize()};
}

std::string library_versions() {
    return std::string("cairo ") + cairo_version_string() + ", qpdf " + QPDF::QPDFVersion() +
           ", zlib " + zlibVersion() + ", libdeflate " + LIBDEFLATE_VERSION_STRING;
}

} // namespace output
