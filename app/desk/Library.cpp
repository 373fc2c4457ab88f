#include "desk/Library.h"

#include <QDir>
#include <QFile>
#include <QRegularExpression>
#include <QStandardPaths>
#include <algorithm>
#include <cstdio>

#include "bridge/TimeText.h"
#include "desk/Demonstration.h"
#include "document/Fields.h"
#include "kitchen/VenueWriter.h"
#include "plan/ClassWriter.h"
#include "recipe/RecipeWriter.h"
#include "recipe/TestedRecipes.h"

namespace brinebell {

namespace {

constexpr std::size_t kMostIdLetters = 40;

Result<std::string> fromDisk(const std::string& path) {
    return readFile(path);
}

template <class Value>
void setEntry(Library::Entry& entry, FileResult<Value> read, std::string Value::*title) {
    if (!read) {
        entry.faults = std::move(read.error());
    } else if (!((*read).*title).empty()) {
        entry.title = (*read).*title;
    }
}

// A title is shown even where the rest of the file has faults.
template <class Value>
void setEntry(Library::Entry& entry, FileResult<Draft<Value>> draft, std::string Value::*title) {
    if (!draft) {
        entry.faults = std::move(draft.error());
        return;
    }
    entry.faults = std::move(draft->faults);
    if (!(draft->value.*title).empty()) {
        entry.title = draft->value.*title;
    }
}

Library::Entry readEntry(Library::Kind kind, const std::string& path, const std::string& id) {
    Library::Entry entry{id, id, path, false, {}};
    const auto bytes = readFile(path);
    if (!bytes) {
        entry.faults = {bytes.error()};
        return entry;
    }
    // A file of another name can be read, but nothing here would find it again.
    if (const auto named = readIdentifier(id); !named) {
        entry.faults = {{named.error().code, "the name of the file is no id: " + named.error().message, {path, 0, 0}}};
        return entry;
    }
    switch (kind) {
        case Library::Kind::Recipe:
            setEntry(entry, draftOfRecipe(*bytes, path, fromDisk), &Recipe::title);
            entry.tested = builtInRecipe(id).has_value();
            break;
        case Library::Kind::Venue:
            setEntry(entry, draftOfVenue(*bytes, path), &Venue::name);
            break;
        case Library::Kind::Class:
            setEntry(entry, draftOfClass(*bytes, path, fromDisk), &ClassPlan::title);
            break;
    }
    return entry;
}

}  // namespace

std::string idFromTitle(std::string_view title) {
    std::string id;
    for (const QChar character : toQt(title).normalized(QString::NormalizationForm_D).toLower()) {
        const bool plain = (character >= u'a' && character <= u'z') || (character >= u'0' && character <= u'9');
        if (plain && id.size() < kMostIdLetters) {
            id += character.toLatin1();
        } else if (!plain && !character.isMark() && character != u'\'' && character != u'’' && !id.empty() &&
                   id.back() != '-' && id.size() < kMostIdLetters) {
            id += '-';
        }
    }
    while (!id.empty() && id.back() == '-') {
        id.pop_back();
    }
    return id;
}

QString Library::usualFolder() {
    return QStandardPaths::writableLocation(QStandardPaths::AppDataLocation) + QStringLiteral("/library");
}

Library::Library(const QString& folder) : m_folder(QDir::cleanPath(folder).toStdString()) {}

std::string Library::folderOf(Kind kind) const {
    switch (kind) {
        case Kind::Recipe:
            return m_folder;
        case Kind::Venue:
            return m_folder + "/venues";
        case Kind::Class:
            return m_folder + "/classes";
    }
    return m_folder;
}

Result<void> Library::makeFolder(Kind kind) const {
    for (const std::string& folder : {m_folder, folderOf(kind)}) {
        const bool isNew = !QDir(toQt(folder)).exists();
        if (isNew && (!QDir().mkpath(toQt(folder)) ||
                      !QFile::setPermissions(toQt(folder), QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner))) {
            return fail(ErrorCode::Io, "cannot make the folder", {folder, 0, 0});
        }
    }
    return {};
}

std::vector<Library::Entry> Library::list(Kind kind) const {
    std::vector<Entry> entries;
    const QDir folder(toQt(folderOf(kind)));
    for (const QFileInfo& info : folder.entryInfoList({QStringLiteral("*.toml")}, QDir::Files, QDir::Name)) {
        entries.push_back(readEntry(kind, info.filePath().toStdString(), info.completeBaseName().toStdString()));
    }
    if (kind == Kind::Recipe) {
        for (const std::string& id : builtInRecipeIds()) {
            const auto isIt = [&](const Entry& entry) { return entry.id == id; };
            if (std::none_of(entries.begin(), entries.end(), isIt)) {
                entries.push_back({id, builtInRecipe(id)->title, {}, true, {}});
            }
        }
    }
    const auto earlier = [](const Entry& a, const Entry& b) {
        const int order = QString::localeAwareCompare(toQt(a.title), toQt(b.title));
        return order != 0 ? order < 0 : a.id < b.id;
    };
    std::sort(entries.begin(), entries.end(), earlier);
    return entries;
}

Result<std::string> Library::pathOf(Kind kind, std::string_view id) const {
    return fileOfId(folderOf(kind), id);
}

std::string Library::freeId(Kind kind, std::string_view title) const {
    static constexpr const char* kPlain[] = {"recipe", "venue", "class"};
    std::string stem = idFromTitle(title);
    if (stem.empty()) {
        stem = kPlain[static_cast<int>(kind)];
    }
    std::string id = stem;
    const auto taken = [&] {
        const auto path = pathOf(kind, id);
        return !path || QFile::exists(toQt(*path)) || (kind == Kind::Recipe && builtInRecipe(id).has_value());
    };
    for (int number = 2; taken(); ++number) {
        const std::string end = "-" + std::to_string(number);
        id = stem.substr(0, kMostIdLetters - end.size());
        while (id.ends_with('-')) {
            id.pop_back();
        }
        id += end;
    }
    return id;
}

Result<std::string> Library::recipeFile(std::string_view id) {
    const auto path = pathOf(Kind::Recipe, id);
    if (!path || QFile::exists(toQt(*path))) {
        return path;
    }
    const auto text = builtInRecipeText(id);
    if (!text) {
        return fail(ErrorCode::NotFound, "no such recipe", {*path, 0, 0});
    }
    return save(Kind::Recipe, id, *text, OldFile::Keep);
}

Result<std::string> Library::addDemonstration() {
    const Demonstration demonstration = demonstrationTexts();
    for (const std::string& recipe : demonstration.recipes) {
        if (auto file = recipeFile(recipe); !file) {
            return file;
        }
    }
    Result<std::string> path;
    for (const auto& [kind, id, text] : {std::tuple{Kind::Venue, demonstration.venueId, demonstration.venue},
                                         std::tuple{Kind::Class, demonstration.classId, demonstration.lesson}}) {
        path = pathOf(kind, id);
        if (path && !QFile::exists(toQt(*path))) {
            path = save(kind, id, text, OldFile::Keep);
        }
        if (!path) {
            return path;
        }
    }
    return path;
}

Result<std::string> Library::save(Kind kind, std::string_view id, std::string_view text, OldFile old) {
    auto path = pathOf(kind, id);
    if (!path) {
        return path;
    }
    if (auto made = makeFolder(kind); !made) {
        return tl::unexpected(made.error());
    }
    if (auto written = writeKept(*path, text, old); !written) {
        return tl::unexpected(written.error());
    }
    return path;
}

Result<std::string> Library::save(const Recipe& recipe, OldFile old) {
    return save(Kind::Recipe, recipe.id, writeRecipe(recipe).toml, old);
}

Result<std::string> Library::save(const Venue& venue, OldFile old) {
    return save(Kind::Venue, venue.id, writeVenue(venue).toml, old);
}

Result<std::string> Library::save(const ClassPlan& plan, OldFile old, std::chrono::minutes offset) {
    const auto path = pathOf(Kind::Class, plan.id);
    if (!path) {
        return path;
    }
    ClassPlan here = plan;
    here.file = *path;
    const auto written = writeClass(here, offset);
    return written ? save(Kind::Class, plan.id, written->toml, old) : tl::unexpected(written.error());
}

FileResult<Draft<Recipe>> Library::openRecipe(std::string_view id) const {
    const auto path = pathOf(Kind::Recipe, id);
    if (!path) {
        return tl::unexpected(std::vector<Error>{path.error()});
    }
    auto bytes = readFile(*path);
    const auto builtIn = QFile::exists(toQt(*path)) ? std::nullopt : builtInRecipeText(id);
    if (builtIn) {
        bytes = *builtIn;
    }
    if (!bytes) {
        return tl::unexpected(std::vector<Error>{bytes.error()});
    }
    return draftOfRecipe(*bytes, *path, fromDisk);
}

FileResult<Draft<Venue>> Library::openVenue(std::string_view id) const {
    const auto path = pathOf(Kind::Venue, id);
    const auto bytes = path ? readFile(*path) : path;
    if (!bytes) {
        return tl::unexpected(std::vector<Error>{bytes.error()});
    }
    return draftOfVenue(*bytes, *path);
}

FileResult<Draft<ClassPlan>> Library::openClass(std::string_view id) const {
    const auto path = pathOf(Kind::Class, id);
    const auto bytes = path ? readFile(*path) : path;
    if (!bytes) {
        return tl::unexpected(std::vector<Error>{bytes.error()});
    }
    auto draft = draftOfClass(*bytes, *path, fromDisk);
    if (!draft) {
        return draft;
    }
    static const QRegularExpression head(QStringLiteral("^\\s*\\[\\[\\s*\"?dish\"?\\s*\\]\\]"),
                                         QRegularExpression::MultilineOption);
    const auto dishes = static_cast<std::size_t>(toQt(*bytes).count(head));
    if (!draft->faults.empty() && (draft->value.venue.file.empty() || draft->value.dishes.size() < dishes)) {
        return tl::unexpected(std::move(draft->faults));
    }
    return draft;
}

Result<void> Library::remove(Kind kind, std::string_view id) {
    const auto path = pathOf(kind, id);
    if (!path) {
        return tl::unexpected(path.error());
    }
    if (!QFile::exists(toQt(*path))) {
        return fail(ErrorCode::NotFound, "there is no such file", {*path, 0, 0});
    }
    if (std::rename(path->c_str(), keptName(*path).c_str()) != 0) {
        return fail(ErrorCode::Io, "cannot take the file away", {*path, 0, 0});
    }
    return {};
}

}  // namespace brinebell
