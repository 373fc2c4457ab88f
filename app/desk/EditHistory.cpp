#include "desk/EditHistory.h"

#include <QUndoCommand>

#include "bridge/TimeText.h"

namespace brinebell {

class EditHistoryCore::Step final : public QUndoCommand {
public:
    Step(EditHistoryCore& history, Held after, const QString& words, QString field)
        : QUndoCommand(words),
          m_history(history),
          m_before(history.m_now),
          m_after(std::move(after)),
          m_field(std::move(field)),
          m_run(history.m_run) {}

    int id() const override { return 1; }
    bool mergeWith(const QUndoCommand* other) override {
        const auto& next = static_cast<const Step&>(*other);
        if (m_field.isEmpty() || next.m_field != m_field || next.m_run != m_run) {
            return false;
        }
        m_after = next.m_after;
        return true;
    }
    void undo() override {
        m_history.endTyping();
        m_history.put(m_before);
        emit m_history.stepped();
    }
    void redo() override {
        m_history.put(m_after);
        if (m_done) {
            m_history.endTyping();
            emit m_history.stepped();
        }
        m_done = true;
    }

private:
    EditHistoryCore& m_history;
    Held m_before;
    Held m_after;
    QString m_field;
    int m_run;
    bool m_done = false;
};

EditHistoryCore::EditHistoryCore(Keep keep, QObject* parent) : QObject(parent), m_keep(std::move(keep)) {
    constexpr int kMostSteps = 500;
    m_stack.setUndoLimit(kMostSteps);
    m_pause.setSingleShot(true);
    connect(&m_pause, &QTimer::timeout, this, &EditHistoryCore::saveNow);
}

EditHistoryCore::~EditHistoryCore() {
    if (m_unsaved) {
        [[maybe_unused]] const auto saved = m_keep(m_now.get(), m_oldKept ? OldFile::Drop : OldFile::Keep);
    }
}

void EditHistoryCore::openHeld(Held value) {
    saveNow();
    m_stack.clear();
    m_pause.stop();
    m_now = std::move(value);
    m_fault.clear();
    m_unsaved = false;
    m_oldKept = false;
    emit changed();
    emit savedOrFailed();
}

void EditHistoryCore::editHeld(Held value, const QString& words, const QString& field) {
    m_stack.push(new Step(*this, std::move(value), words, field));
}

void EditHistoryCore::put(const Held& value) {
    m_now = value;
    m_unsaved = true;
    m_pause.start(kPauseMs);
    emit changed();
    emit savedOrFailed();
}

bool EditHistoryCore::saveNow() {
    m_pause.stop();
    if (!m_unsaved) {
        return true;
    }
    const auto saved = m_keep(m_now.get(), m_oldKept ? OldFile::Drop : OldFile::Keep);
    if (saved) {
        m_unsaved = false;
        m_oldKept = true;
        m_fault.clear();
    } else {
        m_fault = toQt(describe(saved.error()));
        m_pause.start(kRetryMs);
    }
    emit savedOrFailed();
    return !m_unsaved;
}

}  // namespace brinebell
