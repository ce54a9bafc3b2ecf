// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "calendar/show.h"
#include "catalogue/catalogue.h"
#include "fleet/occurrence.h"
#include "fleet/place.h"
#include "fleet/unit.h"
#include "options/option.h"
#include "store/columns.h"

/// The store's words for values of enumerations. Never change one: stores hold them.
namespace hangbook::store {

inline constexpr Word<catalogue::Picks> picksWords[] = {{catalogue::Picks::sidePair, "side-pair"},
                                                        {catalogue::Picks::foreAftPair, "fore-aft-pair"},
                                                        {catalogue::Picks::single, "single"}};
inline constexpr Word<catalogue::HoistingClass> hoistingClassWords[] = {
    {catalogue::HoistingClass::hc1, "hc1"},
    {catalogue::HoistingClass::hc2, "hc2"},
    {catalogue::HoistingClass::hc3, "hc3"},
    {catalogue::HoistingClass::hc4, "hc4"}};
inline constexpr Word<catalogue::HardwareKind> hardwareWords[] = {
    {catalogue::HardwareKind::shackle, "shackle"},
    {catalogue::HardwareKind::sling, "sling"},
    {catalogue::HardwareKind::clip, "clip"},
    {catalogue::HardwareKind::pin, "pin"},
    {catalogue::HardwareKind::secondarySteel, "secondary-steel"},
    {catalogue::HardwareKind::loom, "loom"}};
inline constexpr Word<catalogue::JointKind> jointWords[] = {{catalogue::JointKind::seated, "seated"},
                                                            {catalogue::JointKind::pinned, "pinned"},
                                                            {catalogue::JointKind::pivot, "pivot"}};
inline constexpr Word<catalogue::Basis> basisWords[] = {{catalogue::Basis::unknown, "unknown"},
                                                        {catalogue::Basis::atRest, "at-rest"},
                                                        {catalogue::Basis::dynamic, "dynamic"}};
inline constexpr Word<fleet::UnitKind> unitKindWords[] = {
    {fleet::UnitKind::cabinet, "cabinet"}, {fleet::UnitKind::bar, "bar"},
    {fleet::UnitKind::hoist, "hoist"},     {fleet::UnitKind::chain, "chain"},
    {fleet::UnitKind::cart, "cart"},       {fleet::UnitKind::hardware, "hardware"},
    {fleet::UnitKind::loom, "loom"}};
inline constexpr Word<fleet::UnitState> unitStateWords[] = {{fleet::UnitState::ready, "ready"},
                                                            {fleet::UnitState::away, "away"},
                                                            {fleet::UnitState::quarantined, "quarantined"},
                                                            {fleet::UnitState::inRepair, "in-repair"},
                                                            {fleet::UnitState::writtenOff, "written-off"}};
inline constexpr Word<fleet::Act> actWords[] = {{fleet::Act::unsaid, ""},
                                                {fleet::Act::entered, "entered"},
                                                {fleet::Act::out, "out"},
                                                {fleet::Act::in, "in"},
                                                {fleet::Act::transfer, "transfer"},
                                                {fleet::Act::ontoCart, "onto-cart"},
                                                {fleet::Act::ontoTruck, "onto-truck"},
                                                {fleet::Act::state, "state"},
                                                {fleet::Act::undone, "undone"}};
inline constexpr Word<fleet::PlaceKind> placeKindWords[] = {{fleet::PlaceKind::bay, "bay"},
                                                            {fleet::PlaceKind::truck, "truck"},
                                                            {fleet::PlaceKind::venue, "venue"},
                                                            {fleet::PlaceKind::workshop, "workshop"}};
inline constexpr Word<fleet::OccurrenceKind> occurrenceWords[] = {
    {fleet::OccurrenceKind::use, "use"},
    {fleet::OccurrenceKind::exceptional, "exceptional"},
    {fleet::OccurrenceKind::assembly, "assembly"},
    {fleet::OccurrenceKind::fault, "fault"}};
inline constexpr Word<fleet::DocumentKind> documentKindWords[] = {
    {fleet::DocumentKind::certificate, "certificate"},
    {fleet::DocumentKind::photograph, "photograph"},
    {fleet::DocumentKind::other, "other"}};
inline constexpr Word<fleet::ExaminationResult> resultWords[] = {
    {fleet::ExaminationResult::pass, "pass"},
    {fleet::ExaminationResult::passWithRemark, "pass-with-remark"},
    {fleet::ExaminationResult::fail, "fail"}};
inline constexpr Word<calendar::WindBasis> windWords[] = {{calendar::WindBasis::unknown, "unknown"},
                                                          {calendar::WindBasis::gust, "gust"},
                                                          {calendar::WindBasis::mean, "mean"}};
inline constexpr Word<options::Verdict> verdictWords[] = {{options::Verdict::holds, "holds"},
                                                          {options::Verdict::tight, "tight"},
                                                          {options::Verdict::unproven, "unproven"},
                                                          {options::Verdict::fails, "fails"}};

/// The columns of a house rule.
template <class Io, class Figure>
void houseColumns(Io& io, Figure& figure) {
  io("figure", figure.figure);
  io("value", figure.value);
  io("unit", figure.unit);
  io("source", figure.source);
  io("signed_by", figure.signedBy);
  io("signed_on", figure.signedOn);
}

inline constexpr auto houseFields = [](auto& io, auto& figure) { houseColumns(io, figure); };

} // namespace hangbook::store
