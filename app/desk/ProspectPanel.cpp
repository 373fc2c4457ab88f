#include "desk/ProspectPanel.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "bridge/Words.h"

namespace brinebell {

namespace {

constexpr std::size_t kMostLines = 3;

}  // namespace

ProspectPanel::ProspectPanel(QWidget* parent) : QWidget(parent), m_stop(new QPushButton(tr("S&top the search"))) {
    connect(m_stop, &QPushButton::clicked, this, &ProspectPanel::stopWanted);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 2, 0, 2);
    row->setSpacing(20);
    m_quality = addBlock(row, tr("The sheet"), 6, m_stop);
    m_ends = addBlock(row, tr("The end of the class"), 8);
    m_latest = addBlock(row, tr("At the latest"), 9);
    m_drivers = addBlock(row, tr("If slow, the class ends later by"), 13);
    m_stop->hide();
}

QLabel* ProspectPanel::addBlock(QHBoxLayout* row, const QString& head, int share, QPushButton* below) {
    auto* block = new QVBoxLayout;
    block->setSpacing(2);
    auto* title = new QLabel(head);
    title->setTextFormat(Qt::PlainText);
    title->setProperty("kind", QStringLiteral("head"));
    auto* words = new QLabel;
    words->setTextFormat(Qt::PlainText);
    words->setWordWrap(true);
    words->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    // The blocks share the width by number, whatever stands in them; a longer line makes its block higher.
    QSizePolicy policy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    policy.setHeightForWidth(true);
    words->setSizePolicy(policy);
    block->addWidget(title);
    block->addWidget(words);
    if (below != nullptr) {
        block->addWidget(below, 0, Qt::AlignLeft);
    }
    block->addStretch();
    row->addLayout(block, share);
    return words;
}

void ProspectPanel::clear() {
    for (QLabel* words : {m_quality, m_ends, m_latest, m_drivers}) {
        words->clear();
    }
    m_stop->hide();
}

void ProspectPanel::showSearching(const PlanProgress& progress) {
    m_quality->setText(Words::searching(progress));
    m_stop->show();
}

void ProspectPanel::showFault(const QString& words) {
    clear();
    m_quality->setText(words);
}

void ProspectPanel::showProspect(const Network& network, const Prospect& prospect) {
    m_stop->hide();
    m_quality->setText(Words::quality(prospect.planned));
    m_ends->setText(Words::ends(prospect.ahead, network));
    QStringList latest, drivers;
    for (const Deadline& deadline : prospect.deadlines) {
        latest << Words::deadline(deadline, network);
    }
    if (latest.size() > static_cast<qsizetype>(kMostLines)) {
        const auto more = static_cast<int>(latest.size()) - static_cast<int>(kMostLines);
        latest.resize(static_cast<qsizetype>(kMostLines));
        latest << tr("and %1 more below, under Latest").arg(more);
    }
    for (std::size_t d = 0; d < std::min(kMostLines, prospect.ahead.drivers.size()); ++d) {
        drivers << Words::driver(prospect.ahead.drivers[d], network);
    }
    m_latest->setText(latest.join(QLatin1Char('\n')));
    m_drivers->setText(drivers.isEmpty() ? tr("Nothing that is slow alone") : drivers.join(QLatin1Char('\n')));
}

QString ProspectPanel::quality() const {
    return m_quality->text();
}

}  // namespace brinebell
