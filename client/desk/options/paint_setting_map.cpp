// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/options/paint_setting_map.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "desk/style/scale.h"
#include "desk/style/verdict_mark.h"
#include "desk/words/plain_words.h"
#include "desk/words/words.h"

namespace hangbook::desk {
namespace {

using options::Verdict;

constexpr double metresPerFoot = 0.3048;
constexpr double barShare = 0.72;   ///< of the tilt's step: the rest is not claimed
constexpr double marksShare = 0.32; ///< of the height, at most

/// Links that leave a trim, and the one that is set; as many as have room, the nearest to that one.
std::vector<const options::MarkLine*> marksShown(const MapShown& shown, std::size_t most) {
  std::vector<const options::MarkLine*> lines;
  for (const auto& line : shown.map.marks) {
    if (!line.at.empty() || line.mark == shown.map.mark) {
      lines.push_back(&line);
    }
  }
  const int own = shown.map.mark.value_or(0);
  std::ranges::stable_sort(lines, {}, [&](const auto* line) { return std::abs(line->mark - own); });
  if (lines.size() > most) {
    lines.resize(most);
  }
  std::ranges::sort(lines, {}, &options::MarkLine::mark);
  return lines;
}

QBrush fillFor(Verdict verdict, const Colours& colours) {
  QColor colour = colourOf(verdict, colours);
  switch (verdict) {
  case Verdict::holds:
    colour.setAlpha(150);
    return colour;
  case Verdict::tight:
    return {colour, Qt::BDiagPattern};
  default:
    return {colour, Qt::Dense6Pattern};
  }
}

class Painting {
public:
  Painting(QPainter& painter, const MapShown& shown, const MapScale& scale, const Colours& colours,
           const QFont& font, const Figures& figures)
      : painter_(painter), shown_(shown), scale_(scale), colours_(colours),
        note_(fontFor(TextSize::note, font)), metrics_(note_), figures_(figures) {}

  void paint() {
    painter_.setFont(note_);
    frame();
    columns();
    marks();
    names();
    point();
    key();
  }

private:
  void frame() {
    painter_.fillRect(scale_.trims, colours_.sheet);
    painter_.setPen(QPen(colours_.line, 1));
    const bool metric = figures_.system() == UnitSystem::metric;
    const double unit = metric ? 1.0 : metresPerFoot;
    const double step = niceStep((scale_.highTrim - scale_.lowTrim) / unit, scale_.trims.height()) * unit;
    for (double n = std::ceil(scale_.lowTrim / step); n * step <= scale_.highTrim; ++n) {
      const double y = scale_.y(n * step);
      painter_.setPen(QPen(colours_.line, 1));
      painter_.drawLine(QPointF(scale_.trims.left(), y), QPointF(scale_.trims.right(), y));
      painter_.setPen(colours_.text);
      painter_.drawText(QRectF(scale_.trims.left() - 80, y - 10, 76, 20), Qt::AlignRight | Qt::AlignVCenter,
                        figures_.length(n * step, step / unit < 0.1 ? 2 : 1));
    }
    const double tilts = niceStep(scale_.lastTilt - scale_.firstTilt, scale_.trims.width() / 2.0);
    for (double n = std::ceil(scale_.firstTilt / tilts); n * tilts <= scale_.lastTilt; ++n) {
      const double x = scale_.x(n * tilts);
      const double foot = scale_.marks.isEmpty() ? scale_.trims.bottom() : scale_.marks.bottom();
      painter_.setPen(QPen(colours_.line, 1));
      painter_.drawLine(QPointF(x, scale_.trims.top()), QPointF(x, foot));
      painter_.setPen(colours_.text);
      painter_.drawText(QRectF(x - 40, foot + 2, 80, metrics_.height()), Qt::AlignHCenter | Qt::AlignTop,
                        figures_.angle(n * tilts));
    }
    painter_.setPen(QPen(colours_.frame, 1));
    painter_.setBrush(Qt::NoBrush);
    painter_.drawRect(scale_.trims);
  }

