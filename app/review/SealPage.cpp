#include "review/SealPage.h"

#include <QAbstractItemView>
#include <QCheckBox>
#include <QComboBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QRadioButton>
#include <QScrollArea>
#include <QSpinBox>
#include <QStyle>
#include <QVBoxLayout>
#include <algorithm>

#include "bridge/TimeText.h"
#include "desk/Fields.h"
#include "review/AfterWords.h"

namespace brinebell {

namespace {

using Standing = SealsOpen::Standing;

constexpr int kListWidth = 360;
constexpr int kMostName = 80;

QLabel* sealLabel(const QString& text, const char* kind = "") {
    auto* label = new QLabel(text);
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    label->setProperty("kind", QLatin1String(kind));
    return label;
}

Millis dueFrom(const SealsOpen& open) {
    return open.liftedUtc + kSealCheckFrom;
}

Millis dueBy(const SealsOpen& open) {
    return open.liftedUtc + kSealCheckBy;
}

QString standingWords(const SealsOpen& open) {
    switch (open.standing()) {
        case Standing::Cooling:
            return SealPage::tr("Still cooling: leave the jars alone until %1").arg(dayAndTime(dueFrom(open)));
        case Standing::Due:
            return SealPage::tr("Due now, and until %1").arg(dayAndTime(dueBy(open)));
        case Standing::Late:
            return SealPage::tr("Late: it was due until %1").arg(dayAndTime(dueBy(open)));
    }
    return {};
}

// The sources' rule within the 24 hours, and the careful reading of it afterwards.
QString unsealedRule(const SealsOpen& open) {
    if (open.standing() == Standing::Late) {
        return SealPage::
            tr("The 24 hours were over on %1. A jar that is found unsealed only now can no longer be saved: throw its "
               "food away without tasting it. Choose another line only for what was done in time.")
                .arg(dayAndTime(dueBy(open)));
    }
    return SealPage::tr(
               "An unsealed jar must be dealt with within 24 hours, so until %1: refrigerate it and use it within "
               "days; or freeze it with room at the top; or look for nicks in the rim, take a new lid and process it "
               "again for the full time.")
        .arg(dayAndTime(dueBy(open)));
}

QSpinBox* countBox(const QString& name) {
    auto* box = new QSpinBox;
    box->setAccessibleName(name);
    box->setRange(0, 0);
    box->setMinimumWidth(90);
    return box;
}

void addPlaces(QComboBox& box, const QString& none, std::initializer_list<JarsPlace> places) {
    box.addItem(none, QString());
    for (const JarsPlace place : places) {
        box.addItem(placeName(place), toQt(toText(place)));
    }
}

}  // namespace

SealPage::SealPage(const Clock& clock, QWidget* parent) : QWidget(parent), m_clock(clock) {
    auto* page = new QVBoxLayout(this);
    page->setContentsMargins(16, 12, 16, 12);
    page->addWidget(sealLabel(tr("Check the seals"), "title"));
    m_told = sealLabel({});
    page->addWidget(m_told);
    auto* columns = new QHBoxLayout;
    columns->setSpacing(24);
    columns->addLayout(buildList(), 0);
    m_form = new QWidget;
    m_form->setLayout(buildLoad());
    auto* scroll = new QScrollArea;
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setWidget(m_form);
    columns->addWidget(scroll, 1);
    page->addLayout(columns, 1);
    for (QLabel* label : findChildren<QLabel*>()) {
        label->setTextFormat(Qt::PlainText);
    }
}

QVBoxLayout* SealPage::buildList() {
    m_list = new QListWidget;
    m_list->setAccessibleName(tr("Loads whose seals are not checked yet"));
    m_list->setFixedWidth(kListWidth);
    m_list->setWordWrap(true);
    m_list->setSpacing(4);
    connect(m_list, &QListWidget::currentRowChanged, this, &SealPage::showLoad);
    auto* leave = new QPushButton(tr("&Front page"));
    connect(leave, &QPushButton::clicked, this, &SealPage::leaveWanted);
    auto* column = new QVBoxLayout;
    column->addWidget(m_list, 1);
    column->addWidget(leave);
    return column;
}

QVBoxLayout* SealPage::buildLoad() {
    m_load = sealLabel({}, "head");
    m_standing = sealLabel({});
    m_checked = new QRadioButton(tr("The seals were &tested"));
    m_wentHome = new QRadioButton(tr("The jars went &home before anybody could test them"));
    m_checked->setChecked(true);
    connect(m_checked, &QRadioButton::toggled, this, &SealPage::follow);
    m_counts = new QWidget;
    m_counts->setLayout(buildCounts());
    m_save = new QPushButton(tr("&Save this load"));
    m_save->setProperty("lead", true);
    connect(m_save, &QPushButton::clicked, this, &SealPage::save);
    auto* load = new QVBoxLayout;
    load->setContentsMargins(0, 0, 8, 0);
    load->setSpacing(10);
    load->addWidget(m_load);
    load->addWidget(m_standing);
    load->addWidget(sealLabel(tr("Take the bands off. Press the middle of each lid: a sealed lid curves down and does "
                                 "not move. Tapped with a spoon it rings clear. Do not tighten bands, and do not open "
                                 "a jar to fill it up."),
                              "quiet"));
    load->addWidget(m_checked);
    load->addWidget(m_wentHome);
    load->addWidget(m_counts);
    auto* row = new QHBoxLayout;
    row->addWidget(m_save);
    m_sum = sealLabel({});
    row->addWidget(m_sum, 1);
    load->addLayout(row);
    load->addStretch();
    return load;
}

QFormLayout* SealPage::buildCounts() {
    m_sealed = countBox(tr("Sealed"));
    m_unsealed = countBox(tr("Not sealed"));
    m_broken = countBox(tr("Broken"));
    m_allSealed = new QPushButton(tr("&All sealed"));
    connect(m_allSealed, &QPushButton::clicked, this, [this] {
        m_unsealed->setValue(0);
        m_broken->setValue(0);
        m_sealed->setValue(m_sealed->maximum());
    });
    m_rule = sealLabel({}, "fault");
    m_unsealedWent = new QComboBox;
    m_unsealedWent->setAccessibleName(tr("The unsealed ones were"));
    addPlaces(*m_unsealedWent, tr("choose what was done"),
              {JarsPlace::Refrigerated, JarsPlace::Frozen, JarsPlace::Reprocessed, JarsPlace::Discarded});
    m_jarsWent = new QComboBox;
    m_jarsWent->setAccessibleName(tr("The sealed ones were"));
    addPlaces(*m_jarsWent, tr("not said"),
              {JarsPlace::TakenHome, JarsPlace::Eaten, JarsPlace::Shown, JarsPlace::Discarded});
    m_by = new QLineEdit;
    m_by->setAccessibleName(tr("Checked by"));
    m_by->setMaxLength(kMostName);
    m_early = new QCheckBox(tr("They have not cooled 12 hours; &count them all the same"));
    auto* form = new QFormLayout;
    form->setContentsMargins(0, 0, 0, 0);
    auto* first = new QHBoxLayout;
    first->addWidget(m_sealed);
    first->addWidget(m_allSealed);
    first->addStretch();
    form->addRow(tr("Sealed"), first);
    form->addRow(tr("Not sealed"), m_unsealed);
    form->addRow(tr("Broken"), m_broken);
    form->addRow(m_rule);
    form->addRow(tr("The unsealed ones were"), m_unsealedWent);
    form->addRow(tr("The sealed ones were"), m_jarsWent);
    form->addRow(tr("Checked by"), m_by);
    form->addRow(m_early);
    for (QSpinBox* box : {m_sealed, m_unsealed, m_broken}) {
        box->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
        connect(box, &QSpinBox::valueChanged, this, &SealPage::follow);
    }
    for (QComboBox* box : {m_unsealedWent, m_jarsWent}) {
        box->view()->setAccessibleName(box->accessibleName());
        box->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
        connect(box, &QComboBox::currentIndexChanged, this, &SealPage::follow);
    }
    connect(m_by, &QLineEdit::textChanged, this, &SealPage::follow);
    connect(m_early, &QCheckBox::toggled, this, &SealPage::follow);
    return form;
}

void SealPage::showOpen(Logbook* logbook, const QString& whyNoLogbook) {
    m_logbook = logbook;
    inform(whyNoLogbook, true);
    fillList();
}

void SealPage::fillList() {
    m_open.clear();
    if (m_logbook != nullptr) {
        if (auto open = sealsOpen(*m_logbook, m_clock.now())) {
            m_open = std::move(*open);
        } else {
            inform(toQt(describe(open.error())), true);
        }
    }
    const QSignalBlocker quiet(m_list);
    m_list->clear();
    for (const SealsOpen& open : m_open) {
        const QString jars = open.jars == 1 ? tr("1 jar") : tr("%1 jars").arg(open.jars);
        m_list->addItem(tr("%1, load %2 of %3: %4")
                            .arg(toQt(open.dish), QString::number(open.load + 1), QString::number(open.loads), jars) +
                        QLatin1Char('\n') + standingWords(open));
    }
    m_list->setCurrentRow(m_open.empty() ? -1 : 0);
    showLoad(m_list->currentRow());
}

const SealsOpen* SealPage::chosen() const {
    const int row = m_list->currentRow();
    return row >= 0 && static_cast<std::size_t>(row) < m_open.size() ? &m_open[static_cast<std::size_t>(row)] : nullptr;
}

void SealPage::showLoad(int row) {
    Q_UNUSED(row);
    const SealsOpen* open = chosen();
    m_form->setVisible(open != nullptr);
    if (open == nullptr) {
        if (m_logbook != nullptr && m_told->text().isEmpty()) {
            inform(tr("No seals wait to be checked."), false);
        }
        return;
    }
    m_load->setText(
        tr("%1 · lot %2 · %3, %4").arg(toQt(open->dish), toQt(open->lot), toQt(open->title), toQt(open->place)));
    m_standing->setText(tr("%1. Cooling began on %2.").arg(standingWords(*open), dayAndTime(open->liftedUtc)));
    m_standing->setProperty("kind", open->standing() == Standing::Late ? "fault" : "");
    m_standing->style()->polish(m_standing);
    for (QSpinBox* box : {m_sealed, m_unsealed, m_broken}) {
        const QSignalBlocker quiet(box);
        box->setRange(0, open->jars);
        box->setValue(0);
    }
    m_unsealedWent->setCurrentIndex(0);
    m_jarsWent->setCurrentIndex(0);
    m_early->setChecked(false);
    m_checked->setChecked(true);
    follow();
}

// What still stands in the way of saving; empty: nothing.
QString SealPage::missing() const {
    const SealsOpen* open = chosen();
    if (open == nullptr || m_wentHome->isChecked()) {
        return {};
    }
    const int counted = m_sealed->value() + m_unsealed->value() + m_broken->value();
    if (counted != open->jars) {
        return tr("%1 of %2 jars counted").arg(counted).arg(open->jars);
    }
    if (m_unsealed->value() > 0 && m_unsealedWent->currentIndex() == 0) {
        return tr("Say what was done with the unsealed jars");
    }
    if (m_by->text().trimmed().isEmpty()) {
        return tr("Say who checked them");
    }
    return open->standing() == Standing::Cooling && !m_early->isChecked() ? tr("The jars have not cooled 12 hours yet")
                                                                          : QString();
}

void SealPage::follow() {
    const SealsOpen* open = chosen();
    if (open == nullptr) {
        return;
    }
    m_counts->setVisible(m_checked->isChecked());
    auto& form = static_cast<QFormLayout&>(*m_counts->layout());
    const bool unsealed = m_unsealed->value() > 0;
    m_rule->setText(unsealed ? unsealedRule(*open) : QString());
    form.setRowVisible(m_rule, unsealed);
    form.setRowVisible(m_unsealedWent, unsealed);
    form.setRowVisible(m_early, open->standing() == Standing::Cooling);
    const QString why = missing();
    m_sum->setText(why);
    m_save->setEnabled(why.isEmpty());
}

void SealPage::save() {
    const SealsOpen* open = chosen();
    if (open == nullptr || !missing().isEmpty()) {
        return;
    }
    std::vector<Command> commands;
    const auto add = [&](CommandKind kind, std::int64_t value, const QString& text) -> Command& {
        Command& command = commands.emplace_back();
        command.kind = kind;
        command.load = open->load;
        command.value = value;
        command.text = text.toStdString();
        return command;
    };
    if (m_wentHome->isChecked()) {
        add(CommandKind::TellJarsWent, kWholeLoad, toQt(toText(JarsPlace::TakenHomeUnchecked)));
    } else {
        Command& check =
            add(CommandKind::CheckSeals, m_early->isChecked() ? 1 : 0, plainText(m_by->text().trimmed(), false));
        check.sealed = m_sealed->value();
        check.unsealed = m_unsealed->value();
        check.broken = m_broken->value();
        if (m_unsealed->value() > 0) {
            add(CommandKind::TellJarsWent, kUnsealedJars, m_unsealedWent->currentData().toString());
        }
        if (m_jarsWent->currentIndex() > 0) {
            add(CommandKind::TellJarsWent, kWholeLoad, m_jarsWent->currentData().toString());
        }
    }
    const QString dish = toQt(open->dish);
    if (!tell(commands)) {
        return;
    }
    inform(tr("Saved: %1, load %2.").arg(dish).arg(open->load + 1), false);
    fillList();
    if (m_open.empty()) {
        inform(tr("Saved. No seals wait to be checked any more."), false);
    }
    m_list->setFocus();
}

bool SealPage::tell(const std::vector<Command>& commands) {
    const SealsOpen* open = chosen();
    const auto refused = tellAfterwards(*m_logbook, open->session, commands, m_clock.now(), Cause::Key);
    if (!refused) {
        inform(tr("Nothing was saved: %1").arg(toQt(describe(refused.error()))), true);
        return false;
    }
    if (!*refused) {
        return true;
    }
    const auto record = m_logbook->session(open->session);
    inform(tr("Nothing was saved: %1").arg(record ? toQt(describe(**refused, record->network)) : QString()), true);
    return false;
}

void SealPage::inform(const QString& words, bool isFault) {
    m_told->setText(words);
    m_told->setProperty("kind", isFault ? "fault" : "head");
    m_told->style()->polish(m_told);
    m_told->setVisible(!words.isEmpty());
}

QString SealPage::told() const {
    return m_told->text();
}

bool isAnySealDue(const std::vector<SealsOpen>& open) {
    return std::any_of(open.begin(), open.end(),
                       [](const SealsOpen& load) { return load.standing() != Standing::Cooling; });
}

QString sealsOpenWords(const std::vector<SealsOpen>& open) {
    if (open.empty()) {
        return {};
    }
    const auto count = [&](Standing standing) {
        return static_cast<int>(std::count_if(open.begin(), open.end(),
                                              [&](const SealsOpen& load) { return load.standing() == standing; }));
    };
    const auto first = [&](Standing standing) -> const SealsOpen& {
        return *std::find_if(open.begin(), open.end(),
                             [&](const SealsOpen& load) { return load.standing() == standing; });
    };
    QStringList words;
    if (const int late = count(Standing::Late); late > 0) {
        words << (late == 1 ? SealPage::tr("The seals of 1 load were not checked within 24 hours.")
                            : SealPage::tr("The seals of %1 loads were not checked within 24 hours.").arg(late));
    }
    if (const int due = count(Standing::Due); due > 0) {
        words << (due == 1 ? SealPage::tr("The seals of 1 load are to be checked now.")
                           : SealPage::tr("The seals of %1 loads are to be checked now.").arg(due)) +
                     QLatin1Char(' ') +
                     SealPage::tr("Until %1 an unsealed jar can still be saved.")
                         .arg(dayAndTime(dueBy(first(Standing::Due))));
    }
    if (const int cooling = count(Standing::Cooling); cooling > 0) {
        words << (cooling == 1 ? SealPage::tr("1 load is still cooling.")
                               : SealPage::tr("%1 loads are still cooling.").arg(cooling)) +
                     QLatin1Char(' ') +
                     SealPage::tr("The first seal check is due from %1.")
                         .arg(dayAndTime(dueFrom(first(Standing::Cooling))));
    }
    return words.join(QLatin1Char('\n'));
}

}  // namespace brinebell
