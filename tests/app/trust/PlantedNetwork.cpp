// A planted fault: names what must stand in no object of ours. Compiled, never linked, never run.
#include <sys/socket.h>

class QTcpSocket {
public:
    void connectToHost(int port);
};

int planted(QTcpSocket& socket);
int planted(QTcpSocket& socket) {
    socket.connectToHost(80);
    return ::socket(AF_INET, SOCK_STREAM, 0);
}