  static double niceStep(double span, double pixels) {
    const double wanted = span / std::max(1.0, pixels / 36.0);
    const double power = std::pow(10.0, std::floor(std::log10(std::max(wanted, 1e-6))));
    for (const double each : {1.0, 2.0, 5.0}) {
      if (each * power >= wanted) {
        return each * power;
      }
    }
    return 10.0 * power;
  }

  double barWidth() const { return barShare * (scale_.x(scale_.tiltStep) - scale_.x(0.0)); }

  void columns() {
    const double half = barWidth() / 2.0;
    for (const auto& column : shown_.map.columns) {
      const double x = scale_.x(column.tiltDeg);
      for (const auto& stretch : column.stretches) {
        for (const auto& part : stretch.parts) {
          QRectF bar(QPointF(x - half, scale_.y(part.highM)), QPointF(x + half, scale_.y(part.lowM)));
          if (bar.height() < 1.5) { // a single trim is still seen
            bar = QRectF(bar.left(), bar.center().y() - 0.75, bar.width(), 1.5);
          }
          painter_.setPen(QPen(colourOf(part.verdict, colours_), 1));
          painter_.setBrush(fillFor(part.verdict, colours_));
          painter_.drawRect(bar);
        }
      }
    }
  }

  void marks() {
    if (scale_.marks.isEmpty()) {
      return;
    }
    painter_.fillRect(scale_.marks, colours_.sheet);
    const double least = 3.0;
    const auto lines = marksShown(shown_, static_cast<std::size_t>(scale_.marks.height() / least));
    const double row =
        std::min(16.0, scale_.marks.height() / static_cast<double>(std::max<std::size_t>(1, lines.size())));
    const double half = barWidth() / 2.0;
    double lastLabel = 1e9;
    for (std::size_t i = 0; i < lines.size(); ++i) {
      const double y = scale_.marks.bottom() - (static_cast<double>(i) + 0.5) * row;
      const bool own = lines[i]->mark == shown_.map.mark;
      for (const auto& at : lines[i]->at) {
        const double x = scale_.x(at.tiltDeg);
        QPen pen(own ? colours_.accent : colours_.text, std::min(own ? 4.0 : 2.0, row * (own ? 0.8 : 0.35)));
        pen.setCapStyle(Qt::FlatCap);
        if (at.best == Verdict::unproven) {
          pen.setStyle(Qt::DotLine);
          pen.setColor(colours_.unproven);
        }
        painter_.setPen(pen);
        painter_.drawLine(QPointF(x - half, y), QPointF(x + half, y));
      }
      const bool room = lastLabel - y >= metrics_.height() * 0.85;
      if (own || room) {
        QFont font = note_;
        font.setBold(own);
        painter_.setFont(font);
        painter_.setPen(colours_.text);
        const QRectF box(scale_.marks.left() - 80, y - 9, 76, 18);
        if (own && !room) {
          painter_.fillRect(box.adjusted(40, 1, 0, -1), colours_.ground);
        }
        painter_.drawText(box, Qt::AlignRight | Qt::AlignVCenter,
                          own ? Words::tr("mark %1").arg(lines[i]->mark) : QString::number(lines[i]->mark));
        lastLabel = y;
      }
    }
    painter_.setFont(note_);
    painter_.setPen(QPen(colours_.frame, 1));
    painter_.setBrush(Qt::NoBrush);
    painter_.drawRect(scale_.marks);
  }

  bool place(QRectF box, const QString& text) {
    if (!scale_.trims.adjusted(-1, -1, 1, 1).contains(box) ||
        std::ranges::any_of(taken_, [&](const QRectF& each) { return each.intersects(box); })) {
      return false;
    }
    taken_.push_back(box);
    painter_.fillRect(box, colours_.sheet);
    painter_.setPen(colours_.text);
    painter_.drawText(box, Qt::AlignCenter, text);
    return true;
  }

  /// Stands for a name that has no room; the key says for which.
  QString letterFor(const QString& name) {
    if (!letters_.contains(name)) {
      letters_ << name;
    }
    return QString(QChar(QLatin1Char(static_cast<char>('A' + letters_.indexOf(name)))));
  }

