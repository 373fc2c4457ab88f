// A planted fault for the thread sanitizer.
#include <thread>

int main() {
    int number = 0;
    std::thread other([&number] { ++number; });
    ++number;
    other.join();
    return number == 2 ? 0 : 1;
}
