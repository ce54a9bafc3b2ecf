-- SPDX-License-Identifier: GPL-3.0-or-later
-- What the build plan takes: how far a cabinet's arms and feet stand above it, and how cabinets stand on a cart.

ALTER TABLE cabinet_type ADD COLUMN engagement_m @real
  CONSTRAINT "a cabinet's engagement must not be below 0" CHECK (engagement_m >= 0);
ALTER TABLE cart_type ADD COLUMN deck_m @real
  CONSTRAINT "a cart's deck must not be below the floor" CHECK (deck_m >= 0);
ALTER TABLE cart_type ADD COLUMN high @int
  CONSTRAINT "at least one cabinet stands on a cart" CHECK (high > 0);
