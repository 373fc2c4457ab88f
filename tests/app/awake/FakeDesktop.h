// FakeDesktop.h — what a desktop has on its buses to be kept awake by: it grants, refuses and remembers.
#pragma once

#include <fcntl.h>
#include <unistd.h>

#include <QDBusContext>
#include <QDBusError>
#include <QDBusObjectPath>
#include <QDBusUnixFileDescriptor>
#include <QObject>
#include <QStringList>
#include <QVariantMap>
#include <array>

namespace brinebell {

class FakeScreenSaver final : public QObject, protected QDBusContext {
    Q_OBJECT
    Q_CLASSINFO("D-Bus Interface", "org.freedesktop.ScreenSaver")

public:
    bool isRefusing = false;
    uint next = 41;
    QStringList why;
    QList<uint> held;

public slots:
    uint Inhibit(const QString& name, const QString& reason) {
        if (isRefusing) {
            sendErrorReply(QDBusError::AccessDenied);
            return 0;
        }
        why << name + QStringLiteral(": ") + reason;
        held << ++next;
        return next;
    }
    void UnInhibit(uint cookie) { held.removeOne(cookie); }
};

class FakePortal final : public QObject {
    Q_OBJECT
    Q_CLASSINFO("D-Bus Interface", "org.freedesktop.portal.Inhibit")

public:
    QList<uint> flags;

public slots:
    QDBusObjectPath Inhibit(const QString&, uint asked, const QVariantMap&) {
        flags << asked;
        return QDBusObjectPath(QStringLiteral("/org/freedesktop/portal/desktop/request/1"));
    }
};

class FakePortalRequest final : public QObject {
    Q_OBJECT
    Q_CLASSINFO("D-Bus Interface", "org.freedesktop.portal.Request")

public:
    int closed = 0;

public slots:
    void Close() { ++closed; }
};

class FakeLogin final : public QObject {
    Q_OBJECT
    Q_CLASSINFO("D-Bus Interface", "org.freedesktop.login1.Manager")

public:
    ~FakeLogin() override { ::close(m_readEnd); }

    QString what;
    QString mode;

    /// The lock is a pipe whose other end the keeper holds; it reads as ended when the keeper lets go.
    bool isHeld() const {
        char byte = 0;
        return m_readEnd >= 0 && ::read(m_readEnd, &byte, 1) != 0;
    }

public slots:
    QDBusUnixFileDescriptor Inhibit(const QString& asked, const QString&, const QString&, const QString& asMode) {
        what = asked;
        mode = asMode;
        std::array<int, 2> ends{-1, -1};
        if (::pipe2(ends.data(), O_CLOEXEC | O_NONBLOCK) != 0) {
            return {};
        }
        m_readEnd = ends[0];
        const QDBusUnixFileDescriptor given(ends[1]);  // a copy of its own
        ::close(ends[1]);
        return given;
    }

signals:
    void PrepareForSleep(bool start);

private:
    int m_readEnd = -1;
};

}  // namespace brinebell
