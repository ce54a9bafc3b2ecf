// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "build/job.h"
#include "support/random_hang.h"

namespace hangbook::testing {

/// Builds as crews have them, from a seed: one to three hangs of two to nine cabinets of up to three types,
/// on every kind of bar, carts of every size, in a room high enough for all.
class RandomJobs {
public:
  explicit RandomJobs(std::uint64_t seed) : random_(seed) {}

  build::Job next() {
    build::Job job;
    job.show = QStringLiteral("some show");
    job.cartClearance = random_.between(0.03, 0.15);
    job.swingClearance = random_.between(0.3, 0.6);
    const hang::Hang model = random_.next(random_.oneOf(3), Held::nothing);
    const bool downfill = random_.oneOf(2) == 0;
    std::vector<hang::Element> types;
    for (int i = 0; i < 3; ++i) {
      types.push_back(random_.next(0, Held::nothing).stack.front());
      addCart(job, QStringLiteral("type %1").arg(i));
    }
    hang::Element under = random_.next(0, Held::nothing).stack.front();
    under.joint = hang::Pivot{{-30.0, 0.0}};
    addCart(job, QStringLiteral("type 3"));
    const int hangs = 1 + random_.oneOf(3);
    std::vector<int> order(static_cast<std::size_t>(2 + random_.oneOf(7)));
    std::vector<double> angles(order.size());
    for (std::size_t i = 0; i < order.size(); ++i) {
      order[i] = i > 0 && random_.oneOf(2) == 0 ? order[i - 1] : random_.oneOf(3);
      angles[i] = random_.oneOf(2) == 0 ? 0.0 : random_.between(-4.0, 1.0);
    }
    for (int h = 0; h < hangs; ++h) {
      build::Hanging made;
      made.hang = QStringLiteral("hang %1").arg(h + 1);
      made.rig.bar = model.bar;
      made.rig.set = model.set;
      made.barOutline = {{0.4, 0.0}, {0.4, -0.2}, {-0.7, -0.2}, {-0.7, 0.05}};
      const std::size_t count =
          h == 0 ? order.size() : order.size() - static_cast<std::size_t>(random_.oneOf(2));
      for (std::size_t i = 0; i < count; ++i) {
        add(made, types[static_cast<std::size_t>(order[i])], order[i]);
        hang::Joint& joint = made.rig.stack.back().joint;
        if (auto* pinned = std::get_if<hang::Pinned>(&joint)) {
          pinned->angleDeg = angles[i];
        } else {
          std::get<hang::Seated>(joint).angleDeg = angles[i];
        }
      }
      if (downfill) {
        add(made, under, 3);
        made.rig.chain = hang::Chain{0.0225, 0.08, 20 + random_.oneOf(60), static_cast<int>(count) + 1};
      }
      made.hookMet = random_.between(0.3, 0.8);
      made.hooksAtTrim = random_.between(13.0, 16.0);
      made.lowestAtTrim = made.hooksAtTrim - 6.0;
      made.highestHook = 20.0;
      made.ceiling = 21.0;
      made.hoistDifference = 2.0;
      made.points = QStringList{QStringLiteral("P1")};
      made.secondary = QStringList{QStringLiteral("steel")};
      job.hangs.push_back(made);
    }
    return job;
  }

private:
  void addCart(build::Job& job, const QString& cabinet) {
    const int most = 1 + random_.oneOf(4);
    const int high = 1 + random_.oneOf(most);
    job.carts.push_back({cabinet + QStringLiteral(" cart"), cabinet, most, high, random_.between(0.1, 0.3),
                         build::notStated});
  }
  void add(build::Hanging& made, const hang::Element& element, int type) {
    made.rig.stack.push_back(element);
    made.types << QStringLiteral("type %1").arg(type);
    made.holes << QStringLiteral("as given");
    made.engagement.push_back(0.01 * (1 + type));
  }

  RandomHangs random_;
};

} // namespace hangbook::testing
