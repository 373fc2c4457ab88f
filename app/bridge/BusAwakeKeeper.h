// BusAwakeKeeper.h — the AwakeKeeper of a Linux desktop, over D-Bus.
//
// Screen:  org.freedesktop.ScreenSaver on the session bus; where there is none, the desktop portal.
// Machine: org.freedesktop.login1 on the system bus, which also tells when the machine wakes.
// A screen saver that is started anew during a class is asked anew.
#pragma once

#include <QDBusConnection>
#include <QDBusPendingCall>
#include <QDBusServiceWatcher>
#include <QDBusUnixFileDescriptor>
#include <functional>
#include <optional>

#include "bridge/AwakeKeeper.h"

namespace brinebell {

class BusAwakeKeeper final : public AwakeKeeper {
    Q_OBJECT

public:
    /// The buses need not be there: then nothing is kept.
    BusAwakeKeeper(const QDBusConnection& session, const QDBusConnection& system, QObject* parent = nullptr);
    ~BusAwakeKeeper() override;

    void keepAwake(const QString& why) override;
    void release() override;
    AwakeState state() const override;

private slots:
    void hearSleep(bool isAboutToSleep);

private:
    using Answer = std::function<void(const QDBusPendingCall& call)>;

    void ask(const QDBusPendingCall& call, Answer answer);
    void askScreenSaver();
    void askPortal();
    void askMachine();
    void serviceChanged(const QString& newOwner);
    void tell();

    QDBusConnection m_session;
    QDBusConnection m_system;
    QDBusServiceWatcher m_watcher;
    QString m_why;
    bool m_isWanted = false;
    int m_asking = 0;
    int m_round = 0;  ///< grows with each keepAwake and release; answers to an older one are given back
    std::optional<uint> m_cookie;
    QString m_portalHandle;
    QDBusUnixFileDescriptor m_lock;  ///< the machine is kept for as long as it is open
    AwakeState m_told;
};

}  // namespace brinebell
