// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/choice_store.h"

#include <QCryptographicHash>

#include "store/people_store.h"
#include "store/records.h"
#include "store/words.h"

namespace hangbook::store {

namespace {

using options::Choice;
using options::LoadPart;
using options::PointResult;
using options::Setting;

QString hashOf(const QByteArray& content) {
  return QString::fromLatin1(QCryptographicHash::hash(content, QCryptographicHash::Sha256).toHex());
}

QJsonArray loadsJson(const std::vector<PointResult>& points) {
  QJsonArray list;
  for (const PointResult& point : points) {
    QJsonArray parts;
    for (const LoadPart& part : point.parts) {
      parts.append(QJsonObject{{"what", part.what}, {"kn", part.kn}});
    }
    QJsonObject object{{"point", point.point},
                       {"static_kn", point.staticKn},
                       {"dynamic_kn", point.dynamicKn},
                       {"capacity_kn", point.capacityKn ? QJsonValue(*point.capacityKn) : QJsonValue()},
                       {"parts", parts}};
    if (point.worstStaticKn && point.worstDynamicKn) {
      object["worst_static_kn"] = *point.worstStaticKn;
      object["worst_dynamic_kn"] = *point.worstDynamicKn;
    }
    list.append(object);
  }
  return list;
}

std::vector<PointResult> loadsFrom(const QJsonArray& list) {
  std::vector<PointResult> points;
  for (const QJsonValue& each : list) {
    const QJsonObject object = each.toObject();
    PointResult& point = points.emplace_back();
    point.point = object["point"].toString();
    point.staticKn = object["static_kn"].toDouble();
    point.dynamicKn = object["dynamic_kn"].toDouble();
    if (object["worst_static_kn"].isDouble() && object["worst_dynamic_kn"].isDouble()) {
      point.worstStaticKn = object["worst_static_kn"].toDouble();
      point.worstDynamicKn = object["worst_dynamic_kn"].toDouble();
    }
    if (object["capacity_kn"].isDouble()) {
      point.capacityKn = object["capacity_kn"].toDouble();
    }
    for (const QJsonValue& part : object["parts"].toArray()) {
      point.parts.push_back({part.toObject()["what"].toString(), part.toObject()["kn"].toDouble()});
    }
  }
  return points;
}

QJsonObject settingJson(const Setting& setting) {
  QJsonArray holes;
  for (const double hole : setting.holesDeg) {
    holes.append(hole);
  }
  return {{"tilt_deg", setting.tiltDeg},
          {"pan_deg", setting.panDeg},
          {"trim_m", setting.trimM},
          {"mark", setting.mark ? QJsonValue(*setting.mark) : QJsonValue()},
          {"holes_deg", holes}};
}

Setting settingFrom(const QJsonObject& object) {
  Setting setting;
  setting.tiltDeg = object["tilt_deg"].toDouble();
  setting.panDeg = object["pan_deg"].toDouble();
  setting.trimM = object["trim_m"].toDouble();
  if (object["mark"].isDouble()) {
    setting.mark = object["mark"].toInt();
  }
  for (const QJsonValue& hole : object["holes_deg"].toArray()) {
    setting.holesDeg.push_back(hole.toDouble());
  }
  return setting;
}

constexpr auto choiceColumns = [](auto& io, auto& choice) {
  io("id", choice.id);
  io("hang", choice.hang);
  io("revision", choice.revision);
  io("option_id", choice.option);
  io.list("stack", choice.key.stack);
  io("stacking", choice.key.table);
  io("bar", choice.key.bar);
  io.word("picks", choice.key.picks, picksWords);
  io("hoist", choice.key.hoist);
  io.list("points", choice.key.points);
  io.word("verdict", choice.verdict, verdictWords);
  io("reason", choice.reason);
  io("sha256", choice.sha256);
  io("by_name", choice.by);
  io("recorded_at", choice.at);
  io("moved_from", choice.movedFrom);
};

const QString choicesFrom = QStringLiteral(
    "SELECT c.*, s.tour, s.name AS show_name, s.away_from, s.away_to, f.content, f.program AS frozen_by, "
    "(SELECT b.recorded_at FROM choice b WHERE b.show_id = c.show_id AND b.hang = c.hang AND "
    "b.revision <= c.revision AND b.moved_from = 0 ORDER BY b.revision DESC LIMIT 1) AS built_at "
    "FROM choice c JOIN show s ON s.id = c.show_id JOIN frozen f ON f.sha256 = c.sha256 ");

/// Only what stands: the newest of its hang, not withdrawn, and the show still has that hang.
const QString standing = QStringLiteral(
    "NOT c.withdrawn AND EXISTS (SELECT 1 FROM hang h WHERE h.owner_id = c.show_id AND h.name = c.hang) "
    "AND c.revision = (SELECT max(n.revision) FROM choice n WHERE n.show_id = c.show_id AND "
    "n.hang = c.hang) ");

Choice choiceFrom(const Row& row, const Place& place) {
  Choice choice;
  ColumnReader io(row);
  choiceColumns(io, choice);
  choice.key.hang = choice.hang;
  choice.tour = row.text("tour");
  choice.show = row.text("show_name");
  choice.awayFrom = row.maybeDate("away_from");
  choice.awayTo = row.maybeDate("away_to");
  choice.points = loadsFrom(jsonList(row.text("point_loads"), "point_loads"));
  choice.setting = settingFrom(jsonObject(row.text("setting"), "setting"));
  choice.frozen = row.text("content").toUtf8();
  choice.program = row.text("frozen_by");
  choice.builtAt = row.instant("built_at");
  if (hashOf(choice.frozen) != choice.sha256) {
    throw StoreError(Cause::damaged,
                     "the frozen record of hang \"" + choice.hang.toStdString() + "\" of show \"" +
                         choice.show.toStdString() +
                         "\" is not what was frozen; go back to the newest backup",
                     place.shown().toStdString());
  }
  return choice;
}

std::vector<Choice> readChoices(Store& store, const QString& rest, const Bindings& bindings) {
  std::vector<Choice> choices;
  for (const Row& row : store.rows(choicesFrom + rest, bindings)) {
    choices.push_back(choiceFrom(row, store.place()));
  }
  return choices;
}

QUuid showId(Store& store, const QString& tour, const QString& show) {
  const auto row = store.one(QStringLiteral("SELECT id FROM show WHERE tour = :tour AND name = :show"),
                             {{"tour", tour}, {"show", show}});
  if (!row) {
    throw Error(Trouble::badInput,
                QStringLiteral("there is no show \"%1\" on tour \"%2\"").arg(show, tour).toStdString());
  }
  return row->uuid("id");
}

void checkChoice(const Choice& choice) {
  if (choice.verdict == options::Verdict::fails) {
    throw Error(Trouble::notPossible, "an option that fails cannot be chosen");
  }
  if (choice.verdict == options::Verdict::unproven && choice.reason.trimmed().isEmpty()) {
    throw Error(Trouble::badInput, "an option with an unproven rule can be pencilled in with a reason only");
  }
  if (choice.by.trimmed().isEmpty()) {
    throw Error(Trouble::badInput, "nobody is named who chooses; say who is at the desk");
  }
  if (hashOf(choice.frozen) != choice.sha256) {
    throw Error(Trouble::badInput, "the frozen record is not what its SHA-256 names");
  }
}

void write(Store& store, const Choice& choice, const QUuid& show, bool withdrawn) {
  store.run(
      QStringLiteral("INSERT INTO frozen (sha256, program, content) VALUES (:sha256, :program, :content) "
                     "ON CONFLICT (sha256) DO NOTHING"),
      {{"sha256", choice.sha256},
       {"program", choice.program},
       {"content", QString::fromUtf8(choice.frozen)}});
  ColumnWriter io;
  choiceColumns(io, choice);
  io("show_id", show);
  io("withdrawn", withdrawn);
  io("point_loads", jsonText(loadsJson(choice.points)));
  io("setting", jsonText(settingJson(choice.setting)));
  io("device", thisDevice());
  insertRow(store, "choice", io.bindings);
}

/// The version that the next one follows. Throws where another choice stands than the one that the caller
/// knows; after one that was withdrawn nothing stands.
int checkCurrent(Store& store, const Choice& choice, const QUuid& show) {
  const auto row = store.one(
      QStringLiteral("SELECT revision, option_id, by_name, withdrawn FROM choice WHERE show_id = :show AND "
                     "hang = :hang ORDER BY revision DESC LIMIT 1"),
      {{"show", show}, {"hang", choice.hang}});
  const int stored = row ? row->number("revision") : 0;
  const bool nothingStands = row && row->flag("withdrawn");
  if (stored != choice.revision && !(nothingStands && choice.revision == 0)) {
    throw StaleError(QStringLiteral("the choice for hang \"%1\" of show \"%2\" was changed meanwhile, so "
                                    "nothing was saved: option %3 "
                                    "was to follow version %4, the store holds version %5 (option %6 by %7)")
                         .arg(choice.hang, choice.show, choice.option)
                         .arg(choice.revision)
                         .arg(stored)
                         .arg(row ? row->text("option_id") : QStringLiteral("none"),
                              row ? row->text("by_name") : QStringLiteral("nobody"))
                         .toStdString());
  }
  return stored;
}

RecordName nameOf(const Choice& choice) {
  return {"choice",
          QStringLiteral("the choice for hang \"%1\" of show \"%2\"").arg(choice.hang, choice.show)};
}

} // namespace

std::vector<Choice> loadChoices(Store& store, const QString& tour, const QString& show) {
  return readChoices(store,
                     QStringLiteral("WHERE s.tour = :tour AND s.name = :show AND ") + standing +
                         QStringLiteral("ORDER BY c.hang"),
                     {{"tour", tour}, {"show", show}});
}

std::vector<Choice> loadChoiceHistory(Store& store, const QString& tour, const QString& show,
                                      const QString& hang) {
  return readChoices(
      store,
      QStringLiteral("WHERE s.tour = :tour AND s.name = :show AND c.hang = :hang ORDER BY c.revision DESC"),
      {{"tour", tour}, {"show", show}, {"hang", hang}});
}

std::vector<Choice> loadOverlappingChoices(Store& store, const QString& tour, const QString& show) {
  return readChoices(
      store,
      QStringLiteral("JOIN show mine ON mine.tour = :tour AND mine.name = :show WHERE s.id <> mine.id AND "
                     "coalesce(s.away_from <= mine.away_to, TRUE) AND "
                     "coalesce(s.away_to >= mine.away_from, TRUE) AND ") +
          standing + QStringLiteral("ORDER BY s.away_from NULLS FIRST, s.tour, s.name, c.hang"),
      {{"tour", tour}, {"show", show}});
}

Choice append(Store& store, const Choice& choice) {
  checkChoice(choice);
  return store.transact([&] {
    Choice saved = choice;
    inTermsOf(nameOf(choice), [&] {
      const QUuid show = showId(store, choice.tour, choice.show);
      saved.revision = checkCurrent(store, choice, show) + 1;
      if (store
              .one(QStringLiteral("SELECT count(*) AS n FROM hang WHERE owner_id = :show AND name = :hang"),
                   {{"show", show}, {"hang", choice.hang}})
              ->integer("n") == 0) {
        throw Error(Trouble::badInput, "show \"" + choice.show.toStdString() + "\" has no hang \"" +
                                           choice.hang.toStdString() + '"');
      }
      saved.id = QUuid::createUuid();
      if (!saved.at.isValid()) {
        saved.at = QDateTime::currentDateTimeUtc();
      }
      write(store, saved, show, false);
    });
    return saved;
  });
}

void withdraw(Store& store, const Choice& choice, const QString& by, const QString& reason) {
  store.transact([&] {
    inTermsOf(nameOf(choice), [&] {
      const QUuid show = showId(store, choice.tour, choice.show);
      checkCurrent(store, choice, show);
      const std::vector<Choice> all = loadChoiceHistory(store, choice.tour, choice.show, choice.hang);
      if (all.empty() || choice.revision == 0) {
        throw Error(Trouble::notPossible, "no option is chosen for this hang");
      }
      Choice last = all.front();
      last.movedFrom = 0;
      last.id = QUuid::createUuid();
      ++last.revision;
      last.by = by;
      last.at = QDateTime::currentDateTimeUtc();
      last.reason = reason.trimmed().isEmpty() ? QStringLiteral("withdrawn") : reason;
      write(store, last, show, true);
    });
  });
}

QStringList frozenAstray(Store& store) {
  QStringList astray;
  for (const Row& row : store.rows(QStringLiteral("SELECT sha256, content FROM frozen"))) {
    if (hashOf(row.text("content").toUtf8()) != row.text("sha256")) {
      astray.append(QStringLiteral("the frozen record %1 is not what was frozen").arg(row.text("sha256")));
    }
  }
  return astray;
}

} // namespace hangbook::store
