// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <Eigen/Geometry>

#include "hang/hang.h"
#include "hang/statics.h"

namespace hangbook::testing {

/// A hang once more, written apart from the program's own statics: every place by 3-D rotation matrices and
/// translations applied one after the other, as design and contract state their order. Angles in radians.
struct RigidHang {
  static constexpr double degree = 3.14159265358979323846 / 180.0;

  const hang::Hang& hang;
  std::vector<double> joint; ///< angles, one per element
  double actuator = 0.0;
  double swing = 0.0; ///< of the head (side-pair), or of the frame about the pick (the other two)

  /// Turn about y that lifts the nose. (Right-handed about +y would take z towards x.)
  static Eigen::Matrix3d noseUp(double angle) {
    return Eigen::AngleAxisd(-angle, Eigen::Vector3d::UnitY()).toRotationMatrix();
  }
  static Eigen::Vector3d in3d(hang::Vec2 at) { return {at.x, 0.0, at.z}; }

  Eigen::Isometry3d frame() const {
    Eigen::Isometry3d whole = Eigen::Isometry3d::Identity();
    whole.rotate(noseUp(swing));
    if (const auto* pair = std::get_if<hang::SidePair>(&hang.bar.picks)) {
      whole.translate(in3d(pair->tiltAxis));
      whole.rotate(Eigen::AngleAxisd(hang.set.panDeg * degree, Eigen::Vector3d::UnitZ()));
      whole.rotate(noseUp(actuator));
    } else if (const auto* foreAft = std::get_if<hang::ForeAftPair>(&hang.bar.picks)) {
      whole.translate(-in3d(foreAft->frontPick));
    } else {
      whole.translate(-in3d(std::get<hang::SinglePick>(hang.bar.picks).pick));
    }
    return whole;
  }

  /// Element (from 0) against the frame.
  Eigen::Isometry3d element(std::size_t index) const {
    Eigen::Isometry3d whole = Eigen::Isometry3d::Identity();
    whole.translate(in3d(hang.bar.stackPin));
    for (std::size_t i = 0; i <= index; ++i) {
      if (i > 0) {
        whole.translate(in3d(*hang.stack[i - 1].nextPin));
      }
      whole.rotate(noseUp(joint[i]));
    }
    return whole;
  }

  struct Weight {
    double mass;
    Eigen::Vector3d at;
  };

  /// Every mass with its place in the world.
  std::vector<Weight> weights() const {
    const Eigen::Isometry3d bar = frame();
    std::vector<Weight> all{{hang.bar.frameMass, bar * in3d(hang.bar.frameCg)}};
    if (const auto* pair = std::get_if<hang::SidePair>(&hang.bar.picks)) {
      all.push_back({pair->headMass, noseUp(swing) * in3d(pair->headCg)});
    }
    for (std::size_t i = 0; i < hang.stack.size(); ++i) {
      all.push_back({hang.stack[i].mass, bar * (element(i) * in3d(hang.stack[i].cg))});
    }
    return all;
  }

  /// Potential energy over g: Σ m z, kg m.
  double massHeight() const {
    double sum = 0.0;
    for (const Weight& weight : weights()) {
      sum += weight.mass * weight.at.z();
    }
    return sum;
  }

  double anchorToEye() const {
    const auto index = static_cast<std::size_t>(hang.chain->held) - 1;
    return (element(index) * in3d(*hang.stack[index].chainEye) - in3d(*hang.bar.chainAnchor)).norm();
  }
};

/// The same hang at the angles that the program found.
inline RigidHang rigidHang(const hang::Hang& hang, const hang::Statics& statics) {
  RigidHang made{hang, {}};
  for (const hang::JointStatics& joint : statics.joints) {
    made.joint.push_back(joint.angleDeg * RigidHang::degree);
  }
  made.actuator = statics.side ? statics.side->actuatorDeg * RigidHang::degree : 0.0;
  made.swing = (statics.side ? statics.side->headSwingDeg : statics.tiltDeg) * RigidHang::degree;
  return made;
}

} // namespace hangbook::testing
