// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/source/due_lines.h"

#include <pwd.h>
#include <unistd.h>

#include <future>

#include <QDir>
#include <QFile>
#include <QStandardPaths>

#include "actions/choose.h"
#include "actions/edit_venue.h"
#include "actions/facts.h"
#include "actions/fleet_work.h"
#include "actions/flown.h"
#include "actions/gates.h"
#include "actions/import_file.h"
#include "actions/scan.h"
#include "actions/split_batch.h"
#include "demo/demo.h"
#include "desk/importing/import_wish.h"
#include "desk/run.h"
#include "desk/source/batch_source.h"
#include "desk/source/due_lines.h"
#include "desk/source/gate_source.h"
#include "desk/source/hung_source.h"
#include "desk/source/moved_source.h"
#include "desk/source/offline_source.h"
#include "desk/source/sheet_source.h"
#include "desk/source/store_planning.h"
#include "desk/source/swap_source.h"
#include "desk/source/venue_source.h"
#include "options/freeze.h"
#include "quantity/error.h"
#include "sheets/offline.h"
#include "sheets/sheets.h"
#include "store/cabling_store.h"
#include "store/calendar_store.h"
#include "store/catalogue_store.h"
#include "store/choice_store.h"
#include "store/fleet_read.h"
#include "store/fleet_store.h"
#include "store/gate_store.h"
#include "store/mark_store.h"
#include "store/people_store.h"
#include "store/snapshot_store.h"
#include "store/store.h"
#include "store/venue_store.h"
#include "store/warehouse_store.h"

