// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include <QJsonValue>
#include <QString>
#include <QStringList>

/// Figures and names as the terminal shows them, and as they go into JSON.
namespace hangbook::terminal {

/// `digits` places after the mark, never "-0"; a dash where the figure is not known.
QString shown(std::optional<double> figure, int digits);

/// With its sign, for angles: "+2.5", "-4.0", "0.0".
QString shownAngle(std::optional<double> figure, int digits = 1);

/// The figure or null: a figure that is not known is never 0.
QJsonValue jsonFigure(std::optional<double> figure);

/// "2 Marram bass, Marram upper, Marram bass", from the bar down.
QString shownStack(const QStringList& stack);

} // namespace hangbook::terminal
