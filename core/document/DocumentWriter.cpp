#include "document/DocumentWriter.h"

#include <fmt/format.h>

#include <toml++/toml.h>
#include <sstream>

#include "document/Fields.h"
#include "quantity/ReadQuantity.h"

namespace brinebell {
namespace {

std::string joined(const InlineRow& row) {
    std::string text;
    for (const auto& [key, value] : row) {
        text += fmt::format("{}{} = {}", text.empty() ? "" : ", ", key, value);
    }
    return text.empty() ? "{}" : "{ " + text + " }";
}

}  // namespace

std::string tomlText(std::string_view value) {
    std::ostringstream out;
    out << toml::toml_formatter{toml::value<std::string>{std::string(value)}, toml::format_flags::none};
    return out.str();
}

std::string_view WrittenFile::fieldAt(int line) const {
    const auto at = static_cast<std::size_t>(line) - 1;
    return line < 1 || at >= fields.size() ? std::string_view() : std::string_view(fields[at]);
}

DocumentWriter::DocumentWriter(std::string_view comment) {
    while (!comment.empty()) {
        const std::size_t end = comment.find('\n');
        line(fmt::format("# {}", comment.substr(0, end)), {});
        comment.remove_prefix(end == std::string_view::npos ? comment.size() : end + 1);
    }
    line(fmt::format("format = {}", kFileFormat), "format");
}

void DocumentWriter::line(std::string_view text, std::string field) {
    m_file.toml += text;
    m_file.toml += '\n';
    m_file.fields.push_back(std::move(field));
}

void DocumentWriter::table(std::string_view name) {
    m_table = name;
    line("", {});
    line(fmt::format("[{}]", name), m_table);
}

void DocumentWriter::element(std::string_view name) {
    const std::size_t dot = name.rfind('.');
    std::string path(name);
    if (dot != std::string_view::npos) {
        const std::string_view parent = name.substr(0, dot);
        path = fmt::format("{}[{}].{}", parent, m_counts[std::string(parent)] - 1, name.substr(dot + 1));
    }
    m_table = fmt::format("{}[{}]", path, m_counts[path]++);
    line("", {});
    line(fmt::format("[[{}]]", name), m_table);
}

std::string DocumentWriter::fieldOf(std::string_view key) const {
    return fmt::format("{}.{}", m_table, key);
}

void DocumentWriter::value(std::string_view key, const std::string& toml) {
    line(fmt::format("{} = {}", key, toml), fieldOf(key));
}

void DocumentWriter::text(std::string_view key, std::string_view text) {
    value(key, tomlText(text));
}

void DocumentWriter::textIf(std::string_view key, std::string_view text) {
    if (!text.empty()) {
        value(key, tomlText(text));
    }
}

void DocumentWriter::texts(std::string_view key, const std::vector<std::string>& values) {
    std::string array;
    for (const std::string& text : values) {
        array += (array.empty() ? "" : ", ") + tomlText(text);
    }
    value(key, "[" + array + "]");
}

void DocumentWriter::textsIf(std::string_view key, const std::vector<std::string>& values) {
    if (!values.empty()) {
        texts(key, values);
    }
}

void DocumentWriter::integer(std::string_view key, std::int64_t number) {
    value(key, fmt::format("{}", number));
}

void DocumentWriter::boolean(std::string_view key, bool truth) {
    value(key, truth ? "true" : "false");
}

void DocumentWriter::booleanUnless(std::string_view key, bool truth, bool usual) {
    if (truth != usual) {
        boolean(key, truth);
    }
}

void DocumentWriter::guess(std::string_view key, const ThreePoint& guess) {
    if (guess == ThreePoint::fixed(guess.likely)) {
        text(key, printDuration(guess.likely));
        return;
    }
    value(key, joined({{"low", tomlText(printDuration(guess.low))},
                       {"likely", tomlText(printDuration(guess.likely))},
                       {"high", tomlText(printDuration(guess.high))}}));
}

void DocumentWriter::rows(std::string_view key, const std::vector<InlineRow>& rows) {
    line(fmt::format("{} = [", key), fieldOf(key));
    for (std::size_t at = 0; at < rows.size(); ++at) {
        line(fmt::format("  {},", joined(rows[at])), fmt::format("{}[{}]", fieldOf(key), at));
    }
    line("]", fieldOf(key));
}

void DocumentWriter::inlineTable(std::string_view key, const InlineRow& row) {
    value(key, joined(row));
}

WrittenFile DocumentWriter::take() && {
    return std::move(m_file);
}

}  // namespace brinebell
