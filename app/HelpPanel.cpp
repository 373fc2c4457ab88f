#include "HelpPanel.h"

#include <QApplication>
#include <QEvent>
#include <QKeyEvent>
#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "HelpTexts.h"

namespace brinebell {

namespace {

constexpr int kHelpWidth = 440;

QString classNameOf(const QWidget& page) {
    return QString::fromLatin1(page.metaObject()->className()).section(QStringLiteral("::"), -1);
}

}  // namespace

HelpPanel::HelpPanel(QWidget* window) : QFrame(window), m_title(new QLabel), m_text(new QPlainTextEdit) {
    setFrameShape(QFrame::StyledPanel);
    setAutoFillBackground(true);
    setAccessibleName(tr("Help"));
    m_title->setTextFormat(Qt::PlainText);
    m_title->setProperty("kind", QStringLiteral("title"));
    m_title->setWordWrap(true);
    m_text->setReadOnly(true);
    m_text->setAccessibleName(tr("Help for this page"));
    m_text->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    auto* close = new QPushButton(tr("Close help (F1)"));
    close->setFocusPolicy(Qt::NoFocus);
    auto* column = new QVBoxLayout(this);
    column->addWidget(m_title);
    column->addWidget(m_text, 1);
    column->addWidget(close, 0, Qt::AlignLeft);
    connect(close, &QPushButton::clicked, this, &HelpPanel::shut);
    m_text->installEventFilter(this);
    window->installEventFilter(this);
    hide();
}

void HelpPanel::open(const QWidget& page, bool takesKeys) {
    const HelpText help = helpFor(classNameOf(page));
    m_title->setText(help.title);
    const QStringList keys = altKeysOn(page) + help.keys;
    m_text->setPlainText(help.text + QStringLiteral("\n\n") + tr("Keys") + QLatin1Char('\n') +
                         keys.join(QLatin1Char('\n')));
    m_before = QApplication::focusWidget();
    m_text->setFocusPolicy(takesKeys ? Qt::StrongFocus : Qt::NoFocus);
    place();
    show();
    raise();
    if (takesKeys) {
        m_text->setFocus();
    }
}

void HelpPanel::shut() {
    const bool had = m_text->hasFocus();
    hide();
    if (had && m_before) {
        m_before->setFocus();
    }
}

QString HelpPanel::title() const {
    return m_title->text();
}

QString HelpPanel::text() const {
    return m_text->toPlainText();
}

void HelpPanel::place() {
    const QWidget* window = parentWidget();
    const int width = std::min(kHelpWidth, window->width() / 2);
    setGeometry(window->width() - width, 0, width, window->height());
}

bool HelpPanel::eventFilter(QObject* watched, QEvent* event) {
    if (watched == parent() && event->type() == QEvent::Resize && isVisible()) {
        place();
    }
    if (watched == m_text && event->type() == QEvent::KeyPress) {
        keyPressEvent(static_cast<QKeyEvent*>(event));
        return event->isAccepted();
    }
    return QFrame::eventFilter(watched, event);
}

void HelpPanel::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        shut();
        event->accept();
    } else {
        event->ignore();
    }
}

}  // namespace brinebell
