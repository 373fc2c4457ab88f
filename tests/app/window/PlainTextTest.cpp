// Nothing that a file or a person wrote is read as markup, on any page: no picture is loaded, no link can be followed.
#include <gtest/gtest.h>

#include <QAbstractItemView>
#include <QApplication>
#include <QDir>
#include <QFile>
#include <QLabel>
#include <QTextBrowser>

#include "desk/FrontPage.h"
#include "desk/PreparePage.h"
#include "desk/ResumePage.h"
#include "desk/SoundPage.h"
#include "review/ReviewPage.h"
#include "review/SealPage.h"
#include "window/Bench.h"

namespace brinebell {
namespace {

constexpr const char* kHostile = "<img src='file:///etc/hostname'><a href='http://example.invalid/'>here</a>";

/// Whether Qt would follow something in this hint: it is markup, and a picture or link in it is not written out.
bool leadsOut(const QString& hint) {
    return Qt::mightBeRichText(hint) && (hint.contains(QLatin1String("<img")) || hint.contains(QLatin1String("<a ")));
}

/// Every widget at or below `root` that could show markup, with what it shows.
QStringList markupIn(const QWidget& root) {
    QStringList found;
    const auto complain = [&](const QObject& where, const QString& what) {
        found << QStringLiteral("%1 \"%2\": %3").arg(where.metaObject()->className(), where.objectName(), what);
    };
    QList<const QWidget*> all{&root};
    for (const QWidget* widget : root.findChildren<QWidget*>()) {
        all << widget;
    }
    for (const QWidget* widget : all) {
        if (const auto* label = qobject_cast<const QLabel*>(widget); label != nullptr) {
            if (label->textFormat() != Qt::PlainText) {
                complain(*label, label->text());
            }
            if (label->openExternalLinks()) {
                complain(*label, QStringLiteral("opens links"));
            }
        }
        if (const auto* text = qobject_cast<const QTextEdit*>(widget); text != nullptr && text->acceptRichText()) {
            complain(*text, QStringLiteral("takes markup"));
        }
        for (const QString& hint : {widget->toolTip(), widget->whatsThis()}) {
            if (leadsOut(hint)) {
                complain(*widget, hint);
            }
        }
        if (const auto* view = qobject_cast<const QAbstractItemView*>(widget); view != nullptr && view->model()) {
            for (int row = 0; row < view->model()->rowCount(); ++row) {
                for (int column = 0; column < view->model()->columnCount(); ++column) {
                    const QString hint = view->model()->index(row, column).data(Qt::ToolTipRole).toString();
                    if (leadsOut(hint)) {
                        complain(*view, hint);
                    }
                }
            }
        }
    }
    return found;
}

/// A sound class in folders of its own, with markup for a title, a teacher and a talking point.
QString hostileClass(const QDir& folder) {
    const QDir shipped(QFileInfo(demonstrationClass()).dir().filePath(QStringLiteral("..")));
    for (const QString& part : {QString(), QStringLiteral("venues/"), QStringLiteral("classes/")}) {
        folder.mkpath(part.isEmpty() ? QStringLiteral(".") : part);
        for (const QString& name : QDir(shipped.filePath(part)).entryList({QStringLiteral("*.toml")}, QDir::Files)) {
            QFile::copy(shipped.filePath(part + name), folder.filePath(part + name));
        }
    }
    const QString path = folder.filePath(QStringLiteral("classes/tamarack-salsa-and-beans.toml"));
    QFile file(path);
    EXPECT_TRUE(file.setPermissions(QFile::ReadOwner | QFile::WriteOwner) && file.open(QIODevice::ReadWrite));
    QByteArray text = file.readAll();
    for (const char* words : {"Salsa and dilled beans", "Marguerite Oduya", "Show the exits, the first-aid box"}) {
        EXPECT_TRUE(text.contains(words)) << words;
        text.replace(words, kHostile);
    }
    file.resize(0);
    file.seek(0);
    file.write(text);
    return path;
}

TEST(PlainText, EveryPageShowsMarkupAsItWasWritten) {
    const QTemporaryDir folder;
    Bench bench(hostileClass(QDir(folder.path())));
    bench.window.audience();  // made now, so that it is looked at with the rest
    const auto expectPlain = [](const char* where) {
        for (const QWidget* window : QApplication::topLevelWidgets()) {
            EXPECT_EQ(markupIn(*window).join(QLatin1Char('\n')).toStdString(), "") << where;
        }
    };
    bench.window.openFront();
    expectPlain("front");
    bench.window.openPrepare();
    expectPlain("prepare");
    bench.window.openSound();
    expectPlain("sound");
    bench.window.startSession({false, 1});
    ASSERT_NE(bench.window.session(), nullptr);
    EXPECT_EQ(bench.window.session()->network().teacher, kHostile);  // it came through to where it is shown
    expectPlain("stage");
    bench.pass(std::chrono::minutes(3));
    expectPlain("stage at work");
    bench.window.openReview(QString());
    expectPlain("review");
    bench.window.resumePage();
    expectPlain("resume");
    bench.window.openSeals();
    expectPlain("seals");
    bench.window.openPapers();
    expectPlain("papers");
    bench.window.openExchange();
    expectPlain("exchange");
}

TEST(PlainText, PlantedMarkupIsFound) {
    QWidget page;
    new QLabel(QStringLiteral("guesses"), &page);  // Qt guesses what a text is, unless it is told
    auto* plain = new QLabel(QLatin1String(kHostile), &page);
    plain->setTextFormat(Qt::PlainText);
    new QTextEdit(&page);
    page.setToolTip(QLatin1String(kHostile));
    EXPECT_EQ(markupIn(page).size(), 3);
}

}  // namespace
}  // namespace brinebell
