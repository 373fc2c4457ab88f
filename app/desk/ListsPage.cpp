#include "desk/ListsPage.h"

#include <QClipboard>
#include <QDir>
#include <QFileDialog>
#include <QGuiApplication>
#include <QHBoxLayout>
#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QStandardPaths>
#include <QStyle>
#include <QVBoxLayout>

#include "paper/PrintJob.h"

namespace brinebell {

namespace {

QLabel* listsLabel(const QString& text, const char* kind) {
    auto* label = new QLabel(text);
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    label->setProperty("kind", QLatin1String(kind));
    return label;
}

}  // namespace

Paper listsPaper(const ClassLists& lists) {
    Paper paper(lists.title);
    const QStringList heads = listHeads();
    int at = 0;
    for (const QStringList* list : {&lists.shopping, &lists.equipment, &lists.before}) {
        paper.heading(heads.at(at++));
        for (const QString& line : *list) {
            paper.tickItem(line);
        }
    }
    return paper;
}

ListsPage::ListsPage(QWidget* parent)
    : QWidget(parent),
      m_title(listsLabel({}, "quiet")),
      m_told(listsLabel({}, "quiet")),
      m_copy(new QPushButton(tr("&Copy as text"))),
      m_pdf(new QPushButton(tr("Save as &PDF…"))) {
    auto* page = new QVBoxLayout(this);
    page->setContentsMargins(24, 16, 24, 16);
    page->setSpacing(8);
    page->addWidget(listsLabel(tr("Lists"), "title"));
    page->addWidget(m_title);
    auto* columns = new QHBoxLayout;
    columns->setSpacing(16);
    const QStringList heads = listHeads();
    for (std::size_t at = 0; at < m_texts.size(); ++at) {
        auto* column = new QVBoxLayout;
        const QString head = heads.at(static_cast<qsizetype>(at));
        column->addWidget(listsLabel(head, "head"));
        m_texts[at] = new QPlainTextEdit;
        m_texts[at]->setReadOnly(true);
        m_texts[at]->setTabChangesFocus(true);
        m_texts[at]->setAccessibleName(head);
        m_texts[at]->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
        column->addWidget(m_texts[at]);
        columns->addLayout(column, 1);
    }
    page->addLayout(columns, 1);
    page->addWidget(m_told);
    auto* row = new QHBoxLayout;
    auto* back = new QPushButton(tr("&Back"));
    row->addWidget(m_copy);
    row->addWidget(m_pdf);
    row->addStretch();
    row->addWidget(back);
    page->addLayout(row);
    connect(m_copy, &QPushButton::clicked, this, &ListsPage::copyText);
    // Queued: the click is over before the dialog begins an event loop of its own.
    connect(m_pdf, &QPushButton::clicked, this, &ListsPage::askForPdf, Qt::QueuedConnection);
    connect(back, &QPushButton::clicked, this, &ListsPage::leaveWanted);
    clear({});
}

void ListsPage::setClass(const PreparedClass& prepared) {
    const auto lists = classLists(prepared);
    if (!lists) {
        clear(toQt(lists.error().message));
        return;
    }
    m_lists = *lists;
    m_title->setText(m_lists.title);
    std::size_t at = 0;
    for (const QStringList* list : {&m_lists.shopping, &m_lists.equipment, &m_lists.before}) {
        QStringList lines;
        for (const QString& line : *list) {
            lines << QStringLiteral("•  ") + line;
        }
        m_texts[at++]->setPlainText(lines.join(QLatin1Char('\n')));
    }
    m_copy->setEnabled(true);
    m_pdf->setEnabled(true);
    tell({}, false);
}

void ListsPage::clear(const QString& why) {
    m_lists = {};
    m_title->setText(tr("No class chosen"));
    for (QPlainTextEdit* text : m_texts) {
        text->clear();
    }
    m_copy->setEnabled(false);
    m_pdf->setEnabled(false);
    tell(why, true);
}

QString ListsPage::text() const {
    return asText(m_lists);
}

void ListsPage::focusStart() {
    m_texts.front()->setFocus();
}

void ListsPage::copyText() {
    QGuiApplication::clipboard()->setText(text());
    tell(tr("The lists are on the clipboard."), false);
}

void ListsPage::askForPdf() {
    const QString documents = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
    const QString folder = QDir(documents).exists() ? documents : QDir::homePath();
    const QString path = QFileDialog::getSaveFileName(this, tr("Save the lists as PDF"),
                                                      folder + QLatin1Char('/') + tr("lists") + QStringLiteral(".pdf"),
                                                      tr("PDF files (*.pdf)"));
    if (!path.isEmpty()) {
        savePdf(path);
    }
}

bool ListsPage::savePdf(const QString& path) {
    const auto written = writePdf(listsPaper(m_lists), path, usualPageSize());
    if (written) {
        tell(tr("Saved: %1").arg(path), false);
    } else {
        tell(toQt(describe(written.error())), true);
    }
    return written.has_value();
}

void ListsPage::tell(const QString& words, bool isFault) {
    m_told->setProperty("kind", isFault ? QStringLiteral("fault") : QStringLiteral("quiet"));
    style()->unpolish(m_told);  // so that it looks at the property anew
    style()->polish(m_told);
    m_told->setText(words);
    m_told->setVisible(!words.isEmpty());
}

}  // namespace brinebell
