#include "cli/leaving.hpp"

#include "cli/enclosed.hpp"
#include "cli/target.hpp"
#include "output/pdf.hpp"
#include "output/plain_text.hpp"

#include <iostream>

namespace cli {

namespace {

constexpr std::size_t shortest_password = 8, longest_password = 127; // bytes; ISO 32000-2, 7.6.4.3

} // namespace

bool Leaving::is_text(const std::string& target) const {
    return as == "text" || (as.empty() && ending_of(target) == ".txt");
}

output::Digest Leaving::marked(output::Digest inputs) const {
    if (attach) inputs.low ^= 1;
    return inputs;
}

bool known_ending(const Leaving& leaving, const std::string& target) {
    const std::string ending = ending_of(target);
    const bool letters = ending.find_first_of("abcdefghijklmnopqrstuvwxyz") != std::string::npos;
    if (!ends_as_input(target) && (!letters || !leaving.as.empty())) return true;
    return rightly_named({"a sheet", "PDF or text", {".pdf", ".txt"}, "sheet.pdf"}, target);
}

bool fits_text(const Leaving& leaving) {
    const bool locked = !leaving.password_file.empty();
    if (!locked && !leaving.attach) return true;
    std::cerr << "lessonleaf: a text cannot be "
              << (locked ? "locked with a password" : "given files to carry")
              << "\n  hint: write a PDF (-o sheet.pdf), or leave "
              << (locked ? "--password-file" : "--attach") << " out\n";
    return false;
}

void add_leaving(CLI::App& app, Leaving& leaving) {
    app.add_option("--as", leaving.as, "pdf (usual), or text: all of it to be read out")
        ->check(CLI::IsMember({"pdf", "text"}));
    app.add_flag("--attach", leaving.attach,
                 "Put record, shot table and what house and people say of it into the PDF, so that "
                 "it can be made again from itself");
    app.add_option("--password-file", leaving.password_file,
                   "File whose first line opens the PDF (AES-256)");
}

bool ready(Leaving& leaving) {
    if (leaving.password_file.empty()) return true;
    const auto text = text_of(leaving.password_file);
    if (!text) {
        std::cerr
            << "lessonleaf: the password file '" << leaving.password_file
            << "' cannot be read\n  hint: write the password into a file, on its first line\n";
        return false;
    }
    leaving.password = text->substr(0, text->find_first_of("\r\n"));
    if (leaving.password.size() >= shortest_password && leaving.password.size() <= longest_password)
        return true;
    std::cerr << "lessonleaf: the password in '" << leaving.password_file
              << "' must have 8 to 127 characters\n"
                 "  hint: four words that you can say on the telephone make a good one\n";
    return false;
}

std::string bytes_of(const Leaving& leaving, const Sheet& sheet, const Read& read,
                     const page::Book& book, const output::Digest& inputs, bool as_text) {
    if (as_text) return output::plain_text(book, {sheet.easel().words.say("twin.picture")});
    return output::pdf(
        book, inputs,
        {leaving.attach ? enclosed(read) : std::vector<output::Attachment>{}, leaving.password});
}

} // namespace cli
