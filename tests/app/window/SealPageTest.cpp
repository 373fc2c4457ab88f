// The morning after: the program asks for seals, takes the counts, and asks again for what was not saved.
#include "review/SealPage.h"

#include <gtest/gtest.h>

#include <QComboBox>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QRadioButton>
#include <QSpinBox>
#include <QTest>

#include "desk/ClassShelf.h"
#include "desk/FrontPage.h"
#include "session/Rehearsal.h"
#include "support/MemoryStore.h"
#include "window/Bench.h"

namespace brinebell {
namespace {

using std::chrono::hours;

/// A window over a logbook with the demonstration class, taught to its end on the evening before.
class MorningAfter : public testing::Test {
protected:
    void SetUp() override {
        const auto prepared = prepareClass(demonstrationClass());
        ASSERT_TRUE(prepared);
        m_record.network = prepared->network;
        support::MemoryStore store;
        m_record.events = rehearse(m_record.network, store, {}).value();
        m_record.events.front().value = 1;  // lived by machine, but as a class
        m_record.info.id = "0123456789abcdef0123456789abcdef";
        m_record.info.title = m_record.network.title;
        m_record.info.classId = m_record.network.classId;
        m_record.info.venue = m_record.network.venueName;
        m_record.info.teacher = m_record.network.teacher;
        m_record.info.startedUtc = m_record.events.front().at.utc;
        m_record.info.closedUtc = m_record.events.back().at.utc;
        m_record.info.events = static_cast<std::int64_t>(m_record.events.size());
        ASSERT_TRUE(m_bench.logbook->add(m_record));
        m_loads = static_cast<int>(m_record.network.loads.size());
        ASSERT_GE(m_loads, 2);
    }
    /// The clock `after` the last event of the session, in another run of the machine.
    void wakeAt(Millis after) {
        Stamp now = m_record.events.back().at;
        now.utc += after;
        now.boot = std::chrono::minutes(5);
        now.bootId.low += 1;
        m_clock = std::make_unique<ManualClock>(now);
        m_window = std::make_unique<MainWindow>(Ground{m_clock.get(), m_bench.logbook.get(), {}, &m_bench.speaker});
        m_window->resize(1366, 740);
        m_window->show();
        m_window->begin({}, {});
        ASSERT_TRUE(QTest::qWaitForWindowActive(m_window.get()));
        QCoreApplication::processEvents();
    }
    SealPage& page() { return m_window->sealPage(); }
    template <class Widget>
    Widget& named(const char* name) {
        for (Widget* widget : page().findChildren<Widget*>()) {
            if (widget->accessibleName() == QLatin1String(name)) {
                return *widget;
            }
        }
        ADD_FAILURE() << "there is no " << name;
        return *page().findChild<Widget*>();
    }
    QPushButton& button(const char* begins) {
        for (QPushButton* found : page().findChildren<QPushButton*>()) {
            if (found->text().remove('&').startsWith(QLatin1String(begins))) {
                return *found;
            }
        }
        ADD_FAILURE() << "there is no " << begins;
        return *page().findChild<QPushButton*>();
    }
    SessionRecord kept() { return m_bench.logbook->session(m_record.info.id).value(); }
    /// The newest event of a kind about a load.
    Event newest(EventKind kind, int load) {
        Event found;
        for (const Event& event : kept().events) {
            if (event.kind == kind && event.load == load) {
                found = event;
            }
        }
        return found;
    }

