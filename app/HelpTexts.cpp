#include "HelpTexts.h"

#include <QAbstractButton>
#include <QCoreApplication>
#include <QKeySequence>
#include <QLabel>
#include <QTabBar>
#include <array>

#include "stage/StageKeys.h"

namespace brinebell {

namespace {

struct HelpWords {
    Q_DECLARE_TR_FUNCTIONS(HelpWords)
};

struct PageHelp {
    const char* page;
    const char* title;
    const char* text;
};

constexpr std::array kHelp{
    PageHelp{
        "WelcomePage", QT_TRANSLATE_NOOP("HelpWords", "Welcome"),
        QT_TRANSLATE_NOOP(
            "HelpWords",
            "Type how high your kitchen lies, with its unit, and how that is known. The line below repeats it in both "
            "units and says where water boils there: if that surprises you, look again.\nBegin makes a kitchen of it, "
            "which you can describe further under Kitchens. Skip this leaves everything for later.")},
    PageHelp{"FrontPage", QT_TRANSLATE_NOOP("HelpWords", "Front page"),
             QT_TRANSLATE_NOOP(
                 "HelpWords",
                 "From here you reach everything. Prepare is where a class is read, rehearsed and taught; Kitchens "
                 "and Recipes are what classes are made of; past sessions have their records and labels.")},
    PageHelp{"ResumePage", QT_TRANSLATE_NOOP("HelpWords", "An unfinished session"),
             QT_TRANSLATE_NOOP(
                 "HelpWords",
                 "The program ended while a class was running. Taking it up again shows the board as it stood. "
                 "Counts of the canner that nobody watched wait for somebody to vouch for the boil, or start again.")},
    PageHelp{
        "PreparePage", QT_TRANSLATE_NOOP("HelpWords", "Prepare"),
        QT_TRANSLATE_NOOP(
            "HelpWords",
            "Choose a class at the left. Its run sheet stands at the right: first when everything starts and by whom, "
            "then "
            "what speaks against it and where each process time comes from. A better sheet is searched for meanwhile; "
            "what "
            "is on screen can be started at any time.\nRehearse before you teach: the same board on a clock of its "
            "own. Make "
            "ahead finds what to prepare before class so that it fits its slot. Lists says what to buy and to bring.")},
    PageHelp{"ListsPage", QT_TRANSLATE_NOOP("HelpWords", "Lists"),
             QT_TRANSLATE_NOOP("HelpWords",
                               "What the class wants before it, from its recipes, its kitchen and its run sheet. "
                               "Amounts of all dishes are "
                               "added up and rounded up to what a shop sells; what is needed exactly stands behind "
                               "them. Weigh and measure for "
                               "the recipe by the recipe, not by this list.\nThe PDF has a box to tick at each line.")},
    PageHelp{
        "ClassEditor", QT_TRANSLATE_NOOP("HelpWords", "Classes"),
        QT_TRANSLATE_NOOP("HelpWords",
                          "Choose the kitchen and the slot, then the dishes from the recipe shelf and what is said. The "
                          "run sheet below follows each edit; while a new one is sought, the last good one stays and "
                          "says that it is older. Everything is saved by itself.")},
    PageHelp{
        "VenueEditor", QT_TRANSLATE_NOOP("HelpWords", "Kitchens"),
        QT_TRANSLATE_NOOP(
            "HelpWords",
            "A kitchen has an altitude, stations (burners, oven, sink, board, counter) and canners with the jars that "
            "one "
            "load holds. A fault stands at its field as you type, and in the list below, from which Enter leads to the "
            "field. Everything is saved by itself, and undone step by step.")},
    PageHelp{"RecipeEditor", QT_TRANSLATE_NOOP("HelpWords", "Recipes"),
             QT_TRANSLATE_NOOP("HelpWords",
                               "Tested recipes can be read and not changed. Make a class version copies one: its "
                               "steps, words and durations are "
                               "yours, and at each ingredient the guard says what the tested recipe does not allow, "
                               "and why. Nothing turns the "
                               "guard off.")},
    PageHelp{
        "ClassEditor", QT_TRANSLATE_NOOP("HelpWords", "Classes"),
        QT_TRANSLATE_NOOP("HelpWords",
                          "A class takes dishes from the recipes, a kitchen, a day and a slot. Say how much of each "
                          "batch is made and in "
                          "how many jars, who helps, who stays for the kitchen's end, what is made ahead and what must "
                          "be said. A fault "
                          "stands at its field as you type. Everything is saved by itself, and undone step by step.")},
    PageHelp{"SettingsPage", QT_TRANSLATE_NOOP("HelpWords", "Settings"),
             QT_TRANSLATE_NOOP("HelpWords",
                               "What you choose is kept and shown at once. Units, clock and decimals change what is "
                               "shown and nothing in your "
                               "files; process times are never converted. Measure the screen once, so that the board's "
                               "letters can be read "
                               "from where you stand.")},
    PageHelp{"SoundPage", QT_TRANSLATE_NOOP("HelpWords", "Sound check"),
             QT_TRANSLATE_NOOP("HelpWords",
                               "Play every cue and listen from the counter. Choose the output and how loud; in quiet "
                               "mode only the stop cue "
                               "sounds, lowered. Whatever sounds also stands on the board.")},
    PageHelp{"StagePage", QT_TRANSLATE_NOOP("HelpWords", "The board"),
             QT_TRANSLATE_NOOP("HelpWords",
                               "Space, Enter, Right, Down, Page Down or the big button does the next thing that the "
                               "board names. What can hurt "
                               "takes the same key held for a second. Left, Up and Page Up look back and change "
                               "nothing; U takes back the last "
                               "press.\nA process time counts only from a full rolling boil (or steam, or pressure) "
                               "that somebody has seen. "
                               "When it is lost, press L: the count starts again from the full time.")},
    PageHelp{
        "ReviewPage", QT_TRANSLATE_NOOP("HelpWords", "Past sessions"),
        QT_TRANSLATE_NOOP("HelpWords",
                          "Choose a session to see how it went beside its plan: each step as planned and as lived. "
                          "Nothing here changes what was lived.")},
    PageHelp{"SealPage", QT_TRANSLATE_NOOP("HelpWords", "Seal check"),
             QT_TRANSLATE_NOOP(
                 "HelpWords",
                 "Jars cool for 12 to 24 hours, then somebody presses every lid. Count each load: sealed, not sealed, "
                 "broken; they must add up. Say what was done with the unsealed ones, which can be saved for 24 hours, "
                 "and who looked. Each load is saved by itself; what is left is asked for again at the next start.\nA "
                 "count that was wrong is corrected by another one: both stay in the batch record.")},
    PageHelp{"PaperPage", QT_TRANSLATE_NOOP("HelpWords", "Papers"),
             QT_TRANSLATE_NOOP(
                 "HelpWords",
                 "The first three papers are of a class that is planned, the others of a session that was taught. What "
                 "you see is what is printed, or saved as PDF. Labels take the measures of your sheet: print one on "
                 "plain paper first and hold it against the labels. The figures of the report are kept in the "
                 "logbook.")},
    PageHelp{"ExchangePage", QT_TRANSLATE_NOOP("HelpWords", "Export and import"),
             QT_TRANSLATE_NOOP(
                 "HelpWords",
                 "CSV is for spreadsheets, JSON holds all of a session and can be brought in elsewhere. Import takes "
                 "such JSON files and whole logbooks. A session that is here already stays once; what does not hold "
                 "together is refused with its reason, and nothing else is touched by it.")},
};

QStringList boardKeys() {
    QStringList keys{HelpWords::tr("Space   Next")};
    for (const KeyHint& hint : keyHints()) {
        keys << QStringLiteral("%1   %2").arg(hint.cap, hint.words);
    }
    return keys << HelpWords::tr("+ −   Speed of a rehearsal") << HelpWords::tr("Z   Stop a rehearsal's clock")
                << HelpWords::tr("F   To a rehearsal's next event") << HelpWords::tr("G   Something goes wrong");
}

bool isEditor(const QString& page) {
    return page.endsWith(QLatin1String("Editor"));
}

void addAltKey(QStringList& keys, const QString& words) {
    const QKeySequence key = QKeySequence::mnemonic(words);
    if (!key.isEmpty()) {
        keys << key.toString(QKeySequence::NativeText) + QStringLiteral("   ") +
                    QString(words).remove(QLatin1Char('&'));
    }
}

}  // namespace

HelpText helpFor(const QString& page) {
    for (const PageHelp& help : kHelp) {
        if (page != QLatin1String(help.page)) {
            continue;
        }
        HelpText answer{HelpWords::tr(help.title), HelpWords::tr(help.text), {}};
        if (page == QLatin1String("StagePage")) {
            answer.keys = boardKeys();
        } else {
            answer.keys << HelpWords::tr("Tab   To the next field; Shift+Tab back");
        }
        if (isEditor(page)) {
            answer.keys << HelpWords::tr("Ctrl+Z   Undo") << HelpWords::tr("Ctrl+Shift+Z   Redo");
        }
        answer.keys << HelpWords::tr("F11   Full screen") << HelpWords::tr("F1   This help");
        return answer;
    }
    return {};
}

QStringList altKeysOn(const QWidget& page) {
    QStringList keys;
    for (const QWidget* widget : page.findChildren<QWidget*>()) {
        if (!widget->isVisible()) {
            continue;
        }
        if (const auto* button = qobject_cast<const QAbstractButton*>(widget)) {
            addAltKey(keys, button->text());
        } else if (const auto* label = qobject_cast<const QLabel*>(widget);
                   label != nullptr && label->buddy() != nullptr) {
            addAltKey(keys, label->text());
        } else if (const auto* tabs = qobject_cast<const QTabBar*>(widget)) {
            for (int at = 0; at < tabs->count(); ++at) {
                addAltKey(keys, tabs->tabText(at));
            }
        }
    }
    keys.removeDuplicates();
    return keys;
}

}  // namespace brinebell
