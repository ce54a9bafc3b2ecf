-- SPDX-License-Identifier: GPL-3.0-or-later
-- Cabling: kinds of connectors, what a cabinet takes, the ends of a loom, and which end goes into which cabinet of a
-- hang. What nobody stated is NULL or empty: no signal, power or colour is ever filled in.

CREATE TABLE connector_type (
  id @uuid NOT NULL PRIMARY KEY,
  revision @int NOT NULL,
  source_text @text NOT NULL,
  source_date @date,
  typed @json NOT NULL,
  name @text NOT NULL UNIQUE CONSTRAINT "a type needs a name" CHECK (name <> ''),
  maker @text NOT NULL,
  carries @text CHECK (carries IN ('loudspeaker', 'signal', 'power', 'signal-and-power'))
) @strict;

CREATE TABLE cabinet_socket (
  id @uuid NOT NULL PRIMARY KEY,
  revision @int NOT NULL,
  source_text @text NOT NULL,
  source_date @date,
  typed @json NOT NULL,
  cabinet @text NOT NULL REFERENCES cabinet_type (name) ON UPDATE CASCADE ON DELETE CASCADE,
  name @text NOT NULL CONSTRAINT "a socket needs a name" CHECK (name <> ''),
  connector @text REFERENCES connector_type (name) ON UPDATE CASCADE,
  UNIQUE (cabinet, name)
) @strict;

CREATE TABLE loom_end (
  id @uuid NOT NULL PRIMARY KEY,
  revision @int NOT NULL,
  source_text @text NOT NULL,
  source_date @date,
  typed @json NOT NULL,
  loom @text NOT NULL REFERENCES hardware_type (name) ON UPDATE CASCADE ON DELETE CASCADE,
  name @text NOT NULL CONSTRAINT "an end of a loom needs a name" CHECK (name <> ''),
  connector @text REFERENCES connector_type (name) ON UPDATE CASCADE,
  colour @text NOT NULL,
  reach_m @real CONSTRAINT "a reach must be above 0" CHECK (reach_m > 0),
  UNIQUE (loom, name)
) @strict;

CREATE TABLE hang_plug (
  id @uuid NOT NULL PRIMARY KEY,
  revision @int NOT NULL,
  source_text @text NOT NULL,
  source_date @date,
  typed @json NOT NULL,
  tour @text NOT NULL,
  show @text NOT NULL,
  hang @text NOT NULL,
  element @int NOT NULL CONSTRAINT "cabinets are counted from 1" CHECK (element > 0),
  socket @text NOT NULL,
  cabinet @text NOT NULL REFERENCES cabinet_type (name) ON UPDATE CASCADE,
  loom @text NOT NULL REFERENCES hardware_type (name) ON UPDATE CASCADE,
  label @text NOT NULL,
  loom_end @text NOT NULL CONSTRAINT "a plug needs an end of its loom" CHECK (loom_end <> ''),
  rack @text NOT NULL,
  channel @text NOT NULL,
  UNIQUE (tour, show, hang, element, socket),
  UNIQUE (tour, show, loom, label, loom_end),
  FOREIGN KEY (tour, show) REFERENCES show (tour, name) ON UPDATE CASCADE ON DELETE CASCADE
) @strict;