    Bench m_bench{QString()};
    SessionRecord m_record;
    int m_loads = 0;
    std::unique_ptr<ManualClock> m_clock;
    std::unique_ptr<MainWindow> m_window;
};

TEST_F(MorningAfter, FrontPageAsksAndOneKeyOpensTheCheck) {
    wakeAt(hours(13));
    auto* check = qobject_cast<QPushButton*>(QApplication::focusWidget());
    ASSERT_NE(check, nullptr);
    EXPECT_TRUE(check->text().contains(QStringLiteral("(S)")));
    QTest::keyClick(check, Qt::Key_S);
    EXPECT_EQ(m_window->currentPage(), &page());
    EXPECT_EQ(static_cast<int>(page().open().size()), m_loads);
}

TEST_F(MorningAfter, JarsThatStillCoolAreToldAndDoNotTakeTheKeyboard) {
    wakeAt(hours(1));
    auto* lead = qobject_cast<QPushButton*>(QApplication::focusWidget());
    ASSERT_NE(lead, nullptr);
    EXPECT_FALSE(lead->text().contains(QStringLiteral("(S)")));
    m_window->openSeals();
    button("All sealed").click();
    named<QLineEdit>("Checked by").setText(QStringLiteral("Ines Calder"));
    EXPECT_FALSE(button("Save").isEnabled());  // not before 12 h, unless knowingly
}

TEST_F(MorningAfter, CountsMustAddUpAndSomebodyMustHaveChecked) {
    wakeAt(hours(13));
    m_window->openSeals();
    QPushButton& save = button("Save");
    const int jars = page().open().front().jars;
    EXPECT_FALSE(save.isEnabled());
    named<QSpinBox>("Sealed").setValue(jars - 1);
    named<QLineEdit>("Checked by").setText(QStringLiteral("Ines Calder"));
    EXPECT_FALSE(save.isEnabled());
    named<QSpinBox>("Not sealed").setValue(1);
    EXPECT_FALSE(save.isEnabled());  // nobody said what was done with it
    named<QComboBox>("The unsealed ones were").setCurrentIndex(1);
    EXPECT_TRUE(save.isEnabled());
    named<QLineEdit>("Checked by").clear();
    EXPECT_FALSE(save.isEnabled());
}

TEST_F(MorningAfter, SaveKeepsOneLoadAndClosingHalfWayAsksForTheOther) {
    wakeAt(hours(13));
    m_window->openSeals();
    const int jars = page().open().front().jars;
    const int load = page().open().front().load;
    named<QSpinBox>("Sealed").setValue(jars - 2);
    named<QSpinBox>("Not sealed").setValue(1);
    named<QSpinBox>("Broken").setValue(1);
    named<QComboBox>("The unsealed ones were").setCurrentIndex(1);
    named<QLineEdit>("Checked by").setText(QStringLiteral("Ines Calder"));
    button("Save").click();
    const Event checked = newest(EventKind::SealsChecked, load);
    EXPECT_EQ(checked.sealed, jars - 2);
    EXPECT_EQ(checked.unsealed, 1);
    EXPECT_EQ(checked.broken, 1);
    EXPECT_EQ(checked.text, "Ines Calder");
    const Event went = newest(EventKind::JarsWent, load);
    EXPECT_EQ(went.value, kUnsealedJars);
    EXPECT_EQ(went.text, "refrigerated");
    // The next load begins from nothing; what is typed and not saved is asked for again.
    EXPECT_EQ(named<QSpinBox>("Sealed").value(), 0);
    named<QSpinBox>("Sealed").setValue(1);
    m_window.reset();
    wakeAt(hours(14));
    EXPECT_NE(QApplication::focusWidget(), nullptr);
    m_window->openSeals();
    EXPECT_EQ(static_cast<int>(page().open().size()), m_loads - 1);
}

TEST_F(MorningAfter, LateCheckSaysThatTheTimeIsOver) {
    wakeAt(hours(40));
    m_window->openSeals();
    named<QSpinBox>("Not sealed").setValue(1);
    bool told = false;
    for (const QLabel* label : page().findChildren<QLabel*>()) {
        told = told || (label->isVisible() && label->text().contains(QStringLiteral("can no longer be saved")));
    }
    EXPECT_TRUE(told);
}

TEST_F(MorningAfter, JarsThatWentHomeAskNoMore) {
    wakeAt(hours(13));
    m_window->openSeals();
    for (int load = 0; load < m_loads; ++load) {
        for (auto* mode : page().findChildren<QRadioButton*>()) {
            mode->setChecked(mode->text().contains(QStringLiteral("home")));
        }
        button("Save").click();
    }
    EXPECT_TRUE(page().open().empty());
    EXPECT_TRUE(page().told().contains(QStringLiteral("No seals wait")));
    EXPECT_EQ(newest(EventKind::JarsWent, 0).text, "taken-home-unchecked");
}

TEST_F(MorningAfter, WhatAnotherWindowToldMeanwhileIsNotLost) {
    wakeAt(hours(13));
    m_window->openSeals();
    const std::size_t events = kept().events.size();
    button("All sealed").click();
    named<QLineEdit>("Checked by").setText(QStringLiteral("Ines Calder"));
    auto other = Logbook::open(m_bench.logbook->path()).value();
    Command note;
    note.kind = CommandKind::AddNote;
    note.text = "seen by another window";
    ASSERT_TRUE(tellAfterwards(other, m_record.info.id, std::vector{note}, m_clock->now(), Cause::Key));
    button("Save").click();
    EXPECT_EQ(kept().events.size(), events + 2);
    EXPECT_EQ(static_cast<int>(page().open().size()), m_loads - 1);
}

}  // namespace
}  // namespace brinebell
