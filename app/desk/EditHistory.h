// EditHistory.h — undo, redo and autosave of one document that is edited as a whole: a recipe, a venue, a class.
//
// Every edit hands over the whole new value; edits of one field that follow each other (typing) are one step to undo.
// A second after the last edit the value is saved. The first save since it was opened keeps the old file beside; what
// cannot be saved is told, stays here, and is tried again every few seconds and at each further edit.
//
//   EditHistory<Venue> history([&](const Venue& venue, OldFile old) { return library.save(venue, old); });
//   history.open(venue);
//   history.edit(changed, tr("Name"), "venue.name");
#pragma once

#include <QObject>
#include <QTimer>
#include <QUndoStack>
#include <functional>
#include <memory>

#include "base/Result.h"
#include "document/KeptFile.h"

namespace brinebell {

/// What does not depend on the document's type.
class EditHistoryCore : public QObject {
    Q_OBJECT

public:
    ~EditHistoryCore() override;

    QUndoStack& stack() { return m_stack; }
    void undo() { m_stack.undo(); }
    void redo() { m_stack.redo(); }
    /// The next edit is a step of its own, also where it is of the same field.
    void endTyping() { ++m_run; }

    bool isSaved() const { return !m_unsaved; }
    const QString& fault() const { return m_fault; }  ///< why the last try to save failed; empty where it did not
    /// Saves at once what waits; false where that fails.
    bool saveNow();

    static constexpr int kPauseMs = 1'000;
    static constexpr int kRetryMs = 5'000;

signals:
    void changed();        ///< the value is another: edited, undone, redone or opened
    void stepped();        ///< by undo or redo; after changed()
    void savedOrFailed();  ///< isSaved() and fault() may be others

protected:
    using Held = std::shared_ptr<const void>;
    using Keep = std::function<Result<void>(const void*, OldFile)>;
    explicit EditHistoryCore(Keep keep, QObject* parent);
    void openHeld(Held value);
    void editHeld(Held value, const QString& words, const QString& field);
    const void* held() const { return m_now.get(); }

private:
    class Step;
    void put(const Held& value);

    Keep m_keep;
    Held m_now;
    QUndoStack m_stack;
    QTimer m_pause;
    QString m_fault;
    int m_run = 0;
    bool m_unsaved = false;
    bool m_oldKept = false;
};

template <class Value>
class EditHistory final : public EditHistoryCore {
public:
    using Save = std::function<Result<std::string>(const Value&, OldFile)>;

    explicit EditHistory(Save save, QObject* parent = nullptr)
        : EditHistoryCore(
              [save = std::move(save)](const void* value, OldFile old) -> Result<void> {
                  const auto saved = save(*static_cast<const Value*>(value), old);
                  return saved ? Result<void>() : tl::unexpected(saved.error());
              },
              parent) {
        openHeld(std::make_shared<const Value>());
    }

    const Value& value() const { return *static_cast<const Value*>(held()); }
    /// Another document: nothing to undo, nothing to save. What still waits of the one before is saved first.
    void open(Value value) { openHeld(std::make_shared<const Value>(std::move(value))); }
    /// `words` name the edit ("Name"); edits with the same `field`, one after the other, are one step. Empty: its own.
    void edit(Value value, const QString& words, const QString& field = {}) {
        editHeld(std::make_shared<const Value>(std::move(value)), words, field);
    }
};

}  // namespace brinebell
