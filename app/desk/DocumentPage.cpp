#include "desk/DocumentPage.h"

#include <QAbstractItemView>
#include <QAction>
#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QScrollArea>
#include <QTabBar>
#include <QVBoxLayout>

#include "PlainLabel.h"

namespace brinebell {

namespace {

constexpr int kOutlineWidth = 270;
constexpr int kFaultHeight = 84;
constexpr int kFieldWidth = 820;  // a line longer than that is hard to read

}  // namespace

DocumentPage::DocumentPage(Library& library, Library::Kind kind, const QString& title, QWidget* parent)
    : QWidget(parent), m_library(library), m_kind(kind) {
    auto* page = new QVBoxLayout(this);
    page->setContentsMargins(16, 10, 16, 10);
    page->setSpacing(6);
    page->addWidget(buildHead(title));
    m_standing = plainLabel({}, "quiet");
    m_told = plainLabel({}, "fault");
    page->addWidget(m_standing);
    page->addWidget(m_told);
    m_sections = new QTabBar;
    m_sections->setExpanding(false);
    m_sections->setAccessibleName(tr("Sections"));
    page->addWidget(m_sections);
    auto* middle = new QHBoxLayout;
    middle->addWidget(buildOutline());
    m_scroll = new QScrollArea;
    m_scroll->setWidgetResizable(true);
    m_scroll->setFocusPolicy(Qt::NoFocus);
    m_scroll->setFrameShape(QFrame::NoFrame);
    middle->addWidget(m_scroll, 1);
    page->addLayout(middle, 1);
    m_faultList = new QListWidget;
    m_faultList->setAccessibleName(tr("Faults; Enter leads to the field"));
    m_faultList->setObjectName(QStringLiteral("faults"));
    m_faultList->setMaximumHeight(kFaultHeight);
    m_faultList->setWordWrap(true);
    page->addWidget(m_faultList);
    connectButtons();
    tell({});
}

// A field that goes with the page still loses the keyboard, when there is no history left to tell.
DocumentPage::~DocumentPage() {
    for (EditField* field : findChildren<EditField*>()) {
        field->disconnect(this);
    }
}

QWidget* DocumentPage::buildHead(const QString& title) {
    auto* head = new QWidget;
    auto* row = new QHBoxLayout(head);
    row->setContentsMargins(0, 0, 0, 0);
    auto* name = plainLabel(title, "title");
    name->setWordWrap(false);
    m_chooser = new QComboBox;
    m_chooser->setAccessibleName(title);
    m_chooser->view()->setAccessibleName(title);
    m_chooser->setMinimumContentsLength(18);
    m_chooser->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_new = new QPushButton(tr("&New"));
    m_copy = new QPushButton(m_kind == Library::Kind::Recipe ? tr("Make a &class version") : tr("&Copy"));
    m_undo = new QPushButton(tr("&Undo"));
    m_redo = new QPushButton(tr("&Redo"));
    m_back = new QPushButton(tr("&Back"));
    m_saved = plainLabel({}, "quiet");
    m_saved->setWordWrap(true);
    row->addWidget(name);
    row->addWidget(m_chooser);
    for (QWidget* part : {static_cast<QWidget*>(m_new), static_cast<QWidget*>(m_copy), static_cast<QWidget*>(m_undo),
                          static_cast<QWidget*>(m_redo)}) {
        row->addWidget(part);
    }
    row->addWidget(m_saved, 1);
    row->addWidget(m_back);
    return head;
}

QWidget* DocumentPage::buildOutline() {
    m_outline = new QWidget;
    m_outline->setFixedWidth(kOutlineWidth);
    auto* column = new QVBoxLayout(m_outline);
    column->setContentsMargins(0, 0, 0, 0);
    m_items = new QListWidget;
    m_items->setAccessibleName(tr("What this section holds"));
    m_items->setWordWrap(true);
    m_items->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    column->addWidget(m_items, 1);
    m_add = new QPushButton(tr("A&dd"));
    m_remove = new QPushButton(tr("R&emove"));
    m_up = new QPushButton(tr("U&p"));
    m_down = new QPushButton(tr("D&own"));
    for (const auto& [left, right] : {std::pair{m_add, m_remove}, std::pair{m_up, m_down}}) {
        auto* row = new QHBoxLayout;
        row->addWidget(left);
        row->addWidget(right);
        column->addLayout(row);
    }
    return m_outline;
}

void DocumentPage::connectButtons() {
    connect(m_back, &QPushButton::clicked, this, [this] {
        saveNow();
        emit leaveWanted();
    });
    connect(m_chooser, &QComboBox::activated, this,
            [this] { open(m_chooser->currentData().toString().toStdString()); });
    connect(m_new, &QPushButton::clicked, this, [this] {
        if (const std::string id = makeNew(); !id.empty()) {
            open(id);
        }
    });
    connect(m_copy, &QPushButton::clicked, this, [this] {
        if (const std::string id = makeCopy(); !id.empty()) {
            open(id);
        }
    });
    const auto key = [this](const QKeySequence::StandardKey keys, QPushButton* button) {
        auto* action = new QAction(this);
        action->setShortcuts(keys);
        action->setShortcutContext(Qt::WidgetWithChildrenShortcut);
        addAction(action);
        connect(action, &QAction::triggered, button, [button] { button->click(); });
    };
    key(QKeySequence::Undo, m_undo);
    key(QKeySequence::Redo, m_redo);
    connect(m_undo, &QPushButton::clicked, this, [this] { history().undo(); });
    connect(m_redo, &QPushButton::clicked, this, [this] { history().redo(); });
    connect(m_sections, &QTabBar::currentChanged, this, [this] {
        refreshItems();
        rebuildForm();
    });
    connect(m_items, &QListWidget::currentRowChanged, this, &DocumentPage::rebuildForm);
    connect(m_add, &QPushButton::clicked, this, [this] {
        addItem(section());
        m_items->setCurrentRow(m_items->count() - 1);
        if (!m_fields.empty()) {
            m_fields.front()->setFocus();
        }
    });
    connect(m_remove, &QPushButton::clicked, this, [this] {
        if (item() >= 0) {
            removeItem(section(), item());
        }
    });
    const auto move = [this](int by) {
        const int from = item();
        const int to = from + by;
        if (from >= 0 && to >= 0 && to < m_items->count()) {
            moveItem(section(), from, to);
            m_items->setCurrentRow(to);
        }
    };
    connect(m_up, &QPushButton::clicked, this, [move] { move(-1); });
    connect(m_down, &QPushButton::clicked, this, [move] { move(1); });
    connect(m_faultList, &QListWidget::itemActivated, this, [this] { goToFault(m_faultList->currentRow()); });
}

void DocumentPage::begin() {
    const QStringList names = sections();
    for (int at = 0; at < names.size(); ++at) {
        m_sections->addTab(QStringLiteral("&%1 %2").arg(at + 1).arg(names.at(at)));
    }
    connect(&history(), &EditHistoryCore::changed, this, [this] { refresh(false); });
    connect(&history(), &EditHistoryCore::stepped, this, [this] { refresh(true); });
    // The stack counts a step after it was done, so it is asked by its own signals.
    connect(&history().stack(), &QUndoStack::canUndoChanged, m_undo, &QPushButton::setEnabled);
    connect(&history().stack(), &QUndoStack::canRedoChanged, m_redo, &QPushButton::setEnabled);
    m_undo->setEnabled(false);
    m_redo->setEnabled(false);
    connect(&history(), &EditHistoryCore::savedOrFailed, this, &DocumentPage::showSaved);
}

void DocumentPage::fillChooser() {
    m_chooser->clear();
    for (const Library::Entry& entry : m_library.list(m_kind)) {
        const QString mark = entry.sound() ? QString() : QStringLiteral("▲ ");
        m_chooser->addItem(mark + plainText(toQt(entry.title), false), toQt(entry.id));
    }
}

void DocumentPage::open(const std::string& id) {
    saveNow();
    fillChooser();
    const int chosen = id.empty() ? 0 : m_chooser->findData(toQt(id));
    const QString key = m_chooser->itemData(chosen).toString();
    m_chooser->setCurrentIndex(chosen);
    tell({});
    QString why;
    const bool loaded = !key.isEmpty() && (m_id = key.toStdString(), load(m_id, why));
    if (!loaded) {
        m_id.clear();
        tell(key.isEmpty() ? tr("There is nothing here yet. New makes one.") : why);
    }
    m_sections->setVisible(loaded);
    m_outline->setVisible(loaded && hasItems(section()));
    m_scroll->setVisible(loaded);
    m_faultList->setVisible(loaded);
    m_copy->setEnabled(loaded);
    if (loaded) {
        m_sections->setCurrentIndex(0);
        refresh(true);
        rebuildForm();
    }
    showSaved();
    (m_id.empty() ? static_cast<QWidget*>(m_new) : m_chooser)->setFocus();
}

bool DocumentPage::saveNow() {
    return m_id.empty() || history().saveNow();
}

int DocumentPage::section() const {
    return std::max(0, m_sections->currentIndex());
}

int DocumentPage::item() const {
    return m_items->currentRow();
}

void DocumentPage::choose(int section, int item) {
    m_sections->setCurrentIndex(section);
    m_items->setCurrentRow(item);
}

void DocumentPage::refresh(bool again) {
    if (m_id.empty()) {
        return;
    }
    const WrittenFile file = written();
    m_faults = read(file);
    m_faultFields.clear();
    for (const Error& fault : m_faults) {
        m_faultFields << toQt(file.fieldAt(fault.where.line));
    }
    refreshItems();
    if (m_shape != formShape()) {
        rebuildForm();
    }
    for (const auto& show : m_shows) {
        show(again);
    }
    m_standing->setText(standing());
    m_standing->setVisible(!m_standing->text().isEmpty());
    showFaults();
}

// Another thing, another number of them or another shape of the same one: other fields.
QString DocumentPage::formShape() const {
    return QStringLiteral("%1 %2 %3 %4")
        .arg(section())
        .arg(item())
        .arg(m_items->count())
        .arg(shapeOf(section(), item()));
}

void DocumentPage::refreshItems() {
    const QSignalBlocker quiet(m_items);
    const bool has = hasItems(section());
    m_outline->setVisible(has && !m_id.empty());
    const QStringList items = has ? itemsOf(section()) : QStringList();
    const int row = m_items->currentRow();
    while (m_items->count() > items.size()) {
        delete m_items->takeItem(m_items->count() - 1);
    }
    for (int at = 0; at < items.size(); ++at) {
        const QString head = QStringLiteral("%1[%2]").arg(keyOf(section())).arg(at);
        const bool faulty = std::any_of(m_faultFields.begin(), m_faultFields.end(),
                                        [&](const QString& path) { return path.startsWith(head); });
        const QString words = (faulty ? QStringLiteral("▲ ") : QString()) + plainText(items.at(at), false);
        if (at >= m_items->count()) {
            m_items->addItem(words);
        } else {
            m_items->item(at)->setText(words);
        }
    }
    m_items->setCurrentRow(items.isEmpty() ? -1 : std::clamp(row, 0, static_cast<int>(items.size()) - 1));
    for (QPushButton* button : {m_add, m_remove, m_up, m_down}) {
        button->setEnabled(!isReadOnly() && (button == m_add || !items.isEmpty()));
    }
}

void DocumentPage::rebuildForm() {
    if (m_id.empty()) {
        return;
    }
    QWidget* focus = focusWidget();
    const QString back = focus != nullptr && m_scroll->isAncestorOf(focus) ? focus->objectName() : QString();
    m_fields.clear();
    m_shows.clear();
    auto* body = new QWidget;
    m_form = new QVBoxLayout(body);
    m_form->setContentsMargins(8, 0, 8, 8);
    m_form->setSpacing(8);
    m_shape = formShape();
    if (!hasItems(section()) || item() >= 0) {
        buildForm(section(), item());
    } else {
        m_form->addWidget(plainLabel(tr("Nothing here yet. Add makes the first."), "quiet"));
    }
    m_form->addStretch();
    body->setEnabled(!isReadOnly());
    // The old form may be in the middle of telling of an edit.
    if (QWidget* old = m_scroll->takeWidget()) {
        old->hide();
        old->setParent(this);
        old->deleteLater();
    }
    m_scroll->setWidget(body);
    showFaults();
    if (EditField* same = back.isEmpty() ? nullptr : field(back)) {
        same->setFocus();
    }
}

void DocumentPage::place(EditField* field, std::function<void(bool)> show) {
    field->setMaximumWidth(kFieldWidth);
    m_form->addWidget(field);
    m_fields.push_back(field);
    show(true);
    m_shows.push_back(std::move(show));
    connect(field, &EditField::left, this, [this] { history().endTyping(); });
}

LineField* DocumentPage::addLine(const QString& label, const QString& path, Get get, Set set, LineField::Check check) {
    auto* field = new LineField(label, path);
    field->setCheck(std::move(check));
    place(field, [field, get](bool again) { again ? field->showAgain(get()) : field->show(get()); });
    connect(field, &LineField::edited, this, set);
    return field;
}

TextField* DocumentPage::addText(const QString& label, const QString& path, Get get, Set set, int lines) {
    auto* field = new TextField(label, path, lines);
    place(field, [field, get](bool again) { again ? field->showAgain(get()) : field->show(get()); });
    connect(field, &TextField::edited, this, set);
    return field;
}

ChoiceField* DocumentPage::addChoice(const QString& label, const QString& path, const QStringList& words,
                                     const QStringList& keys, Get get, Set set) {
    auto* field = new ChoiceField(label, path);
    field->setChoices(words, keys);
    place(field, [field, get](bool) { field->show(get()); });
    connect(field, &ChoiceField::edited, this, set);
    return field;
}

CheckField* DocumentPage::addCheck(const QString& label, const QString& path, std::function<bool()> get,
                                   std::function<void(bool)> set) {
    auto* field = new CheckField(label, path);
    place(field, [field, get](bool) { field->show(get()); });
    connect(field, &CheckField::edited, this, set);
    return field;
}

PickField* DocumentPage::addPick(const QString& label, const QString& path, const QStringList& words,
                                 const QStringList& keys, std::function<QStringList()> get,
                                 std::function<void(const QStringList&)> set) {
    auto* field = new PickField(label, path);
    field->setChoices(words, keys);
    place(field, [field, get](bool) { field->show(get()); });
    connect(field, &PickField::edited, this, set);
    return field;
}

void DocumentPage::addHeading(const QString& words) {
    m_form->addWidget(plainLabel(words, "head"));
}

QPushButton* DocumentPage::addButton(const QString& words, std::function<void()> pressed) {
    auto* button = new QPushButton(words);
    m_form->addWidget(button, 0, Qt::AlignLeft);
    connect(button, &QPushButton::clicked, this, pressed);
    return button;
}

EditField* DocumentPage::field(const QString& path) const {
    const auto found =
        std::find_if(m_fields.begin(), m_fields.end(), [&](const EditField* field) { return field->path() == path; });
    return found == m_fields.end() ? nullptr : *found;
}

void DocumentPage::showFaults() {
    for (EditField* field : m_fields) {
        QStringList words;
        for (int at = 0; at < m_faultFields.size(); ++at) {
            const QString& path = m_faultFields.at(at);
            if (path == field->path() || path.startsWith(field->path() + QLatin1Char('[')) ||
                path.startsWith(field->path() + QLatin1Char('.'))) {
                words << toQt(m_faults[static_cast<std::size_t>(at)].message);
            }
        }
        field->setFault(words.join(QLatin1Char('\n')));
    }
    m_faultList->clear();
    for (std::size_t at = 0; at < m_faults.size(); ++at) {
        const QString& path = m_faultFields.at(static_cast<qsizetype>(at));
        m_faultList->addItem(QStringLiteral("▲ %1: %2").arg(path, toQt(m_faults[at].message)));
    }
    m_faultList->setVisible(!m_faults.empty());
}

void DocumentPage::goToFault(int row) {
    const QString path = m_faultFields.value(row);
    for (int at = 0; at < m_sections->count(); ++at) {
        if (path.startsWith(keyOf(at) + QLatin1Char('[')) || path.startsWith(keyOf(at) + QLatin1Char('.'))) {
            const int open = static_cast<int>(path.indexOf(QLatin1Char('['))) + 1;
            const int close = static_cast<int>(path.indexOf(QLatin1Char(']')));
            choose(at, hasItems(at) && open > 0 ? path.mid(open, close - open).toInt() : 0);
            break;
        }
    }
    for (EditField* field : m_fields) {
        if (path.startsWith(field->path())) {
            field->setFocus();
            m_scroll->ensureWidgetVisible(field);
            return;
        }
    }
}

void DocumentPage::showSaved() {
    if (m_id.empty() || isReadOnly()) {
        m_saved->clear();
        return;
    }
    const QString fault = history().fault();
    m_saved->setProperty("kind", fault.isEmpty() ? QStringLiteral("quiet") : QStringLiteral("fault"));
    m_saved->setText(!fault.isEmpty()      ? QStringLiteral("▲ ") + tr("Not saved yet: %1").arg(fault)
                     : history().isSaved() ? tr("Saved")
                                           : tr("Saving…"));
}

void DocumentPage::tell(const QString& words) {
    m_told->setText(words);
    m_told->setVisible(!words.isEmpty());
}

}  // namespace brinebell
