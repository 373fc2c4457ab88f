// DocumentPage.h — what the venue editor and the recipe editor share: a document chosen from the library, its sections,
// the things in a section with their order, a form of fields for the chosen one, and every fault.
//
// After each edit the document is written and read again by the strict reader of its kind; each fault is shown at the
// field that stands on its line, and in the list below, from which Enter leads to the field. Edits are saved by
// themselves, undone and redone as a whole (EditHistory.h).
#pragma once

#include <QWidget>
#include <functional>
#include <vector>

#include "desk/EditHistory.h"
#include "desk/Fields.h"
#include "desk/Library.h"
#include "document/DocumentWriter.h"

class QComboBox;
class QLabel;
class QListWidget;
class QPushButton;
class QScrollArea;
class QTabBar;
class QVBoxLayout;

namespace brinebell {

class DocumentPage : public QWidget {
    Q_OBJECT

public:
    ~DocumentPage() override;
    /// Lists the library again and opens the document of this id; empty: the first.
    void open(const std::string& id);
    const std::string& openId() const { return m_id; }
    const std::vector<Error>& faults() const { return m_faults; }
    EditField* field(const QString& path) const;  ///< of the form on screen; null where it is not there
    void choose(int section, int item);
    bool saveNow();  ///< before the page is left, or the program

signals:
    void leaveWanted();

protected:
    DocumentPage(Library& library, Library::Kind kind, const QString& title, QWidget* parent);

    // The document.
    virtual EditHistoryCore& history() = 0;
    virtual bool load(const std::string& id, QString& why) = 0;
    virtual std::string makeNew() = 0;  ///< saved; its id, or empty with tell()
    virtual std::string makeCopy() = 0;
    virtual WrittenFile written() const = 0;
    virtual std::vector<Error> read(const WrittenFile& file) const = 0;
    virtual QString standing() const { return {}; }  ///< a sentence under the head
    virtual bool isReadOnly() const { return false; }

    // Its sections.
    virtual QStringList sections() const = 0;
    virtual bool hasItems(int section) const = 0;
    virtual QString keyOf(int section) const = 0;  ///< "ingredient", as in the file
    virtual QStringList itemsOf(int section) const = 0;
    virtual void addItem(int section) = 0;
    virtual void removeItem(int section, int item) = 0;
    virtual void moveItem(int section, int from, int to) = 0;
    virtual void buildForm(int section, int item) = 0;
    /// Changes when the form needs other fields than those it has.
    virtual QString shapeOf(int, int) const { return {}; }

    // For buildForm().
    using Get = std::function<QString()>;
    using Set = std::function<void(const QString&)>;
    LineField* addLine(const QString& label, const QString& path, Get get, Set set, LineField::Check check = {});
    TextField* addText(const QString& label, const QString& path, Get get, Set set, int lines = 3);
    ChoiceField* addChoice(const QString& label, const QString& path, const QStringList& words, const QStringList& keys,
                           Get get, Set set);
    CheckField* addCheck(const QString& label, const QString& path, std::function<bool()> get,
                         std::function<void(bool)> set);
    PickField* addPick(const QString& label, const QString& path, const QStringList& words, const QStringList& keys,
                       std::function<QStringList()> get, std::function<void(const QStringList&)> set);
    void addHeading(const QString& words);
    QPushButton* addButton(const QString& words, std::function<void()> pressed);
    void tell(const QString& words);  ///< a fault of the page itself; empty takes it back
    Library& library() { return m_library; }
    int section() const;
    int item() const;
    void begin();  ///< at the end of the constructor: virtual functions can be called from here on

private:
    QWidget* buildHead(const QString& title);
    QWidget* buildOutline();
    void connectButtons();
    void fillChooser();
    void refresh(bool again);
    void refreshItems();
    QString formShape() const;
    void rebuildForm();
    void showFaults();
    void showSaved();
    void goToFault(int row);
    void place(EditField* field, std::function<void(bool)> show);

    Library& m_library;
    Library::Kind m_kind;
    std::string m_id;
    std::vector<Error> m_faults;
    QStringList m_faultFields;
    QComboBox* m_chooser;
    QPushButton* m_back;
    QPushButton* m_new;
    QPushButton* m_copy;
    QPushButton* m_undo;
    QPushButton* m_redo;
    QPushButton* m_add;
    QPushButton* m_remove;
    QPushButton* m_up;
    QPushButton* m_down;
    QLabel* m_saved;
    QLabel* m_standing;
    QLabel* m_told;
    QTabBar* m_sections;
    QListWidget* m_items;
    QWidget* m_outline;
    QScrollArea* m_scroll;
    QVBoxLayout* m_form = nullptr;
    QListWidget* m_faultList;
    QString m_shape;
    std::vector<EditField*> m_fields;
    std::vector<std::function<void(bool)>> m_shows;
};

/// With the value and its history.
template <class Value>
class DocumentPageOf : public DocumentPage {
public:
    const Value& value() const { return m_history.value(); }

protected:
    DocumentPageOf(Library& library, Library::Kind kind, const QString& title, QWidget* parent,
                   std::function<WrittenFile(const Value&)> write)
        : DocumentPage(library, kind, title, parent),
          m_write(std::move(write)),
          m_history([this, &library, kind](const Value& value, OldFile old) {
              return library.save(kind, openId(), m_write(value).toml, old);
          }) {}

    EditHistoryCore& history() override { return m_history; }
    WrittenFile written() const override { return m_write(value()); }
    /// `change` is done to a copy, which is then the document.
    template <class Change>
    void edit(const QString& words, const QString& path, Change change) {
        Value next = value();
        change(next);
        m_history.edit(std::move(next), words, path);
    }
    template <class Change>
    Set setter(const QString& words, const QString& path, Change change) {
        return [this, words, path, change](const QString& text) {
            edit(words, path, [&](Value& next) { change(next, text); });
        };
    }

    std::function<WrittenFile(const Value&)> m_write;
    EditHistory<Value> m_history;
};

}  // namespace brinebell
