#include "cli/origin.hpp"

#include "cli/pictures.hpp"
#include "output/pdf.hpp"
#include "text/pango_typesetter.hpp"
#include "words/date.hpp"

namespace cli {

Origin::Origin(const Workshop& workshop) {
    common_.add(stock::program_digest());
    common_.add(output::library_versions());
    common_.add(text::library_versions());
    common_.add(text::font_stamps());
    for (const auto& name : workshop.shelf().names(""))
        if (const auto item = workshop.shelf().find(name)) common_.add(name).add(item->text);
}

output::Digest Origin::of(const Read& read) const {
    output::Hash hash(common_);
    for (const auto& source : read.sources)
        hash.add(source.text());
    if (read.academy) hash.add(read.academy->text_for(read.lesson.student.code));
    if (read.lesson.date.value.ok()) // the name of a folder may have given it
        hash.add(words::date_iso(read.lesson.date.value));
    for (const auto& earlier : read.earlier)
        for (const auto& source : earlier->sources)
            hash.add(source.text());
    for (const auto& path : picture_files(read.lesson))
        hash.add(text_of(path).value_or(std::string()));
    return hash.digest();
}

output::Digest Origin::of(const Reads& reads, const std::vector<std::string_view>& more) const {
    output::Hash hash(common_);
    for (const auto piece : more)
        hash.add(piece);
    for (const auto& read : reads) {
        const auto digest = of(*read);
        hash.add(std::to_string(digest.high)).add(std::to_string(digest.low));
    }
    return hash.digest();
}

} // namespace cli
