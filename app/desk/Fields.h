// Fields.h — the fields of the desk's editors: each with its label, its fault at the field, and text that is only text.
//
// Own faults (what is typed cannot be read) are found as one types and nothing is handed on until they are mended;
// faults of the whole document (setFault()) come from the strict reader of its file. Control characters, invisible
// marks and marks that turn the direction of writing are left out and the field says so; lengths are bounded; markup is
// text. Undo and redo keys go to the page, not to the single field, and so do keys with Alt.
#pragma once

#include <QString>
#include <QStringList>
#include <QWidget>
#include <functional>

#include "base/Result.h"
#include "bridge/TimeText.h"

class QCheckBox;
class QComboBox;
class QLabel;
class QLineEdit;
class QListWidget;
class QPlainTextEdit;
class QVBoxLayout;

namespace brinebell {

inline constexpr int kMostFieldLetters = 2'000;  ///< what a file takes in one text
inline constexpr int kMostLineLetters = 200;     ///< what a name, a title or a quantity may have in the window

/// `text` without control characters (line feeds only with `manyLines`), marks of direction and other invisible marks.
QString plainText(const QString& text, bool manyLines);

class EditField : public QWidget {
    Q_OBJECT

public:
    const QString& path() const { return m_path; }  ///< as WrittenFile::fieldAt() names it, "recipe.title"
    QString label() const;
    /// What the whole document says of this field; empty takes it back.
    void setFault(const QString& words);
    QString fault() const;  ///< what is shown: the own fault goes before the document's
    bool hasOwnFault() const { return !m_ownFault.isEmpty(); }
    QWidget* editor() const { return m_editor; }
    void setHint(const QString& words);  ///< a quiet line below: an example, what it means

signals:
    void left();  ///< the keyboard went elsewhere: what was typed is one step

protected:
    EditField(const QString& label, const QString& path, QWidget* editor, bool labelAbove);
    void setOwnFault(const QString& words);
    void setNotice(const QString& words);  ///< what was left out of the last input
    bool eventFilter(QObject* watched, QEvent* event) override;
    virtual void leave();

private:
    void showWords();

    QString m_path;
    QLabel* m_label = nullptr;
    QWidget* m_editor;
    QLabel* m_hint;
    QLabel* m_words;
    QString m_ownFault;
    QString m_documentFault;
    QString m_notice;
};

/// One line: a name, an id, a number, a quantity.
class LineField : public EditField {
    Q_OBJECT

public:
    /// Why a text cannot be taken; empty where it can.
    using Check = std::function<QString(const QString& text)>;

    LineField(const QString& label, const QString& path, int mostLetters = kMostLineLetters);
    void setCheck(Check check) { m_check = std::move(check); }
    void setPlaceholder(const QString& words);
    void setReadOnly(bool readOnly);
    /// Shows the document's value. What is being typed stays, and so does what could not be read, unless the value has
    /// become another.
    void show(const QString& text);
    void showAgain(const QString& text);  ///< after undo: whatever was being typed goes
    QString text() const;

signals:
    void edited(const QString& text);  ///< passed the check

protected:
    void leave() override;

private:
    void take(const QString& typed);

    QLineEdit* m_line;
    int m_mostLetters;
    Check m_check;
    QString m_shown;
    bool m_typing = false;
};

/// A check that a reader of core/ passes: `reads(QStringCheck)(readLength)`. With `mayBeEmpty` nothing is a good text.
template <class Reader>
LineField::Check checkOf(Reader reader, bool mayBeEmpty = false) {
    return [reader, mayBeEmpty](const QString& text) {
        if (mayBeEmpty && text.trimmed().isEmpty()) {
            return QString();
        }
        const auto value = reader(text.toStdString());
        return value ? QString() : toQt(value.error().message);
    };
}

/// Several lines: a description, or a list with one thing a line.
class TextField : public EditField {
    Q_OBJECT

public:
    TextField(const QString& label, const QString& path, int lines = 3);
    void show(const QString& text);
    void showAgain(const QString& text);
    QString text() const;
    static QString joined(const std::vector<std::string>& list);
    static std::vector<std::string> split(const QString& text);  ///< without blank lines

signals:
    void edited(const QString& text);

protected:
    void leave() override;

private:
    void take();
    void put(const QString& text);

    QPlainTextEdit* m_edit;
    QString m_shown;
    bool m_typing = false;
};

/// One of a few words.
class ChoiceField : public EditField {
    Q_OBJECT

public:
    ChoiceField(const QString& label, const QString& path);
    void setChoices(const QStringList& words, const QStringList& keys);
    void show(const QString& key);  ///< a key that is not offered is added as it is, so that nothing changes by itself
    QString key() const;

signals:
    void edited(const QString& key);

private:
    QComboBox* m_box;
};

/// Any of a list, ticked with Space.
class PickField : public EditField {
    Q_OBJECT

public:
    PickField(const QString& label, const QString& path);
    void setChoices(const QStringList& words, const QStringList& keys);
    void show(const QStringList& keys);  ///< what is not offered is added, so that nothing changes by itself
    QStringList keys() const;            ///< those ticked, in the order of the list

signals:
    void edited(const QStringList& keys);

private:
    QListWidget* m_list;
};

/// Yes or no; the label is the box's own and has the letter for Alt.
class CheckField : public EditField {
    Q_OBJECT

public:
    CheckField(const QString& label, const QString& path);
    void show(bool checked);
    bool isChecked() const;

signals:
    void edited(bool checked);

private:
    QCheckBox* m_box;
};

}  // namespace brinebell
