#include "document/Document.h"

#include <fmt/format.h>

#include <toml++/toml.h>
#include <algorithm>
#include <map>
#include <set>
#include <tuple>

#include "base/Language.h"
#include "document/Scan.h"

namespace brinebell {
namespace {

constexpr std::size_t kMaxShownName = 60;

/// A name or word from the file, fit to stand in a message: no control characters, not longer than a line.
std::string shown(std::string_view text) {
    std::string result;
    std::size_t characters = 0;
    for (std::size_t at = 0; at < text.size(); ++characters) {
        if (characters == kMaxShownName) {
            return result + "…";
        }
        const CodePoint character = codePointAt(text, at);
        const std::size_t bytes = std::max<std::size_t>(character.bytes, 1);
        const bool printable = character.bytes > 0 && character.value >= ' ' && !isForbiddenControl(character.value);
        result += printable ? std::string(text.substr(at, bytes)) : "?";
        at += bytes;
    }
    return result;
}

std::string kindOf(const toml::node& node) {
    switch (node.type()) {
        case toml::node_type::table:
            return core::say("a table");
        case toml::node_type::array:
            return core::say("an array");
        case toml::node_type::string:
            return core::say("text");
        case toml::node_type::integer:
            return core::say("a whole number");
        case toml::node_type::floating_point:
            return core::say("a number");
        case toml::node_type::boolean:
            return core::say("true or false");
        case toml::node_type::date:
        case toml::node_type::time:
        case toml::node_type::date_time:
            return core::say("a date or time");
        default:
            return core::say("nothing");
    }
}

/// The library's message without its "Error while parsing …" shouting: lower-case first letter, no full stop.
std::string parserMessage(std::string_view description) {
    std::string message = shown(description.substr(0, description.find('\n')));
    if (!message.empty()) {
        message[0] = static_cast<char>(std::tolower(static_cast<unsigned char>(message[0])));
    }
    return core::say("not valid TOML: {}", message);
}

}  // namespace

struct Document::State {
    std::string name;
    toml::table root;
    std::vector<Error> faults;
    // The tables a reader opened, and the keys it asked each for.
    std::map<const toml::table*, std::set<std::string, std::less<>>> asked;

    Place at(const toml::source_position& position) const {
        return {name, static_cast<int>(position.line), static_cast<int>(position.column)};
    }
    void add(ErrorCode code, std::string message, Place where) {
        faults.push_back({code, std::move(message), std::move(where)});
    }
    void checkText(std::string_view text, std::string_view what, const Place& where);
    void checkLimits(const toml::node& node, int depth);
};

void Document::State::checkText(std::string_view text, std::string_view what, const Place& where) {
    std::size_t characters = 0;
    bool control = false;
    for (std::size_t at = 0; at < text.size(); ++characters) {
        const CodePoint character = codePointAt(text, at);
        control = control || character.bytes == 0 || isForbiddenControl(character.value);
        at += std::max<std::size_t>(character.bytes, 1);
    }
    if (characters > kMaxTextLength) {
        add(ErrorCode::OutOfRange,
            core::say("{} of {} characters; at most {} are read", what, characters, kMaxTextLength), where);
    }
    if (control) {
        add(ErrorCode::InvalidInput, core::say("{} with a control character other than line feed and tab", what),
            where);
    }
}

// Looks at every value once, also at those no reader will ask for. Does not go below the depth limit, so it
// cannot run out of stack itself.
void Document::State::checkLimits(const toml::node& node, int depth) {
    const Place where = at(node.source().begin);
    if (const auto* text = node.as_string()) {
        checkText(text->get(), core::say("a text"), where);
    }
    if (!node.is_table() && !node.is_array()) {
        return;
    }
    if (depth > kMaxDocumentDepth) {
        add(ErrorCode::OutOfRange, core::say("nested deeper than {} levels", kMaxDocumentDepth), where);
        return;
    }
    if (const auto* array = node.as_array()) {
        if (array->size() > kMaxArrayLength) {
            add(ErrorCode::OutOfRange,
                core::say("an array of {} elements; at most {} are read", array->size(), kMaxArrayLength), where);
        }
        for (const toml::node& element : *array) {
            checkLimits(element, depth + 1);
        }
        return;
    }
    for (const auto& [key, value] : *node.as_table()) {
        checkText(key.str(), core::say("a key"), at(key.source().begin));
        checkLimits(value, depth + 1);
    }
}

/// A table that was opened, or nothing: the stand-in for a table that is missing, whose getters stay silent
/// because the fault has been told.
struct Table::Node {
    Document::State* state = nullptr;
    const toml::table* table = nullptr;
    Place head;

    static std::shared_ptr<const Node> open(Document::State& state, const toml::table& table, Place head) {
        state.asked.try_emplace(&table);
        return std::make_shared<const Node>(Node{&state, &table, std::move(head)});
    }
    static std::shared_ptr<const Node> absent(Document::State* state, Place head) {
        return std::make_shared<const Node>(Node{state, nullptr, std::move(head)});
    }

