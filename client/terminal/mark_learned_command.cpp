// SPDX-License-Identifier: GPL-3.0-or-later
#include <QJsonArray>

#include "marks/observed.h"
#include "store/catalogue_store.h"
#include "store/mark_store.h"
#include "terminal/answers.h"
#include "terminal/commands.h"
#include "terminal/facts.h"
#include "terminal/figures.h"
#include "terminal/store_door.h"
#include "terminal/table.h"

namespace hangbook::terminal {
namespace {

QString adviceOf(const marks::Learned& learned) {
  switch (learned.advice) {
  case marks::Advice::none:
    return QStringLiteral("none");
  case marks::Advice::quarantine:
    return QStringLiteral("quarantine");
  case marks::Advice::unproven:
    return QStringLiteral("unproven");
  }
  return {};
}

QStringList slipsOf(const marks::Fit& fit) {
  QStringList all;
  for (const std::string& each : fit.slips) {
    all << QString::fromStdString(each);
  }
  return all;
}

QJsonObject inJson(const marks::ChainBook& book) {
  QJsonArray records;
  for (std::size_t i = 0; book.learned && i < book.records.size(); ++i) {
    const marks::MarkUsed& used = book.records[i];
    const marks::Fit& fit = book.learned->fits[i];
    records.append(QJsonObject{{QStringLiteral("date"), used.date.toString(Qt::ISODate)},
                               {QStringLiteral("place"), used.place},
                               {QStringLiteral("mark"), used.mark},
                               {QStringLiteral("measured_deg"), inDegrees(*used.measured)},
                               {QStringLiteral("stated_deg"), jsonFigure(fit.statedDeg)},
                               {QStringLiteral("learned_deg"), jsonFigure(fit.learnedDeg)},
                               {QStringLiteral("doubt_deg"), jsonFigure(fit.doubtDeg)},
                               {QStringLiteral("fits"), fit.fits},
                               {QStringLiteral("slips"), QJsonArray::fromStringList(slipsOf(fit))}});
  }
  QJsonArray leftOut;
  for (const auto& [used, why] : book.leftOut) {
    leftOut.append(QJsonObject{{QStringLiteral("date"), used.date.toString(Qt::ISODate)},
                               {QStringLiteral("mark"), used.mark},
                               {QStringLiteral("why"), why}});
  }
  QJsonObject object{{QStringLiteral("chain"), book.chain},
                     {QStringLiteral("serial"), book.serial},
                     {QStringLiteral("records"), records},
                     {QStringLiteral("left_out"), leftOut}};
  if (book.learned) {
    object.insert(QStringLiteral("used"), book.learned->used);
    object.insert(QStringLiteral("offset_m"), book.learned->offset);
    object.insert(QStringLiteral("offset_doubt_m"), book.learned->offsetDoubt);
    object.insert(QStringLiteral("wear_percent"), 100.0 * book.learned->wear);
    object.insert(QStringLiteral("wear_doubt_percent"), 100.0 * book.learned->wearDoubt);
    object.insert(QStringLiteral("separable"), book.learned->separable);
    object.insert(QStringLiteral("scatter_deg"), book.learned->scatterDeg);
    object.insert(QStringLiteral("advice"), adviceOf(*book.learned));
  }
  return object;
}

void printForPeople(const marks::ChainBook& book, std::ostream& out) {
  out << (book.serial.isEmpty() ? QStringLiteral("no serial noted") : book.serial) << ", " << book.chain
      << ": ";
  if (!book.learned || book.learned->used == 0) {
    out << "nothing learned\n";
  } else {
    const marks::Learned& learned = *book.learned;
    out << QString::number(learned.used) << " of " << QString::number(learned.records)
        << " records; fixed length " << shown(1000.0 * learned.offset, 1) << " ± "
        << shown(1000.0 * learned.offsetDoubt, 1) << " mm beyond what is stated, ";
    if (learned.separable) {
      out << "links worn by " << shown(100.0 * learned.wear, 2) << " ± "
          << shown(100.0 * learned.wearDoubt, 2) << " %";
    } else {
      out << "wear and fixed length cannot be told apart (too few records, or marks too near to each other)";
    }
    out << "; scatter " << shown(learned.scatterDeg, 2) << "°\n";
    if (learned.advice == marks::Advice::quarantine) {
      out << "  QUARANTINE: near or beyond the maker's discard figure. It is not calibrated away: do not "
             "lift with it.\n";
    } else if (learned.advice == marks::Advice::unproven) {
      out << "  Unproven: the maker's discard figure of this chain is not known.\n";
    }
    Table table({{QStringLiteral("date")},
                 {QStringLiteral("place"), Column::Kind::text},
                 {QStringLiteral("mark"), Column::Kind::figure},
                 {QStringLiteral("measured °"), Column::Kind::figure},
                 {QStringLiteral("as stated °"), Column::Kind::figure},
                 {QStringLiteral("as learned °"), Column::Kind::figure},
                 {QStringLiteral("± °"), Column::Kind::figure}});
    for (std::size_t i = 0; i < book.records.size(); ++i) {
      const marks::MarkUsed& used = book.records[i];
      const marks::Fit& fit = learned.fits[i];
      QStringList note;
      if (!fit.fits) {
        note << QStringLiteral("DOES NOT FIT its geometry: ") +
                    (fit.slips.empty() ? QStringLiteral("no single slip explains it")
                                       : slipsOf(fit).mid(0, 3).join(QStringLiteral("; or ")));
      }
      table.add({used.date.toString(Qt::ISODate), used.place, QString::number(used.mark),
                 shownAngle(inDegrees(*used.measured), 2), shownAngle(fit.statedDeg, 2),
                 shownAngle(fit.learnedDeg, 2), shown(fit.doubtDeg, 2)},
                note);
    }
    table.print(out, QStringLiteral("  "));
  }
  for (const auto& [used, why] : book.leftOut) {
    out << "  left out: " << used.date.toString(Qt::ISODate) << ", mark " << QString::number(used.mark)
        << ": " << why << '\n';
  }
}

Ending run(const Given& given, Context& context) {
  const auto store = openStore(context);
  const QString serial = QString::fromStdString(given.option("--chain-serial").value_or(""));
  std::vector<marks::MarkUsed> standing = store::loadMarks(*store);
  QSet<QUuid> corrected;
  for (const marks::MarkUsed& each : standing) {
    corrected.insert(each.corrects);
  }
  std::erase_if(standing, [&](const marks::MarkUsed& each) {
    return corrected.contains(each.id) || (!serial.isEmpty() && each.chainSerial != serial);
  });
  const auto books = marks::chainBooks(store::loadCatalogue(*store), standing);
  bool trouble = false;
  QJsonArray chains;
  for (const marks::ChainBook& book : books) {
    trouble = trouble || (book.learned && book.learned->advice == marks::Advice::quarantine);
    if (context.json) {
      chains.append(inJson(book));
    } else {
      printForPeople(book, context.out);
    }
  }
  if (context.json) {
    printJson(context, {{QStringLiteral("format"), QStringLiteral("hangbook.marks-learned/1")},
                        {QStringLiteral("chains"), chains}});
  } else if (books.empty()) {
    context.out << "No mark is recorded.\n";
  }
  return trouble ? Ending::failing : Ending::done;
}

} // namespace

Command markLearnedCommand() {
  return {"mark learned",
          "what recorded angles say of each chain: fixed length, wear, which record does not fit and why",
          {{"--chain-serial", "SERIAL", "one chain"}},
          {},
          "hangbook mark learned --chain-serial CH01",
          run};
}

} // namespace hangbook::terminal
