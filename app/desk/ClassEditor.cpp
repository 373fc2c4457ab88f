#include "desk/ClassEditor.h"

#include <QBoxLayout>
#include <QDateTime>
#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>
#include <algorithm>

#include "bridge/TimeText.h"
#include "bridge/Words.h"
#include "desk/SheetChart.h"
#include "kitchen/VenueFile.h"
#include "plan/ClassWriter.h"

namespace brinebell {

namespace {

enum ClassSection { kClass, kDishes, kTalk };

std::chrono::minutes offsetAt(Millis utc) {
    const QDateTime local = QDateTime::fromMSecsSinceEpoch(utc.count());
    return std::chrono::minutes(local.offsetFromUtc() / 60);
}

// Venue and recipes come from the library, so none lies outside; a class without either is never opened.
WrittenFile writtenClass(const ClassPlan& plan) {
    auto written = writeClass(plan, offsetAt(plan.startUtc));
    return written ? std::move(*written) : WrittenFile{};
}

std::string freeTalkId(const ClassPlan& plan) {
    for (int number = 1;; ++number) {
        const std::string id = "point-" + std::to_string(number);
        if (std::none_of(plan.talk.begin(), plan.talk.end(), [&](const ClassTalk& t) { return t.point.id == id; })) {
            return id;
        }
    }
}

}  // namespace

std::optional<Fraction> batchFor(const Recipe& recipe, int jars, JarSize jar) {
    std::vector<Fraction> steps{{1, 4}, {1, 3}, {1, 2}, {2, 3}, {3, 4}, {1, 1}};
    constexpr int kMostHalves = 20;
    for (int halves = 3; halves <= kMostHalves; ++halves) {
        steps.emplace_back(halves, 2);
    }
    for (const Fraction& step : steps) {
        const auto most = mostJars(recipe, step, jar);
        if (most && *most >= jars) {
            return step;
        }
    }
    return std::nullopt;
}

ClassEditor::ClassEditor(Library& library, QWidget* parent)
    : DocumentPageOf<ClassPlan>(library, Library::Kind::Class, tr("Classes"), parent, writtenClass) {
    buildSheet();
    begin();
    m_pause.setSingleShot(true);
    connect(&m_pause, &QTimer::timeout, this, &ClassEditor::planNow);
    connect(&m_history, &EditHistoryCore::changed, this, &ClassEditor::takeEdit);
    connect(&m_planner, &ClassPlanner::drafted, this, &ClassEditor::takeDraft);
    connect(&m_planner, &ClassPlanner::notDrafted, this,
            [this](const Error& reason) { showState(QStringLiteral("▲ ") + toQt(reason.message)); });
    connect(&m_planner, &ClassPlanner::planned, this, [this](const Prospect& prospect) {
        takeOver(*m_prepared, prospect);
        showState(Words::quality(prospect.planned));
        showSheet();
    });
    connect(&m_planner, &ClassPlanner::notPlanned, this,
            [this](const Error& reason) { showState(QStringLiteral("▲ ") + toQt(reason.message)); });
}

void ClassEditor::takeEdit() {
    // An answer on its way is of what stood in the fields before.
    m_planner.abandonAll();
    m_older = true;
    if (m_prepared) {
        showState(tr("The sheet below is older: a new one is being sought."));
    }
    m_pause.start(kPauseMs);
}

void ClassEditor::takeDraft(const PreparedClass& prepared) {
    m_prepared = prepared;
    m_older = false;
    showState(tr("A first sheet, by the usual order; a better one is being sought."));
    showSheet();
    m_planner.plan(m_prepared->network);
}

void ClassEditor::buildSheet() {
    constexpr int kWarningsHeight = 66;
    constexpr int kChartHeight = 150;
    auto* page = static_cast<QBoxLayout*>(layout());
    m_state = new QLabel;
    m_ends = new QLabel;
    for (QLabel* words : {m_state, m_ends}) {
        words->setTextFormat(Qt::PlainText);
        words->setWordWrap(true);
    }
    m_chart = new SheetChart;
    m_chart->setFixedHeight(kChartHeight);
    m_warnings = new QPlainTextEdit;
    m_warnings->setReadOnly(true);
    m_warnings->setTabChangesFocus(true);
    m_warnings->setFixedHeight(kWarningsHeight);
    m_warnings->setAccessibleName(tr("Warnings and notes of the sheet"));
    auto* prepare = new QPushButton(tr("Prepare this c&lass"));
    connect(prepare, &QPushButton::clicked, this, [this] {
        if (const auto path = this->library().pathOf(Library::Kind::Class, openId()); path && saveNow()) {
            emit prepareWanted(toQt(*path));
        }
    });
    auto* row = new QHBoxLayout;
    auto* told = new QVBoxLayout;
    told->addWidget(m_state);
    told->addWidget(m_ends);
    told->addStretch();
    row->addLayout(told, 1);
    row->addWidget(m_warnings, 1);
    row->addWidget(prepare, 0, Qt::AlignTop);
    page->addWidget(m_chart);
    page->addLayout(row);
}

void ClassEditor::showState(const QString& words) {
    m_state->setText(words);
}

void ClassEditor::planNow() {
    if (openId().empty()) {
        return;
    }
    if (!faults().empty()) {
        showState(m_prepared ? tr("▲ The sheet below is older: the class has faults.")
                             : tr("No sheet yet: the class has faults."));
        return;
    }
    m_planner.draft(value());
}

void ClassEditor::showSheet() {
    const auto& prospect = m_prepared->prospect;
    m_chart->setSheet(m_prepared->network, m_prepared->sheet, prospect ? prospect->timing : BackTiming());
    m_ends->setText(prospect ? Words::ends(prospect->ahead, m_prepared->network)
                             : tr("The class ends at %1, the kitchen at %2.")
                                   .arg(timeOfDay(m_prepared->network.startUtc + m_prepared->sheet.classEnd),
                                        timeOfDay(m_prepared->network.startUtc + m_prepared->sheet.kitchenEnd)));
    QStringList words;
    for (const std::string& warning : m_prepared->warnings) {
        words << QStringLiteral("▲ ") + toQt(warning);
    }
    m_warnings->setPlainText(words.join(QLatin1Char('\n')));
}

bool ClassEditor::load(const std::string& id, QString& why) {
    auto draft = library().openClass(id);
    m_prepared.reset();
    m_chart->clear();
    m_warnings->clear();
    m_ends->clear();
    showState({});
    if (!draft) {
        m_planner.abandonAll();
        why = toQt(describe(draft.error().front()));
        return false;
    }
    m_history.open(std::move(draft->value));
    return true;
}

std::string ClassEditor::keep(ClassPlan plan) {
    const auto saved = library().save(plan, OldFile::Keep, offsetAt(plan.startUtc));
    if (!saved) {
        tell(toQt(describe(saved.error())));
        return {};
    }
    return plan.id;
}

std::string ClassEditor::makeNew() {
    ClassPlan plan;
    for (const Library::Entry& entry : library().list(Library::Kind::Venue)) {
        auto venue = entry.sound() ? readVenueFile(entry.path) : readVenueFile({});
        if (venue && venue->altitude && !venue->canners.empty()) {
            plan.venue = std::move(*venue);
            break;
        }
    }
    if (plan.venue.file.empty()) {
        tell(tr("A class needs a kitchen first, with its altitude and a canner: make one under Kitchens."));
        return {};
    }
    plan.title = tr("New class").toStdString();
    plan.teacher = tr("Teacher").toStdString();
    plan.id = library().freeId(Library::Kind::Class, plan.title);
    constexpr int kEvening = 18;
    plan.startUtc = Millis(QDateTime(QDate::currentDate().addDays(1), QTime(kEvening, 0)).toMSecsSinceEpoch());
    plan.slot = std::chrono::minutes(150);
    plan.opening = std::chrono::minutes(5);
    plan.closing = std::chrono::minutes(5);
    return keep(std::move(plan));
}

std::string ClassEditor::makeCopy() {
    ClassPlan plan = value();
    plan.title = tr("%1 (copy)").arg(toQt(plan.title)).toStdString();
    plan.id = library().freeId(Library::Kind::Class, plan.title);
    return keep(std::move(plan));
}

std::vector<Error> ClassEditor::read(const WrittenFile& file) const {
    auto draft = draftOfClass(file.toml, value().file, [](const std::string& path) { return readFile(path); });
    return draft ? std::move(draft->faults) : std::move(draft.error());
}

QStringList ClassEditor::sections() const {
    return {tr("Class"), tr("Dishes"), tr("What is said")};
}

bool ClassEditor::hasItems(int section) const {
    return section != kClass;
}

QString ClassEditor::keyOf(int section) const {
    static constexpr const char* kKeys[] = {"class", "dish", "talk"};
    return QLatin1String(kKeys[section]);
}

QStringList ClassEditor::itemsOf(int section) const {
    QStringList items;
    if (section == kDishes) {
        for (const PlannedDish& dish : value().dishes) {
            items << toQt(dish.recipe.title);
        }
    } else {
        for (const ClassTalk& talk : value().talk) {
            items << toQt(talk.point.text);
        }
    }
    return items;
}

QString ClassEditor::shapeOf(int section, int item) const {
    QString shape = toQt(value().venue.id);
    if (section == kDishes && item >= 0 && item < static_cast<int>(value().dishes.size())) {
        shape += QLatin1Char(' ') + toQt(value().dishes[static_cast<std::size_t>(item)].recipe.id);
    }
    return shape;
}

void ClassEditor::addItem(int section) {
    if (section == kTalk) {
        edit(tr("Add"), {}, [](ClassPlan& plan) {
            ClassTalk talk;
            talk.point.id = freeTalkId(plan);
            talk.point.text = tr("What is said").toStdString();
            talk.point.source = tr("Our own teaching note").toStdString();
            plan.talk.push_back(std::move(talk));
        });
        return;
    }
    for (const Library::Entry& entry : library().list(Library::Kind::Recipe)) {
        const bool isDish = std::any_of(value().dishes.begin(), value().dishes.end(),
                                        [&](const PlannedDish& dish) { return dish.recipe.id == entry.id; });
        if (entry.sound() && !isDish) {
            chooseRecipe(-1, toQt(entry.id));
            return;
        }
    }
    tell(tr("Every recipe of the shelf is a dish of this class already."));
}

void ClassEditor::removeItem(int section, int item) {
    edit(tr("Remove"), {}, [&](ClassPlan& plan) {
        section == kDishes ? void(plan.dishes.erase(plan.dishes.begin() + item))
                           : void(plan.talk.erase(plan.talk.begin() + item));
    });
}

void ClassEditor::moveItem(int section, int from, int to) {
    const auto a = static_cast<std::size_t>(from);
    const auto b = static_cast<std::size_t>(to);
    edit(tr("Move"), {}, [&](ClassPlan& plan) {
        section == kDishes ? std::swap(plan.dishes[a], plan.dishes[b]) : std::swap(plan.talk[a], plan.talk[b]);
    });
}

}  // namespace brinebell
