#include "desk/Fields.h"

#include <QAbstractItemView>
#include <QCheckBox>
#include <QComboBox>
#include <QEvent>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPlainTextEdit>
#include <QVBoxLayout>

namespace brinebell {

namespace {

bool isMarkOfDirection(char32_t character) {
    return character == 0x061C || character == 0x200E || character == 0x200F ||
           (character >= 0x202A && character <= 0x202E) || (character >= 0x2066 && character <= 0x2069);
}

// Joiners belong to the spelling of some scripts and stay.
bool isInvisible(char32_t character) {
    return character == 0x00AD || character == 0x200B || character == 0xFEFF || character == 0xFFFC ||
           character == 0xFFFD || (character >= 0x2028 && character <= 0x2029) ||
           (character >= 0x2060 && character <= 0x2064) || (character >= 0x206A && character <= 0x206F) ||
           (character >= 0xE0000 && character <= 0xE007F);
}

bool isControl(char32_t character) {
    return character < 0x20 || (character >= 0x7F && character <= 0x9F);
}

}  // namespace

QString plainText(const QString& text, bool manyLines) {
    QString plain;
    QString unix = text;
    unix.replace(QStringLiteral("\r\n"), QStringLiteral("\n")).replace(QLatin1Char('\r'), QLatin1Char('\n'));
    unix.replace(QChar::ParagraphSeparator, QLatin1Char('\n')).replace(QChar::LineSeparator, QLatin1Char('\n'));
    for (const uint character : unix.toUcs4()) {
        if (character == '\n' && manyLines) {
            plain += QLatin1Char('\n');
        } else if (character == '\t' || character == '\n') {
            plain += QLatin1Char(' ');
        } else if (!isControl(character) && !isMarkOfDirection(character) && !isInvisible(character) &&
                   !(character >= 0xD800 && character <= 0xDFFF)) {
            plain += QString::fromUcs4(reinterpret_cast<const char32_t*>(&character), 1);
        }
    }
    return plain;
}

EditField::EditField(const QString& label, const QString& path, QWidget* editor, bool labelAbove)
    : m_path(path), m_editor(editor), m_hint(new QLabel), m_words(new QLabel) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2);
    if (labelAbove) {
        m_label = new QLabel(label);
        m_label->setTextFormat(Qt::PlainText);
        m_label->setBuddy(editor);
        column->addWidget(m_label);
    }
    editor->setAccessibleName(QString(label).remove(QLatin1Char('&')));
    editor->setObjectName(path);
    column->addWidget(editor);
    m_hint->setProperty("kind", QStringLiteral("quiet"));
    m_words->setProperty("kind", QStringLiteral("fault"));
    for (QLabel* words : {m_hint, m_words}) {
        words->setTextFormat(Qt::PlainText);
        words->setWordWrap(true);
        words->hide();
        column->addWidget(words);
    }
    editor->installEventFilter(this);
    setFocusProxy(editor);
}

QString EditField::label() const {
    return m_editor->accessibleName();
}

void EditField::setHint(const QString& words) {
    m_hint->setText(words);
    m_hint->setVisible(!words.isEmpty());
    showWords();
}

void EditField::setFault(const QString& words) {
    if (words != m_documentFault) {
        m_documentFault = words;
        showWords();
    }
}

void EditField::setOwnFault(const QString& words) {
    if (words != m_ownFault) {
        m_ownFault = words;
        showWords();
    }
}

void EditField::setNotice(const QString& words) {
    if (words != m_notice) {
        m_notice = words;
        showWords();
    }
}

QString EditField::fault() const {
    return m_ownFault.isEmpty() ? m_documentFault : m_ownFault;
}

// A shape as well as a colour; and who cannot see the line hears it with the field.
void EditField::showWords() {
    QStringList lines;
    if (!fault().isEmpty()) {
        lines << QStringLiteral("▲ ") + fault();
    }
    if (!m_notice.isEmpty()) {
        lines << QStringLiteral("▲ ") + m_notice;
    }
    m_words->setText(lines.join(QLatin1Char('\n')));
    m_words->setVisible(!lines.isEmpty());
    const QString hint = m_hint->text();
    if (!hint.isEmpty()) {
        lines << hint;
    }
    m_editor->setAccessibleDescription(lines.join(QLatin1Char('\n')));
}

void EditField::leave() {
    setNotice({});
    emit left();
}