    void fault(ErrorCode code, std::string message, Place where) const {
        if (table != nullptr) {
            state->add(code, std::move(message), std::move(where));
        }
    }

    /// The value at `key`, noting that it was asked for.
    const toml::node* ask(std::string_view key) const {
        if (table == nullptr) {
            return nullptr;
        }
        state->asked[table].emplace(key);
        return table->get(key);
    }

    const toml::node* require(std::string_view key) const {
        const toml::node* value = ask(key);
        if (value == nullptr) {
            fault(ErrorCode::InvalidInput, core::say("{}: missing", key), head);
        }
        return value;
    }

    void wrongKind(std::string_view key, std::string_view wanted, const toml::node& found) const {
        fault(ErrorCode::InvalidInput, core::say("{}: expected {}, found {}", key, wanted, kindOf(found)),
              state->at(found.source().begin));
    }

    /// The place where `value` stands under `key`. Tables made by dotted names have no place; their name has.
    Place placeOf(std::string_view key, const toml::node& value) const {
        if (value.source().begin.line != 0) {
            return state->at(value.source().begin);
        }
        for (const auto& [name, node] : *table) {
            if (name.str() == key) {
                return state->at(name.source().begin);
            }
        }
        return head;
    }

    /// The elements of the array at `key`; none when it is missing or something else.
    std::vector<const toml::node*> elements(std::string_view key, std::string_view wanted) const {
        std::vector<const toml::node*> found;
        const toml::node* value = ask(key);
        if (value != nullptr && !value->is_array()) {
            wrongKind(key, wanted, *value);
        } else if (value != nullptr) {
            for (const toml::node& element : *value->as_array()) {
                found.push_back(&element);
            }
        }
        return found;
    }

    std::int64_t integer(std::string_view key, const toml::node& value, std::int64_t least, std::int64_t most) const {
        const auto* whole = value.as_integer();
        if (whole == nullptr) {
            wrongKind(key, core::say("a whole number"), value);
            return 0;
        }
        if (whole->get() < least || whole->get() > most) {
            const std::string wanted = least == most ? fmt::to_string(least) : fmt::format("{} to {}", least, most);
            fault(ErrorCode::OutOfRange, core::say("{}: must be {}, found {}", key, wanted, whole->get()),
                  state->at(value.source().begin));
            return 0;
        }
        return whole->get();
    }

