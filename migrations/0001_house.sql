-- SPDX-License-Identifier: GPL-3.0-or-later
-- All that the first version keeps. Units stand in the names of columns (kg, N, m, m/s, degrees); what is not
-- known is NULL. Plans (makers' data, venues, fleet records, shows) carry a revision; facts are appended only.
-- Lists of places and names that are read as a whole stand as JSON. Things name each other by their names where
-- these are unique, and follow a renaming.

CREATE TABLE person (
  id @uuid NOT NULL PRIMARY KEY,
  revision @int NOT NULL,
  name @text NOT NULL UNIQUE CONSTRAINT "a person needs a name" CHECK (name <> ''),
  role @text NOT NULL
) @strict;

-- Who is at the desk, on each machine.
CREATE TABLE at_desk (
  device @text NOT NULL PRIMARY KEY,
  person_id @uuid NOT NULL REFERENCES person (id)
) @strict;

CREATE TABLE cabinet_type (
  id @uuid NOT NULL PRIMARY KEY,
  revision @int NOT NULL,
  source_text @text NOT NULL,
  source_date @date,
  typed @json NOT NULL,
  name @text NOT NULL UNIQUE CONSTRAINT "a type needs a name" CHECK (name <> ''),
  maker @text NOT NULL,
  family @text NOT NULL,
  mass_kg @real CONSTRAINT "a mass must be above 0" CHECK (mass_kg > 0),
  cg_x_m @real,
  cg_z_m @real,
  next_pin_x_m @real,
  next_pin_z_m @real,
  outline_m @json NOT NULL,
  width_m @real CONSTRAINT "a width must be above 0" CHECK (width_m > 0),
  chain_eye_x_m @real,
  chain_eye_z_m @real,
  rear_contact_x_m @real,
  rear_contact_z_m @real,
  pins_m @json,
  covers_audience @bool NOT NULL,
  downfill @bool NOT NULL,
  cover_lowest_deg @real,
  cover_highest_deg @real,
  throw_m @real CONSTRAINT "a throw must be above 0" CHECK (throw_m > 0),
  level_at_1_m_db @real,
  face_area_m2 @real CONSTRAINT "an area must be above 0" CHECK (face_area_m2 > 0),
  force_coefficient @real CONSTRAINT "a force coefficient must be above 0" CHECK (force_coefficient > 0),
  CONSTRAINT "a place needs both figures" CHECK ((cg_x_m IS NULL) = (cg_z_m IS NULL)
    AND (next_pin_x_m IS NULL) = (next_pin_z_m IS NULL) AND (chain_eye_x_m IS NULL) = (chain_eye_z_m IS NULL)
    AND (rear_contact_x_m IS NULL) = (rear_contact_z_m IS NULL)),
  CONSTRAINT "the upper edge of cover must lie above the lower one" CHECK (cover_lowest_deg < cover_highest_deg)
) @strict;

CREATE TABLE bar_type (
  id @uuid NOT NULL PRIMARY KEY,
  revision @int NOT NULL,
  source_text @text NOT NULL,
  source_date @date,
  typed @json NOT NULL,
  name @text NOT NULL UNIQUE CONSTRAINT "a type needs a name" CHECK (name <> ''),
  maker @text NOT NULL,
  head_mass_kg @real CONSTRAINT "a mass must be above 0" CHECK (head_mass_kg > 0),
  head_cg_x_m @real,
  head_cg_z_m @real,
  tilt_axis_x_m @real,
  tilt_axis_z_m @real,
  tilt_travel_from_deg @real,
  tilt_travel_to_deg @real,
  pan_travel_from_deg @real,
  pan_travel_to_deg @real,
  swing_limit_deg @real CONSTRAINT "a swing must not be below 0" CHECK (swing_limit_deg >= 0),
  tilt_step_deg @real CONSTRAINT "a step must be above 0" CHECK (tilt_step_deg > 0),
  frame_mass_kg @real CONSTRAINT "a frame's mass must be above 0" CHECK (frame_mass_kg > 0),
  frame_cg_x_m @real,
  frame_cg_z_m @real,
  stack_pin_x_m @real,
  stack_pin_z_m @real,
  chain_anchor_x_m @real,
  chain_anchor_z_m @real,
  datum_x_m @real,
  datum_z_m @real,
  outline_m @json NOT NULL,
  width_m @real CONSTRAINT "a width must be above 0" CHECK (width_m > 0),
  hoist_offset_limit_m @real CONSTRAINT "a limit must not be below 0" CHECK (hoist_offset_limit_m >= 0),
  CONSTRAINT "a place needs both figures" CHECK ((head_cg_x_m IS NULL) = (head_cg_z_m IS NULL)
    AND (tilt_axis_x_m IS NULL) = (tilt_axis_z_m IS NULL) AND (frame_cg_x_m IS NULL) = (frame_cg_z_m IS NULL)
    AND (stack_pin_x_m IS NULL) = (stack_pin_z_m IS NULL)
    AND (chain_anchor_x_m IS NULL) = (chain_anchor_z_m IS NULL)
    AND (datum_x_m IS NULL) = (datum_z_m IS NULL)),
  CONSTRAINT "a travel needs both ends, in order" CHECK ((tilt_travel_from_deg IS NULL) = (tilt_travel_to_deg IS NULL)
    AND (pan_travel_from_deg IS NULL) = (pan_travel_to_deg IS NULL)
    AND (tilt_travel_from_deg IS NULL OR tilt_travel_from_deg <= tilt_travel_to_deg)
    AND (pan_travel_from_deg IS NULL OR pan_travel_from_deg <= pan_travel_to_deg))
) @strict;

CREATE TABLE bar_type_arrangement (
  owner_id @uuid NOT NULL REFERENCES bar_type (id) ON DELETE CASCADE,
  place @int NOT NULL,
  picks @text NOT NULL CHECK (picks IN ('side-pair', 'fore-aft-pair', 'single')),
  spacing_m @real CONSTRAINT "a spacing must be above 0" CHECK (spacing_m > 0),
  front_x_m @real,
  front_z_m @real,
  rear_x_m @real,
  rear_z_m @real,
  only_x_m @real,
  only_z_m @real,
  limit_n @real CONSTRAINT "a limit must be above 0" CHECK (limit_n > 0),
  limit_includes_factors @bool NOT NULL,
  most_cabinets @int CONSTRAINT "a most must not be below 0" CHECK (most_cabinets >= 0),
  PRIMARY KEY (owner_id, place),
  CONSTRAINT "a place needs both figures" CHECK ((front_x_m IS NULL) = (front_z_m IS NULL)
    AND (rear_x_m IS NULL) = (rear_z_m IS NULL) AND (only_x_m IS NULL) = (only_z_m IS NULL))
) @strict;

CREATE TABLE hoist_type (
  id @uuid NOT NULL PRIMARY KEY,
  revision @int NOT NULL,
  source_text @text NOT NULL,
  source_date @date,
  typed @json NOT NULL,
  name @text NOT NULL UNIQUE CONSTRAINT "a type needs a name" CHECK (name <> ''),
  maker @text NOT NULL,
  limit_n @real CONSTRAINT "a limit must be above 0" CHECK (limit_n > 0),
  body_mass_kg @real CONSTRAINT "a mass must be above 0" CHECK (body_mass_kg > 0),
  body_climbs @bool,
  chain_kg_per_m @real CONSTRAINT "a chain's mass must be above 0" CHECK (chain_kg_per_m > 0),
  chain_bag_kg @real CONSTRAINT "a bag's mass must not be below 0" CHECK (chain_bag_kg >= 0),
  chain_length_m @real CONSTRAINT "a chain's length must be above 0" CHECK (chain_length_m > 0),
  closed_length_m @real CONSTRAINT "a length must be above 0" CHECK (closed_length_m > 0),
  speed_m_s @real CONSTRAINT "a speed must be above 0" CHECK (speed_m_s > 0),
  hoisting_class @text CHECK (hoisting_class IN ('hc1', 'hc2', 'hc3', 'hc4')),
  holds_without_secondary @bool
) @strict;

CREATE TABLE chain_type (
  id @uuid NOT NULL PRIMARY KEY,
  revision @int NOT NULL,
  source_text @text NOT NULL,
  source_date @date,
  typed @json NOT NULL,
  name @text NOT NULL UNIQUE CONSTRAINT "a type needs a name" CHECK (name <> ''),
  maker @text NOT NULL,
  pitch_m @real CONSTRAINT "a pitch must be above 0" CHECK (pitch_m > 0),
  fixed_length_m @real CONSTRAINT "a length must not be below 0" CHECK (fixed_length_m >= 0),
  links @int CONSTRAINT "a chain needs a link" CHECK (links > 0),
  limit_n @real CONSTRAINT "a limit must be above 0" CHECK (limit_n > 0),
  limit_includes_factors @bool NOT NULL,
  mass_kg_per_m @real CONSTRAINT "a chain's mass must be above 0" CHECK (mass_kg_per_m > 0),
  discard_stretch_percent @real CONSTRAINT "a stretch must be above 0" CHECK (discard_stretch_percent > 0)
) @strict;

CREATE TABLE hardware_type (
  id @uuid NOT NULL PRIMARY KEY,
  revision @int NOT NULL,
  source_text @text NOT NULL,
  source_date @date,
  typed @json NOT NULL,
  name @text NOT NULL UNIQUE CONSTRAINT "a type needs a name" CHECK (name <> ''),
  maker @text NOT NULL,
  kind @text NOT NULL CHECK (kind IN ('shackle', 'sling', 'clip', 'pin', 'secondary-steel')),
  limit_n @real CONSTRAINT "a limit must be above 0" CHECK (limit_n > 0),
  mass_kg @real CONSTRAINT "a mass must be above 0" CHECK (mass_kg > 0),
  length_m @real CONSTRAINT "a length must not be below 0" CHECK (length_m >= 0)
) @strict;

CREATE TABLE cart_type (
  id @uuid NOT NULL PRIMARY KEY,
  revision @int NOT NULL,
  source_text @text NOT NULL,
  source_date @date,
  typed @json NOT NULL,
  name @text NOT NULL UNIQUE CONSTRAINT "a type needs a name" CHECK (name <> ''),
  maker @text NOT NULL,
  carries @text REFERENCES cabinet_type (name) ON UPDATE CASCADE,
  most @int CONSTRAINT "a cart carries at least one" CHECK (most > 0),
  mass_kg @real CONSTRAINT "a mass must be above 0" CHECK (mass_kg > 0),
  length_m @real CONSTRAINT "a length must be above 0" CHECK (length_m > 0),
  width_m @real CONSTRAINT "a width must be above 0" CHECK (width_m > 0),
  height_m @real CONSTRAINT "a height must be above 0" CHECK (height_m > 0)
) @strict;

CREATE TABLE stacking_table (
  id @uuid NOT NULL PRIMARY KEY,
  revision @int NOT NULL,
  source_text @text NOT NULL,
  source_date @date,
  typed @json NOT NULL,
  name @text NOT NULL UNIQUE CONSTRAINT "a stacking table needs a name" CHECK (name <> ''),
  maker @text NOT NULL,
  chain @text REFERENCES chain_type (name) ON UPDATE CASCADE
) @strict;

-- The lists of names of a stacking table: the bars that it is for, what may be lowest, what a chain may hold.
CREATE TABLE stacking_bar (
  owner_id @uuid NOT NULL REFERENCES stacking_table (id) ON DELETE CASCADE,
  place @int NOT NULL,
  name @text NOT NULL REFERENCES bar_type (name) ON UPDATE CASCADE,
  PRIMARY KEY (owner_id, place)
) @strict;

CREATE TABLE stacking_lowest (
  owner_id @uuid NOT NULL REFERENCES stacking_table (id) ON DELETE CASCADE,
  place @int NOT NULL,
  name @text NOT NULL REFERENCES cabinet_type (name) ON UPDATE CASCADE,
  PRIMARY KEY (owner_id, place)
) @strict;

CREATE TABLE stacking_held (
  owner_id @uuid NOT NULL REFERENCES stacking_table (id) ON DELETE CASCADE,
  place @int NOT NULL,
  name @text NOT NULL REFERENCES cabinet_type (name) ON UPDATE CASCADE,
  PRIMARY KEY (owner_id, place)
) @strict;

CREATE TABLE stacking_join (
  owner_id @uuid NOT NULL REFERENCES stacking_table (id) ON DELETE CASCADE,
  place @int NOT NULL,
  above @text REFERENCES cabinet_type (name) ON UPDATE CASCADE, -- NULL = straight under the bar
  below @text NOT NULL REFERENCES cabinet_type (name) ON UPDATE CASCADE,
  kind @text NOT NULL CHECK (kind IN ('seated', 'pinned', 'pivot')),
  angles_deg @json NOT NULL,
  travel_from_deg @real,
  travel_to_deg @real,
  pin_limit_n @real CONSTRAINT "a limit must be above 0" CHECK (pin_limit_n > 0),
  contact_limit_n @real CONSTRAINT "a contact's limit must be above 0" CHECK (contact_limit_n > 0),
  side_share @real CONSTRAINT "a side's share lies between 0.5 and 1" CHECK (side_share BETWEEN 0.5 AND 1),
  limit_includes_factors @bool NOT NULL,
  opens_to_deg @real CONSTRAINT "an opening must not be below 0" CHECK (opens_to_deg >= 0),
  PRIMARY KEY (owner_id, place),
  CONSTRAINT "a travel needs both ends, in order" CHECK ((travel_from_deg IS NULL) = (travel_to_deg IS NULL)
    AND (travel_from_deg IS NULL OR travel_from_deg <= travel_to_deg))
) @strict;

CREATE TABLE stacking_count (
  owner_id @uuid NOT NULL REFERENCES stacking_table (id) ON DELETE CASCADE,
  place @int NOT NULL,
  type @text NOT NULL REFERENCES cabinet_type (name) ON UPDATE CASCADE,
  least @int NOT NULL,
  most @int NOT NULL,
  PRIMARY KEY (owner_id, place),
  UNIQUE (owner_id, type),
  CONSTRAINT "a count's least must lie between 0 and its most" CHECK (least >= 0 AND least <= most)
) @strict;

CREATE TABLE venue (
  id @uuid NOT NULL PRIMARY KEY,
  revision @int NOT NULL,
  source_text @text NOT NULL,
  source_date @date,
  typed @json NOT NULL,
  name @text NOT NULL UNIQUE CONSTRAINT "a venue needs a name" CHECK (name <> ''),
  town @text NOT NULL,
  time_zone @text NOT NULL,
  latitude @real CONSTRAINT "a latitude lies between -90 and 90" CHECK (latitude BETWEEN -90 AND 90),
  longitude @real CONSTRAINT "a longitude lies between -180 and 180" CHECK (longitude BETWEEN -180 AND 180),
  datum @text NOT NULL,
  outdoors @bool,
  low_steel_m @real,
  least_trim_m @real,
  most_trim_m @real,
  access @text NOT NULL
) @strict;

CREATE TABLE venue_zone (
  owner_id @uuid NOT NULL REFERENCES venue (id) ON DELETE CASCADE,
  place @int NOT NULL,
  name @text NOT NULL CONSTRAINT "a zone needs a name" CHECK (name <> ''),
  capacity_n @real CONSTRAINT "a capacity must not be below 0" CHECK (capacity_n >= 0),
  basis @text NOT NULL CHECK (basis IN ('unknown', 'at-rest', 'dynamic')),
  others_load_n @real CONSTRAINT "others' load must not be below 0" CHECK (others_load_n >= 0),
  others_by @text NOT NULL,
  others_on @date,
  PRIMARY KEY (owner_id, place),
  UNIQUE (owner_id, name)
) @strict;

CREATE TABLE venue_point (
  owner_id @uuid NOT NULL REFERENCES venue (id) ON DELETE CASCADE,
  place @int NOT NULL,
  name @text NOT NULL CONSTRAINT "a point needs a name" CHECK (name <> ''),
  x_m @real NOT NULL,
  y_m @real NOT NULL,
  z_m @real NOT NULL,
  capacity_n @real CONSTRAINT "a capacity must not be below 0" CHECK (capacity_n >= 0),
  basis @text NOT NULL CHECK (basis IN ('unknown', 'at-rest', 'dynamic')),
  zone @text,
  source_text @text NOT NULL,
  source_date @date,
  PRIMARY KEY (owner_id, place),
  UNIQUE (owner_id, name),
  FOREIGN KEY (owner_id, zone) REFERENCES venue_zone (owner_id, name)
) @strict;

CREATE TABLE venue_obstruction (
  owner_id @uuid NOT NULL REFERENCES venue (id) ON DELETE CASCADE,
  place @int NOT NULL,
  name @text NOT NULL,
  x_from_m @real NOT NULL,
  x_to_m @real NOT NULL,
  y_from_m @real NOT NULL,
  y_to_m @real NOT NULL,
  underside_m @real NOT NULL,
  PRIMARY KEY (owner_id, place),
  CONSTRAINT "an obstruction's ends must stand in order" CHECK (x_from_m <= x_to_m AND y_from_m <= y_to_m)
) @strict;

CREATE TABLE venue_section (
  owner_id @uuid NOT NULL REFERENCES venue (id) ON DELETE CASCADE,
  place @int NOT NULL,
  name @text NOT NULL CONSTRAINT "a section needs a name" CHECK (name <> ''),
  profile_m @json NOT NULL,
  ear_height_m @real CONSTRAINT "ears are above the floor" CHECK (ear_height_m > 0),
  y_from_m @real,
  y_to_m @real,
  PRIMARY KEY (owner_id, place),
  UNIQUE (owner_id, name)
) @strict;

CREATE TABLE venue_house (
  owner_id @uuid NOT NULL REFERENCES venue (id) ON DELETE CASCADE,
  place @int NOT NULL,
  figure @text NOT NULL,
  value @real NOT NULL,
  unit @text NOT NULL,
  source @text NOT NULL,
  signed_by @text NOT NULL,
  signed_on @date,
  PRIMARY KEY (owner_id, place)
) @strict;

CREATE TABLE unit (
  id @uuid NOT NULL PRIMARY KEY,
  revision @int NOT NULL,
  source_text @text NOT NULL,
  source_date @date,
  typed @json NOT NULL,
  serial @text NOT NULL UNIQUE CONSTRAINT "a unit needs a serial" CHECK (serial <> ''),
  kind @text NOT NULL CHECK (kind IN ('cabinet', 'bar', 'hoist', 'chain', 'cart', 'hardware')),
  type @text NOT NULL,
  owner @text NOT NULL,
  hired_until @date,
  weighed_kg @real CONSTRAINT "a mass must be above 0" CHECK (weighed_kg > 0),
  -- Where it is now follows from the movements; these are written with them.
  at_place @text NOT NULL,
  state @text NOT NULL CHECK (state IN ('ready', 'away', 'quarantined', 'in-repair', 'written-off')),
  cart @text,
  cart_position @int
) @strict;

CREATE TABLE examination_rule (
  id @uuid NOT NULL PRIMARY KEY,
  revision @int NOT NULL,
  source_text @text NOT NULL,
  source_date @date,
  typed @json NOT NULL,
  name @text NOT NULL UNIQUE CONSTRAINT "a rule needs a name" CHECK (name <> ''),
  kind @text NOT NULL CHECK (kind IN ('cabinet', 'bar', 'hoist', 'chain', 'cart', 'hardware')),
  type @text NOT NULL,
  months @int NOT NULL CONSTRAINT "months must be above 0" CHECK (months > 0)
) @strict;

CREATE TABLE examination (
  id @uuid NOT NULL PRIMARY KEY,
  unit_id @uuid NOT NULL REFERENCES unit (id),
  rule_id @uuid NOT NULL REFERENCES examination_rule (id),
  examined_on @date NOT NULL,
  result @text NOT NULL CHECK (result IN ('pass', 'pass-with-remark', 'fail')),
  examiner @text NOT NULL,
  certificate @text NOT NULL,
  remark @text NOT NULL,
  corrects @uuid REFERENCES examination (id),
  by_name @text NOT NULL CONSTRAINT "a fact needs somebody who recorded it" CHECK (by_name <> ''),
  device @text NOT NULL,
  recorded_at @instant NOT NULL
) @strict;
CREATE INDEX examination_unit ON examination (unit_id, rule_id, examined_on);

CREATE TABLE movement (
  id @uuid NOT NULL PRIMARY KEY,
  unit_id @uuid NOT NULL REFERENCES unit (id),
  number @int NOT NULL, -- counts within its unit, in the order of recording
  to_place @text NOT NULL,
  to_state @text NOT NULL CHECK (to_state IN ('ready', 'away', 'quarantined', 'in-repair', 'written-off')),
  to_cart @text NOT NULL,
  cart_position @int,
  reason @text NOT NULL,
  corrects @uuid REFERENCES movement (id),
  by_name @text NOT NULL CONSTRAINT "a fact needs somebody who recorded it" CHECK (by_name <> ''),
  device @text NOT NULL,
  happened_at @instant NOT NULL,
  recorded_at @instant NOT NULL,
  UNIQUE (unit_id, number)
) @strict;

CREATE TABLE tour (
  id @uuid NOT NULL PRIMARY KEY,
  revision @int NOT NULL,
  source_text @text NOT NULL,
  source_date @date,
  typed @json NOT NULL,
  name @text NOT NULL UNIQUE CONSTRAINT "a tour needs a name" CHECK (name <> ''),
  act @text NOT NULL
) @strict;

CREATE TABLE tour_house (
  owner_id @uuid NOT NULL REFERENCES tour (id) ON DELETE CASCADE,
  place @int NOT NULL,
  figure @text NOT NULL,
  value @real NOT NULL,
  unit @text NOT NULL,
  source @text NOT NULL,
  signed_by @text NOT NULL,
  signed_on @date,
  PRIMARY KEY (owner_id, place)
) @strict;

CREATE TABLE show (
  id @uuid NOT NULL PRIMARY KEY,
  revision @int NOT NULL,
  source_text @text NOT NULL,
  source_date @date,
  typed @json NOT NULL,
  tour @text NOT NULL REFERENCES tour (name) ON UPDATE CASCADE,
  name @text NOT NULL CONSTRAINT "a show needs a name" CHECK (name <> ''),
  venue @text NOT NULL REFERENCES venue (name) ON UPDATE CASCADE,
  from_day @date,
  to_day @date,
  load_in @instant,
  load_out @instant,
  away_from @date,
  away_to @date,
  people_beneath @bool,
  temperature_c @real,
  humidity_percent @real CONSTRAINT "humidity lies between 0 and 100" CHECK (humidity_percent BETWEEN 0 AND 100),
  wind_m_s @real CONSTRAINT "wind must not be below 0" CHECK (wind_m_s >= 0),
  wind_basis @text NOT NULL CHECK (wind_basis IN ('unknown', 'gust', 'mean')),
  UNIQUE (tour, name),
  CONSTRAINT "days must stand in order" CHECK (from_day <= to_day),
  CONSTRAINT "the days away must stand in order" CHECK (away_from <= away_to)
) @strict;

CREATE TABLE show_house (
  owner_id @uuid NOT NULL REFERENCES show (id) ON DELETE CASCADE,
  place @int NOT NULL,
  figure @text NOT NULL,
  value @real NOT NULL,
  unit @text NOT NULL,
  source @text NOT NULL,
  signed_by @text NOT NULL,
  signed_on @date,
  PRIMARY KEY (owner_id, place)
) @strict;

CREATE TABLE hang (
  owner_id @uuid NOT NULL REFERENCES show (id) ON DELETE CASCADE,
  place @int NOT NULL,
  name @text NOT NULL CONSTRAINT "a hang needs a name" CHECK (name <> ''),
  mirrors @text,
  points @json NOT NULL,
  pan_deg @real NOT NULL,
  sections @json NOT NULL,
  least_trim_m @real,
  cable_mass_kg @real CONSTRAINT "a mass must not be below 0" CHECK (cable_mass_kg >= 0),
  PRIMARY KEY (owner_id, place),
  UNIQUE (owner_id, name)
) @strict;

CREATE TABLE hang_table (
  owner_id @uuid NOT NULL,
  hang @int NOT NULL,
  place @int NOT NULL,
  name @text NOT NULL REFERENCES stacking_table (name) ON UPDATE CASCADE,
  PRIMARY KEY (owner_id, hang, place),
  FOREIGN KEY (owner_id, hang) REFERENCES hang (owner_id, place) ON DELETE CASCADE
) @strict;

CREATE TABLE hang_hardware (
  owner_id @uuid NOT NULL,
  hang @int NOT NULL,
  use @text NOT NULL CHECK (use IN ('rigging', 'secondary')),
  place @int NOT NULL,
  name @text NOT NULL REFERENCES hardware_type (name) ON UPDATE CASCADE,
  PRIMARY KEY (owner_id, hang, use, place),
  FOREIGN KEY (owner_id, hang) REFERENCES hang (owner_id, place) ON DELETE CASCADE
) @strict;

-- All that a chosen option was computed from, and its results, as they were. Named by content.
CREATE TABLE frozen (
  sha256 @text NOT NULL PRIMARY KEY CHECK (length(sha256) = 64),
  program @text NOT NULL,
  content @text NOT NULL
) @strict;

CREATE TABLE choice (
  id @uuid NOT NULL PRIMARY KEY,
  show_id @uuid NOT NULL REFERENCES show (id),
  hang @text NOT NULL,
  revision @int NOT NULL,
  withdrawn @bool NOT NULL,
  option_id @text NOT NULL,
  stack @json NOT NULL,
  stacking @text NOT NULL,
  bar @text NOT NULL,
  picks @text NOT NULL CHECK (picks IN ('side-pair', 'fore-aft-pair', 'single')),
  hoist @text NOT NULL,
  points @json NOT NULL,
  verdict @text NOT NULL CONSTRAINT "an option that fails cannot be chosen"
    CHECK (verdict IN ('holds', 'tight', 'unproven')),
  reason @text NOT NULL,
  point_loads @json NOT NULL,
  setting @json NOT NULL,
  sha256 @text NOT NULL REFERENCES frozen (sha256),
  by_name @text NOT NULL CONSTRAINT "a choice needs somebody who made it" CHECK (by_name <> ''),
  device @text NOT NULL,
  recorded_at @instant NOT NULL,
  UNIQUE (show_id, hang, revision),
  CONSTRAINT "an unproven option needs a reason" CHECK (verdict <> 'unproven' OR reason <> '')
) @strict;

CREATE TABLE mark_used (
  id @uuid NOT NULL PRIMARY KEY,
  stack @json NOT NULL,
  bar @text NOT NULL,
  chain @text NOT NULL,
  chain_serial @text NOT NULL,
  tilt_deg @real,
  mark @int NOT NULL CONSTRAINT "a mark is counted from 1" CHECK (mark >= 1),
  measured_deg @real,
  tour @text NOT NULL,
  show @text NOT NULL,
  hang @text NOT NULL,
  at_place @text NOT NULL,
  weather @text NOT NULL,
  used_on @date NOT NULL,
  corrects @uuid REFERENCES mark_used (id),
  by_name @text NOT NULL CONSTRAINT "a fact needs somebody who recorded it" CHECK (by_name <> ''),
  device @text NOT NULL,
  recorded_at @instant NOT NULL
) @strict;
CREATE INDEX mark_used_show ON mark_used (tour, show, hang);

-- One row for each thing that somebody did.
CREATE TABLE history (
  id @uuid NOT NULL PRIMARY KEY,
  number @int NOT NULL UNIQUE, -- order of writing: two deeds may fall on one tick of the clock
  recorded_at @instant NOT NULL,
  by_name @text NOT NULL,
  device @text NOT NULL,
  program @text NOT NULL,
  action @text NOT NULL,
  subject @text NOT NULL,
  detail @text NOT NULL
) @strict;
