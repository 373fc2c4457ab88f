// CleanSettings.h — a test that chooses something for the whole window, and leaves no trace of it.
#pragma once

#include <gtest/gtest.h>

#include <QApplication>

#include "Choices.h"
#include "Languages.h"
#include "Settings.h"

namespace brinebell {

class CleanSettings : public testing::Test {
protected:
    CleanSettings() { settings().clear(); }
    ~CleanSettings() override {
        settings().clear();
        putOnLanguage(*qApp, QStringLiteral("en"), QLocale::c());
        putOnCustoms({});
    }
};

}  // namespace brinebell
