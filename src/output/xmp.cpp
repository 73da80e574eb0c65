#include "output/xmp.hpp"

namespace output {

std::string xml_escaped(std::string_view text) {
    std::string out;
    for (const char c : text)
        switch (c) {
        case '&':
            out += "&amp;";
            break;
        case '<':
            out += "&lt;";
            break;
        case '>':
            out += "&gt;";
            break;
        case '"':
            out += "&quot;";
            break;
        default:
            if (static_cast<unsigned char>(c) >= 0x20 || c == '\n' || c == '\t') out += c;
        }
    return out;
}

namespace {

std::string alternative(const char* name, const std::string& value) {
    if (value.empty()) return {};
    const std::string tag(name);
    return "   <" + tag + "><rdf:Alt><rdf:li xml:lang=\"x-default\">" + xml_escaped(value) +
           "</rdf:li></rdf:Alt></" + tag + ">\n";
}

std::string list(const char* name, const char* kind, const std::string& value) {
    if (value.empty()) return {};
    const std::string tag(name), box(kind);
    return "   <" + tag + "><" + box + "><rdf:li>" + xml_escaped(value) + "</rdf:li></" + box +
           "></" + tag + ">\n";
}

std::string plain(const char* name, const std::string& value) {
    if (value.empty()) return {};
    const std::string tag(name);
    return "   <" + tag + ">" + xml_escaped(value) + "</" + tag + ">\n";
}

} // namespace

std::string xmp(const page::Book& book) {
    return "<?xpacket begin=\"\xEF\xBB\xBF\" id=\"W5M0MpCehiHzreSzNTczkc9d\"?>\n"
           "<x:xmpmeta xmlns:x=\"adobe:ns:meta/\">\n"
           " <rdf:RDF xmlns:rdf=\"http://www.w3.org/1999/02/22-rdf-syntax-ns#\">\n"
           "  <rdf:Description rdf:about=\"\"\n"
           "    xmlns:dc=\"http://purl.org/dc/elements/1.1/\"\n"
           "    xmlns:pdf=\"http://ns.adobe.com/pdf/1.3/\"\n"
           "    xmlns:xmp=\"http://ns.adobe.com/xap/1.0/\">\n"
           "   <dc:format>application/pdf</dc:format>\n" +
           alternative("dc:title", book.title) + alternative("dc:description", book.subject) +
           list("dc:creator", "rdf:Seq", book.author) +
           list("dc:language", "rdf:Bag", book.language) + plain("xmp:CreateDate", book.created) +
           plain("xmp:CreatorTool", producer) + plain("pdf:Producer", producer) +
           "  </rdf:Description>\n </rdf:RDF>\n</x:xmpmeta>\n<?xpacket end=\"r\"?>";
}

} // namespace output
