// Sessions out and in by the window, and what is thrown at the import: told with its file, and nothing changed.
#include "review/ExchangePage.h"

#include <gtest/gtest.h>
#include <sys/stat.h>

#include <QDir>
#include <QFile>
#include <QSignalSpy>
#include <QTableView>
#include <QTableWidget>
#include <QTest>

#include "bridge/TimeText.h"
#include "desk/ClassShelf.h"
#include "logbook/Export.h"
#include "review/SessionPicker.h"
#include "session/Rehearsal.h"
#include "support/MemoryStore.h"
#include "support/WithoutRootRights.h"
#include "window/Bench.h"

namespace brinebell {
namespace {

SessionRecord rehearsal(const std::string& id) {
    SessionRecord record;
    record.network = prepareClass(demonstrationClass())->network;
    support::MemoryStore store;
    record.events = rehearse(record.network, store, {}).value();
    record.info.id = id;
    record.info.title = record.network.title;
    record.info.classId = record.network.classId;
    record.info.venue = record.network.venueName;
    record.info.teacher = record.network.teacher;
    record.info.rehearsal = true;
    record.info.startedUtc = record.events.front().at.utc;
    record.info.closedUtc = record.events.back().at.utc;
    record.info.events = static_cast<std::int64_t>(record.events.size());
    return record;
}

const std::string kFirst(32, 'a');
const std::string kSecond(32, 'b');

class Exchange : public testing::Test {
protected:
    void SetUp() override {
        ASSERT_TRUE(m_bench.logbook->add(rehearsal(kFirst)));
        m_bench.window.openExchange();
    }
    ExchangePage& page() { return m_bench.window.exchangePage(); }
    QString path(const QString& name) const { return m_folder.filePath(name); }
    QString file(const QString& name, const std::string& bytes) {
        QFile out(path(name));
        EXPECT_TRUE(out.open(QIODevice::WriteOnly));
        out.write(bytes.data(), static_cast<qint64>(bytes.size()));
        return path(name);
    }
    void import(const QStringList& files) {
        QSignalSpy done(&page(), &ExchangePage::done);
        page().importFrom(files);
        ASSERT_TRUE(done.wait(60'000));
    }
    QString outcome(int row) { return page().report().item(row, 2)->text(); }
    /// All bytes of the logbook, those of its write-ahead log behind.
    QByteArray bytes() const {
        QByteArray all;
        for (const char* name : {"logbook.sqlite", "logbook.sqlite-wal"}) {
            QFile in(m_bench.folder.filePath(QLatin1String(name)));
            EXPECT_TRUE(in.open(QIODevice::ReadOnly));
            all += in.readAll();
        }
        return all;
    }

    Bench m_bench{QString()};
    QTemporaryDir m_folder;
};

TEST_F(Exchange, WhatIsSavedAsJsonComesIntoAnotherLogbookOnce) {
    page().exportTo(m_folder.path(), ExchangePage::Format::Json);
    const QStringList files = QDir(m_folder.path()).entryList({QStringLiteral("*.json")});
    ASSERT_EQ(files.size(), 1) << page().told().toStdString();
    Bench other{QString()};
    other.window.openExchange();
    ExchangePage& there = other.window.exchangePage();
    for (const int added : {1, 0}) {
        QSignalSpy done(&there, &ExchangePage::done);
        there.importFrom({path(files.front())});
        ASSERT_TRUE(done.wait(60'000));
        EXPECT_EQ(there.sessions().count(), 1);
        EXPECT_TRUE(there.told().startsWith(QStringLiteral("%1 brought in").arg(added))) << there.told().toStdString();
    }
    EXPECT_EQ(other.logbook->session(kFirst)->events, rehearsal(kFirst).events);
}

TEST_F(Exchange, CsvHasALineForEachEvent) {
    page().exportTo(m_folder.path(), ExchangePage::Format::Csv);
    const QStringList files = QDir(m_folder.path()).entryList({QStringLiteral("*.csv")});
    ASSERT_EQ(files.size(), 1);
    QFile in(path(files.front()));
    ASSERT_TRUE(in.open(QIODevice::ReadOnly));
    EXPECT_EQ(in.readAll().count("\r\n"), static_cast<qsizetype>(rehearsal(kFirst).events.size()) + 1);
}

TEST_F(Exchange, SeveralSessionsAreSavedAtOnce) {
    SessionRecord second = rehearsal(kSecond);
    ASSERT_TRUE(m_bench.logbook->add(second));
    page().showSessions(m_bench.logbook.get());
    page().sessions().table().selectAll();
    page().exportTo(m_folder.path(), ExchangePage::Format::Json);
    EXPECT_EQ(QDir(m_folder.path()).entryList({QStringLiteral("*.json")}).size(), 2);
}

TEST_F(Exchange, LogbooksOfSeveralTeachersBecomeOne) {
    QStringList books;
    for (const std::string& id : {kFirst, kSecond}) {
        books << path(toQt(id) + QStringLiteral(".sqlite"));
        auto book = Logbook::open(books.back().toStdString()).value();
        ASSERT_TRUE(book.add(rehearsal(kSecond)));
        if (id == kFirst) {
            ASSERT_TRUE(book.add(rehearsal(kFirst)));
        }
    }
    import(books);
    EXPECT_EQ(page().sessions().count(), 2);  // two books, and their sessions once each
    EXPECT_TRUE(page().told().startsWith(QStringLiteral("1 brought in, 2 here already, 0 refused")))
        << page().told().toStdString();
}

TEST_F(Exchange, WhatIsNoSessionIsRefusedByNameAndNothingIsChanged) {
    const std::string sound = sessionJson(rehearsal(kSecond));
    std::string less = sound;
    const std::size_t at = less.find("\"kind\": \"boil-seen\"");
    ASSERT_NE(at, std::string::npos);
    less.replace(at, 19, "\"kind\": \"heat-off\" ");
    const QStringList bad{
        file(QStringLiteral("truncated.json"), sound.substr(0, sound.size() / 2)),
        file(QStringLiteral("empty.json"), ""),
        file(QStringLiteral("foreign.json"), R"({"recipes": [{"name": "jam"}]})"),
        file(QStringLiteral("list.json"), "[1, 2, 3]"),
        file(QStringLiteral("picture.json"), std::string("\x89PNG\r\n\x1a\n\0\0", 10)),
        file(QStringLiteral("edited.json"), less),
        path(QStringLiteral("not-there.json")),
        file(QStringLiteral("half.sqlite"), std::string("SQLite format 3\0 and then nothing", 33)),
    };
    const QByteArray before = bytes();
    import(bad);
    EXPECT_EQ(page().report().rowCount(), bad.size());
    for (int row = 0; row < page().report().rowCount(); ++row) {
        EXPECT_EQ(page().report().item(row, 0)->text(), bad[row]);
        EXPECT_TRUE(outcome(row).startsWith(QStringLiteral("Refused: "))) << outcome(row).toStdString();
        EXPECT_GT(outcome(row).size(), 20);
    }
    EXPECT_TRUE(page().told().contains(QStringLiteral("8 refused"))) << page().told().toStdString();
    EXPECT_EQ(bytes(), before);
}

TEST_F(Exchange, LogbookOfANewerVersionIsRefusedAndLeftAsItIs) {
    const QString newer = path(QStringLiteral("newer.sqlite"));
    { auto book = Logbook::open(newer.toStdString()).value(); }
    QFile out(newer);
    ASSERT_TRUE(out.open(QIODevice::ReadWrite));
    // The version of the layout: "user_version", four bytes at offset 60 (SQLite file format, section 1.3).
    constexpr qint64 kUserVersion = 60;
    out.seek(kUserVersion);
    out.write("\x00\x00\x03\xe7", 4);
    out.seek(0);
    const QByteArray as = out.readAll();
    out.close();
    const QByteArray before = bytes();
    import({newer});
    ASSERT_EQ(page().report().rowCount(), 1);
    EXPECT_TRUE(outcome(0).contains(QStringLiteral("newer"))) << outcome(0).toStdString();
    ASSERT_TRUE(out.open(QIODevice::ReadOnly));
    EXPECT_EQ(out.readAll(), as);
    EXPECT_EQ(bytes(), before);
}

TEST_F(Exchange, ReadOnlyFolderIsToldAndNothingIsChanged) {
    ASSERT_TRUE(QDir(m_folder.path()).mkdir(QStringLiteral("closed")));
    const QString closed = path(QStringLiteral("closed"));
    ASSERT_EQ(::chmod(m_folder.path().toUtf8().constData(), 0755), 0);
    ASSERT_EQ(::chmod(closed.toUtf8().constData(), 0555), 0);
    const QByteArray before = bytes();
    {
        const support::WithoutRootRights rights;
        page().exportTo(closed, ExchangePage::Format::Json);
    }
    EXPECT_TRUE(page().told().startsWith(QStringLiteral("Not saved:"))) << page().told().toStdString();
    EXPECT_TRUE(QDir(closed).isEmpty());
    EXPECT_EQ(bytes(), before);
    ::chmod(closed.toUtf8().constData(), 0755);
}

}  // namespace
}  // namespace brinebell
