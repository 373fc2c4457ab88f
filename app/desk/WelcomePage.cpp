#include "desk/WelcomePage.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include "desk/ChoiceFields.h"
#include "kitchen/VenueWriter.h"
#include "quantity/ExactText.h"
#include "quantity/ReadQuantity.h"
#include "safety/BoilingPoint.h"

namespace brinebell {

namespace {

constexpr int kColumnWidth = 560;

QLabel* welcomeLabel(const QString& text, const char* kind) {
    auto* label = new QLabel(text);
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    label->setProperty("kind", QLatin1String(kind));
    return label;
}

}  // namespace

WelcomePage::WelcomePage(Library& library, QWidget* parent)
    : QWidget(parent),
      m_library(library),
      m_language(ChoiceFields::language()),
      m_units(ChoiceFields::units()),
      m_altitude(new LineField(tr("&Altitude of your kitchen"), QStringLiteral("venue.altitude"))),
      m_howKnown(new LineField(tr("&How the altitude is known"), QStringLiteral("venue.altitude_from"))),
      m_distance(ChoiceFields::distance()),
      m_reading(welcomeLabel({}, "head")),
      m_fault(welcomeLabel({}, "fault")) {
    auto* body = new QWidget;
    auto* column = new QVBoxLayout(body);
    column->setContentsMargins(80, 28, 40, 20);
    column->setSpacing(10);
    column->addWidget(welcomeLabel(tr("Welcome to Brinebell"), "title"));
    column->addWidget(
        welcomeLabel(tr("Every process time depends on how high the kitchen lies, so that comes first. All of "
                        "this can be changed later."),
                     "quiet"));
    for (QWidget* part :
         {static_cast<QWidget*>(m_language), static_cast<QWidget*>(m_units), static_cast<QWidget*>(m_altitude),
          static_cast<QWidget*>(m_reading), static_cast<QWidget*>(m_howKnown), static_cast<QWidget*>(m_distance),
          static_cast<QWidget*>(m_fault)}) {
        part->setMaximumWidth(kColumnWidth);
        column->addWidget(part);
    }
    m_altitude->setHint(tr("With its unit: 4,200 ft or 1280 m."));
    m_howKnown->setHint(tr("A survey map, the county extension office. A guess sets a wrong process time."));
    auto* begin = new QPushButton(tr("&Begin"));
    begin->setProperty("lead", true);
    auto* demonstration = new QPushButton(tr("Begin with the &demonstration class"));
    auto* skip = new QPushButton(tr("&Skip this"));
    auto* row = new QHBoxLayout;
    row->addWidget(begin);
    row->addWidget(demonstration);
    row->addWidget(skip);
    row->addStretch();
    column->addSpacing(8);
    column->addLayout(row);
    column->addStretch();
    auto* scroll = new QScrollArea;
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setWidget(body);
    auto* page = new QVBoxLayout(this);
    page->setContentsMargins(0, 0, 0, 0);
    page->addWidget(scroll);

    const Choices kept = readChoices();
    m_language->show(kept.language);
    m_units->show(kept.units);
    m_distance->show(customs().shownAs.units == Units::Metric ? toQt(exactText(kept.distance))
                                                              : QStringLiteral("8 ft"));
    m_altitude->setCheck([this](const QString& text) {
        const auto read = readLength(text.toStdString());
        return read || text.trimmed().isEmpty() ? QString() : toQt(read.error().message);
    });
    // What is typed is the value: there is no document that it goes into before the end.
    for (LineField* field : {m_altitude, m_howKnown, m_distance}) {
        connect(field, &LineField::edited, field, &LineField::show);
    }
    connect(m_altitude, &LineField::edited, this, [this] { showReading(); });
    connect(m_units, &ChoiceField::edited, this, [this] { showReading(); });
    connect(m_language, &ChoiceField::edited, this, [this] {
        Choices choices = readChoices();
        choices.language = m_language->key();
        choices.units = m_units->key();
        keepChoices(choices);
        emit languageChosen();
    });
    connect(begin, &QPushButton::clicked, this, [this] { this->begin(false); });
    connect(demonstration, &QPushButton::clicked, this, [this] { this->begin(true); });
    connect(skip, &QPushButton::clicked, this, [this] {
        // The settings are no longer empty, so this page does not come again by itself.
        keepChoices(readChoices());
        emit skipped();
    });
    showReading();
    m_fault->hide();
}

void WelcomePage::focusStart() {
    m_altitude->setFocus();
}

WelcomePage::Typed WelcomePage::typed() const {
    return {m_altitude->text(), m_howKnown->text(), m_distance->text()};
}

void WelcomePage::type(const Typed& typed) {
    m_altitude->showAgain(typed.altitude);
    m_howKnown->showAgain(typed.howKnown);
    m_distance->showAgain(typed.distance);
    showReading();
}

QString WelcomePage::faults() const {
    QStringList list;
    for (const EditField* field : {m_altitude, m_howKnown, m_distance}) {
        if (!field->fault().isEmpty()) {
            list << field->fault();
        }
    }
    return (list << m_fault->text()).join(QLatin1Char('\n')).trimmed();
}

Result<Length> WelcomePage::altitude() const {
    return readLength(m_altitude->text().toStdString());
}

// Both units at once, and what it means for the pot: a slip of the unit is seen at once.
void WelcomePage::showReading() {
    const auto height = altitude();
    const auto boils = height ? boilingPointAt(*height) : Result<Temperature>();
    m_reading->setVisible(height && boils);
    if (!height || !boils) {
        return;
    }
    const Choices chosen = choices();
    const bool comma = customs().shownAs.decimalComma;
    const ShownAs us{Units::UsCustomary, comma};
    const ShownAs metric{Units::Metric, comma};
    const bool metricFirst = customsFor(chosen).shownAs.units == Units::Metric;
    const ShownAs& first = metricFirst ? metric : us;
    const ShownAs& second = metricFirst ? us : metric;
    m_reading->setText(tr("%1 (%2): water boils at about %3 (%4).")
                           .arg(toQt(shownHeight(*height, first)), toQt(shownHeight(*height, second)),
                                toQt(shown(*boils, first)), toQt(shown(*boils, second))));
}

Choices WelcomePage::choices() const {
    Choices choices = readChoices();
    choices.language = m_language->key();
    choices.units = m_units->key();
    if (const auto distance = ChoiceFields::distanceIn(m_distance->text())) {
        choices.distance = *distance;
    }
    return choices;
}

// What nearly every kitchen has, so that only the canner is left to describe; all of it can be edited.
Venue WelcomePage::kitchen() const {
    Venue venue;
    venue.name = tr("My kitchen").toStdString();
    venue.id = m_library.freeId(Library::Kind::Venue, venue.name);
    venue.readingDistance = choices().distance;
    if (const auto height = altitude()) {
        venue.altitude = Altitude{*height, m_howKnown->text().trimmed().toStdString()};
    }
    const auto add = [&](const char* id, const QString& name, StationKind kind) {
        venue.stations.push_back({id, name.toStdString(), kind, HeatKind::None, std::nullopt});
    };
    add("burner-1", tr("Burner 1"), StationKind::Burner);
    add("burner-2", tr("Burner 2"), StationKind::Burner);
    add("burner-3", tr("Burner 3"), StationKind::Burner);
    add("burner-4", tr("Burner 4"), StationKind::Burner);
    add("oven", tr("Oven"), StationKind::Oven);
    add("sink", tr("Sink"), StationKind::Sink);
    add("board", tr("Board"), StationKind::Board);
    add("counter", tr("Counter"), StationKind::Counter);
    return venue;
}

// The strict reader of kitchens has the say; what it finds stands at the field.
bool WelcomePage::showFaults(const Venue& venue) {
    const WrittenFile file = writeVenue(venue);
    const auto draft = draftOfVenue(file.toml, "venue");
    const std::vector<Error>& faults = draft ? draft->faults : draft.error();
    EditField* first = nullptr;
    for (EditField* field : {m_altitude, m_howKnown, m_distance}) {
        field->setFault({});
    }
    for (const Error& fault : faults) {
        const QString path = toQt(file.fieldAt(fault.where.line));
        EditField* field = path == m_altitude->path()   ? m_altitude
                           : path == m_howKnown->path() ? m_howKnown
                                                        : static_cast<EditField*>(m_distance);
        field->setFault(toQt(fault.message));
        first = first == nullptr ? field : first;
    }
    if (!venue.altitude && !m_altitude->hasOwnFault()) {
        m_altitude->setFault(tr("The altitude is wanted; skip this page where it is not known yet."));
        first = m_altitude;
    } else if (venue.altitude && venue.altitude->howKnown.empty()) {
        m_howKnown->setFault(tr("Say how it is known: an altitude that nobody can trace is a guess."));
        first = first == nullptr || first == m_distance ? m_howKnown : first;
    }
    for (EditField* field : {m_altitude, m_howKnown, m_distance}) {
        if (field->hasOwnFault()) {
            first = field;
        }
    }
    if (first != nullptr) {
        first->setFocus();
    }
    return first != nullptr;
}

void WelcomePage::begin(bool demonstration) {
    const Venue venue = kitchen();
    if (showFaults(venue)) {
        return;
    }
    auto kept = m_library.save(venue, OldFile::Keep);
    QString classFile;
    if (kept && demonstration) {
        kept = m_library.addDemonstration();
        classFile = kept ? toQt(*kept) : QString();
    }
    m_fault->setVisible(!kept);
    if (!kept) {
        m_fault->setText(toQt(describe(kept.error())));
        return;
    }
    keepChoices(choices());
    emit done(classFile);
}

}  // namespace brinebell
