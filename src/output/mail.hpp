// A mail as a file, ready to be opened in a mail program and sent by hand.
#pragma once

#include <string>
#include <string_view>

namespace output {

/// One mailbox. `name` may be any text, `address` is a plain addr-spec.
struct Mailbox {
    std::string name, address;
};

struct Mail {
    Mailbox from; ///< left out when it has no address: the mail program knows its own
    Mailbox to;   ///< the only addressee there is room for
    std::string subject;
    std::string date; ///< of the lesson, ISO 8601
    std::string language;
    std::string text;      ///< UTF-8, lines end with '\n'
    std::string file_name; ///< of the attachment, ASCII
    std::string pdf;
};

/// The draft: RFC 5322 headers, RFC 2047 encoded words for what is not ASCII, RFC 2046
/// multipart/mixed with the text as quoted-printable and the PDF as base64 (RFC 2045). Lines end
/// with CR LF and have at most 76 characters but for headers that cannot be folded. The same mail
/// gives the same bytes. `X-Unsent: 1` makes mail programs open it as a draft.
std::string draft(const Mail& mail);

/// 16 hexadecimal digits that stand for these bytes (FNV-1a, 64 bits): for telling files apart, not
/// for keeping secrets.
std::string mark_of(std::string_view bytes);

} // namespace output
