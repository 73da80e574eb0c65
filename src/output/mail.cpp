#include "output/mail.hpp"

#include "output/mail_coding.hpp"

#include <array>
#include <charconv>
#include <chrono>
#include <cstdint>

namespace output {

namespace {

/// "To: name" and, on the same line or the next one, "<address>".
std::string mailbox_line(const std::string& field, const Mailbox& box) {
    std::string line = field + ": ";
    if (box.name.empty()) return line + box.address + "\r\n";
    line += header_phrase(box.name, line.size());
    const std::size_t start = line.rfind('\n');
    const std::size_t column = line.size() - (start == std::string::npos ? 0 : start + 1);
    line += column + box.address.size() + 3 > longest_mail_line ? "\r\n " : " ";
    return line + "<" + box.address + ">\r\n";
}

/// RFC 5322, 3.3. The lesson's day at noon: no clock reaches a file.
std::string date_line(const std::string& iso) {
    constexpr std::array days{"Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"};
    constexpr std::array months{"Jan", "Feb", "Mar", "Apr", "May", "Jun",
                                "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"};
    int year = 0;
    unsigned month = 0, day = 0;
    std::from_chars(iso.data(), iso.data() + 4, year);
    std::from_chars(iso.data() + 5, iso.data() + 7, month);
    std::from_chars(iso.data() + 8, iso.data() + 10, day);
    const std::chrono::year_month_day date{std::chrono::year(year), std::chrono::month(month),
                                           std::chrono::day(day)};
    const std::chrono::weekday weekday{std::chrono::sys_days(date)};
    const std::string two = iso.substr(8, 2);
    return std::string("Date: ") + days[weekday.c_encoding()] + ", " + two + " " +
           months[month - 1] + " " + iso.substr(0, 4) + " 12:00:00 +0000\r\n";
}

std::string headers(const Mail& mail, const std::string& mark) {
    std::string out;
    if (!mail.from.address.empty()) out += mailbox_line("From", mail.from);
    out += mailbox_line("To", mail.to);
    out += "Subject: " + header_text(mail.subject, 9) + "\r\n";
    out += date_line(mail.date);
    out += "Message-ID: <" + mark + "@lessonleaf.invalid>\r\n";
    out += "X-Unsent: 1\r\n";
    out += "Content-Language: " + mail.language + "\r\n";
    out += "MIME-Version: 1.0\r\n";
    return out;
}

} // namespace

std::string mark_of(std::string_view bytes) {
    std::uint64_t mark = 14695981039346656037U;
    for (const char c : bytes)
        mark = (mark ^ static_cast<unsigned char>(c)) * 1099511628211U;
    std::array<char, 16> buffer{};
    const auto end = std::to_chars(buffer.data(), buffer.data() + buffer.size(), mark, 16).ptr;
    std::string out(buffer.data(), end);
    return std::string(16 - out.size(), '0') + out;
}

std::string draft(const Mail& mail) {
    const std::string mark = mark_of(mail.to.address + "\n" + mail.subject + "\n" + mail.text +
                                     "\n" + mail.file_name + "\n" + mail.pdf);
    // "=_" stands in no quoted-printable and no base64 text (RFC 2045, 6.7).
    const std::string boundary = "=_" + mark;
    const std::string file = "\"" + mail.file_name + "\"\r\n";
    std::string out = headers(mail, mark);
    out += "Content-Type: multipart/mixed; boundary=\"" + boundary + "\"\r\n\r\n";
    out += "--" + boundary + "\r\n";
    out += "Content-Type: text/plain; charset=utf-8\r\n";
    out += "Content-Transfer-Encoding: quoted-printable\r\n\r\n";
    out += quoted_printable(mail.text);
    out += "--" + boundary + "\r\n";
    out += "Content-Type: application/pdf;\r\n name=" + file;
    out += "Content-Transfer-Encoding: base64\r\n";
    out += "Content-Disposition: attachment;\r\n filename=" + file + "\r\n";
    out += base64_lines(mail.pdf);
    out += "--" + boundary + "--\r\n";
    return out;
}

} // namespace output
