# SPDX-License-Identifier: GPL-3.0-or-later
"""The plain rules of plain_rules.h again, as whole columns: python3 plain_rules.py FOLDER
Prints how many settings a second it checks, and ends with 1 where a verdict is not the program's."""
import sys
import time

import numpy as np

HOLDS, TIGHT, UNPROVEN, FAILS = range(4)


def against(value, limit):
    """Verdict of a load against its limit; the figure itself is tight, 90 % or more too."""
    verdict = np.where(value > limit, FAILS, np.where(value >= 0.9 * limit, TIGHT, HOLDS))
    return np.where(np.isnan(value) | np.isnan(limit), UNPROVEN, verdict)


def check(settings, limits):
    load1, most1, load2, most2, weight = settings.T
    (capacity1, capacity2, body, chain, rigging, climbs, factors, hoist, bar, bar_factors, zone, others_hangs,
     others, times, two) = limits
    both = two == 1.0
    high1, high2 = np.maximum(load1, most1), np.maximum(load2, most2)
    worst = against((high1 + body + chain + rigging) / 1000, capacity1 / 1000)
    worst = np.maximum(worst, np.where(
        both, against((high2 + body + chain + rigging) / 1000, capacity2 / 1000), HOLDS))
    at_rest = times * (load1 + body + chain + rigging)
    at_rest = np.where(both, at_rest + times * (load2 + body + chain + rigging), at_rest)
    worst = np.maximum(worst, against((at_rest + others_hangs + others) / 1000, zone / 1000))
    worst = np.maximum(worst, against((high1 + climbs) * factors / 1000, hoist / 1000))
    worst = np.maximum(worst, np.where(both, against((high2 + climbs) * factors / 1000, hoist / 1000), HOLDS))
    return np.maximum(worst, against(weight * bar_factors / 1000, bar / 1000))


def main():
    folder = sys.argv[1]
    settings = np.fromfile(folder + "/settings.f64").reshape(-1, 5)
    options = np.fromfile(folder + "/limits.f64").reshape(-1, 16)
    limits = np.repeat(options[:, 1:], options[:, 0].astype(int), axis=0).T.copy()
    expected = np.fromfile(folder + "/verdicts.u8", dtype=np.uint8)
    best = min(timed(settings, limits) for _ in range(7))
    found = check(settings, limits)
    unlike = int(np.count_nonzero(found != expected))
    if unlike or not len(expected):
        print(f"NumPy: {unlike} of {len(expected)} verdicts unlike the program's", file=sys.stderr)
        return 1
    print(f"{len(expected) / best:.0f}")
    return 0


def timed(settings, limits):
    start = time.perf_counter()
    check(settings, limits)
    return time.perf_counter() - start


sys.exit(main())