namespace hangbook::desk {
namespace {

/// As the system knows whose session this is.
QString sessionName() {
  const passwd* entry = getpwuid(geteuid());
  return entry != nullptr && entry->pw_name != nullptr ? QString::fromLocal8Bit(entry->pw_name) : QString();
}

/// Makes the usual place's folder, so that the very first start finds somewhere to write.
QString usualPlace() {
  const QString folder = QStandardPaths::writableLocation(QStandardPaths::AppDataLocation);
  if (folder.isEmpty() || !QDir().mkpath(folder)) {
    throw Error(Trouble::store,
                "the folder for application data cannot be made; say with --store where the data lie",
                folder.toStdString());
  }
  return QDir(folder).filePath(QStringLiteral("hangbook.sqlite"));
}

/// The headings and what stands below them: the first line, or the one that is said.
void takeFirstRows(const std::vector<exchange::CsvRecord>& records, ImportLook& look) {
  constexpr std::size_t most = 12;
  for (const exchange::CsvRecord& each : records) {
    if (each.line < look.form.mapping.headingLine) {
      continue;
    }
    if (look.headings.isEmpty()) {
      look.headings = each.cells;
    } else if (look.firstRows.size() < most) {
      look.firstRows.push_back(each.cells);
    }
  }
}

std::vector<actions::File> filesNamed(const QStringList& names, fleet::DocumentKind kind) {
  std::vector<actions::File> files;
  for (const QString& name : names) {
    QFile file(name);
    if (!file.open(QIODevice::ReadOnly)) {
      throw Error(Trouble::badInput, "the file cannot be read (" + file.errorString().toStdString() + ")",
                  name.toStdString());
    }
    files.push_back({QFileInfo(name).fileName(), file.readAll(), kind});
  }
  return files;
}

class StoreSource : public Source,
                    public GateSource,
                    public BatchSource,
                    public SheetSource,
                    public VenueSource,
                    public MovedSource,
                    public OfflineSource,
                    public SwapSource,
                    public HungSource,
                    public StorePlanning {
public:
  StoreSource(std::optional<QString> where, QDate asOf) : where_(std::move(where)), asOf_(asOf) {}

private:
  store::Store& planned() override { return opened(); }
  QDate plannedToday() const override { return today(); }
  std::unique_ptr<store::Store> anotherStore() override {
    return store_ ? store_->another() : store::Store::open(where_ ? *where_ : usualPlace(), {});
  }

  store::Store& opened() {
    if (!store_) {
      store::OpenHow how;
      how.create = true;
      store_ = store::Store::open(where_ ? *where_ : usualPlace(), how);
    }
    return *store_;
  }

  QDate today() const { return asOf_.isValid() ? asOf_ : QDate::currentDate(); }

  exchange::Importer importer(const QString& by) {
    QString name = by.trimmed();
    if (const auto atDesk = store::personAtDesk(opened()); name.isEmpty() && atDesk) {
      name = atDesk->name;
    }
    return {name.isEmpty() ? sessionName() : name, QDateTime::currentDateTimeUtc()};
  }

  StoreLine readStoreLine() override {
    const store::Place& place = opened().place();
    const bool file = place.engine == store::Engine::sqlite;
    const auto copy = store::offlineCopyIn(opened());
    return {copy   ? store::wordsFor(*copy)
            : file ? QFileInfo(place.file).fileName()
                   : place.database,
            place.shown()};
  }

  Overview readOverview() override {
    store::Store& store = opened();
    return store.reading([&] {
      Overview all;
      all.tours = store::loadTours(store);
      all.shows = store::loadShows(store);
      all.venues = store::loadVenues(store);
      all.catalogue = store::loadCatalogue(store);
      all.connections = store::loadConnections(store);
      const auto fleet = store::loadFleet(store);
      all.units = fleet->units;
      all.rules = fleet->rules;
      all.examinations = fleet->examinations;
      all.occurrences = fleet->occurrences;
      all.today = today();
      // On the other core while the rest is read, which touches nothing of what it reads.
      auto due = std::async(std::launch::async, [&all] { return dueLines(all); });
      all.plugs = store::loadCabling(store).plugs;
      all.places = store::loadPlaces(store);
      for (const calendar::Show& show : all.shows) {
        for (options::Choice& choice : store::loadChoices(store, show.tour, show.name)) {
          all.choices.push_back(std::move(choice));
        }
      }
      all.marks = store::loadMarks(store);
      all.people = store::loadPeople(store);
      if (const auto atDesk = store::personAtDesk(store)) {
        all.atDesk = atDesk->name;
      }
      tellEdits(all);
      all.due = due.get();
      return all;
    });
  }

  options::Snapshot readSnapshot(const ShowKey& show) override {
    return store::loadSnapshot(opened(), show.tour, show.show, today());
  }

  options::ShowOptions decideOptions(const options::Snapshot& snapshot, const QString& hang,
                                     const options::Progress& progress) override {
    return options::decide(snapshot, hang, progress);
  }

  options::Option judgeOption(const options::Snapshot& snapshot, const options::OptionKey& key,
                              const options::Setting& setting) override {
    return options::judge(snapshot, key, setting);
  }

  options::Scene drawScene(const options::Snapshot& snapshot, const options::Option& option) override {
    return options::sceneOf(snapshot, option);
  }

  options::Option thawResults(const options::Choice& choice) override { return options::thaw(choice.frozen); }

  /// What the window showed may be old: the option is judged again on what the store holds now, and the
  /// revision that the window knew must still stand.
  void writeChoice(const ChoiceRequest& request) override {
    note(actions::ChosenFor{request.show.tour, request.show.show, request.hang, {}}, request.by, [&] {
      const options::Snapshot now =
          store::loadSnapshot(opened(), request.show.tour, request.show.show, today());
      const options::Option option = options::judge(now, request.key, request.setting);
      options::Choice choice = actions::choiceOf(now, option, request.reason);
      choice.revision = request.expectedRevision;
      choice.by = request.by;
      actions::chooseOption(opened(), choice, request.by);
    });
  }

  void writeMark(const marks::MarkUsed& used) override { actions::recordMark(opened(), used, used.by); }

  std::vector<marks::GateSigned> gatesOf(const ShowKey& show) override {
    refuseWindowThread("hold points");
    return store::loadGatesOf(opened(), show.tour, show.show);
  }

  calendar::Cabling cablingOf(const ShowKey& show) override {
    refuseWindowThread("cabling");
    return store::loadCabling(opened(), show.tour, show.show);
  }

  void signGate(const marks::GateSigned& gate, const QStringList& gates,
                const marks::GatesSince& since) override {
    refuseWindowThread("a hold point");
    actions::signGate(opened(), gate, gates, since, gate.by);
  }

  std::vector<options::Choice> signedSettings(const ShowKey& show, const QString& hang) override {
    refuseWindowThread("signed settings");
    return store::loadChoiceHistory(opened(), show.tour, show.show, hang);
  }

  void keepMoved(const MoveRequest& request) override {
    refuseWindowThread("a moved hang");
    actions::keepMoved(opened(), {request.snapshot, request.standing, request.option, request.reason},
                       request.by);
  }

  void copyShow(const ShowKey& show, const QString& file) override {
    refuseWindowThread("an offline copy");
    sheets::makeOfflineCopy(opened(), show.tour, show.show, today(), file, importer({}).by);
  }

  std::vector<actions::StandIn> standInsFor(const ShowKey& show, const QString& dead) override {
    refuseWindowThread("stand-ins");
    const auto unit = store::loadUnit(opened(), dead);
    const auto of = store::loadShow(opened(), show.tour, show.show);
    return unit && of ? actions::standInsFor(opened(), *of, *unit) : std::vector<actions::StandIn>{};
  }

  actions::Swap trySwap(const SwapWish& wish) override {
    refuseWindowThread("a swap");
    return actions::trySwap(opened(), {wish.show.tour, wish.show.show, wish.dead, wish.stand, today()});
  }

  void swapUnit(const SwapWish& wish) override {
    refuseWindowThread("a swap");
    const actions::SwapWish of{wish.show.tour, wish.show.show, wish.dead, wish.stand, today()};
    actions::SwappedFor part{{wish.dead}, {wish.stand}, {}};
    const actions::Swap tried = actions::trySwap(opened(), of);
    if (tried.place) {
      part.hung = actions::HungFor{wish.show.tour, wish.show.show, tried.place->hang};
    }
    for (const actions::SwappedHang& each : tried.hangs) {
      part.hangs.push_back({wish.show.tour, wish.show.show, each.standing.hang, {}});
    }
    note(part, wish.by, [&] { actions::swapUnit(opened(), of, wish.reason, wish.by); });
  }

  HungLook hungNow(const actions::HungFor& hang) override {
    refuseWindowThread("units by serial");
    return opened().reading([&] { return lookOf(actions::hungNow(opened(), hang), {}); });
  }

  HungLook tryHung(const actions::HungFor& hang) override {
    refuseWindowThread("units by serial");
    return opened().reading([&] {
      const actions::HungRecorded tried = actions::tryHung(opened(), hang);
      return lookOf(tried.hang, tried.unproven);
    });
  }

  void recordHung(const actions::HungFor& hang, const QString& by) override {
    refuseWindowThread("units by serial");
    note(hang, by, [&] { actions::recordHung(opened(), hang, by); });
  }

  HungLook lookOf(const actions::HungFor& hang, const QStringList& unproven) {
    const options::Snapshot snapshot = store::loadSnapshot(opened(), hang.tour, hang.show, today());
    const auto choice = std::ranges::find(snapshot.choices, hang.hang, &options::Choice::hang);
    const auto show = store::loadShow(opened(), hang.tour, hang.show);
    if (choice == snapshot.choices.end() || !show) {
      throw Error(Trouble::notPossible, "nothing is chosen for the hang " + hang.hang.toStdString() +
                                            ", so nobody can say what hangs where");
    }
    return {hang,
            options::hungOf(snapshot, choice->key, hang.serials, actions::hungElsewhere(opened(), *show)),
            unproven};
  }

  reports::Sheet sheet(const reports::SheetCode& code) override {
    refuseWindowThread("a sheet");
    store::Store& store = opened();
    return store.reading([&] { return sheets::sheetOf(store, code); });
  }

  UnitStory readStory(const QString& serial) override {
    store::Store& store = opened();
    return store.reading([&] {
      return UnitStory{store::loadMovements(store, serial), store::loadExaminations(store, serial),
                       store::loadOccurrences(store, serial), store::loadDocuments(store, serial)};
    });
  }

  actions::ScanAnswer writeScan(const actions::ScanTask& task, const QString& code,
                                const QString& by) override {
    actions::checkTask(opened(), task);
    return actions::scan(opened(), task, code, QDateTime::currentDateTimeUtc(), by);
  }

  actions::ScanAnswer writeTakeBack(const QUuid& scan, const QString& by) override {
    return actions::undoScan(opened(), scan, QDateTime::currentDateTimeUtc(), by);
  }

  actions::Recorded writeExamination(const fleet::Examination& examination,
                                     const QStringList& files) override {
    return actions::examine(opened(), examination, filesNamed(files, fleet::DocumentKind::certificate),
                            today(), examination.by);
  }

  actions::Recorded writeOccurrence(const fleet::Occurrence& occurrence, const QStringList& files) override {
    return actions::recordOccurrence(opened(), occurrence, filesNamed(files, fleet::DocumentKind::photograph),
                                     today(), occurrence.by);
  }

  actions::Recorded writeState(const StateChange& change) override {
    return actions::setState(opened(), change.serial, change.state, {}, change.reason, today(), change.by);
  }

  void splitBatch(const SplitRequest& request) override {
    refuseWindowThread("a batch");
    actions::splitBatch(opened(), request.serial, request.pieces, request.newSerial, request.by);
  }

  options::HouseEffect editVenue(const VenueWish& wish) override {
    refuseWindowThread("a venue");
    if (wish.dryRun) {
      return actions::editVenue(opened(), wish.venue, wish.by, today(), true);
    }
    options::HouseEffect effect;
    note(actions::VenueAs{wish.venue.name, {}}, wish.by,
         [&] { effect = actions::editVenue(opened(), wish.venue, wish.by, today()); });
    return effect;
  }

  void writeDemo() override {
    const exchange::Importer by = importer({});
    opened().transact([&] {
      for (const demo::File& file : demo::files()) {
        takeIn(exchange::kindFrom(file.kind), file.name, file.bytes, by);
      }
    });
  }

  QString writeFolder(const QString& folder, const QString& by) override {
    const exchange::Importer who = importer(by);
    QStringList read;
    opened().transact([&] {
      read.clear();
      for (const exchange::Kind kind : exchange::allKinds()) {
        const QString name = exchange::wordFor(kind) + QStringLiteral(".csv");
        QFile file(QDir(folder).filePath(name));
        if (!file.exists()) {
          continue;
        }
        if (!file.open(QIODevice::ReadOnly)) {
          throw Error(Trouble::badInput, "the file cannot be read (" + file.errorString().toStdString() + ")",
                      file.fileName().toStdString());
        }
        takeIn(kind, name, file.readAll(), who);
        read << name;
      }
    });
    if (read.isEmpty()) {
      QStringList expected;
      for (const exchange::Kind kind : exchange::allKinds()) {
        expected << exchange::wordFor(kind) + QStringLiteral(".csv");
      }
      throw Error(Trouble::badInput,
                  "this folder holds none of " + expected.join(QStringLiteral(", ")).toStdString(),
                  folder.toStdString());
    }
    return read.join(QStringLiteral(", "));
  }

  ImportLook lookAtFile(const ImportWish& wish) override {
    QFile file(wish.file);
    if (QFileInfo(wish.file).isDir() || !file.open(QIODevice::ReadOnly)) {
      throw Error(Trouble::badInput, "the file cannot be read (" + file.errorString().toStdString() + ")",
                  wish.file.toStdString());
    }
    const QByteArray bytes = file.readAll();
    ImportLook look;
    look.form = wish.form;
    if (wish.recall) {
      if (const auto kept = actions::rememberedMapping(opened(), wish.kind, bytes, wish.form)) {
        look.form.mapping = kept->mapping;
        look.form.dateFormat = kept->dateFormat;
        look.remembered = QStringLiteral("%1, %2").arg(kept->by, kept->at.date().toString(Qt::ISODate));
      }
    }
    takeFirstRows(exchange::firstRecords(bytes, look.form, 40), look);
    const exchange::Import import =
        wish.write
            ? importNoted(wish.kind, QFileInfo(wish.file).fileName(), bytes, importer(wish.by), look.form)
            : actions::importFile(opened(), wish.kind, bytes, importer(wish.by), look.form, true);
    look.counts = import.counts;
    look.differences = import.differences;
    look.faults = import.faults;
    look.readAs = import.form;
    look.written = wish.write && import.faults.empty();
    return look;
  }

  /// One file of several that stand or fall together.
  void takeIn(exchange::Kind kind, const QString& name, const QByteArray& bytes,
              const exchange::Importer& by) {
    const exchange::Import import = actions::importFile(opened(), kind, bytes, by);
    if (!import.faults.empty()) {
      throw Error(Trouble::badInput, exchange::text(import.faults.front()).toStdString(), name.toStdString());
    }
  }

  void closeStore() override { store_.reset(); }

  std::optional<QString> where_;
  QDate asOf_;
  std::unique_ptr<store::Store> store_;
};

} // namespace

std::shared_ptr<Source> openStoreSource(const WindowWords& words) {
  return std::make_shared<StoreSource>(words.store, words.asOf);
}

} // namespace hangbook::desk
