// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/words/edit_words.h"

#include "desk/words/stack_text.h"
#include "desk/words/words.h"

namespace hangbook::desk {
namespace {

QString words(const actions::ChosenFor& before, const actions::ChosenFor& after,
              const catalogue::Catalogue& catalogue, const Figures& figures) {
  if (!after.choice) {
    return Words::tr("take back the choice for %1 at %2").arg(after.hang, after.show);
  }
  const options::Setting& now = after.choice->setting;
  if (!before.choice || before.choice->option != after.choice->option) {
    return Words::tr("choose %1 for %2 at %3")
        .arg(stackText(after.choice->key.stack, catalogue), after.hang, after.show);
  }
  const options::Setting& was = before.choice->setting;
  QStringList moved;
  if (now.trimM != was.trimM) {
    moved << Words::tr("trim %1").arg(figures.length(now.trimM));
  }
  if (now.tiltDeg != was.tiltDeg) {
    moved << Words::tr("tilt %1").arg(figures.angle(now.tiltDeg));
  }
  if (now.panDeg != was.panDeg) {
    moved << Words::tr("pan %1").arg(figures.angle(now.panDeg));
  }
  if (moved.isEmpty() && now.mark != was.mark) {
    moved << (now.mark ? Words::tr("mark %1").arg(*now.mark) : Words::tr("no mark"));
  }
  if (moved.isEmpty()) {
    moved << Words::tr("other holes");
  }
  return Words::tr("%1 for %2 at %3").arg(moved.join(QStringLiteral(", ")), after.hang, after.show);
}

QString words(const actions::StatedFor& before, const actions::StatedFor& after,
              const catalogue::Catalogue& /*catalogue*/, const Figures& /*figures*/) {
  return after.statements.size() < before.statements.size()
             ? Words::tr("withdraw house rule %1 of %2").arg(after.figure, after.site.name)
             : Words::tr("house rule %1 of %2").arg(after.figure, after.site.name);
}

QString words(const actions::VenueAs& /*before*/, const actions::VenueAs& after,
              const catalogue::Catalogue& /*catalogue*/, const Figures& /*figures*/) {
  return Words::tr("edit %1").arg(after.name);
}

QString words(const actions::RecordAs& before, const actions::RecordAs& after,
              const catalogue::Catalogue& /*catalogue*/, const Figures& /*figures*/) {
  return before.texts.none()  ? Words::tr("new record %1").arg(after.record.name)
         : after.texts.none() ? Words::tr("remove %1").arg(after.record.name)
                              : Words::tr("edit %1").arg(after.record.name);
}

QString words(const actions::PluggedFor& /*before*/, const actions::PluggedFor& after,
              const catalogue::Catalogue& /*catalogue*/, const Figures& /*figures*/) {
  return Words::tr("plugs of %1 at %2").arg(after.hang.hang, after.hang.show);
}

QString words(const actions::ImportedAs& /*before*/, const actions::ImportedAs& after,
              const catalogue::Catalogue& /*catalogue*/, const Figures& /*figures*/) {
  return Words::tr("import of %1").arg(after.file);
}

QString words(const actions::SwappedFor& /*before*/, const actions::SwappedFor& after,
              const catalogue::Catalogue& /*catalogue*/, const Figures& /*figures*/) {
  return Words::tr("swap %1 for %2").arg(after.dead.serial, after.stand.serial);
}

QString words(const actions::HungFor& /*before*/, const actions::HungFor& after,
              const catalogue::Catalogue& /*catalogue*/, const Figures& /*figures*/) {
  return Words::tr("units by serial of %1 at %2").arg(after.hang, after.show);
}

} // namespace

QString editWords(const actions::PlanEdit& edit, const catalogue::Catalogue& catalogue,
                  const Figures& figures) {
  return std::visit(
      [&](const auto& after) {
        return words(std::get<std::decay_t<decltype(after)>>(edit.before), after, catalogue, figures);
      },
      edit.after);
}

actions::PlanEdit turned(const actions::PlanEdit& edit) {
  return {edit.after, edit.before, edit.by};
}

} // namespace hangbook::desk
