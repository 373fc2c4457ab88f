// A planted fault: a program that opens an internet socket, and says nothing to anybody through it.
#include <sys/socket.h>
#include <unistd.h>

int main() {
    const int descriptor = ::socket(AF_INET6, SOCK_DGRAM, 0);
    return descriptor >= 0 ? ::close(descriptor) : 0;
}
