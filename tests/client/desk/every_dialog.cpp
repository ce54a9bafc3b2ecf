// SPDX-License-Identifier: GPL-3.0-or-later
#include "every_dialog.h"

#include <QComboBox>
#include <QFile>
#include <QLineEdit>
#include <QSpinBox>
#include <QTableWidget>
#include <QTest>

#include "desk/building/hung_dialog.h"
#include "desk/building/move_dialog.h"
#include "desk/building/sheet_preview.h"
#include "desk/building/swap_dialog.h"
#include "desk/data/plug_dialog.h"
#include "desk/data/record_dialog.h"
#include "desk/data/remove_dialog.h"
#include "desk/data/venue_dialog.h"
#include "desk/fleet/happened_dialog.h"
#include "desk/fleet/labels_dialog.h"
#include "desk/fleet/split_dialog.h"
#include "desk/fleet/state_dialog.h"
#include "desk/frame/keys_dialog.h"
#include "desk/importing/import_dialog.h"
#include "desk/options/choose_dialog.h"
#include "desk/options/withdraw_dialog.h"
#include "desk/source/record_source.h"
#include "desk/source/sheet_source.h"
#include "desk/words/ask_dialog.h"
#include "fixture_source.h"
#include "reports/code.h"

namespace hangbook::testing {
namespace {

using namespace desk;
using exchange::Kind;

const QString somebody = QStringLiteral("Ide Quarrel");

template <class Widget>
Widget& part(QDialog& dialog, const char* name) {
  auto* found = dialog.findChild<Widget*>(QLatin1String(name));
  BOOST_TEST_REQUIRE(found != nullptr, "there is no " << name);
  return *found;
}

void by(QDialog& dialog, const char* name) {
  part<QComboBox>(dialog, name).setEditText(somebody);
}

/// What a job of the store's thread answers.
template <class Job>
auto fromStore(OnDemo& on, Job job) {
  decltype(job(*on.window.session().source())) answer{};
  on.window.session().work().start(
      &on.window, [source = on.window.session().source(), job](Watch&) { return job(*source); },
      [&answer](const auto& found) { answer = found; },
      [](const std::exception_ptr& what) { BOOST_ERROR(wordsFor(what, {}).toStdString()); });
  on.settle();
  return answer;
}

/// One unit that can be read and one that cannot.
QString spreadsheet(OnDemo& on) {
  const QString name = on.folder.filePath(QStringLiteral("bought.csv"));
  QFile file(name);
  BOOST_TEST_REQUIRE(file.open(QIODevice::WriteOnly));
  file.write("serial,type,place,weighed [kg]\nMB101,Marram bass,warehouse bay 1,92.4\n"
             "MB102,Marram bas,warehouse bay 1,heavy\n");
  return name;
}

class List {
public:
  explicit List(OnDemo& demo) : on_(demo), session_(demo.window.session()), facts_(session_.overview()) {}

  std::vector<OneDialog> made() {
    planning();
    building();
    warehouse();
    data();
    return std::move(all_);
  }

private:
  template <class Dialog, class... More>
  void add(const char* name, std::function<void(Dialog&)> fill, More&&... more) {
    auto dialog = std::make_unique<Dialog>(std::forward<More>(more)..., &on_.window);
    const auto filled = fill ? [fill, raw = dialog.get()] { fill(*raw); } : std::function<void()>();
    all_.push_back({QLatin1String(name), std::move(dialog), filled});
  }

  void planning() {
    const QString what = QStringLiteral("2 bass · 1 upper · 1 bass · downfill, mark 143, trim 6.71 m");
    for (const auto& [name, verdict] : {std::pair{"choose", options::Verdict::holds},
                                        std::pair{"choose-unproven", options::Verdict::unproven},
                                        std::pair{"choose-fails", options::Verdict::fails}}) {
      add<ChooseDialog>(
          name, [](QDialog& it) { by(it, "chooseBy"); }, sampleOption(1, verdict), what,
          namesOf(facts_.people));
    }
    add<WithdrawDialog>(
        "withdraw",
        [](QDialog& it) {
          part<QLineEdit>(it, "withdrawReason").setText(QStringLiteral("the venue's points are other ones"));
          by(it, "withdrawBy");
        },
        choice(), what, facts_.people, facts_.atDesk);
    all_.push_back({QStringLiteral("keys"), std::make_unique<KeysDialog>(on_.window), {}});
    add<ImportDialog>(
        "import",
        [&on = on_](ImportDialog& it) {
          it.setFile(spreadsheet(on));
          on.settle();
          by(it, "importBy");
        },
        session_);
  }