bool EditField::eventFilter(QObject* watched, QEvent* event) {
    if (watched == m_editor && event->type() == QEvent::FocusOut) {
        leave();
    }
    if (watched == m_editor && event->type() == QEvent::Wheel && !m_editor->hasFocus()) {
        event->ignore();  // the page scrolls, and no choice changes unseen
        return true;
    }
    if (watched == m_editor && event->type() == QEvent::ShortcutOverride) {
        auto* key = static_cast<QKeyEvent*>(event);
        // Alt+D would take the rest of the word away, and never reach the button that it is written on.
        const bool isForThePage = key->modifiers() == Qt::AltModifier;
        if (isForThePage || key->matches(QKeySequence::Undo) || key->matches(QKeySequence::Redo)) {
            event->ignore();
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

LineField::LineField(const QString& label, const QString& path, int mostLetters)
    : EditField(label, path, new QLineEdit, true),
      m_line(static_cast<QLineEdit*>(editor())),
      m_mostLetters(mostLetters) {
    // The line would cut without a word; with one letter more take() sees that there was more.
    m_line->setMaxLength(mostLetters + 1);
    connect(m_line, &QLineEdit::textEdited, this, &LineField::take);
}

void LineField::setPlaceholder(const QString& words) {
    m_line->setPlaceholderText(words);
}

void LineField::setReadOnly(bool readOnly) {
    m_line->setReadOnly(readOnly);
}

QString LineField::text() const {
    return m_line->text();
}

void LineField::take(const QString& typed) {
    m_typing = true;
    const QString all = plainText(typed, false);
    const QString plain = all.left(m_mostLetters);
    if (plain != typed) {
        const int before = static_cast<int>(plainText(typed.left(m_line->cursorPosition()), false).size());
        m_line->setText(plain);
        m_line->setCursorPosition(before);
    }
    setNotice(plain != all     ? tr("Only the first %L1 characters fit here.").arg(m_mostLetters)
              : plain != typed ? tr("Control characters and invisible marks were left out.")
                               : QString());
    setOwnFault(m_check ? m_check(plain) : QString());
    if (!hasOwnFault()) {
        emit edited(plain);
    }
}

void LineField::show(const QString& text) {
    const bool isAnother = text != m_shown;
    m_shown = text;
    if (m_typing || (hasOwnFault() && !isAnother)) {
        return;
    }
    showAgain(text);
}

void LineField::showAgain(const QString& text) {
    m_shown = text;
    m_typing = false;
    setOwnFault({});
    if (m_line->text() != text) {
        m_line->setText(text);
        m_line->setCursorPosition(0);
    }
}

void LineField::leave() {
    m_typing = false;
    if (!hasOwnFault()) {
        show(m_shown);
    }
    EditField::leave();
}

TextField::TextField(const QString& label, const QString& path, int lines)
    : EditField(label, path, new QPlainTextEdit, true), m_edit(static_cast<QPlainTextEdit*>(editor())) {
    m_edit->setTabChangesFocus(true);
    constexpr int kFrame = 14;
    m_edit->setFixedHeight(m_edit->fontMetrics().lineSpacing() * lines + kFrame);
    connect(m_edit, &QPlainTextEdit::textChanged, this, &TextField::take);
}

QString TextField::text() const {
    return m_edit->toPlainText();
}

void TextField::put(const QString& text) {
    const QSignalBlocker quiet(m_edit);
    const int cursor = m_edit->textCursor().position();
    m_edit->setPlainText(text);
    QTextCursor back = m_edit->textCursor();
    back.setPosition(std::min(cursor, static_cast<int>(text.size())));
    m_edit->setTextCursor(back);
}

void TextField::take() {
    m_typing = true;
    const QString typed = m_edit->toPlainText();
    QString plain = plainText(typed, true);
    QStringList notices;
    if (plain != typed) {
        notices << tr("Control characters and invisible marks were left out.");
    }
    if (plain.toUcs4().size() > kMostFieldLetters) {
        const auto kept = plain.toUcs4().first(kMostFieldLetters);
        plain = QString::fromUcs4(reinterpret_cast<const char32_t*>(kept.constData()), kept.size());
        notices << tr("Only the first %L1 characters fit here.").arg(kMostFieldLetters);
    }
    if (plain != typed) {
        put(plain);
    }
    setNotice(notices.join(QLatin1Char(' ')));
    emit edited(plain);
}

void TextField::show(const QString& text) {
    m_shown = text;
    if (!m_typing) {
        showAgain(text);
    }
}

void TextField::showAgain(const QString& text) {
    m_shown = text;
    m_typing = false;
    if (m_edit->toPlainText() != text) {
        put(text);
    }
}

void TextField::leave() {
    m_typing = false;
    show(m_shown);
    EditField::leave();
}

QString TextField::joined(const std::vector<std::string>& list) {
    QStringList lines;
    for (const std::string& text : list) {
        lines << toQt(text).replace(QLatin1Char('\n'), QLatin1Char(' '));
    }
    return lines.join(QLatin1Char('\n'));
}

std::vector<std::string> TextField::split(const QString& text) {
    std::vector<std::string> list;
    for (const QString& line : text.split(QLatin1Char('\n'))) {
        if (!line.trimmed().isEmpty()) {
            list.push_back(line.trimmed().toStdString());
        }
    }
    return list;
}

ChoiceField::ChoiceField(const QString& label, const QString& path)
    : EditField(label, path, new QComboBox, true), m_box(static_cast<QComboBox*>(editor())) {
    m_box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_box->setFocusPolicy(Qt::StrongFocus);
    m_box->view()->setAccessibleName(m_box->accessibleName());
    connect(m_box, &QComboBox::activated, this, [this] { emit edited(key()); });
}

void ChoiceField::setChoices(const QStringList& words, const QStringList& keys) {
    const QString chosen = key();
    const QSignalBlocker quiet(m_box);
    m_box->clear();
    for (int at = 0; at < keys.size(); ++at) {
        m_box->addItem(words.value(at), keys.at(at));
    }
    const int index = m_box->findData(chosen);
    m_box->setCurrentIndex(index);
}

void ChoiceField::show(const QString& key) {
    const QSignalBlocker quiet(m_box);
    int index = m_box->findData(key);
    if (index < 0) {
        m_box->addItem(key, key);
        index = m_box->count() - 1;
    }
    m_box->setCurrentIndex(index);
}

QString ChoiceField::key() const {
    return m_box->currentData().toString();
}

PickField::PickField(const QString& label, const QString& path)
    : EditField(label, path, new QListWidget, true), m_list(static_cast<QListWidget*>(editor())) {
    connect(m_list, &QListWidget::itemChanged, this, [this] { emit edited(keys()); });
}

void PickField::setChoices(const QStringList& words, const QStringList& keys) {
    const QSignalBlocker quiet(m_list);
    m_list->clear();
    for (int at = 0; at < keys.size(); ++at) {
        auto* item = new QListWidgetItem(plainText(words.value(at), false), m_list);
        item->setData(Qt::UserRole, keys.at(at));
        item->setCheckState(Qt::Unchecked);
    }
    constexpr int kMostRows = 5;
    constexpr int kFrame = 12;
    const int rows = std::clamp(m_list->count(), 1, kMostRows);
    m_list->setFixedHeight((m_list->fontMetrics().lineSpacing() + 4) * rows + kFrame);
}

void PickField::show(const QStringList& keys) {
    const QSignalBlocker quiet(m_list);
    QStringList known;
    for (int at = 0; at < m_list->count(); ++at) {
        const QString key = m_list->item(at)->data(Qt::UserRole).toString();
        known << key;
        m_list->item(at)->setCheckState(keys.contains(key) ? Qt::Checked : Qt::Unchecked);
    }
    for (const QString& key : keys) {
        if (!known.contains(key)) {
            auto* item = new QListWidgetItem(plainText(key, false), m_list);
            item->setData(Qt::UserRole, key);
            item->setCheckState(Qt::Checked);
        }
    }
}

QStringList PickField::keys() const {
    QStringList ticked;
    for (int at = 0; at < m_list->count(); ++at) {
        if (m_list->item(at)->checkState() == Qt::Checked) {
            ticked << m_list->item(at)->data(Qt::UserRole).toString();
        }
    }
    return ticked;
}

CheckField::CheckField(const QString& label, const QString& path)
    : EditField(label, path, new QCheckBox(label), false), m_box(static_cast<QCheckBox*>(editor())) {
    connect(m_box, &QCheckBox::clicked, this, [this](bool checked) { emit edited(checked); });
}

void CheckField::show(bool checked) {
    m_box->setChecked(checked);
}

bool CheckField::isChecked() const {
    return m_box->isChecked();
}

}  // namespace brinebell