  void names() {
    for (const bool first : {true, false}) {
      side(first);
    }
    for (const EdgeName& edge : edgeNames(shown_.map)) {
      const QString name = edge.rule.isEmpty() ? Words::tr("not looked further") : ruleWords(edge.rule);
      const double middle = 0.5 * (scale_.x(edge.firstTilt) + scale_.x(edge.lastTilt));
      const double width = metrics_.horizontalAdvance(name) + 4;
      const double y = scale_.y(edge.trimM);
      const auto boxFor = [&](double wide) {
        double left = std::clamp(middle - wide / 2.0, scale_.trims.left() + 1,
                                 std::max(scale_.trims.left() + 1, scale_.trims.right() - wide - 1));
        return QRectF(left, edge.high ? y - metrics_.height() - 2 : y + 2, wide, metrics_.height());
      };
      const double along = scale_.x(edge.lastTilt) - scale_.x(edge.firstTilt) + barWidth();
      if (width > 2.5 * along + 30 || !place(boxFor(width), name)) {
        const QString letter = letterFor(name);
        place(boxFor(metrics_.horizontalAdvance(letter) + 4), letter);
      }
    }
  }

  void side(bool first) {
    const QString name = sideName(shown_.map, first);
    std::optional<double> tilt;
    for (const auto& column : shown_.map.columns) {
      if (!column.stretches.empty() && (!first || !tilt)) {
        tilt = column.tiltDeg;
      }
    }
    if (!tilt || name.isEmpty()) {
      return;
    }
    const double x =
        scale_.x(*tilt) + (first ? -1.0 : 1.0) * (barWidth() / 2.0 + metrics_.height() / 2.0 + 4);
    if (x < scale_.trims.left() + metrics_.height() / 2.0 ||
        x > scale_.trims.right() - metrics_.height() / 2.0) {
      return;
    }
    const bool fits = metrics_.horizontalAdvance(name) + 12 < scale_.trims.height();
    const QString text = fits ? name : letterFor(name);
    const double length = metrics_.horizontalAdvance(text) + 4;
    const double high = metrics_.height();
    const QPointF middle(x, scale_.trims.center().y());
    taken_.push_back(fits ? QRectF(middle.x() - high / 2.0, middle.y() - length / 2.0, high, length)
                          : QRectF(middle.x() - length / 2.0, middle.y() - high / 2.0, length, high));
    painter_.save();
    painter_.translate(middle);
    painter_.rotate(fits ? -90 : 0);
    const QRectF box(-length / 2.0, -high / 2.0, length, high);
    painter_.fillRect(box, colours_.sheet);
    painter_.setPen(colours_.text);
    painter_.drawText(box, Qt::AlignCenter, text);
    painter_.restore();
  }

  void point() {
    const QPointF at(scale_.x(shown_.at.tiltDeg), scale_.y(shown_.at.trimM));
    painter_.setPen(QPen(colours_.text, 1, Qt::DashLine));
    painter_.drawLine(QPointF(scale_.trims.left(), at.y()), QPointF(scale_.trims.right(), at.y()));
    painter_.drawLine(QPointF(at.x(), scale_.trims.top()), QPointF(at.x(), scale_.trims.bottom()));
    painter_.setPen(QPen(colours_.text, 1.5));
    painter_.setBrush(colours_.sheet);
    painter_.drawEllipse(at, 8.0, 8.0);
    if (shown_.verdict) {
      drawVerdict(painter_, QRectF(at.x() - 5, at.y() - 5, 10, 10), *shown_.verdict, colours_);
    }
  }

