# SPDX-License-Identifier: GPL-3.0-or-later
"""The plain rules of plain_rules.h as formulas of a spreadsheet: python3 spreadsheet.py FOLDER
LibreOffice loads, recalculates and saves a flat sheet of some thousand settings without a window. Start-up, reading
and saving are taken off by doing the same with fewer rows, and with figures in the formulas' places.
Prints settings a second, the same with reading and saving, and how many rows; ends with 1 where a verdict is
not the program's."""
import csv
import os
import subprocess
import sys
import time

import numpy as np

HEAD = """<?xml version="1.0" encoding="UTF-8"?>
<office:document xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0"
 xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0"
 xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0"
 xmlns:of="urn:oasis:names:tc:opendocument:xmlns:of:1.2" office:version="1.3"
 office:mimetype="application/vnd.oasis.opendocument.spreadsheet"><office:body><office:spreadsheet>
<table:table table:name="rules">"""
FOOT = "</table:table></office:spreadsheet></office:body></office:document>\n"

# A…E figures of the setting, F…T limits of the option, as plain_rules.py names them; N = ROW.
FIGURES = ["load1", "most1", "load2", "most2", "weight", "capacity1", "capacity2", "body", "chain", "rigging",
           "climbs", "factors", "hoist", "bar", "bar_factors", "zone", "others_hangs", "others", "times", "two"]


def against(value, limit):
    return f"IF({value}>{limit};3;IF({value}>=0.9*{limit};1;0))"


def formulas():
    """Of the columns from U on; the last is the worst of those before it."""
    high1, high2 = "MAX({load1};{most1})", "MAX({load2};{most2})"
    both = "IF({two}=1;%s;0)"
    gear = "+{body}+{chain}+{rigging}"
    rest = "({times}*({load1}" + gear + ")+" + both % ("{times}*({load2}" + gear + ")") + "+{others_hangs}+{others})/1000"
    return [against(f"(({high1}){gear})/1000", "({capacity1}/1000)"),
            both % against(f"(({high2}){gear})/1000", "({capacity2}/1000)"),
            against(rest, "({zone}/1000)"),
            against("((" + high1 + "+{climbs})*{factors}/1000)", "({hoist}/1000)"),
            both % against("((" + high2 + "+{climbs})*{factors}/1000)", "({hoist}/1000)"),
            against("({weight}*{bar_factors}/1000)", "({bar}/1000)"),
            "MAX([.U{n}:.Z{n}])"]


def write(path, rows, verdicts, live):
    cells = [each.replace(">", "&gt;") for each in formulas()]
    with open(path, "w", encoding="utf-8") as out:
        out.write(HEAD)
        for number, row in enumerate(rows, 1):
            names = {name: f"[.{chr(65 + i)}{number}]" for i, name in enumerate(FIGURES)}
            out.write("<table:table-row>")
            for figure in row:
                out.write(f'<table:table-cell office:value-type="float" office:value="{figure!r}"/>')
            for cell in cells:
                if live:
                    out.write(f'<table:table-cell table:formula="of:={cell.format(n=number, **names)}"/>')
                else:
                    out.write(f'<table:table-cell office:value-type="float" office:value="{verdicts[number - 1]}"/>')
            out.write("</table:table-row>\n")
        out.write(FOOT)


def recalculate(folder, name):
    """Seconds from start to end, and the worst verdicts that it saved."""
    profile = os.path.join(folder, "profile")
    start = time.perf_counter()
    subprocess.run(["soffice", f"-env:UserInstallation=file://{profile}", "--headless", "--convert-to",
                    "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,false", "--outdir", folder,
                    os.path.join(folder, name + ".fods")], check=True, stdout=subprocess.DEVNULL,
                   stderr=subprocess.DEVNULL)
    took = time.perf_counter() - start
    with open(os.path.join(folder, name + ".csv"), encoding="utf-8") as saved:
        return took, [float(row[-1]) for row in csv.reader(saved)]


def main():
    folder = sys.argv[1]
    settings = np.fromfile(folder + "/settings.f64").reshape(-1, 5)
    options = np.fromfile(folder + "/limits.f64").reshape(-1, 16)
    limits = np.repeat(options[:, 1:], options[:, 0].astype(int), axis=0)
    expected = np.fromfile(folder + "/verdicts.u8", dtype=np.uint8)
    figures = np.nan_to_num(np.hstack([settings, limits]), posinf=1e300)
    few, many = 1000, min(25000, len(expected))
    # Spread over all settings, so that every option's limits occur.
    order = np.random.default_rng(1).permutation(len(expected))
    took = {}
    for live in (True, False):
        for size in (few, many):
            chosen = order[:size]
            name = f"{'rules' if live else 'figures'}{size}"
            write(f"{folder}/{name}.fods", figures[chosen].tolist(), expected[chosen].tolist(), live)
            if not took:
                recalculate(folder, name)  # the first start makes the profile
            best = None
            for _ in range(2):
                seconds, found = recalculate(folder, name)
                best = seconds if best is None else min(best, seconds)
            took[live, size] = best
            unlike = int(np.count_nonzero(np.array(found) != expected[chosen])) if len(found) == size else size
            if unlike:
                print(f"LibreOffice: {unlike} of {size} verdicts unlike the program's", file=sys.stderr)
                return 1
    alone = (took[True, many] - took[True, few]) - (took[False, many] - took[False, few])
    whole = took[True, many] - took[True, few]
    print(f"{(many - few) / max(alone, 1e-3):.1f} {(many - few) / whole:.1f} {many}")
    return 0


if __name__ == "__main__":
    sys.exit(main())