    std::string text(std::string_view key, const toml::node& value) const {
        const auto* text = value.as_string();
        if (text == nullptr) {
            wrongKind(key, core::say("text"), value);
            return {};
        }
        if (text->get().find_first_not_of(" \t\n") == std::string::npos) {
            fault(ErrorCode::InvalidInput, core::say("{}: must not be empty", key), state->at(value.source().begin));
            return {};
        }
        return text->get();
    }
};

bool Table::has(std::string_view key) const {
    return m_node->table != nullptr && m_node->table->contains(key);
}

bool Table::isTable(std::string_view key) const {
    const toml::node* value = m_node->table == nullptr ? nullptr : m_node->table->get(key);
    return value != nullptr && value->is_table();
}

Place Table::place() const {
    return m_node->head;
}

Place Table::placeOf(std::string_view key) const {
    const toml::node* value = m_node->table == nullptr ? nullptr : m_node->table->get(key);
    return value == nullptr ? m_node->head : m_node->placeOf(key, *value);
}

std::string Table::text(std::string_view key) const {
    const toml::node* value = m_node->require(key);
    return value == nullptr ? std::string() : m_node->text(key, *value);
}

std::string Table::textOr(std::string_view key, std::string fallback) const {
    const toml::node* value = m_node->ask(key);
    if (value == nullptr) {
        return fallback;
    }
    const auto* text = value->as_string();
    if (text == nullptr) {
        m_node->wrongKind(key, core::say("text"), *value);
        return {};
    }
    return text->get();
}

std::int64_t Table::integer(std::string_view key, std::int64_t least, std::int64_t most) const {
    const toml::node* value = m_node->require(key);
    return value == nullptr ? 0 : m_node->integer(key, *value, least, most);
}

std::int64_t Table::integerOr(std::string_view key, std::int64_t least, std::int64_t most,
                              std::int64_t fallback) const {
    const toml::node* value = m_node->ask(key);
    return value == nullptr ? fallback : m_node->integer(key, *value, least, most);
}

double Table::number(std::string_view key, double least, double most) const {
    const toml::node* value = m_node->require(key);
    if (value == nullptr) {
        return 0;
    }
    if (!value->is_number()) {
        m_node->wrongKind(key, core::say("a number"), *value);
        return 0;
    }
    const double found = *value->value<double>();
    // Written so that "nan", which is a TOML number, fails as well.
    if (!(found >= least && found <= most)) {
        fault(key, ErrorCode::OutOfRange, core::say("{}: must be {} to {}, found {}", key, least, most, found));
        return 0;
    }
    return found;
}

bool Table::booleanOr(std::string_view key, bool fallback) const {
    const toml::node* value = m_node->ask(key);
    if (value == nullptr) {
        return fallback;
    }
    const auto* truth = value->as_boolean();
    if (truth == nullptr) {
        m_node->wrongKind(key, core::say("true or false"), *value);
        return false;
    }
    return truth->get();
}

std::vector<std::string> Table::texts(std::string_view key) const {
    std::vector<std::string> result;
    for (const toml::node* element : m_node->elements(key, core::say("an array of texts"))) {
        result.push_back(m_node->text(key, *element));
    }
    return result;
}

std::vector<std::int64_t> Table::integers(std::string_view key, std::int64_t least, std::int64_t most) const {
    std::vector<std::int64_t> result;
    for (const toml::node* element : m_node->elements(key, core::say("an array of whole numbers"))) {
        result.push_back(m_node->integer(key, *element, least, most));
    }
    return result;
}

std::optional<Table> Table::tableIf(std::string_view key) const {
    const toml::node* value = m_node->ask(key);
    if (value == nullptr) {
        return std::nullopt;
    }
    if (!value->is_table()) {
        m_node->wrongKind(key, core::say("a table"), *value);
        return std::nullopt;
    }
    return Table(Node::open(*m_node->state, *value->as_table(), m_node->placeOf(key, *value)));
}

Table Table::table(std::string_view key) const {
    m_node->require(key);
    auto found = tableIf(key);
    return found ? *found : Table(Node::absent(m_node->state, m_node->head));
}

std::vector<Table> Table::tables(std::string_view key) const {
    std::vector<Table> result;
    for (const toml::node* element : m_node->elements(key, core::say("an array of tables"))) {
        if (element->is_table()) {
            result.push_back(Table(Node::open(*m_node->state, *element->as_table(), m_node->placeOf(key, *element))));
        } else {
            m_node->wrongKind(key, core::say("a table"), *element);
        }
    }
    return result;
}

void Table::fault(std::string_view key, ErrorCode code, std::string message) const {
    if (!key.empty()) {
        m_node->ask(key);
    }
    m_node->fault(code, std::move(message), key.empty() ? place() : placeOf(key));
}

std::optional<std::string> Table::rawText(std::string_view key) const {
    const toml::node* value = m_node->require(key);
    if (value == nullptr) {
        return std::nullopt;
    }
    std::string text = m_node->text(key, *value);
    return text.empty() ? std::nullopt : std::optional(std::move(text));
}

Document::Document(std::unique_ptr<State> state) : m_state(std::move(state)) {}
Document::Document(Document&&) noexcept = default;
Document& Document::operator=(Document&&) noexcept = default;
Document::~Document() = default;

FileResult<Document> Document::parse(std::string_view toml, std::string name, std::size_t maxBytes) {
    const auto refuse = [](Error fault) { return tl::unexpected(std::vector<Error>{std::move(fault)}); };
    if (toml.size() > maxBytes) {
        return refuse({ErrorCode::OutOfRange,
                       core::say("the file has {} bytes; at most {} are read", toml.size(), maxBytes),
                       {std::move(name), 0, 0}});
    }
    if (auto scanned = scanDocument(toml, name, kMaxDocumentDepth); !scanned) {
        return refuse(std::move(scanned.error()));
    }
    auto state = std::make_unique<State>();
    state->name = std::move(name);
    try {
        state->root = toml::parse(toml, std::string_view(state->name));
    } catch (const toml::parse_error& error) {
        return refuse({ErrorCode::InvalidInput, parserMessage(error.description()), state->at(error.source().begin)});
    }
    state->asked.try_emplace(&state->root);
    state->checkLimits(state->root, 0);
    return Document(std::move(state));
}

Table Document::root() {
    return Table(Table::Node::open(*m_state, m_state->root, {m_state->name, 1, 1}));
}

void Document::addFault(Error fault) {
    m_state->faults.push_back(std::move(fault));
}

std::vector<Error> Document::finish() {
    std::vector<Error> all = m_state->faults;
    for (const auto& [table, keys] : m_state->asked) {
        for (const auto& [key, value] : *table) {
            if (!keys.contains(key.str())) {
                all.push_back({ErrorCode::InvalidInput, core::say("unknown key \"{}\"", shown(key.str())),
                               m_state->at(key.source().begin)});
            }
        }
    }
    // Faults that a reader brought in from other files follow, in the order in which they came.
    const auto order = [this](const Error& fault) {
        const bool foreign = fault.where.file != m_state->name;
        return foreign ? std::tuple(true, 0, 0) : std::tuple(false, fault.where.line, fault.where.column);
    };
    std::stable_sort(all.begin(), all.end(), [&](const Error& a, const Error& b) { return order(a) < order(b); });
    return all;
}

}  // namespace brinebell