  void key() {
    double x = scale_.trims.left();
    const double top = scale_.trims.top() - 2.0 * metrics_.height() - 6;
    const double side = metrics_.ascent();
    const auto say = [&](const QString& text) {
      painter_.setPen(colours_.text);
      painter_.drawText(QPointF(x, top + metrics_.ascent()), text);
      x += metrics_.horizontalAdvance(text) + 2.0 * space::step;
    };
    for (const Verdict verdict : {Verdict::holds, Verdict::tight, Verdict::unproven}) {
      painter_.setPen(QPen(colourOf(verdict, colours_), 1));
      painter_.setBrush(fillFor(verdict, colours_));
      painter_.drawRect(QRectF(x, top + 1, 1.6 * side, side - 1));
      x += 1.6 * side + space::small;
      say(verdictWord(verdict));
    }
    painter_.setPen(QPen(colours_.frame, 1));
    painter_.setBrush(colours_.sheet);
    painter_.drawRect(QRectF(x, top + 1, 1.6 * side, side - 1));
    x += 1.6 * side + space::small;
    say(Words::tr("fails"));
    QStringList says;
    for (qsizetype i = 0; i < letters_.size(); ++i) {
      says << QChar(QLatin1Char(static_cast<char>('A' + i))) + QStringLiteral(" ") + letters_[i];
    }
    if (!says.isEmpty()) {
      const QString text =
          metrics_.elidedText(says.join(QStringLiteral(" · ")), Qt::ElideRight, scale_.trims.width());
      painter_.drawText(QPointF(scale_.trims.left(), top + metrics_.height() + metrics_.ascent() + 2), text);
    }
  }

  QPainter& painter_;
  const MapShown& shown_;
  const MapScale& scale_;
  const Colours& colours_;
  QFont note_;
  QFontMetricsF metrics_;
  const Figures& figures_;
  QStringList letters_; ///< rules that had no room for their name
  std::vector<QRectF> taken_;
};

} // namespace

MapScale scaleOf(const MapShown& shown, const QRectF& box, const QFont& font) {
  const QFontMetricsF metrics(fontFor(TextSize::note, font));
  const double left = metrics.horizontalAdvance(QStringLiteral("mark 0000")) + space::step;
  MapScale scale;
  scale.tiltStep = shown.map.tiltStepDeg;
  const QRectF inside =
      box.adjusted(left, 2.0 * metrics.height() + 8, -2.0 * space::step, -metrics.height() - 4);
  std::size_t lines = 0;
  std::vector<double> tilts{shown.at.tiltDeg};
  std::vector<double> trims{shown.at.trimM};
  for (const auto& line : shown.map.marks) {
    lines += !line.at.empty() || line.mark == shown.map.mark ? 1 : 0;
    for (const auto& at : line.at) {
      tilts.push_back(at.tiltDeg);
    }
  }
  for (const auto& column : shown.map.columns) {
    for (const auto& stretch : column.stretches) {
      tilts.push_back(column.tiltDeg);
      trims.insert(trims.end(), {stretch.lowM, stretch.highM});
    }
  }
  if (tilts.size() == 1) { // nothing stands: all that was looked at
    for (const auto& column : shown.map.columns) {
      tilts.push_back(column.tiltDeg);
    }
  }
  const double marksHeight = std::min(marksShare * inside.height(), 16.0 * static_cast<double>(lines));
  const double gap = lines > 0 ? space::step : 0.0;
  scale.trims = inside.adjusted(0, 0, 0, -marksHeight - gap);
  if (lines > 0) {
    scale.marks = QRectF(inside.left(), inside.bottom() - marksHeight, inside.width(), marksHeight);
  }
  const auto [firstTilt, lastTilt] = std::ranges::minmax(tilts);
  scale.firstTilt = firstTilt - 2.0 * scale.tiltStep;
  scale.lastTilt = lastTilt + 2.0 * scale.tiltStep;
  const auto [lowTrim, highTrim] = std::ranges::minmax(trims);
  const double span = std::max(0.2, highTrim - lowTrim);
  // Room for the names along the edges.
  const double room = std::max(0.08, 1.6 * metrics.height() / std::max(40.0, scale.trims.height())) * span;
  scale.lowTrim = lowTrim - 1.3 * room;
  scale.highTrim = highTrim + 1.3 * room;
  return scale;
}

void paintSettingMap(QPainter& painter, const MapShown& shown, const MapScale& scale, const Colours& colours,
                     const QFont& font, const Figures& figures) {
  if (scale.trims.width() < 20 || scale.trims.height() < 20) {
    return;
  }
  painter.save();
  Painting(painter, shown, scale, colours, font, figures).paint();
  painter.restore();
}

} // namespace hangbook::desk