  void building() {
    build::Flown flown;
    flown.moves = true;
    flown.after = sampleOption(1, options::Verdict::unproven);
    flown.steps = {QStringLiteral("Clear the floor under the hang and keep it clear."),
                   QStringLiteral("Lower both hoists by 0.42 m, evenly, until the lowest edge is at 6.29 m."),
                   QStringLiteral("Read the inclinometer on cabinet 1: 1.0°.")};
    add<MoveDialog>(
        "move", [](QDialog& it) { by(it, "moveBy"); }, flown, namesOf(facts_.people),
        QStringList{QStringLiteral("pins"), QStringLiteral("lifted")});
    add<SwapDialog>(
        "swap",
        [&on = on_](QDialog& it) {
          part<QComboBox>(it, "swapDead").setCurrentIndex(0);
          on.settle();
          by(it, "swapBy");
        },
        session_);
    add<HungDialog>(
        "hung",
        [&on = on_](QDialog& it) {
          auto& code = part<QLineEdit>(it, "hungCode");
          QTest::keyClicks(&code, QStringLiteral("nobody"));
          QTest::keyClick(&code, Qt::Key_Return);
          on.settle();
          by(it, "hungBy");
        },
        session_);
    const reports::SheetCode code{QStringLiteral("build-sheet"),
                                  session_.show().tour,
                                  session_.show().show,
                                  UnitSystem::metric,
                                  facts_.today,
                                  {}};
    const auto sheet =
        fromStore(on_, [code](Source& source) { return dynamic_cast<SheetSource&>(source).sheet(code); });
    add<SheetPreview>("sheet", {}, on_.window.session(), sheet,
                      reports::Stamp{QStringLiteral("0"), QDateTime(facts_.today, QTime(8, 0), Qt::UTC),
                                     reports::checksumOf(sheet), reports::textOf(code)},
                      reports::Paper::a4);
  }

  void warehouse() {
    const fleet::Unit& unit = facts_.units.front();
    add<LabelsDialog>(
        "labels",
        [](QDialog& it) { part<QLineEdit>(it, "labelsFile").setText(QStringLiteral("labels.pdf")); },
        unit.serial, 206);
    add<HappenedDialog>(
        "happened", [](QDialog& it) { by(it, "happenedBy"); }, unit, facts_.today, namesOf(facts_.people),
        facts_.atDesk);
    fleet::Unit batch = unit;
    batch.pieces = 24;
    add<SplitDialog>(
        "split", [](QDialog& it) { by(it, "splitBy"); }, batch, namesOf(facts_.people), facts_.atDesk);
    add<StateDialog>(
        "state", [](QDialog& it) { by(it, "stateBy"); }, unit, namesOf(facts_.people), facts_.atDesk);
  }

  void data() {
    const venue::Venue& hall = *findVenue(facts_, QStringLiteral("Ostrel Exchange"));
    add<VenueDialog>(
        "venue",
        [](QDialog& it) {
          part<QTableWidget>(it, "venuePointsTable").item(1, 4)->setText(QStringLiteral("1 ton"));
          by(it, "venueBy");
        },
        session_, hall);
    const catalogue::Catalogue& all = facts_.catalogue;
    record("cabinet", Kind::types, all.cabinets.front().name, "record_mass");
    record("bar", Kind::types, all.bars.front().name, "record_frame_mass");
    record("table", Kind::types, all.tables.front().name, nullptr);
    record("person", Kind::people, facts_.people.front().name, nullptr);
    const exchange::HangName hang{session_.show().tour, session_.show().show, session_.hang()};
    const auto against = fromStore(on_, [hang](Source& source) { return recordsOf(source).plugData(hang); });
    all_.push_back(
        {QStringLiteral("plugs"), std::make_unique<PlugDialog>(session_, hang, against, &on_.window), {}});
    all_.back().fill = [dialog = all_.back().dialog.get()] {
      part<QTableWidget>(*dialog, "plugsTable").item(0, 5)->setText(QStringLiteral("Z"));
      by(*dialog, "plugsBy");
    };
    add<RemoveDialog>("remove", {}, all.cabinets.front().name, namesOf(facts_.people), facts_.atDesk);
  }

  /// A record's form, with something in `wrong` that cannot be read.
  void record(const char* sort, Kind kind, const QString& name, const char* wrong) {
    all_.push_back({QStringLiteral("record-") + QLatin1String(sort),
                    std::make_unique<RecordDialog>(
                        session_, exchange::RecordName{kind, QLatin1String(sort), name}, &on_.window),
                    {}});
    all_.back().fill = [dialog = all_.back().dialog.get(), wrong] {
      if (wrong != nullptr) {
        part<QLineEdit>(*dialog, wrong).setText(QStringLiteral("heavy"));
      }
      by(*dialog, "entryBy");
    };
  }

  options::Choice choice() const { return *findChoice(facts_, session_.show(), session_.hang()); }

  OnDemo& on_;
  Session& session_;
  const Overview& facts_;
  std::vector<OneDialog> all_{};
};

} // namespace

std::vector<OneDialog> everyDialog(OnDemo& on) {
  on.window.session().setShow({on.window.session().overview().tours.front().name, QStringLiteral("Ostrel")},
                              QStringLiteral("left"));
  on.settle();
  return List(on).made();
}

void showFilled(OnDemo& on, const OneDialog& one) {
  one.dialog->show();
  on.settle();
  if (one.fill) {
    one.fill();
    on.settle();
  }
  QCoreApplication::processEvents(); // what was filled in asks for room by an event
}

} // namespace hangbook::testing
