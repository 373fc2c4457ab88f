// PaperPage.h — every paper of a class, seen before it is printed: run sheet, shopping list and handout of a class that
// is planned; batch record, labels and report of one that was taught.
#pragma once

#include <QWidget>
#include <array>
#include <map>
#include <optional>

#include "desk/ClassShelf.h"
#include "logbook/Logbook.h"
#include "paper/PrintJob.h"
#include "session/AfterClass.h"

class QComboBox;
class QLabel;
class QListWidget;
class QPrintPreviewWidget;
class QPrinter;
class QPushButton;
class QSpinBox;
class QStackedWidget;
class QVBoxLayout;

namespace brinebell {

class ClassPlanner;
class LabelForm;
class SessionPicker;

enum class PaperKind { RunSheet, Shopping, Handout, BatchRecord, Labels, ClassReport };
inline constexpr std::array<PaperKind, 6> kPaperKinds{PaperKind::RunSheet, PaperKind::Shopping,
                                                      PaperKind::Handout,  PaperKind::BatchRecord,
                                                      PaperKind::Labels,   PaperKind::ClassReport};

class PaperPage final : public QWidget {
    Q_OBJECT

public:
    explicit PaperPage(const Clock& clock, QWidget* parent = nullptr);
    ~PaperPage() override;

    void setClassFiles(const QStringList& paths);
    /// The class that stands on the desk, with the order that was found for it; its papers come first.
    void showClass(const PreparedClass& prepared);
    /// Reads the sessions again; shows the papers of `sessionId` where it is given. A null logbook shows why.
    void showSessions(Logbook* logbook, const QString& sessionId, const QString& whyNoLogbook = {});

    void choose(PaperKind kind);
    PaperKind kind() const;
    /// What would be printed now; none where nothing is chosen or it cannot be made: then fault() says why.
    const std::optional<PrintJob>& job() const { return m_job; }
    QString fault() const;
    LabelForm& labelForm() { return *m_labels; }
    SessionPicker& sessions() { return *m_sessions; }
    QSpinBox& figureBox(ReportFigure figure) { return *m_figures.at(figure); }
    /// The number of pages in the preview.
    int previewPages() const;

    void saveTo(const QString& path);
    void printOn(QPrinter& printer);  ///< which has been set up for job()

signals:
    void leaveWanted();

private:
    QVBoxLayout* buildChoice();
    QWidget* buildClasses();
    QWidget* buildReport();
    QVBoxLayout* buildPreview();
    void chooseClass(int index);
    void openFile();
    void takeClass(const FileResult<PreparedClass>& read);
    void readSession();
    void keepFigures();
    void showFigures();
    void follow();
    void make();
    Result<PrintJob> jobNow();
    Result<PrintJob> labelJob(bool outlines) const;
    Result<std::shared_ptr<const Paper>> paperNow() const;
    void preview();
    void askWhereToSave();
    void askWhereToPrint();
    QString fileName() const;
    void inform(const QString& words, bool isFault);
    bool isOfClass() const { return kind() <= PaperKind::Handout; }

    const Clock& m_clock;
    Logbook* m_logbook = nullptr;
    std::optional<PreparedClass> m_class;
    std::optional<SessionRecord> m_record;
    std::optional<PrintJob> m_job;
    std::optional<PrintJob> m_shown;  ///< the same for the screen
    std::unique_ptr<QPrinter> m_previewPrinter;
    ClassPlanner* m_planner;
    QString m_whyNoClass;
    QString m_whyNoSession;
    QListWidget* m_kinds;
    QStackedWidget* m_sources;
    QComboBox* m_classes;
    SessionPicker* m_sessions;
    QStackedWidget* m_extras;  ///< labels, figures of the report, or nothing
    LabelForm* m_labels;
    std::map<ReportFigure, QSpinBox*> m_figures;
    QPushButton* m_keepFigures;
    QComboBox* m_size;
    QPrintPreviewWidget* m_preview;
    QLabel* m_told;
    QPushButton* m_save;
    QPushButton* m_print;
};

}  // namespace brinebell
