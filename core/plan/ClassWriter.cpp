#include "plan/ClassWriter.h"

#include <fmt/format.h>

#include <algorithm>
#include <cstdlib>
#include <filesystem>

#include "base/Language.h"
#include "base/QuotedText.h"
#include "base/UtcText.h"
#include "kitchen/VenueWriter.h"
#include "quantity/ExactText.h"
#include "quantity/ReadQuantity.h"
#include "recipe/RecipeWriter.h"

namespace brinebell {
namespace {

Result<std::string> relativeTo(const std::string& classFile, const std::string& file) {
    namespace fs = std::filesystem;
    const fs::path folder = fs::path(classFile).parent_path().lexically_normal();
    const fs::path path = fs::path(file).lexically_normal().lexically_relative(folder.empty() ? "." : folder);
    if (path.empty() || std::count(path.begin(), path.end(), fs::path("..")) > 1) {
        return fail(ErrorCode::Refused,
                    core::say("{} lies outside the folder above {}", quotedText(file), quotedText(classFile)));
    }
    return path.generic_string();
}

std::string startText(Millis utc, std::chrono::minutes offset) {
    if (offset == std::chrono::minutes::zero()) {
        return utcText(utc);
    }
    std::string text = utcText(utc + offset);
    text.pop_back();
    const auto minutes = std::abs(offset.count());
    return fmt::format("{}{}{:02}:{:02}", text, offset.count() < 0 ? '-' : '+', minutes / 60, minutes % 60);
}

Result<void> writeHead(DocumentWriter& out, const ClassPlan& plan, std::chrono::minutes offset) {
    const auto venue = relativeTo(plan.file, plan.venue.file);
    if (!venue) {
        return tl::unexpected(venue.error());
    }
    out.table("class");
    out.text("id", plan.id);
    out.text("title", plan.title);
    out.text("teacher", plan.teacher);
    out.text("venue", *venue);
    out.text("start", startText(plan.startUtc, offset));
    out.text("slot", printDuration(plan.slot));
    if (plan.kitchenSlot) {
        out.text("kitchen_slot", printDuration(*plan.kitchenSlot));
    }
    if (plan.helpers != 0) {
        out.integer("helpers", plan.helpers);
    }
    out.textIf("kitchen_closer", plan.kitchenCloser);
    if (plan.opening != Seconds::zero()) {
        out.text("opening", printDuration(plan.opening));
    }
    if (plan.closing != Seconds::zero()) {
        out.text("closing", printDuration(plan.closing));
    }
    return {};
}

Result<void> writeDish(DocumentWriter& out, const ClassPlan& plan, const PlannedDish& dish) {
    const auto recipe = relativeTo(plan.file, dish.recipe.file);
    if (!recipe) {
        return tl::unexpected(recipe.error());
    }
    out.element("dish");
    out.text("recipe", *recipe);
    out.text("batch", exactText(dish.batch));
    out.integer("jars", dish.jars);
    out.text("jar", toText(dish.jar));
    out.text("canner", dish.canner);
    out.textsIf("made_ahead", dish.madeAhead);
    return {};
}

}  // namespace

Result<WrittenFile> writeClass(const ClassPlan& plan, std::chrono::minutes offset) {
    DocumentWriter out("A class, written by Brinebell. Every key: DEVELOPERS.md, Files people write.");
    if (auto head = writeHead(out, plan, offset); !head) {
        return tl::unexpected(head.error());
    }
    writeConfirmations(out, plan.confirmed);
    for (const PlannedDish& dish : plan.dishes) {
        if (auto written = writeDish(out, plan, dish); !written) {
            return tl::unexpected(written.error());
        }
    }
    for (const ClassTalk& talk : plan.talk) {
        writeTalkPoint(out, talk.point);
        out.booleanUnless("may_drop", talk.mayDrop, false);
    }
    return std::move(out).take();
}

}  // namespace brinebell
