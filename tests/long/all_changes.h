// SPDX-License-Identifier: GPL-3.0-or-later
// Every place of the physics and the rules that can be changed, for `all_changes` beside this file: it puts
// these in place of signs, operators and literals, in a copy of the tree. HANGBOOK_CHANGE says by its number
// which change is in force; with HANGBOOK_NOTE each place notes in that file whether its change was reached
// and whether it ever gave another value than what is written.
//
// `a + b` becomes `a + Site<Plus, Less, 17>{} + b`: precedence and order stay those of the sign, the first
// half keeps `a`, the second asks both ways. What stands before its operand binds by `->*`, which is as near
// as a sign can come;
// `&&` and `||` keep that their right side is asked only where it must be.
#pragma once

#include <algorithm>
#include <cmath>
#include <concepts>
#include <cstdio>
#include <cstdlib>
#include <initializer_list>
#include <type_traits>
#include <utility>

namespace all_changes {

inline constexpr int kMost = 1 << 14;

enum : unsigned char { kReached = 1, kApart = 2, kPerhaps = 4 };

struct Notes {
  int asked = 0;
  const char* file = nullptr;
  unsigned char seen[kMost] = {};

  Notes() {
    if (const char* text = std::getenv("HANGBOOK_CHANGE")) {
      asked = std::atoi(text);
    }
    file = std::getenv("HANGBOOK_NOTE");
  }
  ~Notes() {
    if (file == nullptr) {
      return;
    }
    if (std::FILE* out = std::fopen(file, "wb")) {
      std::fwrite(seen, 1, sizeof seen, out);
      std::fclose(out);
    }
  }
  Notes(const Notes&) = delete;
  Notes& operator=(const Notes&) = delete;
};

inline Notes notes;

inline bool isAsked(int id) {
  return notes.asked == id;
}
inline bool isNoted() {
  return notes.file != nullptr;
}
// What a change would give is itself made of signs: those note nothing meanwhile.
inline thread_local bool within = false;
struct Within {
  Within() { within = true; }
  ~Within() { within = false; }
};
inline bool isOpen(int id) {
  if (!isNoted() || within) {
    return false;
  }
  notes.seen[id] |= kReached;
  return (notes.seen[id] & kApart) == 0;
}

/// What an expression is worth, free of what it was put together from.
template <class T>
constexpr auto value(T&& each) {
  using Plain = std::remove_cvref_t<T>;
  if constexpr (requires { typename Plain::PlainObject; }) {
    return typename Plain::PlainObject(each);
  } else {
    return Plain(std::forward<T>(each));
  }
}

template <class A, class B>
bool alike(const A& a, const B& b) {
  if constexpr (std::is_floating_point_v<A> && std::is_floating_point_v<B>) {
    return a == b || (a != a && b != b);
  } else if constexpr (requires {
                         { a == b } -> std::convertible_to<bool>;
                       }) {
    return static_cast<bool>(a == b);
  } else {
    return false;
  }
}

#define HANGBOOK_FUNCTOR(NAME, OP)                                                                           \
  struct NAME {                                                                                              \
    template <class A, class B>                                                                              \
    constexpr auto operator()(A&& a, B&& b) const -> decltype(std::forward<A>(a) OP std::forward<B>(b)) {    \
      return std::forward<A>(a) OP std::forward<B>(b);                                                       \
    }                                                                                                        \
  };
HANGBOOK_FUNCTOR(Plus, +)
HANGBOOK_FUNCTOR(Less, -)
HANGBOOK_FUNCTOR(Times, *)
HANGBOOK_FUNCTOR(Over, /)
HANGBOOK_FUNCTOR(Rest, %)
HANGBOOK_FUNCTOR(Same, ==)
HANGBOOK_FUNCTOR(Unlike, !=)
HANGBOOK_FUNCTOR(Below, <)
HANGBOOK_FUNCTOR(AtMost, <=)
HANGBOOK_FUNCTOR(Above, >)
HANGBOOK_FUNCTOR(AtLeast, >=)
#undef HANGBOOK_FUNCTOR
struct None {};

template <class Old, class First, int FIRST, class Second = None, int SECOND = 0>
struct Site {};

/// Never taken for a value of its own: what compares with everything, such as an optional, must not compare
/// with it.
template <class S, class L>
struct Half {
  L&& left;
};

template <class New, int ID, class P, class A, class B>
constexpr bool instead(P& plain, A& a, B& b) {
  if constexpr (!std::is_same_v<New, None> && std::is_invocable_v<New, A&, B&>) {
    if constexpr (std::is_convertible_v<std::invoke_result_t<New, A&, B&>, P>) {
      if (isAsked(ID)) {
        if constexpr (std::is_integral_v<std::remove_cvref_t<B>> &&
                      (std::is_same_v<New, Over> || std::is_same_v<New, Rest>)) {
          if (b == 0) {
            std::abort();
          }
        }
        plain = P(New{}(a, b));
        return true;
      }
      if (isOpen(ID)) {
        if constexpr (std::is_integral_v<std::remove_cvref_t<B>> &&
                      (std::is_same_v<New, Over> || std::is_same_v<New, Rest>)) {
          if (b == 0) {
            notes.seen[ID] |= kApart;
            return false;
          }
        }
        const Within still;
        if (!alike(plain, P(New{}(a, b)))) {
          notes.seen[ID] |= kApart;
        }
      }
    }
  }
  return false;
}

template <class Old, class First, int FIRST, class Second, int SECOND, class A, class B>
constexpr auto judged(Site<Old, First, FIRST, Second, SECOND>, A&& a, B&& b) {
  auto plain = value(Old{}(a, b));
  if (!std::is_constant_evaluated()) {
    instead<First, FIRST>(plain, a, b) || instead<Second, SECOND>(plain, a, b);
  }
  return plain;
}

#define HANGBOOK_TOKEN(OP, OLD)                                                                              \
  template <class L, class A, int I, class B, int J>                                                         \
  constexpr Half<Site<OLD, A, I, B, J>, L> operator OP(L&& left, Site<OLD, A, I, B, J>) {                    \
    return {std::forward<L>(left)};                                                                          \
  }                                                                                                          \
  template <class L, class R, class A, int I, class B, int J>                                                \
  constexpr auto operator OP(Half<Site<OLD, A, I, B, J>, L>&& half, R&& right) {                             \
    return judged(Site<OLD, A, I, B, J>{}, half.left, right);                                                \
  }
HANGBOOK_TOKEN(+, Plus)
HANGBOOK_TOKEN(-, Less)
HANGBOOK_TOKEN(*, Times)
HANGBOOK_TOKEN(/, Over)
HANGBOOK_TOKEN(%, Rest)
HANGBOOK_TOKEN(==, Same)
HANGBOOK_TOKEN(!=, Unlike)
HANGBOOK_TOKEN(<, Below)
HANGBOOK_TOKEN(<=, AtMost)
HANGBOOK_TOKEN(>, Above)
HANGBOOK_TOKEN(>=, AtLeast)
#undef HANGBOOK_TOKEN

// a | Lead && Follow | b: what is written decides alone; changed, both sides are asked.
template <int ID>
struct AndLead {};
template <int ID>
struct AndFollow {};
template <int ID>
struct OrLead {};
template <int ID>
struct OrFollow {};
template <int ID>
inline thread_local bool led = false;

template <class L, int ID>
constexpr bool operator|(L&& left, AndLead<ID>) {
  const bool is = static_cast<bool>(left);
  if (std::is_constant_evaluated()) {
    return is;
  }
  if (isAsked(ID)) {
    led<ID> = is;
    return true;
  }
  if (isOpen(ID) && !is) {
    notes.seen[ID] |= kPerhaps;
  }
  return is;
}
template <class R, int ID>
constexpr bool operator|(AndFollow<ID>, R&& right) {
  const bool is = static_cast<bool>(right);
  if (std::is_constant_evaluated()) {
    return is;
  }
  if (isAsked(ID)) {
    return led<ID> || is;
  }
  if (isNoted() && !is) {
    notes.seen[ID] |= kApart;
  }
  return is;
}
template <class L, int ID>
constexpr bool operator|(L&& left, OrLead<ID>) {
  const bool is = static_cast<bool>(left);
  if (std::is_constant_evaluated()) {
    return is;
  }
  if (isAsked(ID)) {
    led<ID> = is;
    return false;
  }
  if (isOpen(ID) && is) {
    notes.seen[ID] |= kPerhaps;
  }
  return is;
}
template <class R, int ID>
constexpr bool operator|(OrFollow<ID>, R&& right) {
  const bool is = static_cast<bool>(right);
  if (std::is_constant_evaluated()) {
    return is;
  }
  if (isAsked(ID)) {
    return led<ID> && is;
  }
  if (isNoted() && is) {
    notes.seen[ID] |= kApart;
  }
  return is;
}

// Before an operand; ->* binds as nearly as a sign does.
template <int ID>
struct Not {};
template <int ID, class X>
constexpr bool operator->*(Not<ID>, X&& x) {
  const bool is = !x;
  if (std::is_constant_evaluated()) {
    return is;
  }
  if (isAsked(ID)) {
    return !is;
  }
  if (isNoted()) {
    notes.seen[ID] |= kReached | kApart;
  }
  return is;
}
template <int ID>
struct Minus {};
template <int ID, class X>
constexpr auto operator->*(Minus<ID>, X&& x) {
  auto plain = value(-x);
  if (std::is_constant_evaluated()) {
    return plain;
  }
  if (isAsked(ID)) {
    return decltype(plain)(x);
  }
  if (isOpen(ID)) {
    const Within still;
    if (!alike(plain, decltype(plain)(x))) {
      notes.seen[ID] |= kApart;
    }
  }
  return plain;
}
template <int ID>
struct Up {};
template <int ID, class X>
constexpr decltype(auto) operator->*(Up<ID>, X& x) {
  if (std::is_constant_evaluated()) {
    return ++x;
  }
  if constexpr (requires { --x; }) {
    if (isAsked(ID)) {
      return --x;
    }
    if (isNoted()) {
      notes.seen[ID] |= kReached | kApart;
    }
  }
  return ++x;
}
template <int ID>
struct Down {};
template <int ID, class X>
constexpr decltype(auto) operator->*(Down<ID>, X& x) {
  if (std::is_constant_evaluated()) {
    return --x;
  }
  if (isAsked(ID)) {
    return ++x;
  }
  if (isNoted()) {
    notes.seen[ID] |= kReached | kApart;
  }
  return --x;
}

// a += To += b
template <class Kind, int ID>
struct To {};
template <class Kind, int ID, class R>
struct ToHalf {
  R&& right;
};
#define HANGBOOK_INTO(KIND, OP, OTHER)                                                                       \
  struct KIND {};                                                                                            \
  template <int ID, class R>                                                                                 \
  constexpr ToHalf<KIND, ID, R> operator OP(To<KIND, ID>, R&& right) {                                       \
    return {std::forward<R>(right)};                                                                         \
  }                                                                                                          \
  template <class L, int ID, class R>                                                                        \
  constexpr decltype(auto) operator OP(L&& left, ToHalf<KIND, ID, R>&& half) {                               \
    if constexpr (requires { left OTHER half.right; }) {                                                     \
      if (!std::is_constant_evaluated()) {                                                                   \
        if (isAsked(ID)) {                                                                                   \
          return left OTHER half.right;                                                                      \
        }                                                                                                    \
        if (isOpen(ID)) {                                                                                    \
          const Within still;                                                                                \
          auto one = value(left), two = value(left);                                                         \
          one OP half.right;                                                                                 \
          two OTHER half.right;                                                                              \
          if (!alike(one, two)) {                                                                            \
            notes.seen[ID] |= kApart;                                                                        \
          }                                                                                                  \
        }                                                                                                    \
      }                                                                                                      \
    }                                                                                                        \
    return left OP half.right;                                                                               \
  }
HANGBOOK_INTO(AddTo, +=, -=)
HANGBOOK_INTO(TakeFrom, -=, +=)
HANGBOOK_INTO(TimesInto, *=, /=)
HANGBOOK_INTO(OverInto, /=, *=)
#undef HANGBOOK_INTO

template <int FIRST, int SECOND, class T>
constexpr T literal(T written, T first, T second) {
  if (std::is_constant_evaluated()) {
    return written;
  }
  if (isAsked(FIRST)) {
    return first;
  }
  if (SECOND != 0 && isAsked(SECOND)) {
    return second;
  }
  if (isNoted()) {
    notes.seen[FIRST] |= kReached | kApart;
    notes.seen[SECOND] |= kReached | kApart;
  }
  return written;
}

#define HANGBOOK_PICK(NAME, ONE, TWO)                                                                        \
  template <int ID>                                                                                          \
  struct NAME {                                                                                              \
    template <class... A>                                                                                    \
    constexpr auto operator()(A&&... a) const {                                                              \
      auto plain = value(ONE(a...));                                                                         \
      return among(plain, [&] { return value(TWO(a...)); });                                                 \
    }                                                                                                        \
    template <class T, class... A>                                                                           \
    constexpr auto operator()(std::initializer_list<T> list, A&&... a) const requires requires {             \
      ONE(list, a...);                                                                                       \
    }                                                                                                        \
    {                                                                                                        \
      auto plain = value(ONE(list, a...));                                                                   \
      return among(plain, [&] { return value(TWO(list, a...)); });                                           \
    }                                                                                                        \
    template <class P, class F>                                                                              \
    static constexpr P among(P plain, F other) {                                                             \
      if (std::is_constant_evaluated()) {                                                                    \
        return plain;                                                                                        \
      }                                                                                                      \
      if (isAsked(ID)) {                                                                                     \
        return other();                                                                                      \
      }                                                                                                      \
      if (isOpen(ID)) {                                                                                      \
        const Within still;                                                                                  \
        if (!alike(plain, other())) {                                                                        \
          notes.seen[ID] |= kApart;                                                                          \
        }                                                                                                    \
      }                                                                                                      \
      return plain;                                                                                          \
    }                                                                                                        \
  };
HANGBOOK_PICK(Min, std::min, std::max)
HANGBOOK_PICK(Max, std::max, std::min)
HANGBOOK_PICK(Fmin, std::fmin, std::fmax)
HANGBOOK_PICK(Fmax, std::fmax, std::fmin)
HANGBOOK_PICK(MinElement, std::min_element, std::max_element)
HANGBOOK_PICK(MaxElement, std::max_element, std::min_element)
HANGBOOK_PICK(RangesMin, std::ranges::min, std::ranges::max)
HANGBOOK_PICK(RangesMax, std::ranges::max, std::ranges::min)
HANGBOOK_PICK(RangesMinElement, std::ranges::min_element, std::ranges::max_element)
HANGBOOK_PICK(RangesMaxElement, std::ranges::max_element, std::ranges::min_element)
#undef HANGBOOK_PICK

} // namespace all_changes
