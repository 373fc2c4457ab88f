#include "bridge/BusAwakeKeeper.h"

#include <QDBusMessage>
#include <QDBusObjectPath>
#include <QDBusPendingCallWatcher>
#include <QDBusPendingReply>
#include <QVariantMap>
#include <utility>

namespace brinebell {

namespace {

const QString kName = QStringLiteral("Brinebell");
const QString kSaver = QStringLiteral("org.freedesktop.ScreenSaver");
const QString kSaverPath = QStringLiteral("/org/freedesktop/ScreenSaver");
const QString kPortal = QStringLiteral("org.freedesktop.portal.Desktop");
const QString kPortalPath = QStringLiteral("/org/freedesktop/portal/desktop");
const QString kLogin = QStringLiteral("org.freedesktop.login1");
const QString kLoginPath = QStringLiteral("/org/freedesktop/login1");
const QString kLoginManager = QStringLiteral("org.freedesktop.login1.Manager");
const QString kInhibit = QStringLiteral("Inhibit");

// Of the portal's Inhibit: 4 suspend, 8 idle.
constexpr uint kPortalFlags = 4U | 8U;

// Nobody waits for it, but the board says nothing until it is over.
constexpr int kAnswerWithin = 5'000;  // ms

QDBusMessage call(const QString& service, const QString& path, const QString& interface, const QString& method,
                  const QVariantList& arguments) {
    QDBusMessage message = QDBusMessage::createMethodCall(service, path, interface, method);
    message.setArguments(arguments);
    return message;
}

QDBusMessage uninhibit(uint cookie) {
    return call(kSaver, kSaverPath, kSaver, QStringLiteral("UnInhibit"), {cookie});
}

QDBusMessage closeRequest(const QString& handle) {
    return call(kPortal, handle, QStringLiteral("org.freedesktop.portal.Request"), QStringLiteral("Close"), {});
}

}  // namespace

BusAwakeKeeper::BusAwakeKeeper(const QDBusConnection& session, const QDBusConnection& system, QObject* parent)
    : AwakeKeeper(parent), m_session(session), m_system(system) {
    m_watcher.setConnection(m_session);
    m_watcher.setWatchMode(QDBusServiceWatcher::WatchForOwnerChange);
    m_watcher.addWatchedService(kSaver);
    connect(&m_watcher, &QDBusServiceWatcher::serviceOwnerChanged, this,
            [this](const QString&, const QString&, const QString& newOwner) { serviceChanged(newOwner); });
    m_system.connect(kLogin, kLoginPath, kLoginManager, QStringLiteral("PrepareForSleep"), this, SLOT(hearSleep(bool)));
}

BusAwakeKeeper::~BusAwakeKeeper() {
    // Not disconnect(): the bus must still hear that this object goes.
    blockSignals(true);
    release();
}

void BusAwakeKeeper::keepAwake(const QString& why) {
    if (m_isWanted) {
        return;
    }
    m_isWanted = true;
    m_why = why;
    ++m_round;
    if (m_session.isConnected()) {
        askScreenSaver();
    }
    if (m_system.isConnected()) {
        askMachine();
    }
    tell();
}

void BusAwakeKeeper::release() {
    m_isWanted = false;
    ++m_round;
    m_asking = 0;
    if (m_cookie) {
        m_session.send(uninhibit(*m_cookie));
    }
    if (!m_portalHandle.isEmpty()) {
        m_session.send(closeRequest(m_portalHandle));
    }
    m_cookie.reset();
    m_portalHandle.clear();
    m_lock = QDBusUnixFileDescriptor();
    tell();
}

AwakeState BusAwakeKeeper::state() const {
    return {m_isWanted, m_asking > 0, m_cookie.has_value() || !m_portalHandle.isEmpty(), m_lock.isValid()};
}

void BusAwakeKeeper::ask(const QDBusPendingCall& pending, Answer answer) {
    ++m_asking;
    auto* watcher = new QDBusPendingCallWatcher(pending, this);
    connect(watcher, &QDBusPendingCallWatcher::finished, this,
            [this, round = m_round, answer = std::move(answer)](QDBusPendingCallWatcher* finished) {
                finished->deleteLater();
                m_asking -= round == m_round ? 1 : 0;
                answer(*finished);
                tell();
            });
}

void BusAwakeKeeper::askScreenSaver() {
    const auto pending = m_session.asyncCall(call(kSaver, kSaverPath, kSaver, kInhibit, {kName, m_why}), kAnswerWithin);
    ask(pending, [this, round = m_round](const QDBusPendingCall& answered) {
        const QDBusPendingReply<uint> reply = answered;
        if (round != m_round) {
            if (!reply.isError()) {
                m_session.send(uninhibit(reply.value()));
            }
        } else if (reply.isError()) {
            askPortal();
        } else {
            m_cookie = reply.value();
        }
    });
}

void BusAwakeKeeper::askPortal() {
    const QVariantMap options{{QStringLiteral("reason"), m_why}};
    const QString interface = QStringLiteral("org.freedesktop.portal.Inhibit");
    const auto pending = m_session.asyncCall(
        call(kPortal, kPortalPath, interface, kInhibit, {QString(), kPortalFlags, options}), kAnswerWithin);
    ask(pending, [this, round = m_round](const QDBusPendingCall& answered) {
        const QDBusPendingReply<QDBusObjectPath> reply = answered;
        if (reply.isError()) {
            return;
        }
        if (round != m_round) {
            m_session.send(closeRequest(reply.value().path()));
        } else {
            m_portalHandle = reply.value().path();
        }
    });
}

void BusAwakeKeeper::askMachine() {
    const QVariantList arguments{QStringLiteral("idle:sleep"), kName, m_why, QStringLiteral("block")};
    const auto pending =
        m_system.asyncCall(call(kLogin, kLoginPath, kLoginManager, kInhibit, arguments), kAnswerWithin);
    ask(pending, [this, round = m_round](const QDBusPendingCall& answered) {
        const QDBusPendingReply<QDBusUnixFileDescriptor> reply = answered;
        if (round == m_round && !reply.isError()) {
            m_lock = reply.value();
        }
    });
}

void BusAwakeKeeper::serviceChanged(const QString& newOwner) {
    m_cookie.reset();  // it was the old owner's
    if (m_isWanted && !newOwner.isEmpty() && m_portalHandle.isEmpty()) {
        askScreenSaver();
    }
    tell();
}

void BusAwakeKeeper::hearSleep(bool isAboutToSleep) {
    if (!isAboutToSleep) {
        emit woke();
    }
}

void BusAwakeKeeper::tell() {
    if (const AwakeState now = state(); now != m_told) {
        m_told = now;
        emit changed();
    }
}

std::unique_ptr<AwakeKeeper> makeAwakeKeeper() {
    return std::make_unique<BusAwakeKeeper>(QDBusConnection::sessionBus(), QDBusConnection::systemBus());
}

}  // namespace brinebell
