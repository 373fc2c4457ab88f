// VenueEditor.h — the page on which a teacher describes a kitchen: altitude, stations, canners, confirmed table
// entries.
#pragma once

#include "desk/DocumentPage.h"
#include "kitchen/Venue.h"

namespace brinebell {

class VenueEditor final : public DocumentPageOf<Venue> {
    Q_OBJECT

public:
    explicit VenueEditor(Library& library, QWidget* parent = nullptr);

protected:
    bool load(const std::string& id, QString& why) override;
    std::string makeNew() override;
    std::string makeCopy() override;
    std::vector<Error> read(const WrittenFile& file) const override;
    QString standing() const override;
    QStringList sections() const override;
    bool hasItems(int section) const override;
    QString keyOf(int section) const override;
    QStringList itemsOf(int section) const override;
    void addItem(int section) override;
    void removeItem(int section, int item) override;
    void moveItem(int section, int from, int to) override;
    void buildForm(int section, int item) override;

private:
    void buildKitchen();
    void buildStation(int item);
    void buildCanner(int item);
    void buildCapacity(int item);
    void buildConfirmed(int item);
    std::string keep(Venue venue);
};

}  // namespace brinebell
