// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "store/words.h"

/// The columns of makers' data, each named once for writing and reading.
namespace hangbook::store {

inline constexpr auto cabinetColumns = [](auto& io, auto& type) {
  recordColumns(io, type);
  io("name", type.name);
  io("maker", type.maker);
  io("family", type.family);
  io("mass_kg", type.mass);
  io.position("cg", type.centreOfGravity);
  io.position("next_pin", type.nextPin);
  io.list("outline_m", type.outline);
  io("width_m", type.width);
  io.position("chain_eye", type.chainEye);
  io.position("rear_contact", type.rearContact);
  io.pins("pins_m", type.pins);
  io("covers_audience", type.coversAudience);
  io("downfill", type.downfill);
  io("cover_lowest_deg", type.coverLowest);
  io("cover_highest_deg", type.coverHighest);
  io("cover_across_deg", type.coverAcross);
  io("throw_m", type.throwDistance);
  io("level_at_1_m_db", type.levelAtOneMetre);
  io("face_area_m2", type.faceArea);
  io("force_coefficient", type.forceCoefficient);
  io("engagement_m", type.engagement);
  io("mass_tolerance_kg", type.tolerances.mass);
  io("centre_tolerance_m", type.tolerances.centre);
  io("place_tolerance_m", type.tolerances.place);
};

inline constexpr auto barColumns = [](auto& io, auto& type) {
  recordColumns(io, type);
  io("name", type.name);
  io("maker", type.maker);
  io("head_mass_kg", type.headMass);
  io.position("head_cg", type.headCentreOfGravity);
  io.position("tilt_axis", type.tiltAxis);
  io.travel("tilt_travel", type.tiltTravel);
  io.travel("pan_travel", type.panTravel);
  io("swing_limit_deg", type.swingLimit);
  io("tilt_step_deg", type.tiltStep);
  io("frame_mass_kg", type.frameMass);
  io.position("frame_cg", type.frameCentreOfGravity);
  io.position("stack_pin", type.stackPin);
  io.position("chain_anchor", type.chainAnchor);
  io.position("datum", type.datum);
  io.list("outline_m", type.outline);
  io("width_m", type.width);
  io("hoist_offset_limit_m", type.hoistOffsetLimit);
  io("mass_tolerance_kg", type.tolerances.mass);
  io("centre_tolerance_m", type.tolerances.centre);
  io("place_tolerance_m", type.tolerances.place);
};

inline constexpr auto arrangementColumns = [](auto& io, auto& arrangement) {
  io.word("picks", arrangement.picks, picksWords);
  io("spacing_m", arrangement.spacing);
  io.position("front", arrangement.front);
  io.position("rear", arrangement.rear);
  io.position("only", arrangement.only);
  io("limit_n", arrangement.limit);
  io("limit_includes_factors", arrangement.limitIncludesFactors);
  io("most_cabinets", arrangement.mostCabinets);
};

inline constexpr auto hoistColumns = [](auto& io, auto& type) {
  recordColumns(io, type);
  io("name", type.name);
  io("maker", type.maker);
  io("limit_n", type.limit);
  io("body_mass_kg", type.bodyMass);
  io("body_climbs", type.bodyClimbs);
  io("chain_kg_per_m", type.chainMass);
  io("chain_bag_kg", type.chainBagMass);
  io("chain_length_m", type.chainLength);
  io("closed_length_m", type.closedLength);
  io("speed_m_s", type.speed);
  io.word("hoisting_class", type.hoistingClass, hoistingClassWords);
  io("holds_without_secondary", type.holdsWithoutSecondary);
};

inline constexpr auto chainColumns = [](auto& io, auto& type) {
  recordColumns(io, type);
  io("name", type.name);
  io("maker", type.maker);
  io("pitch_m", type.pitch);
  io("fixed_length_m", type.fixedLength);
  io("links", type.links);
  io("limit_n", type.limit);
  io("limit_includes_factors", type.limitIncludesFactors);
  io("mass_kg_per_m", type.mass);
  io("discard_stretch_percent", type.discardStretchPercent);
  io("pitch_tolerance_m", type.pitchTolerance);
};

inline constexpr auto hardwareColumns = [](auto& io, auto& type) {
  recordColumns(io, type);
  io("name", type.name);
  io("maker", type.maker);
  io.word("kind", type.kind, hardwareWords);
  io("limit_n", type.limit);
  io("mass_kg", type.mass);
  io("length_m", type.length);
  io("stiffness_n", type.stiffness);
  io("design_factor", type.designFactor);
};

inline constexpr auto cartColumns = [](auto& io, auto& type) {
  recordColumns(io, type);
  io("name", type.name);
  io("maker", type.maker);
  io.reference("carries", type.carries);
  io("most", type.most);
  io("mass_kg", type.mass);
  io("length_m", type.length);
  io("width_m", type.width);
  io("height_m", type.height);
  io("deck_m", type.deck);
  io("high", type.high);
};

inline constexpr auto stackingColumns = [](auto& io, auto& table) {
  recordColumns(io, table);
  io("name", table.name);
  io("maker", table.maker);
  io.reference("chain", table.chain);
};

inline constexpr auto joinColumns = [](auto& io, auto& join) {
  io.reference("above", join.above);
  io("below", join.below);
  io.word("kind", join.kind, jointWords);
  io.list("angles_deg", join.angles);
  io.travel("travel", join.travel);
  io("pin_limit_n", join.pinLimit);
  io("contact_limit_n", join.contactLimit);
  io("side_share", join.sideShare);
  io("limit_includes_factors", join.limitIncludesFactors);
  io("opens_to_deg", join.opensTo);
  io("stop_limit_n", join.stopLimit);
};

inline constexpr auto countColumns = [](auto& io, auto& count) {
  io("type", count.type);
  io("least", count.least);
  io("most", count.most);
};

/// A list of names that each name another record.
inline constexpr auto nameColumns = [](auto& io, auto& name) { io("name", name); };

} // namespace hangbook::store
