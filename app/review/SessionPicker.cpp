#include "review/SessionPicker.h"

#include <QHeaderView>
#include <QLineEdit>
#include <QSortFilterProxyModel>
#include <QTableView>
#include <QVBoxLayout>
#include <algorithm>

#include "review/SessionListModel.h"

namespace brinebell {

SessionPicker::SessionPicker(bool many, QWidget* parent) : QWidget(parent) {
    m_sessions = new SessionListModel(this);
    m_found = new QSortFilterProxyModel(this);
    m_found->setSourceModel(m_sessions);
    m_found->setFilterKeyColumn(-1);  // any
    m_found->setFilterCaseSensitivity(Qt::CaseInsensitive);
    m_find = new QLineEdit;
    m_find->setAccessibleName(tr("Find a session"));
    m_find->setPlaceholderText(tr("Find by day, class or kitchen"));
    m_find->setClearButtonEnabled(true);
    connect(m_find, &QLineEdit::textChanged, m_found, &QSortFilterProxyModel::setFilterFixedString);
    m_table = new QTableView;
    m_table->setModel(m_found);
    m_table->setAccessibleName(tr("Past sessions"));
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setSelectionMode(many ? QAbstractItemView::ExtendedSelection : QAbstractItemView::SingleSelection);
    m_table->setTabKeyNavigation(false);
    m_table->setShowGrid(false);
    m_table->setAlternatingRowColors(true);
    m_table->verticalHeader()->hide();
    m_table->horizontalHeader()->setHighlightSections(false);
    m_table->horizontalHeader()->setStretchLastSection(true);
    m_table->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    connect(m_table->selectionModel(), &QItemSelectionModel::selectionChanged, this, &SessionPicker::choiceChanged);
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(0, 0, 0, 0);
    box->addWidget(m_find);
    box->addWidget(m_table, 1);
}

Result<void> SessionPicker::showSessions(const Logbook& logbook, const QString& sessionId) {
    auto sessions = logbook.sessions();
    if (!sessions) {
        return tl::unexpected<Error>(sessions.error());
    }
    m_find->clear();
    m_sessions->setSessions(std::move(*sessions));
    m_table->resizeColumnsToContents();
    const int row = sessionId.isEmpty() ? -1 : m_sessions->rowOf(sessionId);
    if (m_found->rowCount() > 0) {
        m_table->selectRow(m_found->mapFromSource(m_sessions->index(std::max(row, 0), 0)).row());
    }
    emit choiceChanged();
    return {};
}

void SessionPicker::clear() {
    m_sessions->setSessions({});
    emit choiceChanged();
}

std::vector<std::string> SessionPicker::chosen() const {
    std::vector<int> rows;
    for (const QModelIndex& index : m_table->selectionModel()->selectedRows()) {
        rows.push_back(index.row());
    }
    std::sort(rows.begin(), rows.end());
    std::vector<std::string> ids;
    for (const int row : rows) {
        ids.push_back(m_sessions->session(m_found->mapToSource(m_found->index(row, 0)).row()).id);
    }
    return ids;
}

int SessionPicker::count() const {
    return m_found->rowCount();
}

}  // namespace brinebell
