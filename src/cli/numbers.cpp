#include "report/numbers.hpp"
#include "cli/commands.hpp"
#include "cli/exit.hpp"
#include "cli/sheet.hpp"

#include <nlohmann/json.hpp>

#include <array>
#include <charconv>
#include <cmath>
#include <iostream>

namespace cli {

namespace {

struct Wishes {
    std::string record, as = "table";
};

/// Six decimals at most, shortest form, '.' as the mark: for machines.
std::string plain(double value) {
    const double rounded = std::round(value * 1e6) / 1e6;
    std::array<char, 40> buffer{};
    const auto end =
        std::to_chars(buffer.data(), buffer.data() + buffer.size(), rounded == 0 ? 0.0 : rounded)
            .ptr;
    return {buffer.data(), end};
}

std::string optional(const std::optional<double>& value) {
    return value ? plain(*value) : std::string();
}

/// RFC 4180: quoted where it must be, quotes doubled.
std::string cell(const std::string& text) {
    if (text.find_first_of(",\"\n") == std::string::npos) return text;
    std::string out = "\"";
    for (const char c : text) {
        if (c == '"') out += '"';
        out += c;
    }
    return out + '"';
}

using Row = std::array<std::string, 8>;
constexpr std::array heads{"what", "block", "value", "unit", "lower", "upper", "origin", "text"};

std::vector<Row> rows_of(const std::vector<report::Number>& numbers) {
    std::vector<Row> rows;
    for (const auto& n : numbers)
        rows.push_back({n.what, n.block, n.text.empty() ? plain(n.value) : "", n.unit,
                        optional(n.lower), optional(n.upper), n.origin, n.text});
    return rows;
}

void print_csv(const std::vector<Row>& rows) {
    for (std::size_t i = 0; i < heads.size(); ++i)
        std::cout << (i ? "," : "") << heads[i];
    std::cout << "\r\n";
    for (const Row& row : rows) {
        for (std::size_t i = 0; i < row.size(); ++i)
            std::cout << (i ? "," : "") << cell(row[i]);
        std::cout << "\r\n";
    }
}

/// Code points of UTF-8 text: how wide it stands in a table.
std::size_t wide(const std::string& text) {
    std::size_t n = 0;
    for (const char c : text)
        n += (static_cast<unsigned char>(c) & 0xC0) != 0x80;
    return n;
}

void print_table(const std::vector<Row>& rows) {
    std::array<std::size_t, heads.size()> widths{};
    for (std::size_t i = 0; i < heads.size(); ++i) {
        widths[i] = std::string(heads[i]).size();
        for (const Row& row : rows)
            widths[i] = std::max(widths[i], wide(row[i]));
    }
    const auto print = [&](const auto& row) {
        std::string line;
        for (std::size_t i = 0; i < heads.size(); ++i) {
            const std::string& text = row[i];
            const std::string pad(widths[i] - wide(text), ' ');
            const bool number = i == 2 || i == 4 || i == 5;
            line += number ? pad + text + "  " : text + pad + "  ";
        }
        line.erase(line.find_last_not_of(' ') + 1);
        std::cout << line << "\n";
    };
    print(heads);
    for (const Row& row : rows)
        print(row);
}

void print_json(const std::vector<report::Number>& numbers, const record::Lesson& lesson) {
    auto list = nlohmann::ordered_json::array();
    for (const auto& n : numbers) {
        nlohmann::ordered_json item{{"what", n.what}, {"block", n.block}};
        if (n.text.empty())
            item["value"] = std::round(n.value * 1e6) / 1e6;
        else
            item["text"] = n.text;
        if (!n.unit.empty()) item["unit"] = n.unit;
        if (n.lower) item["lower"] = std::round(*n.lower * 1e6) / 1e6;
        if (n.upper) item["upper"] = std::round(*n.upper * 1e6) / 1e6;
        if (!n.origin.empty()) item["origin"] = n.origin;
        list.push_back(std::move(item));
    }
    nlohmann::ordered_json out{{"student", lesson.student.code}, {"numbers", std::move(list)}};
    std::cout << out.dump(2) << "\n";
}

int run(const Wishes& wishes, const Common& common) {
    const Workshop workshop(common);
    if (!tell(workshop.findings(), common.strict)) return findings;
    const auto read = workshop.read(wishes.record);
    if (!read->readable) return cannot_read(wishes.record);
    if (!read->findings.clean()) {
        tell(read->findings, common.strict);
        return findings;
    }
    const text::PangoTypesetter type;
    const Sheet sheet(workshop, *read, type);
    if (!tell(read->findings, common.strict)) return findings;
    const auto numbers = report::numbers(sheet.story(), sheet.easel().words);
    if (wishes.as == "csv")
        print_csv(rows_of(numbers));
    else if (wishes.as == "json")
        print_json(numbers, read->lesson);
    else
        print_table(rows_of(numbers));
    return all_written;
}

} // namespace

Run set_up_numbers(CLI::App& app, const Common& common) {
    auto wishes = std::make_shared<Wishes>();
    app.add_option("RECORD", wishes->record, "Lesson record (YAML)")->required();
    app.add_option("--as", wishes->as, "table, csv or json")
        ->check(CLI::IsMember({"table", "csv", "json"}));
    return [wishes, &common] { return run(*wishes, common); };
}

} // namespace cli
