#include "generated.hpp"

#include <array>
#include <string_view>

namespace generated {

namespace {

void append(std::string& to, char32_t c) {
    if (c < 0x80) {
        to += static_cast<char>(c);
    } else if (c < 0x800) {
        to += static_cast<char>(0xC0 | c >> 6);
        to += static_cast<char>(0x80 | (c & 63));
    } else {
        to += static_cast<char>(0xE0 | c >> 12);
        to += static_cast<char>(0x80 | (c >> 6 & 63));
        to += static_cast<char>(0x80 | (c & 63));
    }
}

struct Range {
    char32_t first, last;
};
Range letters_of(Script script) {
    switch (script) {
    case Script::latin:
        return {U'a', U'z'};
    case Script::greek:
        return {0x03B1, 0x03C9};
    case Script::cyrillic:
        return {0x0430, 0x044F};
    case Script::arabic:
        return {0x0628, 0x063A};
    case Script::hebrew:
        return {0x05D0, 0x05EA};
    case Script::japanese:
        return {0x3042, 0x3093};
    }
    return {U'a', U'z'};
}

constexpr std::array<std::string_view, 16> words{
    "the",     "handle", "lies",   "across",   "your",
    "fingers", "and",    "it",     "clubface", "turned",
    "back",    "to",     "target", "before",   "straightforwardly",
    "knuckles"};

std::string quoted(const std::string& text) { return "\"" + text + "\""; }

std::string grip(Dice& d) {
    static constexpr std::array<std::string_view, 3> lays{"fingers", "between", "palm"};
    static constexpr std::array<std::string_view, 5> vs{"lead side", "chin", "trail eye",
                                                        "trail shoulder", "outside trail shoulder"};
    static constexpr std::array<std::string_view, 3> joins{"overlap", "interlock", "ten finger"};
    std::string out = "{";
    const auto put = [&](std::string_view key, std::string value) {
        if (d.one_in(5)) value = "not looked at";
        if (d.one_in(6)) return;
        out += (out.size() > 1 ? ", " : "") + std::string(key) + ": " + value;
    };
    put("lay", std::string(d.of(lays)));
    put("knuckles", std::to_string(d.number(0, 8) / 2) + (d.one_in(2) ? ".5" : ""));
    put("V", std::string(d.of(vs)));
    put("heel pad", d.one_in(2) ? "on top" : "beside");
    put("gap", d.one_in(2) ? "yes" : "no");
    put("balance", d.one_in(2) ? "stays" : "falls");
    put("join", std::string(d.of(joins)));
    put("square", d.one_in(2) ? "yes" : "no");
    put("fingers first", d.one_in(2) ? "yes" : "no");
    if (out.size() == 1) out += "lay: palm";
    out += "}";
    const auto at = out.find("4.5");
    return at == out.npos ? out : out.replace(at, 3, "4");
}

std::string table(Dice& d) {
    const int shots = d.one_in(4)   ? d.number(1, 6)
                      : d.one_in(6) ? d.number(100, 300)
                                    : d.number(7, 60);
    const bool path = !d.one_in(4), carry = !d.one_in(4), loft = !d.one_in(3), speed = !d.one_in(3);
    std::string out = "block,face";
    if (path) out += ",path";
    if (loft) out += ",loft";
    if (speed) out += ",club speed (mph)";
    if (carry) out += ",carry (yd)";
    out += "\n";
    const double before = d.real(-9, 9), after = d.real(-4, 4), spread = d.real(0.2, 6);
    for (int i = 0; i < shots; ++i) {
        const bool late = 2 * i >= shots;
        const auto cell = [&](double middle, double wide) {
            if (d.one_in(30)) return std::string(",");
            const double tenths = 10 * (middle + wide * d.real(-1, 1));
            const int n = static_cast<int>(tenths);
            return "," + std::string(n < 0 ? "-" : "") + std::to_string(std::abs(n) / 10) + "." +
                   std::to_string(std::abs(n) % 10);
        };
        out += late ? (d.one_in(12) ? "cold" : "after") : (d.one_in(15) ? "warm-up" : "before");
        out += cell(late ? after : before, spread);
        if (path) out += cell(d.real(-5, 5), 2);
        if (loft) out += cell(28, 3);
        if (speed) out += cell(76, 5);
        if (carry) out += cell(130, 25);
        out += "\n";
    }
    return out;
}

} // namespace

std::string name(Dice& dice, Script script, int letters) {
    const Range range = letters_of(script);
    std::string out;
    for (int i = 0, run = 0; i < letters; ++i, ++run) {
        if (run > 3 && i + 2 < letters && dice.one_in(7)) {
            out += ' ';
            run = -1;
            continue;
        }
        append(out,
               range.first + static_cast<char32_t>(dice.next() % (range.last - range.first + 1)));
    }
    return out;
}

std::string prose(Dice& dice, int characters) {
    std::string out;
    while (static_cast<int>(out.size()) < characters) {
        out += (out.empty() ? "" : " ") + std::string(dice.of(words));
        if (dice.one_in(9)) out += ".";
    }
    out.resize(static_cast<std::size_t>(characters));
    while (!out.empty() && out.back() == ' ')
        out.back() = 'x';
    return out;
}

const std::vector<std::string>& optional_keys() {
    static const std::vector<std::string> keys{
        "coach", "place",   "lesson", "units",   "glove",    "club",       "aim",
        "why",   "comment", "grip",   "targets", "shots",    "conditions", "drills",
        "plan",  "next",    "notes",  "history", "returned", "says"};
    return keys;
}

Case lesson(std::uint64_t seed, const std::string& without) {
    Dice d(seed);
    Case out;
    static constexpr std::array scripts{Script::latin,    Script::latin,  Script::greek,
                                        Script::cyrillic, Script::arabic, Script::hebrew,
                                        Script::japanese};
    out.script = d.of(scripts);
    const auto line = [&](const std::string& key, const std::string& value) {
        if (key != without) out.yaml += key + ": " + value + "\n";
    };
    const auto text = [&](int usual, int most) {
        return quoted(prose(d, d.one_in(8) ? d.number(1, most) : d.number(1, usual)));
    };
    std::string student = "{name: " + quoted(name(d, out.script, d.number(1, 80))) + ", code: Q-" +
                          std::to_string(seed % 1000) +
                          ", hand: " + (d.one_in(2) ? "right" : "left");
    if (d.one_in(4)) student += ", age: junior";
    if (without != "says" && !d.one_in(3)) student += ", says: " + text(60, 300);
    line("student", student + "}");
    line("coach", "{name: " + quoted(name(d, out.script, d.number(1, 40))) +
                      ", contact: " + quoted(prose(d, d.number(3, 60))) + "}");
    line("place", text(30, 100));
    line("date", "2026-05-14");
    line("lesson", std::to_string(d.number(1, 99)));
    static constexpr std::array<std::string_view, 3> papers{"A4", "Letter", "A5"};
    line("paper", std::string(d.of(papers)));
    if (d.one_in(4)) line("large print", "yes");
    line("language", d.one_in(3) ? "de" : "en-GB");
    line("units",
         d.one_in(2) ? "{distance: metres, speed: km/h}" : "{distance: yards, speed: mph}");
    line("glove", d.one_in(2) ? "yes" : "no");
    line("club", "{name: seven iron, loft: 32, lie: 62.5}");
    if (!d.one_in(4))
        line("aim", "{measure: face, want: 2 L to 4 R, worth having: 2, named before: " +
                        std::string(d.one_in(3) ? "no" : "yes") + "}");
    line("saw", text(150, 400));
    line("changed", text(150, 400));
    line("why", text(400, 2000));
    line("comment", text(300, 1500));
    if (d.one_in(6))
        line("grip", "{after: " + grip(d) + "}");
    else
        line("grip", "{before: " + grip(d) + ", after: " + grip(d) + "}");
    line("targets", "[" + text(60, 200) + ", " + text(60, 200) + "]");
    if (!d.one_in(4) && without != "shots") {
        out.csv = table(d);
        line("shots", "{file: shots.csv, sign: right is positive}");
    }
    line("conditions", text(60, 300));
    static constexpr std::array<std::string_view, 6> drills{"[H1]",     "[F2, P1]", "[H3, H4]",
                                                            "[L1, S2]", "[V1, A1]", "[S3]"};
    line("drills", std::string(d.of(drills)));
    line("plan", "{when: " + text(30, 80) + ", where: " + text(20, 60) + "}");
    line("next", "2026-05-28");
    const int notes = d.one_in(6) ? d.number(0, 5000) : d.number(0, 300);
    line("notes", "[" + quoted(prose(d, notes)) + "]");
    if (d.one_in(2))
        line("returned",
             "{drill: H3, days done: 9, right first: 7 of 10, words: " + text(40, 200) + "}");
    line("history", "[{date: 2026-04-16, text: " + text(60, 300) + "}]");
    return out;
}

} // namespace generated
