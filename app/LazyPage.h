// LazyPage.h — a page of the window that is made when somebody first wants it.
//
// A page costs some ten milliseconds, and most starts need one or two of them. What a page has to be told before it is
// made, its maker tells it; afterwards `made()` finds it.
#pragma once

#include <functional>
#include <utility>

namespace brinebell {

template <class Page>
class LazyPage {
public:
    /// `make` gives the page to an owner; it is called once, at the first use.
    explicit LazyPage(std::function<Page*()> make) : m_make(std::move(make)) {}

    Page& operator*() { return *get(); }
    Page* operator->() { return get(); }
    Page* get() {
        if (m_page == nullptr) {
            m_page = m_make();
        }
        return m_page;
    }
    /// Deletes the page; it is made anew when it is next wanted.
    void drop() {
        delete m_page;
        m_page = nullptr;
    }
    /// Null until it was wanted.
    Page* made() const { return m_page; }

private:
    std::function<Page*()> m_make;
    Page* m_page = nullptr;
};

}  // namespace brinebell
