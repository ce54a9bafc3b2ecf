# SPDX-License-Identifier: GPL-3.0-or-later
"""The one table of tests/bench/search, from what its parts left in a folder: python3 table.py FOLDER SEED"""
import datetime
import glob
import json
import os
import re
import sys


def main():
    folder, seed = sys.argv[1:3]
    runs = {}
    for name in glob.glob(folder + "/*.json"):
        with open(name, encoding="utf-8") as file:
            for each in json.load(file)["benchmarks"]:
                runs[each["name"]] = each
    text = {name: open(os.path.join(folder, name), encoding="utf-8").read().split()
            for name in ("numpy", "spreadsheet", "gecode", "one-percent")}
    every = runs["settingsWithAllRules"]["settings"]
    plain = runs["settingsWithPlainRules"]["settings"]
    options = runs["discretePart"]["options"]
    numpy, sheet = float(text["numpy"][0]), float(text["spreadsheet"][0])
    sheet_whole, sheet_rows = float(text["spreadsheet"][1]), int(text["spreadsheet"][2])
    listed, start, end = (float(each) for each in text["gecode"])
    gecode = listed / (end - start)
    drag = next(each for name, each in runs.items() if name.startswith("drag"))
    floor = runs["arithmetic"]["comparisons"] / runs["arithmetic"]["a setting"]
    lines = [
        ("settings a second, all rules, none by a bound", "10 million", f"{every / 1e6:.3f} million"),
        ("the same, the four plain rules", "", f"{plain / 1e6:.1f} million"),
        ("NumPy, the same rules and settings", "4 times", f"{numpy / 1e6:.1f} million: {plain / numpy:.1f} times"),
        (f"LibreOffice, the same rules, {sheet_rows} settings", "500 times",
         f"{sheet:.0f} a second ({sheet_whole:.0f} with reading): {plain / sheet:.0f} times"),
        (f"options listed a second; Gecode, the same {listed:.0f}", "100 times",
         f"{options:.0f}; {gecode:.0f}: {options / gecode:.0f} times"),
        ("one change while dragging, all rules with words", "p99 2 ms",
         f"p50 {drag['p50 ms']:.2f} ms, p99 {drag['p99 ms']:.2f} ms, worst {drag['worst ms']:.2f} ms")]
    tours = sorted((int(match[1]), int(match[2]), each) for name, each in runs.items()
                   if (match := re.match(r"tour/(\d+)/(\d+)/", name)))
    for shows, points, each in sorted(tours, key=lambda tour: (tour[1], tour[0])):
        lines.append((f"made-up tour, {shows} show{'s' if shows > 1 else ''} of "
                      f"{each['settings a show'] / 1e6:.2f} million settings",
                      "200 of 5 million in 2 s, 200 MiB" if points > 2 else "flat",
                      f"{each['a show']:.3f} s a show; {each['by bound %']:.0f} % by a bound, "
                      f"{each['holding %']:.0f} % hold; {each['peak MiB']:.0f} MiB"))
    lines += [("brute force again, a random 1 % of 50 shows", "all alike", f"{text['one-percent'][0]} options, all alike"),
              ("floor: comparisons of a setting at the machine's rate", "",
               f"{floor / 1e6:.1f} million settings a second; all rules are {floor / every:.0f} times slower")]
    widths = [max(len(line[i]) for line in lines) for i in range(3)]
    print(f"tests/bench/search, seed {seed}, {datetime.date.today()}, one core")
    for line in lines:
        print("  ".join(cell.ljust(width) for cell, width in zip(line, widths)).rstrip())


main()
